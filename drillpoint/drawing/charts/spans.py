"""Over which values a chart runs when nobody says: what a workshop meets, on the drill at hand."""

from __future__ import annotations

import math
from collections.abc import Mapping

from drillpoint.errors import LearnerError
from drillpoint.quantities import QUANTITIES, Span
from drillpoint.relations import web_from_ratio

MOST_IN_A_FAMILY = 6


def span_of(against: str, givens: Mapping[str, float], between: tuple[float, float] | None) -> Span:
    """From where to where a chart against this quantity runs.

    between: the ends asked for, in degrees and mm. Without them it is the usual range; for a radius it is the whole
    lip, for a web the usual share of the diameter.
    Raises LearnerError when `between` is no range.
    """
    quantity = QUANTITIES[against]
    if between is not None:
        low, high = _ends(between)
        if low not in quantity.possible or high not in quantity.possible:
            raise LearnerError(
                f"between=({low:g}, {high:g}): {quantity.term} can be {quantity.show_span(quantity.possible)}"
            )
        return Span(low, high)
    diameter = givens.get("diameter")
    usual = quantity.usual
    if diameter and against == "radius":
        return Span(0.0, diameter / 2)  # inside the web nothing is possible, so a curve starts there by itself
    if diameter and against == "web":
        shares = QUANTITIES["web_ratio"].usual
        thin, thick = (float(web_from_ratio(web_ratio=u, diameter=diameter)) for u in (shares.low, shares.high))
        return Span(thin, thick)
    return usual if math.isfinite(usual.high) else Span(usual.low, 2 * quantity.typical)


def _ends(between: tuple[float, float]) -> tuple[float, float]:
    try:
        low, high = (float(end) for end in between)
    except (TypeError, ValueError):
        raise LearnerError(f"between={between!r} is no range; write it as between=(1, 5), in degrees or mm") from None
    if not low < high:
        raise LearnerError(f"between=({low:g}, {high:g}) runs backwards; put the smaller end first")
    return low, high


def family_of(name: str) -> tuple[float, ...]:
    """Values for a family of curves when nobody says: the ends of the usual range, and what is typical."""
    quantity = QUANTITIES[name]
    ends = (quantity.usual.low, quantity.typical, quantity.usual.high)
    return tuple(sorted({value for value in ends if math.isfinite(value)}))
