"""A dubbed lip: the wedge cut square to the lip before (double chain line) and with a flat, and the layer being cut.

Everything near the lip is in true proportions; how far flute and flank reach is of no account.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.letter import letter
from drillpoint.drawing.points import along, heading, larger, middle, polar, smaller, wave
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import OVERRUN, TAIL, Sheet
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
LIP = (sp.Integer(270), sp.Integer(290))  # where the lip is now; it moves to the left
LEFT, RIGHT, FLOOR = sp.Integer(40), sp.Integer(440), sp.Integer(400)
LARGEST, LAYER = sp.Integer(120), sp.Integer(100)  # pixels of flat, set-back and layer
FACE, FLANK, SAG = 56, 132, 6.0
DIMENSION = sp.Integer(70)
COLUMN = 432
HAIR = 1e-9

_s = symbols()
scale = letter(
    "scale", sp.Min(LARGEST / _s.dub_width, LARGEST / (_s.dub_set_back + HAIR), LAYER / (_s.chip_thickness + HAIR))
)
_up = -sp.pi / 2
_face, _flat = heading(letter("face", _up + sp.rad(_s.normal_rake))), heading(_up + sp.rad(_s.dub_normal_rake))
_flank = heading(-sp.rad(_s.normal_relief))

old_lip = along(LIP, _flank, -scale * _s.dub_set_back)
flat_end = along(LIP, _flat, scale * _s.dub_width)
layer = letter("layer", scale * _s.chip_thickness)
_reach = letter("reach", scale * _s.dub_width * sp.cos(sp.rad(_s.dub_normal_rake)))  # of the flat, upwards
on_flat = along(LIP, _flat, smaller(layer, _reach) / sp.cos(sp.rad(_s.dub_normal_rake)))
_up_face = letter("up_face", larger(layer - _reach, sp.Integer(0)) / sp.cos(sp.rad(_s.normal_rake)))
on_face = along(on_flat, _face, _up_face)


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _work(sheet)
    _wedge(sheet)
    _lengths(sheet)
    _angles(sheet)
    sheet.number("to_spare", _s.dub_width - _s.least_dub_width, like="least_dub_width")
    scene = sheet.scene(
        name="dubbed_lip",
        title="A lip with a flat, cut square to the lip, and the layer being cut",
        width=WIDTH,
        height=HEIGHT,
        needs=("dub_width", "normal_rake", "dub_normal_rake", "normal_relief", "chip_thickness"),
        also=("corner_radius",),
        relations=("wedge_angle", "dub_wedge_angle", "least_dub_width", "dub_set_back"),
        allowed=(
            Allowed("dub_width", "a flat of {dub_width} is none; give a width above 0, for example 0.2", low=1e-4),
            Allowed("chip_thickness", "without a layer to cut there is nothing to draw; 0.05 mm is usual", low=1e-4),
        ),
        ranges=(
            Range("dub_width", 0.05, 1.0, 0.2),
            Range("normal_rake", 5.0, 40.0, 30.6),
            Range("dub_normal_rake", -25.0, 4.0, -4.5),
            Range("normal_relief", 5.0, 30.0, 10.5),
            Range("chip_thickness", 0.02, 0.3, 0.043),
        ),
        bar=sheet.bar((24.0, 456.0), 90.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _work(sheet: Sheet) -> None:
    """The work with the layer that is being cut, ahead of the lip to the left."""
    y = LIP[1]
    top = y - layer
    sides = wave((RIGHT, y), (RIGHT, FLOOR), SAG), wave((LEFT, FLOOR), (LEFT, top), SAG)
    foot = wave((RIGHT, FLOOR), (LEFT, FLOOR), SAG)
    sheet.path("section_other", ["M", (LEFT, top), "L", on_face, on_flat, LIP, (RIGHT, y), *sides[0], *foot, *sides[1]])
    sheet.line("edge", (LEFT, top), on_face)
    sheet.line("edge", LIP, (RIGHT, y))


def _wedge(sheet: Sheet) -> None:
    ends = along(flat_end, _face, larger(_up_face + 20, sp.Integer(FACE))), along(LIP, _flank, FLANK)
    back = along(middle(*ends), (sp.Rational(4, 5), -sp.Rational(3, 5)), 26)
    sheet.path("section", ["M", LIP, "L", flat_end, ends[0], "Q", back, ends[1], "Z"])
    sheet.path("fine", ["M", ends[0], "Q", back, ends[1]])
    sheet.line("edge", flat_end, ends[0])
    sheet.line("edge", LIP, ends[1])
    sheet.line("swept", flat_end, old_lip, LIP)
    sheet.line("chisel", LIP, flat_end)
    sheet.circle("lip", LIP, 1.6)


def _lengths(sheet: Sheet) -> None:
    y = LIP[1]
    top = y - layer
    sheet.line("thin", (DIMENSION, top - TAIL), (DIMENSION, y + TAIL))
    sheet.arrow((DIMENSION, top), (0, 1))
    sheet.arrow((DIMENSION, y), (0, -1))
    sheet.line("thin", (DIMENSION - OVERRUN, y), LIP)
    sheet.line("thin", (DIMENSION, top - TAIL), (DIMENSION, 166))
    sheet.label("term", (24, 137), "start", "layer being cut")
    sheet.label("value", (24, 156), "start", "{chip_thickness}", "chip_thickness", "?")
    sheet.leader(
        middle(LIP, flat_end),
        (sp.Integer(196), sp.Integer(92)),
        "width of the flat",
        "{dub_width}",
        "dub_width",
        left=True,
    )
    sheet.leader(
        middle(old_lip, LIP), (sp.Integer(196), sp.Integer(444)), "set back by", "{dub_set_back}", "dub_set_back"
    )
    sheet.motion((sp.Integer(100), sp.Integer(34)), (sp.Integer(40), sp.Integer(34)))
    sheet.label("term", (110, 39), "start", "moves")


def _angles(sheet: Sheet) -> None:
    sheet.line("thin", polar(LIP, 6, _up), polar(LIP, 150, _up))
    rows = (
        (40, "before", "", ""),
        (60, "rake γ {normal_rake}", "normal_rake", "rake γ ?"),
        (80, "wedge θ {wedge_angle}", "wedge_angle", "wedge θ ?"),
        (116, "with the flat", "", ""),
        (136, "rake γ {dub_normal_rake}", "dub_normal_rake", "rake γ ?"),
        (156, "wedge θ {dub_wedge_angle}", "dub_wedge_angle", "wedge θ ?"),
        (192, "relief α {normal_relief}", "normal_relief", "relief α ?"),
    )
    for level, shown, of, hidden in rows:
        sheet.label("term" if of else "value", (COLUMN, level), "start", shown, of, hidden)


def _words() -> list[Sentence]:
    return [
        Sentence("A lip cut square to it, moving to the left, before and with a flat ground on its face. "),
        Sentence("Before, the rake is {normal_rake}", "normal_rake", "The rake before is not told"),
        Sentence(" and the wedge {wedge_angle}. ", "wedge_angle", ". "),
        Sentence("On the flat the rake is {dub_normal_rake}", "dub_normal_rake", "The rake on the flat is not told"),
        Sentence(" and the wedge {dub_wedge_angle}", "dub_wedge_angle", ""),
        Sentence("; the relief stays {normal_relief}. ", "normal_relief", "; the relief stays. "),
        Sentence("The flat is {dub_width} wide. ", "dub_width", "The width of the flat is not told. "),
        Sentence("The layer being cut is {chip_thickness} thick, ", "chip_thickness", "The layer is not told, "),
        Sentence(
            "", "least_dub_width", "and so not the least width. ", "to_spare", 0.0, 1e9,
            "so the flat is too narrow: a part still meets the flute's own face; {least_dub_width} is the least. ",
            "so the flat is wide enough: {least_dub_width} is the least. ",
        ),
        Sentence(
            "It sets the lip back along the flank by {dub_set_back}.", "dub_set_back",
            "How far it sets the lip back is not told.",
        ),
    ]  # fmt: skip
