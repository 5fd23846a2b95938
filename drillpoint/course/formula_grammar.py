"""The grammar of typed formulas, and how its parts are put together; `formula` is the way in.

Numbers, the names of the task, a few functions, and nothing else. What could be read in two ways is refused here.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from functools import cache
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from attrs import evolve, frozen

from drillpoint.course.formula_names import DEGREE, FUNCTION, NAME, PI, listed, meant
from drillpoint.course.numeral import MOST_DIGITS, two_readings
from drillpoint.course.typed import ReadingError

if TYPE_CHECKING:
    from lark import Lark, Token

MOST_NODES = 120
# Chains of signs and powers nest without brackets.
DEEPEST = 60
MOST_RAISED = 4

Values = Mapping[str, float]
Evaluate = Callable[[Values], float]

_GRAMMAR = rf"""
?start: sum
?sum: product | sum "+" product -> add | sum "-" product -> subtract
?product: signed | product _TIMES signed -> multiply | product _OVER signed -> divide
?signed: run | "-" signed -> negative | "+" signed
?run: powered | run powered -> side_by_side
?powered: base | base _RAISE exponent -> power | base SUPERSCRIPT -> superscript
?exponent: base | "-" exponent -> negative | base _RAISE exponent -> power
?base: NUMBER DEGREE? -> number | NAME -> name | "(" sum ")" -> brackets
     | FUNCTION "(" sum ")" -> call | FUNCTION small "(" sum ")" -> call_to_a_power
     | FUNCTION simple -> bare | FUNCTION small simple -> bare_to_a_power
?simple: NUMBER DEGREE? -> number | NAME -> name
?small: _RAISE NUMBER -> number | SUPERSCRIPT -> small_superscript | _RAISE "-" NUMBER -> inverse
_TIMES: "*" | "·" | "×" | "⋅"
_OVER: "/" | "÷"
_RAISE: "^" | "**"
SUPERSCRIPT: /⁻?[⁰¹²³⁴-⁹]+/
NUMBER: /([0-9]+([.,][0-9]+|\.(?![0-9]))?|[.,][0-9]+)([eE][+-]?[0-9]+)?/
DEGREE.2: /{DEGREE}/
FUNCTION.2: /{FUNCTION}/i
NAME: /{NAME}/
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
        "ln": math.log,
        "log10": math.log10,
        "exp": math.exp,
    }
)
USUAL_FUNCTIONS = ("sin", "cos", "tan", "cot", "asin", "acos", "atan", "sqrt", "abs")
KNOWN_FUNCTIONS = frozenset(_FUNCTIONS)
_OTHER_SPELLINGS = MappingProxyType({"√": "sqrt", "arcsin": "asin", "arccos": "acos", "arctan": "atan"})
_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻", "0123456789-")
_SUM, _PRODUCT, _POWER, _ATOM = range(4)


_INVERSE = "Is this the inverse function, or one over it? Write atan(…) or 1/tan(…)."


