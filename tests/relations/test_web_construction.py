"""The web's growth, thinning and pilot holes, built from points and lines instead of formulas."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings

from drillpoint.relations import (
    pilot_cover,
    pilot_diameter,
    thinned_lip_in_end_view,
    thinned_lip_length,
    thinned_web,
    thinning_reach,
    untouched_lip_length,
    untouched_lip_share,
    web_after_shortening,
)
from tests.relations.drills import drills


def _of(relation: object, drill: dict[str, float]) -> float:
    return float(relation(**{n: drill[n] for n in relation.givens}))  # type: ignore[attr-defined, operator]


class _EndView:
    """The end view as points: main lip on y = t, chisel edge through the axis, thinned lip between them."""

    def __init__(self, drill: dict[str, float]) -> None:
        self.drill = drill
        self.t = drill["web"] / 2
        turn = math.radians(180 - drill["chisel_edge_angle"])
        along = np.array([math.cos(turn), math.sin(turn)])
        self.chisel_end = drill["thinned_chisel_length"] / 2 * along
        self.chisel_corner = along * self.t / along[1]
        lean = math.radians(drill["thinning_angle"])
        self.direction = np.array([math.cos(lean), math.sin(lean)])
        # Where the thinned lip's line crosses the main lip's line, as two equations.
        way = np.linalg.solve(np.column_stack([self.direction, [-1.0, 0.0]]), np.array([0.0, self.t]) - self.chisel_end)
        self.meeting = self.chisel_end + way[0] * self.direction
        self.outer = np.array([math.sqrt((drill["diameter"] / 2) ** 2 - self.t**2), self.t])

    def on_flank(self, place: np.ndarray) -> np.ndarray:
        """A place of the end view on the flank, its height measured from the axis' foot on the main lip."""
        cot = 1 / math.tan(math.radians(self.drill["point_angle"] / 2))
        rise = math.tan(math.radians(self.drill["axial_relief"]))
        return np.array([*place, -place[0] * cot + (place[1] - self.t) * rise])


@given(drills())
def test_thinned_lip_is_the_line_between_its_ends(drill: dict[str, float]) -> None:
    view = _EndView(drill)
    scale = drill["diameter"]
    assert _of(thinning_reach, drill) == pytest.approx(view.meeting[0], rel=1e-9, abs=1e-9 * scale)
    seen = np.linalg.norm(view.meeting - view.chisel_end)
    assert _of(thinned_lip_in_end_view, drill) == pytest.approx(seen, rel=1e-7, abs=1e-9 * scale)
    true = np.linalg.norm(view.on_flank(view.meeting) - view.on_flank(view.chisel_end))
    assert _of(thinned_lip_length, drill) == pytest.approx(true, rel=1e-7, abs=1e-9 * scale)


@given(drills())
def test_what_is_left_of_the_main_lip_is_measured_on_the_flank(drill: dict[str, float]) -> None:
    view = _EndView(drill)
    left = np.linalg.norm(view.on_flank(view.outer) - view.on_flank(view.meeting))
    whole = np.linalg.norm(view.on_flank(view.outer) - view.on_flank(view.chisel_corner))
    assert _of(untouched_lip_length, drill) == pytest.approx(left, rel=1e-7)
    assert _of(untouched_lip_share, drill) == pytest.approx(left / whole, rel=1e-7)


@given(drills())
def test_web_left_is_the_distance_between_the_two_thinned_lips(drill: dict[str, float]) -> None:
    view = _EndView(drill)
    # Lip 2 is lip 1 turned half round the axis; the distance of their lines is the cross product with the direction.
    between = 2 * view.chisel_end
    distance = abs(between[0] * view.direction[1] - between[1] * view.direction[0])
    assert _of(thinned_web, drill) == pytest.approx(distance, rel=1e-7, abs=1e-12)


@settings(max_examples=25)
@given(drills())
def test_web_grows_slice_by_slice(drill: dict[str, float]) -> None:
    # Grind the drill off in a thousand slices, each a little thicker than the one before.
    web = drill["web"]
    for _ in range(1000):
        web += drill["web_taper"] * drill["length_removed"] / 1000
    assert _of(web_after_shortening, drill) == pytest.approx(web, rel=1e-9)


@given(drills())
def test_the_least_pilot_is_the_circle_through_the_chisel_edges_ends(drill: dict[str, float]) -> None:
    corner = _EndView(drill).chisel_corner
    circle = 2 * math.hypot(*corner)
    assert _of(pilot_diameter, drill) == pytest.approx(circle, rel=1e-9)
    assert _of(pilot_cover, drill) == pytest.approx(drill["pilot_diameter"] / circle, rel=1e-9)
