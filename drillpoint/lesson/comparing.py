"""Ground points beside each other: what the same inspector reads on each."""

from __future__ import annotations

import math

import numpy as np

from drillpoint.ground import GroundPoint, Setup
from drillpoint.ground.named import points_by_name
from drillpoint.ground.record import written
from drillpoint.ground.settings.setup_tables import LEVEL_AGAIN, relief_half_way
from drillpoint.ground.table import Table
from drillpoint.lesson.blackboard import Board
from drillpoint.quantities import quantity

_OF_THE_POINT = ("point_angle", "lip_relief", "chisel_edge_angle", "chisel_edge_length", "heel_clearance")
_BESIDE_THE_AXIS = 1e-6
"""Of the radius: so near to the axis, on both sides, the flank is looked at, since facets may meet on it."""


def compare(**points: GroundPoint | Setup) -> Board:
    """Several ground points in one table, as in `compare(plane=plane_setup(...), cone=conical_setup(...))`.

    points: each under a name of your own (an underscore is shown as a space): a ground point, or a set-up, of which the
    point is taken. "Square to the lip" is the fall of the flank in a plane parallel to the axis and square to the lip.

    Raises LearnerError for none or too many, or for something that is no ground point.
    """
    ground = points_by_name(points)
    columns = [_column(point) for point in ground.values()]
    terms = [quantity(name).term for name in _OF_THE_POINT]
    terms[-1] = LEVEL_AGAIN
    terms[1:2] = [
        "lip relief at the corner",
        "lip relief at half the radius",
        "fall square to the lip, at the corner",
        "fall square to the lip, at the axis",
    ]
    rows = tuple(zip(terms, *columns, strict=True))
    table = Table("Read on each point", ("reading", *ground), rows)
    return Board(table.html, str(table))


def _column(point: GroundPoint) -> tuple[str, ...]:
    seen = point.inspect()
    first, *others = (written(name, getattr(seen, name)) for name in _OF_THE_POINT)
    corner = point.lips[0].corner
    return (
        first,
        others[0],
        relief_half_way(seen),
        _fall(point, float(corner.x[0]), float(corner.y[0])),
        _at_the_axis(point),
        *others[1:],
    )


def _at_the_axis(point: GroundPoint) -> str:
    """The fall on the lip's side of the axis, and where it is another behind it, both."""
    beside = _BESIDE_THE_AXIS * point.flute.radius
    first, second = (_fall(point, 0.0, side * beside) for side in (1, -1))
    return first if first == second else f"{first} and {second}"


def _fall(point: GroundPoint, x: float, y: float) -> str:
    _, slope = point.surfaces[0].slope(np.array([x]), np.array([y]))
    return written("axial_relief", math.degrees(math.atan(float(slope[0]))))
