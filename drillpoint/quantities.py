"""The vocabulary: every quantity the book of relations speaks of, once.

Each is a table in `drillpoint/vocabulary/`, a file a chapter. A quantity has a keyword (its name in every call), a
term (as ISO 5419 or the trade says it), a symbol, a unit, a meaning, the range a workshop meets (`usual`) and the range
outside which a value is refused (`possible`).

Conventions for the whole library
---------------------------------
The drill axis is z with the tip towards +z; the drill is right-hand, so seen from the tip it turns counter-clockwise.
The two lips are parallel in the end view, half a web either side of the axis: lip 1 on y = +t for x > 0, with t half
the web; lip 2 is lip 1 turned half a turn. The flute lies at y > t for lip 1; its flank falls away towards -y.
Angles are degrees, lengths millimetres, feeds millimetres per revolution.

The terms point angle, lip, chisel edge, web, outer corner and heel are those of ISO 5419:1982 and of the trade. Usual
ranges are common practice; the chisel edge's 120° to 135° is also what training manuals give (US Army TC 9-524, from
memory), and lip relief is printed as anything from 7° to 24° because place, plane and drill size differ.
"""

from __future__ import annotations

import difflib
import math
import tomllib
from collections.abc import Mapping
from decimal import ROUND_HALF_UP, Context, Decimal
from importlib import resources
from types import MappingProxyType

from attrs import frozen

from drillpoint.errors import UnknownGiven


@frozen
class Span:
    """A range of values from `low` to `high`; an open end excludes the end itself."""

    low: float
    high: float
    open_low: bool = False
    open_high: bool = False

    def __contains__(self, value: float) -> bool:
        above = value > self.low if self.open_low else value >= self.low
        below = value < self.high if self.open_high else value <= self.high
        return above and below


@frozen
class Quantity:
    """One quantity of the point.

    name: keyword in every call. term: as the trade says it. symbol, latex: as formulas print it. unit: "mm", "°" and so
    on, or "" for a plain number. meaning: what is measured, where, in which plane. usual: what a workshop meets.
    possible: outside it a value is refused. typical: a value to name as an example. decimals: how many a drawing or
    worked line shows.
    """

    name: str
    term: str
    symbol: str
    latex: str
    unit: str
    meaning: str
    usual: Span
    possible: Span
    typical: float
    decimals: int

    @property
    def is_angle(self) -> bool:
        """Whether the unit is the degree."""
        return self.unit == "°"

    def show(self, value: float, decimals: int | None = None) -> str:
        """The value with its unit, rounded to the decimals usual for this quantity: "5.15 mm", "118°"."""
        return plain_number(value, self.decimals if decimals is None else decimals) + unit_suffix(self.unit)

    @property
    def the_usual(self) -> str:
        """The usual range as a sentence says it: "the usual 120° to 135°"."""
        return f"the usual {self.show_span(self.usual)}"

    def show_span(self, span: Span) -> str:
        """A range in words: "60° to 179°", or "0 mm and more" where it has no upper end."""
        if span.high == math.inf:
            return f"{self.show(span.low, 4)} and more"
        return f"{self.show(span.low, 4)} to {self.show(span.high, 4)}"


def unit_suffix(unit: str) -> str:
    """A unit as it follows a number: degrees close up, others after a space."""
    return unit if unit in ("", "°") else " " + unit


def capital(text: str) -> str:
    """The text with its first letter large, as a sentence or a line of a table begins."""
    return text[:1].upper() + text[1:]


_LONGEST = 1e21
_DIGITS = Context(prec=60)


def plain_number(value: float, decimals: int) -> str:
    """The number rounded to at most `decimals` places (a tie away from zero), without trailing zeros or exponent."""
    # Ties go the way of JavaScript's toFixed, so that the page in the browser prints the same digits as Python.
    # As in JavaScript, a number that nobody could read in full keeps its exponent.
    if not abs(value) < _LONGEST:
        return str(float(value))
    text = f"{Decimal(value).quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP, _DIGITS):f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


_CHAPTERS = ("point", "rake", "forces", "hole", "regrind", "ground", "planning")


def _span(ends: list[float], opened: str = "") -> Span:
    return Span(float(ends[0]), float(ends[1]), opened in ("low", "both"), opened in ("high", "both"))


def _read(chapter: str) -> list[Quantity]:
    text = resources.files("drillpoint").joinpath("vocabulary", f"{chapter}.toml").read_text(encoding="utf-8")
    return [
        Quantity(
            name=name,
            term=row["term"],
            symbol=row["symbol"],
            latex=row.get("latex", row["symbol"]),
            unit=row["unit"],
            meaning=row["meaning"],
            usual=_span(row["usual"]),
            possible=_span(row["possible"], row.get("open", "")),
            typical=float(row["typical"]),
            decimals=row["decimals"],
        )
        for name, row in tomllib.loads(text).items()
    ]


QUANTITIES: Mapping[str, Quantity] = MappingProxyType({q.name: q for c in _CHAPTERS for q in _read(c)})


def quantity(name: str) -> Quantity:
    """The quantity with this keyword.

    Raises UnknownGiven with the nearest keyword when there is none.
    """
    try:
        return QUANTITIES[name]
    except KeyError:
        raise UnknownGiven(f"there is no quantity {name!r}{nearest(name, QUANTITIES)}") from None


def nearest(name: str, names: Mapping[str, object] | frozenset[str] | tuple[str, ...]) -> str:
    """A clause that names the closest of `names`: "; did you mean 'web'?", or the whole list when none is close."""
    close = difflib.get_close_matches(name, names, n=1, cutoff=0.5)
    return f"; did you mean {close[0]!r}?" if close else f"; choose from {', '.join(names)}"
