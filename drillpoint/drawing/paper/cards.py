"""The cards on true-scale paper: notches for the point, the chisel edge card and the relief wedges."""

from __future__ import annotations

import math
from collections.abc import Iterator

from drillpoint.drawing.paper.format import Format
from drillpoint.drawing.paper.marks import Card, Mark, Place, Ring, Stroke, Words, polar, segment
from drillpoint.quantities import QUANTITIES

WALL = 11.0  # how far the walls of a notch guide a drill
TICK, LONG_TICK = 1.2, 2.2
SMALL = 2.3
BODY = 14.0  # how much of the drill is shown over the wide notch
FOOT = 9.6  # under a notch, for its labels


def notch_strip(sheet: Format, width: float) -> Card:
    """A strip with a notch for each size, open at its upper edge; the walls centre the drill over the point."""
    rooms = [sheet.room(size) for size in sheet.sizes]
    beside = (width - sum(rooms)) / len(rooms)
    deep = max(WALL + sheet.depth(size) for size in sheet.sizes)
    height = deep + FOOT
    marks: list[Mark] = []
    edge: list[Place] = [(0.0, 0.0)]
    left = 0.0
    for size, room in zip(sheet.sizes, rooms, strict=True):
        middle = left + (room + beside) / 2
        edge += _notch(sheet, size, middle)
        marks += _size_marks(sheet, size, middle, deep)
        left += room + beside
    outline = Stroke("cut", (*edge, (width, 0.0), (width, height), (0.0, height)), closed=True)
    return Card("size notches", width, height, (outline, *marks))


def _notch(sheet: Format, size: float, middle: float) -> list[Place]:
    half, tip = size / 2, WALL + sheet.depth(size)
    return [(middle - half, 0.0), (middle - half, WALL), (middle, tip), (middle + half, WALL), (middle + half, 0.0)]


def _size_marks(sheet: Format, size: float, middle: float, deep: float) -> Iterator[Mark]:
    tip = (middle, WALL + sheet.depth(size))
    yield segment("axis", (middle, -3.0), (middle, tip[1] + 2.6))
    yield from scale(sheet, tip, sheet.corner(size))
    yield Words(sheet.size(size), (middle, deep + 5.2), 2.7, "middle", bold=True)
    yield Words(f"corner at {sheet.read_off(sheet.corner(size))}", (middle, deep + 8.2), 2.3, "middle")


def scale(sheet: Format, tip: Place, reach: float, *, numbered: bool = False) -> Iterator[Mark]:
    """The lip scale on both flanks of a notch, from the centre line outwards, below the flank."""
    step, longer, number = sheet.graduation
    for side in (-1, 1):
        along = (side * math.sin(math.radians(sheet.half_angle)), -math.cos(math.radians(sheet.half_angle)))
        below = (-side * along[1], side * along[0])
        for i in range(1, int(reach / step + 1e-9) + 1):
            foot = (tip[0] + i * step * along[0], tip[1] + i * step * along[1])
            length = LONG_TICK if i % longer == 0 else TICK
            yield segment("thin", foot, (foot[0] + length * below[0], foot[1] + length * below[1]))
            if numbered and i % number == 0:
                half_wide, half_tall = 0.3 * SMALL * len(sheet.reading(i)), SMALL / 2
                away = LONG_TICK + 0.6 + abs(below[0]) * half_wide + below[1] * half_tall
                at = (foot[0] + away * below[0], foot[1] + away * below[1] + SMALL / 3)
                yield Words(sheet.reading(i), at, SMALL, "middle")


def wide_notch(sheet: Format, width: float) -> Card:
    """One notch for every size up to the largest, with a numbered lip scale on both flanks."""
    step, _, number = sheet.graduation
    reach = math.ceil(sheet.corner(sheet.largest) / (step * number)) * step * number
    across = reach * math.sin(math.radians(sheet.half_angle)) + 1.0
    edge = BODY
    tip = (width / 2, edge + across / math.tan(math.radians(sheet.half_angle)))
    height = tip[1] + 9.0
    upper = ((0.0, edge), (tip[0] - across, edge), tip, (tip[0] + across, edge), (width, edge))
    outline = (*upper, (width, height), (0.0, height))
    marks: list[Mark] = [Stroke("cut", outline, closed=True), segment("axis", (tip[0], -1.0), (tip[0], tip[1] + 4.0))]
    marks += _body(sheet, tip)
    marks += scale(sheet, tip, reach, numbered=True)
    marks.append(Words("0", (tip[0] + 1.0, tip[1] + 4.2), SMALL))
    angle = QUANTITIES["point_angle"].show(sheet.point_angle)
    marks.append(
        Words(
            f"{angle}, lip scale in {'mm' if sheet.units == 'mm' else 'inches'}",
            (tip[0], height - 1.8),
            2.5,
            "middle",
            bold=True,
        )
    )
    return Card("wide notch", width, height, tuple(marks))


