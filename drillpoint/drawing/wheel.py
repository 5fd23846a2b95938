"""A wheel as far as the geometry of grinding needs one: its face, cut, with a hatched strip behind it."""

from __future__ import annotations

from drillpoint.drawing.points import Point, along
from drillpoint.drawing.sheet import Sheet

THICK = 18.0


def wheel_face(sheet: Sheet, start: Point, end: Point, away: Point) -> None:
    """A face from start to end. away: unit vector from the face into the wheel."""
    back = along(end, away, THICK), along(start, away, THICK)
    sheet.area("section_other", start, end, *back)
    sheet.line("fine", start, back[1])
    sheet.line("fine", end, back[0])
    sheet.line("edge", start, end)
