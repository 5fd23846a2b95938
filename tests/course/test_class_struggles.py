"""What goes wrong in real classes, each from the typed answer to the gradebook line."""

import csv
import io
import json

import pytest

from drillpoint.course.class_page import class_page, survey_of
from drillpoint.course.feedback import feedback_page
from drillpoint.course.folder import File
from drillpoint.course.gradebook import gradebook_csv
from drillpoint.course.hand_in_file import AnswerRecord, digest_of, hand_in_bytes
from drillpoint.course.judging import MISSING, NO_SLIP, RIGHT, judge_answer
from drillpoint.course.marking import LOOK, MARKED, NO_HAND_IN, mark_class
from drillpoint.course.roster import Student
from drillpoint.course.slips import ROUNDED_EARLY

ROSTER = (Student("s01", "One", "2026-17"), Student("s02", "Two", "2026-18"))


def hand_in(lips, answers, student="s01"):
    records = [AnswerRecord(task, typed, f"2026-03-12T18:{n:02}:00Z") for n, (task, typed) in enumerate(answers)]
    return hand_in_bytes(lips.course, lips.id, lips.version, student, records, "2026-03-12T19:00:00Z")


def right_answers(variants, student="s01"):
    """The right answers to the tasks that ask for a number."""
    questions = [q for q in variants.questions(student) if q.task.kind == "number" and q.task.unit in ("mm", "°")]
    return [(q.task.id, f"{q.numbers.right[0]:.3f}1 {q.task.unit}") for q in questions]


@pytest.mark.parametrize("student", [f"s{number:02}" for number in range(1, 13)])
@pytest.mark.parametrize("share", [-0.9, -0.2, -0.05, -0.031, -0.029, -0.01, 0.01, 0.029, 0.031, 0.05, 0.2, 3.0])
def test_rounding_is_blamed_only_within_three_per_cent(variants, student, share):
    question = variants.question("point-height", student)
    right = question.numbers.right[0]
    verdict = judge_answer(question, f"{right * (1 + share):.6f} mm")
    if verdict.slip == ROUNDED_EARLY:
        assert abs(share) <= 0.03
    elif abs(share) > 0.03:
        assert verdict.slip or verdict.message.endswith(NO_SLIP)
        assert "rounded" not in verdict.message


def test_rounding_is_blamed_at_all(variants):
    question = variants.question("point-height", "s01")
    assert judge_answer(question, f"{question.numbers.right[0] * 1.02:.6f} mm").slip == ROUNDED_EARLY


def test_a_deleted_answer_is_named_and_the_rest_is_marked(lips, variants):
    answers = right_answers(variants)
    gone, *kept = answers
    (entry, _) = mark_class(lips, ROSTER, [File("a", hand_in(lips, kept))]).students
    states = {mark.question.task.id: mark.verdict.state for mark in entry.marks}
    assert states[gone[0]] == MISSING
    assert [states[task] for task, _ in kept] == [RIGHT] * len(kept)
    assert entry.status == LOOK
    assert entry.problems[0].startswith("not answered: task 1")


def test_of_doubled_answers_the_last_counts_and_both_are_reported(lips, variants):
    (task, right), *_ = right_answers(variants)
    for answers, total in (([(task, "1 mm"), (task, right)], 1), ([(task, right), (task, "1 mm")], 0)):
        result = mark_class(lips, ROSTER, [File("a", hand_in(lips, answers))])
        assert result.students[0].total == total
        said = f"task 1 answered more than once: “{answers[1][1]}” counts, earlier “{answers[0][1]}”"
        assert said in result.students[0].problems
        assert said in gradebook_csv(result).decode()


@pytest.mark.parametrize("kept", ["outputs", "nothing", "marks"])
def test_there_is_no_credit_without_a_recorded_answer(lips, kept):
    """A notebook with right outputs, a hand-in without answers, and one that brings its own marks, all earn nothing."""
    empty = json.loads(hand_in(lips, []))
    contents = {
        "outputs": {"nbformat": 4, "cells": [{"cell_type": "code", "outputs": [{"text": "all tests passed"}]}]},
        "nothing": empty,
        "marks": empty | {"marks": {task.id: 1.0 for task in lips.tasks}},
    }
    content = contents[kept]
    if kept == "marks":
        content["digest"] = digest_of(content)
    (entry, _) = mark_class(lips, ROSTER, [File("s01.json", json.dumps(content).encode())]).students
    assert entry.total == 0
    assert {mark.verdict.state for mark in entry.marks} == {MISSING}


def test_only_the_instructor_learns_that_an_answer_is_right_for_somebody_else(lips, variants):
    theirs = right_answers(variants, "s02")
    result = mark_class(lips, ROSTER, [File("a", hand_in(lips, theirs))])
    entry = result.students[0]
    hints = [problem for problem in entry.problems if "is right for the numbers of s02" in problem]
    assert len(hints) >= 3  # one might be chance
    assert hints[0] in gradebook_csv(result).decode()
    assert hints[0] in class_page(survey_of(result), "p")
    for release in (False, True):
        assert "s02" not in feedback_page(lips, entry, release=release)


def test_grades_go_back_to_the_school_under_its_own_ids(lips, variants):
    files = [File("a", hand_in(lips, [("point-height", "=1+1"), *right_answers(variants)[1:]]))]
    rows = list(csv.DictReader(io.StringIO(gradebook_csv(mark_class(lips, ROSTER, files)).decode("utf-8-sig"))))
    assert [(row["id"], row["school id"]) for row in rows] == [("s01", "2026-17"), ("s02", "2026-18")]
    first, second = rows
    per_task = [float(first[title] or 0) for title in first if title[0].isdigit()]
    assert len(per_task) == len(lips.tasks)
    assert sum(per_task) == float(first["total"]) > 0
    assert second["status"] == NO_HAND_IN
    assert first["status"] in (LOOK, MARKED)
    assert not any(cell.startswith("=") for row in rows for cell in row.values())
