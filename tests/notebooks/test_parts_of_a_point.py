"""The lesson on the parts of a point: the numbers in its prose, and what its words claim.

Numbers: for each cell of prose the figures it must hold, in order. A figure is DERIVED (worked out here from the
relations or the ground point), CHOSEN (the drills of the lesson, or an example of how to type), or SOURCE (printed in
the source named).
"""

import math
from fractions import Fraction

import pytest

from drillpoint.errors import OutOfRange
from drillpoint.ground import Flute, GroundPoint, PlaneFlank, conical_setup
from drillpoint.handbook import look_up
from drillpoint.relations import (
    chisel_edge_length,
    corner_radius,
    point_height,
    rolled_reading,
    web_after_shortening,
    web_from_ratio,
    web_ratio,
)
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "01-parts-of-a-point.ipynb"
INCH = 25.4

# CHOSEN: the drill of the lesson, and what was done to it.
D, A, W, PSI = 10, 118, 1.5, 125
RULE = Fraction(25, 64)  # in, as the second card has it
RULE_WEB = Fraction(1, 16)
NEXT_MARK = RULE + Fraction(1, 64)
ROLLED, BEHIND, TAPER = 20, 20, 0.014
EXAMPLE_PSI = 130
SMALL = 6  # mm, another drill
PROTRACTOR, OVER_THE_CHISEL_EDGE, CALLIPER, RULER = 0.5, 2, 0.05, 0.25
IN_TABLE = ("1/16", "1/8", "1/4", "25/64", "7/16", "1/2", "1 1/4")
HALVED = ("1/2", "1/4", "1/8", "1/16", "1/32", "1/64")
# SOURCE: numbers of documents: 29 CFR 1910.133 for eyes, ISO 5419 for terms, BS 328 for measuring.
EYES, TERMS, MEASURING = ["29", "1910.133"], "5419", "328"
# Common practice: textbooks take the acute angle, an eighth is usual for the web.
ACUTE = ("45", "60")


