"""Each student's own numbers: drawn from a digest, so that they come out the same on every machine and every day."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Mapping
from functools import lru_cache, partial

from attrs import frozen

from drillpoint.course import wording
from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.exercise import ExerciseSet, Task
from drillpoint.course.numbers import LETTERS, Numbers, Option, Unfit, numbers_of
from drillpoint.errors import InstructorError

MOST_DRAWS = 200
_CACHED = 4096


@frozen
class Box:
    """One box to type into. `key` is what its answer is called in a hand-in: the task's id, or `task.part`.

    A task has one box, or one for each part. `label` is the part's id and `text` its question; both are empty where a
    task has one box. `choices` are (letter, what stands beside it); `points` is what the box can earn.
    """

    key: str
    label: str
    text: str
    asks: str
    form: AnswerForm
    choices: tuple[tuple[str, str], ...]
    points: float


@frozen
class Question:
    """One task with one student's numbers."""

    task: Task
    number: int
    numbers: Numbers
    form: AnswerForm
    options: tuple[Option, ...]

    @property
    def boxes(self) -> tuple[Box, ...]:
        """What is to be typed: one box, or one for each part, in order."""
        choices = tuple((letter, shown) for letter, (shown, _) in zip(self.form.letters, self.options, strict=True))
        return (Box(self.task.id, "", "", self.asks, self.form, choices, self.task.points),)

    @property
    def right_values(self) -> Mapping[str, tuple[float, float]]:
        """For each box with one right number: its key, the value in the library's unit, and the tolerance."""
        if self.task.kind not in ("number", "judgement"):
            return {}
        return {self.task.id: (self.numbers.right[0], self.numbers.tolerance)}

    @property
    def text(self) -> str:
        """The question in words, with the numbers put in."""
        return wording.text_of(self.task, self.numbers)

    @property
    def asks(self) -> str:
        """What to give, in which unit, how exactly, and how far off still counts."""
        return wording.asks_for(self.task)

    @property
    def worked(self) -> str:
        """The worked solution, from the relation itself."""
        return wording.worked_for(self.task, self.numbers)


class Variants:
    """Draws the questions of a set. What is computed for one draw is kept, since a class shares few draws."""

    def __init__(self, exercise_set: ExerciseSet) -> None:
        self.set = exercise_set
        self._sources = {task.id: _Source(exercise_set, task, n) for n, task in enumerate(exercise_set.tasks, start=1)}

    def question(self, task_id: str, student: str) -> Question:
        """Give one student's question. InstructorError if no draw keeps the right value apart from the slips."""
        return self._sources[task_id].question(student)

    def questions(self, student: str) -> Iterator[Question]:
        """Give all of one student's questions, in the order of the set."""
        return (source.question(student) for source in self._sources.values())

    def refused(self, task_id: str, student: str) -> list[str]:
        """Give the reasons why draws before the one handed out were set aside."""
        return self._sources[task_id].refused(student)


class _Source:
    """Where the questions of one task come from."""

    def __init__(self, exercise_set: ExerciseSet, task: Task, number: int) -> None:
        self.set, self.task, self.number = exercise_set, task, number
        self.numbers = lru_cache(maxsize=_CACHED)(partial(numbers_of, task))
        # A formula holds for all its givens: there is nothing to draw.
        self.givens = () if task.kind == "formula" else task.givens
        self.form = AnswerForm(task.kind, task.unit, tuple(task.names), task.symbol)

    def draws(self, student: str) -> Iterator[tuple[Numbers | Unfit, int]]:
        """Draw again and again: the numbers, or why they are not handed out, and the rest of the digest."""
        where = (self.set.course, self.set.id, str(self.set.version), self.task.id, student)
        for attempt in range(MOST_DRAWS):
            key = "\x1f".join((*where, str(attempt)))
            rest = int.from_bytes(hashlib.sha256(key.encode("utf-8", "surrogatepass")).digest(), "big")
            indices = []
            for given in self.givens:
                rest, index = divmod(rest, len(given.values))
                indices.append(index)
            yield self.numbers(tuple(indices)), rest

    def question(self, student: str) -> Question:
        first = ""
        for numbers, rest in self.draws(student):
            if isinstance(numbers, Numbers):
                options = _shuffled(numbers.options, rest)
                form = AnswerForm("choice", letters=LETTERS[: len(options)]) if options else self.form
                return Question(self.task, self.number, numbers, form, options)
            first = first or numbers.reason
        raise InstructorError(f"task {self.task.id}: no draw of {MOST_DRAWS} can be handed out; the first one: {first}")

    def refused(self, student: str) -> list[str]:
        reasons = []
        for numbers, _ in self.draws(student):
            if isinstance(numbers, Numbers):
                break
            reasons.append(numbers.reason)
        return reasons


def _shuffled(options: tuple[Option, ...], rest: int) -> tuple[Option, ...]:
    left, mixed = list(options), []
    while left:
        rest, index = divmod(rest, len(left))
        mixed.append(left.pop(index))
    return tuple(mixed)
