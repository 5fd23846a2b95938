"""The chisel edge: the line where the two flanks meet, from the end of one lip to the end of the other."""

from __future__ import annotations

from functools import cached_property

import numpy as np
from attrs import frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.lip import Lip, Place
from drillpoint.ground.stated import CannotBeGround

_SAMPLES = 21


@frozen
class ChiselEdge:
    """Where the two flanks meet, in lip 1's frame.

    lip: lip 1. first, second: the ends on lip 1 and on lip 2, points of three.
    """

    lip: Lip
    first: Array
    second: Array

    def trace(self, shares: Array) -> Array:
        """Points of the edge, one a row, at shares (0 to 1) of the straight way from the first end to the second."""
        chord = (self.second - self.first)[:2]
        across = np.array([-chord[1], chord[0]]) / np.hypot(*chord)
        start = self.first[:2] + shares[:, None] * chord
        shift = np.zeros_like(shares)
        for _ in range(40):
            x, y = (start + shift[:, None] * across).T
            gap, (gx, gy) = gap_between(self.lip, x, y)
            step = gap / (gx * across[0] + gy * across[1])
            shift = shift - step
            if np.abs(step).max() <= 1e-12 * self.lip.flute.radius:
                break
        x, y = (start + shift[:, None] * across).T
        return np.stack([x, y, self.lip.own.height(x, y)], axis=-1)

    @cached_property
    def sampled(self) -> Array:
        """Points from the first end to the second, at even shares of the way; nan where the flanks do not meet."""
        return self.trace(np.linspace(0.0, 1.0, _SAMPLES))

    def highest(self) -> float:
        """Height of its highest place, mm; the edge may be bent there or have a corner."""
        low, high = 0.0, 1.0
        shares, heights = np.linspace(low, high, _SAMPLES), self.sampled[:, 2]
        for _ in range(10):
            best = int(heights.argmax())
            beside = [max(best - 1, 0), min(best + 1, len(shares) - 1)]
            if heights[best] - heights[beside].min() <= 1e-10 * self.lip.flute.radius:
                break
            bends = -np.diff(heights, 2)
            # Close to the top of an even bend it is a parabola; a corner bends more than what lies beside it.
            if high - low < 0.2 and beside[1] - beside[0] == 2 and bends[best - 1] < 2 * np.median(bends):
                return float(heights[best] + (heights[best + 1] - heights[best - 1]) ** 2 / (8 * bends[best - 1]))
            low, high = shares[beside]
            shares = np.linspace(low, high, _SAMPLES)
            heights = self.trace(shares)[:, 2]
        return float(heights.max())

    def nearest_to_axis(self) -> Array:
        """x and y of the place of the edge, or of its prolongation, nearest to the drill axis."""
        place: Array = np.zeros(2)
        for _ in range(60):
            gap, (gx, gy) = gap_between(self.lip, place[:1], place[1:])
            normal = np.array([gx[0], gy[0]])
            # To the tangent of the edge at this place, and along it to the foot of the axis.
            before = place
            place = np.asarray(normal * ((normal @ before - gap[0]) / (normal @ normal)))
            if np.abs(place - before).max() <= 1e-13 * self.lip.flute.radius:
                break
        return place

    def direction_at(self, place: Array) -> Array:
        """Direction of the edge in the end view at x, y, of length one, towards lip 1's side."""
        _, (gx, gy) = gap_between(self.lip, place[:1], place[1:])
        along = np.array([gy[0], -gx[0]]) / np.hypot(gx[0], gy[0])
        forward = float(along @ (self.first - self.second)[:2]) > 0
        return np.asarray(along if forward else -along)


def gap_between(lip: Lip, x: Array, y: Array) -> tuple[Array, tuple[Array, Array]]:
    """How far the lip's own flank stands above the other at x, y, and how that changes with x and y."""
    (own, (own_x, own_y)), (other, (other_x, other_y)) = (
        flank.height_and_slope(x, y) for flank in (lip.own, lip.other)
    )
    return own - other, (own_x - other_x, own_y - other_y)


def chisel_edge(lip: Lip, first: Place, second: Place) -> ChiselEdge:
    """The chisel edge between the inner ends of both lips, each given in its own frame.

    Raises CannotBeGround when the two ends coincide or the flanks do not meet between them.
    """
    half_turn = np.array([-1.0, -1.0, 1.0])
    edge = ChiselEdge(lip, first.point[0], second.point[0] * half_turn)
    if np.hypot(*(edge.second - edge.first)[:2]) < 1e-9 * lip.flute.radius:
        raise CannotBeGround("the two lips meet in one point, which leaves no chisel edge; no drill has such a web")
    if not np.isfinite(edge.sampled).all():
        raise CannotBeGround("the two flanks do not meet between the lips; move the cone's apex further from the axis")
    return edge
