"""The lesson on the web and thrust: the numbers in its prose, and what its words claim.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations), CHOSEN (the drills of the lesson), or SOURCE (printed in the source named).
"""

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.formula import read_formula
from drillpoint.handbook import chisel_factors, look_up
from drillpoint.relations import (
    chisel_edge_length,
    chisel_edge_rake,
    chisel_ratio,
    chisel_thrust_factor,
    motor_power,
    pilot_cover,
    pilot_diameter,
    power,
    reference_chisel_thrust_factor,
    reference_thrust_factor,
    reference_torque_factor,
    specific_cutting_force,
    thrust,
    thrust_factor,
    torque,
    torque_factor,
    torque_specific_force,
    web_from_ratio,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "07-web-and-thrust.ipynb"
INCH, POUND, HORSEPOWER = 25.4, 4.4482216152605, 0.74569987
INCH_POUND = POUND * INCH / 1000

# CHOSEN: the drill of the drawings, and the webs to drag.
D, A, W, PSI = 10, 118, 1.5, 125
U = W / D
# SOURCE: Ernst and Haggerty 1958, The spiral point drill: the rake, the drill and the place where it was measured.
MEASURED, MEASURED_AT, LIKE = 56, "0.030", 117
# SOURCE: Machinery's Handbook 31, pp. 1152-1153: 7/8 in, 200 BHN, 350 rev/min, efficiency 0.80, and the chisel edge
# ratios of a standard drill and a split point (seen). Feed, work and wear factors and the answers 2313 lb, 559 in-lb,
# 3.1 hp and 3.9 hp: from memory.
SIZE, HARDNESS, TURNS, EFFICIENCY = 7 / 8 * INCH, "200", 350, 0.80
FEED_INCH, WORK, WEAR = 0.008, 24000, 1.30
PRINTED = {"push": "2313", "torque": "559", "drill": "3.1", "motor": "3.9"}
STANDARD, SPLIT, OLD = 0.18, 0.03, 0.30
JOB = {"diameter": SIZE, "feed": FEED_INCH * INCH, "material_factor": WORK, "tool_wear_factor": WEAR}
# SOURCE: in inches hp = M n/63025 (handbooks). A pound of force in newtons, to four digits.
PER_HORSEPOWER, PER_POUND = 63025, "4.448"
# CHOSEN: a half-inch drill with a usual web; a steel as a table for turning might have it.
HALF_INCH_WEB = 0.075
K1, EXPONENT, SECOND_FEED = 2100, 0.25, 0.15
SIZES, SHARE = (5, 10, 20, 40), 0.015
# SOURCE: the handbook's bands of the chisel edge's share, in percent.
OF_THE_PUSH, OF_THE_TORQUE = ("30", "60"), ("8", "20")


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


def three(value: float) -> str:
    """The number to three digits."""
    return f"{value:.3g}"


def push(ratio: float) -> float:
    """The push of the job on the bench, by the smooth curves."""
    return float(thrust(**JOB, chisel_ratio=ratio))


def cutting(ratio: float) -> float:
    """The part of it that goes with the feed."""
    return float(thrust(**JOB, thrust_factor=float(thrust_factor(chisel_ratio=ratio)), chisel_thrust_factor=0))


def turning(ratio: float) -> float:
    """The torque of the job on the bench, by the smooth curves."""
    return float(torque(**JOB, chisel_ratio=ratio))


def by_chip(diameter: float, feed: float) -> float:
    work = {"specific_force_at_1_mm": K1, "chip_thickness_exponent": EXPONENT, "point_angle": A}
    return float(torque_specific_force(**work, feed=feed, diameter=diameter))


def by_handbook(diameter: float, feed: float) -> float:
    work = {"material_factor": WORK, "tool_wear_factor": 1, "chisel_ratio": STANDARD}
    return float(torque(**work, feed=feed, diameter=diameter))


ROW = {ratio: chisel_factors(chisel_ratio=ratio) for ratio in (SPLIT, 0.10, STANDARD, OLD)}
PUSH = float(thrust(**JOB, **ROW[STANDARD].of_thrust))
TORQUE = float(torque(**JOB, **ROW[STANDARD].of_torque))
AT_DRILL = float(power(torque=TORQUE, spindle_speed=TURNS))
AT_MOTOR = float(motor_power(power=AT_DRILL, efficiency=EFFICIENCY))
B, B0 = float(thrust_factor(chisel_ratio=OLD)), float(reference_thrust_factor(reference_chisel_ratio=STANDARD))
J, J0 = (
    float(chisel_thrust_factor(chisel_ratio=OLD)),
    float(reference_chisel_thrust_factor(reference_chisel_ratio=STANDARD)),
)
LIMIT = float(pilot_cover.solve("web_ratio", pilot_cover=1, pilot_diameter=4, diameter=12, chisel_edge_angle=PSI))
PILOT_INCH = float(pilot_diameter(web=HALF_INCH_WEB * INCH, chisel_edge_angle=PSI)) / INCH
TWO_WAYS = [
    figure
    for size in SIZES
    for figure in (n(size), three(by_chip(size, SHARE * size)), three(by_handbook(size, SHARE * size)))
]

FIGURES: dict[str, list[str]] = {
    "title": ["7", "40"],
    "shop": ["3", "7/8", n(SIZE, 3)],
    "middle": ["5"],
    "middle-measured": ["1958", n(MEASURED), "1/2", MEASURED_AT, n(LIKE)],
    "predict": ["6"],
    "drag": ["1", "1", "2.5", "2", "3"],
    "long": ["4"],
    "long-edge": ["7/8", n(float(web_from_ratio(web_ratio=U, diameter=SIZE)), 2)],
    "long-remarks": [n(STANDARD, 2), n(SPLIT, 2), "7/8", n(OLD * SIZE, 1), n(OLD, 2)],
    "push": ["7", "31", "7", "9"],
    "push-job": ["7/8", HARDNESS, n(FEED_INCH, 3), n(JOB["feed"], 4), n(WORK), n(WEAR, 2)],
    "push-by-web": [n(D)],
    "push-bent": ["3", n(W, 1)],
    "push-inch": [n(PUSH / POUND), PER_POUND, PRINTED["push"]],
    "push-old-remarks": [
        n(OLD, 2),
        n(push(OLD) / push(STANDARD), 2),
        n(SPLIT, 2),
        n(100 * push(STANDARD) / PUSH - 100),
    ],
    "push-compared": [
        *(n(OLD, 2), n(B, 3), n(100 * B / B0 - 100), n(B0, 3), n(J, 2), n(J / J0, 1), n(J0, 4)),
        *(n(cutting(STANDARD)), n(cutting(OLD))),
        *(n(push(STANDARD) - cutting(STANDARD)), n(push(OLD) - cutting(OLD))),
    ],
    "torque": ["6"],
    "torque-old": [n(STANDARD, 2), n(OLD, 2), n(100 * turning(OLD) / turning(STANDARD) - 100)],
    "torque-inch": [
        *(n(TORQUE, 1), n(TORQUE / INCH_POUND), n(PER_HORSEPOWER)),
        *(n(AT_DRILL / HORSEPOWER, 1), n(AT_MOTOR / HORSEPOWER, 1)),
        *(n(TORQUE / INCH_POUND), n(TORQUE / INCH_POUND / 12, 1), "12"),
    ],
    "pilot": ["5"],
    "pilot-rule": [
        *("1/2", n(HALF_INCH_WEB, 3), n(PILOT_INCH * INCH, 2), n(PILOT_INCH, 3), "3/32", n(0.5 / 3, 3)),
    ],
    "pilot-remarks": [n(LIMIT, 3)],
    "second": ["4", n(K1), n(EXPONENT, 2)],
    "second-remarks": [
        *(n(by_chip(D, SECOND_FEED), 2), n(by_handbook(D, SECOND_FEED), 2)),
        *(n(100 * by_handbook(D, SECOND_FEED) / by_chip(D, SECOND_FEED) - 100), n(SHARE, 3)),
        *TWO_WAYS,
    ],
    "disagree": ["2"],
    "disagree-remarks": [*OF_THE_PUSH, *OF_THE_TORQUE],
    "back": [
        *("7/8", n(push(OLD) / push(STANDARD), 2), n(turning(OLD) / turning(STANDARD), 2)),
        *(n(SIZE / 3, 1), n(OLD * SIZE, 1)),
    ],
    "next": ["8"],
    "card": [
        *(n(STANDARD, 2), "0.0503", "0.8", "0.0069", n(PUSH, 0), PRINTED["push"]),
        *("0.0000251", "1.8", "0.8", n(TORQUE, 1), PRINTED["torque"]),
        *("30000", n(AT_DRILL, 2), PRINTED["drill"], n(PILOT_INCH, 3), "1/2"),
        *(n(SIZE, 3), "7/8", n(JOB["feed"], 4), n(WORK), n(WEAR, 2), n(TURNS), n(U, 2), n(PSI)),
        *(n(SPLIT, 2), n(0.10, 2), n(STANDARD, 2), n(OLD, 2)),
        *(n(row.torque_factor, 3) for row in ROW.values()),
        *(figure for row in ROW.values() for figure in (n(row.thrust_factor, 3), n(row.chisel_thrust_factor, 3))),
        *(n(float(chisel_edge_rake(point_angle=A, chisel_edge_angle=PSI))), *OF_THE_PUSH, "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_worked_example_gives_the_printed_answers() -> None:
    assert {
        "push": n(PUSH / POUND),
        "torque": n(TORQUE / INCH_POUND),
        "drill": n(AT_DRILL / HORSEPOWER, 1),
        "motor": n(AT_MOTOR / HORSEPOWER, 1),
    } == PRINTED
    assert pytest.approx(TORQUE / INCH_POUND * TURNS / PER_HORSEPOWER, rel=1e-3) == AT_DRILL / HORSEPOWER


def test_the_short_constants_of_the_card_are_those_of_the_relations() -> None:
    unit = {"diameter": 1, "feed": 1, "material_factor": 1000, "tool_wear_factor": 1}
    assert f"{thrust(**unit, thrust_factor=1, chisel_thrust_factor=0) / 1000:.4f}" == "0.0503"
    assert f"{thrust(**unit, thrust_factor=0.9, chisel_thrust_factor=1) / 1000 - 0.9 * 0.05029:.4f}" == "0.0069"
    assert f"{torque(**unit, torque_factor=1) / 1000:.7f}" == "0.0000251"


def test_the_measured_rake_is_that_of_a_usual_chisel_edge() -> None:
    assert round(float(chisel_edge_rake(point_angle=A, chisel_edge_angle=LIKE))) == -MEASURED
    assert f"−{MEASURED}°" in prose(LESSON)["middle-measured"]


def test_the_web_costs_push_and_hardly_any_torque() -> None:
    ratios = (SPLIT, 0.10, STANDARD, 0.25, OLD)
    assert [push(c) for c in ratios] == sorted(push(c) for c in ratios)
    assert push(OLD) / push(STANDARD) == pytest.approx(5 / 3, abs=0.02)  # "by two thirds"
    assert 1 < turning(OLD) / turning(STANDARD) < 1.2
    assert 0.5 < push(SPLIT) / push(STANDARD) < 0.6  # "little more than half"
    # "It is the punch in the middle": most of what the old drill needs more is not cutting.
    assert cutting(OLD) - cutting(STANDARD) < 0.2 * (push(OLD) - push(STANDARD))
    # "To compare": the standard drill's own factors are those of any drill with its ratio.
    assert reference_torque_factor(reference_chisel_ratio=STANDARD) == torque_factor(chisel_ratio=STANDARD)


def test_the_push_goes_up_with_the_web_ever_more() -> None:
    def sharp(web: float, feed: float) -> float:
        long = float(chisel_edge_length(web=web, chisel_edge_angle=PSI))
        work = {"material_factor": WORK, "tool_wear_factor": 1}
        return float(thrust(diameter=D, feed=feed, chisel_edge_length=long, **work))

    for feed in (0.1, 0.2, 0.3):
        assert sharp(2 * W, feed) - sharp(W, feed) > sharp(W, feed) - sharp(0.01, feed)
    # "As much as a good deal of feed": twice the web costs more than a feed half as large again.
    assert sharp(2 * W, 0.2) > sharp(W, 0.3)


def test_a_usual_drill_is_the_handbooks_standard_drill() -> None:
    long = float(chisel_edge_length(web=W, chisel_edge_angle=PSI))
    assert float(chisel_ratio(chisel_edge_length=long, diameter=D)) == pytest.approx(STANDARD, abs=0.005)


def test_a_third_of_the_drill_covers_until_the_web_is_thick() -> None:
    def cover(ratio: float) -> float:
        return float(pilot_cover(web_ratio=ratio, pilot_diameter=4, diameter=12, chisel_edge_angle=PSI))

    assert cover(U) > 1.5 and cover(LIMIT - 0.001) > 1 > cover(LIMIT + 0.001)
    assert PILOT_INCH < 0.5 / 3 and 3 / 32 > PILOT_INCH > 5 / 64  # "a 3/32 in drill does it"
    assert 1 < SIZE / 3 / (OLD * SIZE) < 1.15  # "it just covers"


def test_the_two_ways_agree_roughly_and_part_with_the_size() -> None:
    over = [by_handbook(size, SHARE * size) / by_chip(size, SHARE * size) for size in SIZES]
    assert over == sorted(over, reverse=True) and over[0] > 1 > over[-1]
    force = specific_cutting_force(
        specific_force_at_1_mm=K1, chip_thickness_exponent=EXPONENT, feed=SECOND_FEED, point_angle=A
    )
    assert round(float(force), -1) == 4170


def test_the_push_in_the_task_with_the_explorer_is_that_of_the_relation() -> None:
    (task,) = (task for task in load_set("web-and-thrust").tasks if task.id == "set-the-web")
    push_written_out = read_formula(task.requirements[0].formula, ("diameter", "web", "feed"))
    for diameter, web, feed in ((8, 0.9, 0.09), (12, 2.4, 0.12)):
        long = float(chisel_edge_length(web=web, chisel_edge_angle=125))
        job = {"diameter": diameter, "feed": feed, "material_factor": 24000, "tool_wear_factor": 1}
        known = float(thrust(**job, chisel_edge_length=long))
        assert push_written_out.at({"diameter": diameter, "web": web, "feed": feed}) == pytest.approx(known, rel=1e-4)


def test_the_bands_stand_in_the_handbook() -> None:
    for table, (low, high) in (("chisel_share", OF_THE_PUSH), ("chisel_torque_share", OF_THE_TORQUE)):
        rows = list(look_up(table))
        assert (min(row.low for row in rows), max(row.high for row in rows)) == (float(low), float(high))


def test_it_teaches_every_relation_allotted_to_it() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("thrust", "torque", "pilot_diameter"):
        assert f"derive({name})" in shown
    for name in (
        *("web_ratio", "web_from_ratio", "chisel_ratio", "thrust_factor", "power", "motor_power", "chisel_edge_rake"),
        *("reference_thrust_factor", "reference_torque_factor", "specific_cutting_force", "torque_specific_force"),
    ):
        assert f"work_out({name}," in shown
    assert "work_out(reference_chisel_thrust_factor," in shown
    for name in ("torque_factor", "chisel_thrust_factor", "pilot_cover"):
        assert f"tabulate({name}," in shown
