"""Figures that stand in print, against the book of relations. Each names its source and how it was seen.

The tolerance is the rounding of the printed figure.
"""

from __future__ import annotations

import math

import pytest

from drillpoint.relations import chisel_edge_angle, chisel_edge_length, lip_length, point_height

INCH = 25.4


def test_rule_of_thumb_for_the_tip() -> None:
    # Common practice: the tip of a 118° point is 0.3 of the diameter, of a 135° point 0.2.
    assert point_height(diameter=10, point_angle=118) == pytest.approx(3.0, rel=0.002)
    flat = point_height(diameter=10, point_angle=135)
    assert flat == pytest.approx(2.07, abs=0.005)
    assert (flat - 2.0) / flat == pytest.approx(0.034, abs=0.001)


def test_tip_of_a_seven_eighths_drill() -> None:
    # Common practice, worked with a four-figure table: 7/8 in at 118° has a tip of 0.2629 in.
    tip = point_height(diameter=7 / 8 * INCH, point_angle=118)
    assert tip / INCH == pytest.approx(0.2629, abs=5e-5)
    assert tip == pytest.approx(6.677, abs=5e-4)


def test_manuals_ask_for_more_than_one_plane_flank_can_give() -> None:
    # US Army TC 9-524 ch. 4, from memory: point 118°, lip clearance 8° to 12°, chisel edge 120° to 135°.
    # US Navy NAVEDTRA 12204-A, from memory: clearance 12° to 15°, chisel edge 125° to 135°.
    for relief, least in ((8, 120), (12, 120), (12, 125), (15, 125)):
        assert chisel_edge_angle(point_angle=118, lip_relief=relief, web_ratio=0.15) < least
    # DERIVED: what one plane flank would need.
    needed = chisel_edge_angle.solve("lip_relief", chisel_edge_angle=120, point_angle=118, web_ratio=0.15)
    assert isinstance(needed, float)
    assert 23 < needed < 24


def test_fifty_nine_degrees_a_side() -> None:
    # Model Engineer, 20 April 1916 (seen in an abridged copy), and US Navy Steelworker NAVEDTRA 14251 ch. 12 (seen):
    # 59° to the wheel on each side. The whole angle is then 118°.
    whole = point_height.solve("point_angle", point_height=5 / math.tan(math.radians(59)), diameter=10)
    assert whole == pytest.approx(118, abs=1e-9)


def test_shop_rules_for_the_lip_are_too_long_and_too_short() -> None:
    # DERIVED, for a 10 mm drill at 118° with a 1.5 mm web and a 125° chisel edge.
    true = lip_length(diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)
    assert true == pytest.approx(5.1545, abs=5e-5)
    half = math.radians(59)
    assert 10 / (2 * math.sin(half)) == pytest.approx(5.833, abs=5e-4)
    assert (10 - 1.5) / (2 * math.sin(half)) == pytest.approx(4.958, abs=5e-4)


@pytest.mark.parametrize(("lip_relief", "angle"), [(8, 94.9), (12, 101.6), (18, 111.6), (24, 120.9)])
def test_chisel_edge_swings_round_with_relief(lip_relief: float, angle: float) -> None:
    # DERIVED: plane flank, 118°, web 0.15 of the diameter.
    found = chisel_edge_angle(point_angle=118, lip_relief=lip_relief, web_ratio=0.15)
    assert found == pytest.approx(angle, abs=0.051)


@pytest.mark.parametrize(("axial", "angle", "webs"), [(12, 109.5, 1.061), (26.8, 130, 1.305)])
def test_chisel_edge_by_the_relief_square_to_the_lip(axial: float, angle: float, webs: float) -> None:
    # DERIVED: plane flank, 118°.
    found = chisel_edge_angle(point_angle=118, axial_relief=axial)
    assert found == pytest.approx(angle, abs=0.06)
    assert chisel_edge_length(web=1, chisel_edge_angle=angle) == pytest.approx(webs, abs=6e-4)


def test_a_reground_drill_has_a_longer_chisel_edge() -> None:
    # DERIVED, with a web taper of 1.4 mm per 100 mm (seen in a secondary source): 20 mm ground off a 10 mm drill.
    web = 1.5 + 20 * 1.4 / 100
    assert chisel_edge_length(web=1.5, chisel_edge_angle=125) == pytest.approx(1.831, abs=5e-4)
    assert chisel_edge_length(web=web, chisel_edge_angle=125) == pytest.approx(2.173, abs=5e-4)
