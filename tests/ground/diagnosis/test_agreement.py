"""Readings of one drill held against each other."""

from __future__ import annotations

from typing import Any

import pytest

from drillpoint.ground import Flute, GroundPoint, PlaneFlank, Readings, find_faults
from drillpoint.ground.diagnosis.readings import usual_errors

EXACT = dict.fromkeys(usual_errors(), 0.0)
# DERIVED: 0.5 mm of lip length is 0.2575 mm of height at 118°.
LENGTHS: dict[str, Any] = {"lip_length_1": 5.6, "lip_length_2": 5.1, "point_angle": 118, "reading_errors": EXACT}


def said(**readings: Any) -> str:
    """Everything that is said of how readings agree."""
    return " ".join(find_faults(Readings(**readings)).agreements)


@pytest.mark.parametrize(("height", "agree"), [(0.2575, True), (0.27, True), (0.1, False), (0.0, False)])
def test_lip_lengths_and_heights(height: float, agree: bool) -> None:
    words = said(**LENGTHS, lip_height_difference=height)
    assert "ask for a height difference of 0.258 mm" in words
    assert ("They agree." in words) is agree
    assert ("read both half angles" in words) is not agree


def test_a_rule_is_too_rough_to_disagree() -> None:
    assert "They agree." in said(**LENGTHS | {"reading_errors": {}}, lip_height_difference=0.0)


def test_the_longer_lip_does_not_stand_ahead() -> None:
    assert "also stands ahead" in said(**LENGTHS, lip_height_difference=0.2575, higher_lip=1)
    assert "They agree." in said(**LENGTHS, lip_height_difference=0.2575, higher_lip=2)


def test_nor_does_it_on_a_ground_point() -> None:
    plane = {"point_angle": 135, "lip_relief": 19.2}
    drill = Flute(diameter=10, web=1.5, point_angle=135)
    seen = GroundPoint(drill, PlaneFlank(**plane, flank_height=0.2), PlaneFlank(**plane)).inspect()
    assert seen.lip_length_1 < seen.lip_length_2
    assert seen.lip_height_difference > 0


@pytest.mark.parametrize(("whole", "agree"), [(118, True), (118.4, True), (121, False)])
def test_half_angles_and_the_whole_angle(whole: float, agree: bool) -> None:
    words = said(half_angle_1=58.5, half_angle_2=59.5, point_angle=whole)
    assert words.startswith("The half angles add up to 118° ± 1°")
    assert words.endswith("They agree.") is agree


@pytest.mark.parametrize(
    ("edge", "says"),
    [(101.6, "agree with one plane flank"), (125, "curved or has a second facet"), (92, "was turned")],
)
def test_relief_and_chisel_edge(edge: float, says: str) -> None:
    # DERIVED: on a plane flank of 118°, web 0.15 of the diameter, 12° at the corner goes with 101.6°.
    words = said(lip_relief=12, chisel_edge_angle=edge, point_angle=118, web=1.5, diameter=10, reading_errors=EXACT)
    assert "chisel edge angle of 101.6°" in words and says in words


@pytest.mark.parametrize(("hole", "says"), [(10.2, "can explain up to 0.429 mm"), (10.6, "explain at most 0.429 mm")])
def test_the_hole_and_the_lips(hole: float, says: str) -> None:
    # DERIVED: 0.5 mm of lip length lets the hole come out 0.5·sin 59° = 0.429 mm wide.
    assert says in said(**LENGTHS, diameter=10, hole_diameter=hole)


def test_nothing_is_said_of_single_readings() -> None:
    assert said(lip_relief=12, web=1.5, half_angle_1=59) == ""
