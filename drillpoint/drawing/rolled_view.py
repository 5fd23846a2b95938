"""A point under a gauge, rolled about its axis: what the eye sees between the lips, and the cone they sweep.

Both views are of a drill whose web is thin, so that the lips run from the axis. The swept cone shows the true angle
however the drill is rolled; the lips reach its outline only when they lie square to the line of sight.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing.points import along, heading, polar
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import OVERRUN, Sheet
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 440
TIP = (sp.Integer(176), sp.Integer(70))
RADIUS = sp.Integer(120)
BREAK = 372
WAVE = 9
ARC = 84.0
END, END_RADIUS = (sp.Integer(444), sp.Integer(292)), sp.Integer(62)
TURN = END_RADIUS + 20
TRUE = 0.05  # degrees; less is square

_s = symbols()
kappa, roll = sp.rad(_s.point_angle) / 2, sp.rad(_s.roll_angle)
half_reading = sp.rad(_s.rolled_reading) / 2
level = TIP[1] + RADIUS / sp.tan(kappa)
seen = RADIUS * sp.cos(roll)


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _side(sheet)
    _end(sheet)
    sheet.number("low_by", _s.point_angle - _s.rolled_reading, like="rolled_reading")
    scene = sheet.scene(
        name="rolled_view",
        title="A rolled drill: what is seen between its lips",
        width=WIDTH,
        height=HEIGHT,
        needs=("point_angle", "roll_angle"),
        relations=("rolled_reading",),
        allowed=(
            Allowed(
                "roll_angle",
                "rolled by {roll_angle} the lips are hardly seen apart; draw it for 60° or less",
                high=60.0,
            ),
        ),
        ranges=(Range("point_angle", 80.0, 150.0, 118.0), Range("roll_angle", 0.0, 45.0, 20.0)),
        words=_words(),
    )
    return scene, sheet.expressions


def _side(sheet: Sheet) -> None:
    x, y = TIP
    left, right = (x - RADIUS, level), (x + RADIUS, level)
    ends = (x - RADIUS, sp.Integer(BREAK)), (x + RADIUS, sp.Integer(BREAK))
    sheet.area("land", left, right, ends[1], ends[0])
    sheet.area("flank", TIP, right, left)
    sheet.line("edge", left, ends[0])
    sheet.line("edge", right, ends[1])
    sheet.line("fine", left, right)
    sheet.break_line(*ends, sag=WAVE)
    sheet.line("centre", (x, y - 20), (x, BREAK + 20))
    for side in (-1, 1):
        sheet.line("swept", TIP, (x + side * RADIUS, level))
        sheet.line("lip", TIP, (x + side * seen, level))
    sheet.angle(TIP, ARC, sp.pi / 2 - half_reading, 2 * half_reading)
    below = y + ARC
    sheet.label("term", (x, below + 20), "middle", "as read")
    sheet.label("value", (x, below + 40), "middle", "{rolled_reading}", "rolled_reading", "?")
    target = along(TIP, heading(sp.pi / 2 - kappa), sp.Rational(3, 5) * RADIUS / sp.sin(kappa))
    sheet.leader(target, (314, 62), "point angle, as swept", "{point_angle}", "point_angle", end="arrow")


def _end(sheet: Sheet) -> None:
    x, y = END
    sheet.circle("flank", END, END_RADIUS)
    sheet.circle("edge", END, END_RADIUS)
    sheet.centre_cross(END, END_RADIUS + 10)
    sheet.line("thin", (x + END_RADIUS + 4, y), (x + TURN + OVERRUN, y))
    sheet.line("thin", polar(END, END_RADIUS + 4, -roll), polar(END, TURN + OVERRUN, -roll))
    sheet.line("lip", polar(END, END_RADIUS, -roll), polar(END, END_RADIUS, sp.pi - roll))
    start = sheet.narrow_angle(END, TURN, -roll, roll)
    elbow = (x + 44, sp.Integer(186))
    sheet.leader(start, elbow, "rolled by", "{roll_angle}", "roll_angle")
    sheet.motion((x, y + END_RADIUS + 62), (x, y + END_RADIUS + 16))
    sheet.label("term", (x + 12, y + END_RADIUS + 58), "start", "line of sight")
    sheet.label("term", (x - END_RADIUS - 20, y - END_RADIUS - 18), "middle", "end view")


def _words() -> list[Sentence]:
    return [
        Sentence("A drill seen from the side under a gauge, and from its tip. "),
        Sentence("Its point angle is {point_angle}", "point_angle", "Its point angle is not told"),
        Sentence(". It is rolled by {roll_angle} from square", "roll_angle", ". How far it is rolled is not told"),
        Sentence(
            ". Between the lips the eye sees {rolled_reading}", "rolled_reading",
            ". What the eye sees between the lips is not told.", "roll_angle", -TRUE, TRUE,
            "", ": the true angle.", ": {low_by} too little.",
        ),
    ]  # fmt: skip
