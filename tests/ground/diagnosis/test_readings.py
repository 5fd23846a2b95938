"""What was read off a drill: names, ranges, reading errors, rolled drills, and readings of a ground point."""

from __future__ import annotations

import math
from typing import Any

import pytest
from attrs import fields
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.errors import Impossible, OutOfRange, UnknownGiven
from drillpoint.ground import ConicalFlank, Flute, GroundPoint, PlaneFlank, Readings
from drillpoint.ground.diagnosis.readings import Measured, usual_errors, usual_tools, worked_out
from drillpoint.quantities import QUANTITIES

FLUTE = Flute(diameter=10, web=1.5)
CONICAL = ConicalFlank(cone_half_angle=20, cone_tilt=38.83, apex_distance=9.9, skew=1.41)


def test_every_reading_has_a_usual_error() -> None:
    names = {a.name for a in fields(Readings) if a.name in QUANTITIES}
    assert set(usual_errors()) == names


def test_reading_errors_are_the_usual_ones_where_nothing_is_said() -> None:
    readings = Readings(half_angle_1=59, half_angle_2=60, reading_errors={"half_angle_1": 0.25})
    assert readings.read("half_angle_1") == Measured(59, 0.25)
    assert readings.read("half_angle_2") == Measured(60, 0.5)  # common practice: a protractor
    assert readings.read("web") is None
    assert readings.taken == ("half_angle_1", "half_angle_2")


@pytest.mark.parametrize(
    ("givens", "error", "says"),
    [
        ({"lip_lenght_1": 5}, UnknownGiven, "did you mean 'lip_length_1'"),
        ({"reading_errors": {"half_angel_1": 0.5}}, UnknownGiven, "did you mean 'half_angle_1'"),
        ({"reading_errors": {"web": -0.1}}, OutOfRange, "from 0 up"),
        ({"reading_errors": {"web": True}}, OutOfRange, "from 0 up"),
        ({"reading_errors": {"web": math.nan}}, OutOfRange, "from 0 up"),
        ({"half_angle_1": 118}, OutOfRange, "20° to 89.5°"),
        ({"higher_lip": 3}, OutOfRange, "give 1 or 2"),
        ({"web": 12, "diameter": 10}, Impossible, "an eighth of the diameter"),
        ({"lip_length_1": 5.2, "lip_length_2": 0.2}, Impossible, "not of one drill.*in mm"),
        ({"lip_length_1": 5.2, "diameter": 0.375}, Impossible, "too large for a drill of 0.375 mm.*in mm"),
        ({"point_offset": 6, "diameter": 10}, Impossible, "hundredths"),
        ({"web_offset": -6, "diameter": 10}, Impossible, "hundredths"),
        ({"lip_relief": 8, "lip_relief_1": 8}, UnknownGiven, "not both"),
    ],
)
def test_what_cannot_be_read_is_refused(givens: dict[str, Any], error: type[Exception], says: str) -> None:
    with pytest.raises(error, match=says):
        Readings(**givens)


def test_an_acute_chisel_edge_angle_is_read_as_its_supplement() -> None:
    edge = Readings(chisel_edge_angle=55).edge
    assert edge is not None and edge.value == 125


def test_a_chisel_edge_that_leans_back_counts_under_90() -> None:
    edge = Readings(chisel_edge_angle=111, chisel_edge_leans_back=True).edge
    assert edge is not None and edge.value == 69


@pytest.mark.parametrize(("roll", "seen"), [(10, 117.2), (20, 114.8), (30, 110.5)])
def test_the_angle_of_a_rolled_drill_is_put_right(roll: float, seen: float) -> None:
    # DERIVED: a point of 118° reads these, to the digit shown, so both halves are 59° again.
    readings = Readings(half_angle_1=seen / 2, half_angle_2=seen / 2, roll_angle=roll)
    assert readings.angle is not None
    assert readings.angle.value == pytest.approx(118, abs=0.07)
    half, whole = readings.read("half_angle_1"), Readings(point_angle=seen, roll_angle=roll).angle
    assert half is not None and half.value == pytest.approx(59, abs=0.035)
    assert whole is not None and whole.value == pytest.approx(readings.angle.value, abs=1e-9)


