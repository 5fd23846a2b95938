"""The drill with unequal lips is drawn as the relations say, and as an inspector finds it on a ground point."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading


def lips(read):
    """Tip, longer lip's corner and shorter lip's corner."""
    (tip, long_corner), (_, short_corner) = read.shapes("lip")
    return tip, long_corner, short_corner


@pytest.mark.parametrize("case", corners_of("unequal_lips"))
def test_drill_and_hole_are_drawn_in_true_size(case):
    read = Reading("unequal_lips", **case)
    tip, long_corner, short_corner = lips(read)
    assert long_corner[0] - short_corner[0] == pytest.approx(case["diameter"])
    assert (long_corner[0] + short_corner[0]) / 2 - tip[0] == pytest.approx(read.values["point_offset"])
    # The corner of the longer lip lies behind, which is up here.
    assert long_corner[1] - short_corner[1] == pytest.approx(case["lip_height_difference"])
    assert math.dist(tip, long_corner) == pytest.approx(read.own["longer_lip"])
    assert math.dist(tip, short_corner) == pytest.approx(read.own["shorter_lip"])
    walls = [x for shape in read.shapes("edge") if len(shape) == 7 for x, _ in shape[1:-1]]
    assert max(walls) - min(walls) == pytest.approx(read.values["largest_hole"])
    # Both are swept about the tip, so the hole is as far from it on either side.
    assert max(walls) - tip[0] == pytest.approx(tip[0] - min(walls))
    for name in ("diameter", "lip_height_difference", "point_offset", "largest_hole"):
        assert any(span == pytest.approx(read.values[name], abs=1e-9) for span in read.spans()), name


@pytest.mark.parametrize(("angle", "difference"), [(118, 0.6), (135, 0.3), (90, 0.9)])
def test_an_inspector_finds_on_a_ground_point_what_is_drawn(angle, difference):
    # A chisel edge at 125°, long enough that both its ends stay on the lips however the tip moves.
    relief = math.degrees(math.atan(math.tan(math.radians(35)) / math.tan(math.radians(angle / 2))))
    flute = Flute(diameter=10, web=1.5, point_angle=angle, helix_angle=0)
    flanks = [PlaneFlank(point_angle=angle, axial_relief=relief, flank_height=h) for h in (difference, 0)]
    seen = GroundPoint(flute, *flanks).inspect()
    read = Reading("unequal_lips", diameter=10, point_angle=angle, lip_height_difference=difference)
    tip, long_corner, short_corner = lips(read)
    assert seen.lip_height_difference == pytest.approx(long_corner[1] - short_corner[1], abs=1e-6)
    assert seen.point_offset == pytest.approx((long_corner[0] + short_corner[0]) / 2 - tip[0], abs=1e-6)
    # Lip 1 stands ahead, so it is the shorter one. The web shortens both alike.
    drawn = math.dist(tip, long_corner) - math.dist(tip, short_corner)
    assert seen.lip_length_2 - seen.lip_length_1 == pytest.approx(drawn, abs=1e-6)


def test_the_words_judge_the_rule_of_twice_the_height_difference():
    inch = {"diameter": 12.7, "lip_height_difference": 0.003 * 25.4}
    # DERIVED: 0.003 in × tan 59° = 0.0050 in; at 135° 0.003 in × tan 67.5° = 0.0072 in
    blunt = draw("unequal_lips", **inch, point_angle=118, units="inch").alt
    assert "0.005 in wider" in blunt
    assert "would say 0.006 in, too much" in blunt
    assert "0.0072 in wider" in draw("unequal_lips", **inch, point_angle=135, units="inch").alt
    assert "too little" in draw("unequal_lips", **inch, point_angle=135).alt
    assert "rule" not in draw("unequal_lips", diameter=10, point_angle=118, lip_height_difference=0).alt


def test_a_difference_too_small_to_see_is_said_to_be():
    small, large = (
        draw("unequal_lips", diameter=10, point_angle=118, lip_height_difference=h).alt for h in (0.05, 0.5)
    )
    assert "too little to see" in small
    assert "too little to see" not in large


def test_lip_lengths_lead_to_it_too():
    # DERIVED: 0.2 mm × cos 59° × tan 59° = 0.2 mm × sin 59° = 0.171 mm
    assert "0.171 mm wider" in draw("unequal_lips", diameter=10, point_angle=118, lip_length_difference=0.2).alt


def test_a_tip_outside_the_drill_is_refused():
    with pytest.raises(LearnerError, match="needs a tip outside the drill"):
        draw("unequal_lips", diameter=10, point_angle=150, lip_height_difference=3)
