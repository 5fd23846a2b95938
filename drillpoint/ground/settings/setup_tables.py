"""Set-ups written down for a bench: what to set, and what comes out, lengths in mm and inches."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np

from drillpoint.ground.record import written
from drillpoint.ground.table import Table
from drillpoint.quantities import plain_number, quantity
from drillpoint.relation.checking import INCH

if TYPE_CHECKING:
    from drillpoint.ground.inspection import Inspection
    from drillpoint.ground.settings.setup import Setting, Setup

LEVEL_AGAIN = "flank level with the corner again after"
"""How the heel clearance is called where it may be "never"."""
_SHORT = {"cone_half_angle": "half angle of the cone", "cone_tilt": "tilt", "skew": "skew"}
_FAMILIES = {
    "skewed_axis": "a cone whose axis passes beside the drill",
    "lip_on_cone": "a cone that has the lip as one of its straight lines",
    "plane": "one plane",
}


def setup_tables(setup: Setup) -> tuple[Table, Table]:
    """What to set, and what an inspector reads on the point that comes out."""
    web = written("web", 2 * setup.flute.half_web(1))
    to_set = Table(
        f"To set: {_FAMILIES[setup.family]}; drill {written('diameter', setup.flute.diameter)}, web {web}",
        ("setting", "value", "what it is"),
        tuple((s.quantity.term, sized(s.quantity.name, s.value), s.quantity.meaning) for s in _to_be_set(setup)),
        frozenset({0, 2}),
    )
    return to_set, Table("What comes out", ("reading", "asked", "measured"), tuple(_comes_out(setup)))


def family_table(setups: Sequence[Setup]) -> Table:
    """The members of a family below each other: their settings, and what tells them apart."""
    names = [s.quantity for s in _to_be_set(setups[0])]
    heads = (*(_SHORT.get(q.name, q.term) for q in names), "relief at half the radius", "level again after")
    rows = []
    for setup in setups:
        seen = setup.point.inspect()
        values = {s.quantity.name: s.value for s in setup.settings}
        rows.append(
            (
                *(sized(q.name, values[q.name]) for q in names),
                relief_half_way(seen),
                written("heel_clearance", seen.heel_clearance),
            )
        )
    angles = ", ".join(f"{quantity(n).term} {quantity(n).show(value)}" for n, value in setups[0].reached.items())
    return Table(f"Every one gives {angles}", heads, tuple(rows), frozenset())


def sized(name: str, value: float) -> str:
    """A setting with its unit, as closely as it can be set: "33.77°", "8.21 mm (0.3233 in)"."""
    q = quantity(name)
    if q.unit != "mm":
        return q.show(value, 2)
    return f"{plain_number(value, 2)} mm ({plain_number(value / INCH, 4)} in)"


def _to_be_set(setup: Setup) -> list[Setting]:
    """The settings; a turn of the drill by nothing is none."""
    return [s for s in setup.settings if s.quantity.name != "flank_turn" or s.value]


def _comes_out(setup: Setup) -> list[tuple[str, str, str]]:
    seen = setup.point.inspect()
    terms = {name: quantity(name).term for name in setup.reached}
    terms["chisel_edge_angle"] += " (obtuse, at the axis)"
    rows = [
        (terms[n], quantity(n).show(setup.asked[n]) if n in setup.asked else "left free", quantity(n).show(value))
        for n, value in setup.reached.items()
    ]
    return [
        *rows,
        ("lip relief at half the radius", "", relief_half_way(seen)),
        (LEVEL_AGAIN, "", written("heel_clearance", seen.heel_clearance)),
    ]


def relief_half_way(seen: Inspection) -> str:
    """The relief of lip 1 at half the radius, with its unit."""
    relief = seen.lip_at(1, radii=np.array([seen.diameter / 4])).relief[0]
    return quantity("lip_relief").show(float(relief))
