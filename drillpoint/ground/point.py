"""The ground point: a flute, two flanks and perhaps two notches. Everything else is measured on it."""

from __future__ import annotations

import math
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np
from attrs import field, frozen

from drillpoint.ground.chisel import ChiselEdge, chisel_edge
from drillpoint.ground.flank import Flank, Surface
from drillpoint.ground.flute import Array, Flute
from drillpoint.ground.lip import Lip, Place, chisel_corner, lips
from drillpoint.ground.notch import Notch
from drillpoint.ground.stated import CannotBeGround
from drillpoint.ground.thinned import Thinned, thinned

if TYPE_CHECKING:
    from drillpoint.ground.inspection import Inspection
    from drillpoint.ground.solids.solid import Mesh


@frozen
class GroundPoint:
    """A drill with its point ground.

    flute: the drill. flank_1, flank_2: what the wheel left behind lip 1 and lip 2; one flank serves both when the
    second is left out. Two different ones make a faulty point. thinning_1, thinning_2: the notches that thin the web at
    lip 1 and lip 2; one serves both when the second is left out, and None leaves a side as it is.

    lips, chisel and feet (where the lips end at the chisel edge) are those of the point without notches; `thinned` says
    what the notches leave of them.

    Raises CannotBeGround, with the reason, for a point no wheel leaves.
    """

    flute: Flute
    flank_1: Flank
    flank_2: Flank = field()
    thinning_1: Notch | None = field(default=None, kw_only=True)
    thinning_2: Notch | None = field(kw_only=True)
    lips: tuple[Lip, Lip] = field(init=False, eq=False, repr=False)
    feet: tuple[Place, Place] = field(init=False, eq=False, repr=False)
    chisel: ChiselEdge = field(init=False, eq=False, repr=False)
    thinned: Thinned = field(init=False, eq=False, repr=False)

    @flank_2.default
    def _same(self) -> Flank:
        return self.flank_1

    @thinning_2.default
    def _same_notch(self) -> Notch | None:
        return self.thinning_1

    def __attrs_post_init__(self) -> None:
        both = lips(self.flute, self.flank_1, self.flank_2)
        for lip in both[: 1 if self.is_alike else 2]:
            _refuse_a_missing_land(lip)
        object.__setattr__(self, "lips", both)
        first = chisel_corner(both[0])
        second = first if self.is_alike else chisel_corner(both[1])
        object.__setattr__(self, "feet", (first, second))
        object.__setattr__(self, "chisel", chisel_edge(both[0], first, second))
        notches = (self.thinning_1, self.thinning_2)
        object.__setattr__(self, "thinned", thinned(both, self.feet, self.chisel, notches))

    @property
    def is_alike(self) -> bool:
        """Whether both halves are the same, half a turn apart."""
        same = self.flank_1 == self.flank_2 and self.thinning_1 == self.thinning_2
        return same and self.flute.web_offset == 0

    @cached_property
    def surfaces(self) -> tuple[Surface, Surface]:
        """The flanks of lip 1 and lip 2, both in lip 1's frame."""
        return self.lips[0].own, self.lips[0].other

    def height(self, x: Array, y: Array) -> Array:
        """Height of the point's top over the end view (lip 1's frame), mm: the lower of the two flanks.

        Notches undercut it; where they have taken metal, `is_notched` says.
        """
        first, second = self.surfaces
        return np.asarray(np.fmin(first.height(x, y), second.height(x, y)))

    def is_notched(self, x: Array, y: Array, z: Array) -> Array:
        """Whether a notch has taken the metal at a place (lip 1's frame)."""
        gone = [made.inside(x, y, z) for made in self.thinned.notches if made]
        return np.asarray(np.any(gone, axis=0) if gone else np.zeros(np.shape(x), dtype=bool))

    def inspect(self) -> Inspection:
        """Everything an inspector would measure, measured on the surfaces; see `Inspection`."""
        from drillpoint.ground.inspection import inspect

        return inspect(self)

    def mesh(
        self, *, tolerance: float = 0.01, length: float | None = None, scale: float = 1.0, **unknown: object
    ) -> Mesh:
        """The point and a length of fluted body as a closed solid of triangles; see `solids.mesh.mesh`."""
        from drillpoint.ground.solids.mesh import mesh

        return mesh(self, tolerance=tolerance, length=length, scale=scale, **unknown)


def _refuse_a_missing_land(lip: Lip) -> None:
    """The flank must reach over the whole land behind its lip."""
    flute = lip.flute
    corner = lip.corner
    start = math.atan2(float(corner.y[0]), float(corner.x[0]))
    back = np.linspace(0.0, min(lip.land_end, flute.land(lip.number)), 25)[:, None]
    radii = np.linspace(flute.half_web(lip.number), flute.radius, 6)
    angle = start - back
    height = lip.own.height(radii * np.cos(angle), radii * np.sin(angle))
    if not np.isfinite(height).all():
        raise CannotBeGround(
            f"the flank of {lip.name} falls away before the heel, so that no land is left; move the cone's apex "
            "further out, or give it a smaller skew or a larger half angle"
        )
