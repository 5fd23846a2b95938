"""How a diagnosis says a number: lengths in millimetres, with the inches behind."""

from __future__ import annotations

import math

from drillpoint.quantities import Quantity, plain_number, quantity
from drillpoint.relation import Value
from drillpoint.relation.checking import INCH

_INCHES = {"mm": "in", "mm/rev": "in/rev"}
_FINEST = 4  # decimals of an inch; nobody reads less than a ten-thousandth


def said(name: str, value: float, plus_minus: float = 0.0) -> str:
    """The value of a quantity with its unit, and in inches too where it is a length.

    plus_minus: how far it may be off, in the same unit: "0.23 mm ± 0.02 mm (0.0091 ± 0.0008 in)", "59° ± 0.5°".
    """
    q = quantity(name)
    if q.unit not in _INCHES:
        return _with_error(q, value, plus_minus)
    return f"{_with_error(q, value, plus_minus)} ({_in_inches(q, value, plus_minus)})"


def said_of(value: Value) -> str:
    """The same for what a relation gave, which knows its quantity."""
    return said(value.quantity.name, float(value))


def _with_error(q: Quantity, value: float, plus_minus: float) -> str:
    if not plus_minus:
        return q.show(value)
    # A small ± is worth one figure more than the quantity is usually shown with.
    decimals = max(q.decimals, min(4, _two_figures(plus_minus)))
    return f"{q.show(value, decimals)} ± {q.show(plus_minus, decimals)}"


def _in_inches(q: Quantity, value: float, plus_minus: float) -> str:
    unit, inches, error = _INCHES[q.unit], value / INCH, plus_minus / INCH
    if not error:
        return f"{plain_number(inches, 3 if abs(inches) >= 1 else _FINEST)} {unit}"
    decimals = max(2, min(_FINEST, _two_figures(error)))
    return f"{plain_number(inches, decimals)} ± {plain_number(error, decimals)} {unit}"


def _two_figures(error: float) -> int:
    return 1 - math.floor(math.log10(error))
