"""Worked lines as templates: text with marks where numbers go, the same for Python and the browser."""

from __future__ import annotations

import re
from collections.abc import Mapping

RELATION = "// relation "
"""Starts the part of numbers.js that belongs to one relation, so that a page can carry only what it needs."""

_PLACEHOLDER = re.compile(r"⟦(\w+)⟧")


def placeholder(name: str) -> str:
    """The mark in a template where the value of `name` goes."""
    return f"⟦{name}⟧"


def fill(template: str, values: Mapping[str, str]) -> str:
    """The template with each mark replaced by its value, in brackets where the value is negative."""
    return _PLACEHOLDER.sub(lambda mark: _bracketed(values[mark[1]]), template)


def _bracketed(value: str) -> str:
    return f"({value})" if value.startswith("-") else value
