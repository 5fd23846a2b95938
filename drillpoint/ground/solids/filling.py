"""Filling a flat outline with triangles: ears are cut off one by one, the best shaped first."""

from __future__ import annotations

import numpy as np

from drillpoint.ground.flute import Array
from drillpoint.ground.solids.net import Index
from drillpoint.ground.stated import CannotBeGround


def filled(outline: Array, near: float) -> Index:
    """Triangles, as three places in the outline each, that fill it.

    outline: x and y of its corners in order, counter-clockwise; it must not cross itself. near: lengths that count as
    nothing. Raises CannotBeGround if there is no way.
    """
    count = len(outline)
    before, after = np.roll(np.arange(count), 1), np.roll(np.arange(count), -1)
    left = np.ones(count, dtype=bool)
    score = np.array([_shape(outline, left, before[i], i, after[i], near) for i in range(count)])
    triangles = []
    for _ in range(count - 3):
        ear = int(score.argmax())
        if score[ear] <= 0:
            raise CannotBeGround("the notch leaves a wall too thin to be shown; change its notch_depth a little")
        a, b = int(before[ear]), int(after[ear])
        triangles.append((a, ear, b))
        after[a], before[b], left[ear], score[ear] = b, a, False, -1.0
        for node in (a, b):
            score[node] = _shape(outline, left, before[node], node, after[node], near)
    last = int(np.flatnonzero(left)[0])
    triangles.append((int(before[last]), last, int(after[last])))
    return np.array(_evened(outline.tolist(), triangles), dtype=np.int64)


def _evened(outline: list[list[float]], triangles: list[tuple[int, int, int]]) -> list[tuple[int, int, int]]:
    """The same with diagonals swapped until no corner lies in the circle round a neighbouring triangle (Lawson)."""
    made = list(triangles)
    owner = {side: number for number, (a, b, c) in enumerate(made) for side in ((a, b), (b, c), (c, a))}
    waiting = list(owner)
    for _ in range(50 * len(made)):
        if not waiting:
            break
        a, b = waiting.pop()
        first, second = owner.get((a, b)), owner.get((b, a))
        if first is None or second is None:
            continue
        c, d = (next(node for node in made[number] if node not in (a, b)) for number in (first, second))
        if not _swap_is_better(*(outline[node] for node in (a, b, c, d))):
            continue
        del owner[a, b], owner[b, a]
        made[first], made[second] = (a, d, c), (d, b, c)
        owner.update({(a, d): first, (d, c): first, (c, a): first, (d, b): second, (b, c): second, (c, d): second})
        waiting += [(a, d), (d, b), (b, c), (c, a)]
    return made


def _swap_is_better(a: list[float], b: list[float], c: list[float], d: list[float]) -> bool:
    """Whether d lies within the circle round a, b, c (counter-clockwise), and the diagonal c-d within all four."""
    if _area(a, d, c) <= 0 or _area(d, b, c) <= 0:
        return False
    (ax, ay), (bx, by), (cx, cy) = ((p[0] - d[0], p[1] - d[1]) for p in (a, b, c))
    squares = [x * x + y * y for x, y in ((ax, ay), (bx, by), (cx, cy))]
    parts = (
        squares[0] * (bx * cy - cx * by),
        squares[1] * (cx * ay - ax * cy),
        squares[2] * (ax * by - bx * ay),
    )
    return sum(parts) > 1e-12 * sum(abs(part) for part in parts)


def _area(a: list[float], b: list[float], c: list[float]) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _shape(
    outline: Array, left: np.ndarray[tuple[int], np.dtype[np.bool_]], a: int, b: int, c: int, near: float
) -> float:
    """How well shaped an ear is: its height over its longest side; -1 for none."""
    corners = outline[[a, b, c]]
    sides = outline[[b, c, a]] - corners
    area = sides[0, 0] * sides[1, 1] - sides[0, 1] * sides[1, 0]
    longest = float((sides**2).sum(axis=1).max())
    if area <= 1e-3 * near * near:
        return -1.0
    others = left.copy()
    others[[a, b, c]] = False
    off = outline[others][:, None, :] - corners
    inside = (sides[:, 0] * off[:, :, 1] - sides[:, 1] * off[:, :, 0] >= -1e-9 * longest).all(axis=1)
    return -1.0 if inside.any() else float(area / longest)
