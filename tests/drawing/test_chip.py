"""The drawn layer has the thickness and the width that the relations say, in both places where it is drawn."""

import math

import pytest

from drillpoint.drawing import chip, draw
from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading


def away(place, line):
    """How far a place is from the straight line through two others."""
    (ax, ay), (bx, by) = line
    return abs((bx - ax) * (place[1] - ay) - (by - ay) * (place[0] - ax)) / math.dist(*line)


@pytest.mark.parametrize("case", corners_of("chip"))
def test_the_layer_is_drawn_in_true_size(case):
    read = Reading("chip", **case)
    lip, enlarged = read.shapes("lip")
    (layer,) = (shape for shape in read.shapes("section_other") if len(shape) == 4)
    assert layer[:2] == lip
    assert math.dist(*lip) == pytest.approx(read.values["chip_width"])
    for raised, below in zip(layer[2:], reversed(lip), strict=True):
        assert raised[0] == pytest.approx(below[0])
        assert raised[1] - below[1] == pytest.approx(case["feed"] / 2)
        assert away(raised, lip) == pytest.approx(read.values["chip_thickness"])
    slope = math.degrees(math.atan2(lip[1][0] - lip[0][0], lip[1][1] - lip[0][1]))
    assert 2 * slope == pytest.approx(case["point_angle"])
    # The enlarged piece: the same slope, and the thickness as many times as large as is said.
    other = next(shape for shape in read.shapes("edge") if len(shape) == 2 and abs(shape[0][0] - shape[1][0]) > 1e-6)
    assert away(other[0], enlarged) == pytest.approx(read.own["enlarged"] * read.values["chip_thickness"])
    assert (other[1][0] - other[0][0]) / (other[1][1] - other[0][1]) == pytest.approx(math.tan(math.radians(slope)))
    eye = float(chip.EYE[0]) / read.scale, -float(chip.EYE[1]) / read.scale
    radius = float(chip.EYE_RADIUS) / read.scale
    assert all(math.dist(place, eye) == pytest.approx(radius) for place in (*enlarged, *other))


def test_an_inspector_finds_the_width_on_a_ground_point():
    angles = {"point_angle": 118, "axial_relief": 15}
    flute = Flute(diameter=10, web=1.5, point_angle=118, helix_angle=0)
    seen = GroundPoint(flute, PlaneFlank(**angles), PlaneFlank(**angles)).inspect()
    read = Reading("chip", diameter=10, web=1.5, feed=0.2, **angles)
    assert seen.lip_length == pytest.approx(math.dist(*read.shapes("lip")[0]), abs=1e-6)


def test_the_words_compare_118_with_135():
    drill = {"diameter": 10, "web": 1.5, "chisel_edge_angle": 125, "feed": 0.2}
    # DERIVED: 0.1 × sin 59° = 0.0857, 0.1 × sin 67.5° = 0.0924; width × thickness is the same for both.
    at_118, at_135 = (draw("chip", **drill, point_angle=angle).alt for angle in (118, 135))
    assert "the chip is 0.086 mm thick. It is 5.15 mm wide" in at_118
    assert "A point of 135° would make it 0.092 mm thick and 4.78 mm wide" in at_118
    assert "thicker than with 118° (0.086 mm)" in at_135
    assert "thinner than with 118°" in draw("chip", **drill, point_angle=90).alt


def test_a_web_that_leaves_no_lip_is_refused():
    with pytest.raises(LearnerError, match="no lip is left"):
        draw("chip", diameter=10, point_angle=118, web=9, chisel_edge_angle=150, feed=0.2)
