"""Plans and settings: what a student chooses is held against requirements, not against one answer."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from attrs import frozen

from drillpoint.course.computing import needed
from drillpoint.course.exercise import Requirement, Task
from drillpoint.course.formula import read_formula
from drillpoint.course.grinding import measured, set_up, shown, taken
from drillpoint.course.reading import unit_and_factor, with_unit
from drillpoint.errors import DrillpointError
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import BOOK

# A value at the limit meets it, whatever the last bits of a float are.
_AT_THE_LIMIT = 1e-9


@frozen
class Met:
    """Whether a requirement is met, with the line that says so and why."""

    met: bool
    line: str
    share: float
    value: float | None = None


def example_of(task: Task, givens: Mapping[str, float]) -> dict[str, float]:
    """What the instructor's example enters for these givens, as a student would type it; in the library's units."""
    found: dict[str, float] = {}
    # What the program works out may rest on what the instructor's formulas enter.
    for entered in sorted(task.enters, key=lambda entered: not entered.example):
        unit, factor = unit_and_factor(entered.unit)
        if entered.example:
            value = read_formula(entered.example, tuple(givens)).at(givens)
        else:
            value = set_up({**givens, **found})[entered.name]
        if not unit and not math.isfinite(value):
            value = math.nan
        found[entered.name] = round(value / factor, entered.decimals) * factor
    return {entered.name: found[entered.name] for entered in task.enters}


def held_against(task: Task, givens: Mapping[str, float], entered: Mapping[str, float]) -> tuple[Met, ...]:
    """Hold what was entered against each requirement. What is missing in `entered` was not given or not read."""
    own = {name: value for name, value in givens.items() if name not in task.shown_only}
    return tuple(_held(task, rule, own, givens, entered) for rule in task.requirements)


def _held(
    task: Task, rule: Requirement, own: Mapping[str, float], givens: Mapping[str, float], entered: Mapping[str, float]
) -> Met:
    values = {**givens, **entered}
    lacking = [e.name for e in task.enters if e.name not in entered and e.name in _used_by(task, rule, own)]
    if lacking:
        terms = " and ".join(QUANTITIES[name].term for name in lacking)
        return Met(False, f"Not met: {rule.says}. There is no {terms} to judge it by.", rule.share)
    try:
        value = _value_of(task, rule, own, values)
    except DrillpointError as error:
        return Met(False, f"Not met: {rule.says}. {str(error).splitlines()[0]}", rule.share)
    if not math.isfinite(value):
        return Met(False, f"Not met: {rule.says}. It has no value with these numbers.", rule.share)
    for limit, way, words in _limits(rule, values):
        slack = _AT_THE_LIMIT * max(1.0, abs(limit))
        if not way * (value - limit) >= -slack:
            came = f"It comes to {_shown(rule, value)}, {words} {_shown(rule, limit)} is asked for{_whose(rule)}."
            return Met(False, f"Not met: {rule.says}. {came}", rule.share, value)
    return Met(True, f"Met: {rule.says} ({_shown(rule, value)}{_whose(rule)}).", rule.share, value)


def _value_of(task: Task, rule: Requirement, own: Mapping[str, float], values: Mapping[str, float]) -> float:
    if rule.ground is not None:
        return measured(rule.ground, values, (*own, *_entries(task)))
    if not rule.relation:
        return read_formula(rule.formula, tuple(values)).at(values)
    relation = BOOK[rule.relation]
    return float(relation(**{name: values[name] for name in taken_by_rule(task, rule, tuple(own))}))


def taken_by_rule(task: Task, rule: Requirement, own: Sequence[str]) -> tuple[str, ...]:
    """Which givens and entries the relation of a requirement takes; what is entered comes first."""
    entries = _entries(task)
    return needed(BOOK[rule.relation], (*entries, *(name for name in own if name not in entries)), entries)


def _used_by(task: Task, rule: Requirement, own: Mapping[str, float]) -> set[str]:
    names = {*own, *(entered.name for entered in task.enters)}
    used: set[str] = set(taken_by_rule(task, rule, tuple(own))) if rule.relation else set()
    formulas = [text for text in (rule.formula, rule.at_least, rule.at_most) if text]
    if rule.ground is not None:
        used.update(taken(rule.ground, tuple(names)))
        formulas += [*rule.ground.changed.values(), *([rule.ground.radius] if rule.ground.radius else [])]
    return used.union(*(read_formula(text, (*names, *(g.name for g in task.givens))).names for text in formulas))


def _limits(rule: Requirement, values: Mapping[str, float]) -> Iterator[tuple[float, int, str]]:
    for text, way, words in ((rule.at_least, 1, "at least"), (rule.at_most, -1, "at most")):
        if text:
            yield read_formula(text, tuple(values)).at(values), way, words


def _whose(rule: Requirement) -> str:
    return f"; {rule.source}" if rule.source else ""


def _entries(task: Task) -> tuple[str, ...]:
    return tuple(entered.name for entered in task.enters)


def _shown(rule: Requirement, value: float) -> str:
    if rule.ground is not None:
        return shown(rule.ground.reading, value, 1)
    if rule.relation:
        quantity = BOOK[rule.relation].result
        return quantity.show(value, quantity.decimals + 1)
    return with_unit(f"{value:.4g}", "")
