"""The figures of a class: counted as results come, the same in any order."""

import random

import pytest

from drillpoint.course.class_page import survey_of
from drillpoint.course.folder import File, read_folder
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.judging import RIGHT
from drillpoint.course.marking import mark_class
from drillpoint.course.roster import Student, read_roster
from drillpoint.course.rules import Accept, Drop, Excuse, Rules
from drillpoint.course.survey import LISTED, NAMED, STATES, Survey
from drillpoint.course.variant import Variants

from .conftest import EXERCISES


@pytest.fixture(scope="module")
def demo(lips):
    folder = EXERCISES / "demo-class"
    return mark_class(lips, read_roster(folder / "roster.csv"), read_folder(folder / "hand-ins"))


def made_class(lips, wanted, **rules):
    """A class in which student n answers the tasks whose numbers are wanted of them rightly, and others wrongly."""
    variants = Variants(lips)
    task = lips.tasks[0].id, lips.tasks[2].id
    files = []
    for student, right in wanted.items():
        records = []
        for place, name in enumerate(task):
            value = variants.question(name, student).numbers.right[0] * (1 if place in right else 7.3)
            records.append(AnswerRecord(name, f"{value:.2f} mm", str(place)))
        data = hand_in_bytes(lips.course, lips.id, lips.version, student, records, "9")
        files.append(File(student, data))
    return mark_class(lips, [Student(student) for student in wanted], files, rules=Rules("r.toml", **rules))


def test_every_student_who_handed_in_is_counted_in_every_task(demo, lips):
    survey = survey_of(demo)
    assert (survey.students, survey.handed_in, survey.excused) == (24, 18, 0)
    assert [sum(found.counts) for found in survey.tasks] == [18] * len(lips.tasks)
    assert sum(survey.bins) == 18
    right = [sum(e.marks[k].verdict.state == RIGHT for e in demo.students if e.files) for k in range(len(lips.tasks))]
    assert [found.counts[0] for found in survey.tasks] == right


def test_difficulty_is_the_share_of_points_reached(demo):
    # DERIVED from the marks themselves
    for found in survey_of(demo).tasks:
        points = [entry.marks[found.number - 1].points for entry in demo.students if entry.files]
        assert found.reached == pytest.approx(sum(points) / len(points))


def test_what_tells_apart_and_what_does_not(lips):
    # DERIVED: the best third gets task 1, nobody else does, and task 3 is got by everybody.
    wanted = {f"p{n}": ((0, 1) if n < 3 else (1,)) for n in range(9)}
    first, _, third, *rest = survey_of(made_class(lips, wanted)).tasks
    assert first.discrimination == pytest.approx(1)
    assert third.discrimination == pytest.approx(0)
    assert (first.reached, third.reached) == (pytest.approx(1 / 3), 1)
    assert all(found.discrimination == 0 for found in rest)


def test_a_tie_at_the_border_is_shared_out(lips):
    # DERIVED: two of twelve have task 1; the best third is these two and two of the ten others.
    wanted = {f"p{n}": ((0,) if n < 2 else ()) for n in range(12)}
    assert survey_of(made_class(lips, wanted)).tasks[0].discrimination == pytest.approx(0.5)


def test_a_small_class_gets_no_discrimination(lips):
    assert survey_of(made_class(lips, {"p1": (0,), "p2": ()})).tasks[0].discrimination is None


def test_order_does_not_matter(demo, lips):
    entries = list(demo.students)
    random.Random(3).shuffle(entries)
    survey = Survey(lips)
    for entry in entries:
        survey.add(entry)
    first = survey_of(demo)
    assert [(f.counts, f.slips, f.discrimination) for f in survey.tasks] == [
        (f.counts, f.slips, f.discrimination) for f in first.tasks
    ]
    assert [(s.name, s.times, s.tasks) for s in survey.slips] == [(s.name, s.times, s.tasks) for s in first.slips]


def test_who_is_stuck(lips):
    first = survey_of(made_class(lips, {"p1": (0,), "p2": (), "p3": ()})).tasks[0]
    assert (first.stuck.count, str(first.stuck)) == (2, "p2, p3")


def test_decisions_are_counted_as_they_were_made(lips):
    wanted = {"p1": (), "p2": (), "p3": ()}
    task = lips.tasks[0].id
    accepted = survey_of(made_class(lips, wanted, accept=(Accept("x", 1, task, "p1"),))).tasks[0]
    assert accepted.counts == (1, 0, 2, 0, 0)
    dropped = survey_of(made_class(lips, wanted, drop=(Drop("x", 1, task),))).tasks[0]
    assert (sum(dropped.counts), dropped.reached) == (0, None)
    excused = survey_of(made_class(lips, wanted, excuse=(Excuse("x", 1, "p1"),)))
    assert (excused.handed_in, excused.excused, sum(excused.tasks[0].counts)) == (2, 1, 2)


def test_lists_are_cut_off_and_say_how_many_more(lips):
    survey = survey_of(made_class(lips, {f"p{n}": () for n in range(LISTED + 5)}))
    assert (survey.students, len(survey.listed)) == (LISTED + 5, LISTED)
    stuck = survey.tasks[0].stuck
    assert len(stuck.first) == NAMED
    assert str(stuck).endswith(f" and {LISTED + 5 - NAMED} more")


def test_nobody_handed_in(lips):
    survey = survey_of(mark_class(lips, [Student("s01")], []))
    assert survey.slips == []
    assert all(found.reached is None and found.counts == (0,) * len(STATES) for found in survey.tasks)
