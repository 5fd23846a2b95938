"""Flanks: the surfaces a wheel leaves behind the lips, each as a height above the end view.

A flank is stated by itself and then laid on a flute (`over`), which gives its `Surface`: the height z over any place
x, y of the end view, and the two slopes. All are stated for lip 1; lip 2's is turned half a turn.
"""

from __future__ import annotations

import math
from typing import Protocol

import numpy as np
from attrs import field, frozen

from drillpoint.ground.flute import Array, Flute, turned
from drillpoint.ground.stated import CannotBeGround, one_of, stated
from drillpoint.relations import axial_relief as axial_relief_of


class Surface(Protocol):
    """A surface over the end view; not a number (nan) where it has no point."""

    def height(self, x: Array, y: Array) -> Array:
        """z over the places x, y, mm."""

    def slope(self, x: Array, y: Array) -> tuple[Array, Array]:
        """How z changes with x and with y, mm per mm."""

    def height_and_slope(self, x: Array, y: Array) -> tuple[Array, tuple[Array, Array]]:
        """Both at once, at little more than the cost of one."""


@frozen
class Placed:
    """A surface turned round the axis (radians, counter-clockwise seen from the tip) and raised (mm)."""

    surface: Surface
    turn: float
    rise: float

    def height(self, x: Array, y: Array) -> Array:
        """z over the places x, y, mm."""
        return self.surface.height(*self._turned(-self.turn, x, y)) + self.rise

    def slope(self, x: Array, y: Array) -> tuple[Array, Array]:
        """How z changes with x and with y."""
        return self.height_and_slope(x, y)[1]

    def height_and_slope(self, x: Array, y: Array) -> tuple[Array, tuple[Array, Array]]:
        """Both at once."""
        height, slope = self.surface.height_and_slope(*self._turned(-self.turn, x, y))
        return height + self.rise, self._turned(self.turn, *slope)

    @staticmethod
    def _turned(angle: float, x: Array, y: Array) -> tuple[Array, Array]:
        # Nearly always it is no turn or half a turn, and both are free.
        if angle == 0:
            return x, y
        return (-x, -y) if abs(angle) == math.pi else turned(np.asarray(angle), x, y)


class Flank(Protocol):
    """What a ground point needs of a flank."""

    def over(self, flute: Flute, lip: int) -> Surface:
        """The surface that the flank leaves on lip 1 or 2 of a flute, in lip 1's frame."""


@frozen
class Plane:
    """z = x·slope_x + (y - y0)·slope_y + z0."""

    slope_x: float
    slope_y: float
    y0: float
    z0: float = 0.0

    def height(self, x: Array, y: Array) -> Array:
        """z over the places x, y, mm."""
        return np.asarray(x * self.slope_x + (y - self.y0) * self.slope_y + self.z0)

    def slope(self, x: Array, y: Array) -> tuple[Array, Array]:
        """How z changes with x and with y."""
        return np.full_like(x, self.slope_x), np.full_like(y, self.slope_y)

    def height_and_slope(self, x: Array, y: Array) -> tuple[Array, tuple[Array, Array]]:
        """Both at once."""
        return self.height(x, y), self.slope(x, y)


@frozen
class Lower:
    """The lower one of two surfaces at each place: what is left when both were ground."""

    first: Surface
    second: Surface

    def height(self, x: Array, y: Array) -> Array:
        """z over the places x, y, mm."""
        return np.minimum(self.first.height(x, y), self.second.height(x, y))

    def slope(self, x: Array, y: Array) -> tuple[Array, Array]:
        """How z changes with x and with y."""
        return self.height_and_slope(x, y)[1]

    def height_and_slope(self, x: Array, y: Array) -> tuple[Array, tuple[Array, Array]]:
        """Both at once."""
        (first, (first_x, first_y)), (second, (second_x, second_y)) = (
            surface.height_and_slope(x, y) for surface in (self.first, self.second)
        )
        is_first = first <= second
        slope = np.where(is_first, first_x, second_x), np.where(is_first, first_y, second_y)
        return np.minimum(first, second), slope


