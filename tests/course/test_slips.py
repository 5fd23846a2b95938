"""The usual wrong derivations give the wrong values people are seen to hand in."""

import math

import pytest

from drillpoint.course.slips import SLIPS, Derivation
from drillpoint.relations import BOOK


def wrong(relation_name, slip, **givens):
    relation = BOOK[relation_name]
    right = float(relation(**givens))
    task = Derivation(lambda g: float(relation.unchecked(**g)), givens, right, relation.result.name)
    return list(SLIPS[slip].wrong(task))


# DERIVED for a 10 mm drill of 118°: h = 5/tan 59° = 3.004 mm, and what the usual slips make of it.
@pytest.mark.parametrize(
    ("slip", "values"),
    [
        ("whole angle for half", [5 / math.tan(math.radians(118))]),
        ("half angle for whole", [5 / math.tan(math.radians(29.5))]),
        ("tangent upside down", [5 * math.tan(math.radians(59))]),
        ("diameter for radius", [10 / math.tan(math.radians(59))]),
        ("radius for diameter", [2.5 / math.tan(math.radians(59))]),
        ("radians", [5 / math.tan(59)]),
        ("inch against mm", [25.4 * 5 / math.tan(math.radians(59)), 5 / math.tan(math.radians(59)) / 25.4]),
        ("web forgotten", []),
        ("axial relief for lip relief", []),
    ],
)
def test_point_height(slip, values):
    assert wrong("point_height", slip, diameter=10.0, point_angle=118.0) == pytest.approx(values)


# DERIVED for D 10, W 1.5, 118°, 125°: x = √(25 − t²) − t·cot δ in the end view, L = x/sin 59°, right 5.1545.
@pytest.mark.parametrize(
    ("slip", "values"),
    [
        ("web forgotten", [5 / math.sin(math.radians(59))]),
        ("sine and cosine swapped", [5.15450 * math.tan(math.radians(59))]),
        (
            "obtuse against acute",
            [(math.sqrt(25 - 0.5625) + 0.75 / math.tan(math.radians(55))) / math.sin(math.radians(59))],
        ),
        ("web not halved", [(math.sqrt(25 - 2.25) - 1.5 / math.tan(math.radians(55))) / math.sin(math.radians(59))]),
        (
            "diameter for radius",
            [(math.sqrt(100 - 0.5625) - 0.75 / math.tan(math.radians(55))) / math.sin(math.radians(59))],
        ),
    ],
)
def test_lip_length(slip, values):
    givens = {"diameter": 10.0, "point_angle": 118.0, "web": 1.5, "chisel_edge_angle": 125.0}
    assert wrong("lip_length", slip, **givens) == pytest.approx(values, rel=1e-5)


def test_radians_with_either_chisel_edge_angle():
    """DERIVED: W/sin of 125 rad, and of 55 rad."""
    values = wrong("chisel_edge_length", "radians", web=1.5, chisel_edge_angle=125.0)
    assert values[0] == pytest.approx(1.5 / math.sin(125))
    assert abs(values[1]) == pytest.approx(abs(1.5 / math.sin(55)))


@pytest.mark.parametrize("name", SLIPS)
def test_what_is_said_is_a_sentence(name):
    assert SLIPS[name].says.endswith(".")
    assert len(SLIPS[name].says) < 140
