"""What an inspector would read off a thinned or split point, taken on its surfaces."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import numpy as np
from attrs import field, frozen

from drillpoint.ground.flute import Array
from drillpoint.ground.lip import Lip, Place
from drillpoint.ground.measuring import length_along, turn_between
from drillpoint.ground.notch import NotchCut
from drillpoint.ground.stations import Stations, flank_normal, of_edge
from drillpoint.ground.thinned import axis_distance, crossing, depth_on, own_frame

if TYPE_CHECKING:
    from drillpoint.ground.point import GroundPoint

_STATIONS = 65


@frozen(kw_only=True)
class ThinnedLipReadings:
    """The readings of one thinned lip and of what is left of its main lip. Lengths in mm, angles in degrees.

    Chords are the straight lines between the ends of an edge.

    thinning_angle: in the end view, between the chords of thinned lip and main lip. thinned_lip_in_end_view: length
    along the thinned lip as seen from the tip; thinned_lip_length: its true length. thinning_reach: in the end view,
    along the main lip's chord, from the foot of the axis to where the thinned lip meets it. untouched_lip_length: along
    what is left of the main lip; untouched_lip_share: that over the whole main lip before. thinned_lip_distance: in the
    end view, from the axis to the thinned lip's chord, prolonged; negative when it passes on the other lip's side.
    core: the nearest that the metal gone in the notch comes to the axis, anywhere below the tip. face_overrun: in the
    end view, along the thinned lip, how far the face runs on into the other land behind the chisel edge's end; negative
    where the corner's rounding comes before it. middle_rake: normal rake half way along the thinned lip. start, end: of
    the thinned lip, at the chisel edge and at the main lip, points of three in the lip's own frame. edge: points of the
    thinned lip, one a row, from start to end. stations: readings at these points.
    """

    thinning_angle: float
    thinned_lip_in_end_view: float
    thinned_lip_length: float
    thinning_reach: float
    untouched_lip_length: float
    untouched_lip_share: float
    thinned_lip_distance: float
    core: float
    face_overrun: float
    edge: Array = field(eq=False, repr=False)
    stations: Stations = field(eq=False, repr=False)

    @property
    def start(self) -> Array:
        """Where the thinned lip starts, at the chisel edge."""
        return np.asarray(self.edge[0])

    @property
    def end(self) -> Array:
        """Where the thinned lip meets the main lip."""
        return np.asarray(self.edge[-1])

    @property
    def middle_rake(self) -> float:
        """Normal rake half way along the thinned lip."""
        return float(self.stations.normal_rake[_STATIONS // 2])


@frozen(kw_only=True)
class ThinningReadings:
    """Everything read off the thinning of one point. Lengths in mm, angles in degrees.

    thinned_chisel_length: between the ends of what is left of the chisel edge, in the end view. chisel_edge_angle: in
    the end view, the obtuse angle between the main lips' chords (the mean of both) and the straight line between these
    ends. point_offset: of the middle of what is left from the axis. thinned_web: in the end view, the distances of both
    thinned lips' chords from the axis, added; where both are parallel, the distance between them. core_thickness: the
    least metal the notches leave about the axis below the tip, what they leave on either side added. lips: of lip 1 and
    of lip 2; None for a lip without a notch, whose flute then counts for web and core.
    """

    thinned_chisel_length: float
    chisel_edge_angle: float
    point_offset: float
    thinned_web: float
    core_thickness: float
    lips: tuple[ThinnedLipReadings | None, ThinnedLipReadings | None]

    def mean(self, reading: str) -> float:
        """The mean of a reading of `ThinnedLipReadings` over the lips that have a notch."""
        values = [float(getattr(lip, reading)) for lip in self.lips if lip]
        return sum(values) / len(values)


def thinning_readings(point: GroundPoint) -> ThinningReadings | None:
    """Read off what the notches of a point have left; None when it has none."""
    notches = point.thinned.notches
    if not any(notches):
        return None
    first = _lip_readings(point, 0, notches[0]) if notches[0] else None
    second = first if point.is_alike else _lip_readings(point, 1, notches[1]) if notches[1] else None
    edge = point.thinned.chisel
    chord, middle = (edge.first - edge.second)[:2], (edge.first + edge.second)[:2] / 2
    acute = [
        turn_between(_main_chord(lip, foot), chord) for lip, foot in zip(point.lips, point.thinned.feet, strict=True)
    ]
    distances = [
        lip.thinned_lip_distance if lip else _distance(foot.point[0, :2], _main_chord(side, foot))
        for lip, side, foot in zip((first, second), point.lips, point.thinned.feet, strict=True)
    ]
    cores = [
        lip.core if lip else spared for lip, spared in zip((first, second), point.thinned.axis_distances, strict=True)
    ]
    return ThinningReadings(
        thinned_chisel_length=float(np.hypot(*chord)),
        chisel_edge_angle=180.0 - sum(acute) / 2,
        point_offset=float(np.hypot(*middle)),
        thinned_web=sum(distances),
        core_thickness=sum(cores),
        lips=(first, second),
    )


def _lip_readings(point: GroundPoint, number: int, made: NotchCut) -> ThinnedLipReadings:
    lip, foot = point.lips[number], point.thinned.feet[number]
    left = point.thinned.chisel
    edge = thinned_edge(made, lip, own_frame(lip.number, left.second if number else left.first), foot.point[0])
    main, chord = _main_chord(lip, foot), (edge[-1] - edge[0])[:2]
    untouched = _along(lip, foot)
    face = -own_frame(made.lip, made.normal(*own_frame(made.lip, edge).T))
    return ThinnedLipReadings(
        thinning_angle=turn_between(main, chord),
        thinned_lip_in_end_view=length_along(edge[:, :2]),
        thinned_lip_length=length_along(edge),
        thinning_reach=float(edge[-1, :2] @ main / np.hypot(*main)),
        untouched_lip_length=untouched,
        untouched_lip_share=untouched / _along(lip, point.feet[number]),
        thinned_lip_distance=_distance(edge[0, :2], chord),
        core=_core(made, lip, float(np.hypot(*edge[0, :2]))),
        face_overrun=_overrun(made, lip),
        edge=edge,
        stations=of_edge(edge, face, flank_normal(lip, edge[:, 0], edge[:, 1])),
    )


def thinned_edge(made: NotchCut, lip: Lip, start: Array, end: Array) -> Array:
    """Points of the thinned lip from its start to its end, one a row, in the lip's own frame."""
    chord = (end - start)[:2]
    ahead = np.array([-chord[1], chord[0]])
    base = start[:2] + np.linspace(0.0, 1.0, _STATIONS)[:, None] * chord

    def points(shift: Array) -> Array:
        place = base + shift[:, None] * ahead
        return np.column_stack([place, lip.own.height(*place.T)])

    # Ahead of the chord all is gone, but beside the lip's start only for a little way, where the floor rises steeply.
    tries = np.concatenate([[0.0], np.geomspace(1e-9, 0.25, 25)])
    inside = [depth_on(made, points(np.full(_STATIONS, shift))) for shift in tries]
    gone, kept = tries[np.argmax(inside, axis=0)], np.full(_STATIONS, -1.0)
    for _ in range(56):
        middle = (gone + kept) / 2
        cut = depth_on(made, points(middle)) > 0
        gone, kept = np.where(cut, middle, gone), np.where(cut, kept, middle)
    edge = points(np.where(np.abs(gone) < 1e-12, 0.0, gone))
    edge[0], edge[-1] = start, end
    return edge


