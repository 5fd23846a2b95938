"""What a chart shows, as data: the words and the plot are both written from it."""

from __future__ import annotations

import math
from collections.abc import Sequence

from attrs import frozen

from drillpoint.drawing.charts.curve import Curve
from drillpoint.drawing.showing import INCH_UNITS, Units, show
from drillpoint.errors import LearnerError
from drillpoint.quantities import Quantity, Span

POLE = 5.0  # times its inner range; a curve that ends further out is taken to run to a pole


@frozen
class Band:
    """A range of results to be hatched, with what it is: "usual", or who prints it. In degrees and mm."""

    words: str
    low: float
    high: float


@frozen
class Frame:
    """A chart as data. Everything is in degrees and mm; `units` is how it is written.

    title: what goes up. fixed: the values that stay the same, in words; "" for none. against: what goes to the right.
    result: the quantity the results are. family: what the labels of the curves are values of; "" when they are names.
    """

    title: str
    fixed: str
    against: Quantity
    result: Quantity
    span: Span
    curves: tuple[Curve, ...]
    bands: tuple[Band, ...]
    family: str
    units: Units

    def show_x(self, value: float) -> str:
        """A value of the axis to the right, with its unit."""
        return show(self.against.name, value, self.units)

    def show_y(self, value: float) -> str:
        """A value of the axis upwards, with its unit."""
        return show(self.result.name, value, self.units)

    @property
    def height(self) -> Span:
        """The lowest and the highest result of any curve."""
        return Span(min(min(c.y) for c in self.curves), max(max(c.y) for c in self.curves))

    @property
    def view(self) -> Span:
        """From which to which result the chart reaches.

        That is every result and any edge of a band near them; but a curve that runs off to a pole within a twentieth
        of its length is cut, since nothing else could be seen beside it.
        """
        low, high = self.height.low, self.height.high
        inner = [y for c in self.curves for x, y in zip(c.x, c.y, strict=True) if self._is_inner(c, x)]
        bottom, top = min(inner), max(inner)
        reach = POLE * ((top - bottom) or abs(top) or 1.0)
        low = bottom - reach / 10 if low < bottom - reach else low
        high = top + reach / 10 if high > top + reach else high
        room = ((high - low) or abs(high) or 1.0) / 3
        edges = [edge for band in self.bands for edge in (band.low, band.high) if low - room <= edge <= high + room]
        return Span(min(low, *edges, low), max(high, *edges, high))

    @staticmethod
    def _is_inner(curve: Curve, x: float) -> bool:
        margin = (curve.x[-1] - curve.x[0]) / 20
        return curve.x[0] + margin <= x <= curve.x[-1] - margin

    @property
    def passes_zero(self) -> bool:
        """Whether there are results on either side of zero."""
        return self.height.low < 0 < self.height.high


def unit_and_factor(quantity: Quantity, units: Units) -> tuple[str, float]:
    """What the unit is called on an axis, and what a value has to be divided by."""
    if units == "inch":
        return INCH_UNITS.get(quantity.unit, (quantity.unit, 1.0))
    return quantity.unit, 1.0


def read_bands(bands: Sequence[tuple[str, float, float]]) -> tuple[Band, ...]:
    """The bands asked for.

    Raises LearnerError for one that is not (words, low, high).
    """
    return tuple(_band(given) for given in bands)


def _band(given: tuple[str, float, float]) -> Band:
    try:
        words, low, high = given
        low, high = float(low), float(high)
    except (TypeError, ValueError):
        raise LearnerError(f"{given!r} is no band; write bands=[('shop rule', 8, 12)], in degrees or mm") from None
    if not low < high:
        raise LearnerError(f"the band {words!r} from {low:g} to {high:g} runs backwards; put the smaller end first")
    return Band(str(words), low, high)


def usual_band(result: Quantity, curves: Sequence[Curve]) -> tuple[Band, ...]:
    """The usual range of the result, if a curve comes near enough for it to say something."""
    usual = result.usual
    low, high = min(min(c.y) for c in curves), max(max(c.y) for c in curves)
    tells = math.isfinite(usual.high) and usual.low < high and usual.high > low
    # A range that holds every curve says nothing that hatching the whole sheet would make clearer.
    return (Band("usual", usual.low, usual.high),) if tells and not (usual.low <= low and high <= usual.high) else ()
