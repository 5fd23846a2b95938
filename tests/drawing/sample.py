"""A scene that no learner sees: a plate with a hole, with one of everything a sheet can draw."""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.scene import Allowed, Bar, Range, Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.relation.symbols import symbols
from drillpoint.relations import point_height

NEEDS = ("diameter", "point_angle", "shoulder_depth")
STATED: dict[str, Any] = {
    "name": "sample",
    "title": "A plate with a hole",
    "width": 580,
    "height": 480,
    "needs": NEEDS,
    "relations": ("point_height", ("shoulder_depth", "depth_to_point")),
    "also": ("shoulder_depth",),
    "allowed": (Allowed("shoulder_depth", "a hole {shoulder_depth} deep is too shallow to draw", low=0.5),),
    "ranges": (
        Range("diameter", 2, 30, 10),
        Range("point_angle", 80, 150, 118),
        Range("shoulder_depth", 0.5, 4, 2.5, share_of="diameter"),
    ),
    "words": (Sentence("A hole of {diameter}, {share} of it as deep", "diameter", "A hole"), Sentence(".")),
}


def build() -> tuple[Scene, list[Any]]:
    """The scene in symbols."""
    s, sheet = symbols(), Sheet()
    bar = lay(sheet, s.diameter, s.shoulder_depth, point_height.surface_expression, sp.Min)
    return sheet.scene(**STATED, bar=bar), sheet.expressions


def lay(sheet: Sheet, diameter: Any, depth: Any, height: Any, smaller: Any) -> Bar:
    """The shapes, from symbols or numbers."""
    scale = smaller(200 / diameter, 300 / (depth + height))
    x, top = 250, 60
    half, floor, tip = scale * diameter / 2, top + scale * depth, top + scale * (depth + height)
    sheet.area("section", (20, top), (x - half, top), (x - half, floor), (x, tip), (20, tip))
    sheet.area("section_other", (x + half, top), (480, top), (480, tip), (x, tip), (x + half, floor))
    sheet.line("edge", (x - half, top), (x - half, floor), (x, tip), (x + half, floor), (x + half, top))
    sheet.line("hidden", (x - half, floor), (x + half, floor))
    sheet.line("centre", (x, top - 10), (x, tip + 10))
    sheet.centre_cross((60, 60), 20)
    sheet.break_line((20, tip), (480, tip))
    sheet.motion((540, 100), (540, 160))
    sheet.turning((520, 300), 30, 0, 2)
    sheet.turning((520, 400), 30, 0, 2, back=True)
    sheet.leader((x, tip), (300, 440), "point", "{point_height}", "point_height", end="arrow")
    sheet.leader((x, floor), (120, 420), "depth", "", left=True, end="dot")
    sheet.named((560, 230), "end", "diameter", "Ø{diameter}", "diameter")
    sheet.label("term", (40, 30), "start", "deep", when=depth - 2 * diameter)
    sheet.trace("fine", lambda a: (a, 20 + scale * a / 100), 100, 200, pieces=8)
    sheet.number("share", depth / diameter, like="web_ratio")
    return sheet.bar((24, 452), 100, scale)
