"""The end view of a ground point: seen from the tip, every edge where the wheel left it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from drillpoint.drawing.computed import Computed
from drillpoint.drawing.points import Curve, Point, along, heading, middle, towards
from drillpoint.drawing.scene import Bar, Range, Scene, Sentence
from drillpoint.drawing.sheet import OVERRUN, SHELF, TAIL, Sheet
from drillpoint.errors import LearnerError
from drillpoint.ground import ConicalFlank, Flute, GroundPoint
from drillpoint.quantities import QUANTITIES

if TYPE_CHECKING:
    from drillpoint.ground.flute import Array
    from drillpoint.ground.inspection import Inspection

WIDTH, HEIGHT = 580, 480
CENTRE = (282.0, 236.0)
RADIUS = 142.0
ARC = 60.0
CHISEL_OFFSET = 26.0
LABEL_COLUMN = 410.0
ON_CENTRE = 0.0005  # mm; nearer than this a point is on centre
STRAIGHT = 0.001  # of the diameter; a lip that bows less looks straight
BOW_COLUMN = 24.0
SQUARE, PAST_SQUARE = 90.0, "past square"  # a chisel edge that leans back: a sign of relief below zero
READ = (
    "diameter", "web", "point_angle", "lip_length", "lip_relief", "chisel_edge_angle", "chisel_edge_length",
    "chisel_edge_rake", "point_offset", "lip_height_difference", "heel_clearance",
)  # fmt: skip


def make(values: Mapping[str, float]) -> GroundPoint:
    """A point ground from cones, alike on both lips."""
    flank = ConicalFlank(
        cone_half_angle=values["cone_half_angle"],
        cone_tilt=values["cone_tilt"],
        apex_distance=values["apex_distance"],
        skew=values["skew"],
    )
    return GroundPoint(Flute(diameter=values["diameter"], web=values["web"]), flank)


def lay(sheet: Sheet, point: GroundPoint) -> tuple[Mapping[str, float], Bar | None]:
    """The point's outline, lips and chisel edge with their dimensions, and what an inspector reads."""
    if point.thinning_1 or point.thinning_2:
        raise LearnerError("this drawing shows no notches; draw the point without its thinning")
    seen = _View(point)
    inspected = point.inspect()
    bow = inspected.lip_bow_2
    bowed = abs(bow) - STRAIGHT * inspected.diameter
    sheet.circle("flute", CENTRE, RADIUS)
    sheet.circle("swept", CENTRE, RADIUS)
    around = _outline(point)
    outline = seen.line(*around)
    sheet.path("flank", [*outline, "Z"])
    sheet.path("edge", [*outline, "Z"])
    _facets(sheet, seen, around)
    sheet.centre_cross(CENTRE, RADIUS + 12)
    first = _lip(point, 1)
    second = (-first[0], -first[1]) if point.is_alike else _lip(point, 2)
    feet = _dimensions(sheet, seen, seen.points(*first)[-1], inspected.chisel_edge_angle)
    for lip in (first, second):
        sheet.path("lip", seen.line(*lip))
    sheet.path("chisel", seen.line(*_chisel(point)))
    _off_centre(sheet, feet, inspected)
    _bow(sheet, seen.points(*second), bow, bowed)
    sheet.number("bow_share", bow / inspected.diameter, like="web_ratio")
    values = {name: float(value) for name in READ if (value := getattr(inspected, name)) is not None}
    return values, sheet.bar((24.0, 452.0), 0.45 * 2 * RADIUS, seen.scale)


class _View:
    """From the point, in mm, to the sheet; a left-hand drill is seen in the mirror of the right-hand one."""

    def __init__(self, point: GroundPoint) -> None:
        self.point = point
        self.scale = RADIUS / point.flute.radius
        self.up = 1.0 if point.flute.hand == "right" else -1.0

    def at(self, x: float, y: float) -> Point:
        return (CENTRE[0] + self.scale * x, CENTRE[1] - self.up * self.scale * y)

    def points(self, x: Array, y: Array) -> list[Point]:
        return [self.at(float(a), float(b)) for a, b in zip(x, y, strict=True)]

    def line(self, x: Array, y: Array) -> Curve:
        first, *rest = self.points(x, y)
        return ["M", first, "L", *rest]


