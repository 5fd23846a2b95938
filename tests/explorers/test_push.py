"""The explorer for web, chisel edge and push."""

import math

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.push import PUSH


def values(**givens):
    return PUSH.values(PUSH.state(**givens))


def test_a_thicker_web_costs_push_and_hardly_any_torque():
    usual, thick = values(), values(web=2.25)
    # DERIVED: W/sin 125° over the diameter.
    assert usual["chisel_ratio"] == pytest.approx(0.15 / math.sin(math.radians(125)))
    assert thick["thrust"] / usual["thrust"] > 1.25
    assert 1 < thick["torque"] / usual["torque"] < 1.15


def test_the_pilot_changes_the_cover_and_not_the_push_in_the_solid():
    small, large = values(pilot_diameter=1), values(pilot_diameter=3)
    assert small["thrust"] == large["thrust"]
    assert small["pilot_cover"] < 1 < large["pilot_cover"]


@pytest.mark.parametrize(("pilot", "said"), [(1.0, "is too small"), (3.0, "covers the chisel edge")])
def test_the_status_line_judges_the_pilot(pilot, said):
    known = {**values(pilot_diameter=pilot), "without_chisel_edge": 2101.0}
    likes = {"without_chisel_edge": "thrust"}
    words = describe(PUSH.summary, known, "mm", frozenset(), likes)
    assert said in words and "2101 N without a chisel edge" in words


def test_its_sliders_stay_inside_the_handbooks_table():
    for web in (0.5, 2.8):
        for angle in (100, 135):
            assert 0.03 < values(web=web, chisel_edge_angle=angle)["chisel_ratio"] < 0.4
