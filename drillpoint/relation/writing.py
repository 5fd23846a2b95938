"""Worked lines and help, from the statement and the generated templates."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import TYPE_CHECKING

from drillpoint.quantities import QUANTITIES
from drillpoint.relation.calling import completed, numbers, plan, read_scalars, remarks, work_out
from drillpoint.relation.symbols import is_angle, latex_letter, letter
from drillpoint.relation.template import fill
from drillpoint.relation.worked import Line, Worked, result_latex, result_text, spelled

if TYPE_CHECKING:
    from drillpoint.relation.relation import Relation


def worked(relation: Relation, givens: Mapping[str, float]) -> Worked:
    """See `Relation.worked`."""
    givens, taken = completed(relation, givens)
    steps = plan(relation, frozenset(givens))
    values, said = read_scalars(givens)
    notes = taken + said
    lines = []
    for step in steps:
        values[step.result.name] = work_out(step, values)
        lines.append(_line(step, values))
    templates = numbers().TEMPLATES[relation.name]
    formula = Line(templates["formula_text"], templates["formula_latex"])
    letters = abbreviation_values(relation.name, values)
    where = tuple(
        Line(
            fill(text, spelled({**values, **letters}, _angles(values, letters), latex=False)),
            fill(latex, spelled({**values, **letters}, _angles(values, letters), latex=True)),
        )
        for text, latex in templates["where"]
    )
    return Worked(formula, where, tuple(lines), notes + remarks(relation, values))


def abbreviation_values(name: str, values: Mapping[str, float]) -> dict[str, float]:
    """The value of every abbreviation that the relation `name` uses, in surface units."""
    edition = numbers()
    found: dict[str, float] = {}
    for abbreviation in edition.TEMPLATES[name]["abbreviations"]:
        own = edition.ABBREVIATIONS[abbreviation]
        found[abbreviation] = getattr(edition, f"letter__{abbreviation}")(math, *(values[n] for n in own))
    return found


def _angles(*groups: Mapping[str, float]) -> frozenset[str]:
    return frozenset(name for group in groups for name in group if is_angle(name))


def _line(step: Relation, values: Mapping[str, float]) -> Line:
    templates = numbers().TEMPLATES[step.name]
    letters = abbreviation_values(step.name, values)
    angles = _angles(values, letters)
    result = values[step.result.name]
    text = fill(templates["text"], spelled({**values, **letters}, angles, latex=False))
    latex = fill(templates["latex"], spelled({**values, **letters}, angles, latex=True))
    name = step.result.name
    return Line(
        f"{letter(name)} = {text} = {result_text(name, result)}",
        f"{latex_letter(name)} = {latex} = {result_latex(name, result)}",
    )


def help_text(relation: Relation) -> str:
    """See `Relation.help`."""
    lines = [f"{relation.name}: {relation.says}", "", f"  {numbers().TEMPLATES[relation.name]['formula_text']}", ""]
    for q in relation.quantities:
        span = f"possible {q.show_span(q.possible)}"
        role = "gives" if q.name == relation.result.name else "needs"
        lines.append(f"  {role} {q.name} ({q.symbol}, {q.term}): {q.meaning}; {span}")
    others = sorted(relation.accepts - set(relation.givens))
    if others:
        lines.append(f"  also takes {', '.join(f'{n} ({QUANTITIES[n].term})' for n in others)} instead")
    lines += ["", "Assumes:", *(f"  {a}" for a in relation.assumptions)]
    lines += ["Sources:", *(f"  {s}" for s in relation.sources)]
    return "\n".join(lines)
