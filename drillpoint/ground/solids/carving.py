"""Notches carved out of a closed mesh: cut along their planes, emptied, and closed again with triangles on the planes.

What a notch takes is convex: everything above its face, its floor and the flats that stand for a rounded corner. Each
of these planes splits the triangles it crosses; those above all of them go; the hole they leave in a plane is filled.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from itertools import pairwise

import numpy as np
import numpy.typing as npt
from attrs import frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.notch import NotchCut
from drillpoint.ground.solids.filling import filled
from drillpoint.ground.solids.net import Index, edges_of
from drillpoint.ground.solids.solid import Mesh
from drillpoint.ground.solids.subdividing import subdivided, with_nodes
from drillpoint.ground.stated import CannotBeGround

# A vertex so near to a plane, as a share of the drill's diameter, counts as on it, so that no slivers are cut off.
_ON_PLANE = 4e-5
# A vertex nearer to a plane than this share of an edge is moved onto it, if that leaves its triangles this much area.
_CLOSE_BY, _LEAST_LEFT = 0.15, 0.3


@frozen(eq=False)
class Wall:
    """One plane of a notch: square to it, towards what is gone; a point where it meets the next wall; its name."""

    normal: Array
    seam: Array
    name: str

    def above(self, points: Array) -> Array:
        """Distance of points above the plane, mm."""
        return np.asarray((points - self.seam) @ self.normal)


@frozen(eq=False)
class _Cutting:
    """A mesh while it is cut. below: for each triangle the first plane that it is below, or -1 while there is none."""

    points: Array
    triangles: Index
    faces: Index
    below: Index
    lines: Mapping[str, Index]

    @property
    def inside(self) -> npt.NDArray[np.bool_]:
        """Which triangles are above all planes so far."""
        return np.asarray(self.below < 0)


def carved(made: Mesh, cut: NotchCut, tolerance: float) -> Mesh:
    """The mesh without what a notch takes. A rounded corner is made of flats within the tolerance, mm.

    The faces "notch 1 face", "notch 1 floor" and, if rounded, "notch 1 corner" are new, and so is the line
    "thinned lip 1", from the chisel edge to the main lip; lips and chisel edge become what is left of them.
    """
    walls = _walls(cut, tolerance)
    near = _ON_PLANE * float(np.ptp(made.vertices[:, 0]))
    triangles, faces = made.triangles.astype(np.int64), made.faces.astype(np.int64)
    below, around = _region(made.vertices, triangles, walls, near)
    lines = {name: line.astype(np.int64) for name, line in made.edges.items()}
    now = _Cutting(made.vertices, triangles[around], faces[around], below[around], lines)
    for number, wall in enumerate(walls):
        now = _cut_by(now, wall, number, near)
    names = tuple(dict.fromkeys([*made.names, *(wall.name for wall in walls)]))
    rims = _closed_by_seams(now.points, _rims(now, len(walls)), cut.along)
    caps = [_cap(now.points, rim, wall, cut.along, near) for rim, wall in zip(rims, walls, strict=True)]
    kept, kept_faces = now.triangles[~now.inside], now.faces[~now.inside]
    on_flank = np.isin(kept_faces, [i for i, name in enumerate(names) if _is_flank(name, cut.lip)])
    thinned = np.intersect1d(rims[0], kept[on_flank])
    thinned = thinned[np.argsort(now.points[thinned] @ (cut.meets - cut.end))]
    new = [np.full(len(cap), names.index(wall.name)) for cap, wall in zip(caps, walls, strict=True)]
    return _compact(
        now.points,
        np.concatenate([triangles[~around], kept, *caps]),
        np.concatenate([faces[~around], kept_faces, *new]),
        names,
        {**now.lines, f"thinned lip {cut.lip}": thinned},
    )


def _is_flank(name: str, lip: int) -> bool:
    return name.endswith(f" {lip}") and name.startswith(("flank", "primary", "secondary"))


def _region(points: Array, triangles: Index, walls: list[Wall], near: float) -> tuple[Index, npt.NDArray[np.bool_]]:
    """The first plane that each triangle is wholly below, or -1; and which triangles may reach into the notch or touch
    one that does."""
    below = np.full(len(triangles), -1)
    for number, wall in enumerate(walls):
        under = ~(wall.above(points) > near)[triangles].any(axis=1)
        below[under & (below < 0)] = number
    touched = np.zeros(len(points), dtype=bool)
    touched[triangles[below < 0]] = True
    return below, np.asarray(touched[triangles].any(axis=1))


def _walls(cut: NotchCut, tolerance: float) -> list[Wall]:
    """Face, flats of the corner, floor; each with a point of the line where it meets the next."""
    face, floor = f"notch {cut.lip} face", f"notch {cut.lip} floor"
    lean = math.acos(float(np.clip(cut.face_normal @ cut.floor_normal, -1, 1)))
    fine = tolerance < cut.radius
    steps = max(2, math.ceil(lean / (2 * math.acos(1 - tolerance / cut.radius)))) if fine else 1
    profile = cut.rounding(steps)
    toward = cut.face_normal + cut.floor_normal
    walls = [Wall(cut.face_normal, profile[0], face)]
    for a, b in pairwise(profile):
        normal = np.cross(cut.along, b - a)
        normal *= math.copysign(1.0, float(normal @ toward)) / float(np.linalg.norm(normal))
        walls.append(Wall(normal, b, f"notch {cut.lip} corner"))
    return [*walls, Wall(cut.floor_normal, profile[-1], floor)]


def _cut_by(now: _Cutting, wall: Wall, number: int, near: float) -> _Cutting:
    """Split the triangles that are inside so far along a plane, and their neighbours where an edge got a new node."""
    points = _settled(now, wall, near)
    above = wall.above(points)
    sign = np.where(np.abs(above) <= near, 0, np.sign(above)).astype(int)
    a, b = _crossed(now, sign).T
    count = len(points)
    keys = a * count + b
    share = (above[a] / (above[a] - above[b]))[:, None]
    points = np.concatenate([points, points[a] + share * (points[b] - points[a])])
    triangles, parent = subdivided(now.triangles, keys, points, count)
    sign = np.concatenate([sign, np.zeros(len(keys), dtype=int)])
    higher = (sign[triangles] >= 0).all(axis=1) & (sign[triangles] > 0).any(axis=1)
    lines = {name: with_nodes(line, keys, count) for name, line in now.lines.items()}
    below = now.below[parent]
    return _Cutting(points, triangles, now.faces[parent], np.where((below < 0) & ~higher, number, below), lines)


def _crossed(now: _Cutting, sign: Index) -> Index:
    """The edges inside so far that lead from one side of a plane to the other, each once, in order."""
    edges = np.sort(edges_of(now.triangles[now.inside]), axis=1)
    edges = edges[sign[edges[:, 0]] * sign[edges[:, 1]] < 0]
    count = len(sign)
    keys = np.unique(edges[:, 0] * count + edges[:, 1])
    return np.stack([keys // count, keys % count], axis=1)


def _settled(now: _Cutting, wall: Wall, near: float) -> Array:
    """The vertices, those close to the plane moved onto it along an edge, so that it cuts no slivers.

    A vertex on a line between faces moves along that line only.
    """
    above = wall.above(now.points)
    edges = _crossed(now, np.where(np.abs(above) <= near, 0, np.sign(above)).astype(int))
    # Each edge once for either end, the end to be moved first.
    both = np.concatenate([edges, edges[:, ::-1]])
    share = above[both[:, 0]] / (above[both[:, 0]] - above[both[:, 1]])
    both, share = both[share < _CLOSE_BY], share[share < _CLOSE_BY]
    around = np.isin(now.triangles, both[:, 0]).any(axis=1)
    triangles = now.triangles[around]
    # One bit for the face and one for the plane it is below: a corner of the notch has more of them than its edges.
    kind = (1 << now.faces[around]) | (1 << (40 + (now.below[around] + 1) % 22))
    of_vertex = np.zeros(len(now.points), dtype=np.int64)
    np.bitwise_or.at(of_vertex, triangles.ravel(), np.repeat(kind, 3))
    free = (of_vertex[both[:, 0]] & ~_kinds_beside(triangles, kind, both)) == 0
    order = np.flatnonzero(free)[np.argsort(-share[free])]
    target = np.full(len(now.points), -1)
    target[both[order, 0]] = order
    before = _areas(now.points, triangles)
    while True:
        points = now.points.copy()
        moved = np.flatnonzero(target >= 0)
        a, b = both[target[moved]].T
        points[moved] += share[target[moved]][:, None] * (now.points[b] - now.points[a])
        crushed = (_areas(points, triangles) * before).sum(axis=1) < _LEAST_LEFT * (before**2).sum(axis=1)
        crushed &= (target[triangles] >= 0).any(axis=1)
        if not crushed.any():
            return points
        target[triangles[crushed].ravel()] = -1


def _kinds_beside(triangles: Index, kind: Index, edges: Index) -> Index:
    """The kinds of both triangles beside each edge."""
    sides = np.sort(edges_of(triangles), axis=1)
    count = int(sides.max(initial=0)) + 1
    keys, where = np.unique(sides[:, 0] * count + sides[:, 1], return_inverse=True)
    found = np.zeros(len(keys), dtype=np.int64)
    np.bitwise_or.at(found, where, np.tile(kind, 3))
    wanted = np.sort(edges, axis=1)
    return found[np.searchsorted(keys, wanted[:, 0] * count + wanted[:, 1])]


def _areas(points: Array, triangles: Index) -> Array:
    """Normals of triangles, as long as twice their areas."""
    a, b, c = (points[triangles[:, corner]] for corner in range(3))
    return np.cross(b - a, c - a)


def _rims(now: _Cutting, walls: int) -> list[Index]:
    """The directed edges round what is taken, wall by wall: each lies on the wall that its other triangle is below."""
    edges, below = edges_of(now.triangles), np.tile(now.below, 3)
    count = len(now.points)
    forth, back = edges[:, 0] * count + edges[:, 1], edges[:, 1] * count + edges[:, 0]
    taken, kept = np.flatnonzero(below < 0), np.flatnonzero(below >= 0)
    kept = kept[np.argsort(forth[kept])]
    at = np.minimum(np.searchsorted(forth[kept], back[taken]), len(kept) - 1)
    beside = forth[kept][at] == back[taken]
    on_wall = below[kept][at]
    return [edges[taken[beside & (on_wall == number)]] for number in range(walls)]


def _closed_by_seams(points: Array, rims: list[Index], along: Array) -> list[Index]:
    """The rims with the seams between the walls, where those run through the metal."""
    count = len(points)
    leaving = [np.bincount(rim[:, 0], minlength=count) - np.bincount(rim[:, 1], minlength=count) for rim in rims]
    for here, there in pairwise(range(len(rims))):
        ends = np.flatnonzero((leaving[here] != 0) & (leaving[here] + leaving[there] == 0))
        ends = ends[np.argsort(points[ends] @ along)]
        if len(ends) % 2 or (leaving[here][ends[::2]] + leaving[here][ends[1::2]]).any():
            raise CannotBeGround(_GRAZES)
        pairs = ends.reshape(-1, 2)
        pairs = np.where(leaving[here][pairs[:, :1]] < 0, pairs, pairs[:, ::-1])
        rims[here], rims[there] = np.concatenate([rims[here], pairs]), np.concatenate([rims[there], pairs[:, ::-1]])
        leaving[here][ends] = leaving[there][ends] = 0
    if any(end.any() for end in leaving):
        raise CannotBeGround(_GRAZES)
    return rims


_GRAZES = "the notch only grazes the drill, so that no clean edge is left; give it a little more or less notch_depth"


def _cap(points: Array, rim: Index, wall: Wall, along: Array, near: float) -> Index:
    """Triangles on one wall within its rim."""
    flat = points @ np.stack([along, np.cross(wall.normal, along)], axis=1)
    parts = [loop[filled(flat[loop], near)] for loop in _loops(rim)]
    return np.concatenate([np.empty((0, 3), dtype=np.int64), *parts])


def _loops(rim: Index) -> list[Index]:
    """Directed edges joined to closed loops of nodes."""
    after = dict(rim.tolist())
    if len(after) < len(rim):
        raise CannotBeGround(_GRAZES)
    loops = []
    while after:
        first, node = next(iter(after.items()))
        loop = [first]
        del after[first]
        while node != first:
            loop.append(node)
            node = after.pop(node)
        loops.append(np.array(loop))
    return loops


def _compact(points: Array, triangles: Index, faces: Index, names: tuple[str, ...], lines: Mapping[str, Index]) -> Mesh:
    """A mesh without the vertices that no triangle needs."""
    used = np.zeros(len(points), dtype=bool)
    used[triangles] = True
    number = np.where(used, np.cumsum(used) - 1, -1).astype(np.int32)
    edges = {name: number[line][number[line] >= 0] for name, line in lines.items()}
    return Mesh(points[used], number[triangles], names, faces.astype(np.int32), edges)