def _outline(point: GroundPoint) -> tuple[Array, Array]:
    """Where the top of the point ends: the flutes' walls, margins and lands, once round."""
    import numpy as np

    from drillpoint.ground.solids.section import Section
    from drillpoint.ground.solids.top import top_of

    section = Section(point.flute)
    m = section.margin_at
    # Closer together towards the heel, where the wall bends most.
    wall, land = np.linspace(0.0, 1.0, 25) ** 1.5, np.linspace(m, 1.0, 17)
    lip = np.linspace(0.0, 1.0, 7)[1:]
    # Along the wall of flute 1 to the corner, round margin and land 1 to the heel; then half a turn later the same.
    wall = np.concatenate([wall - 1, lip])
    legs = [(wall, np.zeros(len(wall)))]
    if m:
        legs += [(np.array([2.0, 2.0, 1.0]), np.array([0.0, m, m]))]
    legs += [(land * 0 + 1.0, land)]
    s, w = (np.concatenate(parts) for parts in zip(*legs, strict=True))
    s, w = np.concatenate([s, -s]), np.concatenate([w, 1 - w])
    radius = np.hypot(*section.untwisted(s, w, np.zeros_like(s)))
    x, y, _ = top_of(point, section).lift(s, w, -radius * point.flute.design_slope)
    return x, y


def _lip(point: GroundPoint, number: int) -> tuple[Array, Array]:
    import numpy as np

    lip, foot = point.lips[number - 1], point.feet[number - 1]
    place = lip.at(np.linspace(float(foot.along[0]), float(lip.corner.along[0]), 17))
    sign = 1.0 if number == 1 else -1.0
    return sign * place.x, sign * place.y


def _chisel(point: GroundPoint) -> tuple[Array, Array]:
    import numpy as np

    trace = point.chisel.trace(np.linspace(0.0, 1.0, 13))
    return trace[:, 0], trace[:, 1]


def _facets(sheet: Sheet, seen: _View, around: tuple[Array, Array]) -> None:
    from drillpoint.drawing.facet_edges import facet_edges

    lines = list(facet_edges(seen.point, around))
    for ends in lines:
        sheet.line("edge", *seen.points(*ends))
    sheet.number("facet_lines", len(lines), like="web_ratio")


def _dimensions(sheet: Sheet, seen: _View, corner: Point, chisel_edge_angle: float) -> tuple[Point, Point]:
    first, second = (
        seen.at(float(end[0]), float(end[1])) for end in (seen.point.chisel.first, seen.point.chisel.second)
    )
    x, y = CENTRE
    half = sheet.dimension((x, y - RADIUS), (x, y + RADIUS), (-1.0, 0.0), RADIUS + 64, opening=13)
    sheet.written(half, "Ø{diameter}", "diameter", "Ø ?")
    _web(sheet, first, second)
    forward = towards(second, first)
    outside = (forward[1], -forward[0]) if seen.up > 0 else (-forward[1], forward[0])
    sheet.dimension(second, first, outside, CHISEL_OFFSET, outward=True)
    top = (LABEL_COLUMN - 22, 54.0)
    tail = along(along(first, outside, CHISEL_OFFSET), forward, TAIL)
    sheet.leader(tail, top, "chisel edge", "{chisel_edge_length}", "chisel_edge_length")
    bearing, turn = _angle_at(first, corner, second)
    back = heading(bearing + turn)
    reach = math.dist(first, second)
    sheet.line("thin", along(first, back, reach), along(first, back, max(reach, ARC + OVERRUN)))
    arc = sheet.angle(first, ARC, bearing, turn)
    elbow = (LABEL_COLUMN - 22, 415.0)
    sheet.leader(arc, elbow, "chisel edge angle", "{chisel_edge_angle}", "chisel_edge_angle")
    for words, side in (("(obtuse)", 1.0), (f"({PAST_SQUARE})", -1.0)):
        sheet.label("term", (LABEL_COLUMN, 440.0), "start", words, when=side * (chisel_edge_angle - SQUARE))
    return first, second


def _angle_at(at: Point, lip_end: Point, chisel_end: Point) -> tuple[float, float]:
    """Direction of the lip in the frame, and how far clockwise the chisel edge is from there."""
    start = math.atan2(lip_end[1] - at[1], lip_end[0] - at[0])
    end = math.atan2(chisel_end[1] - at[1], chisel_end[0] - at[0])
    return start, (end - start) % (2 * math.pi)


def _web(sheet: Sheet, first: Point, second: Point) -> None:
    far = CENTRE[0] + RADIUS + 34
    upper, lower = sorted((first[1], second[1]))
    for level in (upper, lower):
        sheet.line("thin", (CENTRE[0] + RADIUS + 5, level), (far + OVERRUN, level))
    sheet.line("thin", (far, upper - TAIL - 18), (far, lower + TAIL))
    sheet.arrow((far, upper), (0.0, 1.0))
    sheet.arrow((far, lower), (0.0, -1.0))
    sheet.label("term", (far + 9, upper - 27), "start", "web")
    sheet.label("value", (far + 9, upper - 8), "start", "{web}", "web", "?")


