"""Notches on a drill: where they stand, and what they leave of the chisel edge and of the main lips."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from attrs import frozen

from drillpoint.ground.chisel import ChiselEdge
from drillpoint.ground.flute import Array
from drillpoint.ground.lip import Lip, Place
from drillpoint.ground.notch import Notch, NotchCut, cut
from drillpoint.ground.stated import CannotBeGround

_SAMPLES = 65
_CLOSE = 1e-9


@frozen(eq=False)
class Thinned:
    """What is left of the edges of a point.

    notches: of lip 1 and of lip 2, or None. chisel: what is left of the chisel edge. feet: where each main lip now
    ends, in its own frame. axis_distances: from the axis below the tip to each notch, carried on above the metal, mm;
    negative past it. For a lip without a notch it is the distance of its flute.
    """

    notches: tuple[NotchCut | None, NotchCut | None]
    chisel: ChiselEdge
    feet: tuple[Place, Place]
    axis_distances: tuple[float, float]


def thinned(
    lips: tuple[Lip, Lip], feet: tuple[Place, Place], chisel: ChiselEdge, notches: tuple[Notch | None, Notch | None]
) -> Thinned:
    """Cut notches into a point given by its lips, their feet and its chisel edge.

    Raises CannotBeGround, with the reason, for notches that miss what they should thin or take what must stay.
    """
    cuts = [settle(n, lip, foot, chisel) if n else None for n, lip, foot in zip(notches, lips, feet, strict=True)]
    spared = [
        float(axis_distance(c, lip)[0]) if c else lip.flute.half_web(lip.number)
        for c, lip in zip(cuts, lips, strict=True)
    ]
    for made in filter(None, cuts):
        _refuse_a_cut_elsewhere(made, lips)
    left = _chisel_left(chisel, cuts[0], cuts[1])
    if sum(spared) <= 0:
        raise CannotBeGround(
            f"the two notches meet below the tip, {-sum(spared):.3g} mm past each other, and cut the tip off; let the "
            "faces pass further from the axis, or give them less notch_rake or less notch_depth"
        )
    ends = [_lip_left(c, lip, foot) if c else foot for c, lip, foot in zip(cuts, lips, feet, strict=True)]
    return Thinned((cuts[0], cuts[1]), left, (ends[0], ends[1]), (spared[0], spared[1]))


def own_frame(lip: int, points: Array) -> Array:
    """Points or directions of lip 1's frame in the frame of lip 1 or 2, or back: the same half turn."""
    return np.asarray(points if lip == 1 else points * np.array([-1.0, -1.0, 1.0]))


def depth_on(made: NotchCut, points: Array) -> Array:
    """`NotchCut.depth` of points in the frame of the notch's own lip."""
    return made.depth(*np.moveaxis(own_frame(made.lip, points), -1, 0))


def settle(notch: Notch, lip: Lip, foot: Place, chisel: ChiselEdge) -> NotchCut:
    """Find P and M of a notch (see `drillpoint.ground.notch`) and lay it there."""
    angle = math.radians(notch.thinning_angle)
    out, ahead = np.array([math.cos(angle), math.sin(angle)]), np.array([-math.sin(angle), math.cos(angle)])
    end = _new_end(notch, lip, chisel, ahead)
    outer = float(lip.corner.along[0])

    def before_line(along: Array) -> Array:
        return np.asarray((lip.at(along).point[:, :2] - end[:2]) @ ahead)

    at_foot, at_corner = before_line(np.array([float(foot.along[0]), outer]))
    if at_foot <= 0:
        raise CannotBeGround(
            f"thinned at {notch.thinning_angle:g}°, as steep as the chisel edge or steeper, the two faces would pass "
            "the axis on the wrong sides; use a smaller thinning_angle"
        )
    if at_corner >= 0:
        raise CannotBeGround(
            f"thinned at {notch.thinning_angle:g}°, the thinned lip would run out past the outer corner of {lip.name}, "
            "so that no main lip is left; use a larger thinning_angle, or thin less"
        )
    meets = lip.at(np.array([crossing(before_line, float(foot.along[0]), outer)])).point[0]
    # So close to nothing left the fall is that of the flank, seen over a short way.
    run = max(float((meets - end)[:2] @ out), 1e-3 * lip.flute.radius)
    fall = (end[2] - float(lip.own.height(*(end[:2] + run * out)[:, None])[0])) / run
    return cut(notch, lip.number, end, meets, fall)


