"""How far each setting of the wheel may be off before an angle of the point is further off than it may be."""

from __future__ import annotations

from attrs import frozen

from drillpoint.errors import LearnerError, UnknownGiven
from drillpoint.ground.settings.setup import ANGLES, Setup
from drillpoint.ground.settings.setup_effects import Effect, effects
from drillpoint.ground.settings.setup_tables import sized
from drillpoint.ground.table import Table, bundle
from drillpoint.quantities import Quantity, nearest, quantity

# What a protractor and a careful hand hold; common practice, from memory.
USUAL = {"point_angle": 2.0, "lip_relief": 2.0, "chisel_edge_angle": 5.0}


@frozen
class Room:
    """How far one setting may be off, and the angle that is then off by as much as it may be."""

    setting: Quantity
    most: float
    first: str


@frozen
class Leeway:
    """The room of every setting of a set-up. In a notebook it is a table."""

    allowed: dict[str, float]
    rows: tuple[Room, ...]

    def __getitem__(self, setting: str) -> float:
        """How far a setting may be off, in its unit."""
        return next(row.most for row in self.rows if row.setting.name == setting)

    @property
    def table(self) -> Table:
        """A line for each setting."""
        kept = ", ".join(f"{quantity(n).term} ±{quantity(n).show(value)}" for n, value in self.allowed.items())
        rows = tuple((r.setting.term, f"±{sized(r.setting.name, r.most)}", quantity(r.first).term) for r in self.rows)
        heads = ("setting", "may be off by", "what is off first")
        return Table(f"How far each setting alone may be off, to keep {kept}", heads, rows, frozenset({0, 2}))

    def __str__(self) -> str:
        return str(self.table)

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        return bundle([self.table])


def leeway(setup: Setup, **allowed: float) -> Leeway:
    """How far each setting of a set-up alone may be off, the others being right.

    allowed: how far an angle may be off, degrees, by its name (point_angle, lip_relief, chisel_edge_angle); those not
    named may be off by 2°, 2° and 5°. Worked out from `effects`, so for small errors; see there.

    Raises UnknownGiven for other names, LearnerError for an allowance that is not above 0.
    """
    for name, value in allowed.items():
        if name not in ANGLES:
            raise UnknownGiven(f"leeway knows no angle {name!r}{nearest(name, ANGLES)}; it has {', '.join(ANGLES)}")
        if not value > 0:
            raise LearnerError(f"{name}={value:g} leaves no room; give what is allowed either way, such as 2")
    kept = {**USUAL, **allowed}
    return Leeway(kept, tuple(_room(effect, kept) for effect in effects(setup).rows))


def _room(effect: Effect, allowed: dict[str, float]) -> Room:
    used = {name: abs(effect.angles[name]) / allowed[name] for name in ANGLES}
    first = max(used, key=used.__getitem__)
    return Room(effect.setting, 1 / used[first], first)
