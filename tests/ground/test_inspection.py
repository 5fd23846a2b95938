"""Readings of points that have no simple formula, of faulty points, and the laws that every reading obeys."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.errors import MissingGiven, OutOfRange, UnknownGiven
from drillpoint.ground import CannotBeGround, ConicalFlank, FacetedFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.ground.flank import Flank
from drillpoint.ground.inspection import Inspection, bow_of
from tests.ground.points import ground, plain_drills

FLUTE = Flute(diameter=10, web=1.5, heel_angle=55)
PLAIN = PlaneFlank(point_angle=118, lip_relief=12)
CONICAL = ConicalFlank(cone_half_angle=20, cone_tilt=38.83, apex_distance=9.9, skew=1.41)
FACETED = FacetedFlank(point_angle=118, lip_relief=12, secondary_relief=25)
FLANKS: dict[str, Flank] = {"plane": PLAIN, "conical": CONICAL, "faceted": FACETED}
READINGS = (
    *("point_angle", "half_angle_1", "lip_length_1", "web", "chisel_edge_angle", "chisel_edge_angle_at_axis"),
    *("chisel_edge_length", "chisel_edge_rise", "chisel_edge_rake", "point_offset", "chisel_edge_offset"),
    *("lip_relief_1", "heel_clearance_1", "lip_bow_1", "tip_height", "diameter"),
)


def read(seen: Inspection) -> dict[str, float]:
    """The readings by name."""
    return {name: getattr(seen, name) for name in READINGS}


@pytest.mark.parametrize("flank", FLANKS.values(), ids=FLANKS)
def test_two_equal_flanks_read_as_one(flank: Flank) -> None:
    alike, twice = GroundPoint(FLUTE, flank), GroundPoint(FLUTE, flank, flank)
    assert read(alike.inspect()) == read(twice.inspect())
    assert alike.is_alike


@given(plain_drills(), st.floats(-2, 2), st.floats(-0.002, 0.002))
def test_changing_the_lips_over_changes_their_readings_over(drill: dict[str, float], turn: float, lift: float) -> None:
    """Half a turn of the drill makes lip 1 of lip 2; nothing else may change."""
    flute = Flute(**{name: drill[name] for name in ("diameter", "web", "point_angle", "helix_angle")})
    angles = {name: drill[name] for name in ("point_angle", "axial_relief")}
    one = PlaneFlank(**angles)
    other = PlaneFlank(**angles, flank_turn=turn, flank_height=lift * drill["diameter"])
    first, second = GroundPoint(flute, one, other).inspect(), GroundPoint(flute, other, one).inspect()
    size = drill["diameter"]
    for name in ("half_angle", "lip_length", "lip_relief", "heel_clearance", "lip_bow"):
        swapped = getattr(second, f"{name}_2"), getattr(second, f"{name}_1")
        both = getattr(first, f"{name}_1"), getattr(first, f"{name}_2")
        assert both == pytest.approx(swapped, rel=1e-8, abs=1e-8 * size)
    for name in ("web", "chisel_edge_angle", "chisel_edge_length", "chisel_edge_rise", "point_offset", "tip_height"):
        assert getattr(first, name) == pytest.approx(getattr(second, name), rel=1e-7, abs=1e-7 * size)
    assert first.lip_height_difference == pytest.approx(-second.lip_height_difference, abs=1e-9 * size)


@given(plain_drills(), st.floats(0.2, 1.8))
def test_a_drill_twice_as_big_has_the_same_angles(drill: dict[str, float], scale: float) -> None:
    big = {**drill, "diameter": scale * drill["diameter"], "web": scale * drill["web"]}
    first, second = ground(drill).inspect(), ground(big).inspect()
    for name in READINGS:
        value, larger = getattr(first, name), getattr(second, name)
        is_angle = any(part in name for part in ("angle", "relief", "rake", "clearance"))
        assert larger == pytest.approx(value if is_angle else scale * value, rel=1e-7, abs=1e-7 * big["diameter"])


def test_a_left_hand_drill_reads_like_the_right_hand_one_it_mirrors() -> None:
    left = GroundPoint(Flute(diameter=10, web=1.5, heel_angle=55, hand="left"), CONICAL).inspect()
    assert read(left) == read(GroundPoint(FLUTE, CONICAL).inspect())


@pytest.mark.parametrize(("point_angle", "bow"), [(135, -0.11), (150, -0.19), (90, 0.22)])
def test_lips_bow_away_from_the_flutes_own_angle(point_angle: float, bow: float) -> None:
    """DERIVED, to two figures: a flute for 118°, a flank level square to the lip, from the end of a 125° chisel edge.

    Worked out once more by stepping along the helicoid's own equation; relief adds a little to each.
    """
    lip = GroundPoint(FLUTE, PlaneFlank(point_angle=point_angle, axial_relief=0)).lips[0]
    foot = FLUTE.half_web(1) * math.tan(math.radians(35))
    corner = float(lip.at_radius(np.array([5.0])).along[0])
    seen = bow_of(lip, lip.at(np.linspace(foot, corner, 33)))
    assert seen == pytest.approx(bow, abs=0.0055)
    assert seen == pytest.approx(_bow_by_steps(point_angle, foot), abs=1e-6)


def _bow_by_steps(point_angle: float, foot: float) -> float:
    """From the helicoid's equation alone: screw the design lip until each place is at the flank's height."""
    along = np.linspace(foot, math.sqrt(25 - 0.75**2), 4001)
    design, ground_ = (1 / math.tan(math.radians(angle / 2)) for angle in (118, point_angle))
    turn = np.zeros_like(along)
    for _ in range(100):
        x, y = along * np.cos(turn) - 0.75 * np.sin(turn), along * np.sin(turn) + 0.75 * np.cos(turn)
        turn = (along * design - x * ground_) * math.tan(math.radians(30)) / 5
    off_x, off_y, chord = x - x[0], y - y[0], np.array([x[-1] - x[0], y[-1] - y[0]])
    off = (chord[0] * off_y - chord[1] * off_x) / np.hypot(*chord)
    return float(np.interp(0.5, (chord[0] * off_x + chord[1] * off_y) / (chord @ chord), off))


def test_lips_ground_to_the_flutes_own_angle_are_straight() -> None:
    bows = [GroundPoint(FLUTE, PlaneFlank(point_angle=a, lip_relief=12)).inspect().lip_bow_1 for a in (90, 118, 150)]
    assert bows[0] > 0.1 and abs(bows[1]) < 1e-12 and bows[2] < -0.1


def test_a_far_apex_is_a_plane() -> None:
    """The flat limit: the cone's curve goes as 1 / X, so a thousand times further is a thousand times flatter."""
    tilt, skew = 39.0, 0.75
    gaps = []
    for distance in (1e4, 1e6):
        cone = GroundPoint(FLUTE, ConicalFlank(cone_half_angle=20, cone_tilt=tilt, apex_distance=distance, skew=skew))
        own = cone.lips[0].own
        x, y = np.array([-2.0, 0.0, 1.0, 4.0]), np.array([-2.0, 0.5, -3.0, 0.75])
        slope_x, slope_y = (float(s[0]) for s in own.slope(np.zeros(1), np.zeros(1)))
        flat = own.height(np.zeros(1), np.zeros(1)) + slope_x * x + slope_y * y
        gaps.append(float(np.abs(own.height(x, y) - flat).max()))
    assert gaps[1] < 1e-4
    assert gaps[1] / gaps[0] == pytest.approx(0.01, rel=0.01)


