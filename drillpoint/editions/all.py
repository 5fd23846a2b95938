"""Every generated file, by name."""

from __future__ import annotations

from drillpoint.editions.numbers import javascript_edition, python_edition


def editions() -> dict[str, str]:
    """File name in drillpoint/generated/ and the text it must have."""
    return {"numbers.py": python_edition(), "numbers.js": javascript_edition()}
