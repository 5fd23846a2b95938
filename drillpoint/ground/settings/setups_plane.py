"""Plane flanks from a wanted angle: relief and chisel edge angle are tied by the relations of the book."""

from __future__ import annotations

from typing import Any

from drillpoint.ground.flank import PlaneFlank
from drillpoint.ground.flute import Flute
from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.setup import Angles, Setup, measured
from drillpoint.relations import axial_relief as axial_relief_of
from drillpoint.relations import chisel_edge_angle as chisel_edge_angle_of
from drillpoint.relations import lip_relief as lip_relief_of


def as_plane(flute: Flute, relief: float, asked: Angles, notes: tuple[str, ...]) -> Setup:
    """The plane flank with this lip relief, in degrees, measured."""
    square = axial_relief_of.unchecked(lip_relief=relief, point_angle=flute.point_angle, web_ratio=_ratio(flute))
    flank = PlaneFlank(point_angle=flute.point_angle, axial_relief=square)
    reached = measured(GroundPoint(flute, flank))
    return Setup(family="plane", flute=flute, flank=flank, asked=asked, reached=reached, notes=notes)


def plane_chisel(flute: Flute, relief: float) -> float:
    """The chisel edge angle of the plane with this lip relief; below 90° it leans the wrong way."""
    square = axial_relief_of.unchecked(lip_relief=relief, point_angle=flute.point_angle, web_ratio=_ratio(flute))
    return float(chisel_edge_angle_of.unchecked(point_angle=flute.point_angle, axial_relief=square))


def plane_relief(flute: Flute, chisel: float) -> float:
    """The lip relief of the plane with this chisel edge angle."""
    square: Any = chisel_edge_angle_of.solve("axial_relief", chisel_edge_angle=chisel, point_angle=flute.point_angle)
    return float(
        lip_relief_of.unchecked(axial_relief=float(square), point_angle=flute.point_angle, web_ratio=_ratio(flute))
    )


def _ratio(flute: Flute) -> float:
    return flute.half_web(1) / flute.radius
