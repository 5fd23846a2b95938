"""A chart: one or several relations of the book against one of their givens, as curves."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from attrs import evolve, field, frozen

from drillpoint.drawing.charts.curve import Curve, trace
from drillpoint.drawing.charts.frame import Frame, read_bands, usual_band
from drillpoint.drawing.charts.ready import READY, Ready
from drillpoint.drawing.charts.recipe import Worker, check_all_taken, in_book, recipe, worked_first
from drillpoint.drawing.charts.spans import MOST_IN_A_FAMILY, family_of, span_of
from drillpoint.drawing.charts.words import describe, fixed_in_words
from drillpoint.drawing.picture import Picture
from drillpoint.drawing.showing import Units, read_units, show
from drillpoint.errors import LearnerError, MissingGiven
from drillpoint.quantities import QUANTITIES, quantity
from drillpoint.relation import Relation

Result = str | Relation | Sequence[str | Relation]
Line = tuple[str, Relation, Worker, Mapping[str, float]]
_EXAMPLE = "chart('lip_length', against='web', diameter=10, point_angle=118, chisel_edge_angle=125)"


@frozen
class Chart(Picture):
    """A finished chart: shows itself, saves to a file, and says in words what it shows.

    svg: the chart, on white paper. alt: its text twin, with its numbers. curves: the numbers, in degrees and mm.
    """

    curves: tuple[Curve, ...] = field(repr=False, default=())


def chart(
    result: Result,
    *,
    against: str | None = None,
    family: str | None = None,
    between: tuple[float, float] | None = None,
    bands: Sequence[tuple[str, float, float]] = (),
    units: str = "mm",
    **givens: float | Sequence[float],
) -> Chart:
    """How a quantity of the point changes with another one.

    result: a relation of the book by name, or several of the same unit; or a ready-made chart by name, which needs
    nothing else and takes what is given instead of its usual drill. against: the given that goes to the right.
    family: the given that has a curve for each of its values; it is found by itself when one given is a list, and
    takes usual values when it is named and not given. between: from where to where, as in between=(0.5, 3); without it
    the usual range of a workshop. bands: ranges to hatch beside the usual one, as in bands=[("shop rule", 8, 12)].
    units: "mm" or "inch", for what is written. Everything given is in degrees, mm and mm/rev.
    Raises LearnerError for an unknown name, and whatever the relations refuse.

    >>> chart("relief_along_lip", feed=0.3)
    >>> chart("chisel_edge_angle", against="lip_relief", web_ratio=0.15, point_angle=[90, 118, 135])
    """
    ready, given = _ready(result, against, givens)
    relations = _relations(ready.results)
    to_the_right = quantity(ready.against)
    if ready.against in given:
        raise LearnerError(
            f"{ready.against} goes along the axis; leave it out, or choose its ends with between=(from, to)"
        )
    family, values, fixed = _split(family, given)
    if family is not None and len(relations) > 1:
        raise LearnerError(f"several results and a family of {family} make too many curves; chart one result")
    span, written, out = span_of(ready.against, fixed, between), read_units(units), relations[0].result
    lines = _lines(ready, relations, written, family, values, fixed)
    curves = tuple(trace(label, r.result, partial(_at, w, known, ready.against), span) for label, r, w, known in lines)
    frame = Frame(
        title=ready.title or " and ".join(r.result.term for r in relations),
        fixed=fixed_in_words([(QUANTITIES[name], show(name, value, written)) for name, value in fixed.items()]),
        against=to_the_right,
        result=out,
        span=span,
        curves=curves,
        bands=(*(usual_band(out, curves) if len(relations) == 1 else ()), *read_bands(bands)),
        family=QUANTITIES[family].term if family else "",
        units=written,
    )
    from drillpoint.drawing.charts.plot import plot  # matplotlib loads with the first chart

    alt = describe(frame)
    return Chart(plot(frame, alt), alt, curves)


def chart_names() -> tuple[str, ...]:
    """The ready-made charts."""
    return tuple(READY)


def _ready(result: Result, against: str | None, givens: Mapping[str, Any]) -> tuple[Ready, dict[str, Any]]:
    """What is drawn: a ready-made chart, or one made of the relations asked for."""
    if isinstance(result, str) and result in READY:
        ready = READY[result] if against is None else evolve(READY[result], against=against)
        filled = ready.filled(givens)
        if against is not None:
            filled = {name: value for name, value in filled.items() if name != against or name in givens}
        return ready, filled
    several = (result,) if isinstance(result, str | Relation) else tuple(result)
    names = tuple(in_book(one, tuple(READY)).name for one in several)
    if not names:
        raise LearnerError(f"a chart needs a result, as in {_EXAMPLE}")
    if against is None:
        goes_by = ", ".join(in_book(names[0]).givens)
        raise MissingGiven(f"a chart of {names[0]} needs against=..., the given that goes to the right: {goes_by}")
    return Ready(names, against), dict(givens)


def _lines(
    ready: Ready,
    relations: Sequence[Relation],
    units: Units,
    family: str | None,
    values: Sequence[float],
    fixed: Mapping[str, float],
) -> list[Line]:
    """Each curve's name, relation, how it is worked out, and what stays the same along it."""
    names = frozenset({ready.against, *fixed, *((family,) if family else ())})
    first = {name: in_book(relation) for name, relation in ready.first.items()}
    workers = []
    taken = []
    for relation in relations:
        if relation.name in ready.first.values() or not first:
            work, own = recipe(relation, ready.against, names, take_all=len(relations) == 1)
        else:
            work, own = worked_first(relation, first, names)
        workers.append(work)
        taken.append(own)
    check_all_taken(names, taken, (r.name for r in relations))
    if family is None:
        return [(r.result.term, r, work, fixed) for r, work in zip(relations, workers, strict=True)]
    return [(show(family, value, units), relations[0], workers[0], {**fixed, family: value}) for value in values]


def _at(work: Worker, known: Mapping[str, float], against: str, x: float) -> float:
    return work({**known, against: x})


def _relations(names: Sequence[str]) -> tuple[Relation, ...]:
    relations = tuple(in_book(name) for name in names)
    if len(relations) > MOST_IN_A_FAMILY:
        raise LearnerError(f"{len(relations)} curves are too many to tell apart; chart at most {MOST_IN_A_FAMILY}")
    first = relations[0].result
    for other in (r.result for r in relations[1:]):
        if other.unit != first.unit:
            raise LearnerError(
                f"{first.term} ({first.unit or 'no unit'}) and {other.term} ({other.unit or 'no unit'}) "
                "do not share an axis; make two charts"
            )
    return relations


def _split(family: str | None, givens: Mapping[str, Any]) -> tuple[str | None, tuple[float, ...], dict[str, float]]:
    """The family's name and values, and the givens that stay the same."""
    for name in givens:
        quantity(name)
    lists = {name for name, value in givens.items() if isinstance(value, Sequence) and not isinstance(value, str)}
    families = sorted(lists | ({family} if family else set()))
    if len(families) > 1:
        raise LearnerError(
            f"a chart has one family of curves, and {' and '.join(families)} were to be one; "
            "give one list, and a single number for every other"
        )
    if not families:
        return None, (), dict(givens)
    name = quantity(families[0]).name
    given = givens.get(name, family_of(name))
    values = tuple(given) if isinstance(given, Sequence) else (given,)
    if not 1 <= len(values) <= MOST_IN_A_FAMILY:
        raise LearnerError(f"{name} has {len(values)} values; a chart takes 1 to {MOST_IN_A_FAMILY} curves")
    return name, values, {other: value for other, value in givens.items() if other != name}
