"""Points of a drawing, in symbols or in plain numbers: the same steps serve both.

Plain numbers stay plain, so that a scene worked out by numbers never loads the algebra.
"""

from __future__ import annotations

import math
from typing import Any

Point = tuple[Any, Any]
Curve = list[str | Point]
"""SVG path letters with the points between them."""


def _plain(*values: Any) -> bool:
    return all(isinstance(value, (int, float)) for value in values)


def _algebra() -> Any:
    import sympy

    return sympy


def sqrt(value: Any) -> Any:
    """The square root."""
    return math.sqrt(value) if _plain(value) else _algebra().sqrt(value)


def sin(angle: Any) -> Any:
    """The sine of an angle in radians."""
    return math.sin(angle) if _plain(angle) else _algebra().sin(angle)


def cos(angle: Any) -> Any:
    """The cosine of an angle in radians."""
    return math.cos(angle) if _plain(angle) else _algebra().cos(angle)


def larger(first: Any, second: Any) -> Any:
    """The larger of two numbers."""
    return max(first, second) if _plain(first, second) else _algebra().Max(first, second)


def smaller(first: Any, second: Any) -> Any:
    """The smaller of two numbers."""
    return min(first, second) if _plain(first, second) else _algebra().Min(first, second)


def either(holds: Any, then: Any, otherwise: Any) -> Any:
    """One of two numbers, as a comparison holds or not."""
    if isinstance(holds, bool):
        return then if holds else otherwise
    return _algebra().Piecewise((then, holds), (otherwise, True))


def along(point: Point, direction: Point, distance_: Any) -> Point:
    """The point moved by a distance in a direction."""
    return (point[0] + direction[0] * distance_, point[1] + direction[1] * distance_)


def square(direction: Point) -> Point:
    """The direction turned a quarter turn."""
    return (-direction[1], direction[0])


def polar(centre: Point, radius: Any, angle: Any) -> Point:
    """The point at a radius and an angle from a centre."""
    return (centre[0] + radius * cos(angle), centre[1] + radius * sin(angle))


def heading(angle: Any) -> Point:
    """The unit vector in a direction."""
    return (cos(angle), sin(angle))


def middle(first: Point, second: Point) -> Point:
    """The point halfway between two points."""
    return ((first[0] + second[0]) / 2, (first[1] + second[1]) / 2)


def distance(first: Point, second: Point) -> Any:
    """The distance between two points."""
    return sqrt((second[0] - first[0]) ** 2 + (second[1] - first[1]) ** 2)


def towards(start: Point, end: Point) -> Point:
    """The unit vector from one point to another."""
    length = distance(start, end)
    return ((end[0] - start[0]) / length, (end[1] - start[1]) / length)


def wave(start: Point, end: Point, sag: Any) -> Curve:
    """The steps of a freehand wave from the start, where the path already is, to the end: out by the sag, then in."""
    forward, length = towards(start, end), distance(start, end)
    out, half = square(forward), middle(start, end)
    first = [along(along(start, forward, length * share), out, sag) for share in (1 / 6, 1 / 3)]
    second = [along(along(start, forward, length * share), out, -sag) for share in (2 / 3, 5 / 6)]
    return ["C", *first, half, "C", *second, end]
