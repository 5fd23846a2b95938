"""The vocabulary: every quantity the book of relations speaks of, once.

A quantity has a keyword (its name in every call), a term (as ISO 5419 or the trade says it), a symbol, a unit, a
meaning, the range a workshop meets (`usual`) and the range outside which a value is refused (`possible`).

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
from collections.abc import Mapping
from decimal import ROUND_HALF_UP, Decimal
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

    name: keyword in every call. term: as the trade says it. symbol, latex: as formulas print it. unit: "mm", "°" or ""
    (a plain number). meaning: what is measured, where, in which plane. usual: what a workshop meets. possible: outside
    it a value is refused. typical: a value to name as an example. decimals: how many a drawing or worked line shows.
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

    def show_span(self, span: Span) -> str:
        """A range in words: "60° to 179°"."""
        return f"{self.show(span.low, 4)} to {self.show(span.high, 4)}"


def unit_suffix(unit: str) -> str:
    """A unit as it follows a number: degrees close up, others after a space."""
    return unit if unit in ("", "°") else " " + unit


def plain_number(value: float, decimals: int) -> str:
    """The number rounded to at most `decimals` places (a tie away from zero), without trailing zeros or exponent."""
    # Ties go the way of JavaScript's toFixed, so that the page in the browser prints the same digits as Python.
    exact = Decimal(value)
    text = f"{exact.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP):f}" if exact.is_finite() else str(value)
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


_POSITIVE = Span(0.0, math.inf, open_low=True)

_ALL = (
    Quantity(
        "diameter",
        "drill diameter",
        "D",
        "D",
        "mm",
        "over the two outer corners, at the point",
        Span(1.0, 40.0),
        Span(0.1, 150.0),
        10.0,
        2,
    ),
    Quantity(
        "radius",
        "radius of a point on the lip",
        "r",
        "r",
        "mm",
        "distance from the drill axis to the place on the lip that is looked at",
        Span(0.2, 20.0),
        Span(0.0, 75.0, open_low=True),
        2.5,
        2,
    ),
    Quantity(
        "web",
        "web thickness",
        "W",
        "W",
        "mm",
        "at the point: distance between the two lips, which are parallel in the end view",
        Span(0.1, 10.0),
        Span(0.0, 75.0),
        1.5,
        2,
    ),
    Quantity(
        "web_ratio",
        "web ratio",
        "u",
        "u",
        "",
        "web thickness at the point divided by the drill diameter",
        Span(0.05, 0.35),
        Span(0.0, 1.0, open_high=True),
        0.15,
        3,
    ),
    Quantity(
        "point_angle",
        "point angle",
        "A",
        "A",
        "°",
        "included angle between the two lips, seen square to them (the whole angle, not one side)",
        Span(60.0, 150.0),
        Span(60.0, 179.0),
        118.0,
        1,
    ),
    Quantity(
        "chisel_edge_angle",
        "chisel edge angle",
        "ψ",
        r"\psi",
        "°",
        "in the end view, the obtuse angle between a lip and the chisel edge (BS 328 and the workshop's way); "
        "its supplement δ = 180° − ψ is acute",
        Span(120.0, 135.0),
        Span(90.0, 180.0, open_high=True),
        125.0,
        1,
    ),
    Quantity(
        "lip_relief",
        "lip relief angle",
        "α_f",
        r"\alpha_f",
        "°",
        "at the outer corner, in the plane that touches the cylinder there",
        Span(5.0, 24.0),
        Span(-30.0, 60.0),
        12.0,
        1,
    ),
    Quantity(
        "axial_relief",
        "relief square to the lip",
        "α_x",
        r"\alpha_x",
        "°",
        "in the plane parallel to the drill axis and square to the lip in the end view",
        Span(0.0, 28.0),
        Span(-60.0, 75.0),
        7.0,
        1,
    ),
    Quantity(
        "point_height",
        "point height",
        "h",
        "h",
        "mm",
        "along the axis, from the outer corners to the tip of the sharp cone through the lips",
        _POSITIVE,
        Span(0.0, 150.0, open_low=True),
        3.0,
        2,
    ),
    Quantity(
        "lip_length",
        "lip length",
        "L",
        "L",
        "mm",
        "true length of one lip from the chisel edge corner to the outer corner",
        _POSITIVE,
        Span(0.0, 150.0, open_low=True),
        5.15,
        2,
    ),
    Quantity(
        "chisel_edge_length",
        "chisel edge length",
        "C",
        "C",
        "mm",
        "in the end view, from one chisel edge corner to the other",
        _POSITIVE,
        Span(0.0, 150.0, open_low=True),
        1.83,
        2,
    ),
    Quantity(
        "relief_at_radius",
        "relief at a radius",
        "α",
        r"\alpha",
        "°",
        "at a place on the lip, in the plane that touches the cylinder through that place",
        Span(0.0, 40.0),
        Span(-89.0, 89.0),
        12.0,
        1,
    ),
    Quantity(
        "heel_clearance",
        "heel clearance",
        "q",
        "q",
        "°",
        "angle round the axis behind the outer corner over which one plane flank stays below the corner's height",
        Span(0.0, 180.0),
        Span(0.0, 360.0),
        40.0,
        1,
    ),
)

QUANTITIES: Mapping[str, Quantity] = MappingProxyType({q.name: q for q in _ALL})


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
