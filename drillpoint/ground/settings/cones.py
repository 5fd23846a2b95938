"""Where a grinding cone must lie so that three angles come out: the geometry of both families of set-ups.

Frame: lip 1's, in units of half the diameter. Wanted are the half angle of the lip, the relief at its corner, and the
direction of the chisel edge at the drill axis. The lip is taken to lie in the plane y = half web, as on a straight
flute; `setups_conical` mends what a twisted flute changes.

A cone has the same tangent plane all along one of its straight lines. So a wanted tangent (the direction round the
drill at the corner, or that of the chisel edge at the axis) picks the straight line through that place by itself,
wherever the cone's apex may be. That leaves equations that can be written down.
"""

from __future__ import annotations

import math

from attrs import frozen

from drillpoint.ground.stated import CannotBeGround
from drillpoint.quantities import quantity
from drillpoint.relations import axial_relief

Vector = tuple[float, float, float]

_LOWEST, _HIGHEST, _STEP = -20.0, 1.0, 0.25
# With its apex so many half diameters away a cone is a plane, for any wheel.
_FLAT = 1e6
_MOST_TURN = math.radians(quantity("flank_turn").possible.high)


@frozen
class Wanted:
    """Three angles in radians: half the point angle, relief at the corner, acute angle of the chisel edge; and t/R."""

    half_angle: float
    relief: float
    chisel: float
    web_ratio: float

    @property
    def corner(self) -> float:
        """x of the outer corner."""
        return math.sqrt(1 - self.web_ratio**2)

    @property
    def round_the_drill(self) -> Vector:
        """From the corner back round the drill, falling with the wanted relief."""
        level = math.cos(self.relief)
        return self.web_ratio * level, -self.corner * level, -math.sin(self.relief)

    @property
    def along_the_chisel(self) -> Vector:
        """The chisel edge where it crosses the axis; both flanks are alike, so it is level there."""
        return math.cos(self.chisel), math.sin(self.chisel), 0.0


@frozen
class ConePlace:
    """A cone: half angle, tilt and turn (of its axis, round the drill) in radians; the rest in half diameters.

    distance, skew: how far the apex lies beyond and beside the drill axis, in the direction turned to.
    """

    half_angle: float
    tilt: float
    distance: float
    skew: float
    turn: float = 0.0


def fall_beside(wanted: Wanted) -> float:
    """Fall of the plane that touches the flank along a straight lip, square to the lip, mm per mm."""
    relief = axial_relief.unchecked(
        lip_relief=math.degrees(wanted.relief),
        point_angle=math.degrees(2 * wanted.half_angle),
        web_ratio=wanted.web_ratio,
    )
    return math.tan(math.radians(relief))


def skewed_axis(wanted: Wanted, half_angle: float) -> ConePlace:
    """The cone whose axis lies in a plane parallel to lip and drill axis; raises CannotBeGround if there is none.

    For a tilt, the two tangents give apex distance and skew. The tilt follows from the lip's chord by halving: the
    chord's half angle grows with the tilt. Past a certain tilt no cone has both tangents; there the apex is infinitely
    far away and the flank a plane.
    """
    base = math.degrees(wanted.half_angle - half_angle)
    tilts = [math.radians(base + _LOWEST + _STEP * n) for n in range(int((_HIGHEST - _LOWEST) / _STEP) + 1)]
    missed = [_chord_missed(wanted, half_angle, tilt) if tilt > 0 else None for tilt in tilts]
    for right in range(len(tilts) - 1, 0, -1):
        before, after = missed[right - 1], missed[right]
        is_between = before is not None and before < 0 and (after is None or after >= 0)
        if is_between and (found := _halved(wanted, half_angle, tilts[right - 1], tilts[right])):
            return _not_flat(found)
    raise CannotBeGround("steered so far round, the chisel edge would bend away before it reaches the lip")


def _halved(wanted: Wanted, half_angle: float, low: float, high: float) -> ConePlace | None:
    # The chord may be right only a hair before the tilt at which the apex is infinitely far away.
    reached = False
    for _ in range(60):
        middle = (low + high) / 2
        miss = _chord_missed(wanted, half_angle, middle)
        if miss is not None and miss < 0:
            low = middle
        else:
            high, reached = middle, reached or miss is not None
    found = _placed(wanted, half_angle, low)
    return found[0] if reached and found else None


def _not_flat(place: ConePlace) -> ConePlace:
    if math.hypot(place.distance, place.skew) > _FLAT:
        raise CannotBeGround("the flank would so nearly be a plane that its apex is out of reach")
    return place


def _chord_missed(wanted: Wanted, half_angle: float, tilt: float) -> float | None:
    """By how much the half angle of the lip's chord is too large; None where no cone has both tangents."""
    found = _placed(wanted, half_angle, tilt)
    if found is None:
        return None
    place, corner_depth = found
    foot = _foot(wanted, place)
    if foot is None:
        return None
    x, depth = foot
    return math.atan2(wanted.corner - x, corner_depth - depth) - wanted.half_angle


