"""Marking a class from files."""

import json
import tracemalloc

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from drillpoint.course.demo import demo_files, intentions
from drillpoint.course.exercise_file import load_set
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import LARGEST_FILE, AnswerRecord, digest_of, hand_in_bytes
from drillpoint.course.judging import MISSING, RIGHT
from drillpoint.course.marking import LOOK, MARKED, NO_HAND_IN, NOT_MARKED, Marking, mark_class
from drillpoint.course.roster import Student

from .hostile import HOSTILE_STRINGS

ROSTER = (Student("s01", "One"), Student("s02", "Two"), Student("s03", "Three"))


def hand_in(lips, student, answers, time="2026-03-12T19:00:00Z", **changes):
    records = [AnswerRecord(task, typed, when) for task, typed, when in answers]
    content = {"course": lips.course, "set_id": lips.id, "version": lips.version, "student": student} | changes
    return hand_in_bytes(content["course"], content["set_id"], content["version"], content["student"], records, time)


def right_answers(lips, student="s01"):
    return [(task.id, i.typed, "t") for task, i in zip(lips.tasks, intentions(lips)[student], strict=True)]


def test_a_plain_hand_in(lips):
    result = mark_class(lips, ROSTER, [File("any/name.txt", hand_in(lips, "s01", right_answers(lips)))])
    first, second, third = result.students
    assert (first.status, first.total, first.problems) == (MARKED, 10, ())
    assert (second.status, second.total, second.problems) == (NO_HAND_IN, 0, ("no hand-in file",))
    assert all(mark.verdict.state == MISSING for mark in third.marks)
    assert result.unclaimed == ()
    assert result.out_of == 10


def test_order_and_names_of_files_do_not_matter(lips):
    files = [File(name, data) for name, data in demo_files(lips).items() if name != "roster.csv"]
    roster = tuple(Student(f"s{n:02}") for n in range(1, 25))
    first = mark_class(lips, roster, files)
    shuffled = sorted(files, key=lambda file: digest_of({"path": file.path}))
    again = mark_class(lips, roster, [File(f"x{file.path}", file.data) for file in shuffled])
    assert [entry.total for entry in again.students] == [entry.total for entry in first.students]
    assert [[m.verdict.slip for m in e.marks] for e in again.students] == [
        [m.verdict.slip for m in e.marks] for e in first.students
    ]


def test_the_last_answer_counts_over_all_files(lips):
    early = hand_in(
        lips, "s01", [("point-height", "1 mm", "2026-03-12T18:00:00Z"), ("lip-length", "5 mm", "2026-03-12T18:05:00Z")]
    )
    late = hand_in(lips, "s01", [("point-height", "2 mm", "2026-03-12T18:30:00Z")])
    for files in ([File("a", early), File("b", late)], [File("b", late), File("a", early)]):
        entry = mark_class(lips, ROSTER, files).students[0]
        typed = {mark.question.task.id: mark.typed for mark in entry.marks}
        assert (typed["point-height"], typed["lip-length"]) == ("2 mm", "5 mm")
        assert entry.status == LOOK
        assert "task 1 answered more than once: “2 mm” counts, earlier “1 mm”" in entry.problems


def test_doubled_answers_inside_one_file(lips):
    data = hand_in(
        lips, "s01", [("point-height", "1 mm", "1"), ("point-height", "2 mm", "2"), ("point-height", "2 mm", "3")]
    )
    entry = mark_class(lips, ROSTER, [File("a", data)]).students[0]
    assert entry.marks[0].typed == "2 mm"
    assert any("“2 mm” counts, earlier “1 mm”" in problem for problem in entry.problems)


def test_the_same_file_twice_is_reported_but_changes_nothing(lips):
    data = hand_in(lips, "s01", right_answers(lips))
    entry = mark_class(lips, ROSTER, [File("a", data), File("copy of a", data)]).students[0]
    assert entry.total == 10
    assert entry.problems == ("2 hand-in files (a, copy of a): the last answer to each task counts",)


def test_tampered_is_marked_and_named(lips):
    data = hand_in(lips, "s01", [("point-height", "1 mm", "1")]).replace(b"1 mm", b"2 mm")
    entry = mark_class(lips, ROSTER, [File("a", data)]).students[0]
    assert entry.marks[0].typed == "2 mm"
    assert "a was altered after it was made (its digest does not match); marked as it stands" in entry.problems


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"course": "Other"}, "another course, “Other”"),
        ({"set_id": "other"}, "another set, “other”"),
        ({"version": 1}, "answers version 1 of the set, which is now version 2"),
        ({"version": 3}, "the set here is only version 2"),
    ],
)
def test_foreign_hand_ins_are_named_with_their_student(lips, changes, says):
    result = mark_class(lips, ROSTER, [File("a", hand_in(lips, "s01", right_answers(lips), **changes))])
    assert result.students[0].status == NOT_MARKED
    assert result.students[0].total == 0
    assert says in "; ".join(result.students[0].problems)
    assert says in result.unclaimed[0].reason


def test_a_student_who_is_not_in_the_roster(lips):
    result = mark_class(lips, ROSTER, [File("a", hand_in(lips, "../../etc", right_answers(lips)))])
    assert result.unclaimed[0].reason == "its student “../../etc” is not in the roster"
    assert all(entry.total == 0 for entry in result.students)


