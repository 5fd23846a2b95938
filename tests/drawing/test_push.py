"""The drawn chisel edge and pilot hole are in true size, and the bars are as long as the relations say."""

import math

import pytest

from drillpoint.drawing import draw, push
from drillpoint.errors import LearnerError
from drillpoint.relations import chisel_edge_length, thrust
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

DRILL = {"diameter": 10, "web": 1.5, "chisel_edge_angle": 125, "feed": 0.2, "material_factor": 24000}
SHARP = {"tool_wear_factor": 1, "pilot_diameter": 2}


def width(bar):
    """How long a bar is that lies level."""
    return max(x for x, _ in bar) - min(x for x, _ in bar)


@pytest.mark.parametrize("case", corners_of("push"))
def test_chisel_edge_and_pilot_hole_are_drawn_in_true_size(case):
    read = Reading("push", **case)
    (edge,) = read.shapes("chisel")
    long = chisel_edge_length(web=case["web"], chisel_edge_angle=case["chisel_edge_angle"])
    assert math.dist(*edge) == pytest.approx(float(long))
    (hole,) = read.shapes("hidden")
    # A circle is drawn from its left to its right and back, with its radii between.
    assert math.dist(hole[0], hole[2]) == pytest.approx(case["pilot_diameter"])
    assert math.dist(*read.shapes("lip")[0]) > 0


@pytest.mark.parametrize("case", corners_of("push"))
def test_the_bars_are_to_one_scale(case):
    read = Reading("push", **case)
    (added,) = read.shapes("section")
    cut, without = (shape for shape in read.shapes("flank") if len(shape) == 4)
    job = {name: case[name] for name in ("diameter", "feed", "material_factor", "tool_wear_factor")}
    long = chisel_edge_length(web=case["web"], chisel_edge_angle=case["chisel_edge_angle"])
    solid = float(thrust(**job, chisel_edge_length=float(long)))
    alone = float(thrust(**job, thrust_factor=1, chisel_thrust_factor=0))
    assert read.values["thrust"] == pytest.approx(solid)
    assert read.own["without_chisel_edge"] == pytest.approx(alone)
    assert width(cut) == pytest.approx(width(without))
    assert width(without) / (width(cut) + width(added)) == pytest.approx(alone / solid)
    assert (width(cut) + width(added)) * read.scale == pytest.approx(float(push.LONGEST))


def test_the_words_say_whether_the_pilot_covers_the_chisel_edge():
    # DERIVED: the chisel edge is 1.5/sin 125° = 1.831 mm long.
    assert "A pilot hole of 2 mm takes all the metal from under" in draw("push", **DRILL, **SHARP).alt
    small = {**SHARP, "pilot_diameter": 1.8}
    assert "A pilot hole of 1.8 mm leaves the ends" in draw("push", **DRILL, **small).alt


def test_a_chisel_edge_longer_than_the_handbooks_table_is_refused():
    with pytest.raises(LearnerError, match=r"ends at 0\.4"):
        draw("push", **{**DRILL, **SHARP, "web": 3.5, "chisel_edge_angle": 130})
