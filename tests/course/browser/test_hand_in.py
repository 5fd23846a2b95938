"""The file that the page saves, and opens again to go on."""

import json
import re

from playwright.sync_api import expect

from drillpoint.course.desk import Desk
from drillpoint.course.folder import read_folder
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes, read_hand_in
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student

from .filling import box, open_file, saved_file, state

NOON = "2026-03-12T12:00:00Z"


def test_the_file_is_byte_for_byte_what_a_notebook_writes_and_its_receipt_says_the_same(desk_of, lips):
    with desk_of() as page:
        box(page, 1).fill('ψ = −3 \x7f \U0001f600 "\\')
        data = saved_file(page)
        found = read_hand_in(data)
        assert data == hand_in_bytes(lips.course, "lips", lips.version, "s07", found.answers, found.time)
        code = f"{found.digest[:4]}-{found.digest[4:8]}".upper()
        receipt = page.locator("#receipt")
        expect(receipt).to_contain_text(f"Receipt for s07, {lips.title}: 1 of 10 answers, {found.time}, code {code}.")
        expect(receipt).to_contain_text("Not answered: task 2, 3, 4, 5, 6, 7, 8, 9, 10.")
        expect(receipt).to_contain_text("not yet handed in. Give this file to your instructor: lips-s07.hand-in.json")
        expect(state(page)).to_contain_text("Saved as a file, not yet handed in: give lips-s07.hand-in.json")
        assert json.loads(page.locator("#text").input_value())["digest"] == found.digest
        box(page, 1).fill("3")
        expect(state(page)).to_contain_text("Changed since the file was saved: save it again.")


def test_right_answers_from_the_page_are_marked_right(desk_of, lips, variants, tmp_path):
    with desk_of() as page:
        for question in variants.questions("s07"):
            for key, (value, _) in question.right_values.items():
                number = next(n for n, q in enumerate(variants.questions("s07"), start=1) if q.task.id == key)
                yes = {True: "yes, ", False: "no, ", None: ""}[question.numbers.yes]
                box(page, number).fill(f"{yes}{value / (25.4 if question.task.unit == 'in' else 1):.6g}")
        (tmp_path / "any name.json").write_bytes(saved_file(page))
    result = mark_class(lips, [Student("s07")], read_folder(tmp_path, []))
    assert [mark.verdict.state for mark in result.students[0].marks] == [
        "not answered" if mark.question.task.kind in ("formula", "choice") else "right"
        for mark in result.students[0].marks
    ]


def test_going_on_at_another_computer_counts_the_last_answer_and_tells_both(desk_of):
    with desk_of() as school, desk_of() as home:
        box(school, 1).fill("3.00")
        box(school, 2).fill("0.25")
        data = saved_file(school)
        home.wait_for_timeout(1100)  # times have whole seconds
        box(home, 2).fill("0.26")
        box(home, 3).fill("5.15")
        open_file(home, data)
        opened = home.locator("#opened")
        expect(opened).to_contain_text("Taken up from lips-s07.hand-in.json: answers 1.")
        expect(opened).to_contain_text("Task 2 was answered twice: “0.26” is the later one and counts, earlier “0.25”.")
        for number, typed in ((1, "3.00"), (2, "0.26"), (3, "5.15")):
            expect(box(home, number)).to_have_value(typed)
        found = read_hand_in(saved_file(home))
        assert [(a.task, a.typed) for a in found.answers] == [
            ("point-height", "3.00"), ("point-height-inch", "0.25"), ("point-height-inch", "0.26"),
            ("lip-length", "5.15"),
        ]  # fmt: skip
        expect(home.locator("#receipt")).to_contain_text("3 of 10 answers")


def test_the_notebook_goes_on_with_the_file_of_the_page_and_the_page_with_that_of_the_notebook(desk_of, make_sheet):
    folder = make_sheet("s07")
    desk = Desk(folder / "lips.sheet.json")
    desk.give("2", "7/8")
    with desk_of() as page:
        box(page, 1).fill("3")
        (folder / "page.json").write_bytes(saved_file(page))
        assert "Taken up from page.json: answers 1." in desk.go_on(folder / "page.json")
        desk.hand_in()
        open_file(page, desk.hand_in_file.read_bytes())
        expect(page.locator("#opened")).to_contain_text("answers 2")
        expect(box(page, 2)).to_have_value("7/8")


def file_of(**changed):
    values = {"course": "Footbridge evening class", "set_id": "lips", "version": 2, "student": "s07"} | changed
    return hand_in_bytes(answers=[AnswerRecord("point-height", "9", NOON)], time=NOON, **values)


NOT_OF_THIS_SHEET = (
    (file_of(student="s08"), "it is the file of s08, and this is the sheet of s07"),
    (file_of(version=1), "it answers version 1 of the set, and this sheet is version 2"),
    (file_of(set_id="holes"), "it belongs to the set holes"),
    (file_of(course="Another"), "it belongs to the set lips of Another"),
    (file_of()[:100], "it is broken"),
    (b"", "it is empty"),
    (b"null", "it is not a hand-in file"),
    (b'{"format": "drillpoint hand-in", "format_version": 9}', "it was written by another version of this page"),
    (b'{"format": "drillpoint hand-in", "format_version": 1, "answers": [5]}', "something is missing in it"),
    (file_of() + b" " * 200_000, "it is larger than 200 kB"),
    (b"PK\x03\x04\xff\xfe", "it is broken"),
)


def test_a_file_that_is_not_of_this_sheet_changes_nothing(desk_of):
    with desk_of() as page:
        box(page, 1).fill("3")
        for place, (data, says) in enumerate(NOT_OF_THIS_SHEET):
            open_file(page, data, f"{place}.json")
            expect(page.locator("#opened")).to_have_text(re.compile(rf"^{place}\.json was not taken up: {says}"))
        expect(box(page, 1)).to_have_value("3")


def test_an_altered_file_is_taken_up_and_named(desk_of):
    with desk_of() as page:
        open_file(page, file_of().replace(b'"9"', b'"8"'))
        expect(page.locator("#opened")).to_contain_text("The file was altered after it was made")
        expect(box(page, 1)).to_have_value("8")
