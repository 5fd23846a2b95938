"""The chisel edge's share of the thrust, as a band."""

from __future__ import annotations

from attrs import frozen

from drillpoint.handbook.library import ranges


@frozen(kw_only=True)
class Band:
    """A range with what it depends on; there is no single figure to give.

    low, high: the range, in the unit. conditions: one sentence a source. why: why it is a band.
    """

    low: float
    high: float
    unit: str
    conditions: tuple[str, ...]
    why: str

    def __str__(self) -> str:
        return "\n".join([f"{self.low:g} to {self.high:g} {self.unit}: {self.why}", *self.conditions])


def chisel_share() -> Band:
    """How much of the thrust is the chisel edge's doing: a band in percent, and what each figure holds for."""
    table = ranges("chisel_share")
    low, high = table.span
    conditions = tuple(
        f"{row.figure(table.unit)}: {row.what}"
        + "".join(f"; {name} {value}" for name, value in (("size", row.size), ("work", row.work)) if value)
        + f" ({row.source}, {row.page}; {row.seen})"
        for row in table
    )
    return Band(low=low, high=high, unit=table.unit, conditions=conditions, why=table.why_they_differ)