def _new_end(notch: Notch, lip: Lip, chisel: ChiselEdge, ahead: Array) -> Array:
    """P, in the lip's own frame."""

    def places(shares: Array) -> Array:
        return own_frame(lip.number, chisel.trace(shares if lip.number == 1 else 1 - shares))

    if notch.face_distance is not None:
        wanted, last = notch.face_distance, 1.0

        def beyond(shares: Array) -> Array:
            return np.asarray(places(shares)[:, :2] @ ahead - wanted)

    else:
        wanted = (notch.thinned_chisel_length or 0.0) / 2
        axis = own_frame(lip.number, np.append(chisel.nearest_to_axis(), 0.0))[:2]
        ends = places(np.array([0.0, 1.0]))[:, :2]
        chord = ends[1] - ends[0]
        last = float((axis - ends[0]) @ chord / (chord @ chord))
        if not 0 < last < 1:
            raise CannotBeGround(
                "no part of the chisel edge lies beside the axis, so there is no middle to thin it to; give "
                "face_distance in the place of thinned_chisel_length"
            )

        def beyond(shares: Array) -> Array:
            off = places(shares)[:, :2] - axis
            return np.asarray(np.hypot(*off.T) * np.where(off @ chord < 0, 1.0, -1.0) - wanted)

    first, final = beyond(np.array([0.0, last]))
    if first <= 0:
        raise CannotBeGround(
            f"the notch of {lip.name} misses the chisel edge: it would have to reach {-first:.3g} mm further in; set a "
            f"smaller {_place_named(notch)}"
        )
    if final >= 0:
        raise CannotBeGround(f"the notch of {lip.name} takes the whole chisel edge; set a larger {_place_named(notch)}")
    return np.asarray(places(np.array([crossing(beyond, 0.0, last)]))[0])


def _place_named(notch: Notch) -> str:
    return "face_distance" if notch.face_distance is not None else "thinned_chisel_length"


def _chisel_left(chisel: ChiselEdge, cut_1: NotchCut | None, cut_2: NotchCut | None) -> ChiselEdge:
    """What both notches leave of the chisel edge."""
    if not cut_1 and not cut_2:
        return chisel
    from_1 = _share_left(chisel, cut_1, lambda share: share) if cut_1 else 0.0
    from_2 = _share_left(chisel, cut_2, lambda share: 1 - share) if cut_2 else 0.0
    if from_1 + from_2 >= 1:
        raise CannotBeGround(
            "the two notches between them take the whole chisel edge; let one of the faces pass further from the axis"
        )
    first, second = chisel.trace(np.array([from_1, 1 - from_2]))
    return ChiselEdge(chisel.lip, first, second)


def _share_left(chisel: ChiselEdge, made: NotchCut, share: Callable[[Array], Array]) -> float:
    """The share of the chisel edge that a notch takes, from its own end."""

    def depth(part: Array) -> Array:
        return made.depth(*chisel.trace(share(part)).T)

    taken = _single_run(depth, 0.0, 1.0)
    if taken is None:
        cause, cure = "its floor comes up before it", "set the notch deeper, or give it a larger notch_angle"
        if made.radius > 0:
            cause = "its corner_radius is too large for its notch_depth, so that the rounding stays clear of it"
            cure = "set the notch deeper, or the corner_radius smaller"
        raise CannotBeGround(
            f"the notch of lip {made.lip} does not take the end of the chisel edge away: {cause}; {cure}"
        )
    return taken


