"""How a plane face stands to the drill that it grinds, in two cuts: through the lip, and square to the lip.

The face, the lip and the flank are exact. The rest of the body is drawn plausibly; no machine is drawn.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, along, wave
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.sheet import GAP, OVERRUN, Sheet
from drillpoint.drawing.wheel import THICK, wheel_face
from drillpoint.quantities import QUANTITIES
from drillpoint.relation.symbols import symbols
from drillpoint.relations import chisel_edge_rake

WIDTH, HEIGHT = 580, 480
RADIUS = sp.Integer(66)
APEX = (sp.Integer(150), sp.Integer(186))  # of the sharp cone, in the cut through the lip
AXIS, LEVEL = sp.Integer(428), sp.Integer(196)  # of the drill and of the lip, in the cut square to it
BREAK = sp.Integer(386)
ARC, RELIEF_ARC = 64.0, 84.0
HALFWAY = sp.Rational(1, 2)  # where along the radius the second cut lies
TITLES = 418

_s = symbols()
_slope = sp.tan(sp.rad(_s.axial_relief))
_alpha = sp.rad(_s.axial_relief)


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _through_the_lip(sheet)
    _square_to_the_lip(sheet)
    sheet.number("half_angle", _s.point_angle / 2, like="point_angle")
    # Level lines of the flank run along the chisel edge, so seen along it the face is seen on edge.
    sheet.number("axis_to_face", -chisel_edge_rake.surface_expression, like="point_angle")
    sheet.label("term", (214, 447), "start", "axis to the face, chisel edge parallel to it")
    sheet.label("value", (214, 467), "start", "{axis_to_face}", "point_angle", "?")
    stated = {
        **point.STATED,
        "ranges": (
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 90.0, 150.0, 118.0),
            Range("web", 0.05, 0.4, 0.15, share_of="diameter"),
            Range("chisel_edge_angle", 92.0, 140.0, 125.0),
        ),
    }
    scene = sheet.scene(
        name="plane_setup",
        title="How a plane face stands to the drill that it grinds",
        width=WIDTH,
        height=HEIGHT,
        **stated,
        bar=sheet.bar((24.0, 464.0), 110.0, 2 * RADIUS / _s.diameter),
        words=_words(),
    )
    return scene, sheet.expressions


def _seen(place: Point) -> Point:
    """A place of flank 1 in the end view, seen square to the lips."""
    return (APEX[0] + RADIUS * place[0], APEX[1] + RADIUS * (point.height - point.on_flank(place)))


def _through_the_lip(sheet: Sheet) -> None:
    corner, chisel = _seen(point.outer_corner), _seen(point.chisel_corner)
    left = [(2 * APEX[0] - x, y) for x, y in (corner, chisel)]
    foot, other = (corner[0], BREAK), (left[0][0], BREAK)
    lower = wave(foot, other, 6.0)
    body: Curve = ["M", corner, "L", foot, *lower, "L", left[0], left[1], chisel, "Z"]
    sheet.path("land", body)
    sheet.line("edge", corner, foot)
    sheet.line("edge", left[0], other)
    sheet.path("fine", ["M", foot, *lower])
    down, away = (sp.sin(point.kappa), sp.cos(point.kappa)), (sp.cos(point.kappa), -sp.sin(point.kappa))
    wheel_face(sheet, along(APEX, down, -16), along(corner, down, 30), away)
    sheet.line("lip", chisel, corner)
    sheet.line("lip", left[1], left[0])
    sheet.line("chisel", left[1], chisel)
    sheet.line("centre", (APEX[0], APEX[1] - ARC - 16), (APEX[0], BREAK + 14))
    sheet.line("thin", along(APEX, down, -16), along(APEX, down, -ARC - OVERRUN))
    arc = sheet.angle(APEX, ARC, -sp.pi / 2 - point.kappa, point.kappa)
    sheet.line("thin", arc, (96, 74))
    sheet.label("term", (96, 46), "middle", "half point angle")
    sheet.label("value", (96, 66), "middle", "{half_angle}", "point_angle", "?")
    face = along(along(corner, down, 10), away, THICK / 2)
    sheet.leader(face, (248, 128), "wheel", "", left=False, end="dot")
    sheet.label("term", (APEX[0], TITLES), "middle", "cut through the lip")


def _square_to_the_lip(sheet: Sheet) -> None:
    half = sp.sqrt(1 - HALFWAY**2)
    lip = (AXIS + RADIUS * point.t, LEVEL)
    back = (AXIS - RADIUS * half, LEVEL + RADIUS * (point.t + half) * _slope)
    # Rake face and the outside, both as a flute of ordinary helix leaves them there.
    lean = HALFWAY * sp.tan(point.HELIX)
    foot, other = (lip[0] - lean * (BREAK - LEVEL) / 2, BREAK), (back[0], BREAK)
    lower = wave(foot, other, 4.0)
    body: Curve = ["M", lip, "L", foot, *lower, "L", back, "Z"]
    sheet.path("section", body)
    sheet.line("edge", lip, foot)
    sheet.line("edge", back, other)
    sheet.path("fine", ["M", foot, *lower])
    forward, away = (sp.cos(_alpha), -sp.sin(_alpha)), (-sp.sin(_alpha), -sp.cos(_alpha))
    wheel_face(sheet, along(back, forward, -14), along(lip, forward, 36), away)
    sheet.line("centre", (AXIS, LEVEL - 72), (AXIS, BREAK + 14))
    sheet.circle("lip", lip, 2)
    sheet.line("thin", (lip[0] + GAP, lip[1]), (lip[0] + RELIEF_ARC + OVERRUN, lip[1]))
    sheet.line("thin", along(lip, forward, 36), along(lip, forward, RELIEF_ARC + OVERRUN))
    arc = sheet.narrow_angle(lip, RELIEF_ARC, -_alpha, _alpha)
    sheet.line("thin", arc, (496, 74))
    sheet.label("term", (496, 46), "middle", "relief square to lip")
    sheet.label("value", (496, 66), "middle", "{axial_relief}", "axial_relief", "?")
    sheet.leader(lip, (508, 262), "lip", "")
    sheet.label("term", (AXIS, TITLES), "middle", "cut square to the lip, halfway along")


def _words() -> list[Sentence]:
    psi = QUANTITIES["chisel_edge_angle"].usual
    usual = QUANTITIES["chisel_edge_angle"].the_usual
    return [
        Sentence("A plane face and the drill that it grinds, in two cuts; no machine is drawn. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(", web {web}", "web", ", web not told"),
        Sentence(
            ". Cut through the lip, the face stands at {half_angle} to the axis, half the point angle", "point_angle",
            ". The point angle is not told",
        ),
        Sentence(
            "; cut square to the lip it falls away at {axial_relief}", "axial_relief",
            "; how it falls away square to the lip is not told",
        ),
        Sentence(", which gives a lip relief of {lip_relief} at the corner", "lip_relief"),
        Sentence(
            " and a chisel edge angle of {chisel_edge_angle} (obtuse), ", "chisel_edge_angle", "",
            "chisel_edge_angle", psi.low, psi.high, f"flatter than {usual}", f"within {usual}", f"steeper than {usual}",
        ),
        Sentence(
            ". With the drill turned until its chisel edge is parallel to the face, its axis stands at {axis_to_face} "
            "to the face.", "point_angle", ".",
        ),
    ]  # fmt: skip
