"""On which line of a TOML text each entry stands. The standard library's reader does not say."""

from __future__ import annotations

import re
from collections.abc import Mapping

Path = tuple[str | int, ...]
"""The way to an entry: keys, and numbers (from 0) in lists: `("task", 2, "givens", "diameter")`."""

_HEADER = re.compile(r"\s*(\[\[?)\s*([^\[\]#]+?)\s*\]")
_PART = r"(?:[A-Za-z0-9_-]+|\"[^\"]*\"|'[^']*')"
_KEY = re.compile(rf"\s*({_PART}(?:\s*\.\s*{_PART})*)\s*=")
_TEXT_ENDS = ('"""', "'''")


def lines_of(text: str) -> Mapping[Path, int]:
    """The line (from 1) of every table and of every key that begins a line, in a text that is valid TOML."""
    lines: dict[Path, int] = {}
    counts: dict[Path, int] = {}
    table: Path = ()
    in_text = False
    for number, line in enumerate(text.splitlines(), start=1):
        begins_in_text = in_text
        in_text = in_text != bool(sum(line.count(end) for end in _TEXT_ENDS) % 2)
        if begins_in_text:
            continue
        if header := _HEADER.match(line):
            path = _inside(_parts(header.group(2)), counts)
            if header.group(1) == "[[":
                counts[path] = counts.get(path, -1) + 1
                path = (*path, counts[path])
            table = path
            lines.setdefault(table, number)
        elif key := _KEY.match(line):
            lines.setdefault((*table, *_parts(key.group(1))), number)
    return lines


def _parts(dotted: str) -> Path:
    return tuple(part.strip("\"'") for part in re.findall(_PART, dotted))


def _inside(path: Path, counts: Mapping[Path, int]) -> Path:
    """The path with the number of the last table put in wherever it goes through a list of tables."""
    full: Path = ()
    for place, part in enumerate(path):
        full = (*full, part)
        if full in counts and place < len(path) - 1:
            full = (*full, counts[full])
    return full
