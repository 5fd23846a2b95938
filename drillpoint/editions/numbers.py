"""numbers.py and numbers.js: every relation, its partial derivatives, its conditions and its worked-line templates."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

from drillpoint.editions.functions import javascript_function, python_function
from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Relation
from drillpoint.relation.condition import ANY_DRILL, Condition, Together
from drillpoint.relation.printing import Spelling, as_latex, as_text
from drillpoint.relation.symbols import (
    ABBREVIATIONS,
    in_surface_units,
    is_angle,
    latex_letter,
    letter,
    spelled_out,
    symbols,
)
from drillpoint.relation.template import RELATION, placeholder
from drillpoint.relations import BOOK

_HEADER = "Written by `python -m drillpoint.editions` from the book of relations. Do not edit."


def python_edition() -> str:
    """The whole text of generated/numbers.py."""
    parts = [
        f'"""{_HEADER}"""\n',
        f"ABBREVIATIONS = {json.dumps(_arguments_of_letters(), indent=4)}\n",
        f"TEMPLATES = {json.dumps(_templates(), indent=4, ensure_ascii=False)}\n",
    ]
    for name, arguments in _arguments_of_letters().items():
        parts.append(python_function(f"letter__{name}", arguments, _letter(name)))
    for relation in BOOK.values():
        parts.append(python_function(relation.name, relation.givens, relation.surface_expression))
        parts.append(python_function(f"{relation.name}__margins", relation.givens, _margins(relation.conditions)))
        parts.append(python_function(f"{relation.name}__cautions", relation.givens, _margins(relation.cautions)))
        for given in relation.givens:
            slope = relation.surface_expression.diff(symbols().table[given])
            parts.append(python_function(f"{relation.name}__by__{given}", relation.givens, slope))
    return "# ruff: noqa\n" + "\n\n".join(parts)


def javascript_edition() -> str:
    """The whole text of generated/numbers.js: an object `numbers` and no other name."""
    entries = []
    # The browser writes plain text only, so the LaTeX stays behind.
    wanted = ("formula_text", "text", "abbreviations")
    for relation in BOOK.values():
        template = _template(relation)
        conditions, margins = _javascript_conditions(relation)
        value = javascript_function("value", relation.givens, relation.surface_expression)
        margin = javascript_function("margins", relation.givens, margins)
        details = {
            "result": relation.result.name,
            "givens": relation.givens,
            "conditions": conditions,
            **{key: template[key] for key in wanted},
        }
        statement = f"numbers.relations.{relation.name} = {{value: {value}, margins: {margin}, ...{_json(details)}}};\n"
        entries.append(f"{RELATION}{relation.name}\n{statement}")
    letters = [
        f"{json.dumps(name)}: {javascript_function(name, arguments, _letter(name))}"
        for name, arguments in _arguments_of_letters().items()
    ]
    quantities = {
        q.name: {
            "symbol": q.symbol,
            "term": q.term,
            "unit": q.unit,
            "meaning": q.meaning,
            "usual": [q.usual.low, q.usual.high if q.usual.high < 1e9 else None],
            "possible": [q.possible.low, q.possible.high],
            "decimals": q.decimals,
        }
        for q in QUANTITIES.values()
    }
    return (
        f"// {_HEADER}\n"
        "const numbers = {\n"
        f"quantities: {_json(quantities)},\n"
        f"letters: {{{', '.join(letters)}}},\n"
        f"angles: {_json([name for name in (*QUANTITIES, *ABBREVIATIONS) if is_angle(name)])},\n"
        "relations: {},\n"
        "};\n" + "".join(entries)
    )


def _json(data: Any) -> str:
    return json.dumps(data, ensure_ascii=False)


def _letter(name: str) -> Any:
    import sympy

    return in_surface_units(ABBREVIATIONS[name].definition(symbols(), sympy), ABBREVIATIONS[name].is_angle)


def _arguments_of_letters() -> dict[str, list[str]]:
    import sympy

    found = {}
    for name, abbreviation in ABBREVIATIONS.items():
        free = {s.name for s in spelled_out(abbreviation.definition(symbols(), sympy)).free_symbols}
        found[name] = [q for q in QUANTITIES if q in free]
    return found


def _margins(conditions: tuple[Condition, ...]) -> list[Any]:
    import sympy

    return [in_surface_units(c.margin(symbols(), sympy), False) for c in conditions]


def _javascript_conditions(relation: Relation) -> tuple[list[dict[str, Any]], list[Any]]:
    always = [c for c in ANY_DRILL if set(c.names) <= set(relation.givens)]
    table = symbols().table
    both: tuple[Condition | Together, ...] = (*always, *relation.conditions)
    conditions = [{"says": c.says, "allows_zero": c.allows_zero} for c in both]
    return conditions, [*(c.margin(table) for c in always), *_margins(relation.conditions)]


def _templates() -> dict[str, dict[str, Any]]:
    return {relation.name: _template(relation) for relation in BOOK.values()}


def _template(relation: Relation) -> dict[str, Any]:
    import sympy

    left, left_latex = relation.result.symbol, relation.result.latex
    where = []
    for name in relation.abbreviations:
        definition = ABBREVIATIONS[name].definition(symbols(), sympy)
        where.append([_defined(name, definition, as_text, letter), _defined(name, definition, as_latex, latex_letter)])
    return {
        "formula_text": f"{left} = {as_text(relation.expression, letter)}",
        "formula_latex": f"{left_latex} = {as_latex(relation.expression, latex_letter)}",
        "text": as_text(relation.expression, placeholder),
        "latex": as_latex(relation.expression, placeholder),
        "abbreviations": list(relation.abbreviations),
        "where": where,
    }


def _defined(name: str, definition: Any, printed: Callable[[Any, Spelling], str], spelling: Spelling) -> str:
    return (
        f"{spelling(name)} = {printed(definition, spelling)} = {printed(definition, placeholder)} = {placeholder(name)}"
    )
