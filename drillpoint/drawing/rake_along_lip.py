"""Rake along the lip: the wedge cut square to the lip at three places, each turned so that it moves to the left.

The angles are exact. The size of the wedges is of no account: only angles are drawn, so there is no scale bar.
"""

from __future__ import annotations

from typing import Any

import sympy as sp
from attrs import frozen

from drillpoint.drawing.letter import Letter, letter
from drillpoint.drawing.points import Point, along, larger, polar, smaller
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.quantities import QUANTITIES
from drillpoint.relation.symbols import symbols
from drillpoint.relations import chisel_edge_length, local_helix, normal_rake, normal_relief

WIDTH, HEIGHT = 580, 480
COLUMNS = (97, 286, 473)
CENTRE = (sp.Integer(286), sp.Integer(78))  # of the end view that shows where the places are
RADIUS = sp.Integer(56)
LEVEL = 262  # of the lips
SIDE = 84.0  # of a wedge
ARC, WEDGE_ARC = 60.0, 34.0
BEYOND = 11.0  # from an arc to its letter
LABELS = 322
HAIR = 1e-9

_s = symbols()


@frozen
class Station:
    """A place on the lip: its radius in mm, its rake and relief in degrees, and what its numbers are called."""

    name: str
    term: str
    radius: Any
    rake: Letter
    relief: Letter
    wedge: Letter


def _station(name: str, term: str, radius: Any) -> Station:
    """The book's rake and relief, both square to the lip, at another radius."""
    elsewhere = {_s.radius: letter("radius", radius)}
    helix = letter("helix", local_helix.surface_expression.xreplace(elsewhere))
    rake = letter("rake", normal_rake.surface_expression.xreplace({**elsewhere, _s.local_helix: helix}))
    relief = letter("relief", normal_relief.surface_expression.xreplace(elsewhere))
    return Station(name, term, radius, rake, relief, letter("wedge", 90 - rake - relief))


STATIONS = (
    _station("corner", "at the outer corner", _s.diameter / 2),
    Station(
        "here", "between", _s.radius,
        letter("rake", _s.normal_rake), letter("relief", _s.normal_relief), letter("wedge", _s.wedge_angle),
    ),
    _station("inner", "at the chisel edge", chisel_edge_length.surface_expression / 2),
)  # fmt: skip


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    for x, station in zip(COLUMNS, STATIONS, strict=True):
        _wedge(sheet, (sp.Integer(x), sp.Integer(LEVEL)), station)
        _numbers(sheet, x, station)
    _places(sheet)
    sheet.number("outside_chisel_edge", STATIONS[1].radius - STATIONS[2].radius, like="lip_length")
    scene = sheet.scene(
        name="rake_along_lip",
        title="The wedge cut square to the lip at three places on it",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "web", "helix_angle", "lip_relief", "radius"),
        also=(("chisel_edge_angle", "axial_relief"),),
        relations=(
            "web_ratio", "axial_relief", "chisel_edge_angle", "local_helix", "normal_rake", "normal_relief",
            "wedge_angle",
        ),
        allowed=(
            Allowed("web", "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", low=1e-6),
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 80.0, 150.0, 118.0),
            Range("web", 0.05, 0.3, 0.15, share_of="diameter"),
            Range("helix_angle", 0.0, 45.0, 30.0),
            Range("lip_relief", 6.0, 30.0, 12.0),
            Range("radius", 0.2, 0.48, 0.25, share_of="diameter"),
        ),
        words=_words(),
    )  # fmt: skip
    return scene, sheet.expressions


def _places(sheet: Sheet) -> None:
    """A small end view with the three places on a lip, and a line from each to its wedge."""
    x, y = CENTRE
    sheet.centre_cross(CENTRE, RADIUS + 10)
    sheet.circle("swept", CENTRE, RADIUS)
    share, half = _s.web_ratio, RADIUS * _s.web_ratio
    corner, foot = RADIUS * sp.sqrt(1 - share**2), -half / sp.tan(sp.rad(_s.chisel_edge_angle))
    for side in (1, -1):
        sheet.line("lip", (x + side * foot, y - side * half), (x + side * corner, y - side * half))
    sheet.line("chisel", (x + foot, y - half), (x - foot, y + half))
    for column, station in zip(COLUMNS, STATIONS, strict=True):
        out = RADIUS * sp.sqrt((2 * station.radius / _s.diameter) ** 2 - share**2)
        place = (x - out, y + half)
        sheet.circle("arrow", place, 3.4)
        sheet.line("thin", place, (sp.Integer(column), sp.Integer(LEVEL - 124)))


