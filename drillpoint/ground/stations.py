"""Readings along a lip: relief, rake, inclination, and the gap between flank and work behind it."""

from __future__ import annotations

import math

import numpy as np
from attrs import frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.lip import Lip, Place
from drillpoint.ground.measuring import first_reached, unit


@frozen(eq=False)
class Stations:
    """Readings at places along a lip, one an entry; degrees and mm. The drill turns and is not fed.

    radius: distance from the drill axis. relief: fall of the flank round the axis, in the plane that touches the
    cylinder of that radius. normal_rake: how the flute's face leans back from square to the way the place moves, in the
    plane square to the lip. inclination: between the lip and square to the way it moves; positive where the outer part
    of the lip trails.
    """

    radius: Array
    relief: Array
    normal_rake: Array
    inclination: Array


def stations(lip: Lip, place: Place) -> Stations:
    """Readings at places of a lip."""
    return of_edge(place.point, _face(lip, place), flank_normal(lip, place.x, place.y))


def of_edge(points: Array, face: Array, flank: Array) -> Stations:
    """Readings at points of any cutting edge, one a row, in the frame of its lip.

    face: square to the surface the chip runs over, out of the metal, of any length. flank: square to the surface behind
    the edge, with 1 along the axis.
    """
    x, y = points[:, 0], points[:, 1]
    radius = np.hypot(x, y)
    moves = np.stack([-y, x, np.zeros_like(radius)], axis=-1) / radius[:, None]
    along = unit(np.cross(flank, face))
    across = unit(moves - _dot(moves, along)[:, None] * along)
    square = np.cross(across, along)
    down = np.cross(along, face)
    return Stations(
        radius=radius,
        relief=np.degrees(np.arctan(-_dot(flank, moves))),
        normal_rake=np.degrees(np.arctan2(-_dot(down, across), _dot(down, square))),
        inclination=np.degrees(np.arcsin(-_dot(along, moves))),
    )


def clearance(lip: Lip, radius: float, feed: float, back: Array) -> Array:
    """Gap between flank and work at angles (radians) behind a place of the lip, mm; negative where the flank would rub.

    The work is what the place itself left: it rises by the feed in a full turn.
    """
    return _clearance(lip, lip.at_radius(np.array([radius])), feed, back)


def _clearance(lip: Lip, place: Place, feed: float, back: Array) -> Array:
    x, y, z = place.point[0]
    angle, radius = math.atan2(y, x) - back, math.hypot(x, y)
    flank = lip.own.height(radius * np.cos(angle), radius * np.sin(angle))
    return np.asarray(z - feed * back / (2 * math.pi) - flank)


def first_contact(lip: Lip, radius: float, feed: float, limit: float) -> float | None:
    """Degrees behind a place of the lip where the flank first touches the work; None when not within the limit.

    A cone may fall away altogether. What comes up beyond that, on its far side, is no longer behind this lip.
    """
    place = lip.corner if radius == lip.flute.radius else lip.at_radius(np.array([radius]))
    found = first_reached(lambda back: -_clearance(lip, place, feed, back), limit)
    if found is None:
        return None
    low, high = found
    if low == 0.0:
        return 0.0
    before, after = _clearance(lip, place, feed, np.array([low, high]))
    return math.degrees(low + (high - low) * before / (before - after))


def _face(lip: Lip, place: Place) -> Array:
    """Normal of the flute's wall."""
    (ax, ay), (zx, zy) = lip.flute.wall_slopes(lip.number, place.along, place.z)
    zero, one = np.zeros_like(ax), np.ones_like(ax)
    return np.cross(np.stack([ax, ay, zero], axis=-1), np.stack([zx, zy, one], axis=-1))


def flank_normal(lip: Lip, x: Array, y: Array) -> Array:
    """Normal of the lip's flank over the places x, y, with 1 along the axis."""
    sx, sy = lip.own.slope(x, y)
    return np.stack([-sx, -sy, np.ones_like(sx)], axis=-1)


def _dot(a: Array, b: Array) -> Array:
    return np.asarray((a * b).sum(axis=-1))