def reads(roll: float, angle: float = A) -> float:
    """What the gauge shows on a rolled drill."""
    return float(rolled_reading(point_angle=angle, roll_angle=roll))


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it, without its sign."""
    return f"{abs(value):.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:.7g}"


def mm(fraction: Fraction) -> float:
    """A fraction of an inch in mm."""
    return float(fraction) * INCH


def row(written: str) -> list[str]:
    """A row of the table of fractions."""
    inches = sum(map(Fraction, written.split()), Fraction(0))
    return [*written.split(), str(64 * inches), plain(round(float(inches), 4)), plain(round(mm(inches), 4))]


HEIGHT = float(point_height(diameter=D, point_angle=A))
HALF_TAKEN_FOR_WHOLE = D / 2 / math.tan(math.radians(A / 4))
WHOLE_TAKEN_FOR_HALF = D / 2 / math.tan(math.radians(A))
C = float(chisel_edge_length(web=W, chisel_edge_angle=PSI))
SHARE = float(web_ratio(web=W, diameter=D))
WEB_BEHIND = float(web_after_shortening(web=W, web_taper=TAPER, length_removed=BEHIND))
HALF_A_DEGREE = float(rolled_reading.solve("roll_angle", point_angle=A, rolled_reading=A - 0.5))
CALLIPERED = chisel_edge_length.uncertainty(web=(W, CALLIPER), chisel_edge_angle=(PSI, OVER_THE_CHISEL_EDGE))
RULED = chisel_edge_length.uncertainty(web=(W, RULER), chisel_edge_angle=(PSI, OVER_THE_CHISEL_EDGE))
CARD_READS = n(reads(ROLLED))

FIGURES: dict[str, list[str]] = {
    "title": ["1", "40", "0"],
    "cautions": EYES,
    "shop": [
        *("3", "1", "2", "3"),
        *(n(D), str(RULE), n(D), n(A), n(A / 2), CARD_READS, n(PSI), n(180 - PSI), n(PSI)),
        *(plain(W), str(RULE_WEB), n(WEB_BEHIND, 1), n(C, 1), n(C, 1), plain(W)),
    ],
    "names": ["6"],
    "parts": [TERMS],
    "views": ["4"],
    "pairs": ["5", n(A), n(A / 2)],
    "pairs-slips": [
        *(n(HEIGHT, 2), n(A / 2), n(A / 4, 1), n(HALF_TAKEN_FOR_WHOLE, 2), n(A), n(WHOLE_TAKEN_FOR_HALF, 2)),
        *(n(PSI), n(180 - PSI), n(EXAMPLE_PSI), n(180 - EXAMPLE_PSI), "180"),
    ],
    "pairs-disagree": [MEASURING, *ACUTE],
    "roll": ["6", "3", CARD_READS],
    "roll-drag": ["1", n(ROLLED), "2", "3"],
    "roll-answer": [
        *("5", n(A - reads(5), 1), n(HALF_A_DEGREE), n(ROLLED), n(A - reads(ROLLED), 1)),
        *("30", n(A - reads(30), 1), "90"),
    ],
    "web": ["5", plain(W), n(D), n(SMALL)],
    "web-inch": [n(SHARE, 2), n(100 * SHARE), plain(SHARE / 2), "1/2", n(SHARE, 2)],
    "web-where": ["3", n(WEB_BEHIND, 1), n(100 * TAPER, 1), "2", "100"],
    "web-answer": [n(BEHIND), n(WEB_BEHIND, 2), n(BEHIND), "11"],
    "chisel": ["4", "1", "2", n(C, 1), "3", plain(W), plain(W)],
    "chisel-remarks": ["90", "3", "3"],
    "rule": [
        *("5", *HALVED, "1", str(64 * RULE), "64", "2", str(RULE), n(float(RULE), 4)),
        *("3", plain(INCH), n(float(RULE), 4), plain(INCH), n(mm(RULE), 2)),
        *("28/64", "14/32", "7/16", "7/16", "7.16", "2/4", "24", "1", "1/4", "11/4"),
    ],
    "rule-table": ["64", *(figure for written in IN_TABLE for figure in row(written)), str(RULE)],
    "rule-answer": ["2", str(RULE), n(mm(RULE), 2), n(D), "64", str(NEXT_MARK), n(mm(NEXT_MARK), 2), n(D), str(RULE)],
    "sure": ["4", plain(PROTRACTOR), n(OVER_THE_CHISEL_EDGE), plain(CALLIPER)],
    "sure-rule": [n(CALLIPERED.plus_minus, 2), plain(RULER)],
    "sure-which": [n(RULED.plus_minus, 1), n(A), plain(A - PROTRACTOR), plain(PROTRACTOR)],
    "left": ["2"],
    "back": ["1", "2", str(RULE), str(RULE_WEB), "3", n(ROLLED), n(A), CARD_READS, n(BEHIND), "2", "3"],
    "next": ["2"],
    "card": [
        *(n(A), "2", n(A / 2), "2", *(text for roll in (10, 20, 30) for text in (n(reads(roll), 1), str(roll)))),
        *(plain(W), n(SHARE, 2), "180", n(PSI), n(180 - PSI), n(C, 2), "2", n(D / 2), plain(INCH)),
        *(str(RULE), n(float(RULE), 4), n(mm(RULE), 2), n(D), "4.0"),
    ],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_the_third_card_is_what_its_mistakes_make_of_the_drill() -> None:
    assert round(reads(ROLLED)) == 115
    assert round(WEB_BEHIND, 1) == 1.8
    # The nearest marks on the rule of the second card, and no nearer one.
    for true, mark in ((D, RULE), (W, RULE_WEB)):
        assert abs(mm(mark) - true) <= INCH / 64 / 2
    # "A rule cannot tell them apart. A calliper can."
    assert CALLIPER < D - mm(RULE) < RULER
    assert abs(mm(NEXT_MARK) - D) > abs(mm(RULE) - D)


def test_the_two_slips_give_nonsense_and_the_workbook_says_so() -> None:
    assert WHOLE_TAKEN_FOR_HALF < 0 and f"−{n(WHOLE_TAKEN_FOR_HALF, 2)} mm" in prose(LESSON)["pairs-slips"]
    assert 0.8 * D < HALF_TAKEN_FOR_WHOLE < D
    with pytest.raises(OutOfRange, match="probably half the point angle"):
        point_height(diameter=D, point_angle=A / 2)
    (note,) = chisel_edge_length(web=W, chisel_edge_angle=180 - PSI).notes
    assert "read as 125° (obtuse)" in note


def test_a_rolled_drill_always_reads_low_and_the_top_is_flat() -> None:
    rolls = [0, 5, 10, 20, 30, 45]
    for angle in (60, 90, 118, 135, 150):
        read = [reads(roll, angle) for roll in rolls]
        assert read == sorted(read, reverse=True) and read[0] == pytest.approx(angle)
    # "The first 5° hardly count": each further 5° costs more than the one before.
    costs = [reads(roll) - reads(roll + 5) for roll in range(0, 30, 5)]
    assert costs == sorted(costs)
    # "Points near 90° suffer most", and a flatter or a sharper one less.
    lost = {angle: angle - reads(ROLLED, angle) for angle in (80, 90, 100, 118, 135, 150)}
    assert max(lost, key=lambda angle: lost[angle]) in (80, 90)
    assert lost[90] > lost[118] > lost[135] > lost[150]


def test_the_rolled_reading_is_what_is_seen_of_a_ground_point() -> None:
    # The lips of a solid point with hardly any web, turned about the axis and looked at along y.
    seen = GroundPoint(Flute(diameter=D, web=0.002), PlaneFlank(point_angle=A, lip_relief=12)).inspect().lips
    turn = math.radians(ROLLED)
    run = seen[0].corner - seen[0].foot
    across = run[0] * math.cos(turn) - run[1] * math.sin(turn)
    assert 2 * math.degrees(math.atan2(across, -run[2])) == pytest.approx(reads(ROLLED), abs=0.02)


def test_a_chisel_edge_is_longer_than_the_web_but_for_90_degrees() -> None:
    assert all(float(chisel_edge_length(web=W, chisel_edge_angle=psi)) > W for psi in (91, 110, 125, 135))
    assert float(chisel_edge_length(web=W, chisel_edge_angle=90)) == pytest.approx(W)


def test_what_else_the_words_claim() -> None:
    # The drill that is looked at first is the drill of the cards: a usual relief and the chisel edge they read.
    setup = conical_setup(
        diameter=D, web=W, point_angle=A, lip_relief=12, chisel_edge_angle=PSI, cone_half_angle=30
    ).point.inspect()
    assert setup.chisel_edge_angle == pytest.approx(PSI, abs=OVER_THE_CHISEL_EDGE)
    assert setup.chisel_edge_length == pytest.approx(C, abs=CALLIPER)
    # A web of 1.5 mm is usual at 10 mm, and a lot at 6 mm.
    assert SHARE < 0.18 < W / SMALL
    assert float(web_from_ratio(web_ratio=1 / 8, diameter=D)) == pytest.approx(D / 8)
    assert float(corner_radius(diameter=D)) == D / 2
    # The web's ± matters more than the angle's, with the calliper and far more with the rule.
    for sure, times in ((CALLIPERED, 1.2), (RULED, 6)):
        assert sure.shares["web"] > times * sure.shares["chisel_edge_angle"]


def test_a_left_hand_drill_measures_the_same() -> None:
    right, left = (
        GroundPoint(Flute(diameter=D, web=W, hand=hand), PlaneFlank(point_angle=A, lip_relief=12)).inspect()
        for hand in ("right", "left")
    )
    for name in ("point_angle", "web", "chisel_edge_angle", "chisel_edge_length", "lip_length", "lip_relief"):
        assert getattr(left, name) == pytest.approx(getattr(right, name))


def test_the_figures_from_print_stand_in_the_handbook() -> None:
    tapers = [1000 * row.low / 10 for row in look_up("web_taper")] + [
        1000 * row.high / 10 for row in look_up("web_taper")
    ]
    assert min(tapers) == pytest.approx(100 * TAPER) and max(tapers) == pytest.approx(2)
    assert {(row.low, row.high) for row in look_up("chisel_edge_angle")} <= {(120, 135), (125, 135)}
    # "Training manuals say the obtuse one", "textbooks the acute one: 45° to 60°": the same range.
    assert {180 - float(acute) for acute in ACUTE} == {120, 135}


def test_it_teaches_every_relation_it_rests_on() -> None:
    shown = "\n".join(code(LESSON).values())
    for call in ("derive(rolled_reading)", "derive(chisel_edge_length)", "work_out(web_ratio"):
        assert call in shown
    for call in ("tabulate(web_from_ratio", "work_out(corner_radius"):
        assert call in shown
