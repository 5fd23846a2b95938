"""The cross section of the fluted body, and how it winds along the drill: the ground under every solid.

A section is a strip across the web from one land to the other. A place in it has two numbers. `s` runs along the
strip: 0 beside the axis, 1 where land 1 ends, 1 to 2 in the margin of land 1, and the negatives on land 2. `w` runs
across it: 0 on the wall of flute 1, 1 on the wall of flute 2. The same s and w at another height is the place that the
same line of the helix has reached there.
"""

from __future__ import annotations

import math

import numpy as np
from attrs import field, frozen

from drillpoint.ground.flute import Array, Flute, turned
from drillpoint.ground.stated import CannotBeGround

_NARROWEST_FLUTE = math.radians(10)


@frozen
class Section:
    """The section of a drill at any height.

    flute: the drill. shoulder: heights between which the body goes over to its own diameter behind the point; none when
    body and point have the same. margin_at: the w at which the margin of land 1 ends (1 - w on land 2); 0 for a body
    that is not set back.
    """

    flute: Flute
    shoulder: tuple[float, float] | None = None
    margin_at: float = field(init=False)

    def __attrs_post_init__(self) -> None:
        flute = self.flute
        width, height = flute.margin
        if height >= 0.2 * flute.radius:
            raise CannotBeGround(
                f"margin_height {height:g} mm would take most of the land away; a sixtieth of the diameter "
                f"({flute.diameter / 60:.2g} mm) is usual"
            )
        object.__setattr__(self, "margin_at", 0.0)
        lands = [self._land(lip, np.asarray(0.0)) for lip in (1, 2)]
        if min(lands) <= 0 or math.pi - max(lands) < _NARROWEST_FLUTE:
            raise CannotBeGround(
                f"a heel_angle of {flute.heel_angle:g}° with this helix_angle, point_angle and web leaves no room for "
                "a land or for a flute; 75° is usual"
            )
        share = width / flute.radius / min(lands)
        if height > 0 and 0 < share < 0.95:
            object.__setattr__(self, "margin_at", min(max(share, 0.05), 0.4))

    @property
    def is_prism(self) -> bool:
        """Whether the section is the same at every height, but for its turning."""
        return self.flute.web_taper == 0 and self.shoulder is None

    def radius(self, z: Array) -> Array:
        """Half the diameter over the margins at height z, mm."""
        r = self.flute.radius
        if self.shoulder is None or self.flute.body_diameter is None:
            return np.full_like(z, r)
        high, low = self.shoulder
        return np.asarray(np.interp(z, [low, high], [self.flute.body_diameter / 2, r]))

    def set_back(self, z: Array) -> Array:
        """Half the diameter behind the margins at height z, mm."""
        return self.radius(z) - (self.flute.margin[1] if self.margin_at else 0.0)

    def places(self, s: Array, w: Array, z: Array) -> tuple[Array, Array]:
        """x and y of the places s, w at height z."""
        return turned(self.flute.twist * z, *self.untwisted(s, w, np.zeros(()) if self.is_prism else z))

    def untwisted(self, s: Array, w: Array, z: Array) -> tuple[Array, Array]:
        """x and y of the places s, w of the section at height z, turned back to where the flute stands at z = 0."""
        s, w, z = np.broadcast_arrays(np.asarray(s, float), np.asarray(w, float), np.asarray(z, float))
        x, y = np.empty(s.shape), np.empty(s.shape)
        for lip, half, sign in ((1, s >= 0, 1.0), (2, s < 0, -1.0)):
            across = w[half] if lip == 1 else 1 - w[half]
            px, py = self._half(lip, np.abs(s[half]), across, z[half])
            x[half], y[half] = sign * px, sign * py
        return x, y

    def _half(self, lip: int, s: Array, w: Array, z: Array) -> tuple[Array, Array]:
        """The half with the land of one lip, in that lip's frame; w from its own flute."""
        out = np.minimum(s, 1.0)
        x1, y1 = self._face(lip, out, z)
        x2, y2 = self._back(lip, out, z)
        r1, a1, r2, a2 = np.hypot(x1, y1), np.arctan2(y1, x1), np.hypot(x2, y2), np.arctan2(y2, x2)
        margin = self.flute.margin[0] / self.radius(z)
        share = w
        if self.margin_at:
            part = margin / self._land(lip, z)
            on_land = np.where(w < self.margin_at, 1.0, (1 - part) / (1 - self.margin_at))
            on_margin = part / self.margin_at
            share = np.where(w < self.margin_at, w * on_margin, 1 - (1 - w) * on_land)
            share = w + out * (share - w)
        # Straight across the web, round about the axis on the land, and smoothly from the one to the other.
        bulge = np.minimum(out / self._web_share(lip), 1.0)
        bulge = bulge * bulge * (3 - 2 * bulge)
        radius, angle = r1 + share * (r2 - r1), a1 + share * (a2 - a1)
        x = x1 + share * (x2 - x1) + bulge * (radius * np.cos(angle) - x1 - share * (x2 - x1))
        y = y1 + share * (y2 - y1) + bulge * (radius * np.sin(angle) - y1 - share * (y2 - y1))
        if self.margin_at and (s > 1).any():
            mx, my = self._margin(lip, s, w / self.margin_at * margin, z)
            x, y = np.where(s > 1, mx, x), np.where(s > 1, my, y)
        return x, y

    def _margin(self, lip: int, s: Array, behind: Array, z: Array) -> tuple[Array, Array]:
        """Places in the margin: s from 1 to 2 outwards, and the angle behind its leading edge."""
        radius = self.set_back(z) + (np.maximum(s, 1.0) - 1) * self.flute.margin[1]
        angle = self._face_angle(lip, radius, z) - behind
        return radius * np.cos(angle), radius * np.sin(angle)

    def _web_share(self, lip: int) -> float:
        """Up to which share of the way out the web still shows in the shape of the strip's cross lines."""
        webs = self.flute.half_web(1) + self.flute.half_web(2)
        return min(1.0, webs / math.sqrt(self.flute.radius**2 - self.flute.half_web(lip) ** 2))

    def _land(self, lip: int, z: Array) -> Array:
        """Angle of a land with its margin, where the body is set back, radians."""
        one = np.ones_like(z)
        x, y = self._back(lip, one, z)
        return np.asarray(self._face_angle(lip, self.set_back(z), z) - np.arctan2(y, x))

    def _face_angle(self, lip: int, radius: Array, z: Array) -> Array:
        """Where the wall that makes the lip is at a radius, radians, untwisted."""
        x, y = self._wall(lip, self.flute.along_at(lip, radius, z), z)
        return np.arctan2(y, x)

    def _face(self, lip: int, out: Array, z: Array) -> tuple[Array, Array]:
        """The wall that makes the lip, at a share of the way out."""
        return self._wall(lip, out * self.flute.along_at(lip, self.set_back(z), z), z)

    def _back(self, lip: int, out: Array, z: Array) -> tuple[Array, Array]:
        """The other flute's wall behind this lip's land, at a share of the way out, in this lip's frame."""
        flute, other = self.flute, 3 - lip
        back, web = flute.back_radius(other), flute.half_web_at(other, z)
        reach = out * flute.along_at(other, self.set_back(z), z)
        furthest = np.sqrt(np.maximum(flute.radius**2 - web**2, 0.0))
        # r² = web² + 4 (web + back) back sin²(bend / 2) on the arc.
        sine = np.minimum(reach, furthest) / (2 * np.sqrt((web + back) * back))
        along = -2 * back * np.arcsin(np.minimum(sine, 1.0))
        x, y = self._wall(other, along, z)
        # A body thicker than the point goes on straight outwards from the heel.
        beyond = np.sqrt((reach**2 + web**2) / (np.minimum(reach, furthest) ** 2 + web**2))
        return -x * beyond, -y * beyond

    def _wall(self, lip: int, along: Array, z: Array) -> tuple[Array, Array]:
        return turned(-self.flute.twist * z, *self.flute.wall(lip, along, z))
