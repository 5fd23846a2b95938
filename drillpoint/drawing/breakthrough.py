"""A drill coming through a plate: as its tip comes out, and where its corners are out."""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.points import Curve, wave
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.work import LABEL_PITCH, SAG, across, beside, cut_plate, upright
from drillpoint.relation.symbols import symbols
from drillpoint.relations import point_height

WIDTH, HEIGHT = 580, 480
AXIS, LAST_TIP = sp.Integer(298), sp.Integer(388)
WIDEST, TALLEST = sp.Integer(124), sp.Integer(244)
WALL = 46
DRILL_TOP = sp.Integer(62)

_s = symbols()
_height = point_height.surface_expression
scale = sp.Min(WIDEST / _s.diameter, TALLEST / (_height + sp.Max(_s.sheet_thickness, _height)))
half = scale * _s.diameter / 2
far = LAST_TIP - scale * _height
near = far - scale * _s.sheet_thickness
corners = far - scale * _height
"""Where the corners are when the tip comes out."""

cut_half = half * sp.Min(1, _s.sheet_thickness / _height)
cut_down_to = sp.Max(near, corners)
"""How wide the hole is by then, and how far down so wide."""


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _plate(sheet)
    _drill(sheet)
    _dimensions(sheet)
    scene = sheet.scene(
        name="breakthrough",
        title="A drill coming through a plate, cut open along its axis",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "sheet_thickness"),
        relations=("point_height", "sheet_cover", "breakthrough"),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 60.0, 150.0, 118.0),
            Range("sheet_thickness", 0.05, 2.0, 0.15, share_of="diameter"),
        ),
        bar=sheet.bar((24.0, 456.0), 110.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _plate(sheet: Sheet) -> None:
    for side in (-1, 1):
        x = AXIS + side * cut_half
        wall = (x, near), (x, cut_down_to), (AXIS, far)
        cut_plate(sheet, wall, AXIS + side * (half + WALL), "left" if side < 0 else "right")


def _drill(sheet: Sheet) -> None:
    left, right = AXIS - half, AXIS + half
    top: Curve = ["M", (left, DRILL_TOP), *wave((left, DRILL_TOP), (right, DRILL_TOP), SAG)]
    sides = (right, corners), (AXIS, far), (left, corners)
    sheet.path("land", [*top, "L", *sides, "Z"])
    sheet.path("fine", top)
    sheet.line("edge", (right, DRILL_TOP), (right, corners))
    sheet.line("edge", (left, DRILL_TOP), (left, corners))
    sheet.line("edge", (left, corners), (right, corners))
    sheet.line("lip", sides[0], sides[1], sides[2])
    # The same drill once its corners are out.
    sheet.line("swept", (left, cut_down_to), (left, far), (AXIS, LAST_TIP), (right, far), (right, cut_down_to))
    sheet.line("swept", (left, far), (right, far))
    sheet.line("centre", (AXIS, DRILL_TOP - 10), (AXIS, LAST_TIP + 14))
    sheet.motion((right + 22, DRILL_TOP), (right + 22, DRILL_TOP + 40))


def _dimensions(sheet: Sheet) -> None:
    left, right = AXIS - half, AXIS + half
    level = sp.Integer(36)
    across(sheet, left, right, level, DRILL_TOP)
    sheet.label("value", (AXIS, level - 9), "middle", "Ø{diameter}", "diameter", "Ø ?")
    thick = upright(sheet, (left - WALL, near), (left - WALL, far), left - WALL - 42)
    point = upright(sheet, (left, far), (AXIS, LAST_TIP), left - WALL - 16)
    beside(sheet, thick, thick[1], "thickness", "sheet_thickness", "left")
    beside(sheet, point, sp.Max(point[1], thick[1] + LABEL_PITCH), "point height", "point_height", "left")
    travel = upright(sheet, (right + WALL, near), (AXIS, LAST_TIP), right + WALL + 20)
    beside(sheet, travel, travel[1], "travel until out", "travel_through", "right")


def _words() -> list[Sentence]:
    return [
        Sentence("A drill coming through a plate, cut open along its axis, as the tip comes out. "),
        Sentence("Drill diameter {diameter}", "diameter", "Drill diameter not told"),
        Sentence(", point angle {point_angle}", "point_angle", ", point angle not told"),
        Sentence(". The plate is {sheet_thickness} thick", "sheet_thickness", ". The thickness is not told"),
        Sentence(", the point {point_height} high", "point_height", ", nor the point height"),
        Sentence(
            ": thickness over point height {sheet_cover}, ", "sheet_cover", "", "sheet_cover", 1.0, 1e9,
            "so the tip is out before the corners are in, and nothing guides the drill: it may grab; clamp the work on "
            "a backing piece",
            "so the corners are in before the tip comes out",
        ),
        Sentence(
            ". From first touch the drill goes {travel_through} until its corners are out (double chain line).",
            "travel_through", ". How far the drill goes until its corners are out is not told.",
        ),
    ]  # fmt: skip
