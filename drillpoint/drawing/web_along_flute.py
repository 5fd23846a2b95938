"""The web along the flute: the drill's length with what has been ground off, and its point at first and now.

Everything is in true proportions, the length to a scale of its own and both end views to another. So the taper of the
web hardly shows along the flute; what it has done shows on the point. The cut follows the bottom of the flutes.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, wave
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import GAP, OVERRUN, TAIL, Sheet
from drillpoint.drawing.work import across, upright
from drillpoint.relation.symbols import symbols
from drillpoint.relations import chisel_edge_length, length_until_thinning, point_height

WIDTH, HEIGHT = 580, 480
TIP, END = (sp.Integer(40), sp.Integer(100)), sp.Integer(424)
HIGHEST = 60  # pixels of the diameter along the flute
GROUND_OFF, DUE = sp.Integer(48), sp.Integer(158)  # levels of the two dimensions
COLUMN = sp.Integer(430)
RADIUS = sp.Integer(68)
FIRST, NOW = (sp.Integer(142), sp.Integer(306)), (sp.Integer(420), sp.Integer(306))
LABELS = 412
HAIR = 1e-9

_s = symbols()
_due = length_until_thinning.surface_expression
_chisel_now = chisel_edge_length.surface_expression.subs(_s.web, _s.web_after_shortening)
_taper = _s.web_taper / 2  # of either side of the web

along_scale = sp.Min(HIGHEST / _s.diameter, (END - TIP[0]) / (_s.length_removed * sp.Rational(7, 5) + 2 * _s.diameter))
_half = along_scale * _s.diameter / 2
_height = along_scale * point_height.surface_expression
_slope = _half / _height


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _length(sheet)
    _ground_off(sheet)
    _thinning_due(sheet)
    _end_view(sheet, FIRST, "point at first", _s.web_ratio, "{web}", "web", "{chisel_edge_length}")
    _end_view(
        sheet, NOW, "point now", _s.web_after_shortening / _s.diameter,
        "{web_after_shortening}", "web_after_shortening", "{chisel_edge_now}",
    )  # fmt: skip
    sheet.label("term", (176, 466), "start", "scale of both end views")
    sheet.number("due", _due, like="length_removed")
    sheet.number("over_the_limit", _s.web_after_shortening - _s.web_ratio_limit * _s.diameter, like="web")
    sheet.number("chisel_edge_now", _chisel_now, like="chisel_edge_length")
    sheet.number("ratio_now", _s.web_after_shortening / _s.diameter, like="web_ratio")
    scene = sheet.scene(
        name="web_along_flute",
        title="The web along the flute, and the point at first and after grinding off",
        width=WIDTH,
        height=HEIGHT,
        needs=(
            "diameter", "point_angle", "web", "web_taper", "length_removed", "chisel_edge_angle", "web_ratio_limit",
        ),
        # The shop's limit is a choice; no source names one.
        defaults={"point_angle": 118.0, "web_ratio_limit": 0.18},
        relations=("web_ratio", "web_after_shortening", "chisel_edge_length"),
        allowed=(
            Allowed("web", "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", low=1e-6),
            Allowed(
                "web_taper", "a web with a taper of {web_taper} never thickens; 0.014 mm for each mm is usual", low=1e-4
            ),
            Allowed("chisel_edge_angle", "give the obtuse angle, 90° or more; 125° is usual", low=90.0),
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 90.0, 150.0, 118.0),
            Range("web", 0.08, 0.25, 0.15, share_of="diameter"),
            Range("web_taper", 0.005, 0.03, 0.014),
            Range("length_removed", 0.1, 7.0, 2.0, share_of="diameter"),
            Range("chisel_edge_angle", 100.0, 145.0, 125.0),
            Range("web_ratio_limit", 0.12, 0.35, 0.18),
        ),
        bar=sheet.bar((24.0, 462.0), 70.0, 2 * RADIUS / _s.diameter),
        words=_words(),
    )  # fmt: skip
    return scene, sheet.expressions


def _place(length: Any, out: Any) -> Point:
    """A place so far from the first tip along the axis and so far out from it, in mm, on the sheet."""
    return (TIP[0] + along_scale * length, TIP[1] - along_scale * out)


def _web_begins(tip: Any, web: Any) -> Any:
    """How far from the first tip the edge of the web comes out at the point, when it is so thick beside this tip."""
    return tip + web / 2 / (_slope - _taper)


def _length(sheet: Sheet) -> None:
    removed, now = _s.length_removed, _s.web_after_shortening
    end = (END - TIP[0]) / along_scale
    at_end = _s.web / 2 + _taper * end
    begins = _web_begins(removed, now)
    x, y = TIP[0] + along_scale * removed, TIP[1]
    break_down = wave((END, y - _half), (END, y + _half), 6.0)
    corners = (x + _height, y - _half), (x + _height, y + _half)
    outline: Curve = ["M", (x, y), "L", corners[0], (END, y - _half), *break_down, "L", corners[1], "Z"]
    sheet.path("flute", outline)
    comes_out = now / 2 + _taper * (begins - removed)
    upper, lower = [(_place(begins, side * comes_out), _place(end, side * at_end)) for side in (1, -1)]
    sheet.area("section", (x, y), upper[0], upper[1], lower[1], lower[0])
    sheet.line("edge", *upper)
    sheet.line("edge", *lower)
    sheet.line("edge", (END, y - _half), corners[0], (x, y), corners[1], (END, y + _half))
    sheet.path("fine", ["M", (END, y - _half), *break_down])
    _first_point(sheet, begins)
    sheet.line("centre", (TIP[0] - 14, y), (END + 12, y))
    middle = upright(sheet, (END, y - _half), (END, y + _half), END + 26)
    sheet.label("value", (middle[0] + 9, middle[1] + 6), "start", "Ø{diameter}", "diameter", "Ø ?")


def _first_point(sheet: Sheet, begins: Any) -> None:
    x, y = TIP
    new = x + along_scale * _s.length_removed + _height
    for side in (1, -1):
        sheet.line("swept", TIP, (x + _height, y - side * _half), (new, y - side * _half))
        ends = [_place(at, side * (_s.web / 2 + _taper * at)) for at in (_web_begins(0, _s.web), begins)]
        sheet.line("hidden", *ends)


def _ground_off(sheet: Sheet) -> None:
    x, y = TIP
    right = x + along_scale * _s.length_removed
    across(sheet, x, right, GROUND_OFF, y - GAP)
    sheet.leader((right, GROUND_OFF), (COLUMN, GROUND_OFF), "ground off", "{length_removed}", "length_removed")


def _thinning_due(sheet: Sheet) -> None:
    x, y = TIP
    right = x + along_scale * _due
    comes = _due + HAIR * _s.diameter
    there = sp.Min(comes, COLUMN - TAIL - right)
    sheet.line("thin", (x, y + GAP), (x, DUE + OVERRUN), when=there)
    sheet.line("thin", (right, y - _half - 10), (right, DUE + OVERRUN), when=there)
    sheet.line("thin", (x - TAIL, DUE), (COLUMN, DUE), when=there)
    sheet.arrow((x, DUE), (1, 0), when=there)
    sheet.arrow((right, DUE), (-1, 0), when=there)
    at = (COLUMN + 22, DUE)
    sheet.label("term", (at[0], at[1] - 4), "start", "thinning due", when=comes)
    sheet.label("value", (at[0], at[1] + 15), "start", "{due}", "length_removed", "?", when=comes)
    sheet.label("term", (at[0], at[1] - 4), "start", "thinning due", when=-comes)
    sheet.label("value", (at[0], at[1] + 15), "start", "at first", when=-comes)


def _end_view(sheet: Sheet, centre: Point, title: str, ratio: Any, web: str, of: str, chisel: str) -> None:
    def project(place: Point) -> Point:
        across_, up = (sp.sympify(c, strict=True).subs(_s.web_ratio, ratio) for c in place)
        return (centre[0] + RADIUS * across_, centre[1] - RADIUS * up)

    def projected(curve: Curve) -> Curve:
        return [step if isinstance(step, str) else project(step) for step in curve]

    sheet.circle("flute", centre, RADIUS)
    sheet.circle("swept", centre, RADIUS)
    edge, back = point.flank_edge(), point.heel_edge()
    outline: Curve = [*edge, "C", *back[3:6], "L", back[-1]]
    whole: Curve = [*outline, "L", point.chisel_corner, "L", point.outer_corner, "Z"]
    for turned in (lambda c: c, point.other_half):
        sheet.path("flank", projected(turned(whole)))
        sheet.path("edge", projected(turned(outline)))
    sheet.centre_cross(centre, RADIUS + 10)
    for turn in (lambda p: p, point.half_turn):
        sheet.line("lip", project(turn(point.chisel_corner)), project(turn(point.outer_corner)))
    lower, upper = project(point.half_turn(point.chisel_corner)), project(point.chisel_corner)
    sheet.line("chisel", lower, upper)
    sheet.label("term", (centre[0], centre[1] - RADIUS - 22), "middle", title)
    _web(sheet, project, centre, web, of)
    foot = (centre[0] - 62, sp.Integer(LABELS - 18))
    sheet.line("thin", lower, foot)
    sheet.label("term", (foot[0], LABELS), "middle", "chisel edge")
    sheet.label("value", (foot[0], LABELS + 19), "middle", chisel, "chisel_edge_length", "?")


def _web(sheet: Sheet, project: Any, centre: Point, web: str, of: str) -> None:
    upper, lower = project(point.outer_corner), project(point.half_turn(point.chisel_corner))
    far = centre[0] + RADIUS + 20
    sheet.line("thin", (upper[0] + GAP, upper[1]), (far + OVERRUN, upper[1]))
    sheet.line("thin", (lower[0] + GAP, lower[1]), (far + OVERRUN, lower[1]))
    foot = (centre[0] + 76, sp.Integer(LABELS - 18))
    sheet.line("thin", (far, upper[1] - TAIL), (far, lower[1] + TAIL), foot)
    sheet.arrow((far, upper[1]), (0, 1))
    sheet.arrow((far, lower[1]), (0, -1))
    sheet.label("term", (foot[0], LABELS), "middle", "web")
    sheet.label("value", (foot[0], LABELS + 19), "middle", web, of, "?")


def _words() -> list[Sentence]:
    return [
        Sentence("A drill cut open along its flutes, its length to scale, and its point at first and now. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(". The web was {web} at the point", "web", ". The web at first is not told"),
        Sentence(
            " and thickens by {web_taper} towards the shank", "web_taper", "; its taper is not told",
        ),
        Sentence(". With {length_removed} ground off", "length_removed", ". With some length ground off"),
        Sentence(
            " it is {web_after_shortening}, {ratio_now} of the diameter", "web_after_shortening",
            " it is thicker; how thick is not told",
        ),
        Sentence(
            ", and the chisel edge has grown from {chisel_edge_length} to {chisel_edge_now}", "chisel_edge_length",
            ", and the chisel edge has grown",
        ),
        Sentence(
            ". ", judged="over_the_limit", low=-1e9, high=-HAIR,
            within="Under the shop's limit of {web_ratio_limit} of the diameter: no thinning yet; it is due with {due} "
            "ground off in all.",
            above="Over the shop's limit of {web_ratio_limit} of the diameter: thinning is due.",
        ),
    ]  # fmt: skip
