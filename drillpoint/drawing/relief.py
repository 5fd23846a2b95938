"""The relief unrolled: the cylinder through a place on the lip, rolled out flat, tip down, with the work under it.

A plane flank cut by a cylinder is a sine when it is rolled out; the way of the lip through the work is a straight line
that comes down by the feed in a full turn. Lengths are in units of the radius of the place, angles in radians. Flank,
lip and work are exact. How wide the land is, and how its sides lean, is drawn plausibly, as in the other views.
"""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.letter import letter
from drillpoint.drawing.points import Point, larger, smaller
from drillpoint.drawing.scene import Allowed, Range, Scene, Sentence
from drillpoint.drawing.sheet import DOT, OVERRUN, ROOM_FOR_ARROWS, TAIL, Sheet
from drillpoint.quantities import QUANTITIES
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
LIP = (sp.Integer(72), sp.Integer(222))
RADIUS = sp.Integer(230)  # of the unrolled cylinder, in pixels
TOP, BOTTOM = 92, 312  # where the drill and the work break off
LEFT, RIGHT = 20, 564
HIGHEST, DEEPEST = 112 / RADIUS, 78 / RADIUS  # how far the flank is followed up from the lip and down from it
WIDEST = sp.rad(sp.Integer(112))  # how far behind the lip there is room to mark a place
ROWS = (330, 364, 398)
PIECES = 48
HAIR = 1e-9

LAND_DEGREES = float(sp.deg(point.LAND))

_s = symbols()
_kappa, _square = sp.rad(_s.point_angle) / 2, sp.rad(_s.axial_relief)
OMEGA = letter("omega", sp.asin(_s.web / (2 * _s.radius)))
RELIEF = letter("relief", sp.rad(_s.relief_at_radius))
LOSS = letter("loss", sp.rad(_s.feed_relief_loss))


def height(back: Any) -> Any:
    """The flank's height, towards the tip, so far behind the lip on the cylinder."""
    angle = OMEGA - back
    return -sp.cos(angle) * sp.cot(_kappa) + sp.sin(angle) * sp.tan(_square)


def _sine() -> tuple[Any, Any]:
    """The flank falls by T·sin q − Q·(1 − cos q) behind the lip: T and Q, from its height."""
    q = sp.Symbol("q")
    fall = sp.expand(sp.expand_trig(height(sp.Integer(0)) - height(q)))
    return fall.coeff(sp.sin(q)), fall.coeff(sp.cos(q))


_steep, _turn = _sine()
STEEP, TURN = letter("steep", _steep), letter("turn", _turn)
WORK = letter("work", sp.tan(LOSS))
AMPLITUDE = letter("amplitude", sp.sqrt(STEEP**2 + TURN**2))
PEAK = letter("peak", sp.atan2(STEEP, TURN))


def falls(back: Any) -> Any:
    """How far the flank lies back from the lip's height, so far behind the lip."""
    return STEEP * sp.sin(back) - TURN * (1 - sp.cos(back))


def _touching() -> Any:
    """How far behind the lip the flank first touches the work; 0 where no relief is left.

    Divided by sin q, gap zero reads T − Q·tan(q/2) = tan η·q/sin q, whose sides are almost straight lines. Three of
    Newton's steps from where q/sin q is 1 leave less than can be read off.
    """
    least, most = 1e-6, 2.4
    q = letter("q", smaller(larger(2 * sp.atan2(STEEP - WORK, TURN), least), most))
    for _ in range(3):
        over = STEEP - TURN * sp.tan(q / 2) - WORK * q / sp.sin(q)
        slope = -TURN / 2 / sp.cos(q / 2) ** 2 - WORK * (sp.sin(q) - q * sp.cos(q)) / sp.sin(q) ** 2
        q = letter("q", smaller(larger(q - over / slope, least), most))
    return sp.Piecewise((q, STEEP > WORK), (0, True))


def _end() -> Any:
    """How far behind the lip the flank is drawn: to the heel, unless it leaves the picture before."""
    up = PEAK - sp.acos(smaller(1, (TURN + HIGHEST) / AMPLITUDE))
    up = sp.Piecewise((up, TURN + HIGHEST < AMPLITUDE), (point.LAND, True))
    down = PEAK + sp.acos(larger(-1, (TURN - DEEPEST) / AMPLITUDE))
    return smaller(smaller(letter("up", up), letter("down", down)), point.LAND)


