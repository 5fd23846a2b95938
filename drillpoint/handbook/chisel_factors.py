"""The handbook's chisel edge factors, row by row or between two rows."""

from __future__ import annotations

from itertools import pairwise

from attrs import frozen

from drillpoint.errors import OutOfRange
from drillpoint.handbook.library import printed
from drillpoint.quantities import plain_number


@frozen(kw_only=True)
class ChiselFactors:
    """The factors for one chisel edge ratio.

    chisel_ratio, web_ratio: chisel edge and web over diameter. torque_factor, thrust_factor, chisel_thrust_factor: the
    handbook's A, B and J. printed: whether the row stands so in the table; otherwise it lies between two that do.
    """

    chisel_ratio: float
    web_ratio: float
    torque_factor: float
    thrust_factor: float
    chisel_thrust_factor: float
    printed: bool

    @property
    def of_thrust(self) -> dict[str, float]:
        """What a call of `thrust` or `thrust_ratio` takes: `thrust(..., **factors.of_thrust)`."""
        return {"thrust_factor": self.thrust_factor, "chisel_thrust_factor": self.chisel_thrust_factor}

    @property
    def of_torque(self) -> dict[str, float]:
        """What a call of `torque` or `torque_ratio` takes."""
        return {"torque_factor": self.torque_factor}

    @property
    def to_compare_thrust_with(self) -> dict[str, float]:
        """What `thrust_ratio` takes for the point that is compared with."""
        return {f"reference_{name}": value for name, value in self.of_thrust.items()}

    @property
    def to_compare_torque_with(self) -> dict[str, float]:
        """What `torque_ratio` takes for the point that is compared with."""
        return {f"reference_{name}": value for name, value in self.of_torque.items()}


def chisel_factors(*, chisel_ratio: float) -> ChiselFactors:
    """The handbook's factors for a chisel edge ratio: as printed, or on a straight line between the two nearest rows.

    Source: Machinery's Handbook 31, pp. 1152-1153, Tables 7 to 9 (seen). Raises OutOfRange outside the table.
    """
    rows = list(printed("chisel_factors"))
    for row in rows:
        if row["chisel_ratio"] == chisel_ratio:
            return ChiselFactors(**row, printed=True)
    for below, above in pairwise(rows):
        if below["chisel_ratio"] < chisel_ratio < above["chisel_ratio"]:
            share = (chisel_ratio - below["chisel_ratio"]) / (above["chisel_ratio"] - below["chisel_ratio"])
            between = {name: low + share * (above[name] - low) for name, low in below.items()}
            return ChiselFactors(**{**between, "chisel_ratio": chisel_ratio}, printed=False)
    first, last = (plain_number(row["chisel_ratio"], 2) for row in (rows[0], rows[-1]))
    raise OutOfRange(
        f"chisel_ratio {plain_number(chisel_ratio, 4)} is outside the handbook's table, {first} to {last}; "
        "a standard drill has 0.18, a split point 0.03"
    )
