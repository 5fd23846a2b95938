"""The set-up of the cone: the same sliders as the point it grinds, and the cone in view."""

from __future__ import annotations

import json

import pytest

from drillpoint.explorers.answering import answer
from drillpoint.explorers.cone import CONE
from drillpoint.explorers.cone_setup import CONE_SETUP
from drillpoint.explorers.find import find


def test_it_moves_with_the_sliders_of_the_ground_point() -> None:
    assert find("cone_setup") is CONE_SETUP
    assert CONE_SETUP.sliders == CONE.sliders


def test_both_tell_the_same_point() -> None:
    state = {**CONE.start, "skew": 1.6}
    (setup,) = answer(CONE_SETUP, {"state": state})["answers"].values()
    (point,) = answer(CONE, {"state": state})["answers"].values()
    for name in ("point_angle", "lip_relief", "diameter", "web"):
        assert setup["values"][name] == pytest.approx(point["values"][name], abs=1e-9)
    assert set(CONE_SETUP.table) <= set(setup["values"])


@pytest.mark.parametrize("name", ["cone_tilt", "cone_half_angle", "apex_distance", "skew"])
def test_each_setting_moves_the_drawing_and_costs_little_to_send(name: str) -> None:
    first = answer(CONE_SETUP, {"state": CONE_SETUP.start})["answers"]["conical_setup"]
    slider = next(slider for slider in CONE_SETUP.sliders if slider.name == name)
    low, high = slider.limits(CONE_SETUP.start)
    for value in (low, high):
        moved = answer(CONE_SETUP, {"state": {**CONE_SETUP.start, name: value}, "has": {"conical_setup": first["id"]}})[
            "answers"
        ]["conical_setup"]
        assert "scene" not in moved
        assert moved["coordinates"] != first["coordinates"]
        assert len(json.dumps(moved)) < 10_000


@pytest.mark.parametrize("share", [0.0, 1.0])
def test_no_end_of_a_slider_is_without_a_drawing(share: float) -> None:
    for slider in CONE_SETUP.sliders:
        low, high = slider.limits(CONE_SETUP.start)
        state = CONE_SETUP.state(**{slider.name: low + share * (high - low)})
        assert "problem" not in answer(CONE_SETUP, {"state": state}), slider.name
