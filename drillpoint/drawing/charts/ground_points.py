"""Charts of ground points beside each other: relief and rake along the lip, the fall of the flank behind the corner."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from functools import partial
from typing import Any

import numpy as np
from attrs import evolve, frozen

from drillpoint.drawing.charts.chart import Chart
from drillpoint.drawing.charts.curve import Curve, trace
from drillpoint.drawing.charts.frame import Frame
from drillpoint.drawing.charts.words import describe
from drillpoint.drawing.showing import read_units
from drillpoint.errors import LearnerError
from drillpoint.ground import GroundPoint
from drillpoint.ground.named import points_by_name
from drillpoint.ground.stations import Stations, clearance, stations
from drillpoint.quantities import Quantity, Span, nearest, quantity
from drillpoint.relations import feed_relief_loss

_BEHIND = 90.0  # degrees; a land ends before that


@frozen
class _Kind:
    """What a chart shows. at: the value of a point at a place; span: from which to which place all points have one."""

    title: str
    against: Quantity
    result: Quantity
    at: Callable[[GroundPoint, float], float]
    span: Callable[[Mapping[str, GroundPoint]], Span]


def chart_points(name: str, *, feed: float | None = None, units: str = "mm", **points: Any) -> Chart:
    """Ground points beside each other as curves, as in `chart_points("relief_along_lip", plane=..., cone=...)`.

    name: "relief_along_lip", in the plane that touches the cylinder through each place; "rake_along_lip", square to
    the lip as it is, bowed or straight; or "fall_behind_corner", how far the flank lies back from the corner's height
    on the way round behind it, at the full diameter. points: each under a name of your own: a ground point, or a
    set-up. feed: mm/rev, for the relief along the lip: what it takes is drawn, too.

    Raises LearnerError for an unknown name, or for something that is no ground point.
    """
    if name not in _KINDS:
        raise LearnerError(f"there is no chart of ground points {name!r}{nearest(name, tuple(_KINDS))}")
    kind, written = _KINDS[name], read_units(units)
    ground = points_by_name(points)
    span = kind.span(ground)
    curves = tuple(trace(shown, kind.result, partial(kind.at, point), span) for shown, point in ground.items())
    if feed is not None:
        curves = (*curves, _taken(name, feed, span))
    frame = Frame(
        title=kind.title,
        fixed="",
        against=kind.against,
        result=kind.result,
        span=span,
        curves=curves,
        bands=(),
        family="",
        units=written,
    )
    from drillpoint.drawing.charts.plot import plot  # matplotlib loads with the first chart

    alt = describe(frame)
    return Chart(plot(frame, alt), alt, curves)


def _taken(name: str, feed: float, span: Span) -> Curve:
    if name != "relief_along_lip":
        raise LearnerError(f"{name} does not go by feed; leave it out")
    return trace(
        "taken by the feed",
        quantity("relief_at_radius"),
        lambda radius: float(feed_relief_loss(feed=feed, radius=radius)),
        span,
    )


def _station(point: GroundPoint, radius: float) -> Stations:
    lip = point.lips[0]
    place = lip.corner if radius >= point.flute.radius else lip.at_radius(np.array([radius]))
    return stations(lip, place)


def _relief(point: GroundPoint, radius: float) -> float:
    return float(_station(point, radius).relief[0])


def _rake(point: GroundPoint, radius: float) -> float:
    return float(_station(point, radius).normal_rake[0])


def _lip(points: Mapping[str, GroundPoint]) -> Span:
    feet = [float(np.hypot(point.feet[0].x[0], point.feet[0].y[0])) for point in points.values()]
    return Span(max(feet), min(point.flute.radius for point in points.values()))


def _fall(point: GroundPoint, behind: float) -> float:
    # At the corner itself the last digit would tell a rise from a fall.
    if behind == 0:
        return 0.0
    lip = point.lips[0]
    return float(clearance(lip, lip.flute.radius, 0.0, np.array([math.radians(behind)]))[0])


_KINDS: Mapping[str, _Kind] = {
    "relief_along_lip": _Kind("relief along the lip", quantity("radius"), quantity("relief_at_radius"), _relief, _lip),
    "rake_along_lip": _Kind("normal rake along the lip", quantity("radius"), quantity("normal_rake"), _rake, _lip),
    "fall_behind_corner": _Kind(
        "fall of the flank behind the outer corner",
        evolve(quantity("heel_clearance"), term="way round the drill behind the corner"),
        quantity("flank_fall"),
        _fall,
        lambda points: Span(0.0, _BEHIND),
    ),
}
