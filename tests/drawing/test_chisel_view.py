"""The chisel edge from two sides, measured on its coordinates against the inspection of a ground point."""

import math

import pytest

from drillpoint.drawing.draw import coordinates, draw, facts, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from tests.drawing.drills import USUAL, corners

RELIEFS = [9.0, 12.0, 20.0, 27.0]


def shapes(style, drill):
    numbers = coordinates(scene("chisel_view"), values_of(scene("chisel_view"), drill))
    found = []
    for shape in scene("chisel_view").shapes:
        if isinstance(shape, Outline) and shape.style == style and "A" not in shape.steps:
            flat = [numbers[step] for step in shape.steps if isinstance(step, int)]
            found.append(list(zip(flat[::2], flat[1::2], strict=True)))
    return found, numbers[scene("chisel_view").bar.scale]


def flanks(drill):
    """The directions of the leading and the trailing flank from the axis, in degrees."""
    ahead, edge, behind = next(line for line in shapes("edge", drill)[0] if len(line) == 3)
    return [math.degrees(math.atan2(x - edge[0], edge[1] - y)) for x, y in (ahead, behind)]


@pytest.mark.parametrize("relief", RELIEFS)
@pytest.mark.parametrize("angle", [90.0, 118.0, 140.0])
def test_the_wedge_drawn_is_that_of_the_ground_point(relief, angle):
    drill = {"diameter": 10.0, "point_angle": angle, "web": 1.5, "lip_relief": relief}
    flute = Flute(diameter=10, web=1.5, point_angle=angle)
    found = GroundPoint(flute, PlaneFlank(point_angle=angle, lip_relief=relief)).inspect()
    assert flanks(drill) == pytest.approx([found.chisel_edge_rake, -found.chisel_edge_rake], abs=1e-6)
    ((left, right),), scale = shapes("chisel", drill)
    assert (right[0] - left[0]) / scale == pytest.approx(found.chisel_edge_length)
    assert left[1] == right[1]


@pytest.mark.parametrize("drill", corners())
def test_the_lips_leave_the_edge_as_they_are_seen_square_to_it(drill):
    known = facts(**drill)
    ((left, right),), _ = shapes("chisel", drill)
    for line, end, side in zip(shapes("lip", drill)[0], (left, right), (-1, 1), strict=True):
        assert line[0] == end
        run, rise = side * (line[1][0] - line[0][0]), line[0][1] - line[1][1]
        # DERIVED: along the lip one out in the end view, cos δ is seen along the edge and cot κ up.
        seen = math.cos(math.radians(180 - known["chisel_edge_angle"]))
        assert run / rise == pytest.approx(seen * math.tan(math.radians(known["point_angle"] / 2)))


def test_the_alternative_text_judges_the_rake():
    assert "a rake of -53.7°, within the usual -65° to -45°" in draw("chisel_view", **USUAL).alt
    assert "it pushes and hardly cuts" in draw("chisel_view", **{**USUAL, "point_angle": 150}).alt
    assert "-53.7" not in draw("chisel_view", **USUAL, hide=["chisel_edge_rake"]).svg
