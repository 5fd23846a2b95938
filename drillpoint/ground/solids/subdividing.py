"""Triangles divided where their edges got a new node in the middle, so that neighbours still fit together."""

from __future__ import annotations

import numpy as np

from drillpoint.ground.flute import Array
from drillpoint.ground.solids.net import Index


def subdivided(triangles: Index, keys: Index, points: Array, count: int) -> tuple[Index, Index]:
    """The triangles with the new nodes on their edges, and which triangle each came from.

    keys: the divided edges in order, each as its lower node times `count` plus its higher; number i gets the node
    count + i. points: of all nodes, the new ones included.
    """
    middle = np.stack([_node_on(triangles[:, i], triangles[:, (i + 1) % 3], keys, count) for i in range(3)], axis=1)
    parts = (middle >= 0).sum(axis=1)
    whole = np.flatnonzero(parts == 0)
    made, parent = [triangles[whole]], [whole]

    def add(rows: Index, *corners: tuple[Index, Index, Index]) -> None:
        made.extend(np.stack(corner, axis=1) for corner in corners)
        parent.extend([rows] * len(corners))

    rows = np.flatnonzero(parts == 1)
    (a, b, c), (ab, _, _) = _from_corner(triangles, middle, rows, (middle[rows] >= 0).argmax(axis=1))
    add(rows, (a, ab, c), (ab, b, c))
    rows = np.flatnonzero(parts == 2)
    (a, b, c), (ab, _, ca) = _from_corner(triangles, middle, rows, ((middle[rows] < 0).argmax(axis=1) + 2) % 3)
    straight = _distance(points, ab, c) <= _distance(points, ca, b)
    add(rows, (a, ab, ca), (ab, b, np.where(straight, c, ca)), (np.where(straight, ab, b), c, ca))
    rows = np.flatnonzero(parts == 3)
    (a, b, c), (ab, bc, ca) = _from_corner(triangles, middle, rows, np.zeros(len(rows), dtype=int))
    add(rows, (a, ab, ca), (ab, b, bc), (ca, bc, c), (ab, bc, ca))
    return np.concatenate(made), np.concatenate(parent)


def with_nodes(line: Index, keys: Index, count: int) -> Index:
    """A named line with the new nodes on it."""
    new = _node_on(line[:-1], line[1:], keys, count)
    found = np.flatnonzero(new >= 0)
    return np.insert(line, found + 1, new[found])


def _node_on(a: Index, b: Index, keys: Index, count: int) -> Index:
    """The new node on each edge, or -1."""
    wanted = np.minimum(a, b) * count + np.maximum(a, b)
    at = np.minimum(np.searchsorted(keys, wanted), max(len(keys) - 1, 0))
    return np.where(keys[at] == wanted, count + at, -1) if len(keys) else np.full(len(wanted), -1)


def _from_corner(
    triangles: Index, middle: Index, rows: Index, corner: Index
) -> tuple[tuple[Index, ...], tuple[Index, ...]]:
    """Corners of some triangles, and the new nodes on their sides, in their order from the corner asked for."""
    order = [(corner + i) % 3 for i in range(3)]
    return tuple(triangles[rows, i] for i in order), tuple(middle[rows, i] for i in order)


def _distance(points: Array, a: Index, b: Index) -> Array:
    return np.asarray(np.linalg.norm(points[a] - points[b], axis=1))
