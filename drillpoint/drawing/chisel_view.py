"""The chisel edge from two sides, tip down: looking along it, and square to it.

Seen along the chisel edge, both plane flanks are seen on edge: the point is a plain wedge, and the wedge pushes.
Flanks, chisel edge and lips are exact. How the work heaps up ahead of the wedge is drawn plausibly.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.letter import letter
from drillpoint.drawing.points import Point, polar, smaller
from drillpoint.drawing.scene import Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.quantities import QUANTITIES
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
EDGE = (sp.Integer(196), sp.Integer(292))  # the chisel edge, end on
SIDE = sp.Integer(150)  # of a flank, as far as it is drawn
ARCS = (96, 64, 96)
MIDDLE = sp.Integer(474)  # of the view square to the chisel edge
HALF = sp.Integer(52)  # of the chisel edge there
REACH = sp.Integer(84)  # how far that view goes to either side
BOTTOM = 372
LABELS = 70

_s = symbols()
LEAN = letter("lean", sp.rad(-_s.chisel_edge_rake))  # of each flank from the axis
UP = -sp.pi / 2


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    sheet.number("edge_wedge", -2 * _s.chisel_edge_rake, like="wedge_angle")
    sheet.number("edge_relief", 90 + _s.chisel_edge_rake, like="wedge_angle")
    _work(sheet)
    _wedge(sheet)
    _angles(sheet)
    _square_to_it(sheet)
    scene = sheet.scene(
        name="chisel_view",
        title="The chisel edge, seen along it and square to it, tip down",
        width=WIDTH,
        height=HEIGHT,
        **{**point.STATED, "relations": (*point.STATED["relations"], "chisel_edge_rake")},
        bar=sheet.bar((24.0, 456.0), 100.0, 2 * HALF / _s.chisel_edge_length),
        words=_words(),
    )
    return scene, sheet.expressions


def _flank(side: int) -> Point:
    """The upper end of a flank, as far as it is drawn: ahead of the edge (−1) or behind it (1)."""
    return polar(EDGE, SIDE, UP + side * LEAN)


def _work(sheet: Sheet) -> None:
    """The work under the edge: the edge's height behind it, heaped up before the flank that leads."""
    x, y = EDGE
    met = polar(EDGE, sp.Integer(34), UP - LEAN)
    heap: list[Any] = ["C", (met[0] - 14, met[1] - 8), (met[0] - 26, y - 12), (met[0] - 52, y - 12)]
    start = (sp.Integer(20), y - 12)
    far, low = (x + 166, y), sp.Integer(BOTTOM)
    sheet.path("section", ["M", far, "L", EDGE, met, *heap, "L", start, (start[0], low), (far[0], low), "Z"])
    sheet.path("edge", ["M", far, "L", EDGE, met, *heap, "L", start])
    sheet.break_line((start[0], low), (far[0], low), 5.0)


def _wedge(sheet: Sheet) -> None:
    ahead, behind = _flank(-1), _flank(1)
    sheet.area("flank", ahead, EDGE, behind)
    sheet.line("edge", ahead, EDGE, behind)
    third = (behind[0] - ahead[0]) / 3
    sheet.path("fine", ["M", ahead, "C", (ahead[0] + third, ahead[1] + 9), (behind[0] - third, behind[1] - 9), behind])
    sheet.circle("chisel", EDGE, 2.0)
    sheet.motion((sp.Integer(92), sp.Integer(BOTTOM + 26)), (sp.Integer(30), sp.Integer(BOTTOM + 26)))
    sheet.label("term", (30, BOTTOM + 50), "start", "the near end of the edge moves")
    sheet.label("term", (EDGE[0] + 158, BOTTOM - 14), "end", "work")


def _angles(sheet: Sheet) -> None:
    x, y = EDGE
    sheet.line("centre", (x, y + 26), (x, y - SIDE - 14))
    sheet.line("thin", (x + 4, y), (x + 160, y))
    rake, wedge, relief = ARCS
    for radius, start, sweep, share, at in (
        (rake, UP - LEAN, LEAN, sp.Rational(1, 2), 78),
        # The middle of the wedge is on the centre line.
        (wedge, UP - LEAN, 2 * LEAN, sp.Rational(3, 4), 210),
        (relief, UP + LEAN, sp.pi / 2 - LEAN, sp.Rational(1, 2), 328),
    ):
        sheet.angle(EDGE, radius, start, sweep)
        sheet.line("thin", polar(EDGE, radius, start + share * sweep), (sp.Integer(at), sp.Integer(LABELS + 22)))
    sheet.named((78, LABELS), "middle", "rake", "{chisel_edge_rake}", "chisel_edge_rake")
    sheet.named((210, LABELS), "middle", "wedge", "{edge_wedge}", "chisel_edge_rake")
    sheet.named((328, LABELS), "middle", "relief", "{edge_relief}", "chisel_edge_rake")
    sheet.label("term", (196, 28), "middle", "along the chisel edge")


def _square_to_it(sheet: Sheet) -> None:
    """The same point seen square to the chisel edge, which has its true length."""
    y = EDGE[1]
    left, right = (MIDDLE - HALF, y), (MIDDLE + HALF, y)
    # A lip leaves the edge's end at the angle ψ in the end view and rises by cot κ of its length there.
    run, rise = letter("run", -sp.cos(sp.pi - point.delta)), letter("rise", sp.cot(point.kappa))
    out = smaller(REACH - HALF, sp.Integer(96) / rise * run) / run
    ends = [(end[0] + side * out * run, y - out * rise) for side, end in ((-1, left), (1, right))]
    top = ends[0][1]
    third = (ends[1][0] - ends[0][0]) / 3
    wave: list[Any] = ["C", (ends[0][0] + third, top + 6), (ends[1][0] - third, top - 6), ends[1]]
    sheet.path("flank", ["M", ends[0], *wave, "L", right, left, "Z"])
    sheet.path("fine", ["M", ends[0], *wave])
    sheet.line("lip", left, ends[0])
    sheet.line("lip", right, ends[1])
    sheet.line("chisel", left, right)
    sheet.line("centre", (MIDDLE, y + 18), (MIDDLE, y - 150))
    middle = sheet.dimension(left, right, (sp.Integer(0), sp.Integer(1)), 34)
    sheet.named((middle[0], middle[1] + 28), "middle", "chisel edge", "{chisel_edge_length}", "chisel_edge_length")
    sheet.label("term", (MIDDLE, 28), "middle", "square to it")


def _words() -> list[Sentence]:
    usual = QUANTITIES["chisel_edge_rake"].usual
    said = QUANTITIES["chisel_edge_rake"].the_usual
    return [
        Sentence("The chisel edge of a two-flute twist drill, seen along it and square to it, tip down. "),
        Sentence("It is {chisel_edge_length} long", "chisel_edge_length", "Its length is not told"),
        Sentence(
            ". Seen along it the two flanks make a wedge of {edge_wedge}; the one that leads has a rake of "
            "{chisel_edge_rake}, ", "chisel_edge_rake", ". The rake is not told.", "chisel_edge_rake",
            usual.low, usual.high,
            f"even flatter on the work than {said}: it pushes and hardly cuts.",
            f"within {said}: it pushes more than it cuts.",
            f"sharper than {said}, and still it pushes.",
        ),
        Sentence(
            " Behind it the relief is {edge_relief}. The chisel edge angle is {chisel_edge_angle}.", "chisel_edge_rake",
        ),
    ]  # fmt: skip
