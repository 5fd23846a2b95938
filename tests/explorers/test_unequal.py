"""The explorer for lips of unequal height."""

import math

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.unequal import UNEQUAL


def said(**givens):
    return describe(UNEQUAL.summary, UNEQUAL.values(UNEQUAL.state(**givens)), "mm", frozenset())


def test_it_tells_how_wide_the_hole_may_get():
    values = UNEQUAL.values(UNEQUAL.state(lip_height_difference=0.3))
    # DERIVED: the hole is wider by h·tan κ
    assert values["largest_hole"] == pytest.approx(10 + 0.3 * math.tan(math.radians(59)))
    assert "the hole may get 0.499 mm wider than the drill, 10.5 mm in all" in said(lip_height_difference=0.3)
    assert "A guided drill cuts less." in said()


def test_a_true_point_is_said_to_run_true():
    assert "runs true" in said(lip_height_difference=0)


def test_every_setting_of_its_sliders_has_its_tip_inside_the_drill():
    worst = UNEQUAL.state(diameter=40, point_angle=150, lip_height_difference=4)
    values = UNEQUAL.values(worst)
    assert values["point_offset"] < values["diameter"] / 2
