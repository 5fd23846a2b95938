"""The small table of what was found: every fault with evidence, certainty and cure, in both units, as text and HTML."""

from __future__ import annotations

import html
import re

import pytest

from drillpoint.ground import Limits, Readings, find_faults
from drillpoint.ground.diagnosis.faults import CAUTION, NOTHING, Report
from drillpoint.ground.diagnosis.table import CERTAINTY, HEADS, READ_AGAIN, lines_of, order_of

ANGLES = find_faults(
    Readings(diameter=10, half_angle_1=59, half_angle_2=61, lip_height_difference=0.23, higher_lip=2),
    signs=["one_ribbon"],
)
LIPS = find_faults(
    Readings(
        diameter=10, point_angle=118, lip_length_1=5.6, lip_length_2=5.2,
        reading_errors={"lip_length_1": 0.05, "lip_length_2": 0.05},
    )
)  # fmt: skip
OPEN = find_faults(Readings(point_angle=118, lip_length_1=5.2, lip_length_2=5.1))
SOUND = find_faults(Readings(point_angle=118, reading_errors={"point_angle": 0.1}))
TWO = find_faults(Readings(diameter=10, half_angle_1=59, half_angle_2=63, web=2.5), limits=Limits(point_angle=122))
ALL = pytest.mark.parametrize(
    "report", [ANGLES, LIPS, OPEN, SOUND, TWO], ids=["angles", "lips", "open", "sound", "two"]
)


def page(report: Report) -> str:
    return report._repr_mimebundle_()["text/html"]


def words(report: Report) -> str:
    """The table as HTML without its tags."""
    return " ".join(html.unescape(re.sub(r"<[^>]*>", " ", page(report))).split())


@ALL
def test_text_and_page_say_the_same(report: Report) -> None:
    text = " ".join(report._repr_mimebundle_()["text/plain"].split())
    assert " ".join(repr(report).split()) == text
    for line in lines_of(report):
        for told in (line.fault, *line.evidence, line.certainty, line.cure):
            assert told in text and told in words(report)
    for told in (report.says(), CAUTION, *report.signs):
        assert told in text and told in words(report)


@ALL
def test_every_fault_and_everything_left_open_has_a_line(report: Report) -> None:
    lines = lines_of(report)
    assert [line.fault.lower() for line in lines] == [f.name.lower() for f in (*report.faults, *report.undecided)]
    assert [line.certainty for line in lines] == [
        *(f.confidence for f in report.faults),
        *("not decided" for _ in report.undecided),
    ]
    assert {line.certainty for line in lines} <= set(CERTAINTY)
    assert page(report).count("<tr>") == (len(lines) + 1 if lines else 0)


def test_lengths_are_in_millimetres_and_inches() -> None:
    (line,) = lines_of(LIPS)
    # DERIVED: 0.4·cos 59° = 0.206 mm of height, 0.206·tan 59° = 0.343 mm of hole; all errors: 0.5·cos 58.75° = 0.259.
    assert "0.206 mm ± 0.053 mm (0.0081 ± 0.0021 in)" in line.evidence[0]
    assert line.evidence[1] == "The hole comes out at most 0.343 mm (0.0135 in) wider because of it."
    assert line.cure.endswith("off the flank of lip 2, along the axis: 0.206 mm (0.0081 in).")
    for told in (*line.evidence, line.cure):
        # An inch and its error have the unit once.
        both = len(re.findall(r"\d mm", told)) - len(re.findall("±", told)) // 2
        assert both == len(re.findall(r"\d in\b", told)) > 0


def test_a_consequence_sends_you_to_its_cause_and_promises_no_hole() -> None:
    line = next(line for line in lines_of(ANGLES) if line.fault == "Lip height difference")
    assert line.cure == "It follows from unequal half angles. Put that right first."
    assert not any("The hole comes out" in told for told in line.evidence)


def test_what_is_left_open_asks_for_another_reading_and_no_grinding() -> None:
    (line,) = lines_of(OPEN)
    assert line.certainty == "not decided" and line.cure == READ_AGAIN
    assert CERTAINTY["not decided"] in words(OPEN) and CERTAINTY["shown"] not in words(OPEN)


def test_the_order_of_grinding_is_said_where_there_is_one() -> None:
    assert order_of(TWO) == "Grind in this order: unequal half angles; then web too thick: due for thinning."
    assert order_of(TWO) in words(TWO)
    assert order_of(LIPS) == order_of(SOUND) == ""


def test_a_sound_drill_has_no_table_but_a_verdict() -> None:
    assert NOTHING in words(SOUND) and "<table" not in page(SOUND)
    assert all(f">{head}</th>" in page(LIPS) for head in HEADS)


def test_nothing_in_it_is_lost_where_a_notebook_is_not_trusted() -> None:
    assert not re.search(r"<(?:svg|math|script|style)\b", page(ANGLES))
    assert set(re.findall(r"<(\w+)", page(ANGLES))) <= {
        *("p", "strong", "table", "thead", "tbody", "tr", "th", "td", "br", "details", "summary", "ul", "li"),
    }
