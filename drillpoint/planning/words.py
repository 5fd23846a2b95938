"""Words and lengths as a plan prints them: in mm and in inches, to what a shop can grind and read."""

from __future__ import annotations

from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.quantities import plain_number, quantity
from drillpoint.relation.checking import INCH

_MM, _INCH = 2, 3


def length(value: float | Measured) -> str:
    """A length with its ±: "0.28 ± 0.06 mm (0.011 ± 0.002 in)"."""
    measured = value if isinstance(value, Measured) else Measured(value)
    return f"{_in(measured, 1.0, _MM)} mm ({_in(measured, INCH, _INCH)} in)"


def reading(name: str, value: float | Measured) -> str:
    """A reading in its own unit; lengths in mm and in inches."""
    if quantity(name).unit == "mm":
        return length(value)
    return quantity(name).show(value) if not isinstance(value, Measured) else value.show(name)


def _in(measured: Measured, unit: float, decimals: int) -> str:
    value = plain_number(measured.value / unit, decimals)
    error = plain_number(measured.plus_minus / unit, decimals)
    return value if error == "0" else f"{value} ± {error}"
