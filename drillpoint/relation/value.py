"""A result that remembers its unit and what should be said about it."""

from __future__ import annotations

from typing import Self

from drillpoint.quantities import Quantity, quantity, unit_suffix


class ReadAs(UserWarning):
    """Some entries of an array were read in another way than written, or lie outside the usual range."""


class Value(float):
    """A number with its quantity and notes; in every calculation it is an ordinary float.

    notes: sentences a reader should see beside the number, such as how an acute chisel edge angle was read, or that a
    given lies outside the usual range.
    """

    quantity: Quantity
    notes: tuple[str, ...]

    def __new__(cls, number: float, name: str, notes: tuple[str, ...] = ()) -> Self:
        """A value of the quantity called `name`."""
        value = super().__new__(cls, number)
        value.quantity = quantity(name)
        value.notes = notes
        return value

    @property
    def unit(self) -> str:
        """The unit: "mm", "°" or "" for a plain number."""
        return self.quantity.unit

    def __repr__(self) -> str:
        said = f"  ({'; '.join(self.notes)})" if self.notes else ""
        return f"{float(self):.6g}{unit_suffix(self.unit)}{said}"

    __str__ = __repr__

    def __reduce__(self) -> tuple[type[Value], tuple[float, str, tuple[str, ...]]]:
        return Value, (float(self), self.quantity.name, self.notes)