def examples_in(names: tuple[str, ...], functions: tuple[str, ...] = USUAL_FUNCTIONS) -> tuple[str, ...]:
    """Show how formulas are typed, in the task's own names but never in the shape of an answer."""
    a, b = (names * 2)[:2] if names else ("a", "b")
    called = [f"{name}({b})/(1 + {a})" for name in ("sin", *functions) if name in functions][:1]
    return (f"2*{a} + 3*{b}", f"({a}^2 + 1)/2", *called)


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

    def __init__(self, text: str, names: tuple[str, ...], functions: tuple[str, ...]) -> None:
        self.text = text
        self.names = names
        self.functions = functions
        self.used: set[str] = set()

    def build(self, tree: Any) -> Node:
        """Turn the parser's tree into a formula that can be worked out."""
        self._check_size(tree)
        return self._build(tree)

    def _check_size(self, tree: Any) -> None:
        """Count parts and depth before anything is done that needs room for each of them."""
        waiting, parts, deepest = [(tree, 1)], 0, 0
        while waiting:
            part, depth = waiting.pop()
            parts, deepest = parts + 1, max(deepest, depth)
            waiting.extend((child, depth + 1) for child in part.children if hasattr(child, "data"))
        if parts > MOST_NODES:
            raise self.refuse(f"This formula has more than {MOST_NODES} parts.", tree.meta.start_pos)
        if deepest > DEEPEST:
            raise self.refuse(f"This formula is nested more than {DEEPEST} deep.", tree.meta.start_pos)

    def _build(self, tree: Any) -> Node:
        parts = [self._build(child) if hasattr(child, "data") else child for child in tree.children]
        node: Node = getattr(self, str(tree.data))(*parts)
        return node

    def refuse(self, reason: str, place: int) -> ReadingError:
        return ReadingError(reason, self.text, place, examples_in(self.names, self.functions))

    def number(self, token: Token, _degree: Token | None = None) -> Node:
        typed, place = str(token), token.start_pos or 0
        mantissa, exponent, _ = typed.replace("E", "e").partition("e")
        if sum(c.isdigit() for c in typed) > MOST_DIGITS:
            raise self.refuse(f"This number has more than {MOST_DIGITS} digits.", place)
        if reason := two_readings(mantissa):
            raise self.refuse(reason, place + mantissa.index(","))
        if exponent and any(name in ("e", "E") for name in self.names):
            raise self.refuse("Is e a power of ten here, or a name? Write *10^ or put a * before e.", place)
        value = float(typed.replace(",", "."))
        if math.isinf(value):
            raise self.refuse("This number is too large.", place)
        if value == 0 and mantissa.strip("0.,"):
            raise self.refuse("This number is too small to be told from 0.", place)
        return Node(lambda values: value, typed.replace(",", ".").rstrip("."), _ATOM, place, number=True)

    def name(self, token: Token) -> Node:
        typed, place = str(token), token.start_pos or 0
        name = meant(typed, self.names)
        if name is None:
            raise self.refuse(self._not_a_name(typed, place + len(typed)), place)
        if name == PI:
            return Node(lambda values: math.pi, PI, _ATOM, place)
        self.used.add(name)
        return Node(lambda values: float(values[name]), name, _ATOM, place)

    def _not_a_name(self, typed: str, end: int) -> str:
        if typed.lower() in ("rad", "radian", "radians"):
            return "Angles are in degrees here: write them in degrees."
        names = listed(self.names)
        if self.text[end:].lstrip().startswith(("(", "[")):
            functions = listed(self.functions)
            return (
                f"“{typed}” is not a name in this task (names: {names}) nor a function of it (functions: {functions})."
            )
        return f"“{typed}” is not a name in this task (names: {names}); products need a *."

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
        return self.power(a, self._raised(sign))

    def small_superscript(self, sign: Token) -> Node:
        if str(sign).startswith("⁻"):
            raise self.refuse(_INVERSE, sign.start_pos or 0)
        return self._raised(sign)

    def inverse(self, number: Token) -> Node:
        raise self.refuse(_INVERSE, number.start_pos or 0)

    def _raised(self, sign: Token) -> Node:
        typed, place = str(sign).translate(_RAISED), sign.start_pos or 0
        if len(typed) > MOST_RAISED:
            raise self.refuse(f"This power has more than {MOST_RAISED} signs.", place)
        value = float(typed)
        return Node(lambda values: value, typed, _ATOM, place, number=True)

    def call(self, function: Token, inside: Node) -> Node:
        place = function.start_pos or 0
        key = str(function).lower()
        key = _OTHER_SPELLINGS.get(key, key)
        if key not in self.functions:
            raise self.refuse(f"“{key}” is not a function of this task (functions: {listed(self.functions)}).", place)
        apply = _FUNCTIONS[key]
        return Node(lambda v: apply(inside.evaluate(v)), f"{key}({inside.text})", _ATOM, place)

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
