"""What is seen of a ground point as a solid, as plain data: parts, shaded triangles, edges, and where to look from."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt
from attrs import frozen

from drillpoint.drawing.solid.parts import LINES, SURFACES, kind_of
from drillpoint.errors import LearnerError, OutOfRange
from drillpoint.quantities import nearest

if TYPE_CHECKING:
    from drillpoint.ground.point import GroundPoint
    from drillpoint.ground.solids.solid import Mesh

Floats = npt.NDArray[np.float64]
Index = npt.NDArray[np.int64]

NO_PART = 255
_TOLERANCE, _LENGTH = 0.0016, 2.2  # of the diameter: finer than a pixel of the picture, and enough body to see it twist
_CREASE = math.cos(math.radians(30))
_BENT = math.cos(math.radians(1))


@frozen
class View:
    """Where to look from.

    turn: of the drill about its axis, degrees, counter-clockwise seen from the tip. tilt: 0 looks square to the axis
    with the tip up, 90 onto the tip.
    """

    name: str
    title: str
    turn: float
    tilt: float


@frozen(eq=False)
class Shown:
    """A solid ready for drawing.

    parts: names of faces and edges. places, normals: of each corner, shape (n, 3); corners are split where faces meet,
    so that each belongs to one part, `of_place`. triangles: (m, 3). lines: pairs of places, (k, 2), sorted by their
    part `of_line`; NO_PART for an edge without a name. views: the ones to choose from; the first is the usual one.
    """

    parts: tuple[str, ...]
    places: Floats
    normals: Floats
    of_place: Index
    triangles: Index
    lines: Index
    of_line: Index
    views: tuple[View, ...]
    radius: float


def shown(point: GroundPoint) -> Shown:
    """The solid of a ground point.

    Raises CannotBeGround for a point that makes no solid.
    """
    mesh = _mesh(point)
    edges = {_edge_name(name): line for name, line in mesh.edges.items() if len(line) > 1}
    faces = [name for number, name in enumerate(mesh.names) if (mesh.faces == number).any()]
    parts = (*sorted(edges, key=_edge_order), *sorted(faces, key=_face_order))
    of_triangle = np.array([parts.index(name) if name in parts else 0 for name in mesh.names])[mesh.faces]
    keys, corner = np.unique(mesh.triangles * len(parts) + of_triangle[:, None], return_inverse=True)
    triangles = corner.reshape(-1, 3)
    vertex, of_place = np.divmod(keys, len(parts))
    across = _normals(mesh.vertices, mesh.triangles)
    normals = np.zeros((len(keys), 3))
    for side in triangles.T:
        np.add.at(normals, side, across)
    at = np.zeros(len(mesh.vertices), dtype=np.int64)
    at[vertex] = np.arange(len(vertex))
    lines, of_line = _lines(mesh, edges, parts, across)
    return Shown(
        parts=parts,
        places=mesh.vertices[vertex],
        normals=_unit(normals),
        of_place=of_place,
        triangles=triangles,
        lines=at[lines],
        of_line=of_line,
        views=_views(mesh),
        radius=point.flute.radius,
    )


def view_named(views: tuple[View, ...], name: str) -> View:
    """The view of this name.

    Raises LearnerError with the nearest name.
    """
    names = tuple(view.name for view in views)
    if name not in names:
        raise LearnerError(f"there is no view {name!r}{nearest(str(name), names)}")
    return views[names.index(name)]


def _mesh(point: GroundPoint) -> Mesh:
    diameter = point.flute.diameter
    tolerance = _TOLERANCE * diameter
    try:
        return point.mesh(tolerance=tolerance, length=_LENGTH * diameter)
    except OutOfRange:  # flanks that reach further down than that
        return point.mesh(tolerance=tolerance)


def _edge_name(name: str) -> str:
    return name.replace("margin", "leading edge")


def _edge_order(name: str) -> tuple[int, str]:
    kinds = ("lip", "thinned lip", "chisel edge", "leading edge", "heel")
    return kinds.index(kind_of(name)) if kind_of(name) in kinds else len(kinds), name


def _face_order(name: str) -> tuple[int, str]:
    kinds = [*SURFACES]
    return kinds.index(kind_of(name)) if kind_of(name) in kinds else len(kinds), name


def _normals(vertices: Floats, triangles: npt.NDArray[np.int32]) -> Floats:
    """Square to each triangle, as long as twice its area."""
    a, b, c = (vertices[corner] for corner in triangles.T)
    return np.cross(b - a, c - a)


def _unit(vectors: Floats) -> Floats:
    lengths = np.linalg.norm(vectors, axis=1, keepdims=True)
    return np.asarray(vectors / np.where(lengths > 0, lengths, 1.0))


def _lines(
    mesh: Mesh, edges: dict[str, npt.NDArray[np.int32]], parts: tuple[str, ...], across: Floats
) -> tuple[Index, Index]:
    """Edges that are drawn: where two faces meet at an angle, creases within a face, and those with a name."""
    count = len(mesh.vertices)
    pairs = np.sort(mesh.triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1).astype(np.int64)
    order = np.argsort(pairs @ [count, 1], kind="stable")
    pairs, triangle = pairs[order][::2], order.reshape(-1, 2) // 3
    facing = _unit(across)
    bend = np.einsum("ij,ij->i", facing[triangle[:, 0]], facing[triangle[:, 1]])
    differ = mesh.faces[triangle[:, 0]] != mesh.faces[triangle[:, 1]]
    flat = (np.linalg.norm(across[triangle], axis=2) <= 0).any(axis=1)
    drawn = pairs[((differ & (bend < _BENT)) | (bend < _CREASE)) & ~flat]
    named = [np.stack([line[:-1], line[1:]], axis=1).astype(np.int64) for line in edges.values()]
    numbers = [np.full(len(line), parts.index(name)) for name, line in zip(edges, named, strict=True)]
    taken = np.sort(np.concatenate(named), axis=1) @ [count, 1]
    drawn = drawn[~np.isin(drawn @ [count, 1], taken)]
    lines = np.concatenate([*named, drawn])
    of_line = np.concatenate([*numbers, np.full(len(drawn), NO_PART)])
    sort = np.argsort(of_line, kind="stable")
    return lines[sort], of_line[sort]


def _views(mesh: Mesh) -> tuple[View, ...]:
    chisel = mesh.vertices[mesh.edges["chisel edge"][[0, -1]]]
    along = math.degrees(math.atan2(*(chisel[1] - chisel[0])[[1, 0]]))
    # The mirror image of a right-hand drill, seen from the mirrored place.
    left = bool(mesh.vertices[mesh.edges["lip 1"][-1], 1] < 0)
    return (
        View("above", "from above", 195.0 if left else -15.0, 45.0),
        View("end", "end view", 0.0, 90.0),
        View("side", "square to the lips", 180.0, 0.0),
        View("along lips", "along the lips", 90.0, 0.0),
        View("along chisel edge", "along the chisel edge", (90.0 - along) % 360.0, 0.0),
    )


def kinds_of_line(parts: tuple[str, ...]) -> dict[int, str]:
    """The kind of line each named edge is; the rest are "edge"."""
    kinds = {number: kind_of(name) for number, name in enumerate(parts) if kind_of(name) in LINES}
    return {**kinds, NO_PART: "edge"}
