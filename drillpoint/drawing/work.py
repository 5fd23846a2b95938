"""The work cut open along the axis of its hole: hatched metal between freehand breaks, and the dimensions beside it."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Any, Literal

from drillpoint.drawing.points import Point, either, smaller, wave
from drillpoint.drawing.sheet import OVERRUN, ROOM_FOR_ARROWS, TAIL, Sheet

SAG = 5.0
ELBOW = 13.0
LABEL_PITCH = 46.0
"""From the middle of one label of two lines to that of the next below it."""

Side = Literal["left", "right"]


def cut_block(sheet: Sheet, profile: Sequence[Point], left: Any, right: Any, bottom: Any) -> None:
    """Work with a hole in its upper face, broken off all round.

    profile: the wall of the hole, from its left edge on the face down and up to its right edge.
    """
    face = profile[0][1]
    corners = (right, face), (right, bottom), (left, bottom), (left, face)
    sheet.path("section", ["M", corners[3], "L", *profile, corners[0], *_round(corners), "Z"])
    sheet.path("fine", ["M", corners[0], *_round(corners)])
    sheet.line("edge", corners[3], *profile, corners[0])


def cut_plate(sheet: Sheet, wall: Sequence[Point], left: Any, side: Side) -> None:
    """One side of a plate with a hole through it. wall: from the upper face to the lower; left: where it breaks off."""
    upper, lower = (left, wall[0][1]), (left, wall[-1][1])
    # A thin sheet has room for a flat wave only.
    sag = (1 if side == "left" else -1) * smaller(SAG, (lower[1] - upper[1]) / 5)
    sheet.path("section", ["M", upper, "L", *wall, lower, *wave(lower, upper, sag), "Z"])
    sheet.path("fine", ["M", lower, *wave(lower, upper, sag)])
    sheet.line("edge", upper, *wall, lower)


def _round(corners: Sequence[Point]) -> list[str | Point]:
    return [step for start, end in pairwise(corners) for step in wave(start, end, SAG)]


def across(sheet: Sheet, left: Any, right: Any, level: Any, edge: Any) -> None:
    """A level dimension line between two places, with extension lines from the level `edge`.

    The arrows turn outside where there is no room between them, also where the two places meet.
    """
    room = right - left - ROOM_FOR_ARROWS
    turn = either(room > 0, 1, -1)
    tail = TAIL * (1 - turn) / 2
    down = either(level > edge, 1, -1)
    for x in (left, right):
        sheet.line("thin", (x, edge + 4 * down), (x, level + OVERRUN * down))
    sheet.line("thin", (left - tail, level), (right + tail, level))
    sheet.arrow((left, level), (-turn, 0))
    sheet.arrow((right, level), (turn, 0))


def upright(sheet: Sheet, top: Point, bottom: Point, column: Any) -> Point:
    """An upright dimension line in a column, from two places beside it; returns its middle."""
    y0, y1 = top[1], bottom[1]
    turn: Any = either(y1 - y0 > ROOM_FOR_ARROWS, 1, -1)
    tail = TAIL * (1 - turn) / 2
    for x, y in (top, bottom):
        away = either(column > x, 1, -1)
        sheet.line("thin", (x + 4 * away, y), (column + OVERRUN * away, y))
    sheet.line("thin", (column, y0 - tail), (column, y1 + tail))
    sheet.arrow((column, y0), (0, -turn))
    sheet.arrow((column, y1), (0, turn))
    return (column, (y0 + y1) / 2)


def beside(sheet: Sheet, target: Point, level: Any, term: str, name: str, side: Side) -> None:
    """The label of a dimension line, beside it on a leader at a level of its own."""
    step = ELBOW if side == "right" else -ELBOW
    parts = f"{{{name}}}"
    sheet.leader(target, (target[0] + step, level), term, parts, name, left=side == "left")