def test_the_chisel_edge_of_a_conical_point_is_curved_and_highest_on_the_axis() -> None:
    seen = GroundPoint(FLUTE, CONICAL).inspect()
    assert seen.chisel_edge_rise > 0.01
    assert seen.chisel_edge_offset == pytest.approx(0, abs=1e-12)
    assert seen.chisel_edge_angle != pytest.approx(seen.chisel_edge_angle_at_axis, abs=0.1)


def test_four_facets_meet_in_a_point_with_two_short_edges() -> None:
    point = GroundPoint(FLUTE, FACETED)
    heights = point.chisel.trace(np.linspace(0, 1, 11))[:, 2]
    assert heights.argmax() == 5
    ridge = np.diff(heights[:6])
    assert ridge == pytest.approx(ridge[0], rel=1e-9) and ridge[0] > 0
    # DERIVED: primary plane against the other's secondary one, tan δ = 2 cot κ / (tan α_1 + tan α_2).
    first, second = FACETED.facets(FLUTE, 1)
    delta = math.degrees(math.atan(-2 * first.slope_x / (first.slope_y + second.slope_y)))
    seen = point.inspect()
    assert seen.chisel_edge_angle == pytest.approx(180 - delta, abs=1e-9)
    assert seen.chisel_edge_angle_at_axis == pytest.approx(180 - delta, abs=1e-6)


def test_a_wide_primary_facet_is_a_plane_flank() -> None:
    wide = FacetedFlank(point_angle=118, lip_relief=12, primary_width=8)
    assert read(GroundPoint(FLUTE, wide).inspect()) == pytest.approx(read(GroundPoint(FLUTE, PLAIN).inspect()))


def test_a_second_facet_keeps_the_heel_clear() -> None:
    plain, faceted = (GroundPoint(FLUTE, f).inspect() for f in (PLAIN, FACETED))
    assert plain.first_rub(1) == pytest.approx(plain.heel_clearance)
    assert faceted.first_rub(1) is None