@stated
@frozen(kw_only=True)
class PlaneFlank:
    """One plane behind the lip.

    point_angle: the whole angle, twice the angle between lip and axis. lip_relief (at the outer corner, in the plane
    that touches the cylinder there) or axial_relief (in the plane parallel to the axis and square to the lip), degrees;
    negative when the heel stands proud. flank_height: how much higher than the design lip this flank was ground, mm.
    flank_turn: how far the drill was turned ahead about its axis before grinding, degrees; the flank then leads.
    """

    point_angle: float
    lip_relief: float | None = None
    axial_relief: float | None = None
    flank_height: float = 0.0
    flank_turn: float = 0.0
    _says: str = field(init=False, eq=False, repr=False)

    def __attrs_post_init__(self) -> None:
        says = one_of("PlaneFlank", lip_relief=self.lip_relief, axial_relief=self.axial_relief)
        object.__setattr__(self, "_says", says)

    def over(self, flute: Flute, lip: int) -> Surface:
        """The plane on lip 1 or 2 of a flute, in lip 1's frame."""
        relief = _relief_beside(flute, lip, self.point_angle, self.lip_relief, self.axial_relief)
        plane = _plane(flute, lip, self.point_angle, relief)
        return Placed(plane, math.radians(self.flank_turn), self.flank_height)


@stated
@frozen(kw_only=True)
class FacetedFlank:
    """Two planes behind the lip: a primary one along it and a steeper secondary one behind.

    point_angle, lip_relief or axial_relief, flank_height, flank_turn: of the primary plane, as for PlaneFlank.
    secondary_relief: of the second plane, in the plane parallel to the axis and square to the lip, degrees.
    primary_width: of the first plane in the end view, square to the lip, mm. Left out, it is the lip's distance from
    the axis: all four facets then meet on the axis, and the chisel edge becomes a point with two short edges.
    """

    point_angle: float
    lip_relief: float | None = None
    axial_relief: float | None = None
    secondary_relief: float = 25.0
    primary_width: float | None = None
    flank_height: float = 0.0
    flank_turn: float = 0.0

    def __attrs_post_init__(self) -> None:
        one_of("FacetedFlank", lip_relief=self.lip_relief, axial_relief=self.axial_relief)

    def over(self, flute: Flute, lip: int) -> Surface:
        """Both planes on lip 1 or 2 of a flute, in lip 1's frame."""
        return Placed(Lower(*self.facets(flute, lip)), math.radians(self.flank_turn), self.flank_height)

    def facets(self, flute: Flute, lip: int) -> tuple[Plane, Plane]:
        """The primary and the secondary plane, neither turned nor raised."""
        relief = _relief_beside(flute, lip, self.point_angle, self.lip_relief, self.axial_relief)
        if self.secondary_relief <= relief:
            raise CannotBeGround(
                f"secondary_relief {self.secondary_relief:g}° is not steeper than the primary plane's {relief:.4g}°, "
                "so it would take the lip away; give it some 10° more"
            )
        primary = _plane(flute, lip, self.point_angle, relief)
        width = flute.half_web(lip) if self.primary_width is None else self.primary_width
        edge = flute.half_web(lip) - width
        secondary = Plane(
            primary.slope_x,
            math.tan(math.radians(self.secondary_relief)),
            edge,
            -width * primary.slope_y,
        )
        return primary, secondary


def _relief_beside(
    flute: Flute, lip: int, point_angle: float, lip_relief: float | None, axial_relief: float | None
) -> float:
    """The relief square to the lip, degrees, whichever way it was said."""
    if axial_relief is not None:
        return axial_relief
    ratio = flute.half_web(lip) / flute.radius
    return axial_relief_of.unchecked(lip_relief=lip_relief or 0.0, point_angle=point_angle, web_ratio=ratio)


def _plane(flute: Flute, lip: int, point_angle: float, relief: float) -> Plane:
    fall = 1 / math.tan(math.radians(point_angle / 2))
    return Plane(-fall, math.tan(math.radians(relief)), flute.half_web(lip))
