"""The lessons as they stand in the folder, in teaching order, and how their questions are answered."""

from __future__ import annotations

import re

from drillpoint.course.exercise_file import load_set
from drillpoint.course.reading import unit_and_factor
from drillpoint.course.variant import Question
from tests.notebooks.prose import LESSONS, code

IN_ORDER = sorted(path.name for path in LESSONS.glob("*.ipynb"))
_ASKED = re.compile(r'^ask\("([\w-]+)/([\w-]+)"\)$', re.MULTILINE)


def asked(lesson: str) -> list[tuple[str, str]]:
    """The practice questions of a lesson in order: the set and the task."""
    return _ASKED.findall("\n".join(code(lesson).values()))


def set_of(lesson: str) -> str:
    """The set that goes with a lesson: the one its questions are from."""
    (name,) = {name for name, _ in asked(lesson)}
    return name


def number_of(lesson: str) -> int:
    """The number in the lesson's file name."""
    return int(lesson.partition("-")[0])


def questions() -> list[tuple[str, str]]:
    """Every practice question of every lesson: the lesson, and the question as `ask` takes it."""
    return [(lesson, f"{name}/{task}") for lesson in IN_ORDER for name, task in asked(lesson)]


def typed(question: Question, value: float, more: int = 0, *, other: bool = False) -> str:
    """A value as it is typed: in the unit of the box, and for a judgement with yes or no in front."""
    number = f"{value / unit_and_factor(question.task.unit)[1]:.{question.task.decimals + more}f}"
    if question.numbers.yes is None:
        return number
    return f"{'yes' if question.numbers.yes != other else 'no'}, {number}"


def filled_in(question: Question, share: float = 1.0) -> dict[str, str]:
    """What the instructor's example enters into the boxes of a plan, by their names, or a share of it."""
    boxes = question.boxes[len(question.parts) :]
    found = {}
    for box, entered, value in zip(boxes, question.task.enters, question.numbers.right, strict=True):
        written = share * value / unit_and_factor(entered.unit)[1]
        found[box.key.rpartition(".")[2]] = f"{written:.{entered.decimals}f}"
    for part, box in zip(question.parts, question.boxes, strict=False):
        right = next(n for n, (_, wrong) in enumerate(part.options) if wrong is None)
        found[box.key.rpartition(".")[2]] = part.form.letters[right]
    return found


def tasks_of(lesson: str) -> set[str]:
    """The tasks in the practice set of a lesson."""
    return {task.id for task in load_set(f"practice/{set_of(lesson)}").tasks}
