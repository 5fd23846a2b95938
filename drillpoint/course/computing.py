"""What a task's relation gives: for right givens, checked; for wrong ones, whatever the bare formula says."""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterable, Mapping
from functools import cache, lru_cache

from drillpoint.course.exercise import Task
from drillpoint.errors import DrillpointError, InstructorError, MissingGiven, UnknownGiven
from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Relation
from drillpoint.relation.calling import bare, plan
from drillpoint.relations import BOOK

_PLACES = 16
_ROUNDS = 100
_Step = tuple[str, tuple[str, ...], Callable[..., float]]
"""The name of a result, the names of its givens, and the bare formula that leads from these to it."""


def taken_by(task: Task, values: Mapping[str, float]) -> dict[str, float]:
    """Leave out the givens that are only printed or drawn."""
    return {name: value for name, value in values.items() if name not in task.shown_only}


def needed(relation: Relation, names: Collection[str], wanted: Collection[str] = ()) -> tuple[str, ...]:
    """Which of these quantities the relation takes: those in `wanted`, its own givens, and no more than it needs.

    Raises MissingGiven or UnknownGiven when they do not lead to it.
    """
    taken = {name for name in names if name in relation.accepts}
    # What can be done without goes, roundabout givens first.
    for name in sorted(taken - set(wanted), key=lambda name: (name in relation.givens, name)):
        try:
            _plan(relation, taken - {name})
        except MissingGiven:
            continue
        except UnknownGiven:
            # Something else is still said twice.
            taken.discard(name)
        else:
            taken.discard(name)
    _plan(relation, taken)
    return tuple(name for name in names if name in taken)


def _plan(relation: Relation, given: Collection[str]) -> tuple[Relation, ...]:
    """What has to be worked out, in order; what the relation takes for granted need not be given."""
    return tuple(plan(relation, frozenset({*relation.defaults, *given})))


def right_value(task: Task, values: Mapping[str, float]) -> float:
    """The right answer. DrillpointError if the givens do not make a drill, or if there are two answers."""
    relation, taken = BOOK[task.relation], taken_by(task, values)
    if task.asked == relation.result.name:
        return float(relation(**taken))
    found = _roots(task, taken)
    if len(found) != 1:
        raise InstructorError(f"{task.asked} has {'no answer' if not found else 'more than one answer'} here")
    known = taken.pop(relation.result.name)
    # The relation itself, with all its checks, has the last word.
    if not math.isclose(relation(**taken, **{task.asked: found[0]}), known, rel_tol=1e-9):
        raise InstructorError(f"{task.asked} has no answer here")
    return found[0]


def wrong_value(task: Task, values: Mapping[str, float]) -> float:
    """What comes out of wrong givens, without any check of ranges; nan where they lead nowhere."""
    taken = taken_by(task, values)
    try:
        if task.asked == BOOK[task.relation].result.name:
            return _bare(task, taken)
        found = _roots(task, taken)
    except DrillpointError:
        return math.nan
    return found[0] if len(found) == 1 else math.nan


def _bare(task: Task, taken: Mapping[str, float]) -> float:
    steps, _ = _steps(task.relation, frozenset(taken), "")
    return _through(steps, {**BOOK[task.relation].defaults, **taken})


@lru_cache(maxsize=256)
def _steps(name: str, given: frozenset[str], asked: str) -> tuple[tuple[_Step, ...], tuple[_Step, ...]]:
    """What has to be worked out, with the bare formulas: first what does not depend on what is asked, then the rest."""
    still: list[_Step] = []
    moving: list[_Step] = []
    moved = {asked}
    for relation in _plan(BOOK[name], given):
        step = (relation.result.name, relation.givens, bare(relation))
        if moved.isdisjoint(relation.givens):
            still.append(step)
        else:
            moving.append(step)
            moved.add(relation.result.name)
    return tuple(still), tuple(moving)


def _through(steps: Iterable[_Step], values: dict[str, float]) -> float:
    """Work the steps out one after another, each result put into `values`; the last is returned."""
    result = math.nan
    for name, own, formula in steps:
        result = values[name] = formula(*[values[given] for given in own])
    return result


def _roots(task: Task, taken: Mapping[str, float]) -> list[float]:
    """Where the bare formula gives the known result, inside the possible range of what is asked.

    `relation.solve` does the same with every check and a fine grid. A class needs this thousands of times, with wrong
    givens too, so the grid is coarse here; a test holds the right answers of every set against `relation.solve`.
    """
    relation = BOOK[task.relation]
    values = {**relation.defaults, **taken}
    target = values.pop(relation.result.name)
    still, moving = _steps(task.relation, frozenset({*values, task.asked}), task.asked)
    _through(still, values)

    def off(x: float) -> float:
        values[task.asked] = x
        return _through(moving, values) - target

    places = _places(task.asked)
    errors = [off(x) for x in places]
    return [
        _root(off, places[k], errors[k], places[k + 1], errors[k + 1])
        for k in range(_PLACES)
        if errors[k] * errors[k + 1] < 0 or errors[k] == 0
    ]


@cache
def _places(asked: str) -> list[float]:
    """A coarse grid over what a quantity may possibly be."""
    possible = QUANTITIES[asked].possible
    span = possible.high - possible.low
    return [possible.low + span * (1e-9 + (1 - 2e-9) * k / _PLACES) for k in range(_PLACES + 1)]


def _root(off: Callable[[float], float], low: float, off_low: float, high: float, off_high: float) -> float:
    """False position with the Illinois rule, which keeps neither end for ever."""
    for _ in range(_ROUNDS):
        if off_low == 0 or abs(high - low) <= 1e-13 * abs(high):
            return low
        middle = high - off_high * (high - low) / (off_high - off_low)
        off_middle = off(middle)
        if off_middle == 0:
            return middle
        if off_middle * off_high < 0:
            low, off_low = high, off_high
        else:
            off_low /= 2
        if abs(middle - high) <= 1e-14 * abs(high):
            return middle
        high, off_high = middle, off_middle
    return high
