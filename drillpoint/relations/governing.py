"""Which of several faults decides how much has to come off in a regrind."""

from __future__ import annotations

from attrs import frozen

from drillpoint.errors import LearnerError
from drillpoint.relation import Value
from drillpoint.relation.checking import read_scalar

_BECAUSE = {
    "wear_land": "the wear land behind the lip",
    "worn_corner": "the worn or burnt corner",
    "chip": "the chip in the lip",
    "angle_change": "the change of the point angle",
}


@frozen
class Governing:
    """The stock that decides. stock: in mm along the axis. because: the faults that ask for it, in words."""

    stock: Value
    because: str

    def __str__(self) -> str:
        return f"{self.stock.quantity.show(self.stock)}, because of {self.because}"

    __repr__ = __str__


def governing_stock(
    *,
    wear_land: float = 0.0,
    worn_corner: float = 0.0,
    chip: float = 0.0,
    angle_change: float = 0.0,
) -> Governing:
    """The largest of several stocks that have to come off at the same place of the point, and which fault it is for.

    Every stock is in mm along the axis, 0 or more, as the relations `stock_for_wear_land`, `stock_for_worn_corner`,
    `stock_for_chip` and `stock_for_angle_change` give it. One pass of grinding takes all the faults away together, so
    they do not add up. They do add up where a flatter point is ground and the corners are damaged as well: the tip then
    loses both. `tip_stock` works that out.

    Raises OutOfRange for a stock that is impossible, LearnerError when no fault asks for any stock.
    """
    given = {"wear_land": wear_land, "worn_corner": worn_corner, "chip": chip, "angle_change": angle_change}
    stocks = {name: read_scalar("stock", value)[0] for name, value in given.items()}
    most = max(stocks.values())
    if most == 0:
        raise LearnerError(f"no stock given is above 0 mm; give one or more of {', '.join(_BECAUSE)}, each in mm")
    return Governing(Value(most, "stock", ()), " and ".join(_BECAUSE[n] for n, s in stocks.items() if s == most))
