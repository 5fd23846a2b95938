"""Used drills for the tests of planning, each with one thing wrong."""

from __future__ import annotations

from typing import Any

from drillpoint.planning import RegrindPlan, plan_regrind

# CHOSEN: a 10 mm drill as it came from the wheel once, read with care and long enough for its work.
SOUND: dict[str, Any] = {
    "diameter": 10,
    "half_angle_1": 59,
    "half_angle_2": 59,
    "lip_height_difference": 0.01,
    "lip_relief": 12,
    "chisel_edge_angle": 126,
    "web": 1.5,
    "flute_length": 80,
    "deepest_hole": 25,
    "new_point_angle": 118,
}
WORN = {"wear_land": 0.6}


def plan(**other: Any) -> RegrindPlan:
    """A plan for the sound drill with something else read or wanted; None takes a reading away."""
    given = {name: value for name, value in {**SOUND, **other}.items() if value is not None}
    return plan_regrind(**given)
