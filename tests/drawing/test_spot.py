"""The drawn spot has the mouth, the angle and the depth that it states."""

import math

import pytest

from drillpoint.drawing import draw
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading


@pytest.mark.parametrize("spot", corners_of("spot"))
def test_the_spot_is_drawn_in_true_size(spot):
    read = Reading("spot", **spot)
    _, left, tip, right, _ = max(read.shapes("edge"), key=len)
    assert right[0] - left[0] == pytest.approx(spot["mouth_diameter"])
    assert left[1] - tip[1] == pytest.approx(read.values["spot_depth"])
    assert 2 * math.degrees(math.atan2(tip[0] - left[0], left[1] - tip[1])) == pytest.approx(spot["countersink_angle"])
    for name in ("mouth_diameter", "spot_depth"):
        assert any(span == pytest.approx(read.values[name]) for span in read.spans()), name


@pytest.mark.parametrize(("angle", "said"), [(90, "5.5 mm"), (120, "3.18 mm"), (142, "1.89 mm")])
def test_the_words_tell_the_depth(angle, said):
    # DERIVED: 5.5 over the tangent of half the angle
    assert f"stands {said} below" in draw("spot", mouth_diameter=11, countersink_angle=angle).alt


@pytest.mark.parametrize(("angle", "said"), [(82, "too little"), (90, "only at 90°."), (100, "too much")])
def test_the_rule_of_half_the_mouth_is_judged(angle, said):
    assert said in draw("spot", mouth_diameter=12.7, countersink_angle=angle).alt


def test_a_spot_as_deep_as_it_should_be_wide():
    read = Reading("spot", spot_depth=10, countersink_angle=90)
    # DERIVED: at 90° the mouth is twice the depth.
    assert read.values["mouth_diameter"] == pytest.approx(20)


def test_the_point_angle_of_a_spotting_drill_stands_in():
    assert draw("spot", mouth_diameter=11, point_angle=120) == draw("spot", mouth_diameter=11, countersink_angle=120)
