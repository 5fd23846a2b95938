"""A drill across a steel rule with its side at the zero: where the other side stands, in 64ths of an inch and in mm."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import sympy as sp

from drillpoint.drawing.points import Curve, wave
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.showing import MM_PER_INCH, SIXTY_FOURTHS, fraction
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 400
ZERO = 30
PIXELS = sp.Rational(31, 2)  # for a mm
LONGEST = 32.0  # mm on the rule
TOP, BOTTOM = 200, 330  # the rule's long edges
DRILL_TOP = 96
SIXTY_FOURTH = sp.Rational(254, 10) / SIXTY_FOURTHS  # mm; an inch is 25.4 mm by definition
DEEPEST, SHALLOWER = 46, 6  # of an inch line, and how much less each halving of the inch goes
NUMBERS = TOP + DEEPEST + 15  # level of the numbers below the inch lines
MM_LINES = {10: 32, 5: 24, 1: 15}
HALF_MM = 9

_s = symbols()


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    far = ZERO + PIXELS * _s.diameter
    _drill(sheet, far)
    _rule(sheet)
    sheet.line("hidden", (far, TOP), (far, BOTTOM))
    sheet.label("term", (ZERO + 4, 30), "start", "thickness of the drill")
    sheet.label("value", (ZERO + 4, 51), "start", "{diameter}; {parts} of the 64ths", "diameter", "?")
    sheet.number("parts", _s.diameter / SIXTY_FOURTH, like="regrinds_left")
    scene = sheet.scene(
        name="rule",
        title="A drill across a steel rule",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter",),
        allowed=(
            Allowed("diameter", "{diameter} is more than this rule shows; 32 mm (1 1/4 in) at most", high=LONGEST),
        ),
        ranges=(Range("diameter", 2.0, 31.0, 10.0),),
        bar=sheet.bar((ZERO, 386.0), 10 * float(PIXELS), PIXELS),
        words=_words(),
    )
    return scene, sheet.expressions


def _drill(sheet: Sheet, far: Any) -> None:
    near, low, high = sp.Integer(ZERO), sp.Integer(TOP), sp.Integer(DRILL_TOP)
    body: Curve = ["M", (near, low), "L", (near, high), *wave((near, high), (far, high), 5.0), "L", (far, low), "Z"]
    sheet.path("land", body)
    sheet.path("fine", ["M", (near, high), *wave((near, high), (far, high), 5.0)])
    for side in (near, far):
        sheet.line("edge", (side, high), (side, low))
    sheet.line("centre", ((near + far) / 2, high - 16), ((near + far) / 2, low - 4))


def _rule(sheet: Sheet) -> None:
    right = ZERO + PIXELS * LONGEST + 22
    sheet.area("flute", (ZERO, TOP), (right, TOP), (right, BOTTOM), (ZERO, BOTTOM))
    sheet.area("edge", (ZERO, TOP), (right, TOP), (right, BOTTOM), (ZERO, BOTTOM))
    inches = range(1, int(LONGEST / SIXTY_FOURTH) + 1)
    _lines(sheet, ((SIXTY_FOURTH * n, TOP, _depth(n)) for n in inches))
    halves = range(1, 2 * int(LONGEST) + 1)
    _lines(sheet, ((sp.Rational(n, 2), BOTTOM, -_length(n)) for n in halves))
    for n in range(SIXTY_FOURTHS // 4, len(inches) + 1, SIXTY_FOURTHS // 4):
        sheet.label("term", (ZERO + PIXELS * SIXTY_FOURTH * n, NUMBERS), "middle", fraction(n / 64))
    for n in range(10, int(LONGEST) + 1, 10):
        sheet.label("term", (ZERO + PIXELS * n, BOTTOM - MM_LINES[10] - 4), "middle", str(n))
    sheet.label("term", (ZERO + 5, NUMBERS), "start", "in, 64ths")
    sheet.label("term", (ZERO + 5, BOTTOM - MM_LINES[10] - 4), "start", "mm")


def _depth(sixty_fourths: int) -> int:
    """How far down the line of so many 64ths goes: the fewer halvings of the inch, the further."""
    halvings = 0
    while (sixty_fourths << halvings) % SIXTY_FOURTHS:
        halvings += 1
    return DEEPEST - SHALLOWER * halvings


def _length(halves: int) -> int:
    """How far up the line of so many half millimetres goes."""
    return next((length for mm, length in MM_LINES.items() if halves % (2 * mm) == 0), HALF_MM)


def _lines(sheet: Sheet, lines: Iterable[tuple[Any, int, int]]) -> None:
    """The lines of a scale in one path: where along the rule, from which edge, and how far."""
    steps: Curve = []
    for mm, edge, far in lines:
        x = ZERO + PIXELS * mm
        steps += ["M", (x, edge), "L", (x, edge + far)]
    sheet.path("thin", steps)


def _words() -> list[Sentence]:
    return [
        Sentence(
            f"A drill lies across a steel rule, which has 64ths of an inch ({MM_PER_INCH:g} mm to the inch) above and "
            "half millimetres below. One side of the drill is at the zero. "
        ),
        # Counting the lines is what the eye does here; what they make is the reader's to work out.
        Sentence("The other stands at {parts} of the 64ths"),
        Sentence(", which is {diameter}.", "diameter", "; what that makes is not told."),
    ]
