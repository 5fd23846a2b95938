"""A plan from what was given: what is read, what is taken for granted, and what is refused."""

import math
import subprocess
import sys

import pytest

from drillpoint.errors import Impossible, LearnerError, MissingGiven, OutOfRange, UnknownGiven
from drillpoint.planning import plan_regrind
from tests.planning.drills import SOUND, WORN, plan


def test_what_is_not_asked_for_is_the_usual_and_said() -> None:
    found = plan_regrind(diameter=10, point_angle=131, wear_land=0.5)
    # 135° is nearer to 131° than 118° is.
    assert (found.new.point_angle, found.new.lip_relief, found.new.chisel_edge_angle) == (135, 10, 125)
    said = " ".join(found.notes)
    for words in (
        "135° is the nearest usual one",
        "usual ones",
        "relief was not read",
        "web was not read",
        "Flute length",
    ):
        assert words in said
    assert plan(**WORN, new_lip_relief=12, new_chisel_edge_angle=125, web_taper=0.014).notes == ()


def test_a_chip_on_a_point_that_gets_flatter_is_counted_at_the_corner_and_said_so() -> None:
    at_the_corner = "counted as if it were at the corner"
    assert any(at_the_corner in note for note in plan(chip_depth=0.3, new_point_angle=135).notes)
    assert not any(at_the_corner in note for note in plan(chip_depth=0.3).notes)


def test_the_wants_of_the_job_are_met() -> None:
    found = plan(new_point_angle=130, new_lip_relief=9, new_chisel_edge_angle=50)
    assert (found.new.point_angle, found.new.lip_relief, found.new.chisel_edge_angle) == (130, 9, 130)
    assert found.limits.point_angle == 130


def test_a_rolled_drill_is_read_as_it_is() -> None:
    # A 118° point that reads low because it was rolled is no reason to grind.
    assert plan(half_angle_1=None, half_angle_2=None, point_angle=114.8, roll_angle=20).decision == "leave alone"
    assert plan(half_angle_1=None, half_angle_2=None, point_angle=114.8).decision == "regrind"


def test_better_tools_say_more() -> None:
    assert plan(wear_land=0.5).off.corners.plus_minus > 0
    sharp = plan(wear_land=0.5, reading_errors={"wear_land": 0.0, "lip_relief": 0.0})
    assert sharp.off.corners.plus_minus == 0


@pytest.mark.parametrize(
    ("given", "error", "says"),
    [
        ({"wear_lnd": 0.5}, UnknownGiven, "no given called 'wear_lnd'; did you mean 'wear_land'"),
        ({"diameter": None}, MissingGiven, "needs diameter"),
        ({"web": 12}, Impossible, "too large for a drill"),
        ({"wear_land": -1}, OutOfRange, "wear_land -1 mm is outside"),
        ({"reading_errors": {"wear": 1}}, UnknownGiven, "has no reading called 'wear'; did you mean"),
        ({"reading_errors": {"wear_land": -1}}, OutOfRange, "reading error of wear_land is -1"),
        ({"new_point_angle": 200}, OutOfRange, "new_point_angle 200° is outside 60° to 179°"),
    ],
)
def test_what_cannot_be_is_refused_with_what_can(given: dict, error: type[Exception], says: str) -> None:
    with pytest.raises(error, match=says):
        plan_regrind(**{**SOUND, **given})


def test_importing_it_loads_no_page_writer() -> None:
    code = "import sys, drillpoint.planning; print([m for m in ('jinja2', 'sympy', 'matplotlib') if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_the_point_that_comes_out_is_on_this_drill_s_own_flutes() -> None:
    same, flatter = plan(**WORN).point, plan(new_point_angle=135).point
    assert same.inspect().point_angle == pytest.approx(118, abs=1e-6)
    assert (flatter.flute.point_angle, flatter.inspect().lip_bow_1 < -0.1) == (118, True)
    with pytest.raises(LearnerError, match=r"grinds no point \(leave alone\)"):
        _ = plan().point


def test_cures_come_in_the_order_of_grinding_and_only_where_something_is_shown() -> None:
    assert plan(**WORN).cures == ()
    found = plan(half_angle_1=58, half_angle_2=61, lip_relief=3, heel_angle=75)
    first, second = found.cures
    assert first.startswith("Grind the lip that is off to the wanted half angle")
    # DERIVED: 75° round a radius of 5 mm the flank has to fall by the tangent of 8° in place of 3°.
    heel = 2 * math.pi * 5 * 75 / 360 * (math.tan(math.radians(8)) - math.tan(math.radians(3)))
    assert second.endswith(f"Off the heel only: {heel:.2f} mm ({heel / 25.4:.3f} in).")
