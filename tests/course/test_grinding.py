"""What is read on the point that a task's numbers grind: held against the ground point itself and against the book."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.exercise import Measure
from drillpoint.course.grinding import CONE, NEVER, READINGS, measured, set_up, shown, taken
from drillpoint.errors import InstructorError, LearnerError
from drillpoint.ground import ConicalFlank, FacetedFlank, Flute, GroundPoint, Notch, PlaneFlank
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import chisel_edge_angle, feed_relief_loss, heel_clearance, relief_at_radius

DRILL = {"diameter": 10.0, "web": 1.5}
PLANE = {**DRILL, "point_angle": 118.0, "lip_relief": 12.0}
CONICAL = {**DRILL, "cone_half_angle": 25.0, "cone_tilt": 34.0, "apex_distance": 9.5, "skew": 1.45}
FACETS = {**PLANE, "secondary_relief": 30.0, "primary_width": 0.5}


def read(values, reading, radius="", **changed):
    return measured(Measure(reading, changed, radius), values, tuple(values))


def test_of_a_plane_it_is_what_the_book_says():
    assert read(PLANE, "chisel_edge_angle") == pytest.approx(
        float(chisel_edge_angle(point_angle=118, web_ratio=0.15, lip_relief=12)), abs=1e-6
    )
    assert read(PLANE, "heel_clearance") == pytest.approx(
        float(heel_clearance(point_angle=118, web_ratio=0.15, lip_relief=12)), abs=1e-6
    )
    half_way = float(relief_at_radius(radius=2.5, diameter=10, web=1.5, point_angle=118, lip_relief=12))
    assert read(PLANE, "relief_at_radius", "diameter/4") == pytest.approx(half_way, abs=1e-6)
    lost = float(feed_relief_loss(feed=0.2, radius=2.5))
    fed = {**PLANE, "feed": 0.2, "radius": 2.5}
    assert read(fed, "working_relief") == pytest.approx(half_way - lost, abs=1e-6)


@pytest.mark.parametrize(
    ("values", "flank"),
    [
        (CONICAL, ConicalFlank(cone_half_angle=25, cone_tilt=34, apex_distance=9.5, skew=1.45)),
        (FACETS, FacetedFlank(point_angle=118, lip_relief=12, secondary_relief=30, primary_width=0.5)),
        (PLANE, PlaneFlank(point_angle=118, lip_relief=12)),
    ],
)
def test_the_names_say_which_flank_is_meant(values, flank):
    seen = GroundPoint(Flute(diameter=10, web=1.5), flank).inspect()
    for reading in ("point_angle", "lip_relief", "chisel_edge_angle", "chisel_edge_length", "lip_length"):
        assert read(values, reading) == pytest.approx(getattr(seen, reading), abs=1e-12), reading


def test_with_a_cone_a_wanted_relief_grinds_nothing():
    assert read({**CONICAL, "lip_relief": 5.0}, "lip_relief") == read(CONICAL, "lip_relief")


def test_a_notch_thins_the_web():
    thin = {**PLANE, "thinned_chisel_length": 0.6, "thinning_angle": 30.0}
    point = GroundPoint(
        Flute(diameter=10, web=1.5),
        PlaneFlank(point_angle=118, lip_relief=12),
        thinning_1=Notch(thinned_chisel_length=0.6, thinning_angle=30),
    )
    thinning = point.inspect().thinning
    assert read(thin, "thinned_lip_length") == pytest.approx(thinning.mean("thinned_lip_length"))
    assert read(thin, "thinned_web") == pytest.approx(thinning.thinned_web)
    with pytest.raises(InstructorError, match="thinned_chisel_length and thinning_angle"):
        taken(Measure("thinned_web"), tuple(PLANE))


def test_what_is_said_otherwise_is_otherwise():
    further = read(CONICAL, "chisel_edge_angle", apex_distance="1.2*apex_distance")
    assert further == read({**CONICAL, "apex_distance": 1.2 * 9.5}, "chisel_edge_angle")
    assert further < read(CONICAL, "chisel_edge_angle")


def test_a_flank_that_never_comes_up_again_is_told_so():
    near = {**CONICAL, "apex_distance": 6.0, "skew": 1.3}
    assert read(near, "heel_clearance") == NEVER
    assert shown("heel_clearance", NEVER) == "never"
    assert shown("heel_clearance", 40.54, 1) == "40.54°"


def test_every_reading_is_a_quantity_and_can_be_read():
    full = {**PLANE, "thinned_chisel_length": 0.6, "thinning_angle": 30.0, "feed": 0.2, "radius": 2.0}
    for reading in READINGS:
        assert math.isfinite(read(full, reading)), reading
        assert reading in QUANTITIES


@pytest.mark.parametrize(
    ("names", "says"),
    [
        (("web", "point_angle", "lip_relief"), "diameter is missing"),
        (("diameter", "point_angle", "lip_relief"), "web or web_ratio is missing"),
        (("diameter", "web", "lip_relief"), "point_angle is missing"),
        (("diameter", "web", "point_angle", *CONE[:3]), "a relief, or a whole cone"),
    ],
)
def test_numbers_that_make_no_point_are_refused(names, says):
    with pytest.raises(InstructorError, match=says):
        taken(Measure("lip_relief"), names)


def test_a_reading_along_the_lip_needs_its_place_and_a_fed_one_its_feed():
    with pytest.raises(InstructorError, match="read along the lip"):
        taken(Measure("normal_rake"), tuple(PLANE))
    with pytest.raises(InstructorError, match="feed is missing"):
        taken(Measure("working_relief", {}, "diameter/4"), tuple(PLANE))


def test_a_point_that_no_wheel_grinds_says_why():
    with pytest.raises(LearnerError, match="make a lip at"):
        read({**CONICAL, "cone_tilt": 80.0}, "lip_relief")
    with pytest.raises(LearnerError):
        read({**CONICAL, "skew": 9.0}, "lip_relief")


@given(
    st.tuples(*(st.floats(allow_nan=False, allow_infinity=False, width=32) for _ in range(5))),
    st.sampled_from(["lip_relief", "heel_clearance", "chisel_edge_angle"]),
)
def test_whatever_is_typed_gives_a_number_or_a_sentence(typed, reading):
    values = {"web": 1.5, **dict(zip(("diameter", *CONE), typed, strict=True))}
    try:
        found = read(values, reading)
    except LearnerError as error:
        assert str(error)
    else:
        assert isinstance(found, float)


@given(
    st.floats(6, 14), st.floats(10, 40), st.floats(20, 60), st.floats(1, 40), st.floats(0.1, 8), st.floats(0.1, 0.25)
)
def test_whatever_a_fixture_can_be_set_to_gives_a_number_or_a_sentence(diameter, half, tilt, apex, skew, share):
    values = {"diameter": diameter, "web": share * diameter}
    values |= dict(zip(CONE, (half, tilt, apex, skew), strict=True))
    try:
        found = read(values, "lip_relief")
    except LearnerError as error:
        assert str(error)
    else:
        assert -90 < found < 90


def test_the_set_up_for_wanted_angles_grinds_them():
    wanted = {**DRILL, "point_angle": 118.0, "lip_relief": 12.0, "chisel_edge_angle": 125.0, "cone_half_angle": 25.0}
    found = set_up(wanted)
    ground = {**DRILL, "point_angle": 118.0, **{name: found[name] for name in CONE}}
    assert read(ground, "lip_relief") == pytest.approx(12, abs=1e-6)
    assert read(ground, "chisel_edge_angle_at_axis") == pytest.approx(125, abs=1e-6)
    large = set_up({**wanted, "diameter": 25.0, "web": 3.75})
    assert large["cone_tilt"] == pytest.approx(found["cone_tilt"], abs=1e-9)
    assert large["skew"] == pytest.approx(2.5 * found["skew"]) and large["skew"] > 3
    with pytest.raises(LearnerError, match="cannot be had together"):
        set_up({**wanted, "chisel_edge_angle": 96.0})
    with pytest.raises(InstructorError, match="chisel_edge_angle is missing"):
        set_up({name: value for name, value in wanted.items() if name != "chisel_edge_angle"})
