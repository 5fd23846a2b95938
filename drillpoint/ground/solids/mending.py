"""Triangles too thin to survive rounding, taken out of a closed mesh by drawing two of their corners together."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt
from attrs import evolve

from drillpoint.ground.flute import Array
from drillpoint.ground.solids.net import Index
from drillpoint.ground.solids.solid import Mesh

# Heights as shares of the drill's width. Rounding to single precision moves a vertex by some ten-millionths.
_THIN = 3e-6
_AT_MOST = 100


def mended(made: Mesh, reach: float) -> Mesh:
    """The mesh without the triangles that are next to nothing high. No vertex is moved further than `reach`, mm.

    What cannot be mended so stays: the mesh is closed before and after. Lines of which nothing is left are dropped.
    """
    triangles, faces = made.triangles.astype(np.int64), made.faces
    moved_to = np.arange(len(made.vertices))
    thin = _THIN * float(np.ptp(made.vertices[:, 0]))
    given_up: set[tuple[int, ...]] = set()
    for _ in range(_AT_MOST):
        bad = [
            t for t in np.flatnonzero(_heights(made.vertices, triangles) < thin) if _key(triangles[t]) not in given_up
        ]
        if not bad:
            break
        ends = _ends_to_join(made.vertices, triangles, triangles[bad[0]], reach)
        if ends is None:
            given_up.add(_key(triangles[bad[0]]))
            continue
        gone, kept = ends
        moved_to[moved_to == gone] = kept
        triangles = np.where(triangles == gone, kept, triangles)
        stays = _three(triangles)
        triangles, faces = triangles[stays], faces[stays]
    used = np.zeros(len(made.vertices), dtype=bool)
    used[triangles] = True
    number = (np.cumsum(used) - 1).astype(np.int32)
    lines = {name: _without_repeats(number[moved_to[line]]) for name, line in made.edges.items()}
    edges = {name: line for name, line in lines.items() if len(line) > 1}
    return evolve(made, vertices=made.vertices[used], triangles=number[triangles], faces=faces, edges=edges)


def _key(triangle: Index) -> tuple[int, ...]:
    return tuple(sorted(triangle.tolist()))


def _three(triangles: Index) -> npt.NDArray[np.bool_]:
    """Which triangles still have three corners."""
    a, b, c = triangles.T
    return np.asarray((a != b) & (b != c) & (c != a))


def _heights(points: Array, triangles: Index) -> Array:
    a, b, c = (points[triangles[:, corner]] for corner in range(3))
    longest = np.sqrt(np.max([((p - q) ** 2).sum(axis=1) for p, q in ((a, b), (b, c), (c, a))], axis=0))
    return np.asarray(np.linalg.norm(np.cross(b - a, c - a), axis=1) / longest)


def _ends_to_join(points: Array, triangles: Index, thin: Index, reach: float) -> tuple[int, int] | None:
    """A corner of a thin triangle, and the one it can be moved onto without folding or pinching the skin."""
    pairs = [(int(thin[i]), int(thin[j])) for i in range(3) for j in range(3) if i != j]
    for gone, kept in sorted(pairs, key=lambda pair: float(np.linalg.norm(points[pair[0]] - points[pair[1]]))):
        if np.linalg.norm(points[gone] - points[kept]) > reach:
            return None
        around, beside = triangles[(triangles == gone).any(axis=1)], triangles[(triangles == kept).any(axis=1)]
        if len(np.intersect1d(around, beside)) != 4:
            continue
        after = np.where(around == gone, kept, around)
        stays = _three(after)
        before, after = _normals(points, around[stays]), _normals(points, after[stays])
        # A thin triangle's own normal says nothing; what had a shape must keep its direction.
        turned = (before * after).sum(axis=1) <= 0.5 * np.linalg.norm(before, axis=1) * np.linalg.norm(after, axis=1)
        shaped = _heights(points, around[stays]) > _THIN * float(np.ptp(points[:, 0]))
        if not (turned & shaped).any():
            return gone, kept
    return None


def _normals(points: Array, triangles: Index) -> Array:
    a, b, c = (points[triangles[:, corner]] for corner in range(3))
    return np.asarray(np.cross(b - a, c - a))


def _without_repeats(line: npt.NDArray[np.int32]) -> npt.NDArray[np.int32]:
    return np.asarray(line[np.diff(line, prepend=-1) != 0])