LEVEL = letter("level", larger(sp.Integer(0), 2 * PEAK))  # where the flank is as high as the lip again; or 0
TOUCHING, END = letter("touching", _touching()), letter("end", _end())
CORNER = letter("corner", HAIR * _s.diameter - (_s.diameter / 2 - _s.radius))  # above 0 at the outer corner


def project(back: Any, down: Any) -> Point:
    """A place so far round behind the lip and so far back from the lip's height, on the sheet."""
    return (LIP[0] + RADIUS * back, LIP[1] - RADIUS * down)


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _numbers(sheet)
    _drill(sheet)
    _work(sheet)
    _rubbing(sheet)
    _outlines(sheet)
    _angles(sheet)
    _ways(sheet)
    scene = sheet.scene(
        name="relief",
        title="The relief behind a place on the lip, unrolled, tip down",
        width=WIDTH,
        height=HEIGHT,
        needs=("diameter", "point_angle", "web", "lip_relief", "feed", "radius"),
        also=("corner_radius", ("chisel_edge_angle", "axial_relief")),
        relations=("web_ratio", "axial_relief", "relief_at_radius", "feed_relief_loss", "working_relief"),
        allowed=(
            Allowed(
                "lip_relief", "a lip relief of {lip_relief} is more than can be drawn; 5° to 24° is usual", high=45.0
            ),
            Allowed(
                "lip_relief", "a lip relief of {lip_relief} is less than can be drawn; 5° to 24° is usual", low=-15.0
            ),
        ),
        ranges=(
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 60.0, 150.0, 118.0),
            Range("web", 0.05, 0.4, 0.15, share_of="diameter"),
            Range("lip_relief", -6.0, 30.0, 12.0),
            Range("feed", 0.001, 0.05, 0.02, share_of="diameter"),
            Range("radius", 0.22, 0.5, 0.5, share_of="diameter"),
        ),
        bar=sheet.bar((24.0, 462.0), 0.9 * float(RADIUS), RADIUS / _s.radius),
        words=_words(),
    )
    return scene, sheet.expressions


def _numbers(sheet: Sheet) -> None:
    sheet.number("level", sp.deg(LEVEL), like="heel_clearance")
    sheet.number("level_way", LEVEL * _s.radius, like="lip_length")
    sheet.number("touching", sp.deg(TOUCHING), like="heel_clearance")
    sheet.number("touching_way", TOUCHING * _s.radius, like="lip_length")
    sheet.number("land", LAND_DEGREES, like="heel_clearance")
    sheet.number("land_way", point.LAND * _s.radius, like="lip_length")
    rubs = letter("rubs", sp.Piecewise((1, TOUCHING < point.LAND), (0, True)))
    verdict = sp.Piecewise((3, STEEP <= WORK), (rubs, CORNER > 0), (2, True))
    sheet.number("verdict", verdict, like="turn_share")


LEAN = sp.tan(point.HELIX)


def _rise(height: Any, at: Point) -> Point:
    """Where a side of the land that goes up from a place is at a height on the sheet."""
    return (at[0] + (at[1] - height) * LEAN, height)


def _flank(start: Any, end: Any) -> list[Point]:
    return [project(q, falls(q)) for q in (start + (end - start) * i / PIECES for i in range(PIECES + 1))]


def _drill(sheet: Sheet) -> None:
    heel = project(END, falls(END))
    sheet.area("land", *_flank(sp.Integer(0), END), _rise(TOP - 8, heel), _rise(TOP - 8, LIP))


def _work(sheet: Sheet) -> None:
    far = (sp.Integer(RIGHT), LIP[1] - WORK * (RIGHT - LIP[0]))
    ahead = (LIP[0], LIP[1] - RADIUS * sp.pi * WORK)  # what the other lip left half a turn ago
    start = (sp.Integer(LEFT), ahead[1] + WORK * (LIP[0] - LEFT))
    sheet.area("section", start, ahead, LIP, far, (RIGHT, BOTTOM), (LEFT, BOTTOM))
    sheet.line("edge", start, ahead, LIP, far)
    sheet.break_line((sp.Integer(LEFT), sp.Integer(BOTTOM)), (sp.Integer(RIGHT), sp.Integer(BOTTOM)), 5.0)


