"""Reading a formula the way people type it: D/(2 tan κ), (D/2)*cot(kappa), √(D² − W²)/2.

The grammar knows numbers, the names of the task, a few functions and nothing else. Angles are in degrees, for
functions and for their inverses. Nothing typed is evaluated as code; everything is computed with floats.
What could be read in two ways (D/2 tan κ, sin 2κ, sin κ/2) is refused, with the place.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable, Mapping
from functools import cache, lru_cache
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from attrs import field, frozen

from drillpoint.course.reading import LOOK_ALIKES, MOST_DIGITS, ReadingError
from drillpoint.errors import LearnerError

if TYPE_CHECKING:
    from lark import Lark, Token

LONGEST_FORMULA = 200
DEEPEST_BRACKETS = 20
MOST_NODES = 120
SAMPLES = 8
SAME_WITHIN = 1e-9

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
_GREEK = MappingProxyType({"alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "kappa": "κ", "lambda": "λ",
                           "omega": "ω", "psi": "ψ", "eta": "η", "rho": "ρ", "nu": "ν", "pi": "π"})  # fmt: skip
_BRACKETS = str.maketrans({"[": "(", "]": ")"})
_SUM, _PRODUCT, _POWER, _ATOM = range(4)


@frozen
class Formula:
    """A typed formula as it was read. Call it with a value for each name; angles in degrees."""

    typed: str
    echo: str
    """The formula with every bracket and every multiplication written out."""
    names: frozenset[str]
    _evaluate: Evaluate = field(repr=False)

    def __call__(self, **values: float) -> float:
        """Work the formula out. LearnerError if a name is missing or the result is not a finite real number."""
        missing = sorted(self.names - values.keys())
        if missing:
            raise LearnerError(f"{self.echo} needs a value for {', '.join(missing)}")
        result = self.at(values)
        if not math.isfinite(result):
            given = ", ".join(f"{name} = {value:g}" for name, value in values.items())
            raise LearnerError(f"{self.echo} has no finite value for {given or 'any input'}")
        return result

    def at(self, values: Values) -> float:
        """Work the formula out; nan where it has no finite real value."""
        try:
            result = self._evaluate(values)
        except (ArithmeticError, ValueError):
            return math.nan
        return result if math.isfinite(result) else math.nan


def read_formula(text: str, names: Iterable[str], *, result: str = "") -> Formula:
    """Read a formula in `names` (Greek letters may be spelt: kappa for κ), or refuse it with ReadingError.

    `result` is the symbol asked for; `h = ...` in front of the formula is then accepted.
    Refused: any other name or function, more than 200 characters, 20 nested brackets or 120 parts, anything with
    two readings, and a formula of numbers only that has no finite value.
    """
    allowed = tuple(names)
    if not isinstance(text, str):
        raise ReadingError(f"A formula is typed as text, not as {type(text).__name__}.", "", 0, _examples(()))
    if len(text) > LONGEST_FORMULA:
        raise ReadingError(f"This is longer than {LONGEST_FORMULA} characters.", text, LONGEST_FORMULA, _examples(allowed))
    return _read(text, allowed, result)


def same_formula(first: Formula | Evaluate, second: Formula | Evaluate, domain: Mapping[str, tuple[float, float]]) -> bool:
    """Say whether two formulas agree inside `domain` (name -> lowest and highest value), by sampling."""
    points = sample_points(tuple(sorted((name, *limits) for name, limits in domain.items())))
    return same_values(values_at(first, points), values_at(second, points))


def values_at(formula: Formula | Evaluate, points: Iterable[Values]) -> tuple[float, ...]:
    """Work a formula out at each point; nan where it has no finite value."""
    evaluate = formula.at if isinstance(formula, Formula) else formula
    return tuple(evaluate(point) for point in points)


def same_values(first: tuple[float, ...], second: tuple[float, ...]) -> bool:
    """Say whether two lists of sampled values agree. Points where neither has a value say nothing."""
    compared = 0
    for a, b in zip(first, second, strict=True):
        if math.isnan(a) and math.isnan(b):
            continue
        if not math.isclose(a, b, rel_tol=SAME_WITHIN, abs_tol=1e-12):
            return False
        compared += 1
    return 2 * compared >= len(first)


@lru_cache(maxsize=256)
def sample_points(domain: tuple[tuple[str, float, float], ...]) -> tuple[Values, ...]:
    """Spread eight points through a domain, the same on every machine: multiples of square roots of primes."""
    roots = [math.sqrt(prime) for prime in (2, 3, 5, 7, 11, 13, 17, 19)]
    return tuple(
        MappingProxyType(
            {name: low + (high - low) * ((k * root) % 1.0) for (name, low, high), root in zip(domain, roots, strict=False)}
        )
        for k in range(1, SAMPLES + 1)
    )


def _examples(names: tuple[str, ...]) -> tuple[str, ...]:
    """Show how formulas are typed, in the task's own names but never in the shape of an answer."""
    a, b = (names * 2)[:2] if names else ("a", "b")
    return (f"2*{a} + 3*{b}", f"sqrt({a}^2 + 1)", f"sin({b})/(1 + {a})")


