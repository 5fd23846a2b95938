"""The top of a ground point over its section: which flank or facet is the lowest, and how high it stands."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from attrs import field, frozen

from drillpoint.ground.flank import Lower, Placed, Surface
from drillpoint.ground.flute import Array, turned
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.solids.section import Section
from drillpoint.ground.stated import CannotBeGround

Gap = Callable[[Array, Array], Array]
_CLOSE = 1e-13
_LOST = (
    "a flank falls away before the heel, or as steeply as the flute itself; set a cone's apex further out, or give the "
    "flank less relief"
)
_STEEPEST, _FLATTEST = 0.05, 4.0


def smooth_pieces(surface: Surface) -> list[Surface]:
    """The smooth surfaces that a flank is made of: one, or the facets."""
    if isinstance(surface, Placed):
        return [Placed(piece, surface.turn, surface.rise) for piece in smooth_pieces(surface.surface)]
    if isinstance(surface, Lower):
        return smooth_pieces(surface.first) + smooth_pieces(surface.second)
    return [surface]


@frozen
class Top:
    """The smooth pieces of a point's top, and the section they are ground on.

    pieces, names: all pieces and what they are called; owner: 1 or 2, the lip whose flank the piece is.
    """

    section: Section
    pieces: tuple[Surface, ...]
    names: tuple[str, ...]
    owner: tuple[int, ...]
    _flat: bool = field(init=False)

    def __attrs_post_init__(self) -> None:
        object.__setattr__(self, "_flat", self.section.is_prism)

    def heights(self, x: Array, y: Array) -> Array:
        """Height of each piece, one a row; infinite where a piece does not reach."""
        found = np.stack([piece.height(x, y) for piece in self.pieces])
        return np.where(np.isnan(found), np.inf, found)

    def gaps(self) -> list[Gap]:
        """Differences of height that are zero on a crease: first those within a flank, last the chisel edge."""
        pieces, owner = self.pieces, np.array(self.owner)
        found = [_between(pieces[i], pieces[i + 1]) for i in range(len(pieces) - 1) if owner[i] == owner[i + 1]]
        ceiling = 2 * self.section.flute.radius

        def chisel(x: Array, y: Array) -> Array:
            h = self.heights(x, y)
            first, second = h[owner == 1].min(axis=0), h[owner == 2].min(axis=0)
            with np.errstate(invalid="ignore"):
                return np.asarray(np.nan_to_num(np.clip(first - second, -ceiling, ceiling)))

        return [*found, chisel]

    def lift(self, s: Array, w: Array, z: Array) -> tuple[Array, Array, Array]:
        """Where the helical lines of the places s, w come out of the top: x, y and z. z: a guess.

        Raises CannotBeGround where they do not.
        """
        xy = self.section.untwisted(s, w, z) if self._flat else None

        def over(z: Array) -> tuple[Array, Array, Array]:
            x, y = self._turned(xy, s, w, z)
            return x, y, self.heights(x, y).min(axis=0)

        close = _CLOSE * self.section.flute.radius
        before, (x, y, top) = z, over(z)
        gap_before = before - top
        z = np.where(np.isfinite(top), z - gap_before / 2, z)
        for _ in range(60):
            x, y, top = over(z)
            gap = z - top
            if np.abs(gap).max(initial=0.0) <= close:
                self._refuse_a_lost_heel(s, x, y)
                return x, y, top
            with np.errstate(invalid="ignore", divide="ignore"):
                steep = (gap - gap_before) / (z - before)
            steep = np.where(np.isfinite(steep), np.clip(steep, _STEEPEST, _FLATTEST), 1.0)
            before, gap_before, z = z, gap, z - gap / steep
            if not np.isfinite(gap).all():
                break
        raise CannotBeGround(_LOST)

    def _refuse_a_lost_heel(self, s: Array, x: Array, y: Array) -> None:
        """On the outer half of a land the lip's own flank must be there; the other lip's stands high above it."""
        for lip, land in ((1, s > 0.5), (2, s < -0.5)):
            own = np.array(self.owner) == lip
            if not np.isfinite(self.heights(x[land], y[land])[own]).any(axis=0).all():
                raise CannotBeGround(_LOST)

    def _turned(self, xy: tuple[Array, Array] | None, s: Array, w: Array, z: Array) -> tuple[Array, Array]:
        if xy is None:
            return self.section.places(s, w, z)
        return turned(self.section.flute.twist * z, *xy)


def _between(first: Surface, second: Surface) -> Gap:
    return lambda x, y: np.asarray(first.height(x, y) - second.height(x, y))


def top_of(point: GroundPoint, section: Section) -> Top:
    """The top of a ground point."""
    pieces: list[Surface] = []
    names: list[str] = []
    owner: list[int] = []
    for lip, surface in enumerate(point.surfaces, start=1):
        found = smooth_pieces(surface)
        pieces += found
        owner += [lip] * len(found)
        if len(found) == 1:
            names.append(f"flank {lip}")
        else:
            names += [f"{kind} facet {lip}" for kind in ("primary", "secondary")]
    return Top(section, tuple(pieces), tuple(names), tuple(owner))
