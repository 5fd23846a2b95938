"""Several ground points, each under a name of the learner's own, to be looked at beside each other."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from drillpoint.errors import LearnerError
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.setup import Setup

MOST = 5
"""Points that can be told apart in one table or chart."""


def points_by_name(points: Mapping[str, Any]) -> dict[str, GroundPoint]:
    """The ground points under their names as they are shown: an underscore is a space. Of a set-up it is its point.

    Raises LearnerError for none or too many, or for something that is no ground point.
    """
    if not 1 <= len(points) <= MOST:
        raise LearnerError(
            f"give 1 to {MOST} ground points, each with a name of its own, and not {len(points)}; "
            "for example cone=conical_setup(...)"
        )
    return {name.replace("_", " "): _point(name, given) for name, given in points.items()}


def _point(name: str, given: Any) -> GroundPoint:
    point = given.point if isinstance(given, Setup) else given
    if not isinstance(point, GroundPoint):
        raise LearnerError(
            f"{name} is a {type(given).__name__}; give a ground point, or a set-up such as conical_setup(...)"
        )
    return point
