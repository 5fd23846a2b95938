"""A spot or countersink cut open along its axis: a cone down to its sharp tip."""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.points import along, heading
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import GAP, OVERRUN, Sheet
from drillpoint.drawing.work import across, beside, cut_block, upright
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
AXIS, FACE = sp.Integer(252), sp.Integer(112)
WIDEST, DEEPEST = sp.Integer(230), sp.Integer(226)
WALL = 46
FLOOR = 24
ARC = 54.0
TOOL = 34.0  # of the tool's side, drawn on above the face

_s = symbols()
scale = sp.Min(WIDEST / _s.mouth_diameter, DEEPEST / _s.spot_depth)
half = scale * _s.mouth_diameter / 2
tip = FACE + scale * _s.spot_depth
kappa = sp.rad(_s.countersink_angle) / 2


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    left, right = AXIS - half, AXIS + half
    cut_block(sheet, ((left, FACE), (AXIS, tip), (right, FACE)), left - WALL, right + WALL, tip + FLOOR)
    sheet.line("edge", (left, FACE), (right, FACE))
    for side in (-1, 1):
        mouth = (AXIS + side * half, FACE)
        sheet.line("swept", mouth, along(mouth, heading(-sp.pi / 2 + side * kappa), TOOL))
    sheet.line("centre", (AXIS, FACE - 50), (AXIS, tip + FLOOR - 6))
    level = FACE - 66
    across(sheet, left, right, level, FACE)
    sheet.label("term", (AXIS, level - 27), "middle", "mouth")
    sheet.label("value", (AXIS, level - 8), "middle", "Ø{mouth_diameter}", "mouth_diameter", "Ø ?")
    depth = upright(sheet, (right, FACE), (AXIS, tip), right + WALL + 20)
    beside(sheet, depth, depth[1], "depth", "spot_depth", "right")
    _angle(sheet)
    sheet.number("half_angle", _s.countersink_angle / 2, like="countersink_angle")
    sheet.number("half_mouth", _s.mouth_diameter / 2, like="spot_depth")
    scene = sheet.scene(
        name="spot",
        title="A spot or countersink, cut open along its axis",
        width=WIDTH,
        height=HEIGHT,
        needs=("mouth_diameter", "countersink_angle"),
        also=(("spot_depth", "mouth_diameter"),),
        relations=("spot_depth",),
        allowed=(
            Allowed("mouth_diameter", "a mouth of {mouth_diameter} is nothing to draw; for example 11", low=1e-3),
        ),
        ranges=(Range("mouth_diameter", 1.0, 40.0, 11.0), Range("countersink_angle", 60.0, 150.0, 90.0)),
        bar=sheet.bar((24.0, 456.0), 110.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _angle(sheet: Sheet) -> None:
    at = (AXIS, tip)
    for side in (-1, 1):
        down = heading(sp.pi / 2 - side * kappa)
        sheet.line("thin", along(at, down, GAP), along(at, down, ARC + OVERRUN))
    sheet.angle(at, ARC, sp.pi / 2 - kappa, 2 * kappa)
    below, name = tip + ARC, "countersink_angle"
    sheet.label("term", (AXIS, below + 19), "middle", "included angle")
    sheet.label("value", (AXIS, below + 39), "middle", "{countersink_angle} (2 × {half_angle})", name, "?")


def _words() -> list[Sentence]:
    rule = "the rule “half the mouth” ({half_mouth}) holds only at 90° and would be"
    return [
        Sentence("A spot or countersink, cut open along its axis. "),
        Sentence("Its mouth is {mouth_diameter} across", "mouth_diameter", "Its mouth is not told"),
        Sentence(", its included angle {countersink_angle}", "countersink_angle", ", nor its included angle"),
        Sentence(
            ". The tip stands {spot_depth} below the face: ", "spot_depth", ". How deep the tip stands is not told.",
            "countersink_angle", 89.95, 90.05,
            f"{rule} too little.", "half the mouth, which holds only at 90°.", f"{rule} too much.",
        ),
    ]  # fmt: skip
