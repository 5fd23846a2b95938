"""The side view square to the lips: the point seen along y, tip upwards."""

from __future__ import annotations

from typing import Any

import sympy as sp

from drillpoint.drawing import plain_point as point
from drillpoint.drawing.points import Curve, Point, along
from drillpoint.drawing.scene import Scene, Sentence
from drillpoint.drawing.sheet import GAP, OVERRUN, Sheet
from drillpoint.relation.symbols import symbols

WIDTH, HEIGHT = 580, 480
APEX = (sp.Integer(296), sp.Integer(122))
RADIUS = sp.Integer(116)
BREAK = sp.Integer(398)
WAVE = 9  # of the break line, above and below

ARC = 66.0
LIP_OFFSET = 48.0
PIECES = 4

# Heights are measured from the foot of the sharp cone, in half diameters.
BOTTOM = point.height - (BREAK + WAVE - APEX[1]) / RADIUS  # the body is drawn on under the break line
CORNER_HEIGHT = point.on_flank(point.outer_corner)
CORNER = (point.outer_corner[0], CORNER_HEIGHT)
CHISEL_CORNER = (point.chisel_corner[0], point.on_flank(point.chisel_corner))
# Where the leading edge of a land passes the outline of the body.
SHOULDER_HEIGHT = CORNER_HEIGHT - point.omega / sp.tan(point.HELIX)


def project(place: Point) -> Point:
    """A place seen along y (x to the right, z up) on the sheet."""
    return (APEX[0] + RADIUS * place[0], APEX[1] + RADIUS * (point.height - place[1]))


def projected(curve: Curve) -> Curve:
    """A curve seen along y on the sheet."""
    return [step if isinstance(step, str) else project(step) for step in curve]


def mirrored(place: Point) -> Point:
    """The other side of the axis, as seen."""
    return (-place[0], place[1])


def build() -> tuple[Scene, list[Any]]:
    """The scene and the expressions of its coordinates."""
    sheet = Sheet()
    _drill(sheet)
    sheet.line("centre", (APEX[0], APEX[1] - 24), (APEX[0], BREAK + 14))
    _point_angle(sheet)
    _lip_length(sheet)
    _point_height(sheet)
    _diameter(sheet)
    sheet.number("half_point_angle", symbols().point_angle / 2, like="point_angle")
    scene = sheet.scene(
        name="side_view",
        title="Side view of a twist drill, square to the lips, tip upwards",
        width=WIDTH,
        height=HEIGHT,
        **point.STATED,
        bar=sheet.bar((24.0, 452.0), 0.45 * 2 * float(RADIUS), 2 * RADIUS / symbols().diameter),
        words=_words(),
    )
    return scene, sheet.expressions


def _seen(curve: Curve) -> Curve:
    """A curve on flank 1, given in the end view, as seen along y."""
    return [step if isinstance(step, str) else (step[0], point.on_flank(step)) for step in curve]


class _Body:
    """The edges of the body below the point, each from its upper end down to the break."""

    def __init__(self) -> None:
        turn = sp.Max(0, point.turn_down_to(BOTTOM, SHOULDER_HEIGHT))
        heel_height = point.on_flank(point.heel)
        heel_turn = sp.Max(0, point.turn_down_to(BOTTOM, heel_height))
        # Seen along y, the leading edge of one land hides behind the heel of the other from this turn on.
        lag = point.omega - point.heel_angle  # of the heel behind the leading edge at the corner
        gap = sp.pi - lag + (CORNER_HEIGHT - heel_height) * sp.tan(point.HELIX)
        crossing = sp.atan2(1 - point.CLEARED * sp.cos(gap), point.CLEARED * sp.sin(gap))
        meet = sp.Max(0, sp.Min(turn, crossing))
        meet_height = SHOULDER_HEIGHT - meet / sp.tan(point.HELIX)
        at_break = point.turn_down_to(BOTTOM, SHOULDER_HEIGHT) - WAVE / RADIUS * sp.tan(point.HELIX)
        self.half_width_at_break = sp.Max(sp.cos(sp.Max(0, at_break)), point.CLEARED * sp.cos(gap - at_break))
        self.leading = point.helix(sp.Integer(0), SHOULDER_HEIGHT, turn, sp.Integer(1), PIECES)
        self.leading_outline = point.helix(sp.Integer(0), SHOULDER_HEIGHT, meet, sp.Integer(1), 2)
        self.heel = point.helix(point.heel_angle, heel_height, heel_turn, point.CLEARED, PIECES)
        rest = turn - meet
        self.heel_outline = point.helix(gap - meet, meet_height, rest, point.CLEARED, 2)
        margin_angle = point.omega - point.MARGIN
        margin_foot = (sp.cos(margin_angle), sp.sin(margin_angle))
        hidden = sp.Max(margin_angle, 0)
        margin_height = point.on_flank(margin_foot) - hidden / sp.tan(point.HELIX)
        margin_turn = sp.Max(0, point.turn_down_to(BOTTOM, margin_height))
        self.margin = point.helix(margin_angle - hidden, margin_height, margin_turn, sp.Integer(1), PIECES)


