"""The flutes of a drill and the body they leave: all of the drill but its point.

Frame: the drill axis is z with the tip towards +z, right-hand, lip 1 on y = +t for x > 0. z = 0 is where the straight
design lip, prolonged, passes the axis. A left-hand drill is the mirror image, so it is worked out as a right-hand one
and mirrored in y when it is drawn or made solid.
"""

from __future__ import annotations

import math
from functools import cached_property
from typing import Literal

import numpy as np
import numpy.typing as npt
from attrs import field, frozen

from drillpoint.ground.stated import CannotBeGround, one_of, stated

Array = npt.NDArray[np.float64]

_WIDEST_WEB = 0.8  # half webs, in half diameters: beyond that there is no flute to speak of
_LEAST_BEND = math.radians(10)
_ABOVE_THE_WEB = 1.15  # how far beside the axis a heel stands at least, in half webs


def turned(angle: Array, x: Array, y: Array) -> tuple[Array, Array]:
    """The places x, y turned round the axis by an angle in radians, counter-clockwise seen from the tip."""
    cosine, sine = np.cos(angle), np.sin(angle)
    return x * cosine - y * sine, x * sine + y * cosine


@stated
@frozen(kw_only=True)
class Flute:
    """Two equal flutes, cut so that a point of the design angle gets straight lips.

    diameter: over the outer corners, mm. web or web_ratio: web thickness at z = 0, or that over the diameter.
    helix_angle: at the diameter of the body, degrees; 0 is a straight flute. point_angle: the whole angle the flute was
    designed for; ground to another one, the lips are curved. hand: "right" or "left". web_taper: mm of web per mm
    towards the shank. web_offset: how far the middle of the web lies off the axis, mm, towards lip 1: lip 1 then lies
    web/2 + web_offset beside the axis, lip 2 web/2 - web_offset. body_diameter: of the drill behind the point, mm;
    left out, the same as the diameter. heel_angle: of the land in a section square to the axis, from its leading edge
    back to the heel, degrees; a flute for a sharp point on a fast helix leaves more (see `land`). margin_width: mm, and
    margin_height: how far the body behind the margin is set back, mm; left out, 8 % and 1.5 % of the diameter (our
    choice, for drawings that look like a drill).

    The side of the flute that makes the lip is the helicoid that the straight design lip sweeps. Between lip and heel
    the flute is closed by an arc that touches the web: a plausible shape, of our choosing. No reading of the lip
    depends on it as long as the lip ends before the foot of the axis, as it does on a point with relief there.

    Raises OutOfRange, UnknownGiven or MissingGiven for impossible numbers, CannotBeGround if they do not go together.
    """

    diameter: float
    web: float | None = None
    web_ratio: float | None = None
    helix_angle: float = 30.0
    point_angle: float = 118.0
    hand: Literal["right", "left"] = "right"
    web_taper: float = 0.0
    web_offset: float = 0.0
    body_diameter: float | None = None
    heel_angle: float = 75.0
    margin_width: float | None = None
    margin_height: float | None = None
    _half_webs: tuple[float, float] = field(init=False, eq=False, repr=False)
    _heels: tuple[float, float] = field(init=False, eq=False, repr=False)
    _back_radii: tuple[float, float] = field(init=False, eq=False, repr=False)

    def __attrs_post_init__(self) -> None:
        if self.hand not in ("right", "left"):
            raise CannotBeGround(f"hand is {self.hand!r}; a drill is 'right' or 'left'")
        if one_of("Flute", web=self.web, web_ratio=self.web_ratio) == "web":
            web = float(self.web or 0.0)
        else:
            web = float(self.web_ratio or 0.0) * self.diameter
        halves = (web / 2 + self.web_offset, web / 2 - self.web_offset)
        object.__setattr__(self, "_half_webs", halves)
        if min(halves) <= 0:
            raise CannotBeGround(
                f"with a web of {web:g} mm set off by {self.web_offset:g} mm one flute reaches the axis and cuts the "
                f"drill in two; keep web_offset under half the web ({web / 2:g} mm)"
            )
        if max(halves) >= _WIDEST_WEB * self.radius:
            raise CannotBeGround(
                f"a web of {web:g} mm leaves no flute in a drill of {self.diameter:g} mm; an eighth of the diameter is "
                "usual"
            )
        object.__setattr__(self, "_heels", (self._heel(1), self._heel(2)))
        object.__setattr__(self, "_back_radii", (self._back_to_heel(1), self._back_to_heel(2)))

    def _leading_edge(self, lip: int) -> float:
        """Where lip 1's or lip 2's leading edge is at z = 0, radians from the way its lip points."""
        t = self.half_web(lip)
        return math.asin(t / self.radius) + self.twist * self.design_slope * math.sqrt(self.radius**2 - t**2)

    def _heel(self, lip: int) -> float:
        """Where this lip's flute ends, at the heel of the other land, at z = 0; radians from the way this lip points.

        Kept to where an arc can touch the web and lead there.
        """
        wanted = math.pi + self._leading_edge(3 - lip) - math.radians(self.heel_angle)
        flattest = math.pi - max(_LEAST_BEND, math.asin(_ABOVE_THE_WEB * self.half_web(lip) / self.radius))
        return min(max(wanted, math.pi / 2 + _LEAST_BEND), flattest)

    def _back_to_heel(self, lip: int) -> float:
        t, heel = self.half_web(lip), math.sin(self._heels[lip - 1])
        # The arc's middle is (0, c) and its radius c - t; the heel is on it: R² - 2 R c sin(heel) + c² = (c - t)².
        c = (self.radius**2 - t**2) / (2 * (self.radius * heel - t))
        return c - t

    def land(self, lip: int) -> float:
        """Angle of lip 1's or lip 2's land in a section square to the axis, radians."""
        return math.pi + self._leading_edge(lip) - self._heels[2 - lip]

    @cached_property
    def radius(self) -> float:
        """Half the diameter at the outer corners, mm."""
        return self.diameter / 2

    @cached_property
    def twist(self) -> float:
        """How far the flutes turn for a step along the axis, radians per mm."""
        return math.tan(math.radians(self.helix_angle)) * 2 / (self.body_diameter or self.diameter)

    @cached_property
    def design_slope(self) -> float:
        """Fall of the design lip towards the outside, mm per mm: the cotangent of half the design angle."""
        return 1 / math.tan(math.radians(self.point_angle / 2))

    def half_web(self, lip: int) -> float:
        """Distance of lip 1 or lip 2 from the axis at z = 0, mm."""
        return self._half_webs[lip - 1]

    def half_web_at(self, lip: int, z: Array) -> Array:
        """The same where the flute is cut at height z: it grows towards the shank with the web's taper."""
        return np.asarray(self.half_web(lip) - self.web_taper / 2 * z)

    def back_radius(self, lip: int) -> float:
        """Radius of the arc that closes the flute, mm: it touches the web beside the axis and ends at the heel."""
        return self._back_radii[lip - 1]

    def wall(self, lip: int, along: Array, z: Array) -> tuple[Array, Array]:
        """A place on a flute's wall, as x and y of lip 1's frame (lip 2's flute is turned half a turn into it).

        along: along the wall's end section from the foot of the axis, mm: towards the lip's outer corner when positive,
        towards the heel opposite when negative. z: height of the place.
        """
        t = self.half_web_at(lip, z)
        if along.min(initial=0.0) >= 0:
            return turned(self.turn(along, z), along, t)
        back = self.back_radius(lip)
        bend = np.minimum(along, 0.0) / back
        x0 = np.where(along > 0, along, back * np.sin(bend))
        return turned(self.turn(along, z), x0, t + back * (1 - np.cos(bend)))

    def turn(self, along: Array, z: Array) -> Array:
        """How far the flute has turned the place `along` of its wall at height z, radians."""
        return np.asarray(self.twist * (z + np.maximum(along, 0.0) * self.design_slope))

    def wall_slopes(self, lip: int, along: Array, z: Array) -> tuple[tuple[Array, Array], tuple[Array, Array]]:
        """How x and y of `wall` change with `along`, and with z."""
        x, y = self.wall(lip, along, z)
        angle = self.turn(along, z)
        bend = np.minimum(along, 0.0) / self.back_radius(lip)
        out_x, out_y = turned(angle, np.cos(bend), np.sin(bend))
        swing = np.where(along > 0, self.twist * self.design_slope, 0.0)
        return (out_x - swing * y, out_y + swing * x), self.wall_rise(along, z, x, y)

    def wall_rise(self, along: Array, z: Array, x: Array, y: Array) -> tuple[Array, Array]:
        """How x and y of a place of the wall change with z."""
        if not self.web_taper:
            return -self.twist * y, self.twist * x
        angle, grow = self.turn(along, z), -self.web_taper / 2
        return -grow * np.sin(angle) - self.twist * y, grow * np.cos(angle) + self.twist * x

    def along_at(self, lip: int, radius: Array, z: Array) -> Array:
        """Where on the face of the flute (the lip's side) a radius is reached at height z."""
        return np.asarray(np.sqrt(np.maximum(radius**2 - self.half_web_at(lip, z) ** 2, 0.0)))

    @property
    def margin(self) -> tuple[float, float]:
        """Width and height of the margin, mm."""
        width = 0.08 * self.diameter if self.margin_width is None else self.margin_width
        height = 0.015 * self.diameter if self.margin_height is None else self.margin_height
        return width, height
