"""Measuring points and directions: lengths, turns, and the first place where something is reached."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np

from drillpoint.ground.flute import Array


def length_along(points: Array) -> float:
    """Length along points, one a row: straight steps, with what they cut off the curve put back (Richardson)."""
    fine, coarse = (float(np.linalg.norm(np.diff(p, axis=0), axis=1).sum()) for p in (points, points[::2]))
    return fine + (fine - coarse) / 3


def turn_between(first: Array, second: Array) -> float:
    """Degrees from one direction of the end view to another, counter-clockwise."""
    return math.degrees(math.atan2(first[0] * second[1] - first[1] * second[0], first @ second))


def unit(vectors: Array) -> Array:
    """Vectors along the last axis, made of length one."""
    return np.asarray(vectors / np.linalg.norm(vectors, axis=-1, keepdims=True))


def first_reached(beyond: Callable[[Array], Array], limit: float) -> tuple[float, float] | None:
    """Where, from 0 to the limit, something first comes to 0 or above: just before and just behind; None for nowhere.

    The start itself does not count. Behind a place where there is nothing (nan), nothing counts any more.
    """
    low, high = 0.0, limit
    for samples in (181, 33, 33, 33, 33, 33):
        places = np.linspace(low, high, samples)
        reached = beyond(places)[1:]
        found = np.flatnonzero((reached >= 0) & ~np.logical_or.accumulate(np.isnan(reached)))
        if not len(found):
            return None if high == limit else (low, high)
        low, high = float(places[found[0]]), float(places[found[0] + 1])
    return low, high
