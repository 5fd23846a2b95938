"""The rolled drill is drawn with the angles it states, and its words say how much too little is read."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.draw import coordinates, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError
from tests.drawing.drills import corners_of

NAME = "rolled_view"


def lines(style, drill):
    """The ends of each straight line of a style, in the frame, and the values shown."""
    values = values_of(scene(NAME), drill)
    at = coordinates(scene(NAME), values)
    drawn = [s for s in scene(NAME).shapes if isinstance(s, Outline) and s.style == style and "A" not in s.steps]
    flat = [[at[step] for step in shape.steps if isinstance(step, int)] for shape in drawn]
    return [(complex(*f[:2]), complex(*f[-2:])) for f in flat], values


def off_the_axis(line):
    """The angle between a line that goes down from the tip and the axis."""
    run = line[1] - line[0]
    return math.degrees(math.atan2(abs(run.real), run.imag))


@pytest.mark.parametrize("drill", corners_of(NAME))
def test_lips_and_swept_cone_stand_at_their_angles(drill):
    lips, values = lines("lip", drill)
    swept, _ = lines("swept", drill)
    assert [2 * off_the_axis(lip) for lip in lips[:2]] == pytest.approx([values["rolled_reading"]] * 2)
    assert [2 * off_the_axis(side) for side in swept] == pytest.approx([drill["point_angle"]] * 2)
    # Lips and cone go equally far down, since rolling leaves the heights alone.
    assert [line[1].imag for line in lips[:2]] == pytest.approx([line[1].imag for line in swept])


@pytest.mark.parametrize("drill", corners_of(NAME))
def test_both_views_show_the_same_roll(drill):
    lips, _ = lines("lip", drill)
    across = lips[2][0] - lips[2][1]
    assert math.degrees(math.atan2(-across.imag, across.real)) == pytest.approx(drill["roll_angle"])
    # What the eye sees of the lips across the axis is what the end view shows from left to right, to its scale.
    swept, _ = lines("swept", drill)
    seen = (lips[1][1] - lips[0][1]).real / (swept[1][1] - swept[0][1]).real
    assert seen == pytest.approx(across.real / abs(across))


@pytest.mark.parametrize(
    # DERIVED: twice the angle whose tangent is tan 59° times the cosine of the roll
    ("roll", "said"),
    [(0, "sees 118°: the true angle."), (10, "117.2°: 0.8° too little"), (30, "110.5°: 7.5° too little")],
)
def test_the_words_tell_how_much_is_missing(roll, said):
    assert said in draw(NAME, point_angle=118, roll_angle=roll).alt


def test_a_drill_rolled_too_far_is_not_drawn():
    with pytest.raises(LearnerError, match="60° or less"):
        draw(NAME, point_angle=118, roll_angle=70)
