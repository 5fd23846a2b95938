"""A triangle net over a section, and its splitting along creases, so that edges of the solid are edges of the net."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt
from attrs import frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.solids.top import Gap, Top

Index = npt.NDArray[np.int64]

_NEAR = 0.2
_THINNEST = 0.2


@frozen
class Net:
    """Triangles over a section, lifted onto the top.

    s, w: of each node (see `Section`). x, y, z: of each node. marks: bits of the lines each node lies on: outlines,
    which a node may slide along but never leave, and creases. triangles: three nodes each, counter-clockwise seen from
    the tip.
    """

    s: Array
    w: Array
    x: Array
    y: Array
    z: Array
    marks: Index
    triangles: Index


def split(net: Net, top: Top, gap: Gap, mark: int) -> Net:
    """The net with edges along the line where `gap` is zero; the nodes on that line get the mark.

    Nodes close to the line are moved onto it, so that no slivers arise; the other edges it crosses get a new node.
    """
    value = gap(net.x, net.y)
    sign = np.where(np.abs(value) <= 1e-12 * top.section.flute.radius, 0, np.sign(value)).astype(int)
    net = _marked(net, sign == 0, mark)
    edges = _crossed(net.triangles, sign)
    if not len(edges):
        return net
    share, s, w, x, y, z = _roots(net, top, gap, edges, value)
    net, sign = _snapped(net, sign, edges, share, (s, w, x, y, z), mark)
    still = sign[edges[:, 0]] * sign[edges[:, 1]] < 0
    edges, new = edges[still], [values[still] for values in (s, w, x, y, z)]
    marks = (net.marks[edges[:, 0]] & net.marks[edges[:, 1]]) | mark
    triangles = _cut(net.triangles, sign, edges, len(net.s))
    old = (net.s, net.w, net.x, net.y, net.z)
    s, w, x, y, z = (np.concatenate(pair) for pair in zip(old, new, strict=True))
    return Net(s, w, x, y, z, np.concatenate([net.marks, marks]), triangles)


def edges_of(triangles: Index) -> Index:
    """The three directed edges of every triangle: first all 0-1, then all 1-2, then all 2-0."""
    return np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])


def _marked(net: Net, chosen: npt.NDArray[np.bool_], mark: int) -> Net:
    return Net(net.s, net.w, net.x, net.y, net.z, net.marks | np.where(chosen, mark, 0), net.triangles)


def _crossed(triangles: Index, sign: Index) -> Index:
    """Edges from one side of the line to the other, each once, the lower node first."""
    signs = sign[triangles]
    edges = np.sort(edges_of(triangles[signs.min(axis=1) < 0]), axis=1)
    edges = edges[sign[edges[:, 0]] * sign[edges[:, 1]] < 0]
    return np.unique(edges, axis=0)


def _roots(net: Net, top: Top, gap: Gap, edges: Index, value: Array) -> tuple[Array, ...]:
    """Where the line crosses each edge, as a share of the edge, and the places there: false position, kept in step."""
    a, b = edges.T
    low, high, share = np.zeros(len(a)), np.ones(len(a)), np.full(len(a), 0.5)
    g_low, g_high = value[a], value[b]
    close = 1e-14 * top.section.flute.radius
    done = np.zeros(len(a), dtype=bool)
    z = net.z[a]
    for turn in range(60):
        with np.errstate(invalid="ignore", divide="ignore"):
            guess = (low + high) / 2 if turn % 5 == 4 else high - g_high * (high - low) / (g_high - g_low)
        share = np.where(done, share, guess)
        s, w = (v[a] + share * (v[b] - v[a]) for v in (net.s, net.w))
        x, y, z = top.lift(s, w, z)
        g = gap(x, y)
        done |= (np.abs(g) <= close) | (np.abs(high - low) < 1e-15)
        if done.all():
            break
        # The end that stays for a second time gets half its weight (the Illinois rule), or it would stay for ever.
        same = np.sign(g) == np.sign(g_high)
        g_low = np.where(same, g_low / 2, g_high)
        low = np.where(same, low, high)
        high, g_high = share, g
    return share, s, w, x, y, z


def _snapped(
    net: Net, sign: Index, edges: Index, share: Array, places: tuple[Array, ...], mark: int
) -> tuple[Net, Index]:
    """Nodes near the line moved onto it along an edge, but along outlines and creases only if they lie on one."""
    marks = net.marks[edges]
    free = (marks & ~(marks[:, :1] & marks[:, 1:])) == 0
    nodes = edges.T.ravel()
    away = np.concatenate([share, 1 - share])
    at = np.tile(np.arange(len(edges)), 2)
    chosen = free.T.ravel() & (away < _NEAR)
    order = np.argsort(-away[chosen])
    nodes, at = nodes[chosen][order], at[chosen][order]
    target = np.full(len(net.s), -1)
    target[nodes] = at
    touched = net.triangles[(target[net.triangles] >= 0).any(axis=1)]
    for _ in range(10):
        s, w = _moved(net.s, places[0], target), _moved(net.w, places[1], target)
        after = _doubled(s, w, touched)
        flat = after < _THINNEST * _doubled(net.s, net.w, touched)
        flat |= ((target[touched] >= 0) | (sign[touched] == 0)).all(axis=1)
        if not flat.any():
            break
        target[touched[flat].ravel()] = -1
    moved = target >= 0
    x, y, z = (_moved(v, p, target) for v, p in zip((net.x, net.y, net.z), places[2:], strict=True))
    net = Net(s, w, x, y, z, net.marks | np.where(moved, mark, 0), net.triangles)
    return net, np.where(moved, 0, sign)


def _moved(values: Array, places: Array, target: Index) -> Array:
    return np.where(target >= 0, places[target], values)


def _doubled(s: Array, w: Array, triangles: Index) -> Array:
    """Twice the area of each triangle in s and w, positive as the net winds."""
    a, b, c = triangles.T
    return np.asarray((s[c] - s[a]) * (w[b] - w[a]) - (s[b] - s[a]) * (w[c] - w[a]))


def _cut(triangles: Index, sign: Index, edges: Index, first: int) -> Index:
    """The triangles with those crossed by the line cut along it; edge number i gets the node first + i."""
    signs = sign[triangles]
    crossed = (signs.min(axis=1) < 0) & (signs.max(axis=1) > 0)
    through = crossed & (signs == 0).any(axis=1)
    keys = edges[:, 0] * first + edges[:, 1]

    def node(a: Index, b: Index) -> Index:
        return first + np.searchsorted(keys, np.minimum(a, b) * first + np.maximum(a, b))

    on, a, b = _turned_to(triangles[through], (signs[through] == 0).argmax(axis=1))
    middle = node(a, b)
    halves = [np.stack([on, a, middle], axis=1), np.stack([on, middle, b], axis=1)]
    whole = crossed & ~through
    odd = -signs[whole].sum(axis=1, keepdims=True)
    lone, a, b = _turned_to(triangles[whole], (signs[whole] == odd).argmax(axis=1))
    to_a, to_b = node(lone, a), node(lone, b)
    parts = [np.stack(part, axis=1) for part in ((lone, to_a, to_b), (to_a, a, b), (to_a, b, to_b))]
    return np.concatenate([triangles[~crossed], *halves, *parts])


def _turned_to(triangles: Index, corner: Index) -> tuple[Index, Index, Index]:
    """The corners of each triangle in their order, from the one asked for."""
    row = np.arange(len(triangles))
    return triangles[row, corner], triangles[row, (corner + 1) % 3], triangles[row, (corner + 2) % 3]