# A class types the same few formulas over and over; the bound keeps memory flat.
@lru_cache(maxsize=2048)
def _read(text: str, names: tuple[str, ...], result: str) -> Formula:
    from lark.exceptions import UnexpectedCharacters, UnexpectedEOF, UnexpectedToken, VisitError

    examples = _examples(names)
    plain = _right_hand_side(text.translate(LOOK_ALIKES).translate(_BRACKETS), result)
    _check_brackets(plain, text, examples)
    reader = _Reader(text, names)
    try:
        node = reader.transform(_parser().parse(plain))
    except UnexpectedCharacters as error:
        place = error.pos_in_stream
        raise ReadingError(_unexpected(plain[place]), text, place, examples) from None
    except (UnexpectedToken, UnexpectedEOF) as error:
        place = error.pos_in_stream if isinstance(error.pos_in_stream, int) else len(plain)
        if isinstance(error, UnexpectedToken) and error.token.type == "$END":
            place = len(plain.rstrip())
        reason = "The formula ends too early." if place >= len(plain.rstrip()) else "The formula cannot go on like this here."
        raise ReadingError(reason if plain.strip() else "There is no formula here.", text, place, examples) from None
    except VisitError as error:
        if isinstance(error.orig_exc, ReadingError):
            raise error.orig_exc from None
        raise
    formula = Formula(text, node.text, frozenset(reader.used), node.evaluate)
    if not reader.used and math.isnan(formula.at({})):
        raise ReadingError("This has no finite value.", text, 0, examples)
    return formula


def _right_hand_side(plain: str, result: str) -> str:
    """Blank out `h =` in front, keeping every position."""
    match = re.match(r" *([^\W\d]\w*) *=", plain)
    if result and match and _GREEK.get(match.group(1), match.group(1)) == result:
        return " " * match.end() + plain[match.end() :]
    return plain


def _check_brackets(plain: str, text: str, examples: tuple[str, ...]) -> None:
    opened: list[int] = []
    for place, sign in enumerate(plain):
        if sign == "(":
            opened.append(place)
            if len(opened) > DEEPEST_BRACKETS:
                raise ReadingError(f"More than {DEEPEST_BRACKETS} brackets are nested here.", text, place, examples)
        elif sign == ")":
            if not opened:
                raise ReadingError("This bracket was never opened.", text, place, examples)
            opened.pop()
    if opened:
        raise ReadingError("This bracket is never closed.", text, opened[-1], examples)


def _unexpected(sign: str) -> str:
    return "Only the right-hand side of the equation is asked for." if sign == "=" else "This sign cannot be read in a formula."


@frozen
class _Node:
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
def _parser() -> Lark:
    from lark import Lark

    return Lark(_GRAMMAR, parser="lalr", propagate_positions=True, maybe_placeholders=False)


