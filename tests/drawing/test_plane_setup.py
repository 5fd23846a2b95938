"""The drawn face is the one that grinds the drill asked for."""

import math

import numpy as np
import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.ground import plane_setup
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

USUAL = {"diameter": 10, "web": 1.5, "point_angle": 118}


def faces(read):
    """The two faces of the wheel: the lines that lips lie on."""
    straight = [line for line in read.shapes("edge") if len(line) == 2]
    return [line for line in straight if abs(line[0][0] - line[1][0]) > 1e-9 and line[1][0] > line[0][0]]


def rise(line):
    return (line[1][1] - line[0][1]) / (line[1][0] - line[0][0])


@pytest.mark.parametrize("drill", corners_of("plane_setup"))
def test_the_face_is_the_flank_of_the_ground_point(drill):
    read = Reading("plane_setup", **drill)
    through, square = faces(read)
    found = plane_setup(**{name: drill[name] for name in USUAL}, chisel_edge_angle=drill["chisel_edge_angle"])
    surface = found.point.surfaces[0]
    at = np.array([drill["diameter"] / 4]), np.array([drill["web"] / 2])
    along, across = (float(slope[0]) for slope in surface.slope(*at))
    assert rise(through) == pytest.approx(along, abs=1e-9)
    assert rise(square) == pytest.approx(across, abs=1e-6)
    # The face's normal leans from the axis by what the axis lacks of square to the face.
    lean = math.degrees(math.atan(math.hypot(along, across)))
    assert read.own["axis_to_face"] == pytest.approx(90 - lean, abs=1e-6)
    # Level lines of the face run along the chisel edge.
    level = math.degrees(math.atan2(-along, across)) % 180
    assert 180 - level == pytest.approx(drill["chisel_edge_angle"], abs=1e-6)


@pytest.mark.parametrize("drill", corners_of("plane_setup"))
def test_lips_lie_on_the_face(drill):
    read = Reading("plane_setup", **drill)
    through, square = faces(read)
    lips = read.shapes("lip")
    for place in lips[0]:
        assert place[1] - through[0][1] == pytest.approx(rise(through) * (place[0] - through[0][0]), abs=1e-9)
    seen = math.dist(*lips[0])
    assert seen == pytest.approx(read.values["lip_length"])
    dot = [sum(part) / 2 for part in zip(lips[2][0], lips[2][2], strict=True)]
    assert dot[1] - square[0][1] == pytest.approx(rise(square) * (dot[0] - square[0][0]), abs=1e-9)


def test_the_words_tell_what_to_set_and_what_comes_out():
    said = draw("plane_setup", **USUAL, lip_relief=12).alt
    # DERIVED: tan α_x = (tan 12° - 0.15·cot 59°)/√(1 - 0.15²) gives 7.1°, ψ 101.6°; atan(tan 59°·sin 101.64°) = 58.5°
    for part in ("at 59° to the axis", "at 7.1°", "relief of 12°", "101.6° (obtuse), flatter", "at 58.5° to the face"):
        assert part in said


def test_a_plane_without_relief_is_refused_and_numbers_can_be_hidden():
    with pytest.raises(LearnerError, match="give more relief"):
        draw("plane_setup", **USUAL, lip_relief=2)
    picture = draw("plane_setup", **USUAL, lip_relief=12, hide=["axial_relief", "point_angle"])
    assert not [said for said in (">7.1°", ">59°", " 7.1°", " 59°") if said in picture.svg]
