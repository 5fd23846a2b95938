"""A drill with lips of unequal height in the hole it makes, seen square to the lips; the work is cut open.

Both lips stand at the same angle, so the tip lies beside the drill axis and the drill turns about its tip. The web is
left out: the lips meet in the tip.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.points import Curve, middle, wave
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.work import LABEL_PITCH, SAG, across, beside, cut_block, upright
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
HOLE_AXIS, TIP = sp.Integer(294), sp.Integer(338)
WIDEST, TALLEST = sp.Integer(176), sp.Integer(176)
DRILL_TOP = sp.Integer(62)
WALL = 34
FLOOR = 22
ABOVE_CORNER = 46  # from the longer lip's corner up to the face of the work
TOO_LITTLE_TO_SEE = 0.015

_s = symbols()
kappa = sp.rad(_s.point_angle) / 2
_hole = _s.diameter / 2 + _s.point_offset
_near = _s.diameter / 2 - _s.point_offset  # from the axis of the hole to the shorter lip's corner
scale = sp.Min(WIDEST / (2 * _hole), TALLEST * sp.tan(kappa) / _hole)

drill_axis = HOLE_AXIS + scale * _s.point_offset
wide, narrow = scale * _hole, scale * _near
TIP_AT = (HOLE_AXIS, TIP)
long_corner = (HOLE_AXIS + wide, TIP - wide * sp.cot(kappa))
short_corner = (HOLE_AXIS - narrow, TIP - narrow * sp.cot(kappa))
face = long_corner[1] - ABOVE_CORNER


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _work(sheet)
    _drill(sheet)
    _sizes(sheet)
    _lips(sheet)
    sheet.number("longer_lip", _hole / sp.sin(kappa), like="lip_length")
    sheet.number("shorter_lip", _near / sp.sin(kappa), like="lip_length")
    sheet.number("difference_share", _s.lip_height_difference / _s.diameter, like="web_ratio")
    sheet.number("by_the_rule", 2 * _s.lip_height_difference, like="oversize")
    sheet.number("rule_error", 2 * _s.lip_height_difference - _s.oversize, like="oversize")
    scene = sheet.scene(
        name="unequal_lips",
        title="A drill with lips of unequal height in its hole, square to the lips",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "lip_height_difference"),
        also=(("point_offset", "lip_height_difference"),),
        relations=("point_offset", "oversize", "largest_hole"),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 60.0, 150.0, 118.0),
            Range("lip_height_difference", 0.0, 0.1, 0.06, share_of="diameter"),
        ),
        bar=sheet.bar((24.0, 456.0), 90.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _work(sheet: Sheet) -> None:
    left, right = HOLE_AXIS - wide, HOLE_AXIS + wide
    profile = (left, face), (left, long_corner[1]), TIP_AT, long_corner, (right, face)
    cut_block(sheet, profile, left - WALL, right + WALL, TIP + FLOOR)
    for level in (face, long_corner[1]):
        sheet.line("edge", (left, level), (right, level))


def _drill(sheet: Sheet) -> None:
    left, right = short_corner[0], long_corner[0]
    top: Curve = ["M", (left, DRILL_TOP), *wave((left, DRILL_TOP), (right, DRILL_TOP), SAG)]
    sheet.path("land", [*top, "L", long_corner, TIP_AT, short_corner, "Z"])
    sheet.path("fine", top)
    sheet.line("edge", (right, DRILL_TOP), long_corner)
    sheet.line("edge", (left, DRILL_TOP), short_corner)
    sheet.line("lip", TIP_AT, long_corner)
    sheet.line("lip", TIP_AT, short_corner)
    sheet.line("centre", (HOLE_AXIS, DRILL_TOP - 8), (HOLE_AXIS, TIP + FLOOR + 34))
    sheet.line("centre", (drill_axis, DRILL_TOP - 8), (drill_axis, TIP + FLOOR + 34))


def _sizes(sheet: Sheet) -> None:
    left, right = HOLE_AXIS - wide, HOLE_AXIS + wide
    level = sp.Integer(38)
    across(sheet, short_corner[0], long_corner[0], level, DRILL_TOP)
    sheet.label("value", (drill_axis, level - 9), "middle", "drill Ø{diameter}", "diameter", "drill Ø ?")
    offset = TIP + FLOOR + 26
    across(sheet, HOLE_AXIS, drill_axis, offset, TIP + FLOOR + 8)
    beside(sheet, (right, offset), offset, "tip off the axis", "point_offset", "right")
    sheet.line("thin", (drill_axis, offset), (right, offset))
    hole = TIP + FLOOR + 64
    across(sheet, left, right, hole, long_corner[1])
    sheet.label("value", (HOLE_AXIS, hole + 20), "middle", "hole at most Ø{largest_hole}", "largest_hole", "hole Ø ?")
    sheet.label("term", (HOLE_AXIS, hole + 39), "middle", "at most {oversize} wider", "oversize", "how much wider?")


def _lips(sheet: Sheet) -> None:
    left, right = HOLE_AXIS - wide - WALL - 24, HOLE_AXIS + wide + WALL + 12
    height = upright(sheet, long_corner, short_corner, left)
    beside(sheet, height, height[1] - LABEL_PITCH / 2, "lips differ by", "lip_height_difference", "left")
    for corner, elbow, term in ((long_corner, right, "longer lip"), (short_corner, left, "shorter lip")):
        lip, on_left = middle(TIP_AT, corner), elbow is left
        level = sp.Max(lip[1], height[1] + LABEL_PITCH / 2 + 6) if on_left else lip[1]
        name = "{shorter_lip}" if on_left else "{longer_lip}"
        sheet.leader(lip, (elbow, level), term, name, "point_offset", left=on_left, end="arrow")
    level = DRILL_TOP + 22
    sheet.leader((HOLE_AXIS, level), (HOLE_AXIS - wide - 20, level), "axis of the hole", "", left=True)
    sheet.leader((drill_axis, level), (HOLE_AXIS + wide + 20, level), "axis of the drill", "")


def _words() -> list[Sentence]:
    rule = "; the rule “twice the height difference” would say {by_the_rule},"
    return [
        Sentence("A drill with lips of unequal height in its hole, square to the lips, in true proportions. "),
        Sentence("Drill diameter {diameter}", "diameter", "Drill diameter not told"),
        Sentence(", point angle {point_angle}", "point_angle", ", point angle not told"),
        Sentence(
            ". One lip stands {lip_height_difference} ahead of the other", "lip_height_difference",
            ". The difference of the lip heights is not told", "difference_share", TOO_LITTLE_TO_SEE, 1e9,
            " (too little to see well here; give a larger one to see what it does)", "",
        ),
        Sentence(
            ". So the tip lies {point_offset} beside the drill axis; the lips are {longer_lip} and {shorter_lip} long",
            "point_offset", ". How far the tip lies beside the drill axis is not told",
        ),
        Sentence(
            ". Turning about its tip, the drill makes a hole of at most {largest_hole}", "largest_hole",
            ". How wide the hole gets is not told",
        ),
        Sentence(
            ", {oversize} wider than itself", "oversize", "", "rule_error", -1e-6, 1e-6,
            f"{rule} too little", "", f"{rule} too much",
        ),
        Sentence(". Guided by its margins or a bush it cuts less."),
    ]  # fmt: skip
