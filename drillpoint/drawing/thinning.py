"""Thinning: the middle of the point in the end view, enlarged, before (dashed) and after the web is ground thinner.

Lips, thinned lips and chisel edge are exact. How far the notch reaches into the other land, and the outline behind the
flank, are drawn plausibly; nothing is measured there.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, along
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.sheet import GAP, OVERRUN, TAIL, Sheet
from drillpoint.relation.symbols import symbols
from drillpoint.relations import thinning_reach

WIDTH, HEIGHT = 580, 480
CENTRE = (sp.Integer(272), sp.Integer(240))
VIEW, NEAR = sp.Integer(148), sp.Integer(104)  # pixels: what is shown of the point, and how far its middle may reach
ARC = 62.0
OUT = 26.0

_s = symbols()
_delta, _nu = point.delta, sp.rad(_s.thinning_angle)
_half_web = _s.web / 2
_reach = thinning_reach.surface_expression

scale = NEAR / sp.Max(sp.sqrt(_reach**2 + _half_web**2), _half_web / sp.sin(_delta))
shown = sp.Min(VIEW, scale * _s.diameter / 2)
beyond = scale * _s.diameter / 2 - VIEW

thinned_end: Point = (_s.thinned_chisel_length / 2 * sp.cos(_delta), _s.thinned_chisel_length / 2 * sp.sin(_delta))
meeting: Point = (_reach, _half_web)
corner: Point = (_half_web * sp.cot(_delta), _half_web)
lip_out: Point = (sp.sqrt(shown**2 - (scale * _half_web) ** 2) / scale, _half_web)

# The chisel edge and the thinned lip as directions in the frame, whose y points down.
CHISEL: Point = (sp.cos(_delta), -sp.sin(_delta))
BESIDE_CHISEL: Point = (sp.sin(_delta), sp.cos(_delta))
THINNED: Point = (sp.cos(_nu), -sp.sin(_nu))
BESIDE_THINNED: Point = (sp.sin(_nu), sp.cos(_nu))

# Common practice: thinning leaves about half of the chisel edge.
LEAST_LEFT, MOST_LEFT = 0.4, 0.6


def project(place: Point) -> Point:
    """A place in the end view, in mm, on the sheet."""
    return (CENTRE[0] + scale * place[0], CENTRE[1] - scale * place[1])


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _drill(sheet)
    sheet.centre_cross(CENTRE, VIEW + 12)
    _ground_away(sheet)
    _web(sheet)
    _reach_along_the_lip(sheet)
    _chisel_edges(sheet)
    _thinned_web(sheet)
    _angle(sheet)
    _cutting_edges(sheet)
    sheet.number("left_share", _s.thinned_chisel_length / _s.chisel_edge_length, like="untouched_lip_share")
    scene = sheet.scene(
        name="thinning",
        title="The middle of the point before and after thinning, seen from the tip",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"),
        relations=(
            "web_ratio",
            "chisel_edge_length",
            "thinning_reach",
            "thinned_lip_in_end_view",
            "thinned_web",
            "untouched_lip_share",
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("web", 0.1, 0.35, 0.15, share_of="diameter"),
            Range("chisel_edge_angle", 105.0, 140.0, 125.0),
            Range("thinned_chisel_length", 0.03, 0.2, 0.08, share_of="diameter"),
            Range("thinning_angle", 15.0, 45.0, 30.0),
        ),
        bar=sheet.bar((24.0, 460.0), 100.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _half_turn(place: Point) -> Point:
    return (-place[0], -place[1])


def _from_outline(curve: Curve) -> Curve:
    """A curve of the plain point, in half diameters, on the sheet."""
    half = _s.diameter / 2
    return [step if isinstance(step, str) else project((half * step[0], half * step[1])) for step in curve]


def _drill(sheet: Sheet) -> None:
    sheet.circle("flute", CENTRE, shown)
    edge, back = point.flank_edge(), point.heel_edge()
    outline: Curve = [*edge, "C", *back[3:6], "L", back[-1], "L", point.chisel_corner, "L", point.outer_corner, "Z"]
    for turned in (lambda c: c, point.other_half):
        sheet.path("flank", _from_outline(turned(outline)))
        sheet.path("edge", _from_outline(turned([*edge, "C", *back[3:6]])))
    # Paper over what lies outside the detail: the frame one way round, the circle the other.
    x, y = CENTRE
    half: Curve = ["A", (shown, shown), "0 0 0"]
    frame: Curve = ["M", (0, 0), "L", (WIDTH, 0), (WIDTH, HEIGHT), (0, HEIGHT), "Z"]
    sheet.path("cut", [*frame, "M", (x - shown, y), *half, (x + shown, y), *half, (x - shown, y), "Z"])
    sheet.circle("fine", CENTRE, shown, when=beyond)
    sheet.circle("swept", CENTRE, shown, when=1e-9 - beyond)


def _ground_away(sheet: Sheet) -> None:
    foot = (thinned_end[0], _half_web)
    for turned in (lambda p: p, _half_turn):
        end, meets, before, at = (project(turned(p)) for p in (thinned_end, meeting, corner, foot))
        sheet.area("flute", end, at, meets)
        sheet.line("edge", project(turned((sp.Integer(0), _half_web))), at, end)
        sheet.line("hidden", end, before)
        sheet.line("hidden", at, meets)


def _cutting_edges(sheet: Sheet) -> None:
    for turned in (lambda p: p, _half_turn):
        end, meets, out = (project(turned(p)) for p in (thinned_end, meeting, lip_out))
        sheet.line("lip", end, meets)
        sheet.line("lip", meets, out)
    sheet.line("chisel", project(_half_turn(thinned_end)), project(thinned_end))


def _web(sheet: Sheet) -> None:
    far = CENTRE[0] + VIEW + 26
    upper, lower = project(lip_out), project((lip_out[0], -_half_web))
    sheet.line("thin", (upper[0] + GAP, upper[1]), (far + OVERRUN, upper[1]))
    sheet.line("thin", (lower[0] + GAP, lower[1]), (far + OVERRUN, lower[1]))
    sheet.line("thin", (far, upper[1] - TAIL), (far, lower[1] + TAIL))
    sheet.arrow((far, upper[1]), (sp.Integer(0), sp.Integer(1)))
    sheet.arrow((far, lower[1]), (sp.Integer(0), sp.Integer(-1)))
    sheet.leader((far, lower[1] + TAIL), (far + 6, sp.Integer(384)), "web", "{web}", "web")


def _reach_along_the_lip(sheet: Sheet) -> None:
    level = sp.Integer(58)
    at = project(meeting)
    sheet.line("thin", (at[0], at[1] - GAP), (at[0], level - OVERRUN))
    sheet.line("thin", (CENTRE[0], CENTRE[1] - VIEW - 12), (CENTRE[0], level - OVERRUN))
    sheet.line("thin", (CENTRE[0] - TAIL, level), (at[0] + TAIL, level))
    sheet.arrow((CENTRE[0], level), (sp.Integer(1), sp.Integer(0)))
    sheet.arrow((at[0], level), (sp.Integer(-1), sp.Integer(0)))
    sheet.leader((at[0] + TAIL, level), (sp.Integer(412), level), "reach", "{thinning_reach}", "thinning_reach")


def _chisel_edges(sheet: Sheet) -> None:
    before = project(_half_turn(corner)), project(corner)
    away = (-BESIDE_CHISEL[0], -BESIDE_CHISEL[1])
    sheet.dimension(*before, away, OUT, outward=True)
    tail = along(along(before[1], away, OUT), CHISEL, TAIL)
    term, of = "chisel edge before", "chisel_edge_length"
    sheet.leader(tail, (sp.Integer(176), sp.Integer(48)), term, "{chisel_edge_length}", of, left=True)
    after = project(_half_turn(thinned_end)), project(thinned_end)
    sheet.dimension(*after, BESIDE_CHISEL, OUT, outward=True)
    tail = along(along(after[0], BESIDE_CHISEL, OUT), CHISEL, -TAIL)
    of = "thinned_chisel_length"
    sheet.leader(tail, (sp.Integer(330), sp.Integer(440)), "chisel edge left", "{thinned_chisel_length}", of)


def _thinned_web(sheet: Sheet) -> None:
    """Between the two thinned lips, square to them, beyond where lip 2's meets its main lip."""
    on_second = project(_half_turn(meeting))
    on_first = along(on_second, BESIDE_THINNED, -scale * _s.thinned_web)
    back = (-THINNED[0], -THINNED[1])
    sheet.line("thin", along(project(thinned_end), back, GAP), along(on_first, back, OUT + OVERRUN))
    sheet.line("thin", along(on_second, back, GAP), along(on_second, back, OUT + OVERRUN))
    first, second = along(on_first, back, OUT), along(on_second, back, OUT)
    sheet.line("thin", along(first, BESIDE_THINNED, -TAIL), along(second, BESIDE_THINNED, TAIL))
    sheet.arrow(first, BESIDE_THINNED)
    sheet.arrow(second, (-BESIDE_THINNED[0], -BESIDE_THINNED[1]))
    tail = along(second, BESIDE_THINNED, TAIL)
    sheet.leader(tail, (sp.Integer(140), sp.Integer(408)), "web left", "{thinned_web}", "thinned_web", left=True)