def _drill(sheet: Sheet) -> None:
    body = _Body()
    shoulder: Curve = ["L", (sp.Integer(1), SHOULDER_HEIGHT)]
    corner_edge = _seen(["M", point.outer_corner, *point.arc(sp.Integer(1), point.omega, sp.Integer(0), 1)])
    right: Curve = [*corner_edge[1:], *shoulder, *body.leading_outline[2:], *body.heel_outline[2:]]
    left: Curve = [step if isinstance(step, str) else mirrored(step) for step in right]
    top: Curve = ["M", mirrored(CHISEL_CORNER), "L", CHISEL_CORNER, "L"]
    sheet.path("land", projected([*top, *right, "L", left[-1], *_reversed(left), "Z"]))
    _flutes(sheet, body)
    _flank(sheet)
    for outline in (right, left):
        sheet.path("edge", projected(["M", *outline]))
    sheet.path("edge", projected(body.leading))
    sheet.path("edge", projected(body.heel))
    sheet.path("fine", projected(body.margin))
    sheet.path("edge", projected(_left_margin()))
    _break_line(sheet, body)
    for side in (CHISEL_CORNER, mirrored(CHISEL_CORNER)):
        sheet.line("thin", project(side), APEX)
    sheet.line("lip", project(CHISEL_CORNER), project(CORNER))
    sheet.line("lip", project(mirrored(CHISEL_CORNER)), project(mirrored(CORNER)))
    sheet.line("chisel", project(mirrored(CHISEL_CORNER)), project(CHISEL_CORNER))


def _left_margin() -> Curve:
    """The leading edge of land 2 from its corner to the outline of the body, on the near side."""
    return point.helix(sp.pi + point.omega, CORNER_HEIGHT, point.omega, sp.Integer(1), 1)


def _flutes(sheet: Sheet, body: _Body) -> None:
    near: Curve = [
        "M", mirrored(CHISEL_CORNER), "L", mirrored(CORNER), *_left_margin()[2:],
        *[s if isinstance(s, str) else mirrored(s) for s in (*body.leading_outline[2:], *body.heel_outline[2:])],
        "L", body.heel[-1], *_reversed(body.heel[1:]), *_seen(point.heel_edge())[2:], "Z",
    ]  # fmt: skip
    sheet.path("flute", projected(near))
    far: Curve = [
        *body.leading, "L", body.heel_outline[-1], *_reversed(body.heel_outline[1:]),
        *_reversed(body.leading_outline[1:]), "Z",
    ]  # fmt: skip
    sheet.path("flute", projected(far))


def _flank(sheet: Sheet) -> None:
    edge, back = _seen(point.flank_edge()), _seen(point.heel_edge())
    sheet.path("flank", projected([*edge, *back[2:], "L", CHISEL_CORNER, "Z"]))
    sheet.path("edge", projected([*edge, *back[2:]]))


def _break_line(sheet: Sheet, body: _Body) -> None:
    half = body.half_width_at_break * RADIUS
    x0, x1, y = APEX[0] - half, APEX[0] + half, BREAK
    wave: Curve = [
        "M", (x0, y), "C", (x0 + half / 3, y + WAVE), (x0 + half * 2 / 3, y + WAVE), (APEX[0], y),
        "C", (x1 - half * 2 / 3, y - WAVE), (x1 - half / 3, y - WAVE), (x1, y),
    ]  # fmt: skip
    beyond, below = RADIUS + 3, sp.Integer(HEIGHT)
    corners = ((APEX[0] + beyond, y), (APEX[0] + beyond, below), (APEX[0] - beyond, below), (APEX[0] - beyond, y))
    sheet.path("cut", [*wave, "L", *corners, "Z"])
    sheet.path("fine", wave)