def test_a_roll_read_by_eye_makes_the_angle_less_sure() -> None:
    held = Readings(point_angle=118).angle
    rolled = Readings(point_angle=116, roll_angle=15).angle
    assert held is not None and rolled is not None
    assert held.plus_minus == 0.5
    assert rolled.plus_minus > 1


def test_a_roll_is_the_same_for_both_lips() -> None:
    apart = Readings(half_angle_1=58, half_angle_2=58, roll_angle=15).of_both_half_angles(lambda a, b: a - b)
    # DERIVED: two protractor errors of 0.5°, stretched by d(atan(tan κ / cos ρ)) / dκ, which is under 1.1 here.
    assert apart is not None and apart.value == 0
    assert 0.9 < apart.plus_minus < 1.1


@given(st.floats(-5, 5), st.floats(0, 2), st.floats(-5, 5), st.floats(0, 2))
def test_errors_of_a_difference_add_up(a: float, da: float, b: float, db: float) -> None:
    apart = worked_out(lambda x, y: x - y, Measured(a, da), Measured(b, db))
    assert apart.value == a - b
    assert apart.plus_minus == pytest.approx(da + db, abs=1e-12)


def test_an_end_no_drill_has_is_left_out() -> None:
    def only_above(x: float) -> float:
        if x < 0:
            raise OutOfRange("below 0")
        return 2 * x

    assert worked_out(only_above, Measured(1, 3)) == Measured(2, 6)


@pytest.mark.parametrize(
    ("measured", "name", "said"),
    [
        (Measured(59, 0.5), "half_angle_1", "59° ± 0.5°"),
        (Measured(59), "half_angle_1", "59°"),
        (Measured(0.1, 0.02), "lip_height_difference", "0.1 mm ± 0.02 mm (0.0039 ± 0.0008 in)"),
        (Measured(0.26, 0.0063), "web_ratio", "0.26 ± 0.0063"),
    ],
)
def test_a_number_shows_how_far_it_may_be_off(measured: Measured, name: str, said: str) -> None:
    assert measured.show(name) == said


def test_the_readings_of_a_ground_point_are_not_off_at_all() -> None:
    seen = GroundPoint(FLUTE, CONICAL).inspect()
    readings = Readings.of(seen, feed=0.2)
    assert readings.lip_length_1 == seen.lip_length_1
    assert readings.chisel_edge_angle == seen.chisel_edge_angle
    assert not readings.chisel_edge_leans_back
    assert set(readings.reading_errors.values()) == {0.0}
    # The flank of this cone is clear as far as the heel.
    assert readings.heel_clearance == readings.heel_angle == pytest.approx(75)
    assert readings.heel_height is not None and readings.heel_height < 0


def test_a_higher_lip_is_named() -> None:
    plane = {"point_angle": 118, "lip_relief": 12}
    point = GroundPoint(FLUTE, PlaneFlank(**plane), PlaneFlank(**plane, flank_height=0.1))
    readings = Readings.of(point.inspect())
    assert readings.higher_lip == 2
    assert readings.lip_height_difference == pytest.approx(-point.inspect().lip_height_difference)


def test_a_heel_that_stands_proud_is_read() -> None:
    readings = Readings.of(GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=-8)).inspect())
    assert readings.chisel_edge_leans_back
    assert readings.heel_clearance == 0
    assert readings.heel_height is not None and readings.heel_height > 0.5


def test_every_reading_that_may_be_off_has_its_tool() -> None:
    assert set(usual_tools()) == set(usual_errors())
    assert "protractor" in usual_tools()["half_angle_1"] and usual_tools()["feed"] == "as set on the machine"
