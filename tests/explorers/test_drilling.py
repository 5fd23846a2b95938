"""The explorer for speed, feed and time."""

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.drilling import DRILLING


def said(units="mm", **givens):
    return describe(DRILLING.summary, DRILLING.values(DRILLING.state(**givens)), units, frozenset())


def test_it_tells_turns_feed_rate_and_time():
    # DERIVED: 1000·20/(π·20) = 318.31; 0.25·318.31 = 79.58; (25 + 10/tan 59°)/79.58 = 0.38966
    told = said(diameter=20, shoulder_depth=25, cutting_speed=20, feed=0.25)
    assert "turns at 318 rev/min, as machines do." in told
    assert "forward by 79.6 mm/min. The hole takes 0.39 min from first touch, the point's 6.01 mm included." in told


def test_it_judges_the_turns():
    assert "faster than most machines go" in said(diameter=2, cutting_speed=100)
    assert "slower than most machines go" in said(diameter=40, cutting_speed=3)


def test_it_speaks_of_inches_and_feet_as_well():
    # DERIVED: 24.384 m/min = 80 ft/min; 0.2 mm = 0.0079 in
    assert "At 80 ft/min" in said("inch", cutting_speed=24.384)
    assert "Fed 0.0079 in/rev" in said("inch")


def test_a_larger_drill_turns_slower_and_takes_longer_in_proportion():
    small, large = (DRILLING.values(DRILLING.state(diameter=d)) for d in (10, 20))
    assert large["spindle_speed"] == pytest.approx(small["spindle_speed"] / 2)
    # DERIVED: depth, point and feed keep their shares, so only the turns count.
    assert large["drilling_time"] == pytest.approx(2 * small["drilling_time"])
