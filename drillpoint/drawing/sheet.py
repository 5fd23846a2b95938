"""Laying shapes on a sheet: lines, arcs, dimensions, leaders and labels from points.

The line types and their uses are those of ISO 128 (from memory):
- "edge", thick continuous: visible edges; "lip" and "chisel", thicker still: the cutting edges;
- "thin", thin continuous: dimension, extension and leader lines; "fine": thin edges of the part, and freehand breaks;
- "hidden", thin dashed: edges that something hides; "centre", thin chain: centre lines;
- "swept", thin double chain: what a part sweeps, or another position of it;
- "section" and "section_other", thin lines at 45° either way: cut metal, two parts that touch one each;
- "motion", with an open end and a head: how something moves.
"flank", "land", "flute" and "paper" fill without a line.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from typing import Any

from drillpoint.drawing.points import (
    Curve,
    Point,
    along,
    distance,
    either,
    heading,
    middle,
    polar,
    square,
    towards,
    wave,
)
from drillpoint.drawing.scene import Anchor, Bar, Label, Number, Outline, Scene
from drillpoint.quantities import QUANTITIES

ARROW_LENGTH = 11.0
ARROW_HALF_WIDTH = 2.6
GAP = 4.0  # between the part and an extension line
OVERRUN = 5.0  # of an extension line past its dimension line
TAIL = 20.0  # of a dimension line whose arrows stand outside
ROOM_FOR_ARROWS = 34.0
SHELF = 15.0  # the level end of a leader
BESIDE = 7.0  # between a line's end and its label
DOT = 2.2
ALWAYS = -1


class Sheet:
    """Collects shapes and the expressions their numbers stand for. Points are in the frame: x right, y down.

    plain: the numbers are numbers, not expressions of quantities.
    """

    def __init__(self, plain: bool = False) -> None:
        self.expressions: list[Any] = []
        self.shapes: list[Outline | Label] = []
        self.numbers: list[Number] = []
        self._plain = plain
        self._places: dict[Any, int] = {}

    def place(self, number: Any) -> int:
        """Where the number stands in the list of coordinates."""
        if self._plain:
            # Never shared, so that the places stay the same whatever the numbers are.
            self.expressions.append(float(number))
            return len(self.expressions) - 1
        import sympy

        expression = sympy.sympify(number, strict=True)
        if expression not in self._places:
            self._places[expression] = len(self.expressions)
            self.expressions.append(expression)
        return self._places[expression]

    def number(self, name: str, expression: Any, like: str) -> None:
        """A number that only this scene shows, written as {name} in its labels and sentences, like that quantity."""
        self.numbers.append(Number(name, self.place(expression), like))

    def path(self, style: str, steps: Iterable[str | Point], when: Any = None) -> None:
        """A path of SVG letters and points. when: drawn only where this is above 0."""
        placed: list[str | int] = []
        for step in steps:
            if isinstance(step, str):
                placed.append(step)
            else:
                placed.extend((self.place(step[0]), self.place(step[1])))
        self.shapes.append(Outline(style, tuple(placed), self._when(when)))

    def line(self, style: str, *points: Point, when: Any = None) -> None:
        """Straight from point to point."""
        steps: Curve = ["M", points[0], "L", *points[1:]]
        self.path(style, steps, when)

    def area(self, style: str, *points: Point, when: Any = None) -> None:
        """A closed outline of straight lines."""
        self.path(style, ["M", points[0], "L", *points[1:], "Z"], when)

    def trace(self, style: str, at: Callable[[Any], Point], start: Any, end: Any, pieces: int = 32) -> None:
        """A curve through the points that `at` gives from start to end, in straight pieces."""
        self.line(style, *(at(start + (end - start) * i / pieces) for i in range(pieces + 1)))

    def circle(self, style: str, centre: Point, radius: Any, when: Any = None) -> None:
        """A full circle."""
        left, right = (centre[0] - radius, centre[1]), (centre[0] + radius, centre[1])
        half: Curve = ["A", (radius, radius), "0 0 1"]
        self.path(style, ["M", left, *half, right, *half, left, "Z"], when)

    def arc(self, style: str, centre: Point, radius: Any, start: Any, sweep: Any, large: bool = False) -> None:
        """Part of a circle from direction `start`, clockwise in the frame by `sweep`, which is above 0; radians.

        large: whether it is more than half a turn.
        """
        ends = polar(centre, radius, start), polar(centre, radius, start + sweep)
        self.path(style, ["M", ends[0], "A", (radius, radius), "0 1 1" if large else "0 0 1", ends[1]])

    def label(
        self, style: str, at: Point, anchor: Anchor, parts: str, of: str = "", hidden: str = "", when: Any = None
    ) -> None:
        """A line of text whose baseline starts, centres or ends at a point."""
        self.shapes.append(
            Label(style, self.place(at[0]), self.place(at[1]), anchor, parts, of, hidden, self._when(when))
        )

    def named(self, at: Point, anchor: Anchor, term: str, parts: str, of: str = "", hidden: str = "?") -> None:
        """A label of two lines, the term over its value, whose middle is level with a point."""
        self.label("term", (at[0], at[1] - 4), anchor, term)
        self.label("value", (at[0], at[1] + 15), anchor, parts, of, hidden)

    def written(self, line: Point, parts: str, of: str = "", hidden: str = "?", *, above: bool = False) -> None:
        """A value on the middle of its dimension line, which leaves an opening there, or above a level one."""
        self.label("value", (line[0], line[1] - 7 if above else line[1] + 6), "middle", parts, of, hidden)

    def leader(
        self, target: Point, elbow: Point, term: str, parts: str, of: str = "", hidden: str = "?",
        *, left: bool = False, end: str = "",
    ) -> None:  # fmt: skip
        """A line from a target to a label of two lines, on a level shelf to the right (or left) of the elbow.

        end: "" on a dimension line, "arrow" on an edge, "dot" inside an outline.
        """
        side = -1 if left else 1
        shelf = (elbow[0] + side * SHELF, elbow[1])
        self.line("thin", target, elbow, shelf)
        if end == "arrow":
            self.arrow(target, towards(elbow, target))
        if end == "dot":
            self.circle("arrow", target, DOT)
        at = (shelf[0] + side * BESIDE, elbow[1])
        anchor: Anchor = "end" if left else "start"
        self.label("term", (at[0], at[1] - 12), anchor, term)
        if parts:
            self.label("value", (at[0], at[1] + 7), anchor, parts, of, hidden)

    def arrow(self, tip: Point, direction: Point, when: Any = None) -> None:
        """An arrow head that points in `direction`, a unit vector."""
        back = along(tip, direction, -ARROW_LENGTH)
        side = square(direction)
        sides = along(back, side, ARROW_HALF_WIDTH), along(back, side, -ARROW_HALF_WIDTH)
        self.area("arrow", tip, *sides, when=when)

    def motion(self, start: Point, end: Point) -> None:
        """An arrow that shows a straight motion."""
        direction = towards(start, end)
        self.line("motion", start, along(end, direction, -ARROW_LENGTH / 2))
        self.arrow(end, direction)

    def turning(self, centre: Point, radius: Any, start: Any, sweep: Any, back: bool = False) -> None:
        """An arrow that shows turning, clockwise in the frame from direction `start`, or `back` from its end to there.

        sweep: less than half a turn, in radians.
        """
        self.arc("motion", centre, radius, start, sweep)
        end = start if back else start + sweep
        lean = ARROW_LENGTH / (2 * radius)
        quarter = self._half_turn(end) / 2 - lean
        self.arrow(polar(centre, radius, end), heading(end - quarter if back else end + quarter))

    def centre_cross(self, centre: Point, reach: Any) -> None:
        """Centre lines across each other, a reach either way from the centre."""
        x, y = centre
        self.line("centre", (x - reach, y), (x + reach, y))
        self.line("centre", (x, y - reach), (x, y + reach))

    def break_line(self, left: Point, right: Point, sag: float = 9.0) -> None:
        """A freehand break from left to right: a wave, thin and continuous."""
        self.path("fine", ["M", left, *wave(left, right, sag)])

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
        turn: Any = -1 if outward else either(length > ROOM_FOR_ARROWS, 1, -1)
        tail = TAIL * (1 - turn) / 2
        half = middle(first, last)
        if opening:
            self.line("thin", along(first, forward, -tail), along(half, forward, -opening))
            self.line("thin", along(half, forward, opening), along(last, forward, tail))
        else:
            self.line("thin", along(first, forward, -tail), along(last, forward, tail))
        self.arrow(first, (-turn * forward[0], -turn * forward[1]))
        self.arrow(last, (turn * forward[0], turn * forward[1]))
        return half

    def angle(self, centre: Point, radius: Any, start: Any, sweep: Any, large: bool = False) -> Point:
        """An angular dimension: the arc from direction `start`, turned clockwise by `sweep`, with arrow heads.

        Directions are angles in the frame, whose y points down; radians. Returns the middle of the arc.
        """
        end = start + sweep
        self.arc("thin", centre, radius, start, sweep, large)
        # The head is a chord of the arc, so it leans inwards by half the angle it covers.
        quarter = self._half_turn(start) / 2 - ARROW_LENGTH / (2 * radius)
        self.arrow(polar(centre, radius, start), heading(start - quarter))
        self.arrow(polar(centre, radius, end), heading(end + quarter))
        return polar(centre, radius, start + sweep / 2)

    def narrow_angle(self, centre: Point, radius: Any, start: Any, sweep: Any) -> Point:
        """As `angle`, for one that may be too narrow: its arrows stand outside it, on tails. Returns the arc's start.

        The sweep may come down to 0.
        """
        tail = TAIL / radius
        self.arc("thin", centre, radius, start - tail, sweep + 2 * tail)
        quarter = self._half_turn(start) / 2 - ARROW_LENGTH / (2 * radius)
        self.arrow(polar(centre, radius, start), heading(start + quarter))
        self.arrow(polar(centre, radius, start + sweep), heading(start + sweep - quarter))
        return polar(centre, radius, start - tail)

    def bar(self, at: tuple[float, float], longest: float, pixels_per_mm: Any) -> Bar:
        """A scale bar that starts at a place in the frame and is at most so long."""
        return Bar(*at, longest, self.place(pixels_per_mm))

    def scene(self, **stated: Any) -> Scene:
        """The finished scene, with what is stated of it beside its shapes; see `Scene`."""
        if self._plain:
            return Scene(shapes=self.shapes, numbers=self.numbers, **stated)
        from drillpoint.drawing.letter import quantities_in

        return Scene(
            arguments=_in_order(quantities_in(self.expressions)), shapes=self.shapes, numbers=self.numbers, **stated
        )

    def _when(self, number: Any) -> int:
        return ALWAYS if number is None else self.place(number)

    def _half_turn(self, angle: Any) -> Any:
        if isinstance(angle, (int, float)):
            return math.pi
        import sympy

        return sympy.pi


def _in_order(names: Iterable[str]) -> tuple[str, ...]:
    wanted = set(names)
    if unknown := sorted(wanted - set(QUANTITIES)):
        raise ValueError(f"the coordinates of a scene depend on {unknown[0]!r}, which is no quantity of the vocabulary")
    return tuple(name for name in QUANTITIES if name in wanted)
