"""What an inspector would read off a ground point, taken on its surfaces, never by a formula of the book."""

from __future__ import annotations

import math
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np
from attrs import field, frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.lip import Lip, Place
from drillpoint.ground.measuring import length_along, turn_between
from drillpoint.ground.record import Record, record
from drillpoint.ground.stations import Stations, clearance, first_contact, stations
from drillpoint.ground.thinning import ThinningReadings, thinning_readings

if TYPE_CHECKING:
    from drillpoint.ground.point import GroundPoint

_STATIONS = 17
_HAIR = 1e-9


@frozen(kw_only=True)
class LipReadings:
    """The readings of one lip.

    Its corner is where the lip ends at the diameter, its foot where it ends at the chisel edge; its chord is the
    straight line between them.

    half_angle: between chord and axis, seen square to the chord as it lies in the end view, degrees. length: along the
    lip, from foot to corner, mm; chord: straight. bow: in the end view, how far the lip stands out from its chord half
    way along it, mm: positive when it bulges ahead into the flute, negative when it is hollow. relief: at the corner,
    in the plane that touches the cylinder there, degrees. heel_clearance: how far round behind the corner the flank,
    carried on, has come up to the corner's height again, degrees; None when it never does. corner, foot: points of
    three in the lip's own frame. stations: readings along the lip.
    """

    half_angle: float
    length: float
    chord: float
    bow: float
    relief: float
    heel_clearance: float | None
    corner: Array = field(eq=False)
    foot: Array = field(eq=False)
    stations: Stations = field(eq=False)


@frozen(kw_only=True)
class Inspection:
    """Everything read off one ground point. Lengths in mm, angles in degrees.

    web: twice the smallest distance of the flutes from the axis (both added), at the height of the lips' feet.
    chisel_edge_angle: in the end view, the obtuse angle between the lips' chords (the mean of both) and the straight
    line between the ends of the chisel edge. chisel_edge_angle_at_axis: the same for the edge's direction where it
    passes the axis. chisel_edge_length: between its ends, in the end view. chisel_edge_rise: how far its highest place
    stands above the mean of its ends. chisel_edge_rake: beside the axis, square to the edge: how the flank ahead of it
    stands to square across the way it moves; nearly always negative. point_offset: of the middle of the chisel edge
    from the axis. chisel_edge_offset: the nearest the edge, or its prolongation, comes to the axis.
    lip_height_difference: at the corners, along the axis; positive when lip 1 is nearer to the tip. tip_height: from
    the mean of both corners up to the highest place of the chisel edge; the web makes it less than the sharp cone's
    point height.
    """

    diameter: float
    web: float
    chisel_edge_angle: float
    chisel_edge_angle_at_axis: float
    chisel_edge_length: float
    chisel_edge_rise: float
    chisel_edge_rake: float
    point_offset: float
    chisel_edge_offset: float
    lip_height_difference: float
    tip_height: float
    lips: tuple[LipReadings, LipReadings]
    _point: GroundPoint = field(eq=False, repr=False)

    @property
    def half_angle_1(self) -> float:
        """Half angle of lip 1."""
        return self.lips[0].half_angle

    @property
    def half_angle_2(self) -> float:
        """Half angle of lip 2."""
        return self.lips[1].half_angle

    @property
    def point_angle(self) -> float:
        """Both half angles together."""
        return self.half_angle_1 + self.half_angle_2

    @property
    def lip_length_1(self) -> float:
        """Length of lip 1, along it."""
        return self.lips[0].length

    @property
    def lip_length_2(self) -> float:
        """Length of lip 2, along it."""
        return self.lips[1].length

    @property
    def lip_length(self) -> float:
        """Mean length of both lips."""
        return (self.lip_length_1 + self.lip_length_2) / 2

    @property
    def lip_relief_1(self) -> float:
        """Relief at the corner of lip 1."""
        return self.lips[0].relief

    @property
    def lip_relief_2(self) -> float:
        """Relief at the corner of lip 2."""
        return self.lips[1].relief

    @property
    def lip_relief(self) -> float:
        """Mean relief at both corners."""
        return (self.lip_relief_1 + self.lip_relief_2) / 2

    @property
    def heel_clearance_1(self) -> float | None:
        """Heel clearance behind lip 1."""
        return self.lips[0].heel_clearance

    @property
    def heel_clearance_2(self) -> float | None:
        """Heel clearance behind lip 2."""
        return self.lips[1].heel_clearance

    @property
    def heel_clearance(self) -> float | None:
        """The smaller heel clearance of both lips; None when neither flank comes up again."""
        both = [q for q in (self.heel_clearance_1, self.heel_clearance_2) if q is not None]
        return min(both, default=None)

    @property
    def lip_bow_1(self) -> float:
        """Bow of lip 1."""
        return self.lips[0].bow

    @property
    def lip_bow_2(self) -> float:
        """Bow of lip 2."""
        return self.lips[1].bow

    @cached_property
    def thinning(self) -> ThinningReadings | None:
        """What was read off the thinning; None when the point has no notch. The other readings are those without it."""
        return thinning_readings(self._point)

    @property
    def record(self) -> Record:
        """Every reading with its name, for showing and printing."""
        return record(self)

    def __str__(self) -> str:
        return str(self.record)

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        return self.record._repr_mimebundle_()

    def lip_height_difference_at(self, *, radius: float) -> float:
        """How much nearer to the tip lip 1 is than lip 2 at the same distance from the axis, mm."""
        first, second = (float(lip.at_radius(np.array([radius])).z[0]) for lip in self._point.lips)
        return first - second

    def lip_at(self, lip: int, *, radii: Array) -> Stations:
        """Readings at chosen distances from the axis along lip 1 or 2."""
        side = self._point.lips[lip - 1]
        return stations(side, side.at_radius(np.asarray(radii, dtype=float)))

    def first_rub(self, lip: int, *, feed: float = 0.0, radius: float | None = None) -> float | None:
        """How far behind the lip the flank first touches the work, degrees; None when it clears as far as the heel.

        feed: mm per revolution. radius: where on the lip, mm; at the outer corner when left out.
        """
        side = self._point.lips[lip - 1]
        at = side.flute.radius if radius is None else radius
        return first_contact(side, at, feed, side.land_end)

    def clearance_behind(self, lip: int, *, feed: float = 0.0, radius: float | None = None) -> tuple[Array, Array]:
        """Degrees behind the lip, from 0 to the heel, and the gap between flank and work at each, mm.

        Negative gaps are where the flank would rub. feed and radius as for `first_rub`.
        """
        side = self._point.lips[lip - 1]
        at = side.flute.radius if radius is None else radius
        back = np.linspace(0.0, side.land_end, 121)
        return np.degrees(back), clearance(side, at, feed, back)


