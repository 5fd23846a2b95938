"""What marking costs: a thousand hand-ins of ten answers, against only reading the same files, in one run.

Read the ratios, not the times: `python -m pytest tests/benchmarks/test_marking.py`; `answers_a_second` is in the extra
information of each benchmark (`--benchmark-json`).
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes, read_hand_in
from drillpoint.course.marking import ClassResult, mark_class
from drillpoint.course.reading import unit_and_factor, with_unit
from drillpoint.course.roster import Student
from drillpoint.course.variant import Question, Variants

STUDENTS = 1_000
LIPS = load_set(Path(__file__).resolve().parents[2] / "exercises" / "lips.toml")
ROSTER = tuple(Student(f"n{number:05}") for number in range(STUDENTS))
ANSWERS = STUDENTS * len(LIPS.tasks)


def _typed(question: Question, index: int) -> str:
    """Right, a slip, or plainly wrong in turn, as a class would answer."""
    if question.task.kind == "formula":
        return ("D/(2*tan κ)", "D/2*tan(κ)", "D/2*cot(kappa)")[index % 3]
    if question.options:
        return question.form.letters[index % len(question.form.letters)]
    slips = [wrong.values[0] for wrong in question.numbers.wrong]
    value = (question.numbers.right[0], slips[index % len(slips)], question.numbers.right[0] * 1.7)[index % 3]
    factor = unit_and_factor(question.task.unit)[1]
    number = with_unit(f"{value / factor:.{question.task.decimals}f}", question.task.unit)
    return f"no, {number}" if question.task.kind == "judgement" else number


@pytest.fixture(scope="module")
def files() -> list[File]:
    variants, found = Variants(LIPS), []
    for index, student in enumerate(ROSTER):
        records = [
            AnswerRecord(q.task.id, _typed(q, index + q.number), f"2026-03-12T18:00:{q.number:02}Z")
            for q in variants.questions(student.id)
        ]
        data = hand_in_bytes(LIPS.course, LIPS.id, LIPS.version, student.id, records, "2026-03-12T19:00:00Z")
        found.append(File(f"{student.id}.json", data))
    return found


def _note(benchmark: Any) -> None:
    if benchmark.stats is not None:  # None when benchmarks are switched off
        benchmark.extra_info["answers_a_second"] = round(ANSWERS / benchmark.stats.stats.median)


@pytest.mark.benchmark(group="1,000 hand-ins")
def test_parse_json_only(benchmark: Any, files: list[File]) -> None:
    contents = benchmark(lambda: [json.loads(file.data) for file in files])
    _note(benchmark)
    assert sum(len(content["answers"]) for content in contents) == ANSWERS


@pytest.mark.benchmark(group="1,000 hand-ins")
def test_read_and_check_files_only(benchmark: Any, files: list[File]) -> None:
    read = benchmark(lambda: [read_hand_in(file.data) for file in files])
    _note(benchmark)
    assert all(hand_in.intact for hand_in in read)


@pytest.mark.benchmark(group="1,000 hand-ins")
def test_mark(benchmark: Any, files: list[File]) -> None:
    """The whole marking of a class that was never marked before, its numbers worked out anew."""
    result: ClassResult = benchmark(lambda: mark_class(LIPS, ROSTER, files))
    _note(benchmark)
    assert all(entry.files for entry in result.students)
    assert 0 < sum(entry.total for entry in result.students) < result.out_of * STUDENTS
