"""What is drawn on true-scale paper, as data: strokes, circles and words in millimetres from the upper left corner.

Line types follow ISO 128 (from memory): wide continuous where to cut; narrow continuous for graduations and dimensions;
narrow chain for axes; narrow double chain for the outline of a part that lies against the paper.
"""

from __future__ import annotations

import math
import textwrap
from collections.abc import Iterator, Sequence
from html import escape
from typing import Literal

from attrs import frozen

from drillpoint.quantities import plain_number

Place = tuple[float, float]
Line = Literal["cut", "thin", "axis", "part", "bar"]
LINE_SPACING = 1.36


@frozen
class Stroke:
    """Straight lines from place to place."""

    line: Line
    places: tuple[Place, ...]
    closed: bool = False


@frozen
class Ring:
    """A circle, or the part of it between two angles (degrees, counter-clockwise from the right)."""

    line: Line
    centre: Place
    radius: float
    start: float = 0.0
    end: float = 360.0


@frozen
class Words:
    """A line of text: its left end, middle or right end stands at `at`, on the base line. size: of its letters, mm."""

    text: str
    at: Place
    size: float = 2.7
    anchor: Literal["start", "middle", "end"] = "start"
    bold: bool = False
    turned: float = 0.0


Mark = Stroke | Ring | Words


@frozen
class Card:
    """A part of the sheet: its marks in a frame of its own, from (0, 0) to (width, height)."""

    name: str
    width: float
    height: float
    marks: tuple[Mark, ...]

    def placed(self, x: float, y: float) -> Iterator[Mark]:
        """The marks with the card's corner put at this place of the sheet."""
        return (_moved(mark, x, y) for mark in self.marks)


def polar(centre: Place, radius: float, angle: float) -> Place:
    """The place at this distance from the centre; degrees counter-clockwise from the right, as the paper is seen."""
    turn = math.radians(angle)
    return centre[0] + radius * math.cos(turn), centre[1] - radius * math.sin(turn)


def segment(line: Line, start: Place, end: Place) -> Stroke:
    """One straight line."""
    return Stroke(line, (start, end))


def paragraph(text: str, at: Place, letters: int, size: float = 2.7, *, bold: bool = False) -> tuple[Words, ...]:
    """Text broken into lines of at most so many letters."""
    lines = textwrap.wrap(text, letters, break_long_words=False)
    return tuple(Words(line, (at[0], at[1] + i * size * LINE_SPACING), size, bold=bold) for i, line in enumerate(lines))


def _moved(mark: Mark, x: float, y: float) -> Mark:
    if isinstance(mark, Stroke):
        return Stroke(mark.line, tuple((px + x, py + y) for px, py in mark.places), mark.closed)
    if isinstance(mark, Ring):
        return Ring(mark.line, (mark.centre[0] + x, mark.centre[1] + y), mark.radius, mark.start, mark.end)
    return Words(mark.text, (mark.at[0] + x, mark.at[1] + y), mark.size, mark.anchor, mark.bold, mark.turned)


def element(mark: Mark) -> str:
    """The mark as SVG."""
    if isinstance(mark, Words):
        return _text(mark)
    if isinstance(mark, Stroke):
        steps = " L ".join(_at(place) for place in mark.places)
        return f'<path class="{mark.line}" d="M {steps}{" Z" if mark.closed else ""}"/>'
    if mark.end - mark.start >= 360:
        x, y = (_number(v) for v in mark.centre)
        return f'<circle class="{mark.line}" cx="{x}" cy="{y}" r="{_number(mark.radius)}"/>'
    start, end = (polar(mark.centre, mark.radius, angle) for angle in (mark.start, mark.end))
    size = _number(mark.radius)
    return f'<path class="{mark.line}" d="M {_at(start)} A {size} {size} 0 0 0 {_at(end)}"/>'


def elements(marks: Sequence[Mark]) -> str:
    """All marks as SVG, one a line."""
    return "\n".join(element(mark) for mark in marks)


def _text(words: Words) -> str:
    x, y = (_number(v) for v in words.at)
    turn = f' transform="rotate({_number(words.turned)} {x} {y})"' if words.turned else ""
    weight = ' font-weight="700"' if words.bold else ""
    return (
        f'<text x="{x}" y="{y}" font-size="{_number(words.size)}" text-anchor="{words.anchor}"{weight}{turn}>'
        f"{escape(words.text)}</text>"
    )


def _at(place: Place) -> str:
    return f"{_number(place[0])} {_number(place[1])}"


def _number(value: float) -> str:
    return plain_number(value, 4)  # a ten-thousandth of a millimetre
