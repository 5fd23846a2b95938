"""Conical flanks from wanted angles: the cone, the land it reaches, and the nearest set-up when there is none."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from types import MappingProxyType

import numpy as np
from attrs import evolve

from drillpoint.ground.cones import ConePlace, Wanted, lip_on_cone, skewed_axis
from drillpoint.ground.conical import ConicalFlank
from drillpoint.ground.flute import Flute
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.setup import ANGLES, Angles, NoSetup, Setup, measured, say, show
from drillpoint.ground.setups_plane import as_plane, plane_chisel
from drillpoint.ground.stated import CannotBeGround

FAMILIES: Mapping[str, Callable[[Wanted, float], ConePlace | None]] = MappingProxyType(
    {"skewed_axis": skewed_axis, "lip_on_cone": lip_on_cone}
)
_NARROWEST_LAND, _GOOD_ENOUGH, _CLOSE = 30.0, 1e-9, 1e-12


def solved(
    family: str, theta: float, flute: Flute, asked: Angles, notes: tuple[str, ...], *, fixed_land: bool
) -> Setup:
    """The set-up; raises CannotBeGround with the reason when there is none."""
    wanted = dict(asked)
    best: tuple[float, ConicalFlank, dict[str, float]] | None = None
    narrow = flute
    # The geometry is that of a straight flute. What a twisted one makes of it is measured, and so much more is wanted.
    for _ in range(12):
        flank = _cone(family, theta, flute, wanted)
        if best is None:
            narrow = flute if fixed_land else _land_reached(flute, flank)
        reached = measured(GroundPoint(narrow, flank))
        missed = {name: asked[name] - reached[name] for name in ANGLES}
        worst = max(map(abs, missed.values()))
        if best is None or worst < best[0]:
            best = worst, flank, reached
        if worst < _CLOSE:
            break
        wanted = {name: wanted[name] + missed[name] for name in ANGLES}
    if best is None or best[0] > _GOOD_ENOUGH:
        raise CannotBeGround("the twist of the flute lets no such cone settle; give a smaller helix_angle")
    if narrow is not flute:
        notes = (*notes, f"this cone reaches {narrow.heel_angle:g}° round behind the corner; a wider land is cut away")
    return Setup(family=family, flute=narrow, flank=best[1], asked=asked, reached=best[2], notes=notes)


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
    if place is None:
        raise CannotBeGround("no cone of that half angle with its apex behind the drill axis has all three")
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
        return NoSetup(
            f"{what}: one plane with that point angle and relief already has its chisel edge at "
            f"{show('chisel_edge_angle', flat)}, and a cone only turns it further. Grind the plane, or ask for less "
            "relief or a larger chisel edge angle",
            as_plane(flute, asked["lip_relief"], asked, notes),
        )
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

    def at(chisel: float) -> Setup | None:
        try:
            nearer = {**asked, "chisel_edge_angle": chisel}
            return solved(family, theta, flute, nearer, notes, fixed_land=fixed_land)
        except CannotBeGround:
            return None

    high = asked["chisel_edge_angle"]
    for share in np.linspace(0.0, 1.0, 20)[1:-1]:
        low = high + float(share) * (flat - high)
        if found := at(low):
            break
    else:
        return None
    before = high + float(share - 1 / 19) * (flat - high)
    for _ in range(12):
        middle = (low + before) / 2
        nearer = at(middle)
        low, before, found = (middle, before, nearer) if nearer else (low, middle, found)
    return evolve(found, asked=asked)


def through_the_lip(flank: ConicalFlank, flute: Flute) -> ConicalFlank:
    """The flank fed to the depth at which it passes through the lip beside the axis, wherever its cone was set."""
    place = np.zeros(1), np.full(1, flute.half_web(1))
    level = evolve(flank, flank_height=0.0)
    return evolve(level, flank_height=-float(level.over(flute, 1).height(*place)[0])) if flank.flank_turn else level
