"""Points beside each other: each cell is what the inspection of that point reads."""

from __future__ import annotations

import math

import pytest

from drillpoint.ground import FacetedFlank, Flute, GroundPoint, conical_setup, plane_setup
from drillpoint.lesson.comparing import compare

USUAL = {"diameter": 10, "web": 1.5, "point_angle": 118, "lip_relief": 12}


def cells(text: str) -> dict[str, list[str]]:
    lines = [[cell for cell in line.split("   ") if cell] for line in text.splitlines()[1:]]
    return {first.strip(): [cell.strip() for cell in others] for first, *others in lines}


def test_it_tells_the_plane_from_the_cone() -> None:
    cone = conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=20)
    board = compare(one_plane=plane_setup(**USUAL), cone=cone)
    shown = cells(board.text)
    assert shown["reading"] == ["one plane", "cone"]
    assert shown["lip relief at the corner"] == ["12°", "12°"]
    # DERIVED: by the relations of the book, tan α_x = (tan α_f − u·cot κ)/√(1 − u²), tan δ = cot κ/tan α_x.
    cot = 1 / math.tan(math.radians(59))
    square = math.degrees(math.atan((math.tan(math.radians(12)) - 0.15 * cot) / math.sqrt(1 - 0.15**2)))
    assert shown["fall square to the lip, at the corner"][0] == f"{square:.1f}°"
    assert shown["fall square to the lip, at the axis"][0] == f"{square:.1f}°"
    assert shown["chisel edge angle"][0] == "101.6°"
    assert shown["flank level with the corner again after"] == ["40.5°", "never"]
    # "At the axis the cone falls faster."
    assert float(shown["fall square to the lip, at the axis"][1].rstrip("°")) > square + 10
    for cell in (*shown["chisel edge length"], "one plane"):
        assert cell in board.html.replace("\N{NO-BREAK SPACE}", " ")


def test_where_facets_meet_on_the_axis_both_falls_are_told() -> None:
    flute = Flute(diameter=10, web=1.5)
    wide = GroundPoint(flute, FacetedFlank(point_angle=118, axial_relief=8, secondary_relief=25))
    narrow = GroundPoint(flute, FacetedFlank(point_angle=118, axial_relief=8, secondary_relief=25, primary_width=0.5))
    shown = cells(compare(meet_on_the_axis=wide, narrow=narrow).text)
    assert shown["fall square to the lip, at the axis"] == ["8° and 25°", "25°"]


def test_more_points_than_can_be_told_apart_are_refused() -> None:
    with pytest.raises(ValueError, match="give 1 to 5"):
        compare()
