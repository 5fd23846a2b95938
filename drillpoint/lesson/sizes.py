"""Sizes as people write them, in a lesson: `work_out(point_height, diameter="3/8 in", point_angle=118)`.

The library itself takes numbers in degrees, mm and mm/rev. In a lesson a size may also stand between quotation marks,
with its unit, and is read just as an answer is.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Any

from drillpoint.quantities import QUANTITIES


def taking_sizes(call: Callable[..., Any]) -> Callable[..., Any]:
    """The same call, with the keywords that are quantities read from text where they are text.

    It raises LearnerError, with the place and examples, for text that cannot be read or has a unit of another sort.
    """

    @wraps(call)
    def reading(*args: Any, **givens: Any) -> Any:
        return call(
            *args, **{name: _read(name, given) if name in QUANTITIES else given for name, given in givens.items()}
        )

    return reading


def _read(name: str, given: Any) -> Any:
    from drillpoint.course.reading import read_number

    if isinstance(given, str):
        return read_number(given, QUANTITIES[name].unit).value
    if isinstance(given, list | tuple):
        return type(given)(_read(name, part) for part in given)
    return given
