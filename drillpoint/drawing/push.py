"""The push on a drill: its chisel edge and a pilot hole in the end view, and the thrust with and without that edge.

Lips, chisel edge and pilot hole are in true proportion. The outline behind the flank is drawn plausibly, as in the end
view. The bars are to one scale: thrust by the handbook's formula, and by the same formula for no chisel edge at all.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, along, heading
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import OVERRUN, TAIL, Sheet
from drillpoint.relation.symbols import symbols
from drillpoint.relations import thrust

WIDTH, HEIGHT = 580, 480
CENTRE = (sp.Integer(206), sp.Integer(178))
RADIUS = sp.Integer(136)
COLUMN = sp.Integer(404)
DOWN = sp.pi / 4  # where the pilot hole is labelled, clockwise from the right in the frame
START, LONGEST, THICK = sp.Integer(150), sp.Integer(320), 26
SOLID, WITHOUT = 382, 424

_s = symbols()
_half = _s.diameter / 2
pilot = RADIUS * _s.pilot_diameter / _s.diameter
without = thrust.surface_expression.subs({_s.thrust_factor: 1, _s.chisel_thrust_factor: 0})
share_without = without / _s.thrust


def project(place: Point) -> Point:
    """A place in the end view, in half diameters, on the sheet."""
    return (CENTRE[0] + RADIUS * place[0], CENTRE[1] - RADIUS * place[1])


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _drill(sheet)
    sheet.circle("hidden", CENTRE, pilot)
    sheet.centre_cross(CENTRE, RADIUS + 12)
    _web(sheet)
    edge = project(point.chisel_corner)
    sheet.leader(edge, (COLUMN, sp.Integer(40)), "chisel edge", "{chisel_edge_length}", "chisel_edge_length")
    rim = along(CENTRE, heading(DOWN), pilot)
    sheet.leader(rim, (COLUMN, sp.Integer(300)), "pilot hole", "Ø{pilot_diameter}", "pilot_diameter")
    _bars(sheet)
    sheet.number("without_chisel_edge", without, like="thrust")
    scene = sheet.scene(
        name="push",
        title="The push on a drill, and what its chisel edge has to do with it",
        width=WIDTH,
        height=HEIGHT,
        needs=(
            *("diameter", "web", "chisel_edge_angle", "feed", "pilot_diameter"),
            *("material_factor", "tool_wear_factor"),
        ),
        # The hole is the one that is given, not the least that would do.
        also=("pilot_cover",),
        relations=(
            *("web_ratio", "chisel_edge_length", "chisel_ratio", "thrust_factor", "chisel_thrust_factor", "thrust"),
            "pilot_cover",
        ),
        allowed=(
            Allowed("web", "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", low=1e-6),
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("web", 0.05, 0.28, 0.15, share_of="diameter"),
            Range("chisel_edge_angle", 100.0, 135.0, 125.0),
            Range("feed", 0.002, 0.05, 0.02, share_of="diameter"),
            Range("pilot_diameter", 0.02, 0.5, 0.2, share_of="diameter"),
            Range("material_factor", 2000.0, 50000.0, 24000.0),
            Range("tool_wear_factor", 1.0, 2.0, 1.0),
        ),
        bar=sheet.bar((24.0, 342.0), 100.0, 2 * RADIUS / _s.diameter),
        words=_words(),
    )
    return scene, sheet.expressions


def _projected(curve: Curve) -> Curve:
    return [step if isinstance(step, str) else project(step) for step in curve]


def _drill(sheet: Sheet) -> None:
    sheet.circle("flute", CENTRE, RADIUS)
    sheet.circle("swept", CENTRE, RADIUS)
    edge, back = point.flank_edge(), point.heel_edge()
    outline: Curve = [*edge, "C", *back[3:6], "L", back[-1], "L", point.chisel_corner, "L", point.outer_corner, "Z"]
    for turned in (lambda c: c, point.other_half):
        sheet.path("flank", _projected(turned(outline)))
        sheet.path("edge", _projected(turned([*edge, "C", *back[3:6], "L", back[-1]])))
    for half in (lambda p: p, point.half_turn):
        sheet.line("lip", project(half(point.chisel_corner)), project(half(point.outer_corner)))
    sheet.line("chisel", project(point.chisel_corner), project(point.half_turn(point.chisel_corner)))


def _web(sheet: Sheet) -> None:
    right, left = project(point.outer_corner), project(point.half_turn(point.chisel_corner))
    far = CENTRE[0] + RADIUS + 28
    for level, side in ((right, right[0]), (left, left[0])):
        sheet.line("thin", (side + 5, level[1]), (far + OVERRUN, level[1]))
    sheet.line("thin", (far, right[1] - TAIL), (far, left[1] + TAIL))
    sheet.arrow((far, right[1]), (sp.Integer(0), sp.Integer(1)))
    sheet.arrow((far, left[1]), (sp.Integer(0), sp.Integer(-1)))
    sheet.leader((far, left[1] + TAIL), (COLUMN, sp.Integer(236)), "web", "{web}", "web")


def _bars(sheet: Sheet) -> None:
    cut = START + LONGEST * share_without
    sheet.label("term", (START, SOLID - 10), "start", "push; hatched: what the chisel edge adds")
    _bar(sheet, "flank", START, cut, SOLID)
    _bar(sheet, "section", cut, START + LONGEST, SOLID)
    _bar(sheet, "flank", START, cut, WITHOUT)
    for top, said in ((SOLID, "in the solid"), (WITHOUT, "no chisel edge")):
        sheet.label("term", (START - 10, top + 18), "end", said)
    sheet.label("value", (START + LONGEST + 10, SOLID + 19), "start", "{thrust}", "thrust", "?")
    sheet.label("value", (cut + 10, WITHOUT + 19), "start", "{without_chisel_edge}", "without_chisel_edge", "?")


def _bar(sheet: Sheet, style: str, left: Any, right: Any, top: int) -> None:
    corners = (left, top), (right, top), (right, top + THICK), (left, top + THICK)
    sheet.area(style, *corners)
    sheet.line("edge", *corners, corners[0])


def _words() -> list[Sentence]:
    return [
        Sentence("A drill seen from the tip, with a pilot hole, and its push as bars. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(", web {web}", "web", ", web not told"),
        Sentence(
            ". The chisel edge is {chisel_edge_length} long", "chisel_edge_length",
            ". How long the chisel edge is is not told",
        ),
        Sentence(
            ". A pilot hole of {pilot_diameter} ", "pilot_diameter", ". A pilot hole ", "pilot_cover", 1.0, 1e9,
            "leaves the ends of the chisel edge in the metal. ",
            "takes all the metal from under the chisel edge. ",
            "takes all the metal from under the chisel edge. ",
        ),
        Sentence(
            "In the solid, at a feed of {feed}, the push is {thrust}", "thrust", "The push in the solid is not told",
        ),
        Sentence(
            "; without any chisel edge it would be {without_chisel_edge}.", "without_chisel_edge",
            "; nor the push without a chisel edge.",
        ),
        Sentence(" Both are estimates by the handbook's formula."),
    ]  # fmt: skip
