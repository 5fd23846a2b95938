"""Every generated file, by name."""

from __future__ import annotations

from drillpoint.editions.manual import pages
from drillpoint.editions.numbers import javascript_edition, python_edition
from drillpoint.editions.scenes import javascript_scenes, python_scenes


def editions() -> dict[str, str]:
    """File name in drillpoint/generated/ and the text it must have."""
    return {
        "numbers.py": python_edition(),
        "numbers.js": javascript_edition(),
        "scenes.py": python_scenes(),
        "scenes.js": javascript_scenes(),
    }


def documents() -> dict[str, str]:
    """File name in docs/ and the text it must have."""
    return pages()