class _Reader:
    """Builds nodes from the bottom up and refuses what has two readings."""

    def __init__(self, text: str, names: tuple[str, ...]) -> None:
        self.text = text
        self.names = names
        self.used: set[str] = set()
        self.nodes = 0

    def transform(self, tree: Any) -> _Node:
        if not hasattr(tree, "data"):
            raise TypeError(f"unexpected leaf {tree!r}")
        parts = [child if not hasattr(child, "data") else self.transform(child) for child in tree.children]
        self.nodes += 1
        if self.nodes > MOST_NODES:
            raise self.refuse(f"This formula has more than {MOST_NODES} parts.", tree.meta.start_pos)
        node: _Node = getattr(self, str(tree.data))(*parts)
        return node

    def refuse(self, reason: str, place: int) -> ReadingError:
        return ReadingError(reason, self.text, place, _examples(self.names))

    def number(self, token: Token) -> _Node:
        place = token.start_pos or 0
        typed = {"²": "2", "³": "3"}.get(str(token), str(token))
        if len(typed) > MOST_DIGITS + 1:
            raise self.refuse(f"This number has more than {MOST_DIGITS} digits.", place)
        if re.fullmatch(r"[1-9][0-9]{0,2},[0-9]{3}", typed):
            raise self.refuse("The comma can be read in two ways; write a decimal point.", place + typed.index(","))
        value = float(typed.replace(",", "."))
        return _Node(lambda values: value, typed.replace(",", "."), _ATOM, place, number=True)

    def name(self, token: Token) -> _Node:
        typed, place = str(token), token.start_pos or 0
        name = self._meant(typed)
        if name == "π":
            return _Node(lambda values: math.pi, "π", _ATOM, place)
        if name is None:
            allowed = ", ".join(self.names) or "none"
            raise self.refuse(f"“{typed}” is not a name in this task (names: {allowed}); products need a *.", place)
        self.used.add(name)
        return _Node(lambda values: values[name], name, _ATOM, place)

    def _meant(self, typed: str) -> str | None:
        if typed in self.names:
            return typed
        if (greek := _GREEK.get(typed.lower())) is not None and (greek in self.names or greek == "π"):
            return greek
        if typed == "π":
            return "π"
        alike = [name for name in self.names if name.casefold() == typed.casefold()]
        return alike[0] if len(alike) == 1 else None

    def brackets(self, inside: _Node) -> _Node:
        return _Node(inside.evaluate, f"({inside.text})" if inside.rank < _ATOM else inside.text, _ATOM, inside.start)

    def add(self, a: _Node, b: _Node) -> _Node:
        return _Node(lambda v: a.evaluate(v) + b.evaluate(v), f"{a.text} + {b.text}", _SUM, a.start, bare=b.bare)

    def subtract(self, a: _Node, b: _Node) -> _Node:
        right = f"({b.text})" if b.rank == _SUM else b.text
        return _Node(lambda v: a.evaluate(v) - b.evaluate(v), f"{a.text} − {right}", _SUM, a.start, bare=b.bare)

    def negative(self, a: _Node) -> _Node:
        return _Node(lambda v: -a.evaluate(v), f"−{_in(a, _PRODUCT)}", _SUM, a.start, bare=a.bare)

    def multiply(self, a: _Node, b: _Node) -> _Node:
        return _Node(lambda v: a.evaluate(v) * b.evaluate(v), f"{_in(a, _PRODUCT)}·{_in(b, _PRODUCT)}", _PRODUCT, a.start,
                     a.number, b.bare)  # fmt: skip

    def divide(self, a: _Node, b: _Node) -> _Node:
        if b.parts > 1:
            raise self.refuse("What is divided by what? Put brackets after the /, or a * between.", b.start)
        if a.bare and b.number:
            raise self.refuse("Is the angle divided, or the function? Put brackets after the function.", b.start)
        return _Node(lambda v: a.evaluate(v) / b.evaluate(v), f"{_in(a, _PRODUCT)}/{_in(b, _POWER)}", _PRODUCT, a.start,
                     a.number, b.bare)  # fmt: skip

    def side_by_side(self, a: _Node, b: _Node) -> _Node:
        if b.number:
            raise self.refuse("A sign is missing between these two.", b.start)
        if a.bare_number:
            raise self.refuse("How much belongs to the function? Put brackets after it.", b.start)
        product = self.multiply(a, b)
        return _Node(product.evaluate, product.text, _PRODUCT, a.start, a.number, b.bare, b.bare_number, a.parts + b.parts)

    def power(self, a: _Node, b: _Node) -> _Node:
        if a.bare:
            raise self.refuse("Is the angle raised, or the function? Put brackets after the function.", a.start)
        return _Node(lambda v: math.pow(a.evaluate(v), b.evaluate(v)), f"{_in(a, _ATOM)}^{_in(b, _ATOM)}", _POWER, a.start,
                     a.number)  # fmt: skip

    def superscript(self, a: _Node, sign: Token) -> _Node:
        return self.power(a, self.number(sign))

    def call(self, function: Token, inside: _Node) -> _Node:
        key = str(function).lower()
        key = _OTHER_SPELLINGS.get(key, key)
        apply = _FUNCTIONS[key]
        return _Node(lambda v: apply(inside.evaluate(v)), f"{key}({inside.text})", _ATOM, function.start_pos or 0)

    def call_to_a_power(self, function: Token, small: _Node, inside: _Node) -> _Node:
        return self.power(self.call(function, inside), small)

    def bare(self, function: Token, inside: _Node) -> _Node:
        called = self.call(function, inside)
        return _Node(called.evaluate, called.text, _ATOM, called.start, bare=True, bare_number=inside.number)

    def bare_to_a_power(self, function: Token, small: _Node, inside: _Node) -> _Node:
        raised = self.call_to_a_power(function, small, inside)
        return _Node(raised.evaluate, raised.text, _POWER, raised.start, bare=True, bare_number=inside.number)


def _in(node: _Node, rank: int) -> str:
    """Write a node with brackets if its own sign binds less than its surroundings need."""
    return node.text if node.rank >= rank else f"({node.text})"
