"""The invented class: its files are what the generator makes, and marking finds what each student intended."""

import pytest

from drillpoint.course.demo import STUDENTS, demo_files, intentions, student_id, write_demo_class
from drillpoint.course.folder import read_folder
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WRONG
from drillpoint.course.marking import LOOK, MARKED, NO_HAND_IN, NOT_MARKED, mark_class
from drillpoint.course.roster import read_roster
from drillpoint.course.slips import ROUNDED_EARLY

from .conftest import EXERCISES

DEMO = EXERCISES / "demo-class"


@pytest.fixture(scope="module")
def result(lips):
    return mark_class(lips, read_roster(DEMO / "roster.csv"), read_folder(DEMO / "hand-ins"))


@pytest.fixture(scope="module")
def by_id(result):
    return {entry.student.id: entry for entry in result.students}


def test_the_committed_files_are_current(lips):
    """If this fails after a change of the set: python3 -m drillpoint demo-class exercises/demo-class."""
    made = demo_files(lips)
    committed = {p.relative_to(DEMO).as_posix(): p.read_bytes() for p in DEMO.rglob("*") if p.is_file()}
    assert sorted(committed) == sorted(made)
    for name, data in made.items():
        assert committed[name] == data, name


def test_writing_twice_gives_the_same(tmp_path):
    assert write_demo_class(tmp_path) == write_demo_class(tmp_path) == len(list((tmp_path / "hand-ins").rglob("*.*")))


@pytest.mark.parametrize("student", [student_id(number) for number in range(1, STUDENTS + 1)])
def test_every_answer_gets_the_verdict_it_was_meant_to_get(lips, by_id, student):
    found = [(mark.typed, mark.verdict.mark, mark.verdict.state, mark.verdict.slip) for mark in by_id[student].marks]
    meant = [(i.typed, i.mark, i.state, i.slip) for i in intentions(lips)[student]]
    assert found == meant


def test_the_class_shows_every_slip_of_every_task(lips, result):
    shown = {(mark.question.task.id, mark.verdict.slip) for entry in result.students for mark in entry.marks}
    for task in lips.tasks:
        if task.kind == "choice":
            assert any(task_id == task.id and slip for task_id, slip in shown)
            continue
        missing = {rule.name for rule in task.slips} - {slip for task_id, slip in shown if task_id == task.id}
        # Seven students make slips, each the next one of the list; now and then a student's numbers do not allow it.
        assert len(missing) <= max(0, len(task.slips) - 7) + 1


def test_the_class_shows_every_state_and_early_rounding(result):
    verdicts = [mark.verdict for entry in result.students for mark in entry.marks]
    assert {verdict.state for verdict in verdicts} == {RIGHT, PARTLY, WRONG, UNREADABLE, MISSING}
    assert any(verdict.slip == ROUNDED_EARLY for verdict in verdicts)


@pytest.mark.parametrize(
    ("student", "status", "says"),
    [
        ("s01", MARKED, ""),
        ("s04", MARKED, ""),
        ("s13", LOOK, "task 1 could not be read: “__import__('os')”"),
        ("s14", LOOK, "task 1 could not be read: “1,234” (The comma can be read in two ways"),
        ("s15", LOOK, "is right for the numbers of s01"),
        ("s16", LOOK, "not answered: task 2, 3, 5, 6, 8, 9"),
        ("s17", LOOK, "2 hand-in files (earlier/lips-s17.hand-in.json, lips-s17.hand-in.json)"),
        ("s17", LOOK, "task 1 answered more than once"),
        ("s18", LOOK, "altered after it was made"),
        ("s19", NOT_MARKED, "may be theirs and was not marked: it is broken"),
        ("s20", NO_HAND_IN, "no hand-in file"),
        ("s21", NOT_MARKED, "it answers version 1 of the set, which is now version 2"),
        ("s22", NOT_MARKED, "another set, “drilling-times”"),
        ("s23", NOT_MARKED, "not UTF-8"),
        ("s24", NOT_MARKED, "saved answers that were not handed in"),
    ],
)
def test_every_oddity_is_named(by_id, student, status, says):
    entry = by_id[student]
    assert entry.status == status
    assert says in "; ".join(entry.problems)


@pytest.mark.parametrize("number", [2, 3, 4])
def test_commas_fractions_other_units_and_the_edge_are_right(by_id, number):
    assert by_id[student_id(number)].total == 10


def test_every_file_is_accounted_for(result):
    files = {p.relative_to(DEMO / "hand-ins").as_posix() for p in (DEMO / "hand-ins").rglob("*") if p.is_file()}
    claimed = [path for entry in result.students for path in entry.files]
    unclaimed = [entry.path for entry in result.unclaimed]
    assert sorted(claimed + unclaimed) == sorted(files)
