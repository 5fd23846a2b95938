"""Going backwards: one answer, two in order, or none with the reason."""

from __future__ import annotations

import pytest

from drillpoint.errors import NoSolution, OutOfRange, UnknownGiven
from drillpoint.relation import Value
from drillpoint.relations import chisel_edge_angle, heel_clearance, lip_length, point_height, relief_at_radius

USUAL = {"diameter": 10, "web": 1.5, "chisel_edge_angle": 125}


def test_one_answer_is_a_value() -> None:
    length = lip_length(point_angle=118, **USUAL)
    angle = lip_length.solve("point_angle", lip_length=length, **USUAL)
    assert isinstance(angle, Value)
    assert angle == pytest.approx(118, abs=1e-9)
    assert angle.unit == "°"


def test_solving_for_the_result_is_calling() -> None:
    assert point_height.solve("point_height", diameter=10, point_angle=118) == point_height(
        diameter=10, point_angle=118
    )


def test_solving_through_what_stands_in() -> None:
    # DERIVED: plane flank at 118° and 135° with a web of 0.15 of the diameter.
    assert chisel_edge_angle.solve(
        "lip_relief", chisel_edge_angle=125, point_angle=118, web=1.5, diameter=10
    ) == pytest.approx(26.84, abs=5e-3)
    assert chisel_edge_angle.solve(
        "lip_relief", chisel_edge_angle=125, point_angle=135, web_ratio=0.15
    ) == pytest.approx(19.23, abs=5e-3)


def test_an_acute_target_is_read_as_obtuse_and_said() -> None:
    relief = chisel_edge_angle.solve("axial_relief", chisel_edge_angle=55, point_angle=118)
    assert isinstance(relief, Value)
    assert chisel_edge_angle(point_angle=118, axial_relief=relief) == pytest.approx(125, abs=1e-9)
    assert "was read as 125°" in relief.notes[0]


def test_two_answers_come_in_order() -> None:
    # DERIVED: at a large relief the same chisel edge angle belongs to two webs, since the web both takes from the
    # relief square to the lip and turns the corner away from it.
    own = {"point_angle": 135, "lip_relief": 30}
    target = float(chisel_edge_angle(web_ratio=0.6, **own))
    found = chisel_edge_angle.solve("web_ratio", chisel_edge_angle=target, **own)
    if isinstance(found, tuple):
        assert list(found) == sorted(found)
    answers = found if isinstance(found, tuple) else (found,)
    for answer in answers:
        assert chisel_edge_angle(web_ratio=answer, **own) == pytest.approx(target, abs=1e-9)
    assert any(abs(answer - 0.6) < 1e-6 for answer in answers)


def test_only_the_place_on_the_lip_is_an_answer() -> None:
    own = {"diameter": 10, "web": 1.5, "point_angle": 118, "lip_relief": 12}
    # The same relief occurs once on the lip and once inside the chisel edge, where there is no lip.
    found = relief_at_radius.solve("radius", relief_at_radius=31.2, **own)
    assert isinstance(found, Value)
    assert found == pytest.approx(0.8024, abs=1e-4)
    with pytest.raises(NoSolution, match="reaches"):
        relief_at_radius.solve("radius", relief_at_radius=40, **own)


def test_none_says_what_can_be_reached() -> None:
    with pytest.raises(NoSolution, match=r"point_angle from 60° to 179° reaches 4\.42 mm to 8\.84 mm"):
        lip_length.solve("point_angle", lip_length=4, **USUAL)
    with pytest.raises(NoSolution, match="no lip is left"):
        lip_length.solve("point_angle", lip_length=4, diameter=10, web=9, chisel_edge_angle=125)
    with pytest.raises(NoSolution):
        heel_clearance.solve("lip_relief", heel_clearance=359, point_angle=118, web_ratio=0.15)


def test_wrong_questions_are_refused() -> None:
    with pytest.raises(UnknownGiven, match="given as well"):
        lip_length.solve("web", lip_length=5, point_angle=118, **USUAL)
    with pytest.raises(UnknownGiven, match="needs the wanted lip_length"):
        lip_length.solve("web", diameter=10, point_angle=118, chisel_edge_angle=125)
    with pytest.raises(UnknownGiven, match="cannot be solved for 'feed'"):
        lip_length.solve("feed", lip_length=5, point_angle=118, **USUAL)
    with pytest.raises(OutOfRange, match="lip_length"):
        lip_length.solve("point_angle", lip_length=-1, **USUAL)
