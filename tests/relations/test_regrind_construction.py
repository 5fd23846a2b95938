"""Regrinding built from profiles that are shifted until the damage is gone, and from drills ground again and again."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import assume, given, settings
from numpy.typing import NDArray

from drillpoint.relation import Relation
from drillpoint.relations import (
    length_removed_by_regrinds,
    length_until_thinning,
    regrinds_left,
    stock_for_angle_change,
    stock_for_chip,
    stock_for_wear_land,
    stock_for_worn_corner,
    take_off_correction,
    tip_stock,
    web_after_shortening,
)
from tests.relations.drills import drills

Profile = NDArray[np.float64]


def _of(relation: Relation, drill: dict[str, float]) -> float:
    return float(relation(**{n: drill[n] for n in relation.givens}))


def _cone(radii: Profile, point_angle: float) -> Profile:
    """Heights of a point over its radii, tip at 0: points of a slope turned out of the axis."""
    half = math.radians(point_angle / 2)
    slope = np.array([math.sin(half), -math.cos(half)])
    return np.interp(radii, radii[-1] * np.array([0.0, 1.0]), radii[-1] / slope[0] * slope[1] * np.array([0.0, 1.0]))


def _lowered(new: Profile, old: Profile) -> float:
    """How far the new profile has to come down to lie nowhere above the old."""
    return float(np.max(new - old))


@given(drills())
def test_a_new_cone_fits_into_the_old_steel(drill: dict[str, float]) -> None:
    radii = np.linspace(0.0, drill["diameter"] / 2, 41)
    old, new = (_cone(radii, drill[n]) for n in ("point_angle", "new_point_angle"))
    gone = old - (new - _lowered(new, old))
    assert _of(stock_for_angle_change, drill) == pytest.approx(float(gone.max()), rel=1e-6, abs=1e-9)
    # A flatter point takes it off the tip, a sharper one off the corners.
    assert int(np.argmax(gone)) == (0 if drill["new_point_angle"] > drill["point_angle"] else 40)

    damaged = old.copy()
    damaged[-1] -= drill["corner_stock"]
    tip = _lowered(new, damaged)
    assert _of(tip_stock, drill) == pytest.approx(tip, rel=1e-6, abs=1e-9 * drill["diameter"])


@given(drills())
def test_a_new_flank_lies_below_the_land(drill: dict[str, float]) -> None:
    land = drill["wear_land"]
    behind = np.linspace(0.0, 3 * land, 301)
    fall = np.array([math.cos(math.radians(drill["lip_relief"])), -math.sin(math.radians(drill["lip_relief"]))])
    sound = behind / fall[0] * fall[1]
    # Rubbing takes everything above the level of the back of the land.
    worn = np.minimum(sound, np.interp(land, behind, sound))
    assert _of(stock_for_wear_land, drill) == pytest.approx(_lowered(sound, worn), rel=1e-9, abs=1e-12)


@given(drills())
def test_a_lip_through_the_bottom_of_the_chip(drill: dict[str, float]) -> None:
    half = math.radians(drill["point_angle"] / 2)
    lip = np.array([math.sin(half), -math.cos(half)])
    inwards = np.array([-lip[1], lip[0]])
    inwards *= -1 if inwards[1] > 0 else 1
    bottom = 2 * drill["chip_depth"] * lip + drill["chip_depth"] * inwards
    # Straight above the bottom of the chip: where the old lip was.
    along = bottom[0] / lip[0]
    above = along * lip[1]
    assert _of(stock_for_chip, drill) == pytest.approx(above - bottom[1], rel=1e-7, abs=1e-12)


@given(drills())
def test_a_corner_is_sharp_below_the_damage(drill: dict[str, float]) -> None:
    margin = np.linspace(0.0, 2 * drill["worn_margin"], 2001)
    sound = margin >= drill["worn_margin"] * (1 - 1e-12)
    assert _of(stock_for_worn_corner, drill) == pytest.approx(float(margin[sound][0]), rel=1e-9)


@settings(max_examples=40, deadline=None)
@given(drills())
def test_ground_again_and_again(drill: dict[str, float]) -> None:
    assume(drill["usable_length"] / drill["stock"] < 20000)
    left, times = drill["usable_length"], 0
    while left >= drill["stock"]:
        left, times = left - drill["stock"], times + 1
    assert _of(regrinds_left, drill) == pytest.approx(times + left / drill["stock"], rel=1e-9, abs=1e-9)

    length, web = 0.0, drill["web"]
    for _ in range(int(drill["regrinds"])):
        length += drill["stock"]
        web += drill["web_taper"] * drill["stock"]
    own = {**drill, "regrinds": int(drill["regrinds"])}
    assert _of(length_removed_by_regrinds, own) == pytest.approx(length, rel=1e-9)
    assume(length <= 300 and web < drill["diameter"])
    many = {n: own[n] for n in ("web", "web_taper", "regrinds", "stock")}
    assert web_after_shortening(**many) == pytest.approx(web, rel=1e-9)


@given(drills())
def test_short_enough_to_need_thinning(drill: dict[str, float]) -> None:
    # Two ends of a drill's web, 1000 mm apart; the place in between where it is as thick as the limit.
    limit = drill["web_ratio_limit"] * drill["diameter"]
    near, far = 0.0, 1e7
    for _ in range(200):
        middle = (near + far) / 2
        thick = drill["web"] + drill["web_taper"] * 1000 * (middle / 1000)
        near, far = (middle, far) if thick < limit else (near, middle)
    assert _of(length_until_thinning, drill) == pytest.approx(near, rel=1e-7, abs=1e-7)


@given(drills())
def test_a_corrected_setting_takes_off_what_was_asked(drill: dict[str, float]) -> None:
    correction = _of(take_off_correction, drill)
    # A setting that lacks the correction took off what was measured; with it, the wanted stock comes off.
    taken = drill["length_before"] - drill["length_after"]
    next_tip = drill["length_after"] - (taken + correction)
    assert drill["length_after"] - next_tip == pytest.approx(drill["stock"], rel=1e-9, abs=1e-9)
