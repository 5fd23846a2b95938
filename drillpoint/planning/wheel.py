"""How the wheel is set for the new point, so that it comes out on the flutes that this drill has."""

from __future__ import annotations

from contextlib import suppress
from typing import Any

from attrs import evolve, frozen

from drillpoint.errors import LearnerError
from drillpoint.ground import CannotBeGround, GroundPoint, NoSetup, Setup, conical_setup, plane_setup
from drillpoint.ground.settings.setup import measured
from drillpoint.planning.shop import Shop
from drillpoint.planning.words import length
from drillpoint.quantities import quantity

_STRAIGHT = 0.005
"""A lip that bows less than this, over the diameter, counts as straight; ours."""
_NEAR, _TRIES = 0.01, 12
"""The set-up is mended until its angles come out to this many degrees, or this often."""


@frozen
class Wheel:
    """The set-up, with what to know about it. setup: on this drill's own flutes; None where there is none. notes:
    sentences.
    """

    setup: Setup | None
    notes: tuple[str, ...]

    @property
    def point(self) -> GroundPoint | None:
        """What comes out on this drill; None where it cannot be ground."""
        return self.setup.point if self.setup else None


def set_up(
    shop: Shop, *, diameter: float, web: float, point_angle: float, lip_relief: float, edge: float, made_for: float
) -> Wheel:
    """The set-up for a wanted point on a drill of this web. made_for: the point angle that its flutes were made for."""
    size = {"diameter": diameter, "web": web}
    wanted = {"point_angle": point_angle, "lip_relief": lip_relief}
    if shop.flank == "cone":
        wanted["chisel_edge_angle"] = edge
    notes: tuple[str, ...] = ()
    try:
        found = _for_its_own_flute(shop, size, wanted)
    except NoSetup as none:
        if none.nearest is None:
            return Wheel(None, (f"There is no set-up: {none}.",))
        return Wheel(none.nearest, (f"This is the nearest set-up there is: {none}.", *none.nearest.notes))
    except CannotBeGround as reason:
        return Wheel(None, (f"There is no set-up: {reason}.",))
    if abs(made_for - point_angle) > 1:
        found, notes = _allowing(shop, size, wanted, found, made_for)
    if shop.flank == "plane":
        notes = (_edge_of_a_plane(found, edge), *notes)
    return Wheel(found, (*found.notes, *notes))


def _for_its_own_flute(shop: Shop, size: dict[str, float], wanted: dict[str, float]) -> Setup:
    given: dict[str, Any] = {**size, **wanted}
    if shop.flank == "plane":
        return plane_setup(**given)
    return conical_setup(**given, cone_half_angle=shop.cone_half_angle)


def _allowing(
    shop: Shop, size: dict[str, float], wanted: dict[str, float], plain: Setup, made_for: float
) -> tuple[Setup, tuple[str, ...]]:
    """The set-up on flutes that were made for another point: the lip is where the flank meets the flute, so it bows.

    Each time so much more is asked of the wheel as was lacking the last time. Where the chisel edge cannot be had as
    well, point angle and relief come first.
    """
    unmended = found = _on(plain, made_for)
    asked, fixed = dict(wanted), wanted
    with suppress(LearnerError):
        for _ in range(_TRIES):
            lacking = {name: fixed[name] - found.reached[name] for name in fixed}
            if max(map(abs, lacking.values())) < _NEAR:
                # What was said of the angles asked on the way is of no interest.
                return evolve(found, asked=wanted, notes=plain.notes), _bowed(found, made_for, unmended)
            asked.update({name: asked[name] + lacking[name] for name in fixed})
            try:
                found = _on(_for_its_own_flute(shop, size, asked), made_for)
            except NoSetup as none:
                if none.nearest is None:
                    break
                found = _on(none.nearest, made_for)
                fixed = {name: wanted[name] for name in ("point_angle", "lip_relief")}
    angle = quantity("point_angle").show
    read = angle(unmended.reached["point_angle"], 1)
    said = f"The flutes were made for {angle(made_for)}, and no setting was found that allows for that"
    return evolve(unmended, asked=wanted), (f"{said}: the point will read about {read}. Inspect it with care.",)


def _on(setup: Setup, made_for: float) -> Setup:
    """The set-up with its flank on flutes that were made for another point angle."""
    flute = evolve(setup.flute, point_angle=made_for)
    return evolve(setup, flute=flute, reached=measured(GroundPoint(flute, setup.flank)))


def _bowed(setup: Setup, made_for: float, unmended: Setup) -> tuple[str, ...]:
    """What to know of lips that do not come out straight. unmended: the set-up that does not allow for that."""
    bow = setup.point.inspect().lip_bow_1
    if abs(bow) < _STRAIGHT * setup.flute.diameter:
        return ()
    way = "hollow" if bow < 0 else "bulging"
    angle = quantity("point_angle").show
    read = angle(unmended.reached["point_angle"], 1)
    made = f"The flutes were made for {angle(made_for)}, so the lips come out {way} by {length(abs(bow))}"
    return (f"{made}. The setting allows for that; else the point would read {read}.",)


def _edge_of_a_plane(setup: Setup, wanted: float) -> str:
    show, clear = quantity("chisel_edge_angle").show, setup.point.inspect().heel_clearance
    heel = f" Its heel is clear for {quantity('heel_clearance').show(clear)} only." if clear is not None else ""
    return (
        f"One plane leaves its chisel edge where it comes out, at {show(setup.reached['chisel_edge_angle'])}; "
        f"{show(wanted)} would need a curved flank or a second facet.{heel}"
    )