def _reversed(curve: Curve) -> Curve:
    """A curve of one start point and cubic or straight pieces, without its "M", run backwards from its end point."""
    points: list[tuple[str, list[Point]]] = []
    letter = "M"
    for step in curve:
        if isinstance(step, str):
            letter = step
        elif letter == "C" and points and points[-1][0] == "C" and len(points[-1][1]) < 3:
            points[-1][1].append(step)
        else:
            points.append((letter, [step]))
    run: Curve = []
    for i in range(len(points) - 1, 0, -1):
        kind, own = points[i]
        before = points[i - 1][1][-1]
        run += ["C", own[1], own[0], before] if kind == "C" else ["L", before]
    return run


def _point_angle(sheet: Sheet) -> None:
    for side in (-1, 1):
        up = (side * sp.sin(point.kappa), -sp.cos(point.kappa))
        sheet.line("thin", along(APEX, up, GAP), along(APEX, up, ARC + OVERRUN))
    sheet.angle(APEX, ARC, -sp.pi / 2 - point.kappa, 2 * point.kappa)
    above = APEX[1] - ARC
    sheet.label("term", (APEX[0], above - 29), "middle", "point angle")
    sheet.label("value", (APEX[0], above - 9), "middle", "{point_angle} (2 × {half_point_angle})", "point_angle", "?")


def _lip_length(sheet: Sheet) -> None:
    outside = (sp.cos(point.kappa), -sp.sin(point.kappa))
    middle = sheet.dimension(project(CHISEL_CORNER), project(CORNER), outside, LIP_OFFSET)
    at = along(middle, outside, 10.0)
    sheet.label("term", (at[0] + 4, at[1] - 18), "start", "lip length")
    sheet.label("value", (at[0] + 4, at[1] + 1), "start", "{lip_length}", "lip_length", "?")


def _point_height(sheet: Sheet) -> None:
    line = APEX[0] - RADIUS - 38
    foot = project((sp.Integer(-1), sp.Integer(0)))
    sheet.line("thin", (APEX[0] - GAP, APEX[1]), (line - OVERRUN, APEX[1]))
    sheet.line("thin", (foot[0] - GAP, foot[1]), (line - OVERRUN, foot[1]))
    sheet.line("thin", (line, APEX[1]), (line, foot[1]))
    sheet.arrow((line, APEX[1]), (sp.Integer(0), sp.Integer(-1)))
    sheet.arrow((line, foot[1]), (sp.Integer(0), sp.Integer(1)))
    middle = (APEX[1] + foot[1]) / 2
    sheet.label("term", (line - 9, middle - 4), "end", "point height")
    sheet.label("value", (line - 9, middle + 15), "end", "{point_height}", "point_height", "?")


def _diameter(sheet: Sheet) -> None:
    below = sp.Integer(446)
    x = APEX[0]
    top = project((sp.Integer(1), SHOULDER_HEIGHT))[1]
    for side in (-1, 1):
        sheet.line("thin", (x + side * RADIUS, top + GAP), (x + side * RADIUS, below + OVERRUN))
        sheet.arrow((x + side * RADIUS, below), (sp.Integer(side), sp.Integer(0)))
    sheet.line("thin", (x - RADIUS, below), (x + RADIUS, below))
    sheet.written((x, below), "Ø{diameter}", "diameter", "Ø ?", above=True)


def _words() -> list[Sentence]:
    return [
        Sentence("Side view of a two-flute twist drill, square to the lips, tip upwards. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(
            ", point angle {point_angle} ({half_point_angle} each side), ", "point_angle", ", point angle not told",
            "point_angle", 117.5, 118.5,
            "sharper than the usual 118°", "the usual point", "blunter than the usual 118°",
        ),
        Sentence(". Each lip is {lip_length} long", "lip_length", ". The lip length is not told"),
        Sentence("; the point is {point_height} high.", "point_height", "; the point height is not told."),
    ]  # fmt: skip
