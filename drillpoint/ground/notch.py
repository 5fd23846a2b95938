"""Notches: the cut of a wheel's corner that thins the web or splits the point.

A notch has two planes, its face and its floor, which meet in its corner line. The metal ahead of the face and above the
floor is gone. The face leaves a second, short lip beside the main lip; the floor runs out through the heel of the other
land into the flute.

The geometry, in the frame of the notch's own lip (z towards the tip, lip on y = +t, x > 0), with the end view's
directions d = (cos ν, sin ν) along the thinned lip and n = (-sin ν, cos ν) ahead of it:

- P, the chisel edge's new end, lies on the chisel edge: half of `thinned_chisel_length` from the place of the edge
  nearest to the axis, or where n·P is `face_distance`.
- M lies on the main lip where, in the end view, the line from P along d meets it. The thinned lip falls from P to M by
  m mm per mm of the end view.
- Of a place, s = d·(place - P), q = n·(place - P) and w = z - z_P. The face is q = tan γ·(w + m·s): it holds P and M
  and leans back below them by the notch rake γ. Ahead of it q is larger.
- The corner line passes through K, on the face, at s = 0 and w = -(notch depth), and falls by tan ε to the mm of s.
- The floor holds the corner line and stands at the notch angle χ to the face.
- With a corner radius r, what is gone is every cylinder of that radius that fits into the wedge: the corner between
  the planes keeps the metal no such cylinder reaches.

On lip 2 all this is turned half a turn.
"""

from __future__ import annotations

import math

import numpy as np
from attrs import frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.measuring import unit
from drillpoint.ground.stated import one_of, stated


@stated
@frozen(kw_only=True)
class Notch:
    """The settings of one notch; the module says how they fix its planes.

    thinned_chisel_length: what two such notches would leave of the chisel edge, in the end view, mm; or face_distance:
    how far from the axis the face passes, in the end view, at the chisel edge's new end, mm. thinning_angle: in the
    end view between thinned lip and main lip (the x axis), degrees. notch_depth: how far below the chisel edge's new
    end the corner line passes, mm; 0 lets the corner start there. notch_rake: how far the face leans back below the
    thinned lip, degrees; negative leans ahead. corner_radius: between face and floor, mm; 0 is sharp. notch_slope: how
    steeply the corner line falls into the flute, degrees. notch_angle: between face and floor, degrees. The last two
    are what the wheel and the way it is presented give; their defaults are our choice (a wheel dressed square).

    Raises OutOfRange, UnknownGiven or MissingGiven; what does not fit a drill is refused when it is ground.
    """

    thinning_angle: float
    thinned_chisel_length: float | None = None
    face_distance: float | None = None
    notch_depth: float = 0.0
    notch_rake: float = 0.0
    corner_radius: float = 0.0
    notch_slope: float = 55.0
    notch_angle: float = 90.0

    def __attrs_post_init__(self) -> None:
        one_of("Notch", thinned_chisel_length=self.thinned_chisel_length, face_distance=self.face_distance)


