"""Figures on regrinding. Each names its source and how it was seen; without one it is DERIVED.

The tolerance is the rounding of the figure.
"""

from __future__ import annotations

import math

import pytest

from drillpoint.errors import Impossible
from drillpoint.relations import (
    chisel_edge_length,
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

INCH = 25.4


@pytest.mark.parametrize(("old", "new"), [(118, 135), (135, 118)])
def test_from_118_to_135_and_back_take_the_same(old: float, new: float) -> None:
    # DERIVED: .0933 of the diameter; .93 mm at 10 mm, .047 in at 1/2 in.
    own = {"point_angle": old, "new_point_angle": new}
    assert stock_for_angle_change(diameter=10, **own) / 10 == pytest.approx(0.0933, abs=5e-5)
    assert stock_for_angle_change(diameter=10, **own) == pytest.approx(0.93, abs=5e-3)
    assert stock_for_angle_change(diameter=0.5 * INCH, **own) / INCH == pytest.approx(0.047, abs=5e-4)


def test_a_given_stock_reaches_two_angles() -> None:
    # DERIVED: 0.5 mm makes a 10 mm point at 118° either flatter or sharper.
    sharper, flatter = stock_for_angle_change.solve("new_point_angle", stock=0.5, diameter=10, point_angle=118)
    assert 5 / math.tan(math.radians(flatter / 2)) == pytest.approx(3.0043 - 0.5, abs=5e-5)
    assert 5 / math.tan(math.radians(sharper / 2)) == pytest.approx(3.0043 + 0.5, abs=5e-5)


def test_stock_for_damage() -> None:
    # DERIVED: 0.4 mm of land at 12° is 0.4·0.21256; a chip 0.3 mm deep at 118° is 0.3/0.85717.
    assert stock_for_wear_land(wear_land=0.4, lip_relief=12) == pytest.approx(0.0850, abs=5e-5)
    assert stock_for_chip(chip_depth=0.3, point_angle=118) == pytest.approx(0.3500, abs=5e-5)
    assert stock_for_worn_corner(worn_margin=0.8) == pytest.approx(0.8, abs=1e-12)


def test_a_flatter_point_and_worn_corners_add_up_at_the_tip() -> None:
    # DERIVED: 0.3 mm off the corners and 118° to 135° at 10 mm: 0.3 + 0.933 off the tip.
    own = {"diameter": 10, "point_angle": 118, "new_point_angle": 135}
    assert tip_stock(corner_stock=0.3, **own) == pytest.approx(1.233, abs=5e-4)
    # DERIVED: back to 118° the corners lose 0.933 anyway; of 1.2 mm of damage 0.267 is left to come off the tip.
    back = {"diameter": 10, "point_angle": 135, "new_point_angle": 118}
    assert tip_stock(corner_stock=1.2, **back) == pytest.approx(0.267, abs=5e-4)
    with pytest.raises(Impossible, match="nothing more has to come off the tip"):
        tip_stock(corner_stock=0.3, **back)


def test_a_drill_to_its_end() -> None:
    # DERIVED: 40 mm of flute at 0.45 mm a time.
    left = regrinds_left(usable_length=40, stock=0.45)
    assert left == pytest.approx(88.9, abs=0.05)
    assert left.notes == ("that is 88 whole regrinds",)
    assert length_removed_by_regrinds(regrinds=40, stock=0.5) == pytest.approx(20, abs=1e-12)
    with pytest.raises(Impossible, match="nothing is ground off"):
        regrinds_left(usable_length=40, stock=0)


def test_the_web_after_forty_regrinds() -> None:
    # Web taper of 1.4 mm per 100 mm: seen in a secondary source. The rest DERIVED: 40 regrinds of 0.5 mm are 20 mm.
    web = web_after_shortening(web=1.5, web_taper=0.014, regrinds=40, stock=0.5)
    assert web == pytest.approx(1.78, abs=5e-3)
    assert chisel_edge_length(web=web, chisel_edge_angle=125) == pytest.approx(2.173, abs=5e-4)


def test_when_thinning_is_due() -> None:
    # DERIVED: from 1.5 mm to 0.18 of 10 mm at 0.014 mm for each millimetre.
    own = {"diameter": 10, "web": 1.5, "web_taper": 0.014}
    length = length_until_thinning(web_ratio_limit=0.18, **own)
    assert length == pytest.approx(0.3 / 0.014, rel=1e-9)
    assert web_after_shortening(web=1.5, web_taper=0.014, length_removed=length) == pytest.approx(1.8, rel=1e-12)
    with pytest.raises(Impossible, match="thin it now"):
        length_until_thinning(web_ratio_limit=0.12, **own)


def test_take_off_checked_by_measuring() -> None:
    # DERIVED: asked 0.5, gone 0.45 with each length good to 0.02 mm: 0.05 ± √2·0.02.
    found = take_off_correction.uncertainty(stock=0.5, length_before=(120.4, 0.02), length_after=(119.95, 0.02))
    assert found.value == pytest.approx(0.05, abs=1e-9)
    assert found.plus_minus == pytest.approx(0.02 * math.sqrt(2), rel=1e-9)
    assert found.at_most == pytest.approx(0.04, rel=1e-9)
    assert take_off_correction(stock=0.5, length_before=120.4, length_after=119.8) == pytest.approx(-0.1, abs=1e-9)
    with pytest.raises(Impossible, match="the wrong way round"):
        take_off_correction(stock=0.5, length_before=119, length_after=120)