def _lip_left(made: NotchCut, lip: Lip, foot: Place) -> Place:
    """Where the main lip ends at the notch."""
    met = own_frame(made.lip, made.meets)
    if float(depth_on(made, met)) < -_CLOSE * lip.flute.radius:
        sharp = float(made.floor(*made.meets)) >= 0
        cause = "the corner_radius is too large for the notch_depth" if sharp else "the floor comes up before it"
        raise CannotBeGround(
            f"the notch's face does not reach {lip.name}: {cause}; give more notch_depth or a steeper notch_slope"
            + (", or a smaller corner_radius" if made.radius > 0 else "")
        )
    outer = float(lip.corner.along[0])
    end = _single_run(lambda along: depth_on(made, lip.at(along).point), float(foot.along[0]), outer)
    if end is None:
        raise CannotBeGround(
            f"the notch leaves a piece of {lip.name} standing at the chisel edge; give more notch_depth or a "
            "larger notch_angle"
        )
    return lip.at(np.array([end]))


def _refuse_a_cut_elsewhere(made: NotchCut, lips: tuple[Lip, Lip]) -> None:
    """A notch must stay clear of both margins and of the other lip."""
    other = lips[2 - made.lip]
    flute, least = other.flute, _CLOSE * other.flute.radius
    inner, outer = other.at_radius(np.array([0.5 * flute.radius, flute.radius])).along
    points = own_frame(other.number, other.at(np.linspace(inner, outer, _SAMPLES)).point)
    if (made.depth(*points.T) > least).any():
        raise CannotBeGround(
            f"the notch of lip {made.lip} cuts into {other.name}; give it less notch_depth or a steeper notch_slope"
        )
    for lip in lips:
        corner = lip.corner
        z = float(corner.z[0]) - np.linspace(0.0, 4.0, 4 * _SAMPLES) * flute.radius
        x, y = flute.wall(lip.number, flute.along_at(lip.number, np.full_like(z, flute.radius), z), z)
        edge = own_frame(lip.number, np.stack([x, y, z], axis=-1))
        if (made.depth(*edge.T) > least).any():
            raise CannotBeGround(
                f"the notch of lip {made.lip} breaks through the margin behind the outer corner of {lip.name}; give it "
                "less notch_rake, less notch_depth or a smaller notch_slope"
            )


def axis_distance(made: NotchCut, lip: Lip, above: float = 0.0) -> tuple[float, float]:
    """From the drill axis below the tip to a notch, mm, negative inside it; and the height where it is least.

    above: how far above the tip the axis is carried on, mm.
    """
    zero = np.zeros(1)
    tip = float(np.fmin(lip.own.height(zero, zero), lip.other.height(zero, zero))[0])
    low, high = tip - 4 * lip.flute.radius, tip + above
    for _ in range(10):
        # What is gone is convex, so along the axis the distance to it has one smallest value only.
        z = np.linspace(low, high, _SAMPLES)
        away = -made.depth(0 * z, 0 * z, z)
        nearest = int(away.argmin())
        low, high = z[max(nearest - 1, 0)], z[min(nearest + 1, len(z) - 1)]
    return float(away[nearest]), float(z[nearest])


def crossing(gap: Callable[[Array], Array], first: float, last: float) -> float:
    """Where a gap that is positive at `first` and not at `last` comes to nothing."""
    for _ in range(4):
        places = np.linspace(first, last, 129)
        gaps = gap(places)
        after = int(np.argmax(gaps <= 0))
        if after == 0:
            return first
        first, last = float(places[after - 1]), float(places[after])
    before, behind = gaps[after - 1], gaps[after]
    return first + (last - first) * float(before / (before - behind))


def _single_run(depth: Callable[[Array], Array], first: float, last: float) -> float | None:
    """Where a line that starts inside what is gone leaves it for good; None if it does not start in it or comes back.

    `last` when all of the line is gone.
    """
    places = np.linspace(first, last, _SAMPLES)
    gone = depth(places) > 0
    if gone.all():
        return last
    leaves = int(np.argmin(gone))
    if not gone[0] or gone[leaves:].any():
        return None
    return crossing(depth, float(places[leaves - 1]), float(places[leaves]))
