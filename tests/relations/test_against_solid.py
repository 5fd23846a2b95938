"""Every relation of a plainly ground point agrees with the point built from vectors."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given

from drillpoint.relations import (
    axial_relief,
    chisel_edge_angle,
    chisel_edge_length,
    heel_clearance,
    lip_length,
    lip_relief,
    point_height,
    relief_at_radius,
)
from tests.relations.drills import drills
from tests.relations.solid_point import HALF_TURN, SolidPoint, degrees_between

# DERIVED: closed forms against the construction; 1e-9 unless the construction itself takes small steps.


def _solid(drill: dict[str, float]) -> SolidPoint:
    return SolidPoint(drill["diameter"], drill["point_angle"], drill["web"], drill["axial_relief"])


@given(drills())
def test_lip_length_is_the_distance_between_its_corners(drill: dict[str, float]) -> None:
    solid = _solid(drill)
    angle = math.radians(180 - drill["chisel_edge_angle"])
    corner = solid.chisel_corner(np.array([math.cos(angle), math.sin(angle)]))
    measured = np.linalg.norm(solid.outer_corner - corner)
    names = ("diameter", "point_angle", "web", "chisel_edge_angle")
    assert lip_length(**{n: drill[n] for n in names}) == pytest.approx(measured, rel=1e-9, abs=1e-9)


@given(drills())
def test_point_height_is_where_the_two_lips_lines_cross_in_the_side_view(drill: dict[str, float]) -> None:
    half = drill["diameter"] / 2
    left, right = np.array([-half, 0.0]), np.array([half, 0.0])
    tilt = math.radians(drill["point_angle"] / 2)
    up_right, up_left = np.array([math.sin(tilt), math.cos(tilt)]), np.array([-math.sin(tilt), math.cos(tilt)])
    along = np.linalg.solve(np.column_stack([up_right, -up_left]), right - left)[0]
    tip = left + along * up_right
    assert point_height(diameter=drill["diameter"], point_angle=drill["point_angle"]) == pytest.approx(tip[1], rel=1e-9)


@given(drills())
def test_chisel_edge_length_is_corner_to_corner(drill: dict[str, float]) -> None:
    angle = math.radians(180 - drill["chisel_edge_angle"])
    corner = _solid(drill).chisel_corner(np.array([math.cos(angle), math.sin(angle)]))[:2]
    measured = np.linalg.norm(corner - HALF_TURN[:2, :2] @ corner)
    said = chisel_edge_length(web=drill["web"], chisel_edge_angle=drill["chisel_edge_angle"])
    assert said == pytest.approx(measured, rel=1e-9)


@given(drills())
def test_plane_flanks_meet_at_the_chisel_edge_angle(drill: dict[str, float]) -> None:
    chisel = _solid(drill).chisel_direction
    obtuse = 180 - degrees_between(np.array([1.0, 0.0]), chisel)
    said = chisel_edge_angle(point_angle=drill["point_angle"], axial_relief=drill["axial_relief"])
    assert said == pytest.approx(obtuse, abs=1e-9)


@given(drills())
def test_relief_along_the_lip_is_the_fall_round_the_axis(drill: dict[str, float]) -> None:
    names = ("radius", "web", "point_angle", "axial_relief")
    said = relief_at_radius(**{n: drill[n] for n in names})
    assert said == pytest.approx(_solid(drill).fall_at(drill["radius"]), abs=2e-5)


@given(drills())
def test_lip_relief_is_the_fall_at_the_corner_and_axial_relief_undoes_it(drill: dict[str, float]) -> None:
    names = ("axial_relief", "point_angle", "web_ratio")
    said = lip_relief(**{n: drill[n] for n in names})
    assert said == pytest.approx(_solid(drill).fall_at(drill["diameter"] / 2), abs=2e-5)
    back = axial_relief(lip_relief=said, point_angle=drill["point_angle"], web_ratio=drill["web_ratio"])
    assert back == pytest.approx(drill["axial_relief"], abs=1e-9)


@given(drills())
def test_heel_clearance_is_where_the_flank_comes_up_again(drill: dict[str, float]) -> None:
    names = ("point_angle", "axial_relief", "web_ratio")
    said = heel_clearance(**{n: drill[n] for n in names})
    assert said == pytest.approx(_solid(drill).clearance(), abs=1e-4)
