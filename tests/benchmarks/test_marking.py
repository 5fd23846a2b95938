"""What marking costs: a thousand hand-ins of ten answers against only reading the same files, ten thousand hand-ins one
after another, and marking against running the same sheets as notebooks; each in one run.

Read the ratios, not the times: `python -m pytest tests/benchmarks/test_marking.py`; `answers_a_second` and the like are
in the extra information of each benchmark (`--benchmark-json`). `MARK_STUDENTS=100000` in the environment marks that
many.
"""

from __future__ import annotations

import json
import os
import sys
import time
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import nbformat
import pytest
from nbclient import NotebookClient

from drillpoint.course.exercise_file import load_set
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes, read_hand_in
from drillpoint.course.marking import Marking, mark_class
from drillpoint.course.reading import unit_and_factor, with_unit
from drillpoint.course.results import ClassResult
from drillpoint.course.roster import Student
from drillpoint.course.sheet import write_sheet
from drillpoint.course.variant import Question, Variants

STUDENTS = 1_000
MANY = int(os.environ.get("MARK_STUDENTS", "10000"))
SHEETS = 2
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


def _handed_in(roster: Sequence[Student]) -> Iterator[File]:
    variants = Variants(LIPS)
    for index, student in enumerate(roster):
        records = [
            AnswerRecord(q.task.id, _typed(q, index + q.number), f"2026-03-12T18:00:{q.number:02}Z")
            for q in variants.questions(student.id)
        ]
        data = hand_in_bytes(LIPS.course, LIPS.id, LIPS.version, student.id, records, "2026-03-12T19:00:00Z")
        yield File(f"{student.id}.json", data)


@pytest.fixture(scope="module")
def files() -> list[File]:
    return list(_handed_in(ROSTER))


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


def _marked_one_by_one(roster: Sequence[Student], files: Iterator[File]) -> tuple[int, float]:
    """Mark as the command does, keeping no result: how many answers, and the time without making the files."""
    took = 0.0
    answers = 0
    with Marking(LIPS, roster) as marking:
        for file in files:
            start = time.process_time()
            marking.sort_in(file)
            took += time.process_time() - start
        start = time.process_time()
        for entry in marking.results():
            answers += len(entry.marks)
        took += time.process_time() - start
    return answers, took


def _high_water() -> int:
    """The most memory the program had so far, in MB; 0 where the system does not tell."""
    try:
        import resource
    except ImportError:
        return 0
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return round(most / (1e6 if sys.platform == "darwin" else 1e3))


@pytest.mark.benchmark(group="many hand-ins, one by one")
def test_mark_many(benchmark: Any) -> None:
    """The processor's time alone, so that a busy machine does not spoil it; and by how much the program grew.

    It grows at first, while what is worked out for each draw is kept for others with the same numbers.
    """
    roster = [Student(f"n{number:06}") for number in range(MANY)]
    before = _high_water()
    answers, took = benchmark.pedantic(lambda: _marked_one_by_one(roster, _handed_in(roster)), rounds=1)
    grown = _high_water() - before
    benchmark.extra_info.update(students=MANY, answers_a_second=round(answers / took), grown_by_megabytes=grown)
    assert answers == MANY * len(LIPS.tasks)


@pytest.mark.benchmark(group="marking against running notebooks")
def test_running_the_same_sheets_as_notebooks(
    benchmark: Any,
    files: list[File],
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A sample of sheets, answers filled in, each run in a kernel of its own as a marker of notebooks does."""
    monkeypatch.setenv("PYTHONPATH", str(Path(__file__).resolve().parents[2]))
    variants, notebooks = Variants(LIPS), []
    for student, file in zip(ROSTER[:SHEETS], files, strict=False):
        path = write_sheet(LIPS, variants, student, tmp_path)
        notebook = nbformat.read(path, as_version=4)
        for number, answer in enumerate(json.loads(file.data)["answers"], start=1):
            cell = next(cell for cell in notebook.cells if cell.id == f"answer-{number}")
            cell.source = f"from drillpoint.course import answer\n\nanswer('lips/{number}', {answer['typed']!r})"
        notebooks.append((notebook, path.parent))

    def run() -> None:
        for notebook, folder in notebooks:
            NotebookClient(notebook, timeout=120, resources={"metadata": {"path": str(folder)}}).execute()

    start = time.perf_counter()
    benchmark.pedantic(run, rounds=1)
    one_notebook = (time.perf_counter() - start) / SHEETS
    start = time.perf_counter()
    mark_class(LIPS, ROSTER, files)
    one_hand_in = (time.perf_counter() - start) / STUDENTS
    ratio = round(one_notebook / one_hand_in)
    benchmark.extra_info.update(notebook_to_hand_in=ratio)
    with capsys.disabled():
        print(f"\none sheet run as a notebook takes as long as marking {ratio} hand-ins")
    assert all(len(list(folder.glob("*.hand-in.json"))) == 1 for _, folder in notebooks)