def _wedge(sheet: Sheet, lip: Point, station: Station) -> None:
    """One wedge on its lip. The movement is level, to the left; square to it is up."""
    up = -sp.pi / 2
    face, flank = letter("face", up + sp.rad(station.rake)), letter("flank", -sp.rad(station.relief))
    ends = polar(lip, SIDE, face), polar(lip, SIDE, flank)
    back = polar(lip, SIDE * 1.12, (face + flank) / 2)
    sheet.path("section", ["M", lip, "L", ends[0], "Q", back, ends[1], "Z"])
    sheet.path("fine", ["M", ends[0], "Q", back, ends[1]])
    sheet.line("edge", ends[0], lip, ends[1])
    sheet.line("thin", along(lip, (0, -1), 4), along(lip, (0, -1), SIDE + 12))
    sheet.line("thin", along(lip, (-1, 0), 84), along(lip, (1, 0), SIDE + 8))
    sheet.circle("lip", lip, 1.6)
    sheet.motion(along(lip, (-1, 0), 40), along(lip, (-1, 0), 82))
    sheet.label("term", (lip[0] - 82, LEVEL + 18), "start", "moves")
    _arc(sheet, lip, up, face, "γ")
    _arc(sheet, lip, flank, sp.Integer(0), "α")
    room = smaller(sp.Float(68), 11 / sp.sin(sp.rad(station.wedge) / 2))
    at = polar(lip, larger(sp.Float(WEDGE_ARC), room), (face + flank) / 2)
    sheet.label("term", (at[0], at[1] + 5), "middle", "θ")


def _arc(sheet: Sheet, lip: Point, first: Any, last: Any, said: str) -> None:
    """An angle between two directions, with its letter beyond the arc."""
    start, end = letter("start", -larger(-first, -last)), letter("end", larger(first, last))
    sheet.arc("thin", lip, ARC, start, end - start)
    at = polar(lip, SIDE + BEYOND, (start + end) / 2)
    sheet.label("term", (at[0], at[1] + 5), "middle", said)


def _numbers(sheet: Sheet, x: int, station: Station) -> None:
    names: tuple[str, ...] = ("radius", "normal_rake", "wedge_angle", "normal_relief")
    if station.name != "here":
        values = (station.radius, station.rake, station.wedge, station.relief)
        for name, value in zip(names, values, strict=True):
            sheet.number(f"{station.name}_{name}", value, like=name)
        names = tuple(f"{station.name}_{name}" for name in names)
    # Above 0 where the chosen place is outside the corner of the chisel edge.
    on_lip = None if station.name != "here" else _s.radius - STATIONS[2].radius + HAIR
    sheet.label("term", (x, LABELS), "middle", station.term, when=on_lip)
    if on_lip is not None:
        sheet.label("term", (x, LABELS), "middle", "inside: no lip here", when=-on_lip)
    for row, (said, name) in enumerate(zip(("r = ", "rake γ ", "wedge θ ", "relief α "), names, strict=True), start=1):
        style, shown = "value" if row == 2 else "term", f"{said}{{{name}}}"
        sheet.label(style, (x, LABELS + 4 + 24 * row), "middle", shown, name, said + "?")


def _words() -> list[Sentence]:
    wedge = QUANTITIES["wedge_angle"].usual
    return [
        Sentence("The wedge of metal at the lip, cut square to the lip at three places, moving to the left. "),
        Sentence(
            "At the outer corner the rake is {corner_normal_rake}, the wedge {corner_wedge_angle}, the relief "
            "{corner_normal_relief}", "corner_normal_rake", "The rake at the outer corner is not told",
        ),
        Sentence(
            "; at radius {radius} the rake is {normal_rake}, ", "normal_rake", "; at radius {radius} it is not told",
            "normal_rake", -1e-9, 1e-9,
            "below zero: the face leans ahead", "square to the movement", "the face leans back",
        ),
        Sentence(
            ", the wedge {wedge_angle}", "wedge_angle", "", "wedge_angle", wedge.low, wedge.high,
            ", thin and weak", "", ", thick and blunt",
        ),
        Sentence("", "", "", "outside_chisel_edge", -HAIR, 1e6, " (but the chisel edge already takes this place)"),
        Sentence(
            "; where the chisel edge begins, at {inner_radius}, the rake is {inner_normal_rake}, ", "inner_normal_rake",
            ".", "inner_normal_rake", -1e-9, 1e-9,
            "below zero: it pushes more than it cuts.", "square to the movement.", "still above zero.",
        ),
    ]  # fmt: skip