def inspect(point: GroundPoint) -> Inspection:
    """Take every reading of a ground point."""
    readings = _lip_readings(point.lips[0], point.feet[0])
    other = readings if point.is_alike else _lip_readings(point.lips[1], point.feet[1])
    edge, nearest = point.chisel, point.chisel.nearest_to_axis()
    # A hair towards lip 1, since facets may meet on the axis itself.
    beside = nearest + _HAIR * (edge.first[:2] - nearest)
    chord = (edge.first - edge.second)[:2]
    # Seen from its own frame, each lip has the same edge before it, in the same direction.
    lips = [(r.corner - r.foot)[:2] for r in (readings, other)]
    middle = (edge.first + edge.second)[:2] / 2
    highest = edge.highest()
    webs = (
        float(point.flute.half_web_at(lip.number, foot.z)[0]) for lip, foot in zip(point.lips, point.feet, strict=True)
    )
    return Inspection(
        diameter=float(np.hypot(*readings.corner[:2]) + np.hypot(*other.corner[:2])),
        web=sum(webs),
        chisel_edge_angle=_obtuse(chord, lips),
        chisel_edge_angle_at_axis=_obtuse(edge.direction_at(beside), lips),
        chisel_edge_length=float(np.hypot(*chord)),
        chisel_edge_rise=highest - float(edge.first[2] + edge.second[2]) / 2,
        chisel_edge_rake=_chisel_rake(point, beside, 2 * nearest - beside),
        point_offset=float(np.hypot(*middle)),
        chisel_edge_offset=float(np.hypot(*nearest)),
        lip_height_difference=float(readings.corner[2] - other.corner[2]),
        tip_height=highest - float(readings.corner[2] + other.corner[2]) / 2,
        lips=(readings, other),
        point=point,
    )


def _lip_readings(lip: Lip, foot: Place) -> LipReadings:
    corner = lip.corner
    run = lip.at(np.linspace(float(foot.along[0]), float(corner.along[0]), 2 * _STATIONS - 1))
    chord = (corner.point - foot.point)[0]
    along_lip = stations(lip, run[::2])
    return LipReadings(
        half_angle=math.degrees(math.atan2(np.hypot(*chord[:2]), -chord[2])),
        length=length_along(run.point),
        chord=float(np.linalg.norm(chord)),
        bow=bow_of(lip, run),
        relief=float(along_lip.relief[-1]),
        heel_clearance=first_contact(lip, lip.flute.radius, 0.0, math.pi),
        corner=corner.point[0],
        foot=foot.point[0],
        stations=along_lip,
    )


def bow_of(lip: Lip, run: Place) -> float:
    """How far a run of the lip stands off its chord in the end view, half way along the chord, mm; see LipReadings."""
    start, chord = run.point[0, :2], (run.point[-1] - run.point[0])[:2]
    shares = (run.point[:, :2] - start) @ chord / (chord @ chord)
    middle = lip.at(np.array([np.interp(0.5, shares, run.along)]))
    off = middle.point[0, :2] - start
    return float((chord[0] * off[1] - chord[1] * off[0]) / np.hypot(*chord))


def _obtuse(edge: Array, lips: list[Array]) -> float:
    """Mean angle between the lips and the chisel edge, counted so that it is obtuse on a point with relief."""
    return 180.0 - sum(turn_between(lip, edge) for lip in lips) / len(lips)


def _chisel_rake(point: GroundPoint, first: Array, second: Array) -> float:
    """Mean over both halves of the edge, at a place of each; ahead of each half lies the flank of the other lip."""
    direction = point.chisel.direction_at(first)
    ahead = np.array([-direction[1], direction[0]])
    lip = point.lips[0]
    slopes = (lip.other.slope(first[:1], first[1:]), lip.own.slope(second[:1], second[1:]))
    falls = [-(s[0][0] * a[0] + s[1][0] * a[1]) for s, a in zip(slopes, (ahead, -ahead), strict=True)]
    return -sum(90.0 - math.degrees(math.atan(fall)) for fall in falls) / 2