def _body(sheet: Format, tip: Place) -> Iterator[Mark]:
    """The largest drill as it lies in the notch: both sides of its body."""
    half, depth = sheet.largest / 2, sheet.depth(sheet.largest)
    for side in (-half, half):
        yield segment("part", (tip[0] + side, 0.0), (tip[0] + side, tip[1] - depth))


HOLE_AIR = 2.0
RAY = 19.0
EVERY = 5  # degrees between the rays
LABEL_RING = 6.0  # every other label stands so much further out


def chisel_card(sheet: Format) -> Card:
    """A card with a hole for the point, and rays for the chisel edge; as a right-hand drill is seen from the tip."""
    usual = QUANTITIES["chisel_edge_angle"].usual
    inner = max(sheet.largest / 2 + HOLE_AIR, 14.0)
    outer = inner + RAY
    width, height = 2 * (outer + 9), 2 * (outer + LABEL_RING)
    centre = (width / 2, height / 2)
    marks: list[Mark] = [
        Stroke("cut", ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height)), closed=True),
        *(Ring("cut" if size == sheet.largest else "thin", centre, size / 2) for size in sheet.sizes),
        segment("axis", (centre[0] - 1.5, centre[1]), (centre[0] + 1.5, centre[1])),
        segment("axis", (centre[0], centre[1] - 1.5), (centre[0], centre[1] + 1.5)),
    ]
    for turned in (0, 180):
        # The chisel edge stands at the acute supplement, counter-clockwise from the lip.
        marks.append(segment("thin", polar(centre, inner, turned), polar(centre, outer, turned)))
        marks.append(Ring("thin", centre, outer, turned + 180 - usual.high, turned + 180 - usual.low))
        for i, angle in enumerate(range(math.ceil(usual.low), math.floor(usual.high) + 1, EVERY)):
            ray, end = turned + 180 - angle, outer + (LABEL_RING if i % 2 else 0.0)
            marks.append(segment("thin", polar(centre, inner, ray), polar(centre, end, ray)))
            x, y = polar(centre, end + 3.6, ray)
            marks.append(Words(f"{angle}°", (x, y + SMALL / 3), SMALL, "middle"))
    for side, anchor in ((-1, "end"), (1, "start")):
        marks.append(Words("lip", (centre[0] + side * (outer + 1.5), centre[1] + 0.9), 2.7, anchor, bold=True))  # type: ignore[arg-type]
    marks.append(Words("Chisel edge angle", (3.0, 5.0), 2.7, bold=True))
    marks.append(Words("(obtuse)", (3.0, 8.6), 2.4))
    marks.append(Words("right-hand drill,", (width - 3.0, height - 5.8), 2.4, "end"))
    marks.append(Words("seen from the tip", (width - 3.0, height - 2.6), 2.4, "end"))
    return Card("chisel edge card", width, height, tuple(marks))


WEDGE_HEIGHT = 20.0
WEDGE_GAP = 5.0


def relief_wedges(sheet: Format, width: float) -> Card:
    """A wedge for each relief: its edge falls to the left, as the land of a right-hand drill does, tip upwards."""
    wide = (width - WEDGE_GAP * (len(sheet.reliefs) - 1)) / len(sheet.reliefs)
    marks: list[Mark] = []
    for i, relief in enumerate(sheet.reliefs):
        left = i * (wide + WEDGE_GAP)
        right = left + wide
        fall = wide * math.tan(math.radians(relief))
        outline = ((left, fall), (right, 0.0), (right, WEDGE_HEIGHT), (left, WEDGE_HEIGHT))
        marks.append(Stroke("cut", outline, closed=True))
        marks.append(segment("axis", (left, 0.0), (right, 0.0)))
        marks.append(Ring("thin", (right, 0.0), wide * 0.75, 180, 180 + relief))
        middle = (left + right) / 2
        marks.append(
            Words(f"{QUANTITIES['lip_relief'].show(relief)}", (middle, WEDGE_HEIGHT - 3.4), 3.4, "middle", bold=True)
        )
        marks.append(Words("corner", (right - 1.2, 5.4), 2.3, "end"))
    return Card("relief wedges", width, WEDGE_HEIGHT, tuple(marks))