def _core(made: NotchCut, lip: Lip, start: float) -> float:
    """Radius of the round bar about the axis that the notch spares, mm; the thinned lip starts at radius `start`."""
    spared, _ = axis_distance(made, lip)
    if spared <= 0:
        return spared
    distance, height = axis_distance(made, lip, above=2 * lip.flute.radius)
    place = np.array([0.0, 0.0, height])
    x, y, z = own_frame(made.lip, place + distance * made.normal(*place))
    if z <= float(_top(lip, np.array([x]), np.array([y]))[0]):
        return distance
    # The wall comes nearest above the metal, so what counts is the notch's edge on top of it.
    (least, most), (first, last) = (0.0, start), (0.0, 2 * math.pi)
    found = start
    for _ in range(20):
        radius, turn = np.meshgrid(np.linspace(least, most, 49), np.linspace(first, last, 91))
        x, y = radius * np.cos(turn), radius * np.sin(turn)
        gone = depth_on(made, np.stack([x, y, _top(lip, x, y)], axis=-1)) > 0
        if not gone.any():
            break
        where = int(np.where(gone, radius, math.inf).argmin())
        found, at = float(radius.flat[where]), float(turn.flat[where])
        step, swing = (most - least) / 4, (last - first) / 6
        least, most, first, last = max(found - step, 0.0), found, at - swing, at + swing
    return found


def _top(lip: Lip, x: Array, y: Array) -> Array:
    """Height of the point before thinning, in the lip's own frame."""
    return np.asarray(np.fmin(lip.own.height(x, y), lip.other.height(x, y)))


def _overrun(made: NotchCut, lip: Lip) -> float:
    """How far behind the chisel edge's end the face goes out of the metal."""
    start = own_frame(made.lip, made.rounding(1)[0])
    along = own_frame(made.lip, made.along)

    def above(step: Array) -> Array:
        x, y, z = (start[:, None] + along[:, None] * step).reshape(3, -1)
        return np.asarray(z - _top(lip, x, y))

    end, meets = own_frame(made.lip, made.end), own_frame(made.lip, made.meets)
    out = start + along * crossing(above, -2 * lip.flute.radius, 2 * lip.flute.radius)
    run = (meets - end)[:2]
    return float(-(out - end)[:2] @ run / np.hypot(*run))


def _main_chord(lip: Lip, foot: Place) -> Array:
    """From where the main lip begins to its corner, in the end view."""
    return np.asarray((lip.corner.point - foot.point)[0, :2])


def _along(lip: Lip, foot: Place) -> float:
    """True length of the main lip from a foot of it to the corner."""
    outer = float(lip.corner.along[0])
    return length_along(lip.at(np.linspace(float(foot.along[0]), outer, _STATIONS)).point)


def _distance(place: Array, along: Array) -> float:
    """Of a line from the axis; positive when the axis lies behind it."""
    return float((along[0] * place[1] - along[1] * place[0]) / np.hypot(*along))
