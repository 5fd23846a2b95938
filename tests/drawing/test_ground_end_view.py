"""What is drawn of a ground point, measured on the drawing, is what an inspector reads off the point."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.draw import computed, drawn_from, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError
from drillpoint.ground import ConicalFlank, Flute, GroundPoint, Notch, PlaneFlank

FLUTE = Flute(diameter=10, web=1.5)
PLANE = PlaneFlank(point_angle=118, lip_relief=12)
CONE = ConicalFlank(cone_half_angle=25, cone_tilt=34, apex_distance=9.5, skew=1.45)
POINTS = {
    "plane": GroundPoint(FLUTE, PLANE),
    "cone": GroundPoint(FLUTE, CONE),
    "one lip high": GroundPoint(FLUTE, PLANE, PlaneFlank(point_angle=118, lip_relief=12, flank_height=0.1)),
    "unequal relief": GroundPoint(FLUTE, PLANE, PlaneFlank(point_angle=118, lip_relief=16)),
    "left hand": GroundPoint(Flute(diameter=10, web=1.5, hand="left"), CONE),
}
EVERY = pytest.mark.parametrize("point", POINTS.values(), ids=POINTS)


def drawn(point):
    return computed("ground_end_view").drawn(point, {})


def traces(shown, style):
    """The lines of a style, in mm from the axis, y up."""
    scale = shown.coordinates[shown.scene.bar.scale]
    found = []
    for shape in shown.scene.shapes:
        if isinstance(shape, Outline) and shape.style == style:
            flat = [shown.coordinates[step] for step in shape.steps if isinstance(step, int)]
            found.append([((x - 282) / scale, (236 - y) / scale) for x, y in zip(flat[::2], flat[1::2], strict=True)])
    return found


@EVERY
def test_lips_and_chisel_edge_stand_as_inspected(point):
    shown, read = drawn(point), point.inspect()
    first, second = traces(shown, "lip")
    (edge,) = traces(shown, "chisel")
    assert math.dist(edge[0], edge[-1]) == pytest.approx(read.chisel_edge_length, abs=1e-9)
    assert edge[0] == pytest.approx(first[0])
    assert edge[-1] == pytest.approx(second[0])
    assert math.hypot(*first[-1]) + math.hypot(*second[-1]) == pytest.approx(read.diameter)
    middle = math.dist((0, 0), [(a + b) / 2 for a, b in zip(edge[0], edge[-1], strict=True)])
    assert middle == pytest.approx(read.point_offset, abs=1e-9)
    obtuse = [angle_between(lip[0], lip[-1], other[0]) for lip, other in ((first, second), (second, first))]
    assert sum(obtuse) / 2 == pytest.approx(read.chisel_edge_angle, abs=1e-6)


def angle_between(at, first, second):
    one, other = (math.atan2(end[1] - at[1], end[0] - at[0]) for end in (first, second))
    between = abs(math.degrees(one - other)) % 360
    return min(between, 360 - between)


@EVERY
def test_the_outline_passes_the_corners_and_stays_in_the_drill(point):
    (outline,) = traces(drawn(point), "edge")
    assert max(math.hypot(*place) for place in outline) == pytest.approx(5, abs=1e-6)
    for lip in traces(drawn(point), "lip"):
        assert min(math.dist(lip[-1], place) for place in outline) < 1e-6
        assert all(distance_to(outline, place) < 0.02 for place in lip)


def distance_to(outline, place):
    ends = zip(outline, outline[1:] + outline[:1], strict=True)
    return min(distance_to_line(place, start, end) for start, end in ends)


def distance_to_line(place, start, end):
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = dx * dx + dy * dy
    share = ((place[0] - start[0]) * dx + (place[1] - start[1]) * dy) / length if length else 0
    share = min(max(share, 0), 1)
    return math.dist(place, (start[0] + share * dx, start[1] + share * dy))


def test_a_lip_that_is_not_straight_is_drawn_and_told_with_its_bow():
    hollow = GroundPoint(FLUTE, PlaneFlank(point_angle=135, lip_relief=12))
    bulging = GroundPoint(FLUTE, PlaneFlank(point_angle=90, lip_relief=26))
    for point, word in ((hollow, "hollow"), (bulging, "bulges")):
        shown, read = drawn(point), point.inspect()
        (outline,) = traces(shown, "edge")
        lip = traces(shown, "lip")[1]
        # The flank that is filled ends at the lip itself, not at the straight line between the lip's ends.
        assert max(distance_to(outline, place) for place in lip) < 0.01 < abs(read.lip_bow_2) / 2
        assert distance_to_line(lip[len(lip) // 2], lip[0], lip[-1]) == pytest.approx(abs(read.lip_bow_2), rel=0.05)
        picture = draw("ground_end_view", point)
        assert f"Lip 2 {'is ' if word == 'hollow' else ''}{word}: half way along" in picture.alt
        assert f"{abs(read.lip_bow_2):.3f} mm" in picture.alt and f">{abs(read.lip_bow_2):.3f} mm<" in picture.svg
    assert hollow.inspect().lip_bow_2 < 0 < bulging.inspect().lip_bow_2
    for name in ("plane", "cone"):
        assert "lip hollow" not in draw("ground_end_view", POINTS[name]).svg
        assert "Lip 2" not in draw("ground_end_view", POINTS[name]).alt


def test_a_left_hand_drill_is_the_mirror_image():
    right, left = (traces(drawn(POINTS[name]), "lip")[0] for name in ("cone", "left hand"))
    assert left == [pytest.approx((x, -y)) for x, y in right]


def test_keywords_draw_the_same_as_the_point():
    usual = scene("ground_end_view").usual
    assert draw("ground_end_view", **usual) == draw("ground_end_view", POINTS["cone"])
    values = values_of(scene("ground_end_view"), {**usual})
    assert drawn_from("ground_end_view", values).values["chisel_edge_angle"] == pytest.approx(
        POINTS["cone"].inspect().chisel_edge_angle
    )


def test_the_words_tell_the_readings_and_whether_it_is_on_centre():
    assert "The point is on centre." in draw("ground_end_view", POINTS["cone"]).alt
    faulty = draw("ground_end_view", POINTS["one lip high"])
    assert f"The point is {POINTS['one lip high'].inspect().point_offset:.3f} mm off centre." in faulty.alt
    assert "point off centre" in faulty.svg
    assert "point off centre" not in draw("ground_end_view", POINTS["cone"]).svg
    assert "?" in draw("ground_end_view", POINTS["cone"], hide="chisel_edge_angle").svg


def test_what_it_does_not_show_is_said():
    thinned = GroundPoint(FLUTE, PLANE, thinning_1=Notch(thinning_angle=35, thinned_chisel_length=0.8))
    with pytest.raises(LearnerError, match="no notches"):
        draw("ground_end_view", thinned)
    with pytest.raises(LearnerError, match="shows a GroundPoint, not Flute; or give diameter, web"):
        draw("ground_end_view", FLUTE)
    with pytest.raises(LearnerError, match="keyword"):
        draw("end_view", POINTS["cone"])


@pytest.mark.parametrize(("relief", "said"), [(12, "101.6° (obtuse), flatter"), (-6, "71.8°, past square, flatter")])
def test_a_chisel_edge_past_square_is_not_called_obtuse(relief, said):
    # DERIVED: one plane at 118°, web 0.15 of the diameter; below zero the chisel edge leans back.
    picture = draw(
        "ground_end_view", GroundPoint(Flute(diameter=10, web=1.5), PlaneFlank(point_angle=118, lip_relief=relief))
    )
    assert said in picture.alt
    assert ("(obtuse)" in picture.svg) == (relief > 0)
    assert ("(past square)" in picture.svg) == (relief < 0)
