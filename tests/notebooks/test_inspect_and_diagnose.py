"""The lesson on inspecting and diagnosing: the numbers in its prose, what its words claim, the relations it shows.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the diagnosis), CHOSEN (the drills of the lesson and what was read off them), or SOURCE.
"""

from __future__ import annotations

import math
import re
from typing import Any

import pytest

from drillpoint.ground import Flute, GroundPoint, Limits, PlaneFlank, Readings, find_faults
from drillpoint.ground.diagnosis.fault import kinds
from drillpoint.ground.diagnosis.limits import usual_limits
from drillpoint.ground.diagnosis.readings import usual_errors
from drillpoint.ground.diagnosis.signs import signs
from drillpoint.quantities import plain_number
from drillpoint.relations import (
    idle_radius,
    largest_hole,
    lip_height_difference,
    lip_height_from_angles,
    offset_from_run_out,
    oversize,
    point_height,
    point_offset,
    rolled_reading,
)
from tests.notebooks.prose import code, unaccounted

LESSON = "10-inspect-and-diagnose.ipynb"
INCH = 25.4

# CHOSEN: the drills of the lesson, what is allowed, and what was read.
D, A, FLATTER = 10, 118, 135
HALF = A / 2
ALLOWED = 0.1  # mm that a hole may be wider
HOLES = {"A": 10.38, "B": 10.22, "C": 10.36}
LONGER, BY_RULE, STEP = 0.5, (5.4, 4.9), 0.26  # drill A: as made, by the steel rule, by the indicator
KAPPAS, FEED, FEEDS = (59, 61), 0.15, (0.1, 0.15, 0.2)  # drill B
SWING = 0.38  # drill C
HALF_INCH, THOUSANDTHS = INCH / 2, 0.003
TO_THE_DOT, ONE_OFF, TWO_OFF = (58.5, 59.5), 58, 57
AFTER = 0.02  # drill A ground again
ROLLED = 20


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it."""
    return f"{value:.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:g}"


def height(longer: float) -> float:
    """How far the corner of a longer lip lies behind."""
    return float(lip_height_difference(lip_length_difference=longer, point_angle=A))


def wider(step: float, angle: float = A) -> float:
    """How much wider than the drill the hole can be."""
    return float(oversize(lip_height_difference=step, point_angle=angle))


def by_length(longer: float) -> float:
    """The same for lips that differ in length."""
    return float(oversize(lip_length_difference=longer, point_angle=A))


def apart(first: float, second: float) -> float:
    """How far the corners of the 10 mm drill differ in height."""
    return float(lip_height_from_angles(radius=D / 2, half_angle_1=first, half_angle_2=second))


def idle(feed: float) -> float:
    """Outside which radius drill B's lagging lip is idle."""
    return float(idle_radius(feed=feed, half_angle_1=KAPPAS[0], half_angle_2=KAPPAS[1]))


def taller(half: float) -> float:
    """How much taller the point gets with this half angle on both sides."""
    return float(point_height(diameter=D, point_angle=2 * half)) - float(point_height(diameter=D, point_angle=A))


STEP_ALLOWED = float(oversize.solve("lip_height_difference", oversize=ALLOWED, point_angle=A))
NEEDED = float(oversize.solve("lip_length_difference", oversize=HOLES["A"] - D, point_angle=A))
FULL_FEED = float(idle_radius.solve("feed", idle_radius=D / 2, half_angle_1=KAPPAS[0], half_angle_2=KAPPAS[1]))
RULE_HOLDS = 2 * math.degrees(math.atan(2))
AS_LONG = float(
    lip_height_difference.solve("lip_length_difference", lip_height_difference=apart(*TO_THE_DOT), point_angle=A)
)
LEVEL_TO = usual_errors()["lip_height_difference"]
CARRIED = float(offset_from_run_out(run_out=SWING))
SEEN_FROM_SPINDLE = 2 * CARRIED / math.tan(math.radians(HALF))
DRILL_C = Readings(diameter=D, point_angle=A, lip_height_difference=0, hole_diameter=HOLES["C"])
IN_ORDER = Readings(
    diameter=D, half_angle_1=KAPPAS[0], half_angle_2=KAPPAS[1], lip_height_difference=0.6, higher_lip=2, web=2.5
)


