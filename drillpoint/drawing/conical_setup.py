"""How the cone stands to the drill whose flank is part of it: seen square to the lips, and from the tip below that.

The drill swings past the wheel about the cone's axis, so the wheel's face touches the cone along a line through the
apex. Cone, lips and chisel edge stand where they are on the ground point; no machine is drawn.
"""

from __future__ import annotations

import math
from collections.abc import Mapping

from drillpoint.drawing import ground_end_view
from drillpoint.drawing.computed import Computed
from drillpoint.drawing.points import Curve, Point, along, heading, polar, wave
from drillpoint.drawing.scene import Bar, Scene, Sentence
from drillpoint.drawing.sheet import DOT, OVERRUN, Sheet
from drillpoint.drawing.wheel import THICK, wheel_face
from drillpoint.drawing.work import across, beside, upright
from drillpoint.errors import LearnerError
from drillpoint.ground import ConicalFlank, GroundPoint
from drillpoint.quantities import QUANTITIES

WIDTH, HEIGHT = 580, 610
AXIS, TOP = 330.0, 118.0  # of the drill; the apex's level in the view square to the lips
BELOW = 480.0  # the drill axis in the view from the tip
WIDEST, ACROSS, TALLEST = 84.0, 300.0, 176.0
BODY = 62.0  # of the body that is drawn below the corners
TILT_ARC, HALF_ARC = 76.0, 104.0
TURNED = 0.005  # degrees; less is no turn
READ = ("diameter", "web", "point_angle", "lip_relief", "chisel_edge_angle_at_axis")
SETTINGS = ("cone_half_angle", "cone_tilt", "apex_distance", "skew", "flank_turn")


class _View:
    """A cone and its drill: the drill turned as it is while it is ground, in mm from its axis and its scale."""

    def __init__(self, point: GroundPoint, flank: ConicalFlank) -> None:
        import numpy as np

        self.flank, self.point = flank, point
        self.radius = point.flute.radius
        self.up = 1.0 if point.flute.hand == "right" else -1.0
        lip, turn = point.lips[0], math.radians(flank.flank_turn)
        outer = lip.at_radius(np.array([self.radius]))
        place = lip.at(np.linspace(float(point.feet[0].along[0]), float(outer.along[0]), 17))
        x, y = place.x, place.y
        self.lip = np.stack([x * math.cos(turn) + y * math.sin(turn), y * math.cos(turn) - x * math.sin(turn), place.z])
        self.half, self.tilt = math.radians(flank.cone_half_angle), math.radians(flank.cone_tilt)
        self.apex_height = _apex_height(point, flank)
        fall = self.apex_height - float(self.lip[2, -1])
        self.scale = min(
            WIDEST / self.radius, ACROSS / (flank.apex_distance + 1.45 * self.radius), TALLEST / max(fall, self.radius)
        )
        self.apex = self.side(-flank.apex_distance, self.apex_height)

    def side(self, x: float, z: float) -> Point:
        """A place seen square to the lips."""
        return (AXIS + self.scale * x, TOP + self.scale * (self.apex_height - z))

    def tip(self, x: float, y: float) -> Point:
        """A place seen from the tip."""
        return (AXIS + self.scale * x, BELOW - self.up * self.scale * y)

    def generator(self, out: float) -> Point:
        """The place of the cone's upper line that is so far out from the drill axis, seen square to the lips."""
        angle = math.pi / 2 - self.tilt - self.half
        return along(self.apex, heading(angle), self.scale * (out + self.flank.apex_distance) / math.cos(angle))


def _apex_height(point: GroundPoint, flank: ConicalFlank) -> float:
    """How high the cone's apex lies, in lip 1's frame: a steep way down its upper line to the surface and back."""
    import numpy as np

    reach = flank.apex_distance + point.flute.radius
    slope = 1 / math.tan(math.radians(flank.cone_tilt + flank.cone_half_angle))
    turn = math.radians(flank.flank_turn)
    x, y = point.flute.radius, flank.skew
    place = x * math.cos(turn) - y * math.sin(turn), x * math.sin(turn) + y * math.cos(turn)
    height = flank.over(point.flute, 1).height(np.array([place[0]]), np.array([place[1]]))
    return float(height[0]) + slope * reach


