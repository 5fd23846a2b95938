"""Conical flanks from wanted angles: the cone, the land it reaches, and the nearest set-up when there is none."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from contextlib import suppress
from types import MappingProxyType

import numpy as np
from attrs import evolve

from drillpoint.ground.conical import ConicalFlank
from drillpoint.ground.flute import Array, Flute
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.cones import ConePlace, Wanted, lip_on_cone, skewed_axis
from drillpoint.ground.settings.setup import ANGLES, Angles, NoSetup, Setup, measured, say, show
from drillpoint.ground.settings.setups_plane import as_plane, plane_chisel
from drillpoint.ground.stated import CannotBeGround

FAMILIES: Mapping[str, Callable[[Wanted, float], ConePlace]] = MappingProxyType(
    {"skewed_axis": skewed_axis, "lip_on_cone": lip_on_cone}
)
_NARROWEST_LAND, _GOOD_ENOUGH, _CLOSE = 30.0, 1e-9, 1e-12
# How far from the wanted chisel edge angle to the plane's a set-up is looked for, before the search is narrowed.
_SHARES = (0.2, 0.4, 0.6, 0.8, 0.9, 0.97)


def solved(
    family: str, theta: float, flute: Flute, asked: Angles, notes: tuple[str, ...], *, fixed_land: bool
) -> Setup:
    """The set-up; raises CannotBeGround with the reason when there is none."""
    if asked["chisel_edge_angle"] <= plane_chisel(flute, asked["lip_relief"]):
        raise CannotBeGround("the plane of that point angle and relief already turns its chisel edge further")
    narrow = flute if fixed_land else _land_reached(flute, _cone(family, theta, flute, asked))

    def ground(wanted: Array) -> tuple[ConicalFlank, Array]:
        flank = _cone(family, theta, flute, dict(zip(ANGLES, map(float, wanted), strict=True)))
        return flank, _array(measured(GroundPoint(narrow, flank)))

    flank, got = _mended(ground, _array(asked))
    if narrow is not flute:
        notes = (*notes, f"this cone reaches {narrow.heel_angle:g}° round behind the corner; a wider land is cut away")
    reached = dict(zip(ANGLES, map(float, got), strict=True))
    return Setup(family=family, flute=narrow, flank=flank, asked=asked, reached=reached, notes=notes)


def _mended(ground: Callable[[Array], tuple[ConicalFlank, Array]], target: Array) -> tuple[ConicalFlank, Array]:
    """The flank that reaches the target, and what it reaches.

    The cones are those for a straight flute. What a twisted one makes of them is measured, and so much more is wanted
    the next time; how much more exactly is learnt on the way (Broyden's rule).
    """
    wanted, mend = target, np.eye(3)
    flank, got = ground(wanted)
    best = flank, got
    for _ in range(20):
        if np.abs(target - got).max() < _CLOSE:
            break
        more = mend @ (target - got)
        flank, now = ground(wanted + more)
        gained = now - got
        mend = mend + np.outer(more - mend @ gained, more @ mend) / (more @ mend @ gained)
        wanted, got = wanted + more, now
        best = min(best, (flank, got), key=lambda found: float(np.abs(target - found[1]).max()))
    if np.abs(target - best[1]).max() > _GOOD_ENOUGH:
        raise CannotBeGround("no such cone settles on a flute of this helix; give a smaller helix_angle")
    return best


def _array(angles: Angles) -> Array:
    return np.array([angles[name] for name in ANGLES])


def _cone(family: str, theta: float, flute: Flute, wanted: Angles) -> ConicalFlank:
    place = FAMILIES[family](
        Wanted(
            math.radians(wanted["point_angle"] / 2),
            math.radians(wanted["lip_relief"]),
            math.radians(180 - wanted["chisel_edge_angle"]),
            flute.half_web(1) / flute.radius,
        ),
        math.radians(theta),
    )
    flank = ConicalFlank(
        cone_half_angle=theta,
        cone_tilt=math.degrees(place.tilt),
        apex_distance=place.distance * flute.radius,
        skew=place.skew * flute.radius,
        flank_turn=math.degrees(place.turn),
    )
    return through_the_lip(flank, flute)


def _land_reached(flute: Flute, flank: ConicalFlank) -> Flute:
    """The flute, or one with as much land as the cone reaches, in whole degrees."""
    if _is_ground(flute, flank):
        return flute
    low, high = int(_NARROWEST_LAND), math.ceil(flute.heel_angle)
    GroundPoint(evolve(flute, heel_angle=float(low)), flank)
    while high - low > 1:
        middle = (low + high) // 2
        if _is_ground(evolve(flute, heel_angle=float(middle)), flank):
            low = middle
        else:
            high = middle
    return evolve(flute, heel_angle=float(low))


def _is_ground(flute: Flute, flank: ConicalFlank) -> bool:
    try:
        GroundPoint(flute, flank)
    except CannotBeGround:
        return False
    return True


def no_cone(
    family: str, theta: float, flute: Flute, asked: Angles, notes: tuple[str, ...], fixed_land: bool, reason: str
) -> NoSetup:
    """Why there is no set-up, and the nearest one."""
    what = f"{say(asked, *ANGLES)} cannot be had together from a cone of half angle {theta:g}°"
    flat = plane_chisel(flute, asked["lip_relief"])
    if asked["chisel_edge_angle"] <= flat:
        already = f"{what}: one plane with that point angle and relief already has its chisel edge at "
        already += f"{show('chisel_edge_angle', flat)}, and a cone with its apex behind the axis only turns it further"
        try:
            plane = as_plane(flute, asked["lip_relief"], asked, notes)
        except CannotBeGround as missing:
            return NoSetup(f"{already}. The plane cannot be ground either: {missing}")
        return NoSetup(f"{already}. Grind the plane, or ask for less relief or a larger chisel edge angle", plane)
    why = reason.split(";")[0]
    last = _least_change(family, theta, flute, asked, notes, max(flat, 90.0), fixed_land)
    if last is None:
        return NoSetup(f"{what}: {why}. No other chisel edge angle helps; take another cone_half_angle")
    # Rounded down, so that the angle named can itself be ground.
    angle = show("chisel_edge_angle", math.floor(10 * last.reached["chisel_edge_angle"]) / 10)
    return NoSetup(
        f"{what}: {why}. The nearest is a chisel edge angle of {angle}; ask for that, or for more relief", last
    )


def _least_change(
    family: str, theta: float, flute: Flute, asked: Angles, notes: tuple[str, ...], flat: float, fixed_land: bool
) -> Setup | None:
    """The set-up with the chisel edge angle nearest to the one asked, on the way to the plane's."""
    narrowest = flute if fixed_land else evolve(flute, heel_angle=_NARROWEST_LAND)

    def is_there(share: float) -> bool:
        try:
            return _is_ground(narrowest, _cone(family, theta, flute, part_way(share)))
        except CannotBeGround:
            return False

    def part_way(share: float) -> Angles:
        edge = asked["chisel_edge_angle"]
        return {**asked, "chisel_edge_angle": edge + share * (flat - edge)}

    low, high = 0.0, next((share for share in _SHARES if is_there(share)), None)
    if high is None:
        return None
    for _ in range(12):
        middle = (low + high) / 2
        low, high = (low, middle) if is_there(middle) else (middle, high)
    # The last bit is left to the twist of the flute, which these cones leave out.
    for more in (0.0, 0.005, 0.02, 0.05):
        with suppress(CannotBeGround):
            found = solved(family, theta, flute, part_way(high + more), notes, fixed_land=fixed_land)
            return evolve(found, asked=asked)
    return None


def through_the_lip(flank: ConicalFlank, flute: Flute) -> ConicalFlank:
    """The flank fed to the depth at which it passes through the lip beside the axis, wherever its cone was set."""
    place = np.zeros(1), np.full(1, flute.half_web(1))
    level = evolve(flank, flank_height=0.0)
    return evolve(level, flank_height=-float(level.over(flute, 1).height(*place)[0])) if flank.flank_turn else level
