"""A letter of a drawing's own: a number worked out once from the quantities, that many coordinates then use.

Written out in every coordinate, a number that needs several steps would make the algebra slow and the editions long.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import sympy as sp


class Letter(sp.Dummy):  # type: ignore[misc, unused-ignore]
    """A real number with a definition in quantities and other letters. No two are the same, whatever their names."""

    definition: Any


def letter(name: str, definition: Any) -> Letter:
    """A letter that stands for an expression."""
    made = Letter(name, real=True)
    made.definition = sp.sympify(definition, strict=True)
    return made


def letters_in(expressions: Iterable[Any]) -> list[Letter]:
    """Every letter that the expressions need, each after those that its own definition needs."""
    found: list[Letter] = []
    for expression in expressions:
        used = [s for s in getattr(expression, "free_symbols", ()) if isinstance(s, Letter) and s not in found]
        for one in sorted(used, key=lambda one: one.dummy_index):
            found += [each for each in (*letters_in([one.definition]), one) if each not in found]
    return found


def quantities_in(expressions: Iterable[Any]) -> set[str]:
    """The names of the quantities that the expressions and their letters depend on."""
    shown = list(expressions)
    definitions = [one.definition for one in letters_in(shown)]
    symbols = {s for e in (*shown, *definitions) for s in getattr(e, "free_symbols", ())}
    return {s.name for s in symbols if not isinstance(s, Letter)}
