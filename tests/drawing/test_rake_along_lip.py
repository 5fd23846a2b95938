"""The wedges at three places of the lip, measured on their coordinates against the relations and a ground point."""

import math

import numpy as np
import pytest

from drillpoint.drawing.draw import coordinates, draw, drawn_from, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.ground.stations import stations
from drillpoint.relations import chisel_edge_length, wedge_angle
from tests.drawing.drills import anywhere_in, corners_of

USUAL = {
    "diameter": 10.0, "point_angle": 118.0, "web": 1.5, "helix_angle": 30.0, "lip_relief": 12.0, "radius": 2.5,
}  # fmt: skip


def wedges(drill):
    """Rake, wedge and relief as drawn, in degrees, from the outer corner inwards."""
    drawn = drawn_from("rake_along_lip", values_of(scene("rake_along_lip"), drill))
    found = []
    for shape in drawn.scene.shapes:
        if isinstance(shape, Outline) and shape.style == "edge":
            flat = [drawn.coordinates[step] for step in shape.steps if isinstance(step, int)]
            face, lip, flank = zip(flat[::2], flat[1::2], strict=True)
            rake = math.degrees(math.atan2(face[0] - lip[0], lip[1] - face[1]))
            relief = math.degrees(math.atan2(lip[1] - flank[1], flank[0] - lip[0]))
            found.append((rake, 90 - rake - relief, relief))
    return found


def radii(drill):
    known = values_of(scene("rake_along_lip"), drill)
    inner = float(chisel_edge_length(web=known["web"], chisel_edge_angle=known["chisel_edge_angle"])) / 2
    return [known["diameter"] / 2, known["radius"], inner]


@pytest.mark.parametrize("drill", [USUAL, *anywhere_in("rake_along_lip", 8)])
def test_the_rake_drawn_is_that_of_the_ground_point(drill):
    flute = Flute(**{name: drill[name] for name in ("diameter", "web", "helix_angle", "point_angle")})
    point = GroundPoint(flute, PlaneFlank(point_angle=drill["point_angle"], lip_relief=drill["lip_relief"]))
    corner, here, inner = radii(drill)
    read = stations(point.lips[0], point.lips[0].at_radius(np.array([corner, max(here, inner), inner * (1 + 1e-9)])))
    shown = [rake for rake, _, _ in wedges(drill)]
    assert shown[0] == pytest.approx(read.normal_rake[0], abs=1e-6)
    assert shown[2] == pytest.approx(read.normal_rake[2], abs=1e-4)
    if here > inner:
        assert shown[1] == pytest.approx(read.normal_rake[1], abs=1e-6)


@pytest.mark.parametrize("radius", [2.0, 2.5, 4.8])
def test_wedge_and_relief_are_those_of_the_book(radius):
    known = values_of(scene("rake_along_lip"), {**USUAL, "radius": radius})
    (rake, wedge, relief) = wedges({**USUAL, "radius": radius})[1]
    assert (rake, relief) == pytest.approx((known["normal_rake"], known["normal_relief"]))
    assert wedge == pytest.approx(float(wedge_angle(normal_rake=rake, normal_relief=relief)))


def test_the_places_are_marked_on_the_lip_of_the_small_end_view():
    drawn = drawn_from("rake_along_lip", values_of(scene("rake_along_lip"), USUAL))
    circles = [
        [drawn.coordinates[step] for step in shape.steps if isinstance(step, int)]
        for shape in drawn.scene.shapes
        if isinstance(shape, Outline) and shape.style == "arrow" and "A" in shape.steps
    ]
    places = [((c[0] + c[4]) / 2, c[1]) for c in circles]
    # The drill is drawn 112 pixels across, about (286, 78).
    shown = [math.hypot(x - 286, y - 78) / 11.2 for x, y in places]
    assert shown == pytest.approx(radii(USUAL))


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({}, "the rake is 9.5°, the face leans back"),
        ({"helix_angle": 0.0}, "below zero: the face leans ahead"),
        ({"web": 3.0, "point_angle": 150.0, "lip_relief": 30.0}, "the chisel edge already takes this place"),
        ({"helix_angle": 45.0, "lip_relief": 30.0, "point_angle": 80.0, "radius": 4.5}, "thin and weak"),
    ],
)
def test_what_stands_out_is_said(changed, said):
    assert said in draw("rake_along_lip", **{**USUAL, **changed}).alt


def test_a_place_inside_the_chisel_edge_is_named():
    svg = draw("rake_along_lip", **{**USUAL, "web": 3.0, "point_angle": 150.0, "lip_relief": 30.0}).svg
    assert ">inside: no lip here<" in svg
    assert ">between<" not in svg


def test_no_number_is_none_anywhere_in_the_ranges():
    for drill in corners_of("rake_along_lip") + anywhere_in("rake_along_lip", 100):
        known = values_of(scene("rake_along_lip"), drill)
        assert all(math.isfinite(c) for c in coordinates(scene("rake_along_lip"), known)), drill
