"""What a page needs to read numbers as `read_number` does: its units, spellings and patterns, for JavaScript.

Nothing is stated a second time: the patterns are those of the reader itself, in the other language's way of writing.
"""

from __future__ import annotations

import re
import unicodedata
from functools import cache
from typing import Any

from drillpoint.course.answer_form import LONGEST_PROSE
from drillpoint.course.numeral import MOST_DIGITS, NUMERAL, THOUSANDS, VULGAR
from drillpoint.course.reading import LONGEST_TEXT
from drillpoint.course.typed import LOOK_ALIKES
from drillpoint.course.units import CLOSE, KINDS, PARTS, UNITS, Part, as_pattern, spellings

_PIECE = re.compile(r"\[[^\]]*\]|\\.|\(\?P<\w+>|\(\?:|\s|.", re.DOTALL)
_ESCAPED_IN_BOTH = frozenset("^$\\.*+?()[]{}|/")


@cache
def reading_table() -> dict[str, Any]:
    """Everything as plain data that can be written as JSON."""
    return {
        "longest": LONGEST_TEXT,
        "longest_prose": LONGEST_PROSE,
        "most_digits": MOST_DIGITS,
        "look_alikes": {chr(one): other for one, other in LOOK_ALIKES.items()},
        "numeral": javascript_pattern(NUMERAL.pattern),
        "thousands": javascript_pattern(THOUSANDS.pattern),
        "vulgar": {sign: [int(n) for n in unicodedata.normalize("NFKC", sign).split("⁄")] for sign in VULGAR},
        "kinds": {name: [kind.words, kind.kept_in, kind.examples] for name, kind in KINDS.items()},
        "units": {name: [unit.kind, unit.factor] for name, unit in UNITS.items()},
        "spelt": [unit for unit, _ in spellings()],
        "unit": "|".join(f"({javascript_pattern(as_pattern(word), any_case=True)})" for _, word in spellings()),
        "parts": {unit: [_part(part) for part in parts] for unit, parts in PARTS.items()},
        "close": sorted(CLOSE),
    }


def _part(part: Part) -> dict[str, Any]:
    words = sorted(part.spellings, key=len, reverse=True)
    pattern = "|".join(javascript_pattern(as_pattern(word), any_case=True) for word in words)
    return {"unit": part.unit, "share": part.share, "most": part.most, "pattern": pattern}


def javascript_pattern(pattern: str, *, any_case: bool = False) -> str:
    """Write one of our own patterns, in Python's verbose spelling, for JavaScript's `u` flag.

    any_case: plain letters stand for small and capital, and no other letter for either.
    """
    return "".join(_translated(piece, any_case) for piece in _PIECE.findall(pattern))


def _translated(piece: str, any_case: bool) -> str:
    if piece.startswith("(?P<"):
        return "(?<" + piece.removeprefix("(?P<")
    if piece.startswith("\\"):
        return piece if piece[1] in _ESCAPED_IN_BOTH else piece[1]
    if piece.isspace():
        return ""
    if any_case and piece.isascii() and piece.isalpha():
        return f"[{piece.lower()}{piece.upper()}]"
    return piece
