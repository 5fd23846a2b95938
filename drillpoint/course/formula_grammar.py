"""The grammar of typed formulas, and how its parts are put together; `formula` is the way in.

Numbers, the names of the task, a few functions, and nothing else. What could be read in two ways is refused here.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from functools import cache
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from attrs import evolve, frozen

from drillpoint.course.numeral import MOST_DIGITS
from drillpoint.course.typed import ReadingError

if TYPE_CHECKING:
    from lark import Lark, Token

MOST_NODES = 120

Values = Mapping[str, float]
Evaluate = Callable[[Values], float]

_GRAMMAR = r"""
?start: sum
?sum: product | sum "+" product -> add | sum "-" product -> subtract
?product: signed | product _TIMES signed -> multiply | product _OVER signed -> divide
?signed: run | "-" signed -> negative | "+" signed
?run: powered | run powered -> side_by_side
?powered: base | base _RAISE exponent -> power | base SUPERSCRIPT -> superscript
?exponent: base | "-" exponent -> negative | base _RAISE exponent -> power
?base: NUMBER "°"? -> number | NAME -> name | "(" sum ")" -> brackets
     | FUNCTION "(" sum ")" -> call | FUNCTION small "(" sum ")" -> call_to_a_power
     | FUNCTION simple -> bare | FUNCTION small simple -> bare_to_a_power
?simple: NUMBER "°"? -> number | NAME -> name
?small: _RAISE NUMBER -> number | SUPERSCRIPT -> number
_TIMES: "*" | "·" | "×" | "⋅"
_OVER: "/" | "÷"
_RAISE: "^" | "**"
SUPERSCRIPT: "²" | "³"
NUMBER: /[0-9]+([.,][0-9]+)?|[.,][0-9]+/
FUNCTION.2: /(arcsin|arccos|arctan|asin|acos|atan|sin|cos|tan|cot|sqrt|abs)(?![A-Za-z_])|√/i
NAME: /[A-Za-zα-ωΑ-Ω_][A-Za-z0-9α-ωΑ-Ω_]*/
%ignore " "
"""

_FUNCTIONS: Mapping[str, Callable[[float], float]] = MappingProxyType(
    {
        "sin": lambda x: math.sin(math.radians(x)),
        "cos": lambda x: math.cos(math.radians(x)),
        "tan": lambda x: math.tan(math.radians(x)),
        "cot": lambda x: 1 / math.tan(math.radians(x)),
        "sqrt": math.sqrt,
        "abs": abs,
        "asin": lambda x: math.degrees(math.asin(x)),
        "acos": lambda x: math.degrees(math.acos(x)),
        "atan": lambda x: math.degrees(math.atan(x)),
    }
)
_OTHER_SPELLINGS = MappingProxyType({"√": "sqrt", "arcsin": "asin", "arccos": "acos", "arctan": "atan"})
GREEK = MappingProxyType({"alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "kappa": "κ", "lambda": "λ",
                           "omega": "ω", "psi": "ψ", "eta": "η", "rho": "ρ", "nu": "ν", "pi": "π"})  # fmt: skip
_SUM, _PRODUCT, _POWER, _ATOM = range(4)


def examples_in(names: tuple[str, ...]) -> tuple[str, ...]:
    """Show how formulas are typed, in the task's own names but never in the shape of an answer."""
    a, b = (names * 2)[:2] if names else ("a", "b")
    return (f"2*{a} + 3*{b}", f"sqrt({a}^2 + 1)", f"sin({b})/(1 + {a})")


@frozen
class Node:
    """One part of a formula: how to compute it, how to write it, and what makes it ambiguous beside others."""

    evaluate: Evaluate
    text: str
    rank: int
    start: int
    number: bool = False
    """Starts with a plain number."""
    bare: bool = False
    """Ends with a function whose argument stands without brackets."""
    bare_number: bool = False
    parts: int = 1


@cache
def parser() -> Lark:
    from lark import Lark

    return Lark(_GRAMMAR, parser="lalr", propagate_positions=True, maybe_placeholders=False)


