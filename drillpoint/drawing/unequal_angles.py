"""A drill whose lips stand at two half angles, in its hole, seen square to the lips: what each lip takes of the feed.

The tip is on the axis and the drill does not give way; the web is left out. Heights count upwards from the tip. At one
moment lip i is r·cot κ_i high at the radius r. Half a turn before, the other lip passed half a feed higher, and a whole
turn before, lip i itself a whole feed higher: the lower of the two is what this lip finds.
"""

from __future__ import annotations

from typing import Any

import sympy as sp
from attrs import frozen

from drillpoint.drawing.points import Point, either
from drillpoint.drawing.scene import Range, Scene, Sentence
from drillpoint.drawing.sheet import OVERRUN, Sheet
from drillpoint.drawing.work import across, beside, cut_block, upright
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
AXIS, TIP = sp.Integer(300), sp.Integer(340)
WIDEST, TALLEST = sp.Integer(200), sp.Integer(220)
WALL, FLOOR = 30, 24
DRILL_TOP = sp.Integer(66)
ABOVE_CORNER = 26
ARC = 84.0
TOO_LITTLE_TO_SEE = 0.015

_s = symbols()
_flat = sp.Min(sp.cot(sp.rad(_s.half_angle_1)), sp.cot(sp.rad(_s.half_angle_2)))
_steep = sp.Max(sp.cot(sp.rad(_s.half_angle_1)), sp.cot(sp.rad(_s.half_angle_2)))
scale = sp.Min(WIDEST / _s.diameter, TALLEST / (_s.diameter / 2 * _steep + _s.feed))
half = scale * _s.diameter / 2
feed = scale * _s.feed
cutting = sp.Min(half, scale * _s.idle_radius)
"""Out to there both lips cut."""

one_idles = _s.diameter / 2 - _s.idle_radius
"""Above 0 where the lagging lip does not cut all along."""


@frozen
class Lip:
    """One lip: which one, on which side it is drawn, its half angle and that of the other, in radians."""

    number: int
    side: int
    half_angle: Any
    other: Any

    @property
    def leads(self) -> Any:
        """Above 0 for the lip that stands ahead: the one with the flatter slope."""
        return self.half_angle - self.other

    def at(self, radius: Any, height: Any) -> Point:
        """A place on this lip's side of the frame."""
        return (AXIS + self.side * radius, TIP - height)

    def low(self, radius: Any) -> Any:
        """The height of the lip."""
        return radius * sp.cot(self.half_angle)

    def found(self, radius: Any) -> Any:
        """The height of the metal that this lip finds."""
        return sp.Min(feed / 2 + radius * sp.cot(self.other), feed + self.low(radius))

    def left(self, radius: Any) -> Any:
        """The height of the metal that it leaves."""
        return sp.Min(self.low(radius), feed / 2 + radius * sp.cot(self.other))

    def on(self, radius: Any) -> Point:
        """A place on the lip."""
        return self.at(radius, self.low(radius))


_ANGLES = sp.rad(_s.half_angle_1), sp.rad(_s.half_angle_2)
LIP_1, LIP_2 = Lip(1, 1, *_ANGLES), Lip(2, -1, _ANGLES[1], _ANGLES[0])
LIPS = LIP_1, LIP_2
face = TIP - half * _steep - feed - ABOVE_CORNER


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _work(sheet)
    _drill(sheet)
    _sizes(sheet)
    _half_angles(sheet)
    _where_it_idles(sheet)
    sheet.number("difference_share", _s.lip_height_difference / _s.diameter, like="web_ratio")
    sheet.number("included", _s.half_angle_1 + _s.half_angle_2, like="point_angle")
    sheet.number("lip_1_ahead", _s.half_angle_1 - _s.half_angle_2, like="half_angle_1")
    sheet.number("cutting_share", 2 * _s.idle_radius / _s.diameter, like="web_ratio")
    scene = sheet.scene(
        name="unequal_angles",
        title="A drill with lips at different angles in its hole, square to the lips",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "half_angle_1", "half_angle_2", "feed"),
        relations=("corner_radius", "lip_height_from_angles", "idle_radius"),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("half_angle_1", 45.0, 75.0, 54.0),
            Range("half_angle_2", 45.0, 75.0, 64.0),
            Range("feed", 0.005, 0.05, 0.04, share_of="diameter"),
        ),
        bar=sheet.bar((24.0, 456.0), 90.0, scale),
        words=_words(),
    )
    return scene, sheet.expressions


def _work(sheet: Sheet) -> None:
    def wall(lip: Lip) -> list[Point]:
        return [lip.at(half, -(face - TIP)), lip.at(half, lip.left(half)), lip.at(cutting, lip.left(cutting))]

    profile = (*wall(LIP_2), (AXIS, TIP), *reversed(wall(LIP_1)))
    cut_block(sheet, profile, AXIS - half - WALL, AXIS + half + WALL, TIP + FLOOR)


