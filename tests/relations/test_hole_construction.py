"""Holes built from points that move, turn and are measured, instead of from the formulas."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from numpy.typing import NDArray

from drillpoint.relation import Relation
from drillpoint.relations import (
    BOOK,
    breakthrough,
    countersink_depth,
    drilling_time,
    feed_rate,
    full_diameter_depth,
    idle_radius,
    largest_hole,
    lip_height_difference,
    lip_height_from_angles,
    offset_from_run_out,
    oversize,
    point_offset,
    rolled_reading,
    sheet_cover,
    shoulder_depth,
    spindle_speed,
    spot_depth,
    tap_drill_depth,
)
from tests.relations.drills import drills

Vector = NDArray[np.float64]


def _of(relation: Relation, drill: dict[str, float]) -> float:
    return float(relation(**{n: drill[n] for n in relation.givens}))


def _turned(degrees: float) -> Vector:
    """A matrix that turns the plane by so many degrees."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return np.array([[c, -s], [s, c]])


def _slope(half_angle: float) -> Vector:
    """A unit step away from the tip along a lip: the axis turned by the half angle. First across, then down."""
    down = np.array([0.0, 1.0])
    return _turned(-half_angle) @ down


def _at_radius(tip: Vector, step: Vector, radius: float) -> Vector:
    """Where a lip that leaves the tip reaches a distance from the axis, by walking along it."""
    near, far = 0.0, 1e6
    for _ in range(200):
        middle = (near + far) / 2
        near, far = (middle, far) if abs((tip + middle * step)[0]) < radius else (near, middle)
    return tip + near * step


def _first(reached: object, far: float) -> float:
    """The least travel for which something is reached, by halving."""
    near = 0.0
    for _ in range(200):
        middle = (near + far) / 2
        near, far = (near, middle) if reached(middle) else (middle, far)  # type: ignore[operator]
    return far


@given(drills())
def test_the_tip_and_the_corner_of_a_drill_that_goes_down(drill: dict[str, float]) -> None:
    # Depths count downwards from the face. At travel 0 the tip touches the face.
    tip = np.zeros(2)
    corner = _at_radius(tip, _slope(drill["point_angle"] / 2), drill["diameter"] / 2)
    behind = tip[1] - corner[1]
    near = {"rel": 1e-9, "abs": 1e-9}

    shoulder = _first(lambda travel: travel + behind >= drill["shoulder_depth"], 1e5)
    assert _of(full_diameter_depth, drill) == pytest.approx(shoulder, **near)
    assert _of(shoulder_depth, drill) == pytest.approx(drill["depth_to_point"] + behind, **near)
    thread = drill["thread_depth"] + drill["thread_allowance"]
    assert _of(tap_drill_depth, drill) == pytest.approx(_first(lambda x: x + behind >= thread, 1e5), **near)
    through = _first(lambda travel: travel + behind >= drill["sheet_thickness"], 1e5)
    assert _of(breakthrough, drill) == pytest.approx(through, **near)

    out = _first(lambda travel: travel >= drill["sheet_thickness"], 1e5)
    corners_in = _first(lambda travel: travel + behind >= 0, 1e5)
    if abs(out - corners_in) > 1e-6:
        assert (_of(sheet_cover, drill) > 1) == (out > corners_in)


@given(drills())
def test_a_cone_cut_by_the_face(drill: dict[str, float]) -> None:
    half = drill["countersink_angle"] / 2
    whole = _of(spot_depth, drill)
    # Two opposite generators of a cone with its tip at that depth, followed up to the face.
    rims = []
    for side in (-1, 1):
        step = np.array([side, 1]) * -_slope(half)
        rims.append((np.array([0.0, whole]) + step * whole / -step[1])[0])
    assert max(rims) - min(rims) == pytest.approx(drill["mouth_diameter"], rel=1e-9)

    foot = _of(countersink_depth, drill)
    mouth = np.array([drill["mouth_diameter"] / 2, 0.0])
    foot_edge = np.array([drill["flat_diameter"] / 2, foot])
    along = (mouth - foot_edge) / np.linalg.norm(mouth - foot_edge)
    lean = math.degrees(math.acos(float(along @ np.array([0.0, -1.0]))))
    assert 2 * lean == pytest.approx(drill["countersink_angle"], abs=1e-5)


@given(drills())
def test_a_corner_that_turns_moves_at_the_cutting_speed(drill: dict[str, float]) -> None:
    turn = 1e-4
    corner = np.array([drill["diameter"] / 2, 0.0])
    way = float(np.linalg.norm(_turned(turn / 2) @ corner - _turned(-turn / 2) @ corner))
    minutes = turn / 360 / _of(spindle_speed, drill)
    assert way / 1000 / minutes == pytest.approx(drill["cutting_speed"], rel=1e-6)


@settings(max_examples=20, deadline=None)
@given(drills())
def test_turn_after_turn_until_the_hole_is_deep_enough(drill: dict[str, float]) -> None:
    corner = _at_radius(np.zeros(2), _slope(drill["point_angle"] / 2), drill["diameter"] / 2)
    tip, turns = -drill["approach"], 0
    # Large turns so that the simulation ends; what is left of the last turn is a fraction of it.
    own = {**drill, "feed": drill["feed"] + 1}
    goal = drill["shoulder_depth"] + drill["overrun"]
    while tip - corner[1] + own["feed"] <= goal:
        tip, turns = tip + own["feed"], turns + 1
    part = (goal - tip + corner[1]) / own["feed"]
    assert _of(drilling_time, own) == pytest.approx((turns + part) / own["spindle_speed"], rel=1e-9)
    assert _of(feed_rate, own) == pytest.approx(own["feed"] / (1 / own["spindle_speed"]), rel=1e-12)