def lay(sheet: Sheet, point: GroundPoint) -> tuple[Mapping[str, float], Bar | None]:
    """Cone, wheel and drill in both views with the settings, and what an inspector reads off the point."""
    flank = point.flank_1
    if not isinstance(flank, ConicalFlank):
        raise LearnerError(
            "this drawing shows how a cone stands to its drill, and lip 1 of this point is ground from a "
            f"{type(flank).__name__}; give a point with a ConicalFlank, or draw the plane_setup"
        )
    seen = _View(point, flank)
    _square_to_the_lips(sheet, seen)
    _angles(sheet, seen)
    _from_the_tip(sheet, seen)
    inspected = point.inspect()
    read = {name: float(getattr(inspected, name)) for name in READ}
    settings = {name: float(getattr(flank, name)) for name in SETTINGS}
    return {**read, **settings}, sheet.bar((24.0, 594.0), 90.0, seen.scale)


def _square_to_the_lips(sheet: Sheet, seen: _View) -> None:
    lip = [seen.side(float(x), float(z)) for x, z in zip(seen.lip[0], seen.lip[2], strict=True)]
    other = [(2 * AXIS - x, y) for x, y in lip]
    bottom, reach = lip[-1][1] + BODY, seen.scale * seen.radius
    right, left = (AXIS + reach, bottom), (AXIS - reach, bottom)
    lower = wave(right, left, 6.0)
    corners = (right[0], lip[-1][1]), (left[0], lip[-1][1])
    body: Curve = ["M", *lip, corners[0], right, *lower, "L", corners[1], *reversed(other), "Z"]
    body.insert(2, "L")
    sheet.path("land", body)
    for foot, corner, end in zip((right, left), corners, (lip[-1], other[-1]), strict=True):
        sheet.line("edge", end, corner, foot)
    sheet.path("fine", ["M", right, *lower])
    far = seen.generator(1.4 * seen.radius)
    length = math.dist(seen.apex, far)
    lower_line = heading(math.pi / 2 - seen.tilt + seen.half)
    sheet.line("swept", seen.apex, along(seen.apex, lower_line, min(length, (bottom - TOP) / max(lower_line[1], 0.1))))
    sheet.line("swept", seen.apex, far)
    away = heading(-seen.tilt - seen.half)
    start = seen.generator(-0.3 * seen.radius)
    wheel_face(sheet, start, seen.generator(1.25 * seen.radius), away)
    for edge in (lip, other):
        sheet.line("lip", *edge)
    sheet.line("chisel", other[0], lip[0])
    sheet.line("centre", (AXIS, TOP - 34), (AXIS, bottom + 14))
    cone_axis = heading(math.pi / 2 - seen.tilt)
    axis_length = min(length, (bottom - TOP) / max(cone_axis[1], 0.1))
    sheet.line("centre", along(seen.apex, cone_axis, -16), along(seen.apex, cone_axis, axis_length))
    turning = along(seen.apex, cone_axis, axis_length)
    sheet.turning(turning, 15.0, math.pi / 2 - seen.tilt - 1.3, 2.6)
    sheet.circle("arrow", seen.apex, DOT)
    face = along(seen.generator(0.9 * seen.radius), away, THICK / 2)
    sheet.leader(face, (420.0, TOP - 6), "wheel", "", end="dot")
    sheet.label("term", (420.0, 330.0), "start", "square to the lips")


def _angles(sheet: Sheet, seen: _View) -> None:
    x, y = seen.apex
    level = 62.0
    across(sheet, x, AXIS, level, TOP - 8)
    sheet.label("term", ((x + AXIS) / 2, level - 27), "middle", "apex distance")
    sheet.label("value", ((x + AXIS) / 2, level - 8), "middle", "{apex_distance}", "apex_distance", "?")
    sheet.line("thin", (x, y + 6), (x, y + TILT_ARC + OVERRUN))
    start, sweep = math.pi / 2 - seen.tilt, seen.tilt
    middle = sheet.angle(seen.apex, TILT_ARC, min(start, start + sweep), abs(sweep))
    sheet.line("thin", middle, (52.0, 288.0))
    sheet.named((16.0, 308.0), "start", "cone tilt", "{cone_tilt}", "cone_tilt")
    middle = sheet.angle(seen.apex, HALF_ARC, start - seen.half, seen.half)
    sheet.line("thin", middle, polar(middle, 22.0, math.pi - seen.tilt), (72.0, 352.0))
    sheet.named((16.0, 372.0), "start", "cone half angle", "{cone_half_angle}", "cone_half_angle")


