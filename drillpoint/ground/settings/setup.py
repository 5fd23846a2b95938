"""A set-up: how the wheel must be set for a drill, and which angles come out."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property

from attrs import frozen

from drillpoint.ground.conical import ConicalFlank
from drillpoint.ground.flank import PlaneFlank
from drillpoint.ground.flute import Flute
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.stated import CannotBeGround
from drillpoint.ground.table import bundle
from drillpoint.quantities import Quantity, capital, quantity

Angles = Mapping[str, float]

ANGLES = ("point_angle", "lip_relief", "chisel_edge_angle")
_CONE = ("cone_half_angle", "cone_tilt", "apex_distance", "skew", "flank_turn")


class NoSetup(CannotBeGround):
    """No setting of the wheel gives the three angles together.

    nearest: the Setup with the point angle and the lip relief as asked, and the chisel edge angle as near to the one
    asked as can be; None when these two cannot be had at all. The point angle and the relief are kept because a hole's
    bottom and the work's material ask for them; the chisel edge angle is a consequence, and its usual range is wide.
    """

    def __init__(self, message: str, nearest: Setup | None = None) -> None:
        super().__init__(message)
        self.nearest = nearest


@frozen
class Setting:
    """One thing to set at the fixture: its quantity and its value, in the quantity's unit."""

    quantity: Quantity
    value: float

    def __str__(self) -> str:
        q = self.quantity
        return f"{q.term}: {q.show(self.value, max(q.decimals, 2))} ({q.meaning})"


@frozen(kw_only=True)
class Setup:
    """How the wheel must be set for a drill, and what comes out.

    family: "skewed_axis", "lip_on_cone" or "plane". flute, flank: for `GroundPoint`. asked: the angles wanted, degrees,
    the chisel edge angle obtuse. reached: the same angles measured on the ground point; the chisel edge angle where the
    edge crosses the drill axis. notes: what to know about the numbers given and the result. refused: of the nearest
    set-up in place of one that cannot be had, why it cannot.
    """

    family: str
    flute: Flute
    flank: ConicalFlank | PlaneFlank
    asked: Angles
    reached: Angles
    notes: tuple[str, ...] = ()
    refused: str = ""

    @cached_property
    def point(self) -> GroundPoint:
        """The drill ground with this set-up."""
        return GroundPoint(self.flute, self.flank)

    @property
    def settings(self) -> tuple[Setting, ...]:
        """What to set, in the order of setting it."""
        return tuple(Setting(quantity(name), value) for name, value in settings_of(self.flank).items())

    def __str__(self) -> str:
        q = {name: quantity(name) for name in self.reached}
        reached = (f"{q[n].term} {q[n].show(v, 2)}" for n, v in self.reached.items())
        return "\n".join([*map(str, self.settings), "gives " + ", ".join(reached), *self.notes])

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        from drillpoint.ground.settings.setup_tables import setup_tables

        before = (f"There is no such set-up: {self.refused}. This is the nearest.",) if self.refused else ()
        return bundle(setup_tables(self), [f"{capital(note)}." for note in self.notes], before)


def settings_of(flank: ConicalFlank | PlaneFlank) -> dict[str, float]:
    """The settings of a flank by name, in their units."""
    if isinstance(flank, PlaneFlank):
        return {"point_angle": flank.point_angle, "axial_relief": float(flank.axial_relief or 0.0)}
    return {name: getattr(flank, name) for name in _CONE}


def measured(point: GroundPoint) -> dict[str, float]:
    """The three angles of a ground point, degrees; the chisel edge angle where the edge crosses the axis."""
    seen = point.inspect()
    return {
        "point_angle": seen.point_angle,
        "lip_relief": seen.lip_relief,
        "chisel_edge_angle": seen.chisel_edge_angle_at_axis,
    }


def show(name: str, value: float) -> str:
    """A value as its quantity is shown."""
    return quantity(name).show(value)


def say(angles: Angles, *names: str) -> str:
    """Some of the angles in words: "point angle 118° and lip relief angle 12°"."""
    parts = [f"{quantity(n).term} {show(n, angles[n])}" for n in names]
    return ", ".join(parts[:-1]) + " and " + parts[-1]
