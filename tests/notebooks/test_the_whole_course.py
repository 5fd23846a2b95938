"""The lessons together: every relation of the book is taught in one and asked in a task, every shop question answered.

The figures of the answers are worked out here. SOURCE: the questions are those that are asked in workshops and classes
again and again, in our words; common practice, no source.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator

import pytest
from attrs import field, frozen

from drillpoint.course.exercise import Task
from drillpoint.course.exercise_file import load_set
from drillpoint.drawing.charts.ready import READY
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.relations import (
    BOOK,
    axial_relief,
    chisel_edge_angle,
    chisel_edge_length,
    countersink_depth,
    flank_fall,
    full_diameter_depth,
    idle_radius,
    least_dub_width,
    lip_height_difference,
    lip_height_from_angles,
    normal_rake,
    oversize,
    point_height,
    point_offset,
    rolled_reading,
    shoulder_depth,
    spot_depth,
    stock_for_angle_change,
    web_after_shortening,
)
from tests.notebooks.lessons import IN_ORDER, number_of, set_of
from tests.notebooks.prose import cells, code, prose

INCH = 25.4
_BOARD = re.compile(r"\b(?:derive|work_out|tabulate)\((\w+)|\b(\w+)\.solve\(")
_CHART = re.compile(r'\bchart\("?(\w+)"?')


def taught(lesson: str) -> set[str]:
    """The relations that a lesson derives, works out, tabulates, turns round or draws as a chart."""
    calls = "\n".join(code(lesson).values())
    found = {name for pair in _BOARD.findall(calls) for name in pair if name}
    for drawn in _CHART.findall(calls):
        found |= set(READY[drawn].results) if drawn in READY else {drawn}
    return found & set(BOOK)


def asked_in(tasks: tuple[Task, ...]) -> Iterator[str]:
    """The relations that tasks, their parts and their requirements rest on."""
    for task in tasks:
        yield task.relation
        yield from asked_in(task.parts)
        yield from (rule.relation for rule in task.requirements)


def test_every_relation_of_the_book_is_taught_in_a_lesson() -> None:
    assert set(BOOK) - {name for lesson in IN_ORDER for name in taught(lesson)} == set()


def test_every_relation_of_the_book_is_asked_in_a_task() -> None:
    asked = {name for lesson in IN_ORDER for name in asked_in(load_set(set_of(lesson)).tasks)}
    assert set(BOOK) - asked == set()


@frozen
class Answered:
    """A question from the shop, the lesson that answers it, and what its answer must hold."""

    question: str
    lesson: int
    figures: list[str]
    words: list[str] = field(factory=list)


def n(value: float, decimals: int) -> str:
    return f"{abs(value):.{decimals}f}"


def sine(point_angle: float) -> float:
    """The sine of half a point angle."""
    return math.sin(math.radians(point_angle / 2))


def over(longer: float, point_angle: float = 118) -> float:
    """The most that a hole comes out too large when one lip is longer by so much."""
    height = lip_height_difference(lip_length_difference=longer, point_angle=point_angle)
    return over_by_height(float(height), point_angle)


def over_by_height(height: float, point_angle: float = 118) -> float:
    offset = point_offset(lip_height_difference=height, point_angle=point_angle)
    return float(oversize(point_offset=offset))


def psi(lip_relief: float) -> str:
    return n(chisel_edge_angle(lip_relief=lip_relief, point_angle=118, web_ratio=0.15), 1)


def relief_for(angle: float) -> str:
    return n(chisel_edge_angle.solve("lip_relief", chisel_edge_angle=angle, point_angle=118, web_ratio=0.15), 1)


def rake(radius: float) -> str:
    values = {"diameter": 10, "web": 1.5, "point_angle": 118, "helix_angle": 30}
    return n(normal_rake(radius=radius, **values), 1)


def bow(point_angle: float) -> str:
    flute = Flute(diameter=10, web=1.5, helix_angle=30, point_angle=118)
    return n(GroundPoint(flute, PlaneFlank(point_angle=point_angle, lip_relief=12)).inspect().lip_bow_1, 2)


def idle(feed: float) -> str:
    return n(idle_radius(feed=feed, half_angle_1=59, half_angle_2=61), 2)


DOWEL_HOLE = 21 - float(point_height(diameter=8, point_angle=118))
GROWN = float(web_after_shortening(web=3, web_taper=0.024, length_removed=40))
QUESTIONS = [
    Answered("one lip is longer: how much too large is the hole?", 10, [n(over(x), 3) for x in (0.1, 0.2, 0.5)]),
    Answered(
        "is the hole too large by twice the error of lip height?",
        10,
        [n(0.5 + over_by_height(0.003 * INCH, a) / INCH, 4) for a in (118, 135)],
        ["0.003"],
    ),
    Answered(
        "59° on one side and 61° on the other: does it matter?",
        10,
        [n(lip_height_from_angles(radius=5, half_angle_1=59, half_angle_2=61), 2), idle(0.1), idle(0.15), idle(0.2)],
        ["59", "61", "one ribbon"],
    ),
    Answered(
        "new drills need great force and hardly cut",
        6,
        [n(axial_relief(lip_relief=0, point_angle=118, web_ratio=0.15), 1)],
        ["95"],
    ),
    Answered(
        "the heel stands ahead of the lip: is that negative rake?",
        3,
        [n(flank_fall(radius=38.1, relief_at_radius=-8, turn_share=1 / 6), 1)],
        ["negative rake", "It is not"],
    ),
    Answered("dust comes out instead of ribbons", 10, [], ["dust", "ribbon", "squeal"]),
    Answered("how do I see that the relief is right?", 3, [psi(12), relief_for(125)], ["protractor"]),
    Answered("is the chisel edge at 130° or at 50°?", 1, ["130", "50"], ["same line"]),
    Answered(
        "to the point or to the shoulder?",
        2,
        [
            *(n(full_diameter_depth(shoulder_depth=25, diameter=10, point_angle=a), 2) for a in (118, 135)),
            n(shoulder_depth(depth_to_point=25, diameter=10, point_angle=118), 2),
        ],
    ),
    Answered("a point angle out of range gives a tip below zero", 2, ["200"], ["refuses"]),
    Answered(
        "is the tip 0.3 of the diameter?",
        2,
        [n(point_height(diameter=17 / 32, point_angle=118), 4), n(point_height(diameter=1, point_angle=135), 4)],
    ),
    Answered(
        "is a spot as deep as the drill is thick?",
        2,
        [n(spot_depth(mouth_diameter=11, countersink_angle=a), 2) for a in (90, 120, 142)],
    ),
    Answered(
        "does one rule for the depth of a countersink do for every angle?",
        2,
        [n(countersink_depth(mouth_diameter=0.5, flat_diameter=0, countersink_angle=a), 3) for a in (82, 100)],
    ),
    Answered("holes of 21 mm for a dowel of 40 mm", 2, [n(40 - 2 * DOWEL_HOLE, 2)]),
    Answered("two formulas for the tip: which is right?", 2, [], ["tan", "same"]),
    Answered(
        "does 135° push harder than 118°?",
        9,
        [n(sine(135) / sine(118), 3), *(n(5 / sine(angle), 2) for angle in (118, 135))],
        ["thin"],
    ),
    Answered(
        "how much comes off from 118° to 135°?",
        11,
        [
            n(stock_for_angle_change(diameter=10, point_angle=118, new_point_angle=135), 2),
            n(stock_for_angle_change(diameter=0.5, point_angle=118, new_point_angle=135), 3),
        ],
    ),
    Answered("the lips are no longer straight", 5, [bow(135), bow(90)], ["hollow", "bulg"]),
    Answered("59° set by a set square: is 120° wrong?", 2, ["120", n(point_height(diameter=10, point_angle=120), 2)]),
    Answered(
        "equal lips or the exact angle?", 2, [n(lip_height_from_angles(radius=5, half_angle_1=59, half_angle_2=60), 2)]
    ),
    Answered(
        "the angle I measure depends on how I hold the drill",
        1,
        [n(rolled_reading(point_angle=118, roll_angle=roll), 1) for roll in (10, 20, 30)],
    ),
    Answered("relief figures differ from page to page", 3, ["8", "12", "15"], ["place", "plane", "size"]),
    Answered(
        "ground short, the drill starts badly",
        11,
        [n(GROWN, 2), *(n(chisel_edge_length(web=w, chisel_edge_angle=125), 2) for w in (3, GROWN))],
        ["thin"],
    ),
    Answered(
        "how large a pilot?",
        7,
        # A third of the drill no longer covers the chisel edge above this web ratio.
        [n(chisel_edge_length(web=0.075, chisel_edge_angle=125), 3), n(math.sin(math.radians(125)) / 3, 3)],
        ["half the drill"],
    ),
    Answered("brass grabs", 5, [rake(5), rake(2), rake(1)], ["brass"]),
    Answered("is a 60° point shallower?", 2, [n(point_height(diameter=10, point_angle=60), 2)], ["sharper", "blunter"]),
    Answered("there are left-hand drills in the box", 1, [], ["left-hand", "mirror"]),
    Answered("150 percent less thrust", 8, ["150"], ["cannot"]),
    Answered("much relief at the rim and none near the middle", 6, [], ["rim", "rubs"]),
    Answered("the web splits, or the lips chip", 3, [], ["web can split", "lips chip"]),
]


def said_in(lesson: str) -> str:
    """All words and numbers of a lesson: its prose, and the text of what its cells show."""
    shown = ["".join(o["data"].get("text/plain", "")) for c in cells(lesson) for o in c.get("outputs", [])]
    return " ".join(" ".join((*prose(lesson).values(), *shown)).split())


@pytest.mark.parametrize("asked", QUESTIONS, ids=lambda asked: asked.question)
def test_every_question_of_the_shop_is_answered(asked: Answered) -> None:
    (lesson,) = (name for name in IN_ORDER if number_of(name) == asked.lesson)
    said = said_in(lesson)
    lacking = [figure for figure in asked.figures if not re.search(rf"(?<![\d.]){re.escape(figure)}(?!\d)", said)]
    assert lacking == []
    assert [word for word in asked.words if word.casefold() not in said.casefold()] == []


def test_a_question_that_is_not_answered_would_be_noticed() -> None:
    with pytest.raises(AssertionError):
        test_every_question_of_the_shop_is_answered(Answered("how heavy is the drill?", 2, ["12345.6"]))
    assert least_dub_width.result.name not in taught(IN_ORDER[0])
