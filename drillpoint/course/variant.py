"""Each student's own numbers: drawn from a digest, so that they come out the same on every machine and every day."""

from __future__ import annotations

import hashlib
import math
import re
from collections.abc import Iterator, Mapping
from functools import lru_cache, partial

from attrs import frozen

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.computing import right_value, taken_by, wrong_value
from drillpoint.course.exercise import ExerciseSet, GivenValue, Task
from drillpoint.course.formula import read_formula, same_values, sample_points
from drillpoint.course.reading import MM_PER_INCH, unit_and_factor, with_unit
from drillpoint.course.slips import SLIPS, Derivation
from drillpoint.errors import DrillpointError, InstructorError
from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Worked
from drillpoint.relations import BOOK

MOST_DRAWS = 200
LETTERS = "abcd"
# A slip must lie this many tolerances from the right value, so that neither can pass as the other.
APART = 2.0
_CACHED = 4096

CONVENTIONS: Mapping[str, str] = {
    "point_angle": "the whole, included angle",
    "chisel_edge_angle": "the obtuse angle, over 90°",
    "lip_relief": "at the outer corner, in the plane that touches the cylinder there",
    "axial_relief": "square to the lip, in a plane parallel to the axis",
}


@frozen
class Wrong:
    """What one slip gives: one value, or for a formula a value at each sampling point."""

    name: str
    says: str
    values: tuple[float, ...]


@frozen
class Numbers:
    """The numbers of one variant: what is given, what is right, what each slip gives. Library units."""

    givens: Mapping[str, GivenValue]
    right: tuple[float, ...]
    tolerance: float
    wrong: tuple[Wrong, ...]
    yes: bool | None
    options: tuple[tuple[str, Wrong | None], ...]
    """For a choice: what each option shows, and the slip it stands for; None is the right one."""
    points: tuple[Mapping[str, float], ...] = ()
    """For a formula: the sampling points, in the symbols a student uses."""


