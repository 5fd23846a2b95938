"""Judging one typed answer: first it is read, then compared, and a wrong one is traced to the slip that gives it."""

from __future__ import annotations

import html
from collections.abc import Mapping

from attrs import field, frozen

from drillpoint.course.answer_form import Answer
from drillpoint.course.formula import Formula, same_values, values_at
from drillpoint.course.numbers import Numbers, Wrong
from drillpoint.course.reading import Reading, ReadingError, unit_and_factor
from drillpoint.course.slips import ROUNDED_EARLY, ROUNDED_EARLY_SAYS, ROUNDING_SHARE
from drillpoint.course.variant import Question

RIGHT, PARTLY, WRONG, UNREADABLE, MISSING = "right", "partly right", "not right", "could not be read", "not answered"
WAITING = "for the instructor to mark"
"""The state of an open answer: its mark is 0 until the instructor gives one."""
NO_SLIP = "It is none of the usual slips; go through the worked line step by step."
# Half a unit of the last digit typed, so that 8.3 is seen to be the slip 8.32; one digit alone says too little.
_ENOUGH_DIGITS = 2


@frozen
class Verdict:
    """What a typed answer is worth: `mark` 0 to 1, `state` in words, a `message` that never gives the answer away,
    the `slip` by name if one was recognised, and the `echo` of how it was read."""

    mark: float
    state: str
    message: str
    slip: str = ""
    echo: str = ""
    error: ReadingError | None = None
    value: float | None = None
    """The number that was read, in the library's unit, if it is wrong and no slip explains it."""
    parts: Mapping[str, Verdict] = field(factory=dict)
    """The verdict on each box by its key, where a task has several; `mark` is then what they earn together."""
    lines: tuple[str, ...] = ()
    """A line for each requirement of a plan (met or not, and by how much), or for each point of a rubric."""

    def __str__(self) -> str:
        """The verdict in words, with the place where reading stopped if it could not be read."""
        if self.error is not None:
            return f"This could not be read, so it does not count. {self.error}"
        return f"{self.message} (Read as {self.echo}.)" if self.echo else self.message

    def _repr_html_(self) -> str:
        # A caret keeps its place only where all signs are equally wide.
        font = ";font-family:monospace" if self.error else ""
        return f'<div role="status" style="white-space:pre-wrap{font}">{html.escape(str(self))}</div>'


def judge_task(question: Question, typed: Mapping[str, str]) -> Verdict:
    """Judge a task from what was typed into its boxes, by their keys; a box without an entry was not answered.

    Marks are fractions of the task's points. Never raises for anything a person can type.
    """
    box = question.boxes[0]
    return judge_answer(question, typed[box.key]) if box.key in typed else missing()


def judge_answer(question: Question, typed: str) -> Verdict:
    """Judge what was typed in answer to a question. Never raises for anything a person can type."""
    try:
        answer = question.form.read(typed)
    except ReadingError as error:
        return Verdict(0.0, UNREADABLE, error.reason, echo="", error=error)
    if answer.formula is not None:
        return _judge_formula(question, answer.formula, answer)
    if answer.letter:
        slip = question.options[question.form.letters.index(answer.letter)][1]
        return _wrong(slip, answer) if slip else _right(answer)
    if answer.reading is None:
        raise TypeError(f"an answer of kind {question.task.kind!r} holds nothing to judge")
    verdict = _judge_number(question.numbers, answer.reading, answer)
    if answer.yes is None or (answer.yes == question.numbers.yes and verdict.mark == 1):
        return verdict
    return _judge_both(answer.yes == question.numbers.yes, verdict, answer)


def is_right(numbers: Numbers, value: float) -> bool:
    """Say whether a value is within the tolerance; the last bit of a float never decides."""
    return abs(value - numbers.right[0]) <= numbers.tolerance * (1 + 1e-9) + 1e-12


def _judge_number(numbers: Numbers, reading: Reading, answer: Answer) -> Verdict:
    value = reading.value
    if is_right(numbers, value):
        return _right(answer)
    slip = _nearest_slip(numbers, reading)
    if slip is not None:
        return _wrong(slip, answer)
    right = numbers.right[0]
    if right and abs(value / right - 1) <= ROUNDING_SHARE:
        return Verdict(0.0, WRONG, f"Not right. {ROUNDED_EARLY_SAYS}", ROUNDED_EARLY, answer.echo)
    return Verdict(0.0, WRONG, f"Not right. {NO_SLIP}", "", answer.echo, value=value)


def _nearest_slip(numbers: Numbers, reading: Reading) -> Wrong | None:
    reach = numbers.tolerance
    if reading.decimals is not None and (reading.digits or 0) >= _ENOUGH_DIGITS:
        reach = max(reach, 0.5 * 10.0**-reading.decimals * unit_and_factor(reading.typed_unit)[1])
    best = min(numbers.wrong, key=lambda slip: abs(slip.values[0] - reading.value), default=None)
    if best is None or abs(best.values[0] - reading.value) > reach * (1 + 1e-9):
        return None
    return best


def _judge_formula(question: Question, formula: Formula, answer: Answer) -> Verdict:
    values = values_at(formula, question.numbers.points)
    if same_values(question.numbers.right, values):
        return _right(answer)
    slip = next((wrong for wrong in question.numbers.wrong if same_values(wrong.values, values)), None)
    if slip is not None:
        return _wrong(slip, answer)
    return Verdict(
        0.0, WRONG, "Not right: it does not give the same values, and it is none of the usual slips.", "", answer.echo
    )


def _judge_both(yes_is_right: bool, number: Verdict, answer: Answer) -> Verdict:
    if yes_is_right:
        return Verdict(
            0.5,
            PARTLY,
            f"Yes or no is right, but the number is not. {number.message.removeprefix('Not right. ')}",
            number.slip,
            answer.echo,
            value=number.value,
        )
    if number.mark == 1:
        message = "The number is right, but it does not lead to that yes or no: compare it with the limit asked for."
        return Verdict(0.5, PARTLY, message, "number right, judged wrongly", answer.echo)
    return number


def _right(answer: Answer) -> Verdict:
    return Verdict(1.0, RIGHT, "Right.", "", answer.echo)


def _wrong(slip: Wrong, answer: Answer) -> Verdict:
    return Verdict(0.0, WRONG, f"Not right. {slip.says}", slip.name, answer.echo)


def missing() -> Verdict:
    """The verdict on a task without an answer."""
    return Verdict(0.0, MISSING, "Not answered.")
