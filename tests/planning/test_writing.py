"""A plan reads the same as text and as HTML, and leaves room to write."""

import html
import re

import pytest

from drillpoint.errors import UnknownGiven
from drillpoint.planning.writing import BLANK, sections
from tests.planning.drills import WORN, plan

EVERY = [{}, WORN, {"new_point_angle": 135, "web": 1.9, "chip_depth": 0.4}, {"web": 2.0}, {"cracked": True}]


@pytest.mark.parametrize("read", EVERY)
def test_text_and_html_say_the_same(read: dict) -> None:
    found = plan(**read, name="drill <3>", drills="stainless pins & bolts")
    text, shown = str(found), found._repr_html_()
    assert "drill <3>" in text and "drill &lt;3&gt;" in shown and "<3>" not in shown
    plain = html.unescape(re.sub(r"<[^>]*>", "\n", shown))
    for section in sections(found):
        for said in (
            section.title,
            *section.lines,
            *(c for row in (section.table.rows if section.table else ()) for c in row),
        ):
            assert said in text and said in plain
    assert not re.findall(r"<(?:svg|math|script|style)\b", shown)


def test_the_parts_come_in_the_order_of_the_bench() -> None:
    found = plan(new_point_angle=135, web=1.9, chip_depth=0.4)
    titles = [section.title or section.table.title for section in sections(found)]
    wanted = ["Why", "Stock", "Web", "Flutes", "Wheel", "To know", "Cautions", "Inspect afterwards", "Record"]
    assert titles == wanted
    assert [s.title for s in sections(plan())] == ["Why", "Cautions"]


def test_there_is_room_for_every_reading_after_the_grind() -> None:
    found = plan(**WORN, length_before=120.4)
    inspected, record = (section.table for section in sections(found) if not section.title)
    assert all(row[-1] == BLANK for row in (*inspected.rows, *record.rows))
    # DERIVED: the length before less what comes off the tip.
    assert f"aim: {120.4 - found.off.tip.value:.2f} mm" in record.rows[0][0]
    assert plan(**WORN).readings.diameter == 10
    (unread,) = [s.table for s in sections(plan(**WORN)) if s.table and s.table.title == "Record"]
    assert unread.rows[0][1] == BLANK


def test_lengths_stand_in_both_units() -> None:
    text = str(plan(new_point_angle=135, web=1.9, chip_depth=0.4, length_before=120))
    lengths = re.findall(
        r"\d mm\b(?! in| \()", text.replace("1.4 mm to 2.0 mm in 100 mm", "").replace("0.014 mm in each mm", "")
    )
    assert lengths == []


def test_some_parts_can_be_shown_alone() -> None:
    found = plan(**WORN)
    shown = found.only("Why", "Inspect afterwards")
    assert str(shown).startswith(f"Plan for drill: 10 mm (0.394 in)\n{found.says}\n\nWhy\n- The wear land")
    assert "Inspect afterwards" in str(shown) and "Cautions" not in str(shown)
    assert "Cautions" not in shown._repr_html_() and "<table>" in shown._repr_html_()
    with pytest.raises(UnknownGiven, match="no part 'Whey'; did you mean 'Why'"):
        found.only("Whey")
    with pytest.raises(UnknownGiven, match="no part 'Wheel'"):
        plan().only("Wheel")


def test_more_grinds_than_a_web_stands_are_not_counted() -> None:
    assert "more than 100 more such grinds" in str(plan(**WORN, flute_length=200))
    assert "44 more such grinds" in str(plan(worn_margin=0.95))
    assert "1 more such grind." in str(plan(worn_margin=0.95, flute_length=37.5))