def in_inches(step: float, angle: float) -> str:
    """The widest hole of the 1/2 in drill, as the table prints it."""
    hole = largest_hole(diameter=HALF_INCH, lip_height_difference=step * INCH, point_angle=angle)
    return n(float(hole) / INCH, 4)


TOLERANCE = usual_limits()["point_angle_tolerance"].value

FIGURES: dict[str, list[str]] = {
    "title": ["10", "40", "3"],
    "cautions": ["3"],
    "shop": ["3", plain(ALLOWED), n(ALLOWED / INCH, 3), n(D), *(n(hole, 2) for hole in HOLES.values())],
    "chips": ["3"],
    "lips": ["8", plain(LONGER), n(HALF)],
    "lips-remarks": ["1", "0", "2", plain(D + ALLOWED), "3", n(FLATTER)],
    "lips-dragged": [n(STEP_ALLOWED, 2), n(FLATTER), n(D + wider(STEP_ALLOWED, FLATTER), 3), n(HALF)],
    "lips-back": [plain(round(HOLES["A"] - D, 2))],
    "lips-most": [n(height(LONGER), 3), plain(FEEDS[2]), plain(FEEDS[2] / 2)],
    "rule": ["4", "1/2", plain(THOUSANDTHS), n(0.5 + 2 * THOUSANDTHS, 3)],
    "rule-at": [plain(THOUSANDTHS), plain(round(THOUSANDTHS * INCH, 4))],
    "rule-answer": [
        *("1/2", *(text for angle in (90, A, FLATTER) for text in (n(angle), in_inches(THOUSANDTHS, angle)))),
        *(n(0.5 + 2 * THOUSANDTHS, 4), n(A), n(FLATTER), n(RULE_HOLDS, 1)),
    ],
    "angles": ["8", *map(n, KAPPAS), n(sum(KAPPAS)), n(A), plain(TOLERANCE)],
    "angles-remarks": ["1", "2", "60", n(KAPPAS[0]), "2", n(KAPPAS[1]), "3"],
    "angles-dragged": [n(FULL_FEED, 3)],
    "angles-idle": [plain(FEED), n(idle(FEED), 2), n(D / 2)],
    "angles-off": [n(TWO_OFF), *map(plain, TO_THE_DOT), n(sum(TO_THE_DOT))],
    "angles-both": [
        *(n(D), n(TWO_OFF), n(TWO_OFF), n(2 * TWO_OFF), n(taller(TWO_OFF), 2)),
        *(n(ONE_OFF), n(ONE_OFF), n(2 * ONE_OFF), n(taller(ONE_OFF), 2)),
        *(*map(plain, TO_THE_DOT), n(sum(TO_THE_DOT)), n(apart(*TO_THE_DOT), 3)),
        *(n(taller(ONE_OFF) / D, 3), n(AS_LONG, 2)),
    ],
    "sure": ["6"],
    "sure-rule": [*map(plain, BY_RULE)],
    "sure-undecided": [plain(usual_errors()["lip_length_1"])],
    "sure-shown": ["2", plain(STEP), plain(LEVEL_TO)],
    "spindle": ["4", n(HOLES["C"], 2)],
    "spindle-remarks": [n(wider(LEVEL_TO), 3), plain(SWING)],
    "spindle-answer": [n(SEEN_FROM_SPINDLE, 3), plain(FEEDS[2])],
    "order": ["3", "1", "2", "3", "4", "5"],
    "recheck": ["3"],
    "recheck-a": [plain(STEP), "2"],
    "recheck-angles": [n(HALF)],
    "recheck-indicator": [plain(AFTER), "0.2"],
    "disagree": ["2", plain(ALLOWED)],
    "back": ["1", plain(STEP), "2"],
    "next": ["11"],
    "card": [
        *("1", "2", "3", "4", "5", n(D), n(A)),
        *(plain(LONGER), n(height(LONGER), 3)),
        *("2", n(float(point_offset(lip_height_difference=height(LONGER), point_angle=A)), 3)),
        *("2", n(by_length(LONGER), 3)),
        *("1", "2", *map(n, KAPPAS), n(apart(*KAPPAS), 3)),
        *("2", "1", "2", plain(FEED), n(idle(FEED), 2)),
        *("2", plain(SWING), n(2 * CARRIED, 2)),
        *("2", n(ROLLED), n(float(rolled_reading(point_angle=A, roll_angle=ROLLED)), 1)),
        *("0.1", "0.2", plain(LONGER), n(A)),
        *(text for longer in (0.1, 0.2, LONGER) for text in (n(by_length(longer), 3), n(by_length(longer) / INCH, 4))),
        "4.0",
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_a_wrong_number_would_be_noticed() -> None:
    assert "rule" in unaccounted(LESSON, {**FIGURES, "rule": ["4", "1/2", "0.003", "0.507"]})


def test_each_drill_can_have_made_its_hole() -> None:
    # A: lips that differ by 0.5 mm, as by the indicator, are enough for the hole; C: the swing is.
    assert NEEDED < LONGER
    assert D + by_length(LONGER) > HOLES["A"] and D + wider(STEP) > HOLES["A"]
    assert pytest.approx(height(LONGER), abs=LEVEL_TO) == STEP
    assert D + 2 * CARRIED >= HOLES["C"] > D + wider(LEVEL_TO)
    assert all(hole > D + ALLOWED for hole in HOLES.values())


def test_the_shop_rule_is_wrong_both_ways() -> None:
    rule = 2 * THOUSANDTHS * INCH
    assert wider(THOUSANDTHS * INCH, A) < rule < wider(THOUSANDTHS * INCH, FLATTER)
    assert wider(THOUSANDTHS * INCH, RULE_HOLDS) == pytest.approx(rule)
    # What is printed of it elsewhere: .505 from .500, and .0072 over.
    assert (in_inches(THOUSANDTHS, A), in_inches(THOUSANDTHS, FLATTER)) == ("0.5050", "0.5072")


def test_one_lip_does_it_all_where_the_drill_is_held_on_its_axis() -> None:
    # A lip that lags by more than half the feed at every radius reaches nothing: A in a bush, C in its spindle.
    assert height(LONGER) > FEEDS[2] / 2
    assert FEEDS[2] / 2 < SEEN_FROM_SPINDLE


def test_a_lighter_feed_leaves_the_lagging_lip_less_to_do() -> None:
    assert [idle(feed) for feed in FEEDS] == sorted(idle(feed) for feed in FEEDS)
    assert all(idle(feed) < D / 2 for feed in FEEDS) and idle(FULL_FEED) == pytest.approx(D / 2)
    # "More than twice the heaviest feed of this lesson."
    assert 2 * FEEDS[2] < FULL_FEED


def test_off_on_both_sides_keeps_the_lips_level() -> None:
    assert apart(TWO_OFF, TWO_OFF) == apart(ONE_OFF, ONE_OFF) == 0 < apart(*TO_THE_DOT)
    assert sum(TO_THE_DOT) == A
    # And yet it is more than the shop allows.
    assert apart(*TO_THE_DOT) > usual_limits()["lip_height_difference"].value


def test_a_rolled_drill_reads_too_sharp() -> None:
    assert all(float(rolled_reading(point_angle=A, roll_angle=roll)) < A for roll in (10, 20, 30))


def found(**readings: Any) -> dict[str, str]:
    """What is called, and how surely."""
    return {fault.key: fault.confidence for fault in find_faults(Readings(**readings)).faults}


def test_the_rule_is_too_coarse_and_the_indicator_is_not() -> None:
    first, second = BY_RULE
    assert first - second == pytest.approx(LONGER) and 2 * usual_errors()["lip_length_1"] >= LONGER
    by_rule = find_faults(Readings(diameter=D, point_angle=A, lip_length_1=first, lip_length_2=second))
    assert by_rule.faults == () and [u.key for u in by_rule.undecided] == ["unequal_lips"]
    assert found(diameter=D, point_angle=A, lip_height_difference=STEP, higher_lip=2) == {"lip_height": "shown"}
    assert found(half_angle_1=KAPPAS[0], half_angle_2=KAPPAS[1], diameter=D)["unequal_angles"] == "shown"


def test_the_innocent_drill_has_no_fault_of_its_own() -> None:
    report = find_faults(DRILL_C, signs=["unequal_chips"])
    assert [fault.key for fault in report.faults] == ["wide_hole"]
    assert report.faults[0].kind.order == 0  # nothing for the wheel
    assert f"explain at most {plain_number(wider(LEVEL_TO), 3)} mm" in report.agreements[0]
    assert "run-out of drill and spindle" in report.faults[0].cure
    assert "runs out with the spindle" in report.signs[0]


def test_chips_point_where_the_lesson_says() -> None:
    assert set(signs()["one_ribbon"].points_to) == {"unequal_lips", "lip_height", "unequal_angles"}
    assert signs()["two_ribbons"].points_to == ()
    assert "too_little_relief" in signs()["dust"].points_to and "Dull lips" in signs()["dust"].besides


def test_faults_are_put_right_in_the_order_of_the_table() -> None:
    of = {key: kind.order for key, kind in kinds().items()}
    assert of["unequal_angles"] < of["too_little_relief"] < of["lip_height"] < of["worn_corners"] < of["thick_web"]
    keys = [fault.key for fault in find_faults(IN_ORDER).for_the_wheel()]
    assert keys == ["unequal_angles", "lip_height", "thick_web"]
    # "The table puts the worst one first."
    assert find_faults(IN_ORDER).faults[0].key == "lip_height"
    assert "half_angle_2=61,\n    lip_height_difference=0.6, higher_lip=2, web=2.5" in code(LESSON)["order-found"]


def test_an_angle_ground_again_changes_the_lip_height() -> None:
    """ "Correct an angle, and the lip height changes": level lips of unequal angle are no longer level afterwards."""
    flute = Flute(diameter=D, web=1.5)
    level = PlaneFlank(point_angle=2 * KAPPAS[1], lip_relief=12, flank_height=-apart(*KAPPAS))
    before = GroundPoint(flute, PlaneFlank(point_angle=A, lip_relief=12), level).inspect()
    after = GroundPoint(
        flute, PlaneFlank(point_angle=A, lip_relief=12), PlaneFlank(point_angle=A, lip_relief=12, flank_height=-0.2)
    ).inspect()
    limit = Limits().lip_height_difference
    assert abs(before.lip_height_difference) < limit < abs(after.lip_height_difference)


def test_the_indicator_is_the_finer_protractor() -> None:
    report = find_faults(Readings(diameter=D, half_angle_1=HALF, half_angle_2=HALF))
    assert report.faults == () and [u.key for u in report.undecided] == ["unequal_angles"]
    both = lip_height_from_angles.solve("half_angle_2", half_angle_1=HALF, radius=D / 2, lip_height_difference=AFTER)
    assert isinstance(both, tuple) and all(abs(float(other) - HALF) < 0.2 for other in both)
    again = find_faults(Readings(diameter=D, point_angle=A, lip_height_difference=AFTER, higher_lip=2))
    assert again.faults == () == again.undecided


def test_the_limits_are_the_shops_own() -> None:
    """ "The limits in this lesson are the shop's choice."""
    for name in ("lip_height_difference", "half_angle_difference", "oversize", "point_angle_tolerance"):
        assert usual_limits()[name].whose == "shop's choice"


def test_it_shows_every_relation_it_rests_on() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("point_offset", "oversize", "idle_radius", "lip_height_from_angles", "offset_from_run_out"):
        assert f"derive({name})" in shown
    for name in ("lip_height_difference", "largest_hole", "lip_height_from_angles", "offset_from_run_out"):
        assert f"work_out({name}," in shown
    for name in ("oversize", "idle_radius", "rolled_reading"):
        assert f"tabulate({name}," in shown
    assert set(re.findall(r'explore\("(\w+)"\)', shown)) == {"unequal", "unequal_angles"}
