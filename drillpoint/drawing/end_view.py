"""The end view: the point seen from the tip, turning counter-clockwise."""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, along
from drillpoint.drawing.scene import Scene, Sentence
from drillpoint.drawing.sheet import OVERRUN, TAIL, Sheet
from drillpoint.quantities import QUANTITIES
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
CENTRE = (sp.Integer(282), sp.Integer(236))
RADIUS = sp.Integer(142)

ARC = 60.0
CHISEL_OFFSET = 26.0
LABEL_COLUMN = 410.0


def project(place: Point) -> Point:
    """A place in the end view on the sheet."""
    return (CENTRE[0] + RADIUS * place[0], CENTRE[1] - RADIUS * place[1])


def projected(curve: Curve) -> Curve:
    """A curve in the end view on the sheet."""
    return [step if isinstance(step, str) else project(step) for step in curve]


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _drill(sheet)
    sheet.centre_cross(CENTRE, RADIUS + 12)
    _diameter(sheet)
    _web(sheet)
    _chisel_edge_length(sheet)
    _chisel_edge_angle(sheet)
    sheet.number("acute", 180 - symbols().chisel_edge_angle, like="chisel_edge_angle")
    scene = sheet.scene(
        name="end_view",
        title="End view of a twist drill, seen from the tip",
        width=WIDTH,
        height=HEIGHT,
        **point.STATED,
        bar=sheet.bar((24.0, 452.0), 0.45 * 2 * float(RADIUS), 2 * RADIUS / symbols().diameter),
        words=_words(),
    )
    return scene, sheet.expressions


def _drill(sheet: Sheet) -> None:
    sheet.circle("flute", CENTRE, RADIUS)
    sheet.circle("swept", CENTRE, RADIUS)
    edge, back = point.flank_edge(), point.heel_edge()
    closing: Curve = ["L", *back[3:6], "L", back[-1], "L", point.chisel_corner, "L", point.outer_corner, "Z"]
    outline: Curve = [*edge, "C", *back[3:6], *closing[4:]]
    for turned in (lambda c: c, point.other_half):
        sheet.path("flank", projected(turned(outline)))
        sheet.path("edge", projected(turned([*edge, "C", *back[3:6], "L", back[-1]])))
    for turned in (lambda p: p, point.half_turn):
        sheet.line("lip", project(turned(point.chisel_corner)), project(turned(point.outer_corner)))
    sheet.line("chisel", project(point.chisel_corner), project(point.half_turn(point.chisel_corner)))


def _diameter(sheet: Sheet) -> None:
    x, y = CENTRE
    left = (sp.Integer(-1), sp.Integer(0))
    middle = sheet.dimension((x, y - RADIUS), (x, y + RADIUS), left, RADIUS + 64, opening=13)
    sheet.written(middle, "Ø{diameter}", "diameter", "Ø ?")


def _web(sheet: Sheet) -> None:
    right = project(point.outer_corner)
    far = CENTRE[0] + RADIUS + 34
    left = project(point.half_turn(point.chisel_corner))
    upper, lower = (far, right[1]), (far, left[1])
    sheet.line("thin", (right[0] + 5, right[1]), (far + OVERRUN, right[1]))
    sheet.line("thin", (left[0] + 5, left[1]), (far + OVERRUN, left[1]))
    tail = TAIL + 18
    sheet.line("thin", (far, upper[1] - tail), (far, lower[1] + TAIL))
    sheet.arrow(upper, (sp.Integer(0), sp.Integer(1)))
    sheet.arrow(lower, (sp.Integer(0), sp.Integer(-1)))
    sheet.label("term", (far + 9, upper[1] - 27), "start", "web")
    sheet.label("value", (far + 9, upper[1] - 8), "start", "{web}", "web", "?")


def _chisel_edge_length(sheet: Sheet) -> None:
    start, end = project(point.half_turn(point.chisel_corner)), project(point.chisel_corner)
    outside = (-sp.sin(point.delta), -sp.cos(point.delta))
    forward = (sp.cos(point.delta), -sp.sin(point.delta))
    sheet.dimension(start, end, outside, CHISEL_OFFSET, outward=True)
    tail = along(along(end, outside, CHISEL_OFFSET), forward, TAIL)
    sheet.line("thin", tail, (LABEL_COLUMN - 22, 54.0), (LABEL_COLUMN - 7, 54.0))
    sheet.label("term", (LABEL_COLUMN, 42.0), "start", "chisel edge")
    sheet.label("value", (LABEL_COLUMN, 61.0), "start", "{chisel_edge_length}", "chisel_edge_length", "?")


def _chisel_edge_angle(sheet: Sheet) -> None:
    centre = project(point.chisel_corner)
    far_end = (-sp.cos(point.delta), sp.sin(point.delta))
    length = 2 * RADIUS * point.t / sp.sin(point.delta)
    sheet.line("thin", along(centre, far_end, length), along(centre, far_end, sp.Max(length, ARC + OVERRUN)))
    lip = RADIUS * (point.outer_corner[0] - point.chisel_corner[0])
    along_lip = (sp.Integer(1), sp.Integer(0))
    sheet.line("thin", along(centre, along_lip, lip), along(centre, along_lip, sp.Max(lip, ARC + OVERRUN)))
    middle = sheet.angle(centre, ARC, sp.Integer(0), sp.pi - point.delta)
    sheet.line("thin", middle, (LABEL_COLUMN - 22, 415.0), (LABEL_COLUMN - 7, 415.0))
    name = "chisel_edge_angle"
    sheet.label("term", (LABEL_COLUMN, 400.0), "start", "chisel edge angle")
    sheet.label("value", (LABEL_COLUMN, 421.0), "start", "{chisel_edge_angle}", name, "?")
    sheet.label("term", (LABEL_COLUMN, 440.0), "start", "(obtuse; {acute} acute)", name, "(obtuse)")


def _words() -> list[Sentence]:
    psi = QUANTITIES["chisel_edge_angle"].usual
    ratio = QUANTITIES["web_ratio"].usual
    usual = QUANTITIES["chisel_edge_angle"].the_usual
    return [
        Sentence("End view of a two-flute twist drill, seen from the tip. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(
            ", web {web}", "web", ", web not told", "web_ratio", ratio.low, ratio.high,
            ", a thin web for this diameter", ", {web_ratio} of the diameter", ", a thick web for this diameter",
        ),
        Sentence(
            ". The chisel edge is {chisel_edge_length} long", "chisel_edge_length",
            ". The chisel edge length is not told",
        ),
        Sentence(
            "; its angle to the lips is {chisel_edge_angle} (obtuse; {acute} acute), ", "chisel_edge_angle",
            "; its angle to the lips is not told.", "chisel_edge_angle", psi.low, psi.high,
            f"flatter than {usual}.", f"within {usual}.", f"steeper than {usual}.",
        ),
    ]  # fmt: skip