@given(drills())
def test_a_point_ground_beside_the_axis(drill: dict[str, float]) -> None:
    radius, half = drill["diameter"] / 2, drill["point_angle"] / 2
    offset = min(drill["point_offset"], 0.9 * radius)
    tip = np.array([offset, 0.0])
    right, left = _slope(half), np.array([-1, 1]) * _slope(half)
    corners = [_at_radius(tip, step, radius) for step in (right, left)]
    lengths = [float(np.linalg.norm(corner - tip)) for corner in corners]
    heights = [float(tip[1] - corner[1]) for corner in corners]
    longer, higher = abs(lengths[1] - lengths[0]), abs(heights[1] - heights[0])
    near = {"rel": 1e-7, "abs": 1e-9 * max(1.0, radius)}

    own = {**drill, "lip_length_difference": longer, "lip_height_difference": higher, "point_offset": offset}
    assert _of(lip_height_difference, own) == pytest.approx(higher, **near)
    assert _of(point_offset, own) == pytest.approx(offset, **near)
    # Turned about its own tip, the drill reaches as far as its farthest corner.
    swept = 2 * max(abs(corner[0] - tip[0]) for corner in corners)
    assert _of(oversize, own) == pytest.approx(swept - drill["diameter"], rel=1e-6, abs=1e-9 * radius)
    assert largest_hole(
        diameter=drill["diameter"], lip_length_difference=longer, point_angle=drill["point_angle"]
    ) == pytest.approx(swept, rel=1e-6)


@given(drills())
def test_an_indicator_against_a_drill_that_runs_out(drill: dict[str, float]) -> None:
    offset = _of(offset_from_run_out, drill)
    centre = np.array([offset, 0.0])
    # The indicator touches from the side: it reads how far the round drill reaches towards it.
    reach = [(_turned(turn) @ centre)[0] + drill["diameter"] / 2 for turn in range(0, 360, 5)]
    assert max(reach) - min(reach) == pytest.approx(drill["run_out"], rel=1e-9, abs=1e-12)


@given(drills())
def test_two_lips_at_two_angles(drill: dict[str, float]) -> None:
    places = [_at_radius(np.zeros(2), _slope(drill[n]), drill["radius"]) for n in ("half_angle_1", "half_angle_2")]
    gap = abs(float(places[0][1] - places[1][1]))
    assert _of(lip_height_from_angles, drill) == pytest.approx(gap, rel=1e-7, abs=1e-9 * drill["radius"])


def _chips(drill: dict[str, float], radius: float) -> list[float]:
    """What each lip takes at a radius in its last pass, after many turns of a work that starts flat."""
    back = [-float(_at_radius(np.zeros(2), _slope(drill[n]), radius)[1]) for n in ("half_angle_1", "half_angle_2")]
    bottom, taken = 0.0, [0.0, 0.0]
    enough = 20 + int(4 * max(map(abs, back)) / drill["feed"])
    for half_turn in range(min(enough, 3000)):
        lip = half_turn % 2
        depth = drill["feed"] / 2 * half_turn + back[lip] + max(map(abs, back))
        taken[lip] = max(0.0, depth - bottom)
        bottom = max(bottom, depth)
    return taken


@settings(max_examples=40, deadline=None)
@given(drills())
def test_the_lagging_lip_stops_cutting_where_it_is_said_to(drill: dict[str, float]) -> None:
    # At a usual feed the numbers stay of one size.
    own = {**drill, "feed": min(drill["feed"], 0.5) + 0.05}
    radius = _of(idle_radius, own)
    inside, outside = _chips(own, 0.97 * radius), _chips(own, 1.03 * radius)
    assert min(inside) > 0
    assert min(outside) == 0
    assert sum(inside) == pytest.approx(own["feed"], rel=1e-6)
    assert max(outside) == pytest.approx(own["feed"], rel=1e-6)


@given(drills())
def test_lips_turned_about_the_axis_and_seen_from_the_side(drill: dict[str, float]) -> None:
    across, down = _slope(drill["point_angle"] / 2)
    roll = _turned(drill["roll_angle"])
    seen = []
    for side in (-1, 1):
        x, _ = roll @ np.array([side * across, 0.0])
        seen.append(np.array([x, down]))
    cosine = float(seen[0] @ seen[1] / np.linalg.norm(seen[0]) / np.linalg.norm(seen[1]))
    assert _of(rolled_reading, drill) == pytest.approx(math.degrees(math.acos(cosine)), abs=1e-5)
    assert _of(rolled_reading, drill) <= drill["point_angle"]


def test_a_longer_chain_is_the_same_as_its_links() -> None:
    chained = BOOK["oversize"](lip_length_difference=0.2, point_angle=118)
    height = lip_height_difference(lip_length_difference=0.2, point_angle=118)
    assert chained == pytest.approx(2 * point_offset(lip_height_difference=height, point_angle=118), rel=1e-12)