def _from_the_tip(sheet: Sheet, seen: _View) -> None:
    centre, reach = (AXIS, BELOW), seen.scale * seen.radius
    sheet.circle("land", centre, reach)
    sheet.circle("swept", centre, reach)
    sheet.centre_cross(centre, reach + 10)
    lip = [seen.tip(float(x), float(y)) for x, y in zip(seen.lip[0], seen.lip[1], strict=True)]
    other = [(2 * AXIS - x, 2 * BELOW - y) for x, y in lip]
    apex = seen.tip(-seen.flank.apex_distance, seen.flank.skew)
    axis = apex[1]
    sheet.line("centre", (apex[0] - 16, axis), (AXIS + reach + 40, axis))
    sheet.circle("arrow", apex, DOT)
    for edge in (lip, other):
        sheet.line("lip", *edge)
    sheet.line("chisel", other[0], lip[0])
    upper, lower = sorted(((AXIS + reach, axis), (AXIS + reach, BELOW)), key=lambda place: place[1])
    skew = upright(sheet, upper, lower, AXIS + reach + 30)
    beside(sheet, skew, BELOW - 34, "skew", "skew", "right")
    turned = abs(seen.flank.flank_turn) - TURNED
    sheet.label("term", (452.0, 524.0), "start", "drill turned by", when=turned)
    sheet.label("value", (452.0, 543.0), "start", "{flank_turn}", "flank_turn", "?", when=turned)
    sheet.label("term", (apex[0] - 22, axis + 5), "end", "apex")
    sheet.label("term", (420.0, 574.0), "start", "from the tip")


def _words() -> list[Sentence]:
    psi, relief = QUANTITIES["chisel_edge_angle"].usual, QUANTITIES["lip_relief"].usual
    turns, slopes = QUANTITIES["chisel_edge_angle"].the_usual, QUANTITIES["lip_relief"].the_usual
    return [
        Sentence("A grinding cone and its drill, square to the lips and from the tip; no machine is drawn. "),
        Sentence("Diameter {diameter}", "diameter", "Diameter not told"),
        Sentence(", web {web}", "web", ", web not told"),
        Sentence(". The cone has a half angle of {cone_half_angle}", "cone_half_angle", ". The half angle is not told"),
        Sentence("; its axis is tilted {cone_tilt} from the drill axis", "cone_tilt", "; the tilt is not told"),
        Sentence(" and passes {skew} beside it", "skew", "; the skew is not told"),
        Sentence(
            "; its apex lies {apex_distance} beyond the drill axis", "apex_distance", "; the apex distance is not told"
        ),
        Sentence(
            "", "flank_turn", "", "flank_turn", -TURNED, TURNED,
            "; the drill is turned by {flank_turn}", "", "; the drill is turned by {flank_turn}",
        ),
        Sentence(". That grinds a point angle of {point_angle}", "point_angle", ". The point angle is not told"),
        Sentence(
            ", a lip relief of {lip_relief}, ", "lip_relief", ", a lip relief that is not told",
            "lip_relief", relief.low, relief.high, f"less than {slopes}", f"within {slopes}", f"more than {slopes}",
        ),
        Sentence(
            ", and a chisel edge that crosses the axis at {chisel_edge_angle_at_axis} (obtuse), ",
            "chisel_edge_angle_at_axis", ".", "chisel_edge_angle_at_axis", psi.low, psi.high,
            f"flatter than {turns}.", f"within {turns}.", f"steeper than {turns}.",
        ),
    ]  # fmt: skip


def _states() -> Scene:
    # The same givens as for the end view, so that one point is ground for both.
    ground = ground_end_view.SCENE.states
    return Scene(
        name="conical_setup",
        title="How a grinding cone stands to its drill",
        width=WIDTH,
        height=HEIGHT,
        needs=ground.needs,
        ranges=ground.ranges,
        words=_words(),
    )


SCENE = Computed(states=_states(), kind=GroundPoint, make=ground_end_view.make, lay=lay)
