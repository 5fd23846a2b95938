"""The lesson on how much to grind off: the numbers in its prose, and what its words claim.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the ground point), CHOSEN (the drills of the lesson), or SOURCE (printed in the source named).
"""

import math

import pytest

from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.ground.inspection import Inspection
from drillpoint.handbook import look_up
from drillpoint.relations import (
    chisel_edge_length,
    governing_stock,
    length_removed_by_regrinds,
    length_until_thinning,
    regrinds_left,
    stock_for_angle_change,
    stock_for_chip,
    stock_for_wear_land,
    stock_for_worn_corner,
    take_off_correction,
    tip_stock,
    web_after_shortening,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "11-how-much-to-grind-off.ipynb"
INCH = 25.4

# CHOSEN: the drills of the lesson and what is wrong with them, mm and degrees.
D, A, NEW_A, W, RELIEF, MORE_RELIEF = 10, 118, 135, 1.5, 12, 18
LANDS = {"A": 0.4, "B": 0.3, "C": 0.2}
BURNT, CHIP, SMALL_CHIP, CHIP_INCH, A_MILLIMETRE = 0.8, 0.3, 0.1, 0.012, 1
HALF_INCH = 0.5 * INCH
LARGE, LARGE_WEB, LARGE_TAPER, GONE, CHISEL = 20, 3.0, 0.024, 40, 125
TAPER, SHORTER, LIMIT = 0.014, 20, 0.18
LEVEL, OTHER_HALF, DEEPER = 10, 60, 0.1
ASKED, BEFORE, AFTER, CALIPER, RULE = 0.5, 120.40, 119.95, 0.02, 0.2
USABLE, LITTLE, MANY = 40, 0.2, 100

# SOURCE: 29 CFR 1910.215 for the work rest (seen).
REST, REST_INCH = "3", "1/8"


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


def for_land(width: float, relief: float = RELIEF) -> float:
    return float(stock_for_wear_land(wear_land=width, lip_relief=relief))


def for_chip(depth: float) -> float:
    return float(stock_for_chip(chip_depth=depth, point_angle=A))


def for_angle(diameter: float) -> float:
    return float(stock_for_angle_change(diameter=diameter, point_angle=A, new_point_angle=NEW_A))


def large_web(taper: float) -> float:
    return float(web_after_shortening(web=LARGE_WEB, web_taper=taper, length_removed=GONE))


def large_chisel(web: float) -> float:
    return float(chisel_edge_length(web=web, chisel_edge_angle=CHISEL))


def ground(first: PlaneFlank, second: PlaneFlank) -> Inspection:
    return GroundPoint(Flute(diameter=D, web=W), first, second).inspect()


def flank(turn: float = 0, height: float = 0, half: float = A / 2) -> PlaneFlank:
    return PlaneFlank(point_angle=2 * half, lip_relief=RELIEF, flank_turn=turn, flank_height=height)


LAND = {name: for_land(width) for name, width in LANDS.items()}
RULING = {depth: for_chip(depth) / math.tan(math.radians(RELIEF)) for depth in (SMALL_CHIP, CHIP)}
SHARE = for_angle(D) / D
TIP = float(tip_stock(corner_stock=BURNT, diameter=D, point_angle=A, new_point_angle=NEW_A))
LACKS = {"stock": ASKED, "length_before": BEFORE, "length_after": AFTER}
LACKING = float(take_off_correction(**LACKS))
SURE = {
    out: take_off_correction.uncertainty(stock=ASKED, length_before=(BEFORE, out), length_after=(AFTER, out))
    for out in (CALIPER, RULE)
}
NOW = large_web(LARGE_TAPER)
DUE = float(length_until_thinning(web_ratio_limit=LIMIT, diameter=LARGE, web=LARGE_WEB, web_taper=LARGE_TAPER))
SMALL_DUE = float(length_until_thinning(web_ratio_limit=LIMIT, diameter=D, web=W, web_taper=TAPER))
REMOVED = float(length_removed_by_regrinds(regrinds=MANY, stock=LITTLE))
(PRINTED,) = look_up("web_taper")
SOUND = ground(flank(), flank())
TURNED = {turn: ground(flank(turn), flank(turn)) for turn in (LEVEL, -LEVEL)}
ONE_ANGLE, ONE_DEEPER = ground(flank(half=OTHER_HALF), flank()), ground(flank(height=-DEEPER), flank())

FIGURES: dict[str, list[str]] = {
    "title": ["11", "40", "1", "3"],
    "cautions": [REST, REST_INCH],
    "shop": [
        *("3", n(D), n(A), n(RELIEF), n(LANDS["A"], 1), n(BURNT, 1), n(LANDS["B"], 1), n(CHIP, 1), n(LANDS["C"], 1)),
        *(n(NEW_A), n(LARGE), "8", n(GONE)),
    ],
    "order": ["5", "1", "2", "3", "4", "5", "6", n(LEVEL)],
    "order-remarks": [
        *(n(TURNED[LEVEL].lip_relief, 1), n(RELIEF), n(SOUND.chisel_edge_angle, 1)),
        *(n(LEVEL), n(TURNED[LEVEL].lip_relief, 1), n(TURNED[LEVEL].chisel_edge_angle, 1)),
        *(n(LEVEL), n(TURNED[-LEVEL].lip_relief, 1), n(TURNED[-LEVEL].chisel_edge_angle, 1)),
        *(n(OTHER_HALF), n(A / 2), n(ONE_ANGLE.lip_height_difference, 2)),
        *(n(DEEPER, 1), n(ONE_DEEPER.lip_height_difference, 2)),
        *(n(ONE_DEEPER.lip_length_1 - ONE_DEEPER.lip_length_2, 2), "10"),
    ],
    "wear": ["5", n(LANDS["A"], 1)],
    "wear-after": [n(LAND["A"], 3), n(A_MILLIMETRE / LAND["A"]), n(MORE_RELIEF), n(for_land(0.4, MORE_RELIEF), 3)],
    "corner": ["5", n(BURNT, 1)],
    "chip-remarks": [n(for_chip(CHIP), 3), n(CHIP, 1), n(CHIP_INCH, 3), n(for_chip(CHIP_INCH * INCH) / INCH, 3)],
    "decides": ["5"],
    "decides-drag": [n(A), n(SMALL_CHIP, 1)],
    "decides-remarks": [
        *(n(SMALL_CHIP, 1), n(RULING[SMALL_CHIP], 2), n(LAND["C"], 3), n(for_chip(CHIP), 3), n(RULING[CHIP], 2)),
        *(n(LANDS["B"], 1), n(LAND["B"], 3)),
    ],
    "angle": ["5", n(NEW_A)],
    "angle-remarks": [
        *(n(for_angle(D), 2), n(D), n(for_angle(HALF_INCH) / INCH, 3), "1/2", n(SHARE, 4)),
        *(n(A), n(NEW_A), n(100 * (0.1 / SHARE - 1))),
    ],
    "angle-both": [n(NEW_A), n(A), n(for_angle(D), 2), n(for_angle(D), 2), "5"],
    "check": ["4"],
    "check-remarks": [n(LACKING, 2), n(CALIPER, 2)],
    "check-after": [n(LACKING, 2), n(SURE[CALIPER].plus_minus, 2)],
    "web": ["6", n(LARGE), n(LARGE_WEB, 1), n(LARGE_TAPER, 3), n(GONE)],
    "web-remarks": [
        *(n(NOW, 2), n(large_chisel(LARGE_WEB), 2), n(large_chisel(NOW), 2), "8", n(D)),
        *(n(100 * TAPER, 1), "100", n(SHORTER)),
        *(n(float(web_after_shortening(web=W, web_taper=TAPER, length_removed=SHORTER)), 2), n(W, 1)),
    ],
    "web-when": [n(LIMIT, 2)],
    "web-until-remarks": [n(DUE), n(GONE - DUE)],
    "life": ["3", n(USABLE), n(D)],
    "life-remarks": [
        n(float(regrinds_left(usable_length=USABLE, stock=A_MILLIMETRE))),
        n(float(regrinds_left(usable_length=USABLE, stock=LITTLE))),
    ],
    "life-after": [n(LITTLE, 1), n(REMOVED), n(SMALL_DUE, 1), n(LIMIT, 2)],
    "disagree": ["2"],
    "disagree-remarks": [n(LARGE), n(large_web(PRINTED.low), 2), n(large_web(PRINTED.high or 0), 2)],
    "back": [
        *(n(LAND["A"], 3), n(for_chip(CHIP), 3), n(LAND["C"], 3), n(BURNT, 1), n(LAND["B"], 3), n(for_angle(D), 3)),
        n(LARGE),
    ],
    "next": ["12"],
    "card": [
        *(n(LANDS["A"], 1), n(RELIEF), n(LAND["A"], 3), n(BURNT, 1), n(BURNT, 1), n(CHIP, 1), n(for_chip(CHIP), 3)),
        *("2", n(A), n(NEW_A), n(SHARE, 4), n(BURNT, 1), n(TIP, 2)),
        *(n(ASKED, 1), n(BEFORE, 2), n(AFTER, 2), n(LACKING, 2)),
        *(n(LARGE_WEB, 1), n(LARGE_TAPER, 3), n(GONE), n(NOW, 2)),
        *(n(LIMIT, 2), n(LARGE), n(LARGE_WEB, 1), n(LARGE_TAPER, 3), n(DUE)),
        *(n(USABLE), n(LITTLE, 1), n(float(regrinds_left(usable_length=USABLE, stock=LITTLE)))),
        *(n(A), n(D), n(A), n(NEW_A), "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_order_of_the_drills_is_the_one_told_at_the_end() -> None:
    needs = {
        "A": LAND["A"],
        "C": max(for_chip(CHIP), LAND["C"]),
        "B": max(float(stock_for_worn_corner(worn_margin=BURNT)), LAND["B"]),
        "D": for_angle(D),
    }
    assert list(needs) == sorted(needs, key=needs.__getitem__) == ["A", "C", "B", "D"]
    assert all(need < A_MILLIMETRE for need in needs.values())
    assert "Was your order A, C, B, D?" in prose(LESSON)["back"]


def test_the_fault_said_to_decide_does() -> None:
    assert "chip" in governing_stock(wear_land=LAND["C"], chip=for_chip(CHIP)).because
    assert "corner" in governing_stock(wear_land=LAND["B"], worn_corner=BURNT).because
    assert f"governing_stock(wear_land={n(LAND['B'], 3)}, worn_corner={BURNT})" in code(LESSON)["decides-b"]
    # "It would have to be so wide": there both ask for the same.
    for depth, width in RULING.items():
        assert for_land(width) == pytest.approx(for_chip(depth))


def test_another_angle_costs_the_same_both_ways_and_adds_up_with_the_corner_at_the_tip_only() -> None:
    back = stock_for_angle_change(diameter=D, point_angle=NEW_A, new_point_angle=A)
    assert float(back) == pytest.approx(for_angle(D))
    assert pytest.approx(BURNT + for_angle(D)) == TIP
    assert for_angle(7) / 7 == pytest.approx(SHARE)


def test_a_lip_that_is_not_level_shows_in_relief_and_chisel_edge() -> None:
    ahead, behind = TURNED[LEVEL], TURNED[-LEVEL]
    assert ahead.lip_relief < SOUND.lip_relief < behind.lip_relief
    assert ahead.chisel_edge_angle < SOUND.chisel_edge_angle < behind.chisel_edge_angle
    # "It rubs": the heel is level with the corner before a third of the land drawn; sound it is so later.
    assert ahead.first_rub(1) is not None and (ahead.first_rub(1) or 0) < (SOUND.first_rub(1) or 180)
    for faulty in (ONE_ANGLE, ONE_DEEPER):
        assert abs(faulty.lip_height_difference) > 0.1
        assert faulty.lip_length_1 != pytest.approx(faulty.lip_length_2, abs=0.02)


def test_the_caliper_tells_and_the_rule_does_not() -> None:
    assert SURE[CALIPER].plus_minus < LACKING < SURE[RULE].plus_minus
    assert pytest.approx(10 * CALIPER) == RULE


def test_thinning_was_due_before_and_the_taper_lies_outside_what_is_printed() -> None:
    assert DUE < GONE and NOW > LIMIT * LARGE
    assert PRINTED.high is not None and PRINTED.low <= TAPER <= PRINTED.high < LARGE_TAPER
    assert PRINTED.seen == "second hand"
    # "Whoever grinds little also thins late": a hundred small regrinds are not yet at the limit, forty large ones are.
    assert REMOVED < SMALL_DUE < USABLE


def test_it_teaches_every_relation_allotted_to_it() -> None:
    shown = "\n".join(code(LESSON).values())
    for name in ("stock_for_angle_change", "stock_for_wear_land", "stock_for_chip", "tip_stock"):
        assert f"derive({name})" in shown and f"work_out({name}," in shown
    for name in ("length_until_thinning", "take_off_correction"):
        assert f"derive({name})" in shown and f"work_out({name}," in shown
    for name in ("stock_for_worn_corner", "web_after_shortening", "length_removed_by_regrinds"):
        assert f"work_out({name}," in shown
    assert "tabulate(regrinds_left," in shown
