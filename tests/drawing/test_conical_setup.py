"""The drawn cone is the one that the flank of the ground point is part of."""

import math

import numpy as np
import pytest
from attrs import evolve

from drillpoint.drawing import draw
from drillpoint.drawing.conical_setup import AXIS, BELOW, SCENE
from drillpoint.drawing.draw import scene
from drillpoint.drawing.scene import Outline
from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, PlaneFlank, conical_setup

WANTED = {"diameter": 10, "web": 1.5, "point_angle": 118, "lip_relief": 12, "chisel_edge_angle": 125}
SETUPS = {
    "skewed axis": conical_setup(**WANTED, cone_half_angle=20),
    "blunt cone": conical_setup(**WANTED, cone_half_angle=40),
    "lip on cone": conical_setup(**WANTED, cone_half_angle=30, family="lip_on_cone"),
}
EVERY = pytest.mark.parametrize("setup", SETUPS.values(), ids=SETUPS)


def lines(point, style):
    """The lines of a style, as points in the frame, and the pixels of one mm."""
    drawn = SCENE.drawn(point, {})
    scale = drawn.coordinates[drawn.scene.bar.scale]
    found = []
    for shape in drawn.scene.shapes:
        if isinstance(shape, Outline) and shape.style == style:
            flat = [drawn.coordinates[step] for step in shape.steps if isinstance(step, int)]
            found.append(list(zip(flat[::2], flat[1::2], strict=True)))
    return found, scale


def steepness(line):
    """The angle of a line to the drill axis, degrees."""
    (x0, y0), (x1, y1) = line[0], line[-1]
    return math.degrees(math.atan2(x1 - x0, y1 - y0))


@EVERY
def test_cone_and_axis_stand_as_set(setup):
    flank = setup.flank
    (lower, upper, *_), scale = lines(setup.point, "swept")
    apex = upper[0]
    assert lower[0] == pytest.approx(apex)
    assert (AXIS - apex[0]) / scale == pytest.approx(flank.apex_distance)
    assert steepness(upper) == pytest.approx(flank.cone_tilt + flank.cone_half_angle)
    assert steepness(lower) == pytest.approx(flank.cone_tilt - flank.cone_half_angle)
    centres, _ = lines(setup.point, "centre")
    assert steepness(centres[1]) == pytest.approx(flank.cone_tilt)
    level = centres[4]
    assert (BELOW - level[0][1]) / scale == pytest.approx(flank.skew)


@EVERY
def test_the_flank_hangs_on_the_cone_that_is_drawn(setup):
    flank, point = setup.flank, setup.point
    (_, upper, *_), scale = lines(point, "swept")
    lips, _ = lines(point, "lip")
    # The lip where it begins, as drawn: how far the apex lies above it.
    rise = (lips[0][0][1] - upper[0][1]) / scale
    foot = point.feet[0].point[0]
    # DERIVED: the side of the cone is where the angle at the apex from its axis is the half angle.
    turn = -math.radians(flank.flank_turn)
    x = foot[0] * math.cos(turn) - foot[1] * math.sin(turn) + flank.apex_distance
    y = foot[0] * math.sin(turn) + foot[1] * math.cos(turn) - flank.skew
    tilt = math.radians(flank.cone_tilt)
    to_lip = np.array([x, y, -rise])
    along = float(to_lip @ [math.sin(tilt), 0.0, -math.cos(tilt)])
    assert math.degrees(math.acos(along / np.linalg.norm(to_lip))) == pytest.approx(flank.cone_half_angle, abs=1e-6)


@EVERY
def test_lips_are_drawn_as_inspected(setup):
    lips, scale = lines(setup.point, "lip")
    read = setup.point.inspect()
    side, tip = lips[0], lips[2]
    fall = (side[-1][1] - side[0][1]) / scale
    seen = math.dist(tip[0], tip[-1]) / scale
    assert math.degrees(math.atan2(seen, fall)) == pytest.approx(read.point_angle / 2, abs=0.02)
    assert math.hypot(tip[-1][0] - AXIS, tip[-1][1] - BELOW) / scale == pytest.approx(5)
    chisel = lines(setup.point, "chisel")[0][1]
    assert math.dist(*chisel) / scale == pytest.approx(read.chisel_edge_length)


def test_the_words_tell_the_settings_and_what_comes_out():
    # DERIVED: a cone of 20° for these angles is tilted 38.83° and its apex is 1.979 half diameters away.
    said = draw("conical_setup", SETUPS["skewed axis"].point).alt
    for part in ("half angle of 20°", "tilted 38.83°", "9.9 mm beyond", "angle of 118°", "relief of 12°", "at 125°"):
        assert part in said
    assert "turned by" not in said
    turned = draw("conical_setup", SETUPS["lip on cone"].point)
    assert "the drill is turned by 6.2°" in turned.alt
    assert "drill turned by" in turned.svg
    assert "?" in draw("conical_setup", SETUPS["blunt cone"].point, hide="cone_tilt").svg


def test_a_left_hand_drill_is_seen_in_the_mirror():
    setup = SETUPS["skewed axis"]
    left = GroundPoint(evolve(setup.flute, hand="left"), setup.flank)
    level = lines(left, "centre")[0][4]
    assert level[0][1] > BELOW


def test_keywords_draw_the_settings_of_a_cone():
    picture = draw("conical_setup", **scene("conical_setup").usual)
    assert "half angle of 25°" in picture.alt


def test_what_is_no_cone_is_refused():
    point = GroundPoint(Flute(diameter=10, web=1.5), PlaneFlank(point_angle=118, lip_relief=12))
    with pytest.raises(LearnerError, match="PlaneFlank; give a point with a ConicalFlank, or draw the plane_setup"):
        draw("conical_setup", point)
