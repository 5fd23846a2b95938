"""Laying shapes on a sheet: lines, arcs, dimensions and labels from symbolic points.

The line types and their uses are those of ISO 128 (from memory): thick continuous for visible edges, thin continuous
for dimension, extension and leader lines, thin chain for centre lines, thin double-chain for the outline a part sweeps,
thin freehand for a break.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import sympy as sp

from drillpoint.drawing.scene import Anchor, Label, Outline, Scene, Sentence

Point = tuple[Any, Any]

ARROW_LENGTH = 11.0
ARROW_HALF_WIDTH = 2.6
GAP = 4.0  # between the part and an extension line
OVERRUN = 5.0  # of an extension line past its dimension line
TAIL = 20.0  # of a dimension line whose arrows stand outside
ROOM_FOR_ARROWS = 34.0


class Sheet:
    """Collects shapes and the expressions their numbers stand for. Points are in the frame: x right, y down."""

    def __init__(self) -> None:
        self.expressions: list[Any] = []
        self._places: dict[Any, int] = {}
        self.shapes: list[Outline | Label] = []

    def place(self, number: Any) -> int:
        """Where the number stands in the list of coordinates."""
        expression = sp.sympify(number, strict=True)
        if expression not in self._places:
            self._places[expression] = len(self.expressions)
            self.expressions.append(expression)
        return self._places[expression]

    def path(self, style: str, steps: Iterable[str | Point]) -> None:
        """A path of SVG letters and points."""
        placed: list[str | int] = []
        for step in steps:
            if isinstance(step, str):
                placed.append(step)
            else:
                placed.extend((self.place(step[0]), self.place(step[1])))
        self.shapes.append(Outline(style, tuple(placed)))

    def line(self, style: str, *points: Point) -> None:
        """Straight from point to point."""
        steps: list[str | Point] = ["M", points[0], "L", *points[1:]]
        self.path(style, steps)

    def circle(self, style: str, centre: Point, radius: Any) -> None:
        """A full circle."""
        left, right = (centre[0] - radius, centre[1]), (centre[0] + radius, centre[1])
        half: list[str | Point] = ["A", (radius, radius), "0 0 1"]
        self.path(style, ["M", left, *half, right, *half, left, "Z"])

    def label(self, style: str, at: Point, anchor: Anchor, parts: str, of: str = "", hidden: str = "") -> None:
        """A line of text whose baseline starts, centres or ends at a point."""
        self.shapes.append(Label(style, self.place(at[0]), self.place(at[1]), anchor, parts, of, hidden))

    def arrow(self, tip: Point, direction: Point) -> None:
        """An arrow head that points in `direction`, a unit vector."""
        back = along(tip, direction, -ARROW_LENGTH)
        side = square(direction)
        self.path(
            "arrow",
            ["M", tip, "L", along(back, side, ARROW_HALF_WIDTH), along(back, side, -ARROW_HALF_WIDTH), "Z"],
        )

    def dimension(
        self, start: Point, end: Point, outside: Point, offset: Any, outward: bool = False, opening: Any = 0
    ) -> Point:
        """A linear dimension beside the line from start to end; returns the middle of its dimension line.

        outside: unit vector towards the side where it stands, square to the line. offset: how far away. The arrows
        turn outside, onto tails, where there is no room between them; `outward` has them outside always. opening: how
        far the line stays away from its middle, to leave room for a label there.
        """
        length = distance(start, end)
        forward = ((end[0] - start[0]) / length, (end[1] - start[1]) / length)
        first, last = along(start, outside, offset), along(end, outside, offset)
        for point in (start, end):
            self.line("thin", along(point, outside, GAP), along(point, outside, offset + OVERRUN))
        turn: Any = -1 if outward else sp.Piecewise((1, length > ROOM_FOR_ARROWS), (-1, True))
        tail = TAIL * (1 - turn) / 2
        middle = ((first[0] + last[0]) / 2, (first[1] + last[1]) / 2)
        if opening:
            self.line("thin", along(first, forward, -tail), along(middle, forward, -opening))
            self.line("thin", along(middle, forward, opening), along(last, forward, tail))
        else:
            self.line("thin", along(first, forward, -tail), along(last, forward, tail))
        self.arrow(first, (-turn * forward[0], -turn * forward[1]))
        self.arrow(last, (turn * forward[0], turn * forward[1]))
        return middle

    def angle(self, centre: Point, radius: Any, start: Any, sweep: Any, large: bool = False) -> Point:
        """An angular dimension: the arc from direction `start`, turned clockwise by `sweep`, with arrow heads.

        Directions are angles in the frame, whose y points down. Returns the middle of the arc.
        """
        end = start + sweep
        first, last = polar(centre, radius, start), polar(centre, radius, end)
        self.path("thin", ["M", first, "A", (radius, radius), "0 1 1" if large else "0 0 1", last])
        # The head is a chord of the arc, so it leans inwards by half the angle it covers.
        lean = sp.Float(ARROW_LENGTH) / (2 * radius)
        self.arrow(first, _heading(start - sp.pi / 2 + lean))
        self.arrow(last, _heading(end + sp.pi / 2 - lean))
        return polar(centre, radius, start + sweep / 2)

    def scene(
        self,
        name: str,
        title: str,
        size: tuple[int, int],
        givens: Sequence[str],
        pixels_per_diameter: float,
        bar: tuple[float, float],
        words: Sequence[Sentence],
    ) -> Scene:
        """The finished scene."""
        return Scene(name, title, *size, tuple(givens), pixels_per_diameter, bar, tuple(self.shapes), tuple(words))


def along(point: Point, direction: Point, distance_: Any) -> Point:
    """The point moved by a distance in a direction."""
    return (point[0] + direction[0] * distance_, point[1] + direction[1] * distance_)


def square(direction: Point) -> Point:
    """The direction turned a quarter turn."""
    return (-direction[1], direction[0])


def polar(centre: Point, radius: Any, angle: Any) -> Point:
    """The point at a radius and an angle from a centre."""
    return (centre[0] + radius * sp.cos(angle), centre[1] + radius * sp.sin(angle))


def distance(first: Point, second: Point) -> Any:
    """The distance between two points."""
    return sp.sqrt((second[0] - first[0]) ** 2 + (second[1] - first[1]) ** 2)


def _heading(angle: Any) -> Point:
    return (sp.cos(angle), sp.sin(angle))
