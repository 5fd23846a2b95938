"""The lesson on choosing a point for the job: the numbers in its prose, what its words claim, what it teaches and asks.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations), CHOSEN (the parts and drills of the lesson, or an example of how to type), or SOURCE (printed in the source
named).
"""

import math
import re

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.errors import OutOfRange
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.ground.stations import stations
from drillpoint.handbook import RangeTable, chisel_factors, chisel_share, look_up
from drillpoint.relations import (
    chip_thickness,
    drilling_time,
    dub_normal_rake,
    feed_rate,
    least_dub_width,
    lip_length,
    normal_rake,
    point_height,
    sheet_cover,
    specific_cutting_force,
    speed_rule_ratio,
    spindle_speed,
    spindle_speed_by_rule,
    thrust_ratio,
)
from tests.notebooks.prose import code, minutes, prose, unaccounted

LESSON = "09-choosing-a-point.ipynb"
INCH, FOOT = 25.4, 0.3048

# CHOSEN: the drill of most examples, and the angles that are compared.
D, SHARP, A, FLAT, HELIX, W, PSI, FEED = 10, 90, 118, 135, 30, 1.5, 125, 0.2
# CHOSEN: the parts.
PLATE, PAD, SHEET, PIN, PIN_HOLE = 12, 25, 2, 20, 8
# CHOSEN: usual figures of a steel, only to see the size of it; a chisel edge thinned; a slow helix; a rounding.
STEEL, EXPONENT, THINNED, STANDARD, SLOW, ROUNDING, SMALL_FEED = 2100, 0.25, 0.10, 0.18, 15, 0.03, 0.05
# CHOSEN: the speeds of the five parts in m/min, and the feeds; the hole whose time is worked out.
SPEEDS = {"hinge plate": 25, "pad": 25, "bush": 60, "cover": 70, "pin": 11}
USUAL_FEED, COVER_FEED, PIN_FEED, COVER_ANGLE, PIN_ANGLES, PLATE_SPEED = 0.16, 0.12, 0.13, 140, (130, 135), 28
LARGE, DEEP, TIMED_SPEED, TIMED_FEED = 20, 25, 20, 0.25
# CHOSEN: the handy numbers of shop rules (common practice), and a drill in inches.
RULES, INCH_RULE, INCH_DRILL, INCH_SPEED = (318, 320), (3.82, 4), "1/2", 80
# Common practice: a thousandth of an inch for each sixteenth.
FEED_SHARE = 62.5
# SOURCE: Scientific Reports 13 (2023) 9233, abstract (seen): degrees, newtons, mm/rev.
PAPER = ("6", "150", "0.2", "13", "2023", "9233")


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:g}"


def chip(angle: float, feed: float = FEED) -> float:
    """The chip thickness."""
    return float(chip_thickness(feed=feed, point_angle=angle))


def lip(angle: float) -> float:
    """The lip of the drill of most examples."""
    return float(lip_length(diameter=D, point_angle=angle, web=W, chisel_edge_angle=PSI))


def easy_lip(angle: float) -> float:
    """The lip as if it reached the axis."""
    return D / 2 / math.sin(math.radians(angle / 2))


def height(angle: float) -> float:
    """The height of the point."""
    return float(point_height(diameter=D, point_angle=angle))


def cover(angle: float) -> float:
    """The cover's thickness in point heights."""
    return float(sheet_cover(sheet_thickness=SHEET, diameter=D, point_angle=angle))


def ground_rake(angle: float, **flute: float) -> float:
    """The normal rake at the corner of a drill that was made for 118°, ground to an angle."""
    made = Flute(**(flute or {"diameter": D, "web": W}))
    lip = GroundPoint(made, PlaneFlank(point_angle=angle, lip_relief=12)).lips[0]
    return float(stations(lip, lip.corner).normal_rake[0])


def rake(angle: float, helix: float = HELIX, radius: float = D / 2) -> float:
    """The normal rake."""
    return float(normal_rake(point_angle=angle, helix_angle=helix, radius=radius, diameter=D, web=W))


