"""The drawn hole has the depths and the angle that it states."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.relations import full_diameter_depth
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading


def profile(read):
    """The wall of the hole, from its left edge on the face round to its right one."""
    face_left, *wall, face_right = max(read.shapes("edge"), key=len)
    assert face_left[1] == face_right[1]
    return wall


@pytest.mark.parametrize("hole", corners_of("hole"))
def test_the_hole_is_drawn_in_true_size(hole):
    read = Reading("hole", **hole)
    top_left, left, tip, right, top_right = profile(read)
    assert top_right[0] - top_left[0] == pytest.approx(hole["diameter"])
    assert top_left[1] - left[1] == pytest.approx(hole["shoulder_depth"])
    assert right[1] == pytest.approx(left[1])
    depth = full_diameter_depth(shoulder_depth=hole["shoulder_depth"], point_height=read.values["point_height"])
    assert top_left[1] - tip[1] == pytest.approx(float(depth))
    half = math.atan2(tip[0] - left[0], left[1] - tip[1])
    assert 2 * math.degrees(half) == pytest.approx(hole["point_angle"])
    for name in ("diameter", "shoulder_depth", "point_height", "depth_to_point"):
        assert any(span == pytest.approx(read.values[name]) for span in read.spans()), name


def test_depth_to_the_point_may_be_given_instead():
    read = Reading("hole", diameter=8, point_angle=118, depth_to_point=21)
    # DERIVED: the point takes 4/tan 59° = 2.4034 of the 21.
    assert read.values["shoulder_depth"] == pytest.approx(21 - 4 / math.tan(math.radians(59)))
    assert "The full diameter goes 18.6 mm deep" in draw("hole", diameter=8, point_angle=118, depth_to_point=21).alt


@pytest.mark.parametrize(("angle", "said"), [(118, "28 mm below"), (135, "27.07 mm below")])
def test_the_words_tell_how_deep_the_tip_stands(angle, said):
    # DERIVED: 25 + 5/tan 59° = 28.0043, 25 + 5/tan 67.5° = 27.0711
    assert said in draw("hole", diameter=10, point_angle=angle, shoulder_depth=25).alt


def test_a_hole_that_has_no_full_diameter_is_refused():
    with pytest.raises(LearnerError, match="spot"):
        draw("hole", diameter=10, point_angle=118, shoulder_depth=0)
    with pytest.raises(LearnerError, match="less than the point is tall"):
        draw("hole", diameter=10, point_angle=118, depth_to_point=2)


def test_what_is_asked_can_be_hidden():
    picture = draw("hole", diameter=10, point_angle=118, shoulder_depth=25, hide=["depth_to_point", "point_height"])
    assert "28" not in picture.alt
    assert ">28 mm<" not in picture.svg
    assert "How deep the tip stands is not told" in picture.alt
