"""The line between the two facets behind a lip, as it is seen from the tip."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING

import numpy as np

from drillpoint.ground import FacetedFlank, GroundPoint

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from drillpoint.ground.flute import Array

_PLACES = 4001


def facet_edges(point: GroundPoint, outline: tuple[Array, Array]) -> Iterator[tuple[Array, Array]]:
    """The ends of the line between primary and secondary facet of each lip that has them, in lip 1's frame, mm.

    outline: where the top of the point ends, once round; the line runs inside it, over its own flank.
    """
    for number, flank in ((1, point.flank_1), (2, point.flank_2)):
        if isinstance(flank, FacetedFlank):
            sign = 1.0 if number == 1 else -1.0
            found = _edge(point, number, flank, (sign * outline[0], sign * outline[1]))
            if found is not None:
                yield sign * found[0], sign * found[1]


def _edge(
    point: GroundPoint, number: int, flank: FacetedFlank, outline: tuple[Array, Array]
) -> tuple[Array, Array] | None:
    lip, (_, secondary) = point.lips[number - 1], flank.facets(point.flute, number)
    along, turn = np.linspace(-point.flute.radius, point.flute.radius, _PLACES), math.radians(flank.flank_turn)
    x = along * math.cos(turn) - secondary.y0 * math.sin(turn)
    y = along * math.sin(turn) + secondary.y0 * math.cos(turn)
    # Where the other flank is no higher than this one, this facet has been ground away.
    seen = _inside(outline, x, y) & (lip.own.height(x, y) <= lip.other.height(x, y) + 1e-9)
    at = np.flatnonzero(seen)
    return (x[at[[0, -1]]], y[at[[0, -1]]]) if len(at) else None


def _inside(outline: tuple[Array, Array], x: Array, y: Array) -> NDArray[np.bool_]:
    """Whether places lie inside a closed line: a ray from there to the right crosses it an odd number of times."""
    from_x, from_y = outline
    to_x, to_y = np.roll(from_x, -1), np.roll(from_y, -1)
    with np.errstate(divide="ignore", invalid="ignore"):
        crossing = from_x + (y[:, None] - from_y) * (to_x - from_x) / (to_y - from_y)
    passed = ((from_y > y[:, None]) != (to_y > y[:, None])) & (x[:, None] < crossing)
    return np.asarray(passed.sum(axis=1) % 2 == 1)
