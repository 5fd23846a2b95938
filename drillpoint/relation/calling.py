"""Calling a relation: which keywords serve, what is worked out first, what is refused."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from functools import cache, lru_cache
from importlib import import_module
from types import ModuleType
from typing import TYPE_CHECKING, Any

from drillpoint.errors import Impossible, MissingGiven, UnknownGiven
from drillpoint.quantities import QUANTITIES, nearest, quantity
from drillpoint.relation.checking import INCH, read_scalar
from drillpoint.relation.condition import ANY_DRILL
from drillpoint.relation.value import Value

if TYPE_CHECKING:
    from drillpoint.relation.relation import Relation

Plan = tuple["Relation", ...]


@cache
def numbers() -> ModuleType:
    """The generated edition of the formulas."""
    return import_module("drillpoint.generated.numbers")


@cache
def _stand_ins() -> Mapping[str, tuple[Relation, ...]]:
    book: Mapping[str, Relation] = import_module("drillpoint.relations").BOOK
    found: dict[str, tuple[Relation, ...]] = {}
    for relation in book.values():
        if relation.stands_in:
            found[relation.result.name] = (*found.get(relation.result.name, ()), relation)
    return found


@lru_cache(maxsize=4096)
def plan(relation: Relation, names: frozenset[str]) -> Plan:
    """The relations to work out, in order, the asked one last, when these keywords are given.

    Raises UnknownGiven or MissingGiven when the keywords do not fit.
    """
    unknown = sorted(name for name in names if name not in accepted(relation))
    if unknown:
        raise UnknownGiven(_unknown(relation, unknown[0]))
    steps, used = _resolve(relation, names, frozenset())
    if spare := sorted(names - used - _only_checked(names - used, names)):
        raise UnknownGiven(
            f"{relation.name} does not need {spare[0]} beside {', '.join(sorted(names & used))}; leave one of them out"
        )
    return steps


def _only_checked(spare: frozenset[str], names: frozenset[str]) -> frozenset[str]:
    """Spare sizes that say nothing twice, but can be held against another size: a diameter beside a radius, say."""
    checked = {name for together in ANY_DRILL if set(together.names) <= names for name in together.names}
    said_twice = {name for name in spare if any(set(r.givens) <= names for r in _stand_ins().get(name, ()))}
    return frozenset((spare & checked) - said_twice)


def accepted(relation: Relation) -> frozenset[str]:
    """Every keyword that may be used for the relation, directly or to work out a given."""
    return _accepted(relation, frozenset({relation.result.name}))


@cache
def _accepted(relation: Relation, asked: frozenset[str]) -> frozenset[str]:
    found = set(relation.givens)
    for given in relation.givens:
        for other in _stand_ins().get(given, ()):
            if not asked.union({given}).intersection(other.givens):
                found |= _accepted(other, asked | {given})
    return frozenset(found)


def _resolve(relation: Relation, names: frozenset[str], asked: frozenset[str]) -> tuple[Plan, frozenset[str]]:
    steps: list[Relation] = []
    used: set[str] = set()
    for given in relation.givens:
        if given in names:
            used.add(given)
            continue
        for other in _stand_ins().get(given, ()):
            if given in asked or asked.union({given, relation.result.name}).intersection(other.givens):
                continue
            try:
                before, needs = _resolve(other, names, asked | {given})
            except MissingGiven:
                continue
            steps.extend(step for step in before if step not in steps)
            used |= needs
            break
        else:
            raise MissingGiven(_missing(relation, given, names))
    return (*steps, relation), frozenset(used)


def _unknown(relation: Relation, name: str) -> str:
    if name == relation.result.name:
        return f"{name} is what {relation.name} works out; to go backwards use {relation.name}.solve(...)"
    known = f" ({QUANTITIES[name].term})" if name in QUANTITIES else ""
    return f"{relation.name} has no given called {name!r}{known}{nearest(name, tuple(sorted(accepted(relation))))}"


def _missing(relation: Relation, given: str, names: frozenset[str]) -> str:
    q = quantity(given)
    others = [" and ".join(other.givens) for other in _stand_ins().get(given, ())]
    instead = f", or {' or '.join(others)} to work it out" if others else ""
    had = f"only {', '.join(sorted(names))} given" if names else "nothing given"
    return f"{relation.name} needs {given} ({q.term}, for example {q.show(q.typical)}){instead}; {had}"


def call(relation: Relation, givens: Mapping[str, Any]) -> Any:
    """The checked result; see `Relation.__call__`."""
    givens, notes = completed(relation, givens)
    steps = plan(relation, frozenset(givens))
    has_arrays = any(hasattr(value, "__len__") and not isinstance(value, (str, bytes)) for value in givens.values())
    if has_arrays:
        from drillpoint.relation import arrays as several

        return several.call(steps, givens)
    values, said = read_scalars(givens)
    result = work_through(steps, values)
    return Value(result, steps[-1].result.name, notes + said + remarks(steps[-1], values))


def completed(relation: Relation, givens: Mapping[str, Any]) -> tuple[dict[str, Any], tuple[str, ...]]:
    """The givens with those that may be left out put in, and a note for each that was."""
    missing = {name: value for name, value in relation.defaults.items() if name not in givens}
    notes = (f"{quantity(name).term} was taken as {quantity(name).show(value)}" for name, value in missing.items())
    return {**givens, **missing}, tuple(notes)


def work_through(steps: Plan, values: dict[str, float]) -> float:
    """Every step of a plan on checked numbers, each result put into `values`; the last is returned.

    Raises Impossible when the numbers do not go together.
    """
    for step in steps:
        values[step.result.name] = work_out(step, values)
    return values[steps[-1].result.name]


def read_scalars(givens: Mapping[str, Any]) -> tuple[dict[str, float], tuple[str, ...]]:
    """Every given read and checked by itself, with the notes."""
    values: dict[str, float] = {}
    notes: tuple[str, ...] = ()
    for name, given in givens.items():
        values[name], said = read_scalar(name, given)
        notes += said
    return values, notes


def work_out(relation: Relation, values: Mapping[str, float]) -> float:
    """One relation on checked numbers.

    Raises Impossible when the givens do not go together.
    """
    for together in ANY_DRILL:
        if all(name in values for name in together.names) and not together.holds(together.margin(values)):
            raise Impossible(says(together.says, values))
    own = [values[name] for name in relation.givens]
    margins = getattr(numbers(), f"{relation.name}__margins")(math, *own)
    for condition, margin in zip(relation.conditions, margins, strict=True):
        if not condition.holds(margin):
            raise Impossible(says(condition.says, values))
    formula = getattr(numbers(), relation.name)
    try:
        return float(formula(math, *own))
    except (ValueError, ZeroDivisionError, OverflowError):
        return _at_a_limit(relation, own)


def _at_a_limit(relation: Relation, own: list[float]) -> float:
    """The result where the formula divides by nothing, as the arc tangent of an endless slope has one.

    Raises Impossible where there is none.
    """
    import numpy

    with numpy.errstate(all="ignore"):
        result = float(getattr(numbers(), relation.name)(numpy, *(numpy.float64(value) for value in own)))
    if not math.isfinite(result):
        given = ", ".join(f"{n} {quantity(n).show(v, 4)}" for n, v in zip(relation.givens, own, strict=True))
        raise Impossible(f"{relation.name} has no value at {given}; move away from that limit")
    return result


def remarks(relation: Relation, values: Mapping[str, float]) -> tuple[str, ...]:
    """What should be said of the result, from its cautions and its own notes."""
    margins = getattr(numbers(), f"{relation.name}__cautions")(math, *(values[name] for name in relation.givens))
    said = (c.says for c, margin in zip(relation.cautions, margins, strict=True) if not c.holds(margin))
    return (*(says(sentence, values) for sentence in said), *relation.notes(values[relation.result.name]))


def says(sentence: str, values: Mapping[str, float]) -> str:
    """A condition's sentence with the values put in, and what may have been meant."""
    said = sentence.format_map({name: quantity(name).show(value, 4) for name, value in values.items()})
    diameter, web = values.get("diameter"), values.get("web")
    if diameter and web and diameter <= web < diameter * INCH:
        said += f" (if the diameter is in inches: {diameter:.4g} in = {diameter * INCH:.4g} mm)"
    return said


