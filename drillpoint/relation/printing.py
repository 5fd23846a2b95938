"""Formulas as people write them, in plain text and in LaTeX.

Both printers ask a function for the spelling of each symbol, so the same code prints `sin κ`, `sin 59°` and the
template `sin ⟦kappa⟧` from which the browser makes its worked lines.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

import sympy
from sympy.printing.latex import LatexPrinter
from sympy.printing.str import StrPrinter

from drillpoint.quantities import plain_number
from drillpoint.relation.template import placeholder

Spelling = Callable[[str], str]


def _positive_first(terms: list[Any]) -> list[Any]:
    # A reader expects "a - b", where sympy's own order may give "-b + a".
    return sorted(terms, key=lambda term: term.could_extract_minus_sign())


# Named so that it is sorted to the front: 2πR, not 2Rπ.
RATIO_OF_CIRCLE = sympy.Symbol("#π")


def with_decimals(expression: Any) -> Any:
    """The expression with decimal fractions as such: nobody writes 4/5 for an exponent of 0.8."""

    def is_decimal(number: Any) -> bool:
        rest = number.q if number.is_Rational and number.q % 5 == 0 else 0
        while rest and rest % 5 == 0:
            rest //= 5
        return rest > 0 and rest & (rest - 1) == 0

    return sympy.sympify(expression, strict=True).replace(is_decimal, lambda number: sympy.Float(number, 15))


def as_written(expression: Any) -> Any:
    """The expression with decimal fractions, and with π told from half a turn.

    Standing alone among angles it is half a turn; as a factor, or below the line, it is the number, and
    `RATIO_OF_CIRCLE` stands for it.
    """

    def multiplies(product: Any) -> bool:
        below = sympy.denom(product) if product.is_Mul else product
        return product.is_Mul and product.has(sympy.pi) and bool(product.free_symbols or below.has(sympy.pi))

    return with_decimals(expression).replace(multiplies, _with_number_pi)


def _with_number_pi(product: Any) -> Any:
    powers = (sympy.pi**k for k in (1, -1, 2, -2))
    swap = {p: p.subs(sympy.pi, RATIO_OF_CIRCLE) for p in powers}
    return sympy.Mul(*(swap.get(factor, factor) for factor in product.args))


def in_degrees(product: Any) -> str:
    """A part of half a turn in degrees: "90" for π/2; nothing for any other product."""
    share = product / sympy.pi
    return plain_number(float(share * 180), 4) if share.is_Rational else ""


class _Text(StrPrinter):
    def __init__(self, spelling: Spelling) -> None:
        super().__init__()
        self.spelling = spelling

    def _as_ordered_terms(self, expr: Any, order: Any = None) -> list[Any]:
        return _positive_first(super()._as_ordered_terms(expr, order=order))

    def _print_Symbol(self, expr: Any) -> str:
        return "π" if expr == RATIO_OF_CIRCLE else self.spelling(expr.name)

    def _print_Pi(self, expr: Any) -> str:
        return "180°"

    def _print_Mul(self, expr: Any) -> str:
        turn = in_degrees(expr)
        return f"{turn}°" if turn else str(super()._print_Mul(expr))

    def _print_Float(self, expr: Any) -> str:
        return plain_number(float(expr), 12)

    def _print_Pow(self, expr: Any, rational: bool = False) -> str:
        base, power = expr.args
        if power == sympy.Rational(1, 2):
            return f"√({self._print(base)})"
        inner = self.parenthesize(base, 60)
        if power == 2:
            return f"{inner}²"
        if power == -1:
            return f"1/{inner}"
        return f"{inner}^{self.parenthesize(power, 60)}"

    def _print_Function(self, expr: Any) -> str:
        name, argument = expr.func.__name__, self._print(expr.args[0])
        simple = expr.args[0].is_Symbol or expr.args[0].is_Integer
        return f"{name} {argument}" if simple else f"{name}({argument})"

    def _print_atan2(self, expr: Any) -> str:
        over, under = (self.parenthesize(a, 50) for a in expr.args)
        return f"atan({over}/{under})"

    def _print_Abs(self, expr: Any) -> str:
        return f"|{self._print(expr.args[0])}|"


class _Latex(LatexPrinter):
    def __init__(self, spelling: Spelling) -> None:
        # Letters may stand side by side; numbers may not.
        times = "dot" if spelling is placeholder else None
        super().__init__({"inv_trig_style": "full", "mul_symbol": times})
        self.spelling = spelling

    def _as_ordered_terms(self, expr: Any, order: Any = None) -> list[Any]:
        return _positive_first(super()._as_ordered_terms(expr, order=order))

    def _print_Symbol(self, expr: Any, style: str = "plain") -> str:
        return r"\pi" if expr == RATIO_OF_CIRCLE else self.spelling(expr.name)

    def _print(self, expr: Any, **kwargs: Any) -> str:
        # Sympy lets pi print itself, before any method of the printer is asked.
        return r"180^{\circ}" if expr is sympy.pi else super()._print(expr, **kwargs)

    def _print_Mul(self, expr: Any) -> str:
        turn = in_degrees(expr)
        return rf"{turn}^{{\circ}}" if turn else str(super()._print_Mul(expr))

    def _print_Float(self, expr: Any) -> str:
        return plain_number(float(expr), 12)

    def _print_atan2(self, expr: Any, exp: Any = None) -> str:
        over, under = (self._print(a) for a in expr.args)
        return rf"\arctan\left(\frac{{{over}}}{{{under}}}\right)"


def as_text(expression: Any, spelling: Spelling) -> str:
    """The expression in one line of plain text: "(√(R² − t²) − t·cot δ)/sin κ"."""
    printed = str(_Text(spelling).doprint(as_written(expression)))
    # "tan κ/2" could be read as the tangent of half of κ.
    printed = re.sub(r"\b(sin|cos|tan|cot) ([^\s*()/]+)/(?=\d)", r"\1(\2)/", printed)
    return printed.replace("*", "·").replace(" - ", " − ").replace("(-", "(−")


def as_latex(expression: Any, spelling: Spelling) -> str:
    """The expression in LaTeX, fractions built up."""
    return str(_Latex(spelling).doprint(as_written(expression)))