def _placed(wanted: Wanted, half_angle: float, tilt: float) -> tuple[ConePlace, float] | None:
    """The cone with both tangents, and how deep the lip's corner lies below its apex."""
    at_axis = _straight_line(half_angle, tilt, wanted.along_the_chisel, 1.0)
    at_corner = _straight_line(half_angle, tilt, wanted.round_the_drill, -1.0)
    if at_axis is None or at_corner is None:
        return None
    # From the apex along one line to the axis and along the other to the corner; they end the corner's x, y apart.
    cross = at_axis[0] * at_corner[1] - at_corner[0] * at_axis[1]
    if cross == 0:
        return None
    to_corner = (at_axis[0] * wanted.web_ratio - at_axis[1] * wanted.corner) / cross
    to_axis = (at_corner[0] * wanted.web_ratio - at_corner[1] * wanted.corner) / cross
    if to_corner <= 0 or to_axis <= 0:
        return None
    place = ConePlace(half_angle, tilt, to_axis * at_axis[0], -to_axis * at_axis[1])
    return place, -to_corner * at_corner[2]


def _straight_line(half_angle: float, tilt: float, tangent: Vector, side: float) -> Vector | None:
    """Direction, from the apex down, of the straight line along which the cone's upper side contains a tangent.

    There are two; side 1 or -1 says which. None when the tangent points into the cone, or when it is the lower side.
    """
    axis = (math.sin(tilt), 0.0, -math.cos(tilt))
    upward = (math.cos(tilt), 0.0, math.sin(tilt))
    return _line_about(half_angle, axis, upward, (0.0, -1.0, 0.0), tangent, side)


def _line_about(
    half_angle: float, axis: Vector, first: Vector, second: Vector, tangent: Vector, side: float
) -> Vector | None:
    # The line at b round the axis is cos θ·axis + sin θ·e with e = cos b·first + sin b·second; the cone's normal on it
    # is cos θ·e - sin θ·axis. Square to the tangent: e·tangent = tan θ·(axis·tangent).
    p, q = _dot(first, tangent), _dot(second, tangent)
    share = math.tan(half_angle) * _dot(axis, tangent) / math.hypot(p, q)
    if abs(share) > 1:
        return None
    b = math.atan2(q, p) + side * math.acos(share)
    out = _sum(math.cos(b), first, math.sin(b), second)
    normal = _sum(math.cos(half_angle), out, -math.sin(half_angle), axis)
    return _sum(math.cos(half_angle), axis, math.sin(half_angle), out) if normal[2] > 0 else None


def _foot(wanted: Wanted, place: ConePlace) -> tuple[float, float] | None:
    """x of the lip's foot at the chisel edge, and how deep it lies below the apex.

    The foot is as deep on its own cone as the place half a turn away on the other: the difference of both equations of
    the cone gives its x for a depth, their sum the depth for an x.
    """
    s, c, tan2 = math.sin(place.tilt), math.cos(place.tilt), math.tan(place.half_angle) ** 2
    square, mixed, upright = c * c - tan2 * s * s, s * c * (1 + tan2), s * s - tan2 * c * c
    t, far, beside = wanted.web_ratio, place.distance, place.skew
    x = t / math.tan(wanted.chisel)
    for _ in range(200):
        level = square * (far * far + x * x) + t * t + beside * beside
        under = (mixed * far) ** 2 - upright * level
        if under < 0:
            return None
        depth = level / (mixed * far + math.sqrt(under))
        nearer = t * beside / (square * far - mixed * depth)
        if abs(nearer - x) < 1e-15:
            return nearer, depth
        x = nearer
    return None


def lip_on_cone(wanted: Wanted, half_angle: float) -> ConePlace:
    """The cone of which the lip is a straight line; raises CannotBeGround if there is none.

    One plane touches the cone all along the lip, and the relief at the corner says which: so half angle and relief give
    the direction of the cone's axis. The chisel edge then says where on the lip's prolongation the apex lies.
    """
    s, c, steep = math.sin(wanted.half_angle), math.cos(wanted.half_angle), fall_beside(wanted)
    lip = (s, 0.0, -c)
    size = math.sqrt(1 / s**2 + steep**2)
    normal = (c / s / size, -steep / size, 1 / size)
    axis = _sum(math.cos(half_angle), lip, -math.sin(half_angle), normal)
    upward = _sum(math.sin(half_angle), lip, math.cos(half_angle), normal)
    sideways = _cross(axis, upward)
    at_axis = _line_about(half_angle, axis, upward, sideways, wanted.along_the_chisel, 1.0)
    if at_axis is None or at_axis[1] >= 0 or at_axis[0] <= 0:
        raise CannotBeGround("no cone that holds the lip has its apex behind the drill axis")
    far = -wanted.web_ratio * at_axis[0] / at_axis[1]
    turn = math.atan2(axis[1], axis[0])
    tilt = math.atan2(math.hypot(axis[0], axis[1]), -axis[2])
    if abs(turn) > _MOST_TURN:
        raise CannotBeGround(f"the drill would have to be turned {math.degrees(turn):.0f}° about its axis for it")
    distance = far * math.cos(turn) - wanted.web_ratio * math.sin(turn)
    skew = far * math.sin(turn) + wanted.web_ratio * math.cos(turn)
    if distance <= 0:
        raise CannotBeGround("no cone that holds the lip has its apex behind the drill axis")
    return _not_flat(ConePlace(half_angle, tilt, distance, skew, turn))


def _dot(a: Vector, b: Vector) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _sum(p: float, a: Vector, q: float, b: Vector) -> Vector:
    return p * a[0] + q * b[0], p * a[1] + q * b[1], p * a[2] + q * b[2]


def _cross(a: Vector, b: Vector) -> Vector:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
