"""Which relations of the book give a chart's result from the values at hand, in one call or in two."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from itertools import combinations

from drillpoint.errors import LearnerError, MissingGiven, UnknownGiven
from drillpoint.quantities import nearest
from drillpoint.relation import Relation
from drillpoint.relation.calling import plan
from drillpoint.relations import BOOK

Worker = Callable[[Mapping[str, float]], float]
"""The result for the values of every given by name."""


def recipe(relation: Relation, against: str, names: frozenset[str], *, take_all: bool) -> tuple[Worker, frozenset[str]]:
    """How `relation` is worked out from the givens called `names`, and which of them it takes.

    against: the given that must be among those taken. take_all: whether all of them must be. A given that the relation
    cannot take itself may go through one other relation of the book: a web gives a chisel edge length, which gives a
    factor of the thrust.
    Raises UnknownGiven or MissingGiven, as the relation does, when they do not fit.
    """
    must = names if take_all else frozenset({against})
    if must <= relation.accepts:
        taken = _fitting(relation, must, names & relation.accepts)
        if taken is not None:
            return (lambda values: float(relation(**{name: values[name] for name in taken}))), taken
    through = _in_two_steps(relation, must, names)
    if through is not None:
        return through
    plan(relation, names | frozenset(relation.defaults))  # says what is amiss
    raise UnknownGiven(f"{relation.name} does not go by {against}")


def _in_two_steps(
    relation: Relation, must: frozenset[str], names: frozenset[str]
) -> tuple[Worker, frozenset[str]] | None:
    strange = must - relation.accepts
    for between in sorted((relation.accepts - names) & set(BOOK)):
        first = BOOK[between]
        if first.result.name != between or not strange or not strange <= first.accepts:
            continue
        before = _fitting(first, strange, names & first.accepts, fewest=True)
        if before is None:
            continue
        then = _fitting(relation, (must - before) | {between}, (names & relation.accepts) | {between})
        if then is not None:
            return _chained(first, before, relation, then - {between}), before | (then - {between})
    return None


def _chained(first: Relation, before: frozenset[str], relation: Relation, then: frozenset[str]) -> Worker:
    def work(values: Mapping[str, float]) -> float:
        between = {first.result.name: float(first(**{name: values[name] for name in before}))}
        return float(relation(**between, **{name: values[name] for name in then}))

    return work


def _fitting(
    relation: Relation, must: frozenset[str], may: frozenset[str], *, fewest: bool = False
) -> frozenset[str] | None:
    """The keywords, all of `must` and some of `may`, with which the relation can be called."""
    spare = sorted(may - must)
    sizes = range(len(spare) + 1) if fewest else range(len(spare), -1, -1)
    for chosen in (frozenset(some) for size in sizes for some in combinations(spare, size)):
        if _can_call(relation, must | chosen):
            return must | chosen
    return None


def _can_call(relation: Relation, names: frozenset[str]) -> bool:
    try:
        plan(relation, names | frozenset(relation.defaults))
    except (MissingGiven, UnknownGiven):
        return False
    return True


def check_all_taken(names: frozenset[str], taken: Iterable[frozenset[str]], results: Iterable[str]) -> None:
    """Refuse a given that none of the results goes by.

    Raises UnknownGiven.
    """
    left = sorted(names.difference(*taken))
    if left:
        raise UnknownGiven(f"none of {', '.join(results)} goes by {left[0]}; leave it out")


def worked_first(
    relation: Relation, first: Mapping[str, Relation], names: frozenset[str]
) -> tuple[Worker, frozenset[str]]:
    """How `relation` is worked out when some of its givens are first changed by another relation.

    first: the given, and the relation that turns it from what it was into what it is; a web thickens, for example.
    """
    taken = _fitting(relation, frozenset(first), names & relation.accepts) or relation.accepts & names
    needed = {given: frozenset(before.givens) for given, before in first.items()}

    def work(values: Mapping[str, float]) -> float:
        changed = {
            given: float(before(**{name: values[name] for name in before.givens})) for given, before in first.items()
        }
        return float(relation(**{name: changed.get(name, values[name]) for name in taken}))

    return work, taken.union(*needed.values())


def in_book(result: Relation | str, others: tuple[str, ...] = ()) -> Relation:
    """The relation itself, or the one of this name.

    others: names of something else that might have been meant. Raises LearnerError with the nearest name when there is
    none.
    """
    if isinstance(result, Relation):
        return result
    if result not in BOOK:
        raise LearnerError(f"there is nothing called {result!r} to chart{nearest(result, (*BOOK, *others))}")
    return BOOK[result]
