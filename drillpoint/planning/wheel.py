"""How the wheel is set for the new point, and what this drill makes of it."""

from __future__ import annotations

from typing import Any

from attrs import evolve, frozen

from drillpoint.errors import LearnerError
from drillpoint.ground import CannotBeGround, GroundPoint, NoSetup, Setup, conical_setup, plane_setup
from drillpoint.planning.shop import Shop
from drillpoint.planning.words import length
from drillpoint.quantities import quantity

_STRAIGHT = 0.005
"""A lip that bows less than this, over the diameter, counts as straight; ours."""


@frozen
class Wheel:
    """The set-up, with what to know about it. setup: None where there is none. notes: sentences. point: what comes out
    on this drill, whose flutes may have been made for another point; None where it cannot be ground.
    """

    setup: Setup | None
    notes: tuple[str, ...]
    point: GroundPoint | None = None


def set_up(
    shop: Shop, *, diameter: float, web: float, point_angle: float, lip_relief: float, edge: float, made_for: float
) -> Wheel:
    """The set-up for a wanted point on a drill of this web. made_for: the point angle that its flutes were made for."""
    wanted: dict[str, Any] = {"diameter": diameter, "web": web, "point_angle": point_angle, "lip_relief": lip_relief}
    notes: tuple[str, ...] = ()
    try:
        if shop.flank == "plane":
            found = plane_setup(**wanted)
            notes = (_edge_of_a_plane(found, edge),)
        else:
            found = conical_setup(**wanted, chisel_edge_angle=edge, cone_half_angle=shop.cone_half_angle)
    except NoSetup as none:
        if none.nearest is None:
            return Wheel(None, (f"There is no set-up: {none}.",))
        found, notes = none.nearest, (f"This is the nearest set-up there is: {none}.",)
    except CannotBeGround as reason:
        return Wheel(None, (f"There is no set-up: {reason}.",))
    point = _on_this_drill(found, made_for)
    return Wheel(found, (*notes, *found.notes, *_bowed(point, made_for)), point)


def _edge_of_a_plane(setup: Setup, wanted: float) -> str:
    show = quantity("chisel_edge_angle").show
    return (
        f"One plane leaves its chisel edge where it comes out, at {show(setup.reached['chisel_edge_angle'])}; "
        f"{show(wanted)} would need a curved flank or a second facet."
    )


def _on_this_drill(setup: Setup, made_for: float) -> GroundPoint | None:
    """What comes out on flutes that were made for another point: the lip is where the flank meets the flute."""
    try:
        return GroundPoint(evolve(setup.flute, point_angle=made_for), setup.flank)
    except LearnerError:
        return None


def _bowed(point: GroundPoint | None, made_for: float) -> tuple[str, ...]:
    """A sentence on lips that do not come out straight."""
    if point is None:
        return ()
    seen = point.inspect()
    bow = seen.lip_bow_1
    if abs(bow) < _STRAIGHT * point.flute.diameter:
        return ()
    way = "hollow" if bow < 0 else "bulging"
    angle, by = quantity("point_angle").show, length(abs(bow))
    made = f"The flutes were made for {angle(made_for)}, so the lips come out {way} by {by}"
    return (f"{made}, and the point angle reads {angle(seen.point_angle, 1)} from end to end of the lips.",)
