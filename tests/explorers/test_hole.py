"""The explorer for a blind hole."""

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.hole import HOLE


def said(**givens):
    return describe(HOLE.summary, HOLE.values(HOLE.state(**givens)), "mm", frozenset())


def test_it_tells_how_deep_the_tip_goes():
    # DERIVED: 25 + 5/tan 59° = 28.0043; 25 + 5/tan 67.5° = 27.0711
    assert "the tip goes 28 mm deep: 3 mm more for the point, the usual 118°." in said()
    assert "27.07 mm deep" in said(point_angle=135)
    assert "blunter" in said(point_angle=135)
    assert "sharper" in said(point_angle=90)


def test_a_larger_drill_keeps_its_depth_in_diameters():
    values = HOLE.values(HOLE.state(diameter=20))
    assert values["shoulder_depth"] == pytest.approx(50)
    # DERIVED: 50 + 10/tan 59°
    assert values["depth_to_point"] == pytest.approx(56.00860619)