@frozen(eq=False)
class NotchCut:
    """A notch where it stands on a drill. Points and directions are of lip 1's frame, for lip 2's notch as well.

    lip: 1 or 2. end: P, where the chisel edge would end on a sharp notch. meets: M, where the thinned lip meets the
    main lip. corner: K, a point of the corner line. along: direction of the corner line, falling into the flute.
    face_normal, floor_normal: square to face and floor, of length one, towards the metal that is gone. radius: of the
    corner, mm.
    """

    lip: int
    end: Array
    meets: Array
    corner: Array
    along: Array
    face_normal: Array
    floor_normal: Array
    radius: float

    def face(self, x: Array, y: Array, z: Array) -> Array:
        """Distance from the face, mm; positive ahead of it, towards the metal that is gone."""
        return _beyond(self.corner, self.face_normal, x, y, z)

    def floor(self, x: Array, y: Array, z: Array) -> Array:
        """Distance from the floor, mm; positive above it, towards the metal that is gone."""
        return _beyond(self.corner, self.floor_normal, x, y, z)

    def depth(self, x: Array, y: Array, z: Array) -> Array:
        """How deep a place lies in what is gone, mm: the distance to its nearest wall, rounded corner included.

        Negative outside: minus the distance from what is gone.
        """
        face, floor = self.face(x, y, z) - self.radius, self.floor(x, y, z) - self.radius
        behind, below = self._of_axis(face, floor)
        round_it = self.radius - np.sqrt(np.maximum(-(behind * face + below * floor), 0.0))
        return np.where((behind > 0) & (below > 0), round_it, np.minimum(face, floor) + self.radius)

    def inside(self, x: Array, y: Array, z: Array) -> Array:
        """Whether places are in the metal that is gone."""
        return np.asarray(self.depth(x, y, z) > 0)

    def normal(self, x: Array, y: Array, z: Array) -> Array:
        """Which way `depth` grows, of length one, last axis of three: on a wall, square to it and out of the metal."""
        face, floor = self.face(x, y, z) - self.radius, self.floor(x, y, z) - self.radius
        behind, below = self._of_axis(face, floor)
        rounded = (behind > 0) & (below > 0)
        weights = (
            np.where(rounded, behind, np.where(face <= floor, 1.0, 0.0)),
            np.where(rounded, below, np.where(face <= floor, 0.0, 1.0)),
        )
        toward = weights[0][..., None] * self.face_normal + weights[1][..., None] * self.floor_normal
        return np.asarray(toward / np.linalg.norm(toward, axis=-1, keepdims=True))

    def rounding(self, steps: int) -> Array:
        """The corner's profile at K, square to the corner line: points from the face's end to the floor's, one a row.

        A sharp corner has the point K only. Every profile is the same moved along the corner line.
        """
        if self.radius == 0:
            return self.corner[None, :]
        axis = self.corner + (self.face_normal + self.floor_normal) * self.radius / (1 + self._leaning)
        shares = np.linspace(0.0, 1.0, steps + 1)[:, None]
        swing = math.acos(self._leaning)
        turn = np.sin((1 - shares) * swing) * self.face_normal + np.sin(shares * swing) * self.floor_normal
        return np.asarray(axis - self.radius * turn / math.sin(swing))

    @property
    def up_the_face(self) -> Array:
        """Direction in the face, square to the corner line and away from it."""
        return unit(self.floor_normal - self._leaning * self.face_normal)

    @property
    def out_on_the_floor(self) -> Array:
        """Direction in the floor, square to the corner line and away from it."""
        return unit(self.face_normal - self._leaning * self.floor_normal)

    @property
    def _leaning(self) -> float:
        """Cosine between the two normals: minus the cosine of the notch angle."""
        return float(self.face_normal @ self.floor_normal)

    def _of_axis(self, face: Array, floor: Array) -> tuple[Array, Array]:
        """How far behind and below the axis of the corner's rounding a place is, in steps along the two normals."""
        lean = self._leaning
        return (lean * floor - face) / (1 - lean**2), (lean * face - floor) / (1 - lean**2)


def cut(notch: Notch, lip: int, end: Array, meets: Array, fall: float) -> NotchCut:
    """Lay a notch on lip 1 or 2.

    end, meets: P and M as the module says, in the lip's own frame. fall: of the thinned lip, mm per mm of the end view.
    """
    angle = math.radians(notch.thinning_angle)
    out, ahead = np.array([math.cos(angle), math.sin(angle), 0.0]), np.array([-math.sin(angle), math.cos(angle), 0.0])
    up = np.array([0.0, 0.0, 1.0])
    lean, steep = math.tan(math.radians(notch.notch_rake)), math.tan(math.radians(notch.notch_slope))
    face = unit(ahead - lean * up - lean * fall * out)
    along = unit(out - steep * up + lean * (fall - steep) * ahead)
    up_the_face = np.cross(face, along)
    up_the_face *= math.copysign(1.0, up_the_face[2])
    opening = math.radians(notch.notch_angle)
    floor = math.sin(opening) * up_the_face - math.cos(opening) * face
    corner = end - notch.notch_depth * (up + lean * ahead)
    half_turn = np.array([1.0, 1.0, 1.0]) if lip == 1 else np.array([-1.0, -1.0, 1.0])
    placed = np.stack([end, meets, corner, along, face, floor]) * half_turn
    end, meets, corner, along, face, floor = placed
    return NotchCut(lip, end, meets, corner, along, face, floor, notch.corner_radius)


def _beyond(corner: Array, normal: Array, x: Array, y: Array, z: Array) -> Array:
    return np.asarray((x - corner[0]) * normal[0] + (y - corner[1]) * normal[1] + (z - corner[2]) * normal[2])