def _rubbing(sheet: Sheet) -> None:
    """Where the flank would have to be inside the work: hatched both ways."""
    heel = project(END, falls(END))
    # Where the land's far side comes out of the work.
    out = (LIP[1] - WORK * (heel[0] - LIP[0] + heel[1] * LEAN)) / (1 - WORK * LEAN)
    rubs = END - TOUCHING - HAIR
    sheet.area("section_other", *_flank(TOUCHING, larger(END, TOUCHING)), _rise(out, heel), when=rubs)
    middle = project(END, (falls(END) + WORK * END) / 2)
    sheet.line("thin", middle, (474, 188), (484, 188), when=rubs)
    sheet.circle("arrow", middle, DOT, when=rubs)
    sure = larger(CORNER, WORK - STEEP + HAIR)
    sheet.label("term", (490, 193), "start", "rubs here", when=smaller(rubs, sure))
    sheet.label("term", (490, 193), "start", "would rub", when=smaller(rubs, -sure))


def _outlines(sheet: Sheet) -> None:
    heel = project(END, falls(END))
    cover = [(0, TOP), (RIGHT, TOP), (RIGHT, 0), (0, 0)]
    left, right = _rise(TOP, LIP), _rise(TOP, heel)
    third = (right[0] - left[0]) / 3
    wave: list[Any] = ["C", (left[0] + third, TOP + 7), (right[0] - third, TOP - 7), right]
    sheet.path("cut", ["M", left, *wave, "L", *cover[1:], (0, TOP), "Z"])
    sheet.path("fine", ["M", left, *wave])
    ends_there = smaller(CORNER, END - point.LAND + HAIR)
    sheet.line("edge", heel, right, when=ends_there)
    sheet.line("fine", heel, right, when=-ends_there)
    sheet.line("edge", *_flank(sp.Integer(0), END))
    beyond = smaller(LEVEL, WIDEST)
    sheet.line(
        "hidden", *(project(q, falls(q)) for q in (END + (beyond - END) * i / 12 for i in range(13))),
        when=smaller(beyond - END, smaller(CORNER, ends_there)),
    )  # fmt: skip
    sheet.line("edge", LIP, left)
    sheet.circle("lip", LIP, 1.6)
    sheet.motion((sp.Integer(88), sp.Integer(150)), (sp.Integer(36), sp.Integer(150)))
    sheet.label("term", (36, 138), "start", "turning")
    sheet.label("term", (204, 116), "middle", "land")
    sheet.label("term", (RIGHT - 8, BOTTOM - 14), "end", "work")


def _angles(sheet: Sheet) -> None:
    level = (LIP[0] + 300, LIP[1])
    sheet.line("thin", LIP, level)
    outer, inner = (letter("reach", smaller(r, up / sp.Abs(sp.sin(RELIEF)))) for r, up in ((190, 112), (104, 78)))
    beyond = outer + 14
    sheet.line("thin", LIP, (LIP[0] + beyond * sp.cos(RELIEF), LIP[1] - beyond * sp.sin(RELIEF)))
    columns = ((inner, 92, RELIEF, LOSS), (outer, 250, RELIEF, 0), (276, 440, LOSS, 0))
    for radius, x, upper, lower in columns:
        start, sweep = letter("start", -larger(upper, lower)), letter("sweep", sp.Abs(upper - lower))
        top = sheet.narrow_angle(LIP, radius, start, sweep)
        sheet.line("thin", top, (x, 68))
    corner, inside = CORNER, -CORNER
    sheet.named((92, 46), "middle", "working relief", "{working_relief}", "working_relief")
    sheet.label("term", (250, 42), "middle", "lip relief", when=corner)
    sheet.label("value", (250, 61), "middle", "{lip_relief}", "lip_relief", "?", when=corner)
    sheet.label("term", (250, 42), "middle", "relief here", when=inside)
    sheet.label("value", (250, 61), "middle", "{relief_at_radius}", "relief_at_radius", "?", when=inside)
    sheet.label("term", (440, 42), "middle", "taken by the feed of {feed}", "feed", "taken by the feed")
    sheet.label("value", (440, 61), "middle", "{feed_relief_loss}", "feed_relief_loss", "?")


