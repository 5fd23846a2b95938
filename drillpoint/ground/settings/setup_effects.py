"""What each setting of the wheel does: so many degrees of each angle of the point for a degree or a millimetre more."""

from __future__ import annotations

from typing import Any

from attrs import evolve, frozen

from drillpoint.ground.flank import PlaneFlank
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.setup import ANGLES, Angles, Setup, measured, settings_of
from drillpoint.ground.settings.setups_conical import through_the_lip
from drillpoint.ground.table import Table, bundle
from drillpoint.quantities import Quantity, plain_number, quantity

_DEGREES, _OF_DIAMETER = 1e-3, 1e-4


@frozen
class Effect:
    """What one setting does: degrees of each angle for one unit (1° or 1 mm) more of the setting, the others kept."""

    setting: Quantity
    angles: Angles


@frozen
class Effects:
    """What all settings of a set-up do, for small changes. Printed, it is a table."""

    setup: Setup
    rows: tuple[Effect, ...]

    def __getitem__(self, setting: str) -> Angles:
        """The effect of a setting on each angle, by name."""
        return next(row.angles for row in self.rows if row.setting.name == setting)

    @property
    def table(self) -> Table:
        """The effects as a table, a line for each setting."""
        heads = ("for one more of", *(quantity(name).term for name in ANGLES))
        return Table("What each setting does, the others kept", heads, tuple(map(_cells, self.rows)))

    def __str__(self) -> str:
        return str(self.table).partition("\n")[2]

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        return bundle([self.table])


def effects(setup: Setup) -> Effects:
    """How each angle of the ground point answers to each setting of a set-up, by small differences either way.

    Every change is followed by feeding the drill until its lips are again where they were beside the axis. The chisel
    edge angle is that where the edge crosses the axis. The flute stays the one made for the point angle asked: another
    angle bends the lip a little, so even the point angle of a plane does not answer one to one. Good to six digits.

    Raises CannotBeGround when the set-up stands so near to its limits that a small change leaves no point.
    """
    return Effects(setup, tuple(_effect(setup, name, value) for name, value in settings_of(setup.flank).items()))


def _effect(setup: Setup, name: str, value: float) -> Effect:
    q = quantity(name)
    step = _DEGREES if q.is_angle else _OF_DIAMETER * setup.flute.diameter
    more, less = (_angles(setup, name, value + sign * step) for sign in (1, -1))
    return Effect(q, {angle: (more[angle] - less[angle]) / (2 * step) for angle in ANGLES})


def _angles(setup: Setup, name: str, value: float) -> Angles:
    changed: dict[str, Any] = {name: value}
    if isinstance(setup.flank, PlaneFlank):
        return measured(GroundPoint(setup.flute, evolve(setup.flank, **changed)))
    return measured(GroundPoint(setup.flute, through_the_lip(evolve(setup.flank, **changed), setup.flute)))


def _cells(row: Effect) -> tuple[str, ...]:
    return (
        f"{row.setting.term}, {row.setting.unit}",
        *(_signed(row.angles[name]) for name in ANGLES),
    )


def _signed(value: float) -> str:
    text = plain_number(abs(value), 2)
    return f"{'' if text == '0' else '+' if value > 0 else '−'}{text}°"
