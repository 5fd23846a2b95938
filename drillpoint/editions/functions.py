"""One function's source text, in Python or JavaScript, from sympy expressions."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import sympy
from sympy.printing.jscode import JavascriptCodePrinter
from sympy.printing.pycode import PythonCodePrinter

from drillpoint.drawing.letter import letters_in


class _Python(PythonCodePrinter):
    """Every function is looked up on the argument `m`, so the same source serves `math` and `numpy`."""

    def __init__(self) -> None:
        super().__init__({"fully_qualified_modules": False})

    def _print_Function(self, expr: Any) -> str:
        return f"m.{expr.func.__name__}({', '.join(self._print(a) for a in expr.args)})"

    def _print_Pi(self, expr: Any) -> str:
        return "m.pi"

    def _print_Pow(self, expr: Any, rational: bool = False) -> str:
        if expr.exp == sympy.Rational(1, 2):
            return f"m.sqrt({self._print(expr.base)})"
        if expr.exp == -sympy.Rational(1, 2):
            return f"(1/m.sqrt({self._print(expr.base)}))"
        return f"{self.parenthesize(expr.base, 60)}**{self.parenthesize(expr.exp, 60)}"

    def _print_Abs(self, expr: Any) -> str:
        return f"m.fabs({self._print(expr.args[0])})"

    def _print_sign(self, expr: Any) -> str:
        return f"m.copysign(1.0, {self._print(expr.args[0])})"

    _print_sin = _print_cos = _print_tan = _print_asin = _print_acos = _print_atan = _print_atan2 = _print_Function
    _print_sqrt = _print_log = _print_Function


class _JavaScript(JavascriptCodePrinter):
    """Standard `Math` only."""


def _prepared(outputs: Sequence[Any]) -> tuple[list[tuple[Any, Any]], list[Any]]:
    letters = {one: sympy.Symbol(f"w{i}", real=True) for i, one in enumerate(letters_in(outputs))}
    # Neither math nor Math has a cotangent.
    plain = [
        sympy.sympify(e, strict=True).xreplace(letters).replace(sympy.cot, lambda a: 1 / sympy.tan(a))
        for e in (*(one.definition for one in letters), *outputs)
    ]
    steps, results = sympy.cse(plain, symbols=sympy.numbered_symbols("v"), order="canonical")
    named = list(zip(letters.values(), results, strict=False))
    return (_in_turn([*steps, *named]) if named else steps), results[len(named) :]


def _in_turn(steps: Sequence[tuple[Any, Any]]) -> list[tuple[Any, Any]]:
    """The steps in an order in which each uses only those before it."""
    waiting, done = dict(steps), []

    def settle(symbol: Any) -> None:
        value = waiting.pop(symbol)
        for used in sorted(value.free_symbols, key=str):
            if used in waiting:
                settle(used)
        done.append((symbol, value))

    while waiting:
        settle(next(iter(waiting)))
    return done


def python_function(name: str, arguments: Sequence[str], outputs: Any) -> str:
    """Source of `def name(m, *arguments)`, returning one value or, for a sequence of outputs, a list."""
    several = isinstance(outputs, (list, tuple))
    steps, results = _prepared(outputs if several else [outputs])
    printer = _Python()
    lines = [f"def {name}({', '.join(['m', *arguments])}):"]
    lines += [f"    {symbol} = {printer.doprint(value)}" for symbol, value in steps]
    printed = [printer.doprint(value) for value in results]
    lines.append(f"    return [{', '.join(printed)}]" if several else f"    return {printed[0]}")
    return "\n".join(lines) + "\n"


def javascript_function(name: str, arguments: Sequence[str], outputs: Any) -> str:
    """Source of a JavaScript function of an object with these properties, returning a number or an array."""
    several = isinstance(outputs, (list, tuple))
    steps, results = _prepared(outputs if several else [outputs])
    printer = _JavaScript()
    lines = [f"function {name}({{{', '.join(arguments)}}}) {{"]
    lines += [f"  const {symbol} = {printer.doprint(value)};" for symbol, value in steps]
    printed = [printer.doprint(value) for value in results]
    lines.append(f"  return [{', '.join(printed)}];" if several else f"  return {printed[0]};")
    return "\n".join(lines) + "\n}\n"