def turns(speed: float, diameter: float = D) -> float:
    """The turns a minute."""
    return float(spindle_speed(cutting_speed=speed, diameter=diameter))


def spans(name: str, work: str) -> list[tuple[str, str]]:
    """The figures that the handbook has for a work material, as printed here."""
    table = look_up(name, work=work)
    assert isinstance(table, RangeTable)
    return [(plain(row.low), plain(row.high or row.low)) for row in table]


AXIAL = math.sin(math.radians(FLAT / 2)) / math.sin(math.radians(A / 2))
ANGLE_COST = [100 * (AXIAL - 1) * (1 - share / 100) for share in (chisel_share().high, chisel_share().low)]
DEARER = [
    float(specific_cutting_force(specific_force_at_1_mm=STEEL, chip_thickness_exponent=EXPONENT, chip_thickness=h))
    for h in (chip(A), chip(FLAT))
]
CHEAPER = 100 * (1 - DEARER[1] / DEARER[0])
THINNING = float(
    thrust_ratio(diameter=D, feed=FEED, chisel_ratio=THINNED, reference_chisel_ratio=STANDARD),
)
JUST_FLAT = 2 * math.degrees(math.atan(D / 2 / SHEET))
ALUMINIUM, BRASS = spans("point_angle_by_work", "aluminium"), spans("point_angle_by_work", "brass")
STAINLESS = [float(f) for span in spans("cutting_speed", "stainless steel") for f in span]
# SOURCE: the helix that stands beside the same figure (second hand).
HELIX_FOR_BRASS = re.findall(r"brass, helix (\d+)° to (\d+)°", str(look_up("point_angle_by_work", work="brass")))[0]
BRASS_SPEEDS = spans("cutting_speed", "brass")
FOUR, EXACT_INCH = INCH_RULE[1] * INCH / FOOT, float(INCH_RULE[0]) * INCH / FOOT
NARROWEST = float(
    least_dub_width(feed=USUAL_FEED, dub_rake=0, radius=D / 2, diameter=D, web=W, point_angle=A),
)
LARGE_TURNS = turns(TIMED_SPEED, LARGE)
TIME = float(
    drilling_time(shoulder_depth=DEEP, diameter=LARGE, point_angle=A, feed=TIMED_FEED, cutting_speed=TIMED_SPEED)
)
TIPLESS = DEEP / (TIMED_FEED * LARGE_TURNS)


def too_fast(constant: float) -> float:
    """How many per cent a shop rule turns the drill too fast."""
    return 100 * (float(speed_rule_ratio(speed_constant=constant)) - 1)


HALF_INCH = INCH / 2
BY_RULE = float(
    spindle_speed_by_rule(speed_constant=FOUR, cutting_speed=INCH_SPEED * FOOT, diameter=HALF_INCH),
)


def both(speed: float, feed: float) -> tuple[str, ...]:
    """A cutting speed in m/min and ft/min, a feed in mm and inches."""
    return (n(speed), n(speed / FOOT), plain(feed), n(feed / INCH, 3))