def _angle(sheet: Sheet) -> None:
    """Beyond where the thinned lip meets the main lip, between its prolongation and the main lip."""
    at = project(meeting)
    sheet.line("thin", at, along(at, THINNED, ARC + OVERRUN))
    sheet.line("thin", at, (at[0] + ARC + OVERRUN, at[1]))
    top = sheet.narrow_angle(at, ARC, -_nu, _nu)
    term, name = "thinning angle", "thinning_angle"
    sheet.leader(top, (sp.Integer(438), sp.Integer(100)), term, "{thinning_angle}", name)


def _words() -> list[Sentence]:
    return [
        Sentence("The middle of the point of a drill, seen from the tip and enlarged, before and after thinning. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(", web {web}", "web", ", web not told"),
        Sentence(
            ". Of a chisel edge of {chisel_edge_length}", "chisel_edge_length",
            ". Of a chisel edge whose length is not told",
        ),
        Sentence(
            " thinning leaves {thinned_chisel_length}: ", "thinned_chisel_length", " thinning leaves some. ",
            "left_share", LEAST_LEFT, MOST_LEFT,
            "{left_share} of it, less than the common half, and the tip gets weak. ",
            "{left_share} of it, about the common half. ",
            "{left_share} of it, more than the common half, so it still pushes. ",
        ),
        Sentence(
            "The thinned lips stand at {thinning_angle} to the main lips", "thinning_angle",
            "The thinning angle is not told",
        ),
        Sentence(
            " and meet them {thinning_reach} along", "thinning_reach", "; where they meet the main lips is not told",
        ),
        Sentence(
            ", so {untouched_lip_share} of each main lip stays", "untouched_lip_share", "",
        ),
        Sentence(
            ". Between the thinned lips a web of {thinned_web} is left.", "thinned_web",
            ". The web that is left is not told.",
        ),
    ]  # fmt: skip