class FormulaBuilder:
    """Builds nodes from the bottom up and refuses what has two readings."""

    def __init__(self, text: str, names: tuple[str, ...]) -> None:
        self.text = text
        self.names = names
        self.used: set[str] = set()
        self.nodes = 0

    def transform(self, tree: Any) -> Node:
        if not hasattr(tree, "data"):
            raise TypeError(f"unexpected leaf {tree!r}")
        parts = [child if not hasattr(child, "data") else self.transform(child) for child in tree.children]
        self.nodes += 1
        if self.nodes > MOST_NODES:
            raise self.refuse(f"This formula has more than {MOST_NODES} parts.", tree.meta.start_pos)
        node: Node = getattr(self, str(tree.data))(*parts)
        return node

    def refuse(self, reason: str, place: int) -> ReadingError:
        return ReadingError(reason, self.text, place, examples_in(self.names))

    def number(self, token: Token) -> Node:
        place = token.start_pos or 0
        typed = {"²": "2", "³": "3"}.get(str(token), str(token))
        if len(typed) > MOST_DIGITS + 1:
            raise self.refuse(f"This number has more than {MOST_DIGITS} digits.", place)
        if re.fullmatch(r"[1-9][0-9]{0,2},[0-9]{3}", typed):
            raise self.refuse("The comma can be read in two ways; write a decimal point.", place + typed.index(","))
        value = float(typed.replace(",", "."))
        return Node(lambda values: value, typed.replace(",", "."), _ATOM, place, number=True)

    def name(self, token: Token) -> Node:
        typed, place = str(token), token.start_pos or 0
        name = self._meant(typed)
        if name == "π":
            return Node(lambda values: math.pi, "π", _ATOM, place)
        if name is None:
            allowed = ", ".join(self.names) or "none"
            raise self.refuse(f"“{typed}” is not a name in this task (names: {allowed}); products need a *.", place)
        self.used.add(name)
        return Node(lambda values: values[name], name, _ATOM, place)

    def _meant(self, typed: str) -> str | None:
        if typed in self.names:
            return typed
        if (greek := GREEK.get(typed.lower())) is not None and (greek in self.names or greek == "π"):
            return greek
        if typed == "π":
            return "π"
        alike = [name for name in self.names if name.casefold() == typed.casefold()]
        return alike[0] if len(alike) == 1 else None

    def brackets(self, inside: Node) -> Node:
        return Node(inside.evaluate, f"({inside.text})" if inside.rank < _ATOM else inside.text, _ATOM, inside.start)

    def add(self, a: Node, b: Node) -> Node:
        return Node(lambda v: a.evaluate(v) + b.evaluate(v), f"{a.text} + {b.text}", _SUM, a.start, bare=b.bare)

    def subtract(self, a: Node, b: Node) -> Node:
        right = f"({b.text})" if b.rank == _SUM else b.text
        return Node(lambda v: a.evaluate(v) - b.evaluate(v), f"{a.text} − {right}", _SUM, a.start, bare=b.bare)

    def negative(self, a: Node) -> Node:
        return Node(lambda v: -a.evaluate(v), f"−{_in(a, _PRODUCT)}", _SUM, a.start, bare=a.bare)

    def multiply(self, a: Node, b: Node) -> Node:
        text = f"{_in(a, _PRODUCT)}·{_in(b, _PRODUCT)}"
        return Node(lambda v: a.evaluate(v) * b.evaluate(v), text, _PRODUCT, a.start, a.number, b.bare)

    def divide(self, a: Node, b: Node) -> Node:
        if b.parts > 1:
            raise self.refuse("What is divided by what? Put brackets after the /, or a * between.", b.start)
        if a.bare and b.number:
            raise self.refuse("Is the angle divided, or the function? Put brackets after the function.", b.start)
        text = f"{_in(a, _PRODUCT)}/{_in(b, _POWER)}"
        return Node(lambda v: a.evaluate(v) / b.evaluate(v), text, _PRODUCT, a.start, a.number, b.bare)

    def side_by_side(self, a: Node, b: Node) -> Node:
        if b.number:
            raise self.refuse("A sign is missing between these two.", b.start)
        if a.bare_number:
            raise self.refuse("How much belongs to the function? Put brackets after it.", b.start)
        return evolve(self.multiply(a, b), bare_number=b.bare_number, parts=a.parts + b.parts)

    def power(self, a: Node, b: Node) -> Node:
        if a.bare:
            raise self.refuse("Is the angle raised, or the function? Put brackets after the function.", a.start)
        text = f"{_in(a, _ATOM)}^{_in(b, _ATOM)}"
        return Node(lambda v: math.pow(a.evaluate(v), b.evaluate(v)), text, _POWER, a.start, a.number)

    def superscript(self, a: Node, sign: Token) -> Node:
        return self.power(a, self.number(sign))

    def call(self, function: Token, inside: Node) -> Node:
        key = str(function).lower()
        key = _OTHER_SPELLINGS.get(key, key)
        apply = _FUNCTIONS[key]
        return Node(lambda v: apply(inside.evaluate(v)), f"{key}({inside.text})", _ATOM, function.start_pos or 0)

    def call_to_a_power(self, function: Token, small: Node, inside: Node) -> Node:
        return self.power(self.call(function, inside), small)

    def bare(self, function: Token, inside: Node) -> Node:
        called = self.call(function, inside)
        return Node(called.evaluate, called.text, _ATOM, called.start, bare=True, bare_number=inside.number)

    def bare_to_a_power(self, function: Token, small: Node, inside: Node) -> Node:
        raised = self.call_to_a_power(function, small, inside)
        return Node(raised.evaluate, raised.text, _POWER, raised.start, bare=True, bare_number=inside.number)


def _in(node: Node, rank: int) -> str:
    """Write a node with brackets if its own sign binds less than its surroundings need."""
    return node.text if node.rank >= rank else f"({node.text})"
