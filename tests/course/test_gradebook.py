"""The gradebook as a spreadsheet sees it."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.exercise_file import load_set
from drillpoint.course.folder import File
from drillpoint.course.gradebook import Gradebook, Layout, files_csv, gradebook_csv, harmless
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student
from drillpoint.course.variant import Variants

from .conftest import EXERCISES


def rows(data):
    return list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline="")))


@pytest.fixture
def result(lips, variants):
    right = variants.question("point-height", "s01").numbers.right[0]
    answers = [AnswerRecord("point-height", f"{right:.2f}", "1"), AnswerRecord("lip-length", "=1+1", "2")]
    file = File("=cmd.json", hand_in_bytes(lips.course, lips.id, lips.version, "s01", answers, "3"))
    roster = (Student("s01", '=HYPERLINK("x")'), Student("-5", "Ünal, Ç."), Student("007", "@name"))
    return mark_class(lips, roster, [file, File("+bad", b"x")])


def test_columns(result, lips):
    header, first, second, third = rows(gradebook_csv(result))
    assert header[:3] == ["id", "name", "1 Height of the point"]
    assert header[-4:] == ["total", "out of", "status", "comments"]
    assert len(header) == len(first) == len(lips.tasks) + 6
    assert first[2] == "1"
    assert first[3] == ""  # not answered
    assert first[4] == "0"
    assert first[-4:-1] == ["1", "10", "look at it"]
    assert "task 3 could not be read: “=1+1”" in first[-1]
    assert second[0] == "-5"  # a number stays a number
    assert second[1] == "Ünal, Ç."
    assert third[0] == "007"
    assert second[-1] == "no hand-in file"


def test_of_a_plan_it_tells_what_is_not_met_and_nothing_of_what_was_taken():
    relief = load_set(EXERCISES / "relief.toml")
    question = Variants(relief).question("plan-a-blind-hole", "s01")
    thick = question.numbers.givens["sheet_thickness"].value
    for depth, told in ((0.9 * thick, False), (1.1 * thick, True)):
        keys = [box.key for box in question.boxes]
        answers = [AnswerRecord(key, typed, "1") for key, typed in zip(keys, ("135", f"{depth:.2f}"), strict=True)]
        file = File("a", hand_in_bytes(relief.course, relief.id, relief.version, "s01", answers, "3"))
        (_, line) = rows(gradebook_csv(mark_class(relief, (Student("s01", "One"),), [file])))
        assert "taken" not in line[-1]
        assert ("not met: " in line[-1]) == told
    assert f"task {question.number} not met: " in line[-1]


def test_formulas_are_neutralised(result):
    table = rows(gradebook_csv(result)) + rows(files_csv(result))
    for row in table:
        for cell in row:
            assert not cell.startswith(("=", "+", "@", "\t", "\r"))
    assert rows(files_csv(result))[1] == [
        "'+bad",
        "",
        "no",
        "it is broken: Expecting value: line 1 column 1 (char 0)",
    ]


def test_excel_is_told_that_it_is_utf8(result):
    assert gradebook_csv(result).startswith(b"\xef\xbb\xbf")
    assert b"\r\n" in gradebook_csv(result)


@pytest.mark.parametrize(
    ("cell", "shown"),
    [
        ("=1", "'=1"),
        ("+1", "+1"),
        ("-2.5", "-2.5"),
        ("-2,5", "-2,5"),
        ("-2+3", "'-2+3"),
        ("@x", "'@x"),
        ("\t=1", "'\t=1"),
        ("a=1", "a=1"),
        ("", ""),
        ("a\nb", "a b"),
        ("\r=1", "' =1"),
        ("-", "'-"),
    ],
)
def test_harmless(cell, shown):
    assert harmless(cell) == shown


@given(st.text())
def test_no_cell_starts_a_formula(text):
    shown = harmless(text)
    assert not shown.startswith(("=", "@", "\t", "\r", "\n"))
    if shown.startswith(("+", "-")):
        float(shown.replace(",", "."))


def test_the_same_files_give_the_same_bytes(result):
    assert gradebook_csv(result) == gradebook_csv(result)


@pytest.mark.parametrize(("separator", "decimal"), [(",", "."), (";", ","), ("\t", ","), (",", ",")])
def test_separator_and_decimal_sign_can_be_chosen(result, separator, decimal):
    data = gradebook_csv(result, Layout(separator, decimal))
    table = list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline=""), delimiter=separator))
    assert {len(row) for row in table} == {len(table[0])}
    assert table[1][2] == "1"
    half = Layout(separator, decimal)
    file = io.BytesIO()
    book = Gradebook(file, result.set, [], half)
    assert book.points(0.5) == f"0{decimal}5"
    book.close()
    assert not file.closed


def test_the_mark_for_utf8_can_be_left_out(result):
    data = gradebook_csv(result, Layout(marked_as_utf8=False))
    assert data.startswith(b"id,name,")
    assert data == gradebook_csv(result)[3:]


def test_the_schools_own_id_has_a_column_if_the_roster_has_it(lips):
    roster = (Student("s01", "One", "2026/17"), Student("s02", "Two"))
    header, first, second = rows(gradebook_csv(mark_class(lips, roster, [])))
    assert header[:3] == ["id", "school id", "name"]
    assert (first[1], second[1]) == ("2026/17", "")


def test_a_cell_of_wide_signs_starts_no_formula_either():
    assert harmless("＝1+1") == "'＝1+1"
    assert harmless("\u00a0=1") == "'\u00a0=1"
