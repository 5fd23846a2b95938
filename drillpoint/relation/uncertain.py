"""What the reading errors of the givens are worth in the result."""

from __future__ import annotations

import math
from collections.abc import Mapping
from numbers import Real
from typing import TYPE_CHECKING, Any

from attrs import frozen

from drillpoint.errors import OutOfRange
from drillpoint.quantities import Quantity, plain_number, unit_suffix
from drillpoint.relation.calling import call, sensitivity
from drillpoint.relation.value import Value

if TYPE_CHECKING:
    from drillpoint.relation.relation import Relation


@frozen
class Uncertain:
    """A result with its ±.

    value: the result. plus_minus: the likely ±, the root of the sum of squares, for reading errors that have nothing to
    do with each other. at_most: the ± if every error goes the worst way at once. shares: what the ± of each given alone
    makes. All in the unit of the result, and to first order: good while the ± are small against what they belong to.
    """

    value: Value
    plus_minus: float
    at_most: float
    shares: Mapping[str, float]

    @property
    def quantity(self) -> Quantity:
        """What the result is."""
        return self.value.quantity

    @property
    def main_share(self) -> str:
        """The given whose ± matters most, or "" when none has any."""
        return max(self.shares, key=self.shares.__getitem__, default="") if self.at_most else ""

    def __str__(self) -> str:
        # One digit of the ± is all it is worth; two where the first is a one.
        if not self.plus_minus:
            return self.quantity.show(self.value)
        place = -math.floor(math.log10(self.plus_minus))
        leading = self.plus_minus * 10.0**place
        decimals = max(0, place + (leading < 2))
        unit = unit_suffix(self.quantity.unit)
        return f"{self.value:.{decimals}f}{unit} ± {plain_number(self.plus_minus, decimals)}{unit}"

    __repr__ = __str__


def uncertainty(relation: Relation, givens: Mapping[str, Any]) -> Uncertain:
    """See `Relation.uncertainty`."""
    values, errors = {}, {}
    for name, given in givens.items():
        pair = given if isinstance(given, (tuple, list)) else (given, 0.0)
        if len(pair) != 2:
            raise OutOfRange(f"{name} needs a number or a pair (number, plus or minus), for example (118, 1)")
        values[name], errors[name] = pair[0], _plus_minus(name, pair[1])
    result = call(relation, values)
    shares = {name: abs(sensitivity(relation, name, values)) * error for name, error in errors.items() if error}
    return Uncertain(result, math.hypot(*shares.values()), sum(shares.values()), shares)


def _plus_minus(name: str, given: Any) -> float:
    error = float(given) if isinstance(given, Real) and given is not True and given is not False else math.nan
    if not 0 <= error < math.inf:
        raise OutOfRange(f"the ± of {name} is {given!r}; it needs to be a number from 0 up, in the unit of {name}")
    return error