def test_a_task_that_the_set_does_not_have(lips):
    entry = mark_class(lips, ROSTER, [File("a", hand_in(lips, "s01", [("sharpening", "5", "1")]))]).students[0]
    assert "a answers a task that the set does not have, “sharpening”" in entry.problems


@pytest.mark.parametrize("path", ["s02/hand-in.json", "lips-s02.hand-in (1).json", "x/S02_lips.json"])
def test_a_broken_file_is_traced_by_its_name(lips, path):
    result = mark_class(lips, ROSTER, [File(path, b"{")])
    assert result.students[1].status == NOT_MARKED
    assert path in result.students[1].problems[0]
    assert result.students[0].problems == ("no hand-in file",)
    assert result.unclaimed[0].path == path


def test_right_for_somebody_elses_numbers(lips, variants):
    task = lips.task("point-height")
    other = variants.question(task.id, "s02").numbers.right[0]
    entry = mark_class(lips, ROSTER, [File("a", hand_in(lips, "s01", [(task.id, f"{other:.2f} mm", "1")]))]).students[0]
    mine = variants.question(task.id, "s01").numbers
    assert abs(other - mine.right[0]) > mine.tolerance  # otherwise this test says nothing
    assert entry.marks[0].also_right_for == ("s02",)
    assert "task 1 is right for the numbers of s02" in entry.problems


def test_a_right_answer_is_never_said_to_be_somebody_elses(lips):
    twins = tuple(Student(f"t{n}") for n in range(200))  # many share numbers
    answers = [("point-height", "3.00 mm", "1")]
    result = mark_class(lips, twins, [File(s.id, hand_in(lips, s.id, answers)) for s in twins])
    for entry in result.students:
        if entry.marks[0].verdict.state == RIGHT or entry.marks[0].verdict.slip:
            assert entry.marks[0].also_right_for == ()


@pytest.mark.parametrize("typed", HOSTILE_STRINGS, ids=range(len(HOSTILE_STRINGS)))
def test_hostile_answers(lips, typed):
    if len(typed) > LARGEST_FILE // 20:
        typed = typed[: LARGEST_FILE // 20]
    data = hand_in(lips, "s01", [(task.id, typed, typed[:50]) for task in lips.tasks])
    entry = mark_class(lips, ROSTER, [File("a", data)]).students[0]
    assert entry.total == 0
    assert [mark.typed for mark in entry.marks] == [typed] * len(lips.tasks)


@settings(max_examples=60)
@given(
    st.recursive(
        st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
        lambda c: st.lists(c) | st.dictionaries(st.text(), c),
        max_leaves=12,
    )
)
def test_any_json_is_accounted_for(lips, content):
    data = json.dumps(content).encode()
    result = mark_class(lips, ROSTER, [File("a", data)])
    assert [entry.path for entry in result.unclaimed] == ["a"]


@settings(max_examples=60)
@given(
    st.sampled_from(["course", "set", "version", "student", "answers", "time", "digest", "format"]),
    st.none() | st.integers() | st.text() | st.lists(st.text()),
)
def test_any_entry_may_be_wrong(lips, key, value):
    content = json.loads(hand_in(lips, "s01", right_answers(lips)))
    content[key] = value
    if key != "digest":
        content["digest"] = digest_of(content)
    result = mark_class(lips, ROSTER, [File("a", json.dumps(content).encode())])
    assert len(result.unclaimed) + sum(len(entry.files) for entry in result.students) == 1


def test_progress_is_told(lips):
    told = []
    mark_class(lips, ROSTER, [], lambda done, total: told.append((done, total)))
    assert told == [(1, 3), (2, 3), (3, 3)]


SMALL = """
set = "small"
title = "Small"
course = "C"
version = 1
"""
FEW_NUMBERS = """
[[task]]
id = "height-{number}"
title = "Height"
text = "Diameter {{diameter}}, point angle {{point_angle}} (included): how high?"
relation = "point_height"
[task.givens]
diameter = [8, 10, 12]
point_angle = [118, 135]
"""


def test_room_does_not_grow_with_the_answers(tmp_path, monkeypatch):
    """A result on its own takes some kilobytes; one by one, students after the first cost their line of the roster."""
    monkeypatch.setattr("drillpoint.course.piles._IN_MEMORY", 1)  # a large class is kept on the disk from the start
    path = tmp_path / "small.toml"
    path.write_text(SMALL + "".join(FEW_NUMBERS.format(number=number) for number in range(10)))
    small = load_set(path)

    def most_room(count, keep):
        roster = [Student(f"n{number:05}") for number in range(count)]
        tracemalloc.start()
        try:
            with Marking(small, roster, room=tmp_path) as marking:
                for student in roster:
                    answers = [AnswerRecord(task.id, f"3.{len(student.id)}9 mm", "t" * 40) for task in small.tasks]
                    data = hand_in_bytes("C", "small", 1, student.id, answers, "t")
                    marking.sort_in(File(f"{student.id}.json", data))
                kept = [entry if keep else entry.total for entry in marking.results()]
            assert len(kept) == count
            return tracemalloc.get_traced_memory()[1]
        finally:
            tracemalloc.stop()

    most_room(20, keep=False)  # what is loaded and kept for the first ones
    each = {keep: (most_room(500, keep) - most_room(100, keep)) / 400 for keep in (False, True)}
    assert each[False] < 500
    assert each[True] > 3000
    assert [entry.name for entry in tmp_path.iterdir()] == ["small.toml"]
