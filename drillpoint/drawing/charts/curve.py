"""One curve of a chart as numbers: its places, and where it starts, ends, turns and passes a level."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence

from attrs import field, frozen

from drillpoint.errors import Impossible, OutOfRange
from drillpoint.quantities import Quantity, Span

PLACES = 161  # on paper 8 cm wide they are less than a millimetre apart
HALVINGS = 50
Along = Callable[[float], float]


@frozen
class Curve:
    """A curve in degrees and mm: `y` over `x`, from one end of what is possible to the other.

    label: what tells it from the others. at: the value at any place, nan where there is no such drill.
    """

    label: str
    x: tuple[float, ...]
    y: tuple[float, ...]
    at: Along = field(repr=False, eq=False)

    @property
    def turnings(self) -> tuple[tuple[float, float], ...]:
        """The places where it turns from rising to falling or the other way, ends left out."""
        return tuple(self._turnings())

    def _turnings(self) -> Iterator[tuple[float, float]]:
        tall = max(self.y) - min(self.y)
        for i in range(1, len(self.x) - 1):
            before, here, after = self.y[i - 1 : i + 2]
            # A level stretch with the last digit trembling is no turning.
            if (here - before) * (after - here) < 0 and max(abs(here - before), abs(after - here)) > 1e-9 * tall:
                place = _top(self.at, self.x[i - 1], self.x[i + 1], 1.0 if here > before else -1.0)
                yield place, self.at(place)

    def crossings(self, level: float) -> tuple[float, ...]:
        """The places where it passes this level; an end that stands on it counts for none."""
        above = [y - level for y in self.y]
        return tuple(
            _bisect(lambda x: self.at(x) - level, self.x[i], self.x[i + 1])
            for i in range(len(above) - 1)
            if above[i] * above[i + 1] < 0 or (above[i] == 0 and i > 0 and above[i - 1] * above[i + 1] < 0)
        )


def trace(label: str, result: Quantity, work: Along, span: Span) -> Curve:
    """The curve of `work` over a span, as far as it is possible.

    Ends where nothing is possible beyond them are found to the last digit. Raises the learner's error of the middle of
    the span when nothing is possible anywhere.
    """

    def at(x: float) -> float:
        try:
            y = work(x)
        except (Impossible, OutOfRange, ZeroDivisionError):
            return math.nan
        return y if math.isfinite(y) and y in result.possible else math.nan

    places = [span.low + (span.high - span.low) * i / (PLACES - 1) for i in range(PLACES)]
    stretch = _longest([at(x) for x in places])
    if stretch is None:
        work((span.low + span.high) / 2)
        raise Impossible(
            f"{result.term} is outside what is possible, {result.show_span(result.possible)}, all the way; "
            f"choose another range with between=(from, to)"
        )
    first, last = stretch
    start = _edge(at, places[first], places[first - 1]) if first > 0 else span.low
    end = _edge(at, places[last], places[last + 1]) if last < PLACES - 1 else span.high
    x = tuple(_close_at_the_ends(start, end))
    return Curve(label, x, tuple(at(place) for place in x), at)


def _close_at_the_ends(start: float, end: float) -> Iterator[float]:
    """Places that lie the closer the nearer they are to an end, where curves of the lip bend most."""
    yield start
    for i in range(1, PLACES - 1):
        yield start + (end - start) * (1 - math.cos(math.pi * i / (PLACES - 1))) / 2
    yield end


def _longest(ys: Sequence[float]) -> tuple[int, int] | None:
    """The first and last place of the longest stretch without a gap."""
    best: tuple[int, int] | None = None
    start: int | None = None
    for i, y in enumerate([*ys, math.nan]):
        if not math.isnan(y):
            start = i if start is None else start
        elif start is not None:
            if best is None or i - 1 - start > best[1] - best[0]:
                best = (start, i - 1)
            start = None
    return best


def _edge(at: Along, possible: float, impossible: float) -> float:
    for _ in range(HALVINGS):
        middle = (possible + impossible) / 2
        if math.isnan(at(middle)):
            impossible = middle
        else:
            possible = middle
    return possible


def _bisect(above: Along, low: float, high: float) -> float:
    rising = above(high) > 0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        if (above(middle) > 0) == rising:
            high = middle
        else:
            low = middle
    return (low + high) / 2


def _top(at: Along, low: float, high: float, sign: float) -> float:
    """The place of the highest value between two places (of the lowest for sign -1), by thirds."""
    for _ in range(2 * HALVINGS):
        left, right = low + (high - low) / 3, high - (high - low) / 3
        if sign * at(left) < sign * at(right):
            low = left
        else:
            high = right
    return (low + high) / 2
