"""The layer that one lip takes in half a turn, seen square to the lip: half the hole, and a piece of it enlarged.

The other lip left the upper side of the layer half a turn before; this lip passes along its lower side.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, along, middle, wave
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.work import SAG
from drillpoint.relation.symbols import symbols
from drillpoint.relations import chip_thickness, chip_width

WIDTH, HEIGHT = 580, 480
AXIS, FOOT = sp.Integer(48), sp.Integer(372)
WIDEST = sp.Integer(190)
WALL, FLOOR, WALL_TOP = 36, 34, 64
BESIDE_LAYER = 30.0

EYE: Point = (sp.Integer(410), sp.Integer(204))
EYE_RADIUS = sp.Integer(86)
FEED_SEEN = sp.Integer(66)  # half the feed, enlarged
COLUMN = 356.0  # elbow of the leader under the enlarged piece
ANGLE_LABEL = (484.0, 116.0)

_s = symbols()
kappa = point.kappa
scale = sp.Min(WIDEST, WIDEST * sp.tan(kappa))  # for half a diameter
share = scale * _s.feed / _s.diameter
"""Half the feed as drawn in the half of the hole."""

foot: Point = (AXIS + scale * point.chisel_corner[0], FOOT)
corner: Point = (
    AXIS + scale * point.outer_corner[0],
    FOOT - scale * (point.outer_corner[0] - point.chisel_corner[0]) * sp.cot(kappa),
)
outward: Point = (sp.sin(kappa), -sp.cos(kappa))
into_layer: Point = (-sp.cos(kappa), -sp.sin(kappa))


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _half_hole(sheet)
    _width(sheet)
    _enlarged(sheet)
    _thickness(sheet)
    _numbers(sheet)
    scene = sheet.scene(
        name="chip",
        title="The layer that one lip takes, seen square to the lip",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "web", "chisel_edge_angle", "feed"),
        also=point.STATED["also"],
        relations=("web_ratio", "chip_thickness", "chip_width"),
        allowed=point.STATED["allowed"],
        ranges=(*point.STATED["ranges"], Range("feed", 0.002, 0.05, 0.02, share_of="diameter")),
        bar=sheet.bar((24.0, 456.0), 100.0, 2 * scale / _s.diameter),
        words=_words(),
    )
    return scene, sheet.expressions


def _raised(place: Point) -> Point:
    return (place[0], place[1] - share)


def _half_hole(sheet: Sheet) -> None:
    wall_top = (corner[0], corner[1] - WALL_TOP)
    outside, bottom = corner[0] + WALL, FOOT + FLOOR
    around = (outside, wall_top[1]), (outside, bottom), (AXIS, bottom)
    breaks: Curve = [step for a, b in ((wall_top, around[0]), around[:2], around[1:]) for step in wave(a, b, SAG)]
    sheet.path("section", ["M", (AXIS, FOOT), "L", foot, corner, wall_top, *breaks, "Z"])
    sheet.path("fine", ["M", wall_top, *breaks])
    layer = foot, corner, _raised(corner), _raised(foot)
    sheet.area("section_other", *layer)
    sheet.line("edge", _raised(corner), _raised(foot), foot)
    sheet.line("edge", corner, wall_top)
    sheet.line("chisel", (AXIS, FOOT), foot)
    sheet.line("lip", foot, corner)
    sheet.line("centre", (AXIS, 96.0), (AXIS, bottom + 12))
    at = middle(foot, _raised(corner))
    reach = sp.Max(EYE_RADIUS * share / FEED_SEEN, 9)
    sheet.circle("thin", at, reach)
    sheet.label("value", (at[0] + reach + 2, at[1] + reach + 16), "start", "A")


def _width(sheet: Sheet) -> None:
    half = sheet.dimension(foot, corner, into_layer, BESIDE_LAYER + share)
    elbow = (AXIS + 26, sp.Integer(72))
    sheet.line("thin", half, elbow)
    sheet.label("term", (AXIS - 22, elbow[1] - 27), "start", "chip width, lip length")
    sheet.label("value", (AXIS - 22, elbow[1] - 8), "start", "{chip_width}", "chip_width", "?")


def _enlarged(sheet: Sheet) -> None:
    radii = (EYE_RADIUS, EYE_RADIUS)
    half = FEED_SEEN * sp.sin(kappa) / 2
    reach = sp.sqrt(EYE_RADIUS**2 - half**2)
    below, above = along(EYE, into_layer, -half), along(EYE, into_layer, half)
    inner, outer = along(below, outward, -reach), along(below, outward, reach)
    inner_above, outer_above = along(above, outward, -reach), along(above, outward, reach)
    small: Curve = ["A", radii, "0 0 1"]
    sheet.path("section", ["M", outer, *small, inner, "Z"])
    sheet.path("section_other", ["M", outer, "L", inner, *small, inner_above, "L", outer_above, *small, outer, "Z"])
    sheet.circle("thin", EYE, EYE_RADIUS)
    sheet.line("edge", inner_above, outer_above)
    sheet.line("lip", inner, outer)
    sheet.label("value", (EYE[0], 34.0), "middle", "A, about {enlarged} times as large")


def _thickness(sheet: Sheet) -> None:
    x, y = EYE
    top, bottom = (x, y - FEED_SEEN / 2), (x, y + FEED_SEEN / 2)
    sheet.line("thin", (x, y - EYE_RADIUS - 12), bottom)
    sheet.arrow(top, (0, -1))
    sheet.arrow(bottom, (0, 1))
    sheet.label("term", (x, y - EYE_RADIUS - 36), "middle", "half the feed")
    sheet.label("value", (x, y - EYE_RADIUS - 17), "middle", "{half_feed}", "feed", "?")
    half = FEED_SEEN * sp.sin(kappa) / 2
    at = along(EYE, outward, -46)
    ends = along(at, into_layer, -half), along(at, into_layer, half)
    sheet.line("thin", *ends)
    sheet.arrow(ends[0], (-into_layer[0], -into_layer[1]))
    sheet.arrow(ends[1], into_layer)
    sheet.leader(at, (COLUMN, 336.0), "chip thickness", "{chip_thickness}", "chip_thickness")
    arc = sheet.angle(top, 40.0, -sp.pi / 2, kappa)
    sheet.line("thin", along(top, outward, 4), along(top, outward, 46))
    left, level = ANGLE_LABEL
    sheet.line("thin", arc, (left - 5, level - 4))
    sheet.label("term", (left, level - 20), "start", "half angle")
    sheet.label("value", (left, level - 1), "start", "{half_point_angle}", "point_angle", "?")


def _numbers(sheet: Sheet) -> None:
    sheet.number("half_feed", _s.feed / 2, like="chip_thickness")
    sheet.number("half_point_angle", _s.point_angle / 2, like="point_angle")
    sheet.number("enlarged", FEED_SEEN / share, like="material_factor")
    for angle in (118, 135):
        for relation, name in ((chip_thickness, "thickness"), (chip_width, "width")):
            expression = relation.surface_expression.subs(_s.point_angle, angle)
            sheet.number(f"{name}_{angle}", expression, like=relation.name)


def _words() -> list[Sentence]:
    return [
        Sentence("The layer that one lip takes in half a turn, seen square to the lip"),
        Sentence("; the piece A about {enlarged} times as large. "),
        Sentence("Drill diameter {diameter}", "diameter", "Drill diameter not told"),
        Sentence(", web {web}", "web", ", web not told"),
        Sentence(", point angle {point_angle}", "point_angle", ", point angle not told"),
        Sentence(". Of the feed, {feed}, each lip takes half: {half_feed}", "feed", ". The feed is not told"),
        Sentence(
            ". Square to the lip the chip is {chip_thickness} thick", "chip_thickness",
            ". The chip thickness is not told.", "point_angle", 117.5, 118.5,
            ", thinner than with 118° ({thickness_118}).", ".", ", thicker than with 118° ({thickness_118}).",
        ),
        Sentence(
            " It is {chip_width} wide, as the lip is long.", "chip_width", " The chip width is not told.",
            "point_angle", 134.5, 135.5,
            " A point of 135° would make it {thickness_135} thick and {width_135} wide; its area stays the same.",
            " A point of 118° would make it {thickness_118} thick and {width_118} wide; its area stays the same.",
            " A point of 118° would make it {thickness_118} thick and {width_118} wide; its area stays the same.",
        ),
    ]  # fmt: skip
