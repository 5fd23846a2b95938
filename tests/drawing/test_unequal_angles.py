"""Lips at different angles: what is drawn of each layer, held against a drill that is turned step by step."""

import math
from itertools import pairwise

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

CASES = corners_of("unequal_angles")


def lips(read):
    """Tip, and the corners of lip 1 (to the right) and lip 2."""
    (tip, first), (_, second) = read.shapes("lip")
    return tip, first, second


def layer_at(shape, tip, radius):
    """The height of a layer at a radius, measured on its outline: tip, corner, then back along its upper side."""
    _, corner, *above = shape
    places = sorted((abs(x - tip[0]), y - tip[1]) for x, y in above)
    upper = next(
        a[1] + (b[1] - a[1]) * (radius - a[0]) / (b[0] - a[0])
        for a, b in pairwise(places)
        if a[0] <= radius <= b[0] and b[0] > a[0]
    )
    return upper - (corner[1] - tip[1]) * radius / abs(corner[0] - tip[0])


def cut_by_turning(case, radius):
    """Heights taken at a radius by lip 1 and lip 2, when the drill has been turned until nothing changes any more."""
    slopes = [1 / math.tan(math.radians(case[f"half_angle_{i}"])) for i in (1, 2)]
    metal, taken = math.inf, [0.0, 0.0]
    for half_turn in range(12):
        i = half_turn % 2
        lip = radius * slopes[i] - half_turn * case["feed"] / 2
        taken[i] = max(0.0, metal - lip)
        metal = min(metal, lip)
    return taken


@pytest.mark.parametrize("case", CASES)
def test_the_drill_is_drawn_in_true_size(case):
    read = Reading("unequal_angles", **case)
    tip, first, second = lips(read)
    assert first[0] - second[0] == pytest.approx(case["diameter"])
    assert first[0] - tip[0] == pytest.approx(tip[0] - second[0])
    for corner, name in ((first, "half_angle_1"), (second, "half_angle_2")):
        angle = math.degrees(math.atan2(abs(corner[0] - tip[0]), corner[1] - tip[1]))
        assert angle == pytest.approx(case[name])
    assert abs(first[1] - second[1]) == pytest.approx(read.values["lip_height_difference"])
    for name in ("diameter", "lip_height_difference"):
        assert any(span == pytest.approx(read.values[name]) for span in read.spans()), name
    if read.values["idle_radius"] < case["diameter"] / 2:
        assert any(span == pytest.approx(read.values["idle_radius"]) for span in read.spans())


@pytest.mark.parametrize("case", CASES)
@pytest.mark.parametrize("share", [0.02, 0.1, 0.35, 0.9])
def test_each_layer_is_what_a_turning_drill_takes(case, share):
    read = Reading("unequal_angles", **case)
    tip, first, second = lips(read)
    layers = {shape[1]: shape for shape in read.shapes("section_other")}
    radius = share * case["diameter"] / 2
    for corner, taken in zip((first, second), cut_by_turning(case, radius), strict=True):
        assert layer_at(layers[corner], tip, radius) == pytest.approx(taken, abs=1e-9)


@pytest.mark.parametrize(("first", "second"), [(59.0, 61.0), (64.0, 54.0)])
def test_an_inspector_finds_the_corners_as_drawn_on_a_ground_point(first, second):
    flute = Flute(diameter=10, web_ratio=1e-5, point_angle=2 * first, helix_angle=0)
    seen = GroundPoint(
        flute, *(PlaneFlank(point_angle=2 * half, axial_relief=10) for half in (first, second))
    ).inspect()
    read = Reading("unequal_angles", diameter=10, half_angle_1=first, half_angle_2=second, feed=0.2)
    _, corner_1, corner_2 = lips(read)
    # Nearer to the tip is lower here, and higher for the inspector.
    assert seen.lip_height_difference == pytest.approx(corner_2[1] - corner_1[1], abs=1e-3)


def test_the_words_say_which_lip_leads_and_where_the_other_stops():
    drill = {"diameter": 10, "half_angle_1": 59, "half_angle_2": 61}
    # DERIVED: 5 × (cot 59° − cot 61°) = 0.233; 0.075 over the same difference = 1.61
    said = draw("unequal_angles", **drill, feed=0.15).alt
    assert "lip 2, the flatter one, leads by 0.233 mm at the corner" in said
    assert "cuts only out to a radius of 1.61 mm" in said
    assert "both lips cut all along" in draw("unequal_angles", **drill, feed=0.5).alt
    other = draw("unequal_angles", diameter=10, half_angle_1=61, half_angle_2=59, feed=0.15)
    assert "lip 1, the flatter one, leads" in other.alt
    assert ">lip 1 leads<" in other.svg
    assert ">lip 1 lags<" not in other.svg


def test_equal_angles_are_refused_as_no_fault():
    with pytest.raises(LearnerError, match="both lips cut at every radius"):
        draw("unequal_angles", diameter=10, half_angle_1=59, half_angle_2=59, feed=0.15)