def _ways(sheet: Sheet) -> None:
    """How far behind the lip the flank touches and is level again, and how wide the land is, one below the other."""
    sheet.line("thin", (LIP[0], LIP[1] + 5), (LIP[0], ROWS[2] + OVERRUN))
    works, rises = STEEP - WORK, -STEEP
    touches = smaller(works, point.LAND - TOUCHING)
    _way(sheet, ROWS[0], TOUCHING, WORK * TOUCHING, touches)
    of = "touching"
    sheet.circle("arrow", project(TOUCHING, WORK * TOUCHING), 3.0, when=smaller(touches, END - TOUCHING))
    for when, said in (
        (touches, "touches the work {touching} behind the lip ({touching_way})"),
        (smaller(works, TOUCHING - point.LAND + HAIR), "clear of the work for {land} behind the lip"),
        (-works + HAIR, "no relief left at work: rubs from the lip on"),
    ):
        sheet.label("term", (LIP[0] + 8, ROWS[0] + 18), "start", said, of, "touches the work ?", when=when)
    _way(sheet, ROWS[1], LEVEL, sp.Integer(0), smaller(STEEP, WIDEST - LEVEL))
    for when, said in (
        (STEEP, "level with the lip again {level} behind it ({level_way})"),
        (rises + HAIR, "the flank stands ahead of the lip at once"),
    ):
        sheet.label("term", (LIP[0] + 8, ROWS[1] + 18), "start", said, "level", "level again ?", when=when)
    _way(sheet, ROWS[2], point.LAND, None, CORNER)
    sheet.label("term", (LIP[0] + 8, ROWS[2] + 18), "start", "land of {land} to the heel ({land_way})", when=CORNER)
    sheet.label(
        "term", (LIP[0] + 8, ROWS[2] + 18), "start", "at radius {radius}; where the land ends here is not drawn",
        "radius", "nearer to the axis; where the land ends here is not drawn", when=-CORNER,
    )  # fmt: skip


def _way(sheet: Sheet, y: int, back: Any, down: Any, when: Any) -> None:
    """A dimension from the lip to a place behind it, on a row of its own."""
    end = (LIP[0] + RADIUS * back, sp.Integer(y))
    length = RADIUS * back
    inward = sp.Piecewise((1, length > ROOM_FOR_ARROWS), (-1, True))
    tail = TAIL * (1 - inward) / 2
    top = BOTTOM + 4 if down is None else project(back, down)[1] + 5
    sheet.line("thin", (end[0], top), (end[0], y + OVERRUN), when=when)
    sheet.line("thin", (LIP[0] - tail, y), (end[0] + tail, y), when=when)
    sheet.arrow((LIP[0], sp.Integer(y)), (-inward, sp.Integer(0)), when=when)
    sheet.arrow(end, (inward, sp.Integer(0)), when=when)


def _words() -> list[Sentence]:
    relief = QUANTITIES["lip_relief"].usual
    usual = QUANTITIES["lip_relief"].the_usual
    return [
        Sentence("The cylinder through a place on the lip rolled out flat, tip down, the work under it. "),
        Sentence("The place is {radius} from the axis", "radius", "The radius is not told"),
        Sentence(
            "; the lip relief at the corner is {lip_relief}, ", "lip_relief", "; the lip relief is not told",
            "lip_relief", relief.low, relief.high, f"less than {usual}", f"within {usual}", f"more than {usual}",
        ),
        Sentence(". Here the relief is {relief_at_radius}", "relief_at_radius", ". The relief here is not told"),
        Sentence(
            "; the feed of {feed} takes {feed_relief_loss} of it", "feed_relief_loss",
            "; what the feed takes of it is not told",
        ),
        Sentence(
            " and leaves {working_relief}: ", "working_relief", "; what it leaves is not told.",
            "working_relief", 1e-9, QUANTITIES["working_relief"].usual.low,
            "the flank rubs straight behind the lip.", "hardly enough.", "the lip can go in.",
        ),
        Sentence(
            "", "touching", "", "verdict", 0.5, 1.5,
            " The flank keeps clear of the work over the whole land, {land} to the heel.",
            " It touches the work {touching} behind the lip, before the heel at {land}: a single plane flank so wide "
            "rubs.",
        ),
        Sentence(
            "", "touching", "", "verdict", 1.5, 2.5,
            "", " Carried on, it would touch the work {touching} behind the lip.",
        ),
        Sentence(
            "", "level", "", "level", 1e-9, 360.0,
            " The flank stands ahead of the lip at once.", " It is level with the lip again {level} behind it.",
        ),
    ]  # fmt: skip