@frozen
class Question:
    """One task with one student's numbers."""

    task: Task
    number: int
    numbers: Numbers
    form: AnswerForm
    options: tuple[tuple[str, Wrong | None], ...]

    @property
    def text(self) -> str:
        """The question in words, with the numbers put in."""
        return fill(self.task.text, self)

    @property
    def asks(self) -> str:
        """What to give, in which unit, how exactly, and how far off still counts."""
        task = self.task
        if task.kind == "choice":
            return "Give the letter of the right one."
        if task.kind == "formula":
            meanings = "; ".join(f"{symbol} = {_in_words(meaning)}" for symbol, meaning in task.names.items())
            return f"Give the right-hand side of {task.symbol or '?'} = … in {meanings}. Angles are in degrees."
        asked = QUANTITIES[task.asked]
        convention = f" ({CONVENTIONS[task.asked]})" if task.asked in CONVENTIONS else ""
        places = "no decimals" if task.decimals == 0 else f"{task.decimals} decimal{'s' if task.decimals > 1 else ''}"
        first = "Answer yes or no, and give" if task.kind == "judgement" else "Give"
        what = f"{first} the {asked.term}{convention} in {_unit_words(task.unit)}, to {places}."
        return f"{what} Up to {_tolerance_words(task)} off counts as right."

    @property
    def worked(self) -> str:
        """The worked solution, from the relation itself."""
        task, right = self.task, self.numbers.right[0]
        relation = BOOK[task.relation]
        values = taken_by(task, {name: given.value for name, given in self.numbers.givens.items()})
        if task.kind == "formula":
            middle = {given.name: given.values[len(given.values) // 2].value for given in task.givens}
            return f"{relation.worked(**middle).formula.text}. Any formula that gives the same values is right."
        if task.asked == relation.result.name:
            worked = _in_full(relation.worked(**values))
            in_inches = f"\n{QUANTITIES[task.asked].show(right, 4)} = {right / MM_PER_INCH:.{task.decimals}f} in"
            return worked + (in_inches if task.unit == "in" else "")
        known = QUANTITIES[relation.result.name]
        given = known.show(values.pop(known.name), 4)
        answer = QUANTITIES[task.asked].show(right, task.decimals)
        check = _in_full(relation.worked(**values, **{task.asked: right}))
        return f"{QUANTITIES[task.asked].term} = {answer}, since it gives the {known.term} of {given} in the question:\n{check}"


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
    def __init__(self, exercise_set: ExerciseSet, task: Task, number: int) -> None:
        self.set, self.task, self.number = exercise_set, task, number
        self.numbers = lru_cache(maxsize=_CACHED)(self._numbers)
        _, self.factor = unit_and_factor(task.unit)
        names = tuple(task.names)
        self.form = AnswerForm(task.kind, task.unit, names, task.symbol)

    def draws(self, student: str) -> Iterator[tuple[Numbers | str, int]]:
        """Draw again and again: the numbers, or why they are not handed out, and the rest of the digest."""
        for attempt in range(MOST_DRAWS):
            key = "\x1f".join(
                (self.set.course, self.set.id, str(self.set.version), self.task.id, student, str(attempt))
            )
            rest = int.from_bytes(hashlib.sha256(key.encode("utf-8", "surrogatepass")).digest(), "big")
            indices = []
            for given in self.task.givens:
                rest, index = divmod(rest, len(given.values))
                indices.append(index)
            yield self.numbers(tuple(indices)), rest

    def question(self, student: str) -> Question:
        for numbers, rest in self.draws(student):
            if isinstance(numbers, Numbers):
                options = _shuffled(numbers.options, rest)
                form = self.form
                if options:
                    form = AnswerForm(form.kind, letters=LETTERS[: len(options)])
                return Question(self.task, self.number, numbers, form, options)
        why = next(reason for reason, _ in self.draws(student) if isinstance(reason, str))
        raise InstructorError(f"task {self.task.id}: no draw of {MOST_DRAWS} can be handed out; the first one: {why}")

    def refused(self, student: str) -> list[str]:
        reasons = []
        for numbers, _ in self.draws(student):
            if isinstance(numbers, Numbers):
                break
            reasons.append(numbers)
        return reasons

    def _numbers(self, indices: tuple[int, ...]) -> Numbers | str:
        """Work out one draw, or say why it cannot be handed out."""
        task = self.task
        if task.kind == "formula":
            return self._sampled()
        givens: dict[str, GivenValue] = {}
        for given, index in zip(task.givens, indices, strict=True):
            drawn = given.values[index]
            if given.share_of:
                share = drawn.value * givens[given.share_of].value
                value = round(round(share / given.step) * given.step, 9)
                drawn = GivenValue(value, with_unit(f"{value:g}", QUANTITIES[given.name].unit))
            givens[given.name] = drawn
        values = {name: given.value for name, given in givens.items()}
        try:
            right = right_value(task, values)
        except DrillpointError as error:
            return str(error).splitlines()[0]
        wrong = tuple(Wrong(name, says, (value,)) for name, says, value in self._wrong(values, right))
        unit_of_last_digit = 10.0**-task.decimals * self.factor
        tolerance = task.tolerance.last_digit * unit_of_last_digit
        if task.tolerance.percent:
            tolerance = abs(right) * task.tolerance.percent / 100
        for slip in wrong:
            if abs(slip.values[0] - right) <= APART * tolerance:
                return f"“{slip.name}” gives {slip.values[0]:.5g}, which passes for the right {right:.5g}"
        yes = None
        if task.kind == "judgement":
            limit = task.at_least if task.at_least is not None else task.at_most
            assert limit is not None  # checked when the file was read
            if abs(right - limit) <= 2 * APART * tolerance:
                return f"the value {right:.5g} is too near the limit {limit:g} to be judged"
            yes = (right > limit) == (task.at_least is not None)
        options = self._options(right, wrong) if task.kind == "choice" else ()
        if isinstance(options, str):
            return options
        return Numbers(givens, (right,), tolerance, wrong, yes, options)

    def _wrong(self, values: Mapping[str, float], right: float) -> Iterator[tuple[str, str, float]]:
        for rule in self.task.slips:
            if rule.formula:
                found = iter([read_formula(rule.formula, tuple(values)).at(values)])
                says = rule.says
            else:
                slip = SLIPS[rule.name]
                found = slip.wrong(Derivation(partial(wrong_value, self.task), values, right, self.task.asked))
                says = slip.says
            for value in found:
                # A slip that changes nothing here (the sine of 180° minus an angle) is not a wrong value.
                if math.isfinite(value) and not math.isclose(value, right, rel_tol=1e-9):
                    yield rule.name, says, value

    def _options(self, right: float, wrong: tuple[Wrong, ...]) -> tuple[tuple[str, Wrong | None], ...] | str:
        options: dict[str, Wrong | None] = {self.shown(right): None}
        for slip in wrong:
            if len(options) < len(LETTERS) and slip.values[0] > 0:
                options.setdefault(self.shown(slip.values[0]), slip)
        return tuple(options.items()) if len(options) >= 3 else "fewer than three different options"

    def shown(self, value: float) -> str:
        """A value in the unit and with the decimals asked for."""
        return with_unit(f"{value / self.factor:.{self.task.decimals}f}", self.task.unit)

    def _sampled(self) -> Numbers | str:
        """The right formula and its slips, as values at eight points of the task's own domain."""
        values = {given.name: [value.value for value in given.values] for given in self.task.givens}
        points = sample_points(tuple((name, min(v), max(v)) for name, v in values.items()))
        right = tuple(wrong_value(self.task, point) for point in points)
        found: dict[tuple[str, int], tuple[str, list[float]]] = {}
        for point, value in zip(points, right, strict=True):
            count: dict[str, int] = {}
            for name, says, wrong in self._wrong(point, value):
                count[name] = count.get(name, 0) + 1
                found.setdefault((name, count[name]), (says, []))[1].append(wrong)
        slips = tuple(Wrong(n, says, tuple(v)) for (n, _), (says, v) in found.items() if len(v) == len(points))
        if any(same_values(right, slip.values) for slip in slips):
            return "a slip gives the right formula"
        meanings = {symbol: read_formula(meaning, tuple(points[0])) for symbol, meaning in self.task.names.items()}
        typed = tuple({symbol: meaning.at(point) for symbol, meaning in meanings.items()} for point in points)
        return Numbers({}, right, 0.0, slips, None, (), typed)


def fill(template: str, question: Question) -> str:
    """Put a question's numbers into a text; a placeholder is the name of a given or of a `let` entry."""
    shown = {name: given.shown for name, given in question.numbers.givens.items()}
    values = {name: given.value for name, given in question.numbers.givens.items()}
    for name, formula in question.task.let.items():
        shown[name] = f"{read_formula(formula, tuple(values)).at(values):.6g}"

    def put(match: re.Match[str]) -> str:
        if match.group(1) not in shown:
            known = ", ".join(shown) or "none"
            raise InstructorError(f"task {question.task.id}: {{{match.group(1)}}} is not a given; known: {known}")
        return shown[match.group(1)]

    return re.sub(r"\{(\w+)\}", put, template)


def _in_full(worked: Worked) -> str:
    """The formula, what its letters stand for here, and the lines with the numbers put in."""
    where = f"\nwith {', '.join(line.text for line in worked.where)}" if worked.where else ""
    return f"{worked.formula.text}{where}\n{worked.text}"


def _shuffled(options: tuple[tuple[str, Wrong | None], ...], rest: int) -> tuple[tuple[str, Wrong | None], ...]:
    left, mixed = list(options), []
    while left:
        rest, index = divmod(rest, len(left))
        mixed.append(left.pop(index))
    return tuple(mixed)


def _in_words(meaning: str) -> str:
    words = meaning.replace("_", " ")
    for name, convention in CONVENTIONS.items():
        if meaning == name:
            return f"the {words} ({convention})"
    return f"half the {words.removesuffix('/2')}" if words.endswith("/2") else f"the {words}"


def _unit_words(unit: str) -> str:
    return {"in": "inches", "°": "degrees", "": "a plain number", "%": "per cent"}.get(unit, unit)


def _tolerance_words(task: Task) -> str:
    if task.tolerance.percent:
        return f"±{task.tolerance.percent:g} %"
    return "±" + with_unit(
        f"{task.tolerance.last_digit * 10.0**-task.decimals:.{task.decimals + 1}f}".rstrip("0").rstrip("."), task.unit
    )
