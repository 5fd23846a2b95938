"""Notches stand where they are set, and those that miss or take too much are refused with the reason."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given

from drillpoint.ground import CannotBeGround, ConicalFlank, Flute, GroundPoint, Notch, PlaneFlank
from drillpoint.ground.thinned import own_frame
from drillpoint.relations import thinning_reach
from tests.ground.thinned_points import USUAL, ThinnedDrill, thinned_drills

_FLUTE = Flute(diameter=10, web=1.5)
_CONE = ConicalFlank(cone_half_angle=20, cone_tilt=38.83, apex_distance=1.979 * 5, skew=0.283 * 5)


@given(thinned_drills())
def test_the_two_ways_to_say_the_place_agree(drill: ThinnedDrill) -> None:
    # DERIVED: the end of the chisel edge is half its length out, at the acute chisel edge angle less the thinning angle
    # to the face.
    turn = drill.delta - math.radians(drill.notch["thinning_angle"])
    distance = drill.notch["thinned_chisel_length"] / 2 * math.sin(turn)
    by_length = drill.grind().thinned
    by_distance = drill.grind(thinned_chisel_length=None, face_distance=distance).thinned
    close = pytest.approx(by_length.chisel.first, abs=1e-8 * drill.diameter)
    assert by_distance.chisel.first == close
    made = by_length.notches[0]
    assert made is not None
    nu = math.radians(drill.notch["thinning_angle"])
    assert made.end[:2] @ [-math.sin(nu), math.cos(nu)] == pytest.approx(distance, abs=1e-9 * drill.diameter)


@given(thinned_drills())
def test_places_that_are_left_are_on_the_walls_of_the_notch_and_on_the_old_edges(drill: ThinnedDrill) -> None:
    point = drill.grind()
    made, close = point.thinned.notches[0], 1e-8 * drill.diameter
    assert made is not None
    for place in (point.thinned.chisel.first, point.thinned.feet[0].point[0]):
        assert abs(float(made.depth(*place))) < close
        assert float(point.height(place[:1], place[1:2])[0]) == pytest.approx(place[2], abs=close)
    assert bool(point.is_notched(*point.chisel.first))
    assert not bool(point.is_notched(*point.lips[0].at_radius(np.array([drill.diameter / 2])).point[0]))


@given(thinned_drills())
def test_half_a_turn_swaps_the_two_notches(drill: ThinnedDrill) -> None:
    flank = PlaneFlank(point_angle=drill.point_angle, axial_relief=drill.axial_relief)
    shallow = {**drill.notch, "notch_depth": drill.notch["notch_depth"] / 2}
    notch, other = Notch(**drill.notch), Notch(**shallow)
    first = GroundPoint(drill.flute(), flank, thinning_1=notch, thinning_2=other).thinned
    second = GroundPoint(drill.flute(), flank, thinning_1=other, thinning_2=notch).thinned
    assert first.chisel.first == pytest.approx(own_frame(2, second.chisel.second), abs=1e-9 * drill.diameter)
    assert first.axis_distances == pytest.approx(second.axis_distances[::-1], abs=1e-9 * drill.diameter)


def test_a_second_notch_left_out_is_the_first_again_and_none_leaves_the_side_as_it_is() -> None:
    notch = Notch(**USUAL.notch)
    flank = PlaneFlank(point_angle=118, axial_relief=22.8)
    both, one = (
        GroundPoint(_FLUTE, flank, thinning_1=notch),
        GroundPoint(_FLUTE, flank, thinning_1=notch, thinning_2=None),
    )
    assert both.thinning_2 == notch and both.is_alike
    assert one.thinned.notches[1] is None and not one.is_alike
    assert one.thinned.chisel.second == pytest.approx(one.chisel.second)
    assert one.thinned.feet[1] == one.feet[1]
    plain = GroundPoint(_FLUTE, flank)
    assert plain.thinned.notches == (None, None)
    assert plain.thinned.chisel.first == pytest.approx(plain.chisel.first)
    assert not plain.is_notched(*np.zeros((3, 4))).any()


@pytest.mark.parametrize("rake", [-10.0, 0.0, 10.0])
@pytest.mark.parametrize("length", [0.3, 0.9, 1.5])
def test_on_a_curved_flank_the_chisel_edge_is_as_long_as_set(length: float, rake: float) -> None:
    notch = Notch(thinned_chisel_length=length, thinning_angle=28, notch_depth=0.1, notch_rake=rake)
    point = GroundPoint(_FLUTE, _CONE, thinning_1=notch)
    left, foot = point.thinned.chisel, point.thinned.feet[0].point[0]
    assert np.hypot(*(left.first - left.second)[:2]) == pytest.approx(length, abs=1e-9)
    run = (foot - left.first)[:2]
    assert math.degrees(math.atan2(run[1], run[0])) == pytest.approx(28, abs=1e-7)


def test_a_rounding_that_reaches_up_leaves_more_of_the_chisel_edge() -> None:
    lengths = []
    for radius in (0.0, 0.02, 0.05, 0.1):
        left = USUAL.grind(notch_depth=0.0, corner_radius=radius).thinned.chisel
        lengths.append(float(np.hypot(*(left.first - left.second)[:2])))
    assert lengths[0] == pytest.approx(0.8, abs=1e-9)
    assert (np.diff(lengths) > 0.005).all()
    # DERIVED: what bounds the edge is the cylinder of the rounding, so its axis is one radius away.
    point = USUAL.grind(notch_depth=0.0, corner_radius=0.1)
    made = point.thinned.notches[0]
    assert made is not None
    axis = made.rounding(2)[1] - made.corner
    axis = made.corner + axis * (1 + 0.1 / np.linalg.norm(axis))
    off = point.thinned.chisel.first - axis
    assert np.linalg.norm(off - (off @ made.along) * made.along) == pytest.approx(0.1, abs=1e-9)


def test_a_deep_enough_rounding_leaves_the_edges_as_a_sharp_corner_does() -> None:
    sharp, rounded = (USUAL.grind(notch_depth=0.3, corner_radius=radius).thinned for radius in (0.0, 0.1))
    assert sharp.chisel.first == pytest.approx(rounded.chisel.first, abs=1e-12)
    assert rounded.axis_distances[0] > sharp.axis_distances[0] + 0.01


def test_a_thinning_angle_is_refused_where_the_closed_form_reaches_the_corner() -> None:
    givens = USUAL.book("web", "chisel_edge_angle", "thinned_chisel_length")
    outer = math.sqrt(5**2 - 0.75**2)
    low, high = 1.0, 30.0
    for _ in range(60):
        middle = (low + high) / 2
        reach = thinning_reach.unchecked(**givens, thinning_angle=middle)
        low, high = (middle, high) if reach > outer else (low, middle)
    with pytest.raises(CannotBeGround, match="past the outer corner of lip 1"):
        USUAL.grind(thinning_angle=high * (1 - 1e-6))
    assert USUAL.grind(thinning_angle=high * (1 + 1e-6)).thinned.feet[0].x[0] == pytest.approx(outer, rel=1e-4)


@pytest.mark.parametrize(
    ("changes", "reason"),
    [
        ({"thinned_chisel_length": 1.9}, "misses the chisel edge.*smaller thinned_chisel_length"),
        ({"thinned_chisel_length": None, "face_distance": 0.9}, "misses the chisel edge.*smaller face_distance"),
        ({"thinned_chisel_length": None, "face_distance": -0.8}, "takes the whole chisel edge"),
        ({"thinned_chisel_length": None, "face_distance": -0.2}, "between them take the whole chisel edge"),
        ({"thinning_angle": 60.0}, "pass the axis on the wrong sides"),
        ({"thinning_angle": 4.0}, "past the outer corner"),
        ({"notch_depth": 0.0, "corner_radius": 1.5}, "corner_radius is too large for its notch_depth"),
        ({"notch_slope": 0.0}, "face does not reach lip 1: the floor"),
        ({"notch_slope": 12.0, "corner_radius": 0.12}, "face does not reach lip 1: the corner_radius is too large"),
        ({"notch_slope": 0.0, "notch_depth": 1.5}, "cuts into lip 2"),
        ({"notch_rake": 40.0}, "breaks through the margin"),
        ({"notch_rake": 30.0, "notch_depth": 1.5}, "meet below the tip"),
    ],
)
def test_refusals_say_why(changes: dict[str, Any], reason: str) -> None:
    with pytest.raises(CannotBeGround, match=reason):
        USUAL.grind(**changes)


@pytest.mark.parametrize("length", [0.05, 0.3, 0.6])
def test_nothing_is_left_not_a_number(length: float) -> None:
    notch = Notch(thinned_chisel_length=length, thinning_angle=25, notch_depth=0.1, corner_radius=0.05)
    left = GroundPoint(_FLUTE, _CONE, thinning_1=notch).thinned
    assert np.isfinite([left.chisel.first, left.chisel.second, left.feet[0].point[0]]).all()
    assert np.isfinite(left.axis_distances).all()
