"""The conical flank: part of a cone, as a drill swung past a flat wheel about a slanting axis gets it."""

from __future__ import annotations

import math

import numpy as np
from attrs import frozen

from drillpoint.ground.flank import Placed, Surface
from drillpoint.ground.flute import Array, Flute
from drillpoint.ground.stated import CannotBeGround, stated


@frozen
class Cone:
    """The upper side of one half of a double cone whose axis lies in the plane y = apex_y and falls outwards.

    half_tangent: tangent of half the cone's angle. tilt: of the cone's axis from the drill axis, radians. The apex is
    at (apex_x, apex_y, apex_z), mm; the cone opens towards +x and down.
    """

    half_tangent: float
    tilt: float
    apex_x: float
    apex_y: float
    apex_z: float

    def height(self, x: Array, y: Array) -> Array:
        """z over the places x, y, mm; nan beyond the apex and where the side of the cone has fallen away."""
        return np.asarray(self.apex_z + self._from_apex(x, y)[2])

    def slope(self, x: Array, y: Array) -> tuple[Array, Array]:
        """How z changes with x and with y."""
        return self.height_and_slope(x, y)[1]

    def height_and_slope(self, x: Array, y: Array) -> tuple[Array, tuple[Array, Array]]:
        """Both at once."""
        sine, cosine, tan2 = math.sin(self.tilt), math.cos(self.tilt), self.half_tangent**2
        out, side, up = self._from_apex(x, y)
        along, across = out * sine - up * cosine, out * cosine + up * sine
        steep = across * sine + tan2 * along * cosine
        with np.errstate(invalid="ignore", divide="ignore"):
            return self.apex_z + up, ((tan2 * along * sine - across * cosine) / steep, -side / steep)

    def _from_apex(self, x: Array, y: Array) -> tuple[Array, Array, Array]:
        """From the apex to the places of the cone over x, y: in x, in y, and up; that is nan where there are none."""
        sine, cosine, tan2 = math.sin(self.tilt), math.cos(self.tilt), self.half_tangent**2
        out, side = x - self.apex_x, y - self.apex_y
        out2, side2 = out**2, side**2
        # (out·cos + up·sin)² + side² = tan²·(out·sin - up·cos)², a quadratic in the height above the apex. Of its
        # two heights the upper one is wanted; written like this it keeps its digits on a nearly flat cone.
        square = tan2 * out2 - (sine**2 - tan2 * cosine**2) * side2
        root = np.sqrt(np.where((out > 0) & (square >= 0), square, np.nan))
        up = -(out2 * (cosine**2 - tan2 * sine**2) + side2) / (out * sine * cosine * (1 + tan2) + root)
        return out, side, up


@stated
@frozen(kw_only=True)
class ConicalFlank:
    """Part of a cone behind the lip.

    cone_half_angle: between the cone's axis and its side, degrees. cone_tilt: between the cone's axis and the drill
    axis, degrees; tilt plus half angle is about half the point angle. apex_distance: how far the apex lies beyond the
    drill axis, away from the lip's outer corner, mm, along the lip in the end view. skew: how far the cone's axis
    passes beside the drill axis, square to the lip in the end view, mm, to the flute's side; half the web makes the lip
    a straight line of the cone. flank_height and flank_turn: as for PlaneFlank.

    The flat limit, a far apex, is a plane. Raises CannotBeGround for a cone that does not reach the lip.
    """

    cone_half_angle: float
    cone_tilt: float
    apex_distance: float
    skew: float
    flank_height: float = 0.0
    flank_turn: float = 0.0

    def __attrs_post_init__(self) -> None:
        together = self.cone_half_angle + self.cone_tilt
        if not 0 < together < 90:
            raise CannotBeGround(
                f"cone_half_angle {self.cone_half_angle:g}° and cone_tilt {self.cone_tilt:g}° make a lip at "
                f"{together:g}° to the axis; together they are about half the point angle, so 59° on a 118° point"
            )

    def over(self, flute: Flute, lip: int) -> Surface:
        """The cone on lip 1 or 2 of a flute, in lip 1's frame, as high as the design lip at x = 0."""
        cone = Cone(
            math.tan(math.radians(self.cone_half_angle)),
            math.radians(self.cone_tilt),
            -self.apex_distance,
            self.skew,
            0.0,
        )
        at_axis = float(cone.height(np.float64(0.0), np.float64(flute.half_web(lip))))  # type: ignore[arg-type]
        if not math.isfinite(at_axis):
            raise CannotBeGround(
                f"a cone of {self.cone_half_angle:g}° with its apex {self.apex_distance:g} mm beyond the axis and "
                f"{self.skew:g} mm beside it does not reach the lip; set the apex further away or the skew smaller"
            )
        return Placed(cone, math.radians(self.flank_turn), self.flank_height - at_axis)
