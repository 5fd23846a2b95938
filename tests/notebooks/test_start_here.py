"""The first lesson: every number in its prose, and what its words claim.

A figure is DERIVED (worked out here from the relations), CHOSEN (the drills of the lesson, or an example of how to
type), or SOURCE (printed in the source named).
"""

import re
from importlib.resources import files

import pytest

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.reading import ReadingError
from drillpoint.relations import point_height
from tests.notebooks.lessons import IN_ORDER, number_of
from tests.notebooks.prose import code, prose, unaccounted

LESSON = "00-start-here.ipynb"
INCH = 25.4  # SOURCE: the international inch, exact
SHORT_INCH = 25

# CHOSEN: the drills in the drawer, the pin, and the drill that is shown.
PIN, DRILL_A, DRILL_B, DRILL_C = 9.95, 10, 25 / 64 * INCH, 0.3906 * INCH
A, W = 118, 1.5
HALF, REST, LEAN = A / 2, 180 - A, 90 - A / 2
EASY = 90

# SOURCE: 29 CFR 1910.215 for guard and rest (seen); the millimetres for the guard are the whole ones within its quarter
# inch. OSHA's data sheet CH_229100 for cobalt, mg/m³ (seen).
TONGUE, REST_GAP, COBALT, ADVISED = ("1/4", "6"), ("1/8", "3"), "0.1", "0.05"


def n(value: float, decimals: int = 0) -> str:
    """The number as the lesson prints it."""
    return f"{value:.{decimals}f}"


def plain(value: float) -> str:
    """A chosen number as the lesson prints it."""
    return f"{value:g}"


SHORT = 1 - SHORT_INCH / INCH
# What may be typed, and its value in mm or degrees. DERIVED
VALUES = {
    **dict.fromkeys(("3.25", "3,25", "3.25 mm", "yes, 3.25"), 3.25),
    "7/8 in": 7 / 8 * INCH,
    "1 7/8 in": 15 / 8 * INCH,
    '0.875"': 0.875 * INCH,
    "59.5°": 59.5,
    "59° 30'": 59.5,
}
# The lessons that follow, each with its number in front of its title.
FOLLOWING = [str(number) for number in range(1, 13)]

FIGURES: dict[str, list[str]] = {
    "title": ["0", "40"],
    "cautions": [*TONGUE, *REST_GAP],
    "cautions-sources": ["29", "1910.133", "87.1", "29", "1910.215", COBALT, ADVISED],
    "shop": ["3", plain(PIN), n(DRILL_A), n(A), "25/64", n(HALF), "0.3906", n(REST)],
    "room": ["5"],
    "room-found": ["3"],  # in the name of the command
    "answer": ["6"],
    "answer-forms": [
        *("3.25", "3,25", "3.25", "3.25", "7/8", "1", "7/8", "0.875", "59.5", "59", "30", "3.25", "2"),
        *("1,234", "3/8", "3/16"),
    ],
    "answer-more": [
        *("0.02", n(SHORT_INCH), "25/64", n(25 / 64 * SHORT_INCH, 2), n(DRILL_B, 2), plain(INCH)),
        *(n(100 * SHORT, 1), n(DRILL_B * SHORT, 2)),
    ],
    "solid": ["8", n(DRILL_A)],
    "half": ["4"],
    "half-answer": [n(A), n(HALF), n(LEAN), n(REST), n(A), "180"],
    "predict": ["6"],
    "drag": [n(A), "150", n(EASY), "1", "2", n(EASY), "3"],
    "dragged": [n(EASY), n(float(point_height(diameter=DRILL_A, point_angle=EASY)))],
    "worked-share": [plain(W)],
    "back": ["3"],
    "back-answer": [
        *(n(A), n(HALF), n(REST), "180", "25/64", "0.3906", n(DRILL_B, 2), n(DRILL_A - DRILL_B, 2)),
    ],
    "hand-in": ["4", "1", "2", "3", "4"],
    "print": ["1"],
    "map": ["2", *FOLLOWING],
    "next": ["1"],
    "card": ["3.25", "3,25", "7/8", "1", "7/8", "59", "30", "3.25", "3.25", "3", "1", plain(INCH), "4.0"],
}


def test_every_number_in_the_prose_is_accounted_for() -> None:
    assert unaccounted(LESSON, FIGURES) == {}


def test_only_the_first_drill_lets_the_pin_through() -> None:
    assert pytest.approx(DRILL_C, abs=0.005) == DRILL_B
    assert max(DRILL_B, DRILL_C) < PIN < DRILL_A
    # "You will see what half of that can do": the drills differ by half of what the short inch takes.
    assert pytest.approx(DRILL_B * SHORT / 2, rel=0.05) == DRILL_A - DRILL_B


def test_a_larger_angle_makes_a_lower_point() -> None:
    heights = [float(point_height(diameter=DRILL_A, point_angle=angle)) for angle in (EASY, A, 150)]
    assert heights == sorted(heights, reverse=True)
    assert heights[0] == pytest.approx(DRILL_A / 2)


def test_what_it_says_may_be_typed_is_read() -> None:
    rows = re.findall(r"^\| (`.*`) \|", prose(LESSON)["answer-forms"], re.MULTILINE)
    typed = {form for row in rows for form in re.findall(r"`([^`]*)`", row)}
    assert typed == {*VALUES, "D/2"}
    for form, value in VALUES.items():
        kind, unit = "judgement" if form.startswith("yes") else "number", "°" if "°" in form else "mm"
        reading = AnswerForm(kind, unit).read(form).reading
        assert reading is not None and reading.value == pytest.approx(value)
    assert AnswerForm("formula", names=("D",)).read("D/2").formula is not None
    with pytest.raises(ReadingError, match="read in two ways"):
        AnswerForm("number", "mm").read("1,234")


def test_the_map_names_each_lesson_by_its_title() -> None:
    shown = dict(re.findall(r"^\| (\d+) · ([^|]+?) \|", prose(LESSON)["map"], re.MULTILINE))
    assert list(shown) == FOLLOWING
    titles = {str(number_of(lesson)): next(iter(prose(lesson).values())).splitlines()[0] for lesson in IN_ORDER[1:]}
    assert {number: f"# {number} · {shown[number]}" for number in titles} == titles


def test_the_buttons_it_speaks_of_are_on_the_sheet() -> None:
    page = (files("drillpoint.course") / "pages" / "sheet.html.j2").read_text(encoding="utf-8")
    said = prose(LESSON)["hand-in"] + prose(LESSON)["print"]
    buttons = re.findall(r"\*((?:Save the|Print this)[^*]*)\*", said)
    assert len(buttons) == 2
    assert [button for button in buttons if f">{button}</button>" not in page] == []


def test_it_teaches_every_relation_its_sheet_begins_with() -> None:
    shown = "\n".join(code(LESSON).values())
    assert "derive(corner_radius)" in shown
    assert "work_out(point_height," in shown and "work_out(web_ratio," in shown