def test_where_the_flank_first_rubs_moves_forward_with_the_feed() -> None:
    seen = GroundPoint(FLUTE, PLAIN).inspect()
    rubs = [seen.first_rub(1, feed=feed) for feed in (0.0, 0.2, 1.0, 3.0)]
    assert all(b < a for a, b in pairwise([rub for rub in rubs if rub is not None]))
    back, gap = seen.clearance_behind(1, feed=0.2)
    first = back[1:][gap[1:] <= 0][0]
    assert first - (back[1] - back[0]) <= rubs[1] <= first


def test_too_little_relief_rubs_at_once_and_shows_in_the_chisel_edge() -> None:
    seen = GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=0)).inspect()
    assert seen.first_rub(1, feed=0.2) == 0.0
    # DERIVED: no relief at the corner is -5.2° square to the lip, and tan δ = cot κ / tan α_x.
    square = math.atan(-0.15 / math.tan(math.radians(59)) / math.sqrt(1 - 0.15**2))
    assert math.degrees(square) == pytest.approx(-5.2, abs=0.05)
    delta = math.degrees(math.atan2(1 / math.tan(math.radians(59)), math.tan(square)))
    assert seen.chisel_edge_angle_at_axis == pytest.approx(180 - delta, abs=0.05)  # the foot lies on the flute's arc


def test_a_drill_turned_before_grinding_has_its_flank_ahead_or_behind() -> None:
    seen = {
        turn: GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=12, flank_turn=turn)) for turn in (-8, 0, 8)
    }
    angles = [point.inspect().chisel_edge_angle for point in seen.values()]
    reliefs = [point.inspect().lip_relief for point in seen.values()]
    assert angles[0] != pytest.approx(angles[1], abs=1) and angles[2] != pytest.approx(angles[1], abs=1)
    assert (reliefs[0] - reliefs[1]) * (reliefs[2] - reliefs[1]) < 0
    assert all(abs(point.inspect().lip_bow_1) > 0.001 for turn, point in seen.items() if turn)


def test_a_web_off_the_axis_makes_unequal_lips() -> None:
    seen = GroundPoint(Flute(diameter=10, web=1.5, web_offset=0.2), PLAIN).inspect()
    assert seen.web == pytest.approx(1.5, abs=1e-12)
    assert seen.lip_length_1 != pytest.approx(seen.lip_length_2, abs=0.01)
    assert seen.point_offset > 0.01


@pytest.mark.parametrize(
    ("build", "said"),
    [
        (lambda: Flute(diameter=10, web=0.4, web_offset=0.3), "cuts the drill in two"),
        (lambda: Flute(diameter=10, web=9.9), "leaves no flute"),
        (lambda: Flute(diameter=10, web=1.5, hand="up"), "'right' or 'left'"),
        (lambda: GroundPoint(FLUTE, PLAIN, PlaneFlank(point_angle=118, lip_relief=12, flank_height=-7)), "lip"),
        (
            lambda: GroundPoint(FLUTE, FacetedFlank(point_angle=118, axial_relief=20, secondary_relief=15)),
            "not steeper",
        ),
        (
            lambda: GroundPoint(FLUTE, ConicalFlank(cone_half_angle=20, cone_tilt=39, apex_distance=2, skew=3)),
            "apex",
        ),
        (
            lambda: ConicalFlank(cone_half_angle=50, cone_tilt=50, apex_distance=10, skew=1),
            "about half the point angle",
        ),
        (
            lambda: GroundPoint(FLUTE, ConicalFlank(cone_half_angle=15, cone_tilt=44, apex_distance=4, skew=1.0)),
            "falls away before the heel",
        ),
    ],
)
def test_what_no_wheel_can_leave_is_refused_with_the_reason(build: object, said: str) -> None:
    with pytest.raises(CannotBeGround, match=said):
        build()  # type: ignore[operator]


@pytest.mark.parametrize(
    ("givens", "error", "said"),
    [
        ({"diameter": 10, "web": 1.5, "helix": 30}, UnknownGiven, "did you mean 'helix_angle'"),
        ({"web": 1.5}, MissingGiven, "Flute needs diameter"),
        ({"diameter": 10}, MissingGiven, "web or web_ratio"),
        ({"diameter": 10, "web": 1.5, "web_ratio": 0.15}, UnknownGiven, "not both"),
        ({"diameter": 1000, "web": 1.5}, OutOfRange, "outside"),
    ],
)
def test_misspelt_missing_and_impossible_numbers_are_refused(
    givens: dict[str, float], error: type[Exception], said: str
) -> None:
    with pytest.raises(error, match=said):
        Flute(**givens)


def test_numbers_go_by_name() -> None:
    with pytest.raises(UnknownGiven, match="by name"):
        Flute(10, 1.5)  # type: ignore[misc]
