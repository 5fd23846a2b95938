"""The explorer for the uncut chip."""

import math

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.chip import CHIP


def values(**givens):
    return CHIP.values(CHIP.state(**givens))


def test_a_blunter_point_makes_the_chip_thicker_and_narrower_with_the_same_area():
    usual, blunt = values(), values(point_angle=135)
    # DERIVED: half of 0.2 mm/rev times sin 59°, and sin 67.5°
    assert usual["chip_thickness"] == pytest.approx(0.1 * math.sin(math.radians(59)))
    assert blunt["chip_thickness"] == pytest.approx(0.1 * math.sin(math.radians(67.5)))
    areas = [v["chip_thickness"] * v["chip_width"] for v in (usual, blunt)]
    assert areas[0] == pytest.approx(areas[1])
    said = describe(CHIP.summary, blunt, "mm", frozenset())
    assert said == "Each lip takes a chip 0.092 mm thick and 4.78 mm wide, thicker and narrower than at the usual 118°."


def test_more_feed_makes_the_chip_thicker_only():
    little, much = values(feed=0.1), values(feed=0.4)
    assert much["chip_thickness"] == pytest.approx(4 * little["chip_thickness"])
    assert much["chip_width"] == little["chip_width"]
