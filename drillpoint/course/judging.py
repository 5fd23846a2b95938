"""Judging one typed answer: first it is read, then compared, and a wrong one is traced to the slip that gives it."""

from __future__ import annotations

import html
from collections.abc import Mapping
from typing import Any

from attrs import evolve, field, frozen

from drillpoint.course.answer_form import Answer
from drillpoint.course.formula import Formula, same_values, values_at
from drillpoint.course.numbers import Numbers, Wrong, carried
from drillpoint.course.planning import Met, held_against
from drillpoint.course.reading import Reading, ReadingError, unit_and_factor
from drillpoint.course.slips import ROUNDED_EARLY, ROUNDED_EARLY_SAYS, ROUNDING_SHARE
from drillpoint.course.variant import Question

RIGHT, PARTLY, WRONG, UNREADABLE, MISSING = "right", "partly right", "not right", "could not be read", "not answered"
WAITING = "for the instructor to mark"
"""The state of an open answer: its mark is 0 until the instructor gives one."""
TAKEN = "taken"
"""The state of one box of a plan that could be read; the requirements judge all boxes together."""
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
        # Each requirement of a plan has its own line; a rubric is the instructor's.
        said = "\n".join(self.lines) if self.lines and self.state != WAITING else self.message
        return f"{said} (Read as {self.echo}.)" if self.echo else said

    def _repr_pretty_(self, printer: Any, cycle: bool) -> None:  # noqa: ARG002 - as IPython calls it
        printer.text(str(self))

    def _repr_html_(self) -> str:
        # A caret keeps its place only where all signs are equally wide.
        font = ";font-family:monospace" if self.error else ""
        return f'<div role="status" style="white-space:pre-wrap{font}">{html.escape(str(self))}</div>'


def judge_task(question: Question, typed: Mapping[str, str]) -> Verdict:
    """Judge a task from what was typed into its boxes, by their keys; a box without an entry was not answered.

    Marks are fractions of the task's points. Never raises for anything a person can type.
    """
    if question.task.enters:
        return _judge_plan(question, typed)
    if len(question.parts) > 1:
        return _judge_parts(question, typed)
    if question.parts:
        question = question.parts[0]
    key = question.key or question.task.id
    return judge_answer(question, typed[key]) if key in typed else missing()


def _judge_parts(question: Question, typed: Mapping[str, str]) -> Verdict:
    """Judge part by part; what an earlier part gave goes into the next as the student got it."""
    verdicts: dict[str, Verdict] = {}
    got: dict[str, float] = {}
    for part in question.parts:
        if part.key not in typed:
            verdicts[part.key] = missing()
            continue
        verdict = judge_answer(part, typed[part.key])
        if verdict.mark < 1 and verdict.error is None:
            verdict = _carried_forward(part, typed[part.key], got) or verdict
        verdicts[part.key] = verdict
        if verdict.error is None and (reading := part.form.read(typed[part.key]).reading) is not None:
            got[part.task.id] = reading.value
    marks = [verdict.mark for verdict in verdicts.values()]
    weights = [part.task.points for part in question.parts]
    mark = sum(m * w for m, w in zip(marks, weights, strict=True)) / (sum(weights) or 1.0)
    labels = [part.task.id for part in question.parts]
    message = " ".join(f"{label}: {v.message}" for label, v in zip(labels, verdicts.values(), strict=True))
    slip = next((verdict.slip for verdict in verdicts.values() if verdict.slip), "")
    return Verdict(mark, _state_of(mark, list(verdicts.values())), message, slip, parts=verdicts)


def _carried_forward(part: Question, typed: str, got: Mapping[str, float]) -> Verdict | None:
    """Judge a part by the student's own earlier results: a wrong one that is used rightly earns this part."""
    results = {name: got[source] for name, source in part.task.carries.items() if source in got}
    numbers = carried(part.task, part.numbers.givens, results) if results else None
    if numbers is None:
        return None
    verdict = judge_answer(evolve(part, numbers=numbers), typed)
    if verdict.mark == 1:
        sources = " and ".join(part.task.carries[name] for name in results)
        return evolve(verdict, message=f"Right with your own result of {sources}, carried forward.")
    return verdict if verdict.slip and verdict.slip != ROUNDED_EARLY else None


def _judge_plan(question: Question, typed: Mapping[str, str]) -> Verdict:
    """Judge what was decided, and hold what was entered against every requirement; each has its line."""
    given = {box.key: typed[box.key] for box in question.boxes if box.key in typed}
    if not given:
        return missing()
    verdicts: dict[str, Verdict] = {}
    entered: dict[str, float] = {}
    for part in question.parts:
        verdicts[part.key] = judge_answer(part, given[part.key]) if part.key in given else missing()
    decided = tuple(_decided(part, verdicts[part.key]) for part in question.parts)
    for box, rule in zip(question.boxes[len(question.parts) :], question.task.enters, strict=True):
        if box.key not in given:
            verdicts[box.key] = missing()
            continue
        try:
            answer = box.form.read(given[box.key])
        except ReadingError as error:
            verdicts[box.key] = Verdict(0.0, UNREADABLE, error.reason, error=error)
            continue
        if answer.reading is not None:
            entered[rule.name] = answer.reading.value
        verdicts[box.key] = Verdict(0.0, TAKEN, "Taken as it stands.", echo=answer.echo)
    values = {name: value.value for name, value in question.numbers.givens.items()}
    held = (*decided, *held_against(question.task, values, entered))
    mark = sum(met.share for met in held if met.met) / sum(met.share for met in held)
    if question.task.kind == "settings" and mark < 1:
        mark = 0.0
    # The boxes share what they earn together.
    verdicts = {key: evolve(v, mark=mark) if v.state == TAKEN else v for key, v in verdicts.items()}
    lines = tuple(met.line for met in held)
    state = _state_of(mark, list(verdicts.values()))
    if len(question.boxes) == 1:
        (only,) = verdicts.values()
        return Verdict(mark, state, " ".join(lines), "", only.echo, only.error, lines=lines)
    slip = next((verdict.slip for verdict in verdicts.values() if verdict.slip), "")
    return Verdict(mark, state, " ".join(lines), slip, parts=verdicts, lines=lines)


def _decided(part: Question, verdict: Verdict) -> Met:
    """One decision of a plan as a requirement that is met or not; its points are its share."""
    met = verdict.mark == 1
    line = f"{'Met' if met else 'Not met'}: The right choice ({part.task.id.replace('-', ' ')})."
    return Met(met, line if met else f"{line} {verdict.message.removeprefix('Not right. ')}", part.task.points)


def _state_of(mark: float, verdicts: list[Verdict]) -> str:
    if mark >= 1 - 1e-12:
        return RIGHT
    if mark > 0:
        return PARTLY
    states = {verdict.state for verdict in verdicts}
    if states == {MISSING}:
        return MISSING
    return UNREADABLE if UNREADABLE in states and states <= {UNREADABLE, MISSING, TAKEN} else WRONG


def judge_answer(question: Question, typed: str) -> Verdict:
    """Judge what was typed in answer to a question. Never raises for anything a person can type."""
    try:
        answer = question.form.read(typed)
    except ReadingError as error:
        return Verdict(0.0, UNREADABLE, error.reason, echo="", error=error)
    if answer.formula is not None:
        return _judge_formula(question, answer.formula, answer)
    if question.form.kind == "text":
        lines = tuple(criterion.says for criterion in question.task.rubric)
        return Verdict(0.0, WAITING, "Your instructor marks this answer.", "", answer.echo, lines=lines)
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
