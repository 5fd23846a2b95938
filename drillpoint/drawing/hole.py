"""A blind hole cut open along its axis: full diameter, shoulder, and the cone that the drill's point leaves."""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.points import along, heading
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import GAP, OVERRUN, Sheet
from drillpoint.drawing.work import LABEL_PITCH, across, beside, cut_block, upright
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
AXIS, FACE = sp.Integer(304), sp.Integer(106)
WIDEST, DEEPEST = sp.Integer(124), sp.Integer(244)
WALL = 40  # of the work, beside the hole and below it
FLOOR = 22
ARC = 52.0
DRILL_TOP = 50

_s = symbols()
scale = sp.Min(WIDEST / _s.diameter, DEEPEST / _s.depth_to_point)
half = scale * _s.diameter / 2
shoulder = FACE + scale * _s.shoulder_depth
tip = FACE + scale * _s.depth_to_point
kappa = sp.rad(_s.point_angle) / 2

# Common practice, about: beyond this the chips of a twist drill have to be cleared on the way down.
DEEP = 4.0


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _work(sheet)
    _diameter(sheet)
    _depths(sheet)
    _point_angle(sheet)
    sheet.number("half_point_angle", _s.point_angle / 2, like="point_angle")
    sheet.number("diameters_deep", _s.shoulder_depth / _s.diameter, like="sheet_cover")
    scene = sheet.scene(
        name="hole",
        title="A blind hole, cut open along its axis",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "shoulder_depth"),
        also=("shoulder_depth",),
        relations=("point_height", "full_diameter_depth"),
        allowed=(
            Allowed(
                "shoulder_depth",
                "at full diameter the hole is {shoulder_depth} deep: only the point is in the work; draw that as a "
                "spot, or give a deeper hole, for example 25",
                low=1e-3,
            ),
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 60.0, 150.0, 118.0),
            Range("shoulder_depth", 0.1, 8.0, 2.5, share_of="diameter"),
        ),
        bar=sheet.bar((24.0, 456.0), 110.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _work(sheet: Sheet) -> None:
    left, right = AXIS - half, AXIS + half
    profile = (left, FACE), (left, shoulder), (AXIS, tip), (right, shoulder), (right, FACE)
    cut_block(sheet, profile, left - WALL, right + WALL, tip + FLOOR)
    for level in (FACE, shoulder):
        sheet.line("edge", (left, level), (right, level))
    # The drill that made it, drawn out of the hole only.
    for x in (left, right):
        sheet.line("swept", (x, FACE - 2), (x, DRILL_TOP))
    sheet.line("centre", (AXIS, DRILL_TOP - 4), (AXIS, tip + FLOOR - 6))


def _diameter(sheet: Sheet) -> None:
    level = sp.Integer(36)
    across(sheet, AXIS - half, AXIS + half, level, sp.Integer(DRILL_TOP))
    sheet.label("value", (AXIS, level - 9), "middle", "Ø{diameter}", "diameter", "Ø ?")


def _depths(sheet: Sheet) -> None:
    edge = AXIS - half
    full = upright(sheet, (edge, FACE), (edge, shoulder), edge - WALL - 44)
    point = upright(sheet, (edge, shoulder), (AXIS, tip), edge - WALL - 18)
    beside(sheet, full, full[1], "full diameter", "shoulder_depth", "left")
    beside(sheet, point, sp.Max(point[1], full[1] + LABEL_PITCH), "point height", "point_height", "left")
    whole = upright(sheet, (AXIS + half, FACE), (AXIS, tip), AXIS + half + WALL + 20)
    beside(sheet, whole, whole[1], "to the point", "depth_to_point", "right")


def _point_angle(sheet: Sheet) -> None:
    at = (AXIS, tip)
    for side in (-1, 1):
        down = heading(sp.pi / 2 - side * kappa)
        sheet.line("thin", along(at, down, GAP), along(at, down, ARC + OVERRUN))
    sheet.angle(at, ARC, sp.pi / 2 - kappa, 2 * kappa)
    below = tip + ARC
    sheet.label("term", (AXIS, below + 19), "middle", "point angle")
    sheet.label("value", (AXIS, below + 39), "middle", "{point_angle} (2 × {half_point_angle})", "point_angle", "?")


def _words() -> list[Sentence]:
    return [
        Sentence("A blind hole, cut open along its axis. "),
        Sentence("Drill diameter {diameter}", "diameter", "Drill diameter not told"),
        Sentence(
            ", point angle {point_angle}, ", "point_angle", ", point angle not told", "point_angle", 117.5, 118.5,
            "sharper than the usual 118°", "the usual point", "blunter than the usual 118°",
        ),
        Sentence(
            ". The full diameter goes {shoulder_depth} deep, to the shoulder: ", "shoulder_depth",
            ". The full-diameter depth is not told", "diameters_deep", 0.0, DEEP,
            within="{diameters_deep} times the diameter",
            above="{diameters_deep} times the diameter, so deep that the chips have to be cleared on the way",
        ),
        Sentence("; the point takes {point_height} more", "point_height", "; the point height is not told"),
        Sentence(
            ", so the tip stands {depth_to_point} below the face.", "depth_to_point",
            ". How deep the tip stands is not told.",
        ),
    ]  # fmt: skip
