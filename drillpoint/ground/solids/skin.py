"""The skin of a ground drill as one net over its section: as fine as a tolerance asks, with every crease an edge."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
from attrs import frozen

from drillpoint.errors import OutOfRange
from drillpoint.ground.flute import Array
from drillpoint.ground.solids.net import Index, Net, split
from drillpoint.ground.solids.section import Section
from drillpoint.ground.solids.top import Top
from drillpoint.ground.stated import CannotBeGround

FLUTE_1, FLUTE_2, BODY_1, FRONT_1, STEP_1, BODY_2, FRONT_2, STEP_2 = (1 << bit for bit in range(8))
FIRST_CREASE = 1 << 8

_TRIAL = (10, 12)
_FEWEST = (6, 6)
_MOST_TRIANGLES = 8_000_000


@frozen
class Counts:
    """Steps of the net on each land, and across it."""

    out: int
    across: int


def skin(top: Top, tolerance: float) -> tuple[Net, int]:
    """The net over the top of the drill, and the mark of the nodes on the chisel edge.

    The greatest distance between net and drill is about `tolerance`, mm. Raises OutOfRange for a tolerance that would
    need too many triangles.
    """
    trial = _trial(top)
    s, w, marks, triangles = _grid(top.section, _counts(top, trial, tolerance))
    net = Net(s, w, *top.lift(s, w, _between(trial, s, w)), marks, triangles)
    mark = FIRST_CREASE
    for gap in top.gaps():
        net = split(net, top, gap, mark)
        mark <<= 1
    return net, mark >> 1


def is_whole(top: Top) -> bool:
    """Whether the flanks reach over the whole end of the drill; looks at a coarse net."""
    try:
        _trial(top)
    except CannotBeGround:
        return False
    return True


def pieces_of(net: Net, top: Top) -> Index:
    """Which piece of the top each triangle lies on."""
    heights = top.heights(net.x, net.y)
    above = heights - heights.min(axis=0)
    a, b, c = net.triangles.T
    return np.asarray((above[:, a] + above[:, b] + above[:, c]).argmin(axis=0))


def _counts(top: Top, trial: Array, tolerance: float) -> Counts:
    """How many steps keep the chords within the tolerance: from those of the trial net, as they go with its square."""
    out, across = _TRIAL
    rows, columns = np.linspace(-1, 1, 2 * out + 1), np.linspace(0, 1, across + 1)
    z = trial.ravel()
    x, y = top.section.places(np.repeat(rows, len(columns)), np.tile(columns, len(rows)), z)
    places = np.stack([x, y, z], axis=-1).reshape(2 * out + 1, across + 1, 3)
    piece = top.heights(x, y).argmin(axis=0).reshape(places.shape[:2])
    along = _sagitta(places, piece) * out**2
    aside = _sagitta(places.swapaxes(0, 1), piece.T) * across**2
    skewed = _skew(places, piece) * out * across
    half = tolerance / 2
    steps_out, steps_across = max(math.sqrt(along / half), _FEWEST[0]), max(math.sqrt(aside / half), _FEWEST[1])
    together = along / steps_out**2 + aside / steps_across**2 + skewed / (steps_out * steps_across)
    finer = math.sqrt(max(together / tolerance, 1.0))
    if 8 * steps_out * steps_across * finer**2 > _MOST_TRIANGLES:
        raise OutOfRange(
            f"tolerance {tolerance:g} mm would need millions of triangles on a drill of "
            f"{top.section.flute.diameter:g} mm; a thousandth of the diameter is fine enough for any picture or print"
        )
    return Counts(math.ceil(steps_out * finer), math.ceil(steps_across * finer))


def _sagitta(places: Array, piece: Index) -> float:
    """The greatest distance of the middle of three nodes in a line from the chord, over 4: that of one step's chord."""
    before, middle, after = places[:-2], places[1:-1], places[2:]
    chord = after - before
    length = np.maximum(np.linalg.norm(chord, axis=-1, keepdims=True), 1e-300)
    bend = middle - (before + after) / 2
    bend = bend - (bend * chord).sum(axis=-1, keepdims=True) * chord / length**2
    alike = (piece[:-2] == piece[1:-1]) & (piece[1:-1] == piece[2:])
    return float(np.where(alike, np.linalg.norm(bend, axis=-1), 0.0).max()) / 4