def _drill(sheet: Sheet) -> None:
    for lip in LIPS:
        above = [lip.at(r, sp.Max(lip.low(r), lip.found(r))) for r in (half, cutting, sp.Integer(0))]
        layer = (AXIS, TIP), lip.on(half), *above
        sheet.area("section_other", *layer)
        sheet.line("fine", *above)
        x, y = lip.on(half)
        sheet.line("swept", (x, DRILL_TOP), (x, y))
        sheet.line("lip", (AXIS, TIP), (x, y))
    sheet.line("centre", (AXIS, DRILL_TOP - 8), (AXIS, TIP + FLOOR + 34))


def _sizes(sheet: Sheet) -> None:
    level = sp.Integer(40)
    across(sheet, AXIS - half, AXIS + half, level, DRILL_TOP)
    sheet.label("value", (AXIS, level - 9), "middle", "Ø{diameter}", "diameter", "Ø ?")
    right, left = AXIS + half, AXIS - half
    first_is_higher = LIP_2.leads > 0
    high = (either(first_is_higher, right, left), TIP - half * _steep)
    low = (either(first_is_higher, left, right), TIP - half * _flat)
    middle = upright(sheet, high, low, left - WALL - 18)
    beside(sheet, middle, middle[1], "corners differ", "lip_height_difference", "left")
    down = right + 18
    sheet.motion((down, DRILL_TOP), (down, DRILL_TOP + 42))
    sheet.label("term", (down + 10, DRILL_TOP + 16), "start", "feed")
    sheet.label("value", (down + 10, DRILL_TOP + 36), "start", "{feed}", "feed", "?")


def _half_angles(sheet: Sheet) -> None:
    for lip in LIPS:
        start = -sp.pi / 2 if lip.side > 0 else -sp.pi / 2 - lip.half_angle
        sheet.angle((AXIS, TIP), ARC, start, lip.half_angle)
        x, name = AXIS + lip.side * 54, f"half_angle_{lip.number}"
        sheet.label("term", (x, TIP - ARC - 33), "middle", f"lip {lip.number}")
        sheet.label("value", (x, TIP - ARC - 13), "middle", f"{{{name}}}", name, "?")
        _role(sheet, lip)


def _role(sheet: Sheet, lip: Lip) -> None:
    """Says which lip leads, at the foot of the work on the lip's own side."""
    at, level = lip.on(half / 2), TIP + FLOOR + 6
    elbow = (AXIS + lip.side * (half + WALL + 10), level)
    shelf = (elbow[0] + lip.side * 12, level)
    sheet.line("thin", at, elbow, shelf)
    sheet.circle("arrow", at, 2.2)
    place = (shelf[0] + lip.side * 6, level + 5)
    for says, when in (("leads", lip.leads), ("lags", -lip.leads)):
        sheet.label("term", place, "start" if lip.side > 0 else "end", f"lip {lip.number} {says}", when=when)


def _where_it_idles(sheet: Sheet) -> None:
    side = sp.sign(LIP_2.leads)
    level, end = TIP + FLOOR + 28, AXIS + side * cutting
    foot = TIP - cutting * _steep
    sheet.line("thin", (end, foot + 4), (end, level + OVERRUN), when=one_idles)
    sheet.line("thin", (AXIS - side * 26, level), (end + side * 26, level), when=one_idles)
    sheet.arrow((AXIS, level), (side, 0), when=one_idles)
    sheet.arrow((end, level), (-side, 0), when=one_idles)
    under = level + 22
    sheet.label("term", (AXIS, under), "middle", "the lagging lip cuts out to", when=one_idles)
    sheet.label("value", (AXIS, under + 20), "middle", "{idle_radius}", "idle_radius", "?", when=one_idles)
    sheet.label("term", (AXIS, under), "middle", "both lips cut all along", when=-one_idles)


def _words() -> list[Sentence]:
    return [
        Sentence("A drill with lips at different angles in its hole, square to the lips, in true proportions. "),
        Sentence("Drill diameter {diameter}", "diameter", "Drill diameter not told"),
        Sentence("; half angle of lip 1 {half_angle_1}", "half_angle_1", "; half angle of lip 1 not told"),
        Sentence(", of lip 2 {half_angle_2}", "half_angle_2", ", of lip 2 not told"),
        Sentence(", {included} together; ", "half_angle_1", "; "),
        Sentence("lip ", judged="lip_1_ahead", low=-1e-9, high=1e-9, below="2", above="1"),
        Sentence(", the flatter one, leads"),
        Sentence(
            " by {lip_height_difference} at the corner", "lip_height_difference", "", "difference_share",
            TOO_LITTLE_TO_SEE, 1e9, " (too little to see well here; give half angles further apart)", "",
        ),
        Sentence(
            ". With a feed of {feed} ", "feed", ". ", "cutting_share", 1.0, 1e9,
            "the lagging lip cuts only out to a radius of {idle_radius}; outside it the leading lip takes the whole "
            "feed: one broad chip, and one narrow one.",
            "both lips cut all along, the leading one more.",
        ),
    ]  # fmt: skip
