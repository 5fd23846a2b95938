"""The numbers of one task: what is given, what is right, what each slip gives, and whether they may be handed out."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from functools import partial

from attrs import frozen

from drillpoint.course.computing import right_value, wrong_value
from drillpoint.course.exercise import GivenValue, Task
from drillpoint.course.faulty import AMOUNT, FAULT, FLANK, FaultyDrill, drill_with, fault_options
from drillpoint.course.filling import filled
from drillpoint.course.formula import read_formula, same_values, sample_points
from drillpoint.course.grinding import measured, shown
from drillpoint.course.planning import example_of, held_against
from drillpoint.course.reading import unit_and_factor, with_unit
from drillpoint.course.slips import SLIPS, Derivation
from drillpoint.errors import DrillpointError
from drillpoint.quantities import QUANTITIES

LETTERS = "abcdefgh"
MOST_COMPUTED_OPTIONS = 4
FEWEST_OPTIONS = 3
# A slip must lie this many tolerances from the right value, so that neither can pass as the other.
APART = 2.0
_DECIDED = 1e-6
_MOST_TIMES = 1e9


@frozen
class Wrong:
    """What one slip gives: one value, or for a formula a value at each sampling point."""

    name: str
    says: str
    values: tuple[float, ...]


Option = tuple[str, Wrong | None]
"""What one option of a choice shows, and the slip it stands for; None for the right one."""


@frozen
class Numbers:
    """The numbers of one variant. Values are in the library's units; a formula has one at each sampling point.

    `right` of a plan is what the instructor's example enters. A task with parts has the numbers of each in `parts`, and
    a plan those of each decision.
    """

    givens: Mapping[str, GivenValue]
    right: tuple[float, ...] = ()
    tolerance: float = 0.0
    wrong: tuple[Wrong, ...] = ()
    yes: bool | None = None
    options: tuple[Option, ...] = ()
    points: tuple[Mapping[str, float], ...] = ()
    """For a formula: the sampling points, in the symbols a student uses."""
    parts: tuple[Numbers, ...] = ()
    drill: FaultyDrill | None = None


@frozen
class Unfit:
    """Numbers that may not be handed out, and why."""

    reason: str


def numbers_of(task: Task, indices: Sequence[int]) -> Numbers | Unfit:
    """Work out one draw: for each given the index of its value."""
    if task.kind == "formula":
        return _sampled(task)
    givens = _drawn(task, indices)
    try:
        givens |= _measured(task, givens)
    except DrillpointError as error:
        return Unfit(str(error).splitlines()[0])
    if task.kind == "parts":
        return _in_parts(task, givens)
    if task.kind == "diagnose":
        return _diagnosed(task, givens)
    if task.kind in ("plan", "settings"):
        return _planned(task, givens)
    if task.kind == "open":
        return Numbers(givens)
    return solved(task, givens)


def solved(task: Task, givens: Mapping[str, GivenValue]) -> Numbers | Unfit:
    """Work out one task, or one part, from its givens."""
    values = {name: given.value for name, given in givens.items()}
    if not task.relation:
        decided = _stated(task, givens)
        return decided if isinstance(decided, Unfit) else Numbers(givens, options=decided)
    try:
        right = right_value(task, values)
    except DrillpointError as error:
        return Unfit(str(error).splitlines()[0])
    tolerance = _tolerance(task, right, values)
    wrong = tuple(Wrong(name, says, (value,)) for name, says, value in _wrong_values(task, values, right))
    if reason := _too_near(task, right, tolerance, wrong):
        return Unfit(reason)
    options: tuple[Option, ...] = ()
    if task.kind == "choice":
        found = _stated(task, givens, right) if task.statements else _options(task, right, wrong)
        if isinstance(found, Unfit):
            return found
        options = found
    return Numbers(givens, (right,), tolerance, wrong, _is_yes(task, right), options)


def carried(task: Task, givens: Mapping[str, GivenValue], results: Mapping[str, float]) -> Numbers | None:
    """The numbers of a part when results of earlier parts are put in as somebody got them; None if they lead nowhere.

    Nothing is said of how far slips lie apart: these numbers were not handed out.
    """
    put_in = dict(givens)
    for name, value in results.items():
        if value not in QUANTITIES[name].possible:
            return None
        put_in[name] = GivenValue(value, QUANTITIES[name].show(value, 4))
    values = {name: given.value for name, given in put_in.items()}
    right = wrong_value(task, values)
    if not math.isfinite(right):
        return None
    wrong = tuple(Wrong(name, says, (value,)) for name, says, value in _wrong_values(task, values, right))
    return Numbers(put_in, (right,), _tolerance(task, right, values), wrong, _is_yes(task, right))


def _in_parts(task: Task, givens: Mapping[str, GivenValue]) -> Numbers | Unfit:
    found: dict[str, Numbers] = {}
    for part in task.parts:
        put_in = dict(givens)
        for name, source in part.carries.items():
            right = found[source].right[0]
            put_in[name] = GivenValue(right, QUANTITIES[name].show(right, 4))
        numbers = solved(part, put_in)
        if isinstance(numbers, Unfit):
            return Unfit(f"part {part.id}: {numbers.reason}")
        found[part.id] = numbers
    return Numbers(givens, parts=tuple(found.values()))


def _planned(task: Task, givens: Mapping[str, GivenValue]) -> Numbers | Unfit:
    values = {name: given.value for name, given in givens.items()}
    try:
        example = example_of(task, values)
    except DrillpointError as error:
        return Unfit(str(error).splitlines()[0])
    for met in held_against(task, values, example):
        if not met.met:
            return Unfit(f"the example does not meet a requirement: {met.line}")
    decisions = []
    for part in task.parts:
        options = _stated(part, givens)
        if isinstance(options, Unfit):
            return Unfit(f"part {part.id}: {options.reason}")
        decisions.append(Numbers(givens, options=options))
    return Numbers(givens, tuple(example.values()), parts=tuple(decisions))


def _diagnosed(task: Task, givens: Mapping[str, GivenValue]) -> Numbers | Unfit:
    if task.diagnosis is None:
        raise TypeError(f"task {task.id} has no drill to diagnose")
    drill = drill_with(
        givens[FAULT].shown,
        givens[AMOUNT].value,
        givens["diameter"].value,
        tuple(task.diagnosis.readings),
        givens[FLANK].shown,
    )
    if isinstance(drill, str):
        return Unfit(drill)
    names, cures = fault_options(task.diagnosis.faults, drill.fault)
    parts = [Numbers(givens, options=tuple((shown, _mistaken(other)) for shown, other in names))]
    if task.diagnosis.cure:
        parts.append(Numbers(givens, options=tuple((shown, _mistaken(other)) for shown, other in cures)))
    return Numbers(givens, parts=tuple(parts), drill=drill)


def _mistaken(told: tuple[str, str] | None) -> Wrong | None:
    return None if told is None else Wrong(told[0], told[1], ())


def _stated(task: Task, givens: Mapping[str, GivenValue], right: float | None = None) -> tuple[Option, ...] | Unfit:
    """Sentences to choose from; which one is true follows from the numbers."""
    values = {name: given.value for name, given in givens.items()} | ({} if right is None else {"answer": right})
    options: list[Option] = []
    for statement in task.statements:
        holds = read_formula(statement.holds, tuple(values)).at(values)
        # So near to 0 that the last digits decide is no ground for a judgement.
        if not abs(holds) > _DECIDED:
            return Unfit(f"“{statement.name}” can be neither called true nor false")
        wrong = None if holds > 0 else Wrong(statement.name, statement.says, ())
        options.append((filled(statement.text, task, givens), wrong))
    true = sum(wrong is None for _, wrong in options)
    return tuple(options) if true == 1 else Unfit(f"{true or 'none'} of the statements are true; one should be")


def _drawn(task: Task, indices: Sequence[int]) -> dict[str, GivenValue]:
    givens: dict[str, GivenValue] = {}
    for given, index in zip(task.givens, indices, strict=True):
        drawn = given.values[index]
        if given.share_of:
            share = drawn.value * givens[given.share_of].value
            value = round(round(share / given.step) * given.step, 9)
            drawn = GivenValue(value, with_unit(f"{value:g}", QUANTITIES[given.name].unit))
        givens[given.name] = drawn
    return givens


def _measured(task: Task, givens: Mapping[str, GivenValue]) -> dict[str, GivenValue]:
    """What is read on ground points, as givens that are printed or decide something."""
    found: dict[str, GivenValue] = {}
    values = {name: given.value for name, given in givens.items() if name not in task.measures}
    own = tuple(given.name for given in task.givens if not given.shown_only)
    for name, measure in task.measures.items():
        value = measured(measure, values, own)
        found[name] = GivenValue(value, shown(measure.reading, value))
    return found


def _tolerance(task: Task, right: float, values: Mapping[str, float]) -> float:
    """From the digits asked for, and what the reading errors of the givens make of the answer."""
    factor = unit_and_factor(task.unit)[1]
    plain = task.tolerance.last_digit * 10.0**-task.decimals * factor
    if task.tolerance.percent:
        plain = abs(right) * task.tolerance.percent / 100
    errors = [(given.name, given.reading_error) for given in task.givens if given.reading_error]
    moved = 0.0
    for name, error in errors:
        either = (wrong_value(task, {**values, name: values[name] + way * error}) for way in (1, -1))
        moved += max(abs(value - right) for value in either)
    if not moved or not math.isfinite(moved):
        return plain
    # It is printed in the question, so it is rounded up to what can be printed in two figures.
    total = (plain + moved) / factor
    place = 10.0 ** (math.floor(math.log10(total)) - 1)
    return math.ceil(total / place - 1e-9) * place * factor


def _too_near(task: Task, right: float, tolerance: float, wrong: Sequence[Wrong]) -> str:
    """Say what could pass as right although it is wrong; empty if nothing could."""
    for slip in wrong:
        if abs(slip.values[0] - right) <= APART * tolerance:
            return f"“{slip.name}” gives {slip.values[0]:.5g}, which passes for the right {right:.5g}"
    limit = _limit(task)
    if limit is not None and abs(right - limit) <= 2 * APART * tolerance:
        return f"the value {right:.5g} is too near the limit {limit:g} to be judged"
    return ""


def _limit(task: Task) -> float | None:
    return task.at_least if task.at_least is not None else task.at_most


def _is_yes(task: Task, right: float) -> bool | None:
    limit = _limit(task)
    return None if limit is None else (right > limit) == (task.at_least is not None)


def _wrong_values(task: Task, values: Mapping[str, float], right: float) -> Iterator[tuple[str, str, float]]:
    derivation = Derivation(partial(wrong_value, task), values, right, task.asked)
    for rule in task.slips:
        if rule.formula:
            says, found = rule.says, iter([read_formula(rule.formula, tuple(values)).at(values)])
        else:
            says, found = SLIPS[rule.name].says, SLIPS[rule.name].wrong(derivation)
        for value in found:
            # A slip that changes nothing here (the sine of 180° minus an angle) is not a wrong value, nor is one that
            # ran against a pole (the tangent of 90°), which nobody would hand in.
            if abs(value) < _MOST_TIMES * max(abs(right), 1.0) and not math.isclose(value, right, rel_tol=1e-9):
                yield rule.name, says, value


def _options(task: Task, right: float, wrong: Sequence[Wrong]) -> tuple[Option, ...] | Unfit:
    factor = unit_and_factor(task.unit)[1]

    def shown(value: float) -> str:
        return with_unit(f"{value / factor:.{task.decimals}f}", task.unit)

    options: dict[str, Wrong | None] = {shown(right): None}
    for slip in wrong:
        if len(options) < MOST_COMPUTED_OPTIONS and slip.values[0] > 0:
            options.setdefault(shown(slip.values[0]), slip)
    if len(options) < FEWEST_OPTIONS:
        return Unfit(f"fewer than {FEWEST_OPTIONS} different options")
    return tuple(options.items())


def _sampled(task: Task) -> Numbers | Unfit:
    """The right formula and its slips, as values at eight points of the task's own domain."""
    domain = {given.name: [value.value for value in given.values] for given in task.givens}
    points = sample_points(tuple((name, min(values), max(values)) for name, values in domain.items()))
    right = tuple(wrong_value(task, point) for point in points)
    found: dict[tuple[str, int], tuple[str, list[float]]] = {}
    for point, value in zip(points, right, strict=True):
        count: dict[str, int] = {}
        for name, says, wrong in _wrong_values(task, point, value):
            count[name] = count.get(name, 0) + 1
            found.setdefault((name, count[name]), (says, []))[1].append(wrong)
    slips = tuple(Wrong(name, says, tuple(v)) for (name, _), (says, v) in found.items() if len(v) == len(points))
    if any(same_values(right, slip.values) for slip in slips):
        return Unfit("a slip gives the right formula")
    meanings = {symbol: read_formula(meaning, tuple(points[0])) for symbol, meaning in task.names.items()}
    typed = tuple({symbol: meaning.at(point) for symbol, meaning in meanings.items()} for point in points)
    return Numbers({}, right, 0.0, slips, points=typed)
