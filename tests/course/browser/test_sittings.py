"""Putting two sittings together: the page does what Python does."""

import pytest

from drillpoint.course.hand_in_file import AnswerRecord, put_answer, put_together
from drillpoint.course.html_sheet import parts_script


@pytest.fixture(scope="module")
def in_browser(browser):
    page = browser.new_page()
    page.add_script_tag(content=parts_script())
    yield page
    page.close()


SITTINGS = [
    ([("a", "1", 1), ("b", "2", 2)], [("b", "3", 3), ("c", "4", 4)]),
    ([("b", "3", 3)], [("b", "2", 2)]),
    ([("a", "1", 1)], [("a", "2", 1)]),
    ([("a", "2", 1)], [("a", "1", 1)]),
    ([("a", "", 5)], [("a", "1", 1)]),
    ([], [("a", str(n), n) for n in range(9)]),
    ([("a", "9", 9), ("a", "1", 1)], [("a", "1", 7), ("b", "", 2)]),
]


def records_of(entries):
    return [AnswerRecord(task, typed, f"2026-03-12T18:0{minute}:00Z") for task, typed, minute in entries]


@pytest.mark.parametrize(("here", "there"), SITTINGS)
def test_page_and_notebook_put_sittings_together_alike(in_browser, here, there):
    here, there = records_of(here), records_of(there)
    plain = [[{"task": r.task, "typed": r.typed, "time": r.time} for r in records] for records in (here, there)]
    made = in_browser.evaluate("([here, there]) => putTogether(here, there)", plain)
    records, differences = put_together(here, there)
    assert [AnswerRecord(**record) for record in made["records"]] == list(records)
    assert [(d["task"], d["counts"], d["earlier"]) for d in made["differences"]] == [
        (d.task, d.counts, d.earlier) for d in differences
    ]
    new = AnswerRecord("a", "new", "2026-03-12T18:04:30Z")
    put = in_browser.evaluate(
        "([all, one]) => putAnswer(all, one)", [plain[0], {"task": "a", "typed": "new", "time": new.time}]
    )
    assert [AnswerRecord(**record) for record in put] == list(put_answer(here, new))