def _skew(places: Array, piece: Index) -> float:
    """How far the middle of a mesh of four nodes is off its diagonals."""
    a, b, c, d = places[:-1, :-1], places[1:, :-1], places[1:, 1:], places[:-1, 1:]
    normal = np.cross(c - a, d - b)
    normal = normal / np.maximum(np.linalg.norm(normal, axis=-1, keepdims=True), 1e-300)
    off = np.abs(((a + c - b - d) * normal).sum(axis=-1))
    alike = (piece[:-1, :-1] == piece[1:, :-1]) & (piece[1:, 1:] == piece[:-1, 1:]) & (piece[:-1, :-1] == piece[1:, 1:])
    return float(np.where(alike, off, 0.0).max()) / 4


def _trial(top: Top) -> Array:
    """Heights of the top at the nodes of a coarse net, row by row from the axis: each shows where to seek the next.

    Raises CannotBeGround where there is none.
    """
    out, across = _TRIAL
    aside = np.linspace(0, 1, across + 1)
    rows = np.empty((2 * out + 1, across + 1))
    for side in (1, -1):
        z = np.zeros(across + 1)
        for row in range(out + 1):
            *_, z = top.lift(np.full(across + 1, side * row / out), aside, z)
            rows[out + side * row] = z
    return rows


def _between(trial: Array, s: Array, w: Array) -> Array:
    """Heights at any nodes, near those of the top, from the trial net."""
    out, across = _TRIAL
    place, beside = (np.clip(s, -1, 1) + 1) * out, w * across
    i, j = np.minimum(place.astype(int), 2 * out - 1), np.minimum(beside.astype(int), across - 1)
    p, q = place - i, beside - j
    low, high = ((1 - q) * trial[k, j] + q * trial[k, j + 1] for k in (i, i + 1))
    return np.asarray((1 - p) * low + p * high)


def _columns(section: Section, across: int) -> Array:
    """The values of w of the net: one at the axis, one at the end of either margin."""
    flute, margin = section.flute, section.margin_at
    axis = flute.half_web(1) / (flute.half_web(1) + flute.half_web(2))
    if not margin < axis - 0.02 < 0.98 - margin:
        axis = 0.5
    stops = [0.0, *([margin, axis, 1 - margin] if margin else [axis]), 1.0]
    parts = [np.linspace(a, b, max(2, math.ceil((b - a) * across)), endpoint=False) for a, b in pairwise(stops)]
    return np.concatenate([*parts, [1.0]])


def _grid(section: Section, counts: Counts) -> tuple[Array, Array, Index, Index]:
    """s, w and marks of the nodes of the net before it is cut, and its triangles."""
    w = _columns(section, counts.across)
    s = np.linspace(-1, 1, 2 * counts.out + 1)
    s[counts.out] = 0.0
    width = len(w)
    number = np.arange(len(s) * width).reshape(len(s), width)
    nodes_s, nodes_w = np.repeat(s, width), np.tile(w, len(s))
    blocks = [number]
    last = int(np.searchsorted(w, section.margin_at)) if section.margin_at else 0
    if last:
        first = len(nodes_s)
        margin_1, margin_2 = np.arange(first, first + last + 1), np.arange(first + last + 1, first + 2 * last + 2)
        nodes_s = np.concatenate([nodes_s, np.full(last + 1, 2.0), np.full(last + 1, -2.0)])
        nodes_w = np.concatenate([nodes_w, w[: last + 1], w[-last - 1 :]])
        blocks += [np.stack([number[-1, : last + 1], margin_1]), np.stack([margin_2, number[0, -last - 1 :]])]
    triangles = np.concatenate([_meshes(block) for block in blocks])
    return nodes_s, nodes_w, _outlines(nodes_s, nodes_w, section.margin_at), triangles


def _meshes(number: Index) -> Index:
    a, b, c, d = (v.ravel() for v in (number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1]))
    return np.concatenate([np.stack([a, b, c], axis=1), np.stack([a, c, d], axis=1)])


def _outlines(s: Array, w: Array, margin: float) -> Index:
    """The outlines on which each node of the grid lies."""
    marks = np.where(w == 0, FLUTE_1, 0) | np.where(w == 1, FLUTE_2, 0)
    for sign, across, body, front, step in ((1, w, BODY_1, FRONT_1, STEP_1), (-1, 1 - w, BODY_2, FRONT_2, STEP_2)):
        # Counted from the other side, a column is found again but for the last digit.
        behind, at_end = across >= margin - 1e-9, np.abs(across - margin) < 1e-9
        marks |= np.where((s == sign) & behind, body, 0) | np.where(s == 2 * sign, front, 0)
        if margin:
            marks |= np.where((np.abs(s) >= 1) & (np.sign(s) == sign) & at_end, step, 0)
    return np.asarray(marks, dtype=np.int64)