def _off_centre(sheet: Sheet, feet: tuple[Point, Point], inspected: Inspection) -> None:
    """Where the middle of the chisel edge is beside the axis, how far."""
    off = inspected.point_offset - ON_CENTRE
    place = middle(*feet)
    elbow = (LABEL_COLUMN - 22, 130.0)
    sheet.line("thin", place, elbow, (elbow[0] + SHELF, elbow[1]), when=off)
    sheet.label("term", (LABEL_COLUMN, 118.0), "start", "point off centre", when=off)
    sheet.label("value", (LABEL_COLUMN, 137.0), "start", "{point_offset}", "point_offset", "?", when=off)


def _bow(sheet: Sheet, lip: list[Point], bow: float, bowed: float) -> None:
    """The straight line between the ends of lip 2, and how far the lip stands off it half way."""
    straight = middle(lip[0], lip[-1])
    elbow = (BOW_COLUMN + 98.0, 402.0)
    sheet.number("bow_size", abs(bow), like="lip_bow")
    sheet.line("thin", lip[0], lip[-1], when=bowed)
    sheet.line("thin", middle(straight, lip[len(lip) // 2]), elbow, (elbow[0] - SHELF, elbow[1]), when=bowed)
    for shape, side in (("lip hollow by", -bow), ("lip bulges by", bow)):
        sheet.label("term", (BOW_COLUMN, 396.0), "start", shape, when=min(side, bowed))
    sheet.label("value", (BOW_COLUMN, 415.0), "start", "{bow_size}", "bow_size", "?", when=bowed)


def _words() -> list[Sentence]:
    psi = QUANTITIES["chisel_edge_angle"].usual
    usual = "the usual 120° to 135°"
    return [
        Sentence("End view of a ground point, seen from the tip. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(", web {web}", "web", ", web not told"),
        Sentence(". Point angle {point_angle}", "point_angle", ". Point angle not told"),
        Sentence(", lip relief {lip_relief} at the corner", "lip_relief", ", lip relief not told"),
        Sentence(
            ". The chisel edge is {chisel_edge_length} long", "chisel_edge_length",
            ". The chisel edge length is not told",
        ),
        Sentence(
            "; its angle to the lips is {chisel_edge_angle}", "chisel_edge_angle",
            "; its angle to the lips is not told",
            "chisel_edge_angle", SQUARE, 180.0, f", {PAST_SQUARE}", " (obtuse)", "",
        ),
        Sentence(
            ", ", "chisel_edge_angle", "", "chisel_edge_angle", psi.low, psi.high,
            f"flatter than {usual}", f"within {usual}", f"steeper than {usual}",
        ),
        Sentence(
            ". The point is ", "point_offset", ". How far the point is off centre is not told", "point_offset",
            0.0, ON_CENTRE, "", "on centre", "{point_offset} off centre",
        ),
        Sentence("."),
        Sentence(
            "", "bow_size", " Whether the lips are straight is not told.", "bow_share", -STRAIGHT, STRAIGHT,
            " Lip 2 is hollow: half way along it lies {bow_size} behind a straight line.", "",
            " Lip 2 bulges: half way along it stands {bow_size} ahead of a straight line.",
        ),
        Sentence("", "", "", "facet_lines", 0, 0.5, "", "", " Two facets lie behind a lip, with an edge between them."),
    ]  # fmt: skip


def _states() -> Scene:
    # The middle of the ranges gives a 118° point of usual relief and chisel edge; our choice, not published.
    ranges: tuple[Any, ...] = (
        Range("diameter", 1.0, 40.0, 10.0),
        Range("web", 0.1, 0.2, 0.15, share_of="diameter"),
        Range("cone_half_angle", 22.0, 32.0, 25.0),
        Range("cone_tilt", 30.0, 38.0, 34.0),
        Range("apex_distance", 0.8, 1.5, 0.95, share_of="diameter"),
        Range("skew", 0.08, 0.18, 0.145, share_of="diameter"),
    )
    return Scene(
        name="ground_end_view",
        title="End view of a ground point, seen from the tip",
        width=WIDTH,
        height=HEIGHT,
        needs=tuple(r.name for r in ranges),
        ranges=ranges,
        words=_words(),
    )


SCENE = Computed(states=_states(), kind=GroundPoint, make=make, lay=lay)
