"""The text twin of a chart: where each curve starts, ends and turns, and where it passes a limit."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from drillpoint.drawing.charts.curve import Curve
from drillpoint.drawing.charts.frame import Frame
from drillpoint.quantities import Quantity, capital


def describe(frame: Frame) -> str:
    """The chart in sentences with its numbers."""
    opening = (
        f"Chart of {frame.title} against {frame.against.term}, "
        f"{frame.show_x(frame.span.low)} to {frame.show_x(frame.span.high)}"
    )
    said = [f"{opening}, for {frame.fixed}." if frame.fixed else f"{opening}."]
    shared = len({(curve.x[0], curve.x[-1]) for curve in frame.curves}) == 1
    said += [_curve(frame, curve, () if shared else _ends(frame, curve)) for curve in frame.curves]
    said += [f"{capital(words)}." for words in _ends(frame, frame.curves[0]) if shared]
    if frame.view.high < frame.height.high or frame.view.low > frame.height.low:
        said.append(f"The chart reaches from {frame.show_y(frame.view.low)} to {frame.show_y(frame.view.high)}.")
    said += [f"Hatched: {band.words}, {frame.show_y(band.low)} to {frame.show_y(band.high)}." for band in frame.bands]
    return " ".join(said)


def _curve(frame: Frame, curve: Curve, ends: Iterable[str]) -> str:
    who = f"{frame.family} {curve.label}" if frame.family else curve.label if len(frame.curves) > 1 else "The curve"
    start, end = frame.show_y(curve.y[0]), frame.show_y(curve.y[-1])
    at_start, at_end = frame.show_x(curve.x[0]), frame.show_x(curve.x[-1])
    if start == end and not curve.turnings:
        said = f"{capital(who)}: {start} throughout, from {at_start} to {at_end}"
    else:
        said = f"{capital(who)}: from {start} at {at_start} to {end} at {at_end}"
    more = [*ends, *_turnings(frame, curve), *_passings(frame, curve)]
    return "; ".join([said, *more]) + "."


def _ends(frame: Frame, curve: Curve) -> Iterator[str]:
    first, last = frame.show_x(curve.x[0]), frame.show_x(curve.x[-1])
    if first != frame.show_x(frame.span.low):
        yield f"nothing is possible below {first}"
    if last != frame.show_x(frame.span.high):
        yield f"nothing is possible above {last}"


def _turnings(frame: Frame, curve: Curve) -> Iterator[str]:
    for x, y in curve.turnings:
        kind = "highest" if y >= max(curve.y[0], curve.y[-1]) else "lowest" if y <= min(curve.y[0], curve.y[-1]) else ""
        yield f"{kind or 'turns at'} {frame.show_y(y)} at {frame.show_x(x)}"


def _passings(frame: Frame, curve: Curve) -> Iterator[str]:
    levels = [(level, f"{band.words} {frame.show_y(level)}") for band in frame.bands for level in (band.low, band.high)]
    if frame.passes_zero and all(level for level, _ in levels):
        levels.append((0.0, "zero"))
    for level, words in sorted(levels):
        places = [frame.show_x(x) for x in curve.crossings(level)]
        if places:
            yield f"passes {words} at {' and '.join(places)}"


def fixed_in_words(quantities: list[tuple[Quantity, str]]) -> str:
    """The values that stay the same: "point angle 118° and web ratio 0.15"."""
    said = [f"{quantity.term} {shown}" for quantity, shown in quantities]
    return said[0] if len(said) == 1 else f"{', '.join(said[:-1])} and {said[-1]}" if said else ""
