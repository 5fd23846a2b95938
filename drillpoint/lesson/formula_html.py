"""Formulas in HTML with built-up fractions, from plain tags and inline styles only.

A notebook that was copied to a learner's machine is not trusted yet: its saved outputs are cleaned of MathML, SVG and
style sheets. A page that is exported or printed without network has no typesetting script. Fractions made of spans
survive both. Where even the styles are taken away, the hidden strokes and brackets come back, and the formula reads as
one line of text.
"""

from __future__ import annotations

import html
from collections.abc import Callable
from typing import Any

import sympy
from sympy.core.function import AppliedUndef
from sympy.printing.precedence import PRECEDENCE
from sympy.printing.str import StrPrinter

from drillpoint.quantities import plain_number
from drillpoint.relation.printing import RATIO_OF_CIRCLE, as_written, in_degrees

Spelling = Callable[[str], str]

_BOX = "display:inline-block;vertical-align:middle;text-align:center;margin:0 0.15em;line-height:1.3"
_TOP = "display:block;border-bottom:1px solid;padding:0 0.25em"
_BOTTOM = "display:block;padding:0 0.25em"
_UNSEEN = "font-size:0"
_UNDER_ROOT = "display:inline-block;border-top:1px solid;padding:0 0.1em"


def as_html(expression: Any, spelling: Spelling) -> str:
    """The expression as HTML; `spelling` says how the symbol of a name is written, as plain text."""
    return str(_Html(spelling).doprint(as_written(expression)))


def letter_html(symbol: str) -> str:
    """A letter with its subscript set low: "α_f", "x_c"."""
    head, _, below = html.escape(symbol).partition("_")
    return f"<i>{head}</i>" + (f"<sub>{below}</sub>" if below else "")


def unseen(text: str) -> str:
    """Text that only shows where styles are taken away, and that copying and screen readers get."""
    return f'<span style="{_UNSEEN}">{text}</span>'


class _Html(StrPrinter):
    def __init__(self, spelling: Spelling) -> None:
        super().__init__()
        self.spelling = spelling

    def _as_ordered_terms(self, expr: Any, order: Any = None) -> list[Any]:
        terms = super()._as_ordered_terms(expr, order=order)
        return sorted(terms, key=lambda term: term.could_extract_minus_sign())

    def _print_Symbol(self, expr: Any) -> str:
        return "π" if expr == RATIO_OF_CIRCLE else letter_html(self.spelling(expr.name))

    def _print_Pi(self, expr: Any) -> str:
        return "180°"

    def _print_Float(self, expr: Any) -> str:
        return plain_number(float(expr), 12)

    def _print_Rational(self, expr: Any) -> str:
        return self._fraction(sympy.Integer(expr.p), sympy.Integer(expr.q))

    def _print_Add(self, expr: Any, order: Any = None) -> str:
        shown = ""
        for term in self._as_ordered_terms(expr, order=order):
            minus = term.could_extract_minus_sign()
            size = self.parenthesize(-term if minus else term, PRECEDENCE["Add"] + 1)
            if shown:
                shown += f" {'−' if minus else '+'} {size}"
            else:
                shown = f"−{size}" if minus else size
        return shown

    def _print_Mul(self, expr: Any) -> str:
        if turn := in_degrees(expr):
            return f"{turn}°"
        if expr.could_extract_minus_sign():
            return f"−{self.parenthesize(-expr, PRECEDENCE['Add'] + 1)}"
        over, under = sympy.fraction(expr)
        if under != 1:
            return self._fraction(over, under)
        factors = sorted(expr.args, key=lambda f: (not f.is_number, isinstance(f, sympy.Function), f.sort_key()))
        return "·".join(self.parenthesize(factor, PRECEDENCE["Mul"]) for factor in factors)

    def _print_Pow(self, expr: Any, rational: bool = False) -> str:
        base, power = expr.args
        if power == sympy.Rational(1, 2):
            inside = f"{unseen('(')}{self._print(base)}{unseen(')')}"
            return f'√<span style="{_UNDER_ROOT}">{inside}</span>'
        if power.could_extract_minus_sign():
            return self._fraction(sympy.Integer(1), base**-power)
        inner = self.parenthesize(base, PRECEDENCE["Pow"])
        if base.is_Mul and sympy.fraction(base)[1] != 1:
            inner = f"({self._print(base)})"
        if power.is_Integer and 0 <= power <= 9:
            return f"{inner}<sup>{power}</sup>"
        return f"{inner}<sup>{unseen('^(')}{self._print(power)}{unseen(')')}</sup>"

    def _print_Abs(self, expr: Any) -> str:
        return f"|{self._print(expr.args[0])}|"

    def _print_Function(self, expr: Any) -> str:
        if isinstance(expr, AppliedUndef) or len(expr.args) != 1:
            raise TypeError(f"no HTML is known for {expr.func.__name__}")
        argument = expr.args[0]
        shown = self._print(argument)
        return f"{expr.func.__name__} {shown}" if argument.is_Symbol else f"{expr.func.__name__}({shown})"

    def _print_atan2(self, expr: Any) -> str:
        return f"atan({self._fraction(*expr.args)})"

    def _fraction(self, over: Any, under: Any) -> str:
        top, bottom = (
            f"{unseen('(')}{self._print(part)}{unseen(')')}" if part.is_Add or part.is_Mul else self._print(part)
            for part in (over, under)
        )
        return (
            f'<span style="{_BOX}"><span style="{_TOP}">{top}{unseen("/")}</span>'
            f'<span style="{_BOTTOM}">{bottom}</span></span>'
        )
