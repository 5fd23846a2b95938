"""The sizes in which a shop has its drills: millimetres, fractions of an inch, number and letter drills."""

from __future__ import annotations

import math
import tomllib
from collections.abc import Iterator, Mapping
from fractions import Fraction
from functools import cache
from importlib import resources

from drillpoint.course.exercise import GivenValue
from drillpoint.course.reading import MM_PER_INCH, read_number
from drillpoint.errors import InstructorError

SERIES = ("metric", "fractional", "number", "letter")
# Common practice, from memory: a metric set goes from 1 mm to 13 mm, a fractional one from 1/16 in to 1/2 in, and
# larger drills come in the same steps.
_METRIC_STEP = 0.5
_LARGEST = 25.0
_LARGEST_FRACTION = 1
_SIXTY_FOURTHS = 64


def shop_sizes(series: str, low: str | float = "", high: str | float = "") -> tuple[GivenValue, ...]:
    """The sizes of a series from `low` to `high`, both as a shop writes them: 3, "1/8 in".

    A number or letter drill is shown with its decimal size: "number 7 drill (0.2010 in)".
    InstructorError if the series is not known or nothing of it lies between.
    """
    if series not in SERIES:
        raise InstructorError(f"shop size {series!r} is not known; known are {', '.join(SERIES)}")
    least, most = _size(low, 0.0), _size(high, math.inf)
    every = {"metric": _metric, "fractional": _fractional, "number": _numbers, "letter": _letters}[series]()
    found = tuple(size for size in every if least - 1e-9 <= size.value <= most + 1e-9)
    if not found:
        raise InstructorError(f"there is no {series} size from {low or 'the smallest'} to {high or 'the largest'}")
    return found


def _size(text: str | float, otherwise: float) -> float:
    return otherwise if text == "" else read_number(str(text), "mm").value


def _metric() -> Iterator[GivenValue]:
    for k in range(round(1 / _METRIC_STEP), round(_LARGEST / _METRIC_STEP) + 1):
        yield GivenValue(k * _METRIC_STEP, f"{k * _METRIC_STEP:g} mm")


def _fractional() -> Iterator[GivenValue]:
    for k in range(_SIXTY_FOURTHS // 16, _LARGEST_FRACTION * _SIXTY_FOURTHS + 1):
        size = Fraction(k, _SIXTY_FOURTHS)
        yield GivenValue(float(size) * MM_PER_INCH, f"{size} in")


def _numbers() -> Iterator[GivenValue]:
    for name, inches in _table()["number"].items():
        yield GivenValue(inches * MM_PER_INCH, f"number {name} drill ({inches:.4f} in)")


def _letters() -> Iterator[GivenValue]:
    for name, inches in _table()["letter"].items():
        yield GivenValue(inches * MM_PER_INCH, f"letter {name} drill ({inches:.3f} in)")


@cache
def _table() -> Mapping[str, Mapping[str, float]]:
    text = resources.files("drillpoint.course").joinpath("shop_sizes.toml").read_text(encoding="utf-8")
    table: Mapping[str, Mapping[str, float]] = tomllib.loads(text)
    return table