def unchecked(relation: Relation, givens: Mapping[str, float]) -> float:
    """The bare formula; see `Relation.unchecked`."""
    if set(givens) != set(relation.givens):
        wrong = sorted(set(givens) ^ set(relation.givens))[0]
        raise UnknownGiven(f"{relation.name}.unchecked takes exactly {', '.join(relation.givens)}; {wrong!r} differs")
    return bare(relation)(*(float(givens[name]) for name in relation.givens))


@cache
def bare(relation: Relation) -> Callable[..., float]:
    """The bare formula as a function of the relation's own givens, floats in their order; nan where it is undefined."""
    formula = getattr(numbers(), relation.name)

    def worked_out(*own: float) -> float:
        try:
            return float(formula(math, *own))
        except (ValueError, ZeroDivisionError, OverflowError):
            return math.nan

    return worked_out


def sensitivity(relation: Relation, of: str, givens: Mapping[str, Any]) -> float:
    """The total derivative by one given, through whatever is worked out on the way; see `Relation.sensitivity`."""
    givens, _ = completed(relation, givens)
    steps = plan(relation, frozenset(givens))
    if of not in givens:
        raise UnknownGiven(f"{relation.name}.sensitivity: {of!r} is not among the givens {', '.join(sorted(givens))}")
    values, _ = read_scalars(givens)
    rates = {name: 1.0 if name == of else 0.0 for name in values}
    for step in steps:
        values[step.result.name] = work_out(step, values)
        own = [values[name] for name in step.givens]
        partials = (getattr(numbers(), f"{step.name}__by__{name}")(math, *own) for name in step.givens)
        rates[step.result.name] = sum(p * rates[name] for p, name in zip(partials, step.givens, strict=True))
    return float(rates[relation.result.name])
