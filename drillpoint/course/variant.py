"""Each student's own numbers: drawn from a digest, so that they come out the same on every machine and every day."""

from __future__ import annotations

import hashlib
import math
from collections.abc import Iterator, Mapping
from functools import cached_property, lru_cache

from attrs import evolve, frozen

from drillpoint.course import wording
from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.exercise import Entered, ExerciseSet, Task
from drillpoint.course.numbers import LETTERS, Numbers, Option, Unfit, numbers_of
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES

MOST_DRAWS = 200
_CACHED = 4096


@frozen
class Box:
    """One box to type into. `key` is what its answer is called in a hand-in: the task's id, or `task.part`.

    A task has one box, one for each part, or in a plan one for each decision and each number. `label` is the part's id
    or the quantity's term and `text` its question; both are empty where a task has one box. `choices` are (letter, what
    stands beside it); `points` is what the box can earn.
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
    """One task, or one part of it, with one student's numbers."""

    task: Task
    number: int
    numbers: Numbers
    form: AnswerForm
    options: tuple[Option, ...] = ()
    key: str = ""
    """What an answer to it is called in a hand-in; empty stands for the id of the task."""
    parts: tuple[Question, ...] = ()

    @cached_property
    def boxes(self) -> tuple[Box, ...]:
        """What is to be typed: one box, or one for each part, or for each decision and number of a plan, in order."""
        if self.task.enters:
            return self._boxes_of_a_plan()
        if self.parts:
            return tuple(box for part in self.parts for box in part.boxes)
        choices = tuple((letter, shown) for letter, (shown, _) in zip(self.form.letters, self.options, strict=True))
        label, text = (self.task.id, self.text) if self.key else ("", "")
        return (Box(self.key or self.task.id, label, text, self.asks, self.form, choices, self.task.points),)

    def _boxes_of_a_plan(self) -> tuple[Box, ...]:
        """The decisions, each with the points of its share, and the numbers, which earn the rest together."""
        required = sum(rule.share for rule in self.task.requirements)
        scale = self.task.points / (required + sum(part.points for part in self.task.parts))
        decided = (evolve(box, points=part.task.points * scale) for part in self.parts for box in part.boxes)
        entered = (self._box_of(entered, required * scale / len(self.task.enters)) for entered in self.task.enters)
        return (*decided, *entered)

    def _box_of(self, entered: Entered, points: float) -> Box:
        key = f"{self.task.id}.{entered.box}"
        form = AnswerForm("number", entered.unit)
        return Box(key, QUANTITIES[entered.name].term, "", wording.asks_to_enter(entered), form, (), points)

    @property
    def right_values(self) -> Mapping[str, tuple[float, float]]:
        """For each box with one right number: its key, the value in the library's unit, and the tolerance."""
        if self.parts:
            return {key: value for part in self.parts for key, value in part.right_values.items()}
        if self.task.kind not in ("number", "judgement"):
            return {}
        return {self.key or self.task.id: (self.numbers.right[0], self.numbers.tolerance)}

    @property
    def text(self) -> str:
        """The question in words, with the numbers put in."""
        return wording.text_of(self.task, self.numbers)

    @property
    def asks(self) -> str:
        """What to give, in which unit, how exactly, and how far off still counts; empty where each box says it."""
        return wording.asks_for(self.task, self.numbers)

    @property
    def worked(self) -> str:
        """The worked solution, from the relation itself."""
        if self.task.kind == "parts":
            return "\n".join(f"{part.task.id}: {part.worked}" for part in self.parts)
        worked = wording.worked_for(self.task, self.numbers)
        decided = [f"{part.task.id}: {part.right_choice}" for part in self.parts] if self.task.enters else []
        return "\n".join([*decided, worked])

    @property
    def right_choice(self) -> str:
        """The right one of the options, with its letter: "b: Regrind it."."""
        letters = zip(self.form.letters, self.options, strict=True)
        return next(f"{letter}: {shown}" for letter, (shown, wrong) in letters if wrong is None)


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
        self.numbers = lru_cache(maxsize=_CACHED)(self._worked_out)
        # A formula holds for all its givens: there is nothing to draw.
        self.givens = () if task.kind == "formula" else task.givens
        self._where = "\x1f".join((exercise_set.course, exercise_set.id, str(exercise_set.version), task.id))
        self._possible = math.prod(len(given.values) for given in self.givens)
        self._questions: dict[int, Question] = {}

    def draws(self, student: str) -> Iterator[tuple[Numbers | Unfit, int]]:
        """Draw again and again: the numbers, or why they are not handed out, and the rest of the digest."""
        for attempt in range(MOST_DRAWS):
            key = f"{self._where}\x1f{student}\x1f{attempt}"
            rest = int.from_bytes(hashlib.sha256(key.encode("utf-8", "surrogatepass")).digest(), "big")
            rest, drawn = divmod(rest, self._possible)
            yield self.numbers(drawn), rest

    def _worked_out(self, drawn: int) -> Numbers | Unfit:
        """The numbers of one of all possible draws: the indices of its values are the digits of one number."""
        indices = []
        for given in self.givens:
            drawn, index = divmod(drawn, len(given.values))
            indices.append(index)
        return numbers_of(self.task, tuple(indices))

    def question(self, student: str) -> Question:
        first = ""
        for numbers, rest in self.draws(student):
            if isinstance(numbers, Numbers):
                return self._with(numbers, rest)
            first = first or numbers.reason
        raise InstructorError(f"task {self.task.id}: no draw of {MOST_DRAWS} can be handed out; the first one: {first}")

    def _with(self, numbers: Numbers, rest: int) -> Question:
        if numbers.options or numbers.parts:
            return self._asked(self.task, numbers, rest)
        # Nothing to shuffle: all who have these numbers have the same question. It holds on to its numbers, so that
        # no others can have their place in memory.
        if id(numbers) not in self._questions:
            if len(self._questions) >= _CACHED:
                self._questions.clear()
            self._questions[id(numbers)] = self._asked(self.task, numbers, rest)
        return self._questions[id(numbers)]

    def _asked(self, task: Task, numbers: Numbers, rest: int, key: str = "") -> Question:
        options = _shuffled(numbers.options, rest)
        parts = []
        for count, (part, own) in enumerate(zip(task.parts, numbers.parts, strict=True), start=1):
            # Each part shuffles anew, so that the letter of one tells nothing of the next.
            name = f"{task.id}.{part.id}" if len(task.parts) > 1 or task.enters else task.id
            parts.append(self._asked(part, own, rest // 40320**count, name))
        return Question(task, self.number, numbers, _form_of(task, options), options, key, tuple(parts))

    def refused(self, student: str) -> list[str]:
        reasons = []
        for numbers, _ in self.draws(student):
            if isinstance(numbers, Numbers):
                break
            reasons.append(numbers.reason)
        return reasons


def _form_of(task: Task, options: tuple[Option, ...]) -> AnswerForm:
    if options:
        return AnswerForm("choice", letters=LETTERS[: len(options)])
    kind = "text" if task.kind == "open" else task.kind
    return AnswerForm(kind, task.unit, tuple(task.names), task.symbol, functions=task.functions)


def _shuffled(options: tuple[Option, ...], rest: int) -> tuple[Option, ...]:
    left, mixed = list(options), []
    while left:
        rest, index = divmod(rest, len(left))
        mixed.append(left.pop(index))
    return tuple(mixed)
