"""One lip of a ground point: the line where its flank meets its flute, and the corners where it ends."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import cached_property

import numpy as np
from attrs import frozen

from drillpoint.ground.flank import Flank, Placed, Surface
from drillpoint.ground.flute import Array, Flute
from drillpoint.ground.measuring import first_reached
from drillpoint.ground.stated import CannotBeGround

_SAMPLES = 33
_CLOSE, _FAIR = 1e-13, 1e-9
_OUTERMOST_CHISEL = 0.8


@frozen
class Place:
    """Places along a line, in the lip's own frame: x, y, z in mm, and where they lie on the flute's wall."""

    x: Array
    y: Array
    z: Array
    along: Array

    @property
    def radius(self) -> Array:
        """Distance from the drill axis, mm."""
        return np.hypot(self.x, self.y)

    def __getitem__(self, which: slice) -> Place:
        """Some of the places."""
        return Place(self.x[which], self.y[which], self.z[which], self.along[which])

    @property
    def point(self) -> Array:
        """x, y and z as one array, the last axis of length 3."""
        return np.stack([self.x, self.y, self.z], axis=-1)


@frozen
class Lip:
    """Lip 1 or 2 of a drill, in its own frame: the lip lies at y > 0 and runs towards +x.

    own: the flank behind this lip. other: the flank of the other lip, turned into this frame.
    """

    flute: Flute
    number: int
    own: Surface
    other: Surface

    @property
    def name(self) -> str:
        """As messages call it."""
        return f"lip {self.number}"

    @cached_property
    def corner(self) -> Place:
        """The outer corner: where the lip ends at the diameter."""
        return self.at_radius(np.array([self.flute.radius]))

    @cached_property
    def heel(self) -> float | None:
        """How far behind the outer corner the heel is, seen from the tip, radians.

        The flank falls towards the heel, and meanwhile the helix takes the land further round. None when the flank ends
        before, or falls as steeply as the helix does.
        """
        flute = self.flute
        corner = self.corner
        start, top = math.atan2(float(corner.y[0]), float(corner.x[0])), float(corner.z[0])

        def beyond(back: Array) -> Array:
            height = self.own.height(flute.radius * np.cos(start - back), flute.radius * np.sin(start - back))
            return np.asarray(back - flute.land(self.number) - flute.twist * (top - height))

        found = first_reached(beyond, math.pi)
        return found and found[1]

    @property
    def land_end(self) -> float:
        """How far behind the outer corner the land ends, seen from the tip, radians.

        That is its heel; where the flank does not reach one, the land's angle in a section.
        """
        return self.flute.land(self.number) if self.heel is None else self.heel

    def at(self, along: Array, near: Array | None = None) -> Place:
        """The lip at places of the flute's wall (see `Flute.wall`). near: about how high they are, if that is known."""
        guess = -np.maximum(along, 0.0) * self.flute.design_slope if near is None else near
        return self._solved(lambda z: along, guess)

    def at_radius(self, radius: Array) -> Place:
        """The lip at distances from the drill axis, mm."""
        radius = np.asarray(radius, dtype=float)
        start = self.flute.along_at(self.number, radius, np.zeros_like(radius))
        return self._solved(lambda z: self.flute.along_at(self.number, radius, z), -start * self.flute.design_slope)

    def reached(self, along: Array) -> Place:
        """The same with nan where the flank has no point; a cone need not reach far past the axis."""
        return self._solved(lambda z: along, -np.maximum(along, 0.0) * self.flute.design_slope, partly=True)

    def _solved(self, where: Callable[[Array], Array], z: Array, *, partly: bool = False) -> Place:
        flute, number = self.flute, self.number
        before: float | Array = math.inf
        for _ in range(60):
            along = where(z)
            x, y = flute.wall(number, along, z)
            top, (down_x, down_y) = self.own.height_and_slope(x, y)
            gap = z - top
            lost, left = np.isnan(gap), np.abs(gap)
            if lost.any() and not partly:
                break
            # A flank whose apex is far away has its heights to fewer digits; then it is enough to gain no more.
            met = (left <= _CLOSE * flute.radius) | ((left <= _FAIR * flute.radius) & (left >= before))
            if (lost | met).all():
                return Place(x, y, np.where(lost, np.nan, z), along)
            dx, dy = flute.wall_rise(along, z, x, y)
            z, before = z - gap / (1 - down_x * dx - down_y * dy), left
        if partly:
            return Place(x, y, np.where(met, z, np.nan), along)
        raise CannotBeGround(
            f"the flank of {self.name} does not meet the flute all along the lip; bring the flank's angle nearer to "
            f"the {flute.point_angle:g}° the flute was made for, or its turn nearer to 0°"
        )


def lips(flute: Flute, flank_1: Flank, flank_2: Flank) -> tuple[Lip, Lip]:
    """Both lips of a drill, each in its own frame."""
    first, second = flank_1.over(flute, 1), flank_2.over(flute, 2)
    return (
        Lip(flute, 1, first, Placed(second, math.pi, 0.0)),
        Lip(flute, 2, second, Placed(first, math.pi, 0.0)),
    )


def chisel_corner(lip: Lip) -> Place:
    """Where the lip ends at the chisel edge: there both flanks are equally high.

    Raises CannotBeGround when the other flank has taken the whole lip, or when the lip runs past without meeting it.
    """
    flute = lip.flute
    outer = float(lip.corner.along[0])
    inner = -0.9 * min(flute.back_radius(lip.number), flute.radius)
    along = np.linspace(outer, inner, _SAMPLES)
    samples = lip.reached(along)
    met = _above_other(lip, samples)
    # A steep cone may also pass below the corner opposite its apex, where the wheel does not reach. So the crossing
    # nearest to the axis is the one.
    crossings = np.flatnonzero((met[:-1] < 0) & (met[1:] > 0))
    if not len(crossings) and met[0] > 0:
        raise CannotBeGround(
            f"the other lip's flank takes {lip.name} away altogether; bring the two flank heights or angles nearer to "
            "each other"
        )
    if not len(crossings):
        raise CannotBeGround(
            f"{lip.name} does not meet the chisel edge: the flanks do not cross along it; give more relief, or set a "
            "cone's apex further away"
        )
    between = slice(crossings[-1], crossings[-1] + 2)
    found = _refined(lip, samples[between], met[between])
    if found.radius[0] > _OUTERMOST_CHISEL * flute.radius:
        raise CannotBeGround(
            f"the chisel edge would end {found.radius[0]:.3g} mm from the axis, so that {lip.name} is all but ground "
            "away; bring the two flank heights or angles nearer together, or give less relief"
        )
    return found


def _above_other(lip: Lip, place: Place) -> Array:
    """How far the lip lies above the other flank; nan where either flank does not reach, as then neither cuts it."""
    return np.asarray(place.z - lip.other.height(place.x, place.y))


def _refined(lip: Lip, ends: Place, gaps: Array) -> Place:
    """The place between two of the wall, where the lip is below and above the other flank: halving kept in step."""
    low, high = np.stack([ends.along, ends.z], axis=-1)
    before, after = (float(gap) for gap in gaps)
    for turn in range(80):
        share = after / (after - before) if turn % 4 < 3 else 0.5
        middle = high - share * (high - low)
        place = lip.at(middle[:1], near=middle[1:])
        gap = float(_above_other(lip, place)[0])
        if abs(gap) <= _CLOSE * lip.flute.radius or abs(high[0] - low[0]) < 1e-15 * lip.flute.radius:
            return place
        low, before, high, after = (middle, gap, high, after) if gap < 0 else (low, before, middle, gap)
    return place