FIGURES: dict[str, list[str]] = {
    "title": ["9", "40", n(FLAT), n(A)],
    "shop": [
        *("3", n(A), n(HELIX), n(PLATE), n(D), n(D), n(PAD), n(D), n(SHEET), n(D), n(PIN), n(PIN_HOLE)),
        *(*BRASS[1], n(SHARP), n(SHARP)),
    ],
    "tables": ["3"],
    "tables-remarks": [*spans("point_angle_by_work", "plastic")[0], "30", "30", "60"],
    "changes": ["6"],
    "changes-drag": [n(SHARP), "150"],
    "changes-table": [
        *(n(D), plain(W), n(PSI), n(SHARP), n(A), n(FLAT), plain(FEED)),
        *(n(chip(angle), 3) for angle in (SHARP, A, FLAT)),
        *(n(lip(angle), 2) for angle in (SHARP, A, FLAT)),
        *(n(height(angle), 2) for angle in (SHARP, A, FLAT)),
        *(plain(180 - angle / 2) for angle in (SHARP, A, FLAT)),
    ],
    "corner": [n(FLAT)],
    "corner-answer": ["180", plain(180 - FLAT / 2), plain(180 - A / 2), n(A)],
    "sheet": [n(SHARP)],
    "sheet-answer": [n(SHARP), n(cover(SHARP), 1)],
    "sheet-remarks": [n(JUST_FLAT, 1), ALUMINIUM[2][0]],
    "push": ["7", n(FLAT), n(A)],
    "push-lips-remarks": [
        *(n(easy_lip(A), 2), n(easy_lip(FLAT), 2)),
        *(plain(FLAT / 2), plain(A / 2), n(AXIAL, 3), n(100 * (AXIAL - 1))),
        *(n(STEEL), "1", "1", plain(EXPONENT)),
    ],
    "push-chisel": [
        *(n(CHEAPER), n(100 * (AXIAL - 1)), plain(chisel_share().low), plain(chisel_share().high), "7"),
        *(n(100 * (AXIAL - 1)), *(n(cost) for cost in ANGLE_COST), plain(STANDARD), n(THINNED, 2)),
    ],
    "push-answer": [n(100 * (1 - THINNING)), *PAPER],
    "push-rake-remarks": ["1", n(rake(FLAT, radius=1), 1), n(rake(A, radius=1), 1), n(FLAT), n(A)],
    "brass": ["5", n(SHARP)],
    "brass-remarks": [
        *(n(SHARP), n(ground_rake(SHARP), 1), n(rake(A), 1), *BRASS[1]),
        *(*HELIX_FOR_BRASS, n(SLOW), n(A), n(rake(A, SLOW), 1)),
    ],
    "brass-plastic": [n(NARROWEST, 3)],
    "edge": ["3", plain(ROUNDING), plain(SMALL_FEED)],
    "speed": ["6", n(PLATE_SPEED)],
    "speed-pin": [n(turns(SPEEDS["pin"], PIN_HOLE) / 10) + "0", n(turns(PLATE_SPEED, PIN_HOLE))],
    "speed-rule": [*map(str, RULES), *map(plain, INCH_RULE), n(INCH_RULE[1]), n(FOUR, 2)],
    "speed-rule-answer": [
        *("4", n(too_fast(FOUR), 1), plain(min(STAINLESS)), plain(max(STAINLESS)), n(too_fast(FOUR), 1)),
        *(n(INCH_SPEED), INCH_DRILL, n(BY_RULE)),
    ],
    "speed-inch-answer": [n(turns(INCH_SPEED * FOOT, HALF_INCH))],
    "time": ["6", n(D)],
    "time-rule": [plain(FEED_SHARE), plain(D / FEED_SHARE), n(D)],
    "time-drag": [
        *("1", n(LARGE), n(A), n(DEEP), n(TIMED_SPEED), plain(TIMED_FEED)),
        *("2", n(FLAT), "3"),
    ],
    "time-answer": [n(TIME, 3), n(60 * TIME), n(TIPLESS, 3), "1", "3"],  # approach and overrun: common practice
    "disagree": ["2"],
    "disagree-remarks": [figure for span in BRASS_SPEEDS for figure in span],
    "back": [
        *("3", *2 * (n(A), n(turns(25)), *both(25, USUAL_FEED))),
        *(n(A), n(turns(SPEEDS["bush"])), *both(SPEEDS["bush"], USUAL_FEED)),
        *(n(COVER_ANGLE), n(turns(SPEEDS["cover"])), *both(SPEEDS["cover"], COVER_FEED)),
        *(*map(str, PIN_ANGLES), n(turns(SPEEDS["pin"], PIN_HOLE)), *both(SPEEDS["pin"], PIN_FEED)),
    ],
    "next": ["10"],
    "card": [
        *(n(A), n(FLAT), n(AXIAL, 3), "1000", "25", n(D), n(turns(25)), n(RULES[1]), n(too_fast(RULES[1]), 1)),
        *("4", n(too_fast(FOUR), 1), plain(USUAL_FEED), n(turns(25))),
        *(n(float(feed_rate(feed=USUAL_FEED, cutting_speed=25, diameter=D))), "2"),
        *(n(LARGE), n(A), n(DEEP), n(TIMED_SPEED), plain(TIMED_FEED), n(TIME, 3)),
        *(n(FLAT), n(A), *(n(cost) for cost in ANGLE_COST), "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_it_takes_as_long_as_it_says() -> None:
    assert minutes(LESSON) == 44


def test_the_signs_are_as_printed() -> None:
    for angle in (FLAT, A):
        assert rake(angle, radius=1) < 0
        assert f"−{n(rake(angle, radius=1), 1)}°" in prose(LESSON)["push-rake-remarks"]
    # "Now the lip scrapes."
    assert float(dub_normal_rake(dub_rake=0, radius=D / 2, diameter=D, web=W, point_angle=A)) < 0


def test_the_sources_on_aluminium_have_no_angle_in_common() -> None:
    highest, lowest = min(float(high) for _, high in ALUMINIUM), max(float(low) for low, _ in ALUMINIUM)
    assert highest < lowest and len(ALUMINIUM) == 3
    # "Two of the three mean another helix": a quicker one than the box of drills has.
    told = str(look_up("point_angle_by_work", work="aluminium"))
    assert "quick helix" in told and f"helix {HELIX + 2}° to 48°" in told
    assert ALUMINIUM[0][0] == ALUMINIUM[1][0] == plain(SHARP)
    # The workbook asks back for 30°, as the lesson says.
    assert spans("point_angle_by_work", "plastic") == [("60", "90"), ("60", "90"), ("30", "30")]
    with pytest.raises(OutOfRange, match="30° is probably half the point angle; give the whole, 60°"):
        point_height(diameter=D, point_angle=30)


def test_sharper_and_flatter_do_what_the_table_says() -> None:
    angles = (SHARP, A, FLAT, 150)
    assert [chip(angle) for angle in angles] == sorted(chip(angle) for angle in angles)
    for falls in (lip, height, easy_lip):
        assert [falls(angle) for angle in angles] == sorted((falls(angle) for angle in angles), reverse=True)
    # The area of the chip stays: thickness over the easy lip.
    assert chip(FLAT) * easy_lip(FLAT) == pytest.approx(chip(A) * easy_lip(A))
    # The cover: out of guidance up to 135°, guided at 140°.
    assert cover(JUST_FLAT) == pytest.approx(1)
    assert cover(SHARP) < cover(A) < cover(FLAT) < 1 < cover(COVER_ANGLE)


def test_angle_and_thinning_are_weighed_as_the_lesson_says() -> None:
    # "It takes a quarter of the 8 % back."
    taken_back = CHEAPER / (100 * (AXIAL - 1))
    assert taken_back == pytest.approx(0.25, abs=0.02)
    # "Far more than the angle costs": also when the printed factors are taken.
    printed = float(
        thrust_ratio(
            diameter=D,
            feed=FEED,
            **chisel_factors(chisel_ratio=THINNED).of_thrust,
            **chisel_factors(chisel_ratio=STANDARD).to_compare_thrust_with,
        )
    )
    assert max(THINNING, printed) * (1 + max(ANGLE_COST) / 100) < 0.9
    # "The handbook's formula has no point angle in it at all."
    assert "point_angle" not in thrust_ratio.accepts
    # "A little less rake at the corner, and more of it further in."
    assert 0 < rake(A) - rake(FLAT) < 2
    assert all(rake(FLAT, radius=r) > rake(A, radius=r) for r in (1, 1.5, 2, 2.5))


@pytest.mark.parametrize("size", [8, 16])
@pytest.mark.parametrize("helix", [26, 32])
@pytest.mark.parametrize("share", [0.14, 0.16])
def test_a_sharper_point_on_the_same_flute_keeps_its_hook(size: float, helix: float, share: float) -> None:
    """The face of the flute stays: what the question in the lesson says, at the ends of what it asks for."""
    flute = {"diameter": size, "web": share * size, "helix_angle": helix}
    lost = ground_rake(A, **flute) - ground_rake(SHARP, **flute)
    assert 0 < lost < 4  # "less than 4° are gone"
    as_made = normal_rake(point_angle=A, radius=size / 2, **flute)
    assert ground_rake(A, **flute) == pytest.approx(float(as_made), abs=0.01)


def test_a_slow_helix_takes_more_than_half_of_the_rake() -> None:
    assert rake(A, SLOW) < rake(A) / 2
    assert (
        "ground_to_90=GroundPoint(Flute(diameter=10, web=1.5),\n        PlaneFlank(point_angle=90"
        in code(LESSON)["brass-table"]
    )


def test_the_chip_is_thinner_than_the_rounding() -> None:
    assert chip(A, SMALL_FEED) < ROUNDING


def test_the_speed_of_the_pin() -> None:
    slow = [high for high in STAINLESS[1::2] if high <= 0.54 * PLATE_SPEED]
    assert len(slow) == 2 and len(STAINLESS) == 6
    # Hinge plates: the speed lies in both ranges or near; the turns are two and a half times as many.
    assert turns(PLATE_SPEED, PIN_HOLE) > 2.5 * turns(SPEEDS["pin"], PIN_HOLE)
    # The inch rule is furthest out, and the spread of the tables far wider.
    assert abs(too_fast(FOUR)) > max(abs(too_fast(k)) for k in (*RULES, EXACT_INCH))
    assert max(STAINLESS) / min(STAINLESS) > 1 + 10 * too_fast(FOUR) / 100


@pytest.mark.parametrize(
    ("part", "work"),
    [
        ("hinge plate", "mild steel"),
        ("pad", "cast iron"),
        ("cover", "aluminium"),
        ("pin", "stainless steel"),
    ],
)
def test_the_speeds_chosen_satisfy_the_sources(part: str, work: str) -> None:
    met = [float(low) <= SPEEDS[part] <= float(high) for low, high in spans("cutting_speed", work)]
    # One row on stainless steel is for a hardened kind and a cobalt drill; the choice stays below it.
    assert met.count(False) <= (part == "pin")


def test_the_speed_for_brass_lies_where_the_two_sources_meet() -> None:
    (low, _), (_, high) = BRASS_SPEEDS
    assert float(high) <= SPEEDS["bush"] <= float(low)


def test_the_feeds_chosen_lie_in_the_range_for_the_size() -> None:
    for size, feed in ((D, D / FEED_SHARE), (D, USUAL_FEED), (D, COVER_FEED), (PIN_HOLE, PIN_FEED)):
        table = look_up("feed", diameter=size)
        assert isinstance(table, RangeTable)
        (row,) = table
        assert row.high is not None and row.low <= feed <= row.high
    # "Chip under the hard skin": the sheet's tasks ask for 0.05 mm.
    assert min(chip(angle, PIN_FEED) for angle in PIN_ANGLES) > 0.05


def test_a_tip_left_out_is_a_fifth_too_little() -> None:
    too_little = 1 - TIPLESS / TIME
    assert too_little == pytest.approx(0.2, abs=0.01)


@pytest.mark.parametrize(
    "name",
    ["spindle_speed", "spindle_speed_by_rule", "speed_rule_ratio", "feed_rate", "drilling_time", "chip_thickness"],
)
def test_what_it_teaches_is_asked(name: str) -> None:
    shown = "\n".join(code(LESSON).values())
    assert any(f"{call}({name}" in shown for call in ("derive", "work_out", "tabulate"))
    tasks = load_set("choosing-a-point").tasks
    asked = {task.relation for task in tasks} | {part.relation for task in tasks for part in task.parts}
    assert name in asked | {rule.relation for task in tasks for rule in task.requirements}
