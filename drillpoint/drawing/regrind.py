"""A regrind: the tip seen square to the lips before (double chain line) and after, and a worn corner enlarged.

The point is a sharp cone before and after, as in the relations on regrinding. The chip sits halfway along the lip; its
depth is exact, its mouth drawn plausibly, and so is how far the wear reaches along the lip.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.points import Curve, Point, along, wave
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import BESIDE, GAP, OVERRUN, SHELF, Sheet
from drillpoint.drawing.work import across, beside, upright
from drillpoint.relation.symbols import symbols
from drillpoint.relations import point_height, stock_for_chip, stock_for_wear_land, tip_stock

WIDTH, HEIGHT = 640, 480
TIP = (sp.Integer(270), sp.Integer(130))
WIDEST, TALLEST = sp.Integer(105), sp.Integer(118)  # pixels of half the diameter and of the taller point
BREAK = sp.Integer(400)
LEFT, RIGHT = sp.Integer(140), sp.Integer(396)  # columns of the two upright dimensions
ARC, NEW_ARC = 40.0, 48.0
LIP = (sp.Integer(466), sp.Integer(324))  # in the enlarged corner
LARGER, REACH = 4, sp.Integer(114)
WORN_FROM = sp.Rational(11, 20)
HAIR = 1e-9
NOTHING, WEAR, CHIP, SHARPER = range(4)

_s = symbols()
_kappa, _new = sp.rad(_s.point_angle) / 2, sp.rad(_s.new_point_angle) / 2
_relief = sp.rad(_s.lip_relief)
_radius = _s.diameter / 2
_height = point_height.surface_expression
_new_height = _height.subs(_s.point_angle, _s.new_point_angle)

lower_tip = tip_stock.surface_expression.subs(_s.corner_stock, 0)
"""How much lower the tip stands after the change of angle alone, the corners kept; below 0 for a sharper point."""

for_wear = stock_for_wear_land.surface_expression
# At its bottom a chip halfway along the lip is c·cos(κ' - κ) square to the new lip's direction; the change of angle
# itself has taken half of what it takes at the tip there.
for_chip = stock_for_chip.surface_expression.subs(_s.point_angle, _s.new_point_angle) * sp.cos(
    _new - _kappa
) - lower_tip * sp.Rational(1, 2)
at_corner = sp.Max(for_wear, for_chip, -lower_tip, 0)
at_tip = tip_stock.surface_expression.subs(_s.corner_stock, at_corner)

scale = sp.Min(WIDEST / _radius, TALLEST / sp.Max(_height, _new_height))
cause = sp.Piecewise(
    (NOTHING, at_corner <= HAIR * _s.diameter),
    (SHARPER, -lower_tip >= sp.Max(for_wear, for_chip)),
    (WEAR, for_wear >= for_chip),
    (CHIP, True),
)


def place(out: Any, down: Any) -> Point:
    """A place so far out from the axis and so far below the old tip, in mm, on the sheet."""
    return (TIP[0] + scale * out, TIP[1] + scale * down)


old_corner = place(_radius, _height)
new_tip = place(0, at_tip)
new_corner = place(_radius, _height + at_corner)


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _tip(sheet)
    _faults(sheet)
    _angles(sheet)
    _stocks(sheet)
    _enlarged_corner(sheet)
    sheet.number("at_corner", at_corner, like="corner_stock")
    sheet.number("at_tip", at_tip, like="tip_stock")
    sheet.number("for_wear", for_wear, like="corner_stock")
    sheet.number("cause", cause, like="regrinds")
    sheet.number("blunter", _s.new_point_angle - _s.point_angle, like="point_angle")
    scene = sheet.scene(
        name="regrind",
        title="The tip before and after a regrind, square to the lips",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "new_point_angle", "wear_land", "lip_relief", "chip_depth"),
        defaults={"wear_land": 0.0, "lip_relief": 12.0, "chip_depth": 0.0},
        allowed=(
            Allowed(
                "lip_relief",
                "a lip relief of {lip_relief} leaves the flank no slope to wear a land on; 12° is usual",
                low=0.5,
            ),
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 80.0, 150.0, 118.0),
            Range("new_point_angle", 80.0, 150.0, 135.0),
            Range("wear_land", 0.0, 0.08, 0.04, share_of="diameter"),
            Range("lip_relief", 4.0, 24.0, 12.0),
            Range("chip_depth", 0.0, 0.08, 0.02, share_of="diameter"),
        ),
        bar=sheet.bar((24.0, 460.0), 90.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _mirrored(at: Point) -> Point:
    return (2 * TIP[0] - at[0], at[1])


def _tip(sheet: Sheet) -> None:
    ends = (new_corner[0], BREAK), (_mirrored(new_corner)[0], BREAK)
    lower = wave(ends[0], ends[1], 8.0)
    body: Curve = ["M", new_tip, "L", new_corner, *ends[:1], *lower, "L", _mirrored(new_corner), "Z"]
    sheet.path("land", body)
    sheet.area("flute", TIP, old_corner, new_corner, new_tip, _mirrored(new_corner), _mirrored(old_corner))
    for turned in (lambda p: p, _mirrored):
        sheet.line("swept", TIP, turned(old_corner), turned(new_corner))
        sheet.line("edge", turned(new_corner), (turned(new_corner)[0], BREAK))
    sheet.path("fine", ["M", ends[0], *lower])
    sheet.line("centre", (TIP[0], TIP[1] - 20), (TIP[0], BREAK + 16))


def _faults(sheet: Sheet) -> None:
    """The worn lip to the right and the chip to the left, and the new lips below both."""
    begins = place(WORN_FROM * _radius, WORN_FROM * _height)
    sheet.line("fine", begins, place(_radius, _height + for_wear), when=_s.wear_land)
    middle = place(-_radius / 2, _height / 2)
    down_the_lip, into = (-sp.sin(_kappa), sp.cos(_kappa)), (sp.cos(_kappa), sp.sin(_kappa))
    bottom = along(middle, into, scale * _s.chip_depth)
    mouth = [along(middle, down_the_lip, side * scale * _s.chip_depth) for side in (-1, 1)]
    sheet.area("paper", mouth[0], bottom, mouth[1], when=_s.chip_depth)
    sheet.line("fine", mouth[0], bottom, mouth[1], when=_s.chip_depth)
    sheet.line("lip", new_tip, new_corner)
    sheet.line("lip", new_tip, _mirrored(new_corner))
    at = (LEFT - 22, sp.Integer(352))
    sheet.line("thin", bottom, (at[0] + BESIDE + SHELF, at[1]), (at[0] + BESIDE, at[1]), when=_s.chip_depth)
    sheet.label("term", (at[0], at[1] - 12), "end", "chip", when=_s.chip_depth)
    sheet.label("value", (at[0], at[1] + 7), "end", "{chip_depth}", "chip_depth", "?", when=_s.chip_depth)


def _angles(sheet: Sheet) -> None:
    for side in (-1, 1):
        up = (side * sp.sin(_kappa), -sp.cos(_kappa))
        sheet.line("thin", along(TIP, up, GAP), along(TIP, up, ARC + OVERRUN))
    sheet.angle(TIP, ARC, -sp.pi / 2 - _kappa, 2 * _kappa)
    above = TIP[1] - ARC
    sheet.label("term", (TIP[0], above - 28), "middle", "point angle before")
    sheet.label("value", (TIP[0], above - 9), "middle", "{point_angle}", "point_angle", "?")
    sheet.angle(new_tip, NEW_ARC, sp.pi / 2 - _new, 2 * _new)
    below = new_tip[1] + NEW_ARC
    sheet.label("term", (TIP[0], below + 34), "middle", "point angle after")
    sheet.label("value", (TIP[0], below + 54), "middle", "{new_point_angle}", "new_point_angle", "?")


def _stocks(sheet: Sheet) -> None:
    tip = upright(sheet, TIP, new_tip, LEFT)
    beside(sheet, tip, tip[1], "off the tip", "at_tip", "left")
    corner = upright(sheet, old_corner, new_corner, RIGHT)
    level = sp.Integer(136)
    beside(sheet, corner, level, "off the corners", "at_corner", "right")
    for number, said in (
        (NOTHING, "they need nothing"),
        (WEAR, "for the wear land"),
        (CHIP, "for the chip"),
        (SHARPER, "for the sharper point"),
    ):
        at = (corner[0] + 13 + SHELF + BESIDE, level + 26)
        sheet.label("term", at, "start", said, when=0.5 - sp.Abs(cause - number))


def _enlarged_corner(sheet: Sheet) -> None:
    """The right corner seen along the radius: the flank falls away behind the lip, and the land is rubbed flat."""
    x, y = LIP
    land, lost = LARGER * scale * _s.wear_land, LARGER * scale * for_wear
    fall = sp.tan(_relief)
    worn, back = (x, y + lost), (x + land, y + lost)
    old_end, new_end = (x + REACH, y + REACH * fall), (x + REACH, y + lost + REACH * fall)
    bottom = new_end[1] + 12
    sheet.area("land", worn, new_end, (x + REACH, bottom), (x, bottom))
    sheet.area("flute", LIP, old_end, new_end, worn)
    sheet.area("paper", LIP, back, worn)
    sheet.line("swept", worn, LIP, back)
    sheet.line("fine", worn, back, old_end)
    sheet.line("edge", (x, bottom), worn, new_end)
    level = y - 20
    across(sheet, x, x + land, level, y)
    sheet.named((x, level - 30), "start", "wear land", "{wear_land}", "wear_land")
    far = (x + REACH, y)
    sheet.line("thin", (x + land + GAP, y), (far[0] + OVERRUN, y))
    tail = sheet.narrow_angle(LIP, REACH - 6, sp.Integer(0), _relief)
    sheet.line("thin", tail, (tail[0] + 4, level - 14))
    sheet.named((x + REACH - 24, level - 30), "start", "lip relief", "{lip_relief}", "lip_relief")
    stock = upright(sheet, LIP, worn, x - 22)
    beside(sheet, stock, sp.Integer(444), "stock for the land", "for_wear", "right")
    sheet.label("term", (x - 30, level - 78), "start", "right corner seen along")
    sheet.label("term", (x - 30, level - 60), "start", f"the radius, {LARGER} times larger")


def _words() -> list[Sentence]:
    return [
        Sentence("The tip of a drill, square to the lips, before a regrind (double chain line) and after it. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(", point angle {point_angle} before", "point_angle", ", point angle before not told"),
        Sentence(
            " and {new_point_angle} after, ", "new_point_angle", ", and after not told",
            "blunter", -0.05, 0.05, "a sharper point", "the angle kept", "a blunter point",
        ),
        Sentence(". The lip relief is {lip_relief}", "lip_relief", ". The lip relief is not told"),
        Sentence(
            "", "wear_land", ". The wear land is not told", "wear_land", HAIR, 1e9, ". There is no wear land",
            ". The wear land is {wear_land} wide",
        ),
        Sentence(
            "", "for_wear", "", "wear_land", HAIR, 1e9, "", ", so {for_wear} must come off the corners for it",
        ),
        Sentence(
            "", "chip_depth", "; the depth of the chip is not told", "chip_depth", HAIR, 1e9, "; no chip",
            "; a chip halfway along the lip is {chip_depth} deep",
        ),
        Sentence(
            ". Off the corners come {at_corner}: ", "at_corner", ". How much comes off the corners is not told: ",
        ),
        Sentence("", judged="cause", low=0.5, high=1.5, below="nothing asks for more", within="the wear land decides"),
        Sentence("", judged="cause", low=1.5, high=2.5, within="the chip decides", above="the sharper point decides"),
        Sentence(". Off the tip come {at_tip}, ", "at_tip", ". How much comes off the tip is not told: "),
        Sentence(
            "", judged="blunter", low=-0.05, high=0.05,
            below="less than off the corners.", within="the same.",
            above="more than off the corners: a blunter tip stands lower.",
        ),
    ]  # fmt: skip
