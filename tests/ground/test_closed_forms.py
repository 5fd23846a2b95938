"""Every relation of the book that speaks of the point's geometry agrees with the ground point, over the whole range.

DERIVED throughout: the readings are taken on the surfaces, the expected values are the book's. 1e-6 at most, mostly far
less.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.relations import (
    chip_width,
    chisel_edge_angle,
    chisel_edge_length,
    chisel_edge_rake,
    feed_relief_loss,
    flank_fall,
    heel_clearance,
    idle_radius,
    lead,
    least_lip_relief,
    lip_height_difference,
    lip_height_from_angles,
    lip_inclination,
    lip_length,
    lip_relief,
    local_helix,
    normal_rake,
    normal_relief,
    orthogonal_rake,
    point_height,
    point_offset,
    relief_at_radius,
    rolled_reading,
    stock_for_angle_change,
    web_after_shortening,
    working_relief,
)
from tests.ground.points import ground, plain_drills

CLOSE = {"rel": 1e-9, "abs": 1e-9}
shares = st.floats(0.0, 1.0)


def _psi(drill: dict[str, float]) -> float:
    return float(chisel_edge_angle(point_angle=drill["point_angle"], axial_relief=drill["axial_relief"]))


def _radius(drill: dict[str, float], share: float) -> float:
    """A place of the lip, from its foot outwards."""
    foot = float(ground(drill).feet[0].radius[0])
    return foot + share * (drill["diameter"] / 2 - foot)


@given(plain_drills())
def test_lips_angles_and_chisel_edge(drill: dict[str, float]) -> None:
    seen, psi = ground(drill).inspect(), _psi(drill)
    size = {name: drill[name] for name in ("diameter", "point_angle", "web")}
    assert seen.diameter == pytest.approx(drill["diameter"], **CLOSE)
    assert seen.web == pytest.approx(drill["web"], **CLOSE)
    assert seen.point_angle == pytest.approx(drill["point_angle"], **CLOSE)
    assert seen.lip_length == pytest.approx(lip_length(**size, chisel_edge_angle=psi), **CLOSE)
    assert seen.lip_length == pytest.approx(chip_width(**size, chisel_edge_angle=psi), **CLOSE)
    assert seen.chisel_edge_angle == pytest.approx(psi, **CLOSE)
    assert seen.chisel_edge_angle_at_axis == pytest.approx(psi, **CLOSE)
    expected = chisel_edge_length(web=drill["web"], chisel_edge_angle=psi)
    assert seen.chisel_edge_length == pytest.approx(expected, **CLOSE)
    rake = chisel_edge_rake(point_angle=drill["point_angle"], chisel_edge_angle=psi)
    assert seen.chisel_edge_rake == pytest.approx(rake, **CLOSE)
    assert abs(seen.lip_bow_1) < 1e-9 * drill["diameter"]
    assert abs(seen.chisel_edge_rise) < 1e-9 * drill["diameter"]
    assert seen.point_offset < 1e-9 * drill["diameter"]
    assert seen.lip_height_difference == 0


@given(plain_drills(), shares)
def test_relief_and_rake_along_the_lip(drill: dict[str, float], share: float) -> None:
    radius = _radius(drill, share)
    seen = ground(drill).inspect().lip_at(1, radii=np.array([radius]))
    lip = {"radius": radius, "web": drill["web"], "point_angle": drill["point_angle"]}
    relief = relief_at_radius(**lip, axial_relief=drill["axial_relief"])
    assert seen.relief[0] == pytest.approx(relief, **CLOSE)
    assert seen.inclination[0] == pytest.approx(lip_inclination(**lip), **CLOSE)
    helix = local_helix(helix_angle=drill["helix_angle"], radius=radius, diameter=drill["diameter"])
    rake = normal_rake(local_helix=helix, **lip)
    assert seen.normal_rake[0] == pytest.approx(rake, rel=1e-7, abs=1e-7)


@given(plain_drills(), shares)
def test_relief_and_rake_in_other_planes(drill: dict[str, float], share: float) -> None:
    """Square to the lip, and along the way a place moves: cut flank and face with those planes, by their normals."""
    radius = _radius(drill, share)
    point = ground(drill)
    lip, place = point.lips[0], point.lips[0].at_radius(np.array([radius]))
    flank = np.array([-float(s[0]) for s in lip.own.slope(place.x, place.y)] + [1.0])
    (ax, ay), (zx, zy) = lip.flute.wall_slopes(1, place.along, place.z)
    face = np.cross([ax[0], ay[0], 0.0], [zx[0], zy[0], 1.0])
    out = np.cross(flank, face)
    out *= np.sign(out[:2] @ [place.x[0], place.y[0]]) / np.linalg.norm(out)
    moves = np.array([-place.y[0], place.x[0], 0.0]) / radius
    # Square to the lip: up the flank for a step ahead.
    ahead = moves - (moves @ out) * out
    ahead /= np.linalg.norm(ahead)
    on_flank = np.cross(flank, out)
    relief = math.degrees(math.atan((on_flank @ np.cross(out, ahead)) / (on_flank @ ahead)))
    size = {"radius": radius, "web": drill["web"], "point_angle": drill["point_angle"]}
    assert relief == pytest.approx(normal_relief(**size, axial_relief=drill["axial_relief"]), **CLOSE)
    # Along the movement: back on the face for a step down.
    level = out - (out @ moves) * moves
    down = np.cross(moves, level / np.linalg.norm(level))
    on_face = np.cross(face, level)
    rake = math.degrees(math.atan(-(on_face @ moves) / (on_face @ down)))
    seen = point.inspect().lip_at(1, radii=np.array([radius]))
    along = {"normal_rake": float(seen.normal_rake[0]), "lip_inclination": float(seen.inclination[0])}
    assert rake == pytest.approx(orthogonal_rake(**along), rel=1e-7, abs=1e-7)


@given(plain_drills())
def test_lip_relief_and_heel(drill: dict[str, float]) -> None:
    seen = ground(drill).inspect()
    angles = {"point_angle": drill["point_angle"], "axial_relief": drill["axial_relief"]}
    ratio = drill["web"] / drill["diameter"]
    assert seen.lip_relief == pytest.approx(lip_relief(**angles, web_ratio=ratio), **CLOSE)
    assert seen.heel_clearance == pytest.approx(heel_clearance(**angles, web_ratio=ratio), rel=1e-8, abs=1e-8)


@given(plain_drills(), shares, st.floats(0.001, 0.05))
def test_what_the_feed_takes(drill: dict[str, float], share: float, feed_share: float) -> None:
    """The gap just behind the lip opens at the working relief, and is none at the least relief."""
    radius, feed = _radius(drill, share), feed_share * drill["diameter"]
    point = ground(drill)
    relief = relief_at_radius(
        radius=radius, web=drill["web"], point_angle=drill["point_angle"], axial_relief=drill["axial_relief"]
    )
    working = working_relief(relief_at_radius=relief, feed_relief_loss=feed_relief_loss(feed=feed, radius=radius))
    seen = point.inspect().lip_at(1, radii=np.array([radius]))
    # Two slopes that are counted from the same level: the path of the lip falls by the feed in a full turn.
    path = math.degrees(math.atan(feed / (2 * math.pi * radius)))
    assert seen.relief[0] - path == pytest.approx(working, **CLOSE)
    rubs = point.inspect().first_rub(1, feed=feed, radius=radius) == 0.0
    assert rubs == (working <= 0) or abs(working) < 1e-6


@given(plain_drills(), st.floats(0.001, 0.03))
def test_least_relief_is_where_the_corner_begins_to_rub(drill: dict[str, float], feed_share: float) -> None:
    feed = feed_share * drill["diameter"]
    least = float(least_lip_relief(feed=feed, diameter=drill["diameter"], relief_margin=0))
    flute = Flute(**{name: drill[name] for name in ("diameter", "web", "point_angle", "helix_angle")})
    rubs = []
    for relief in (least - 1e-3, least + 1e-3):
        flank = PlaneFlank(point_angle=drill["point_angle"], lip_relief=relief)
        lip = GroundPoint(flute, flank).inspect() if _has_relief_at_the_centre(flute, flank) else None
        rubs.append(lip is None or lip.first_rub(1, feed=feed) == 0.0)
    assert rubs[0]
    assert not rubs[1] or not _has_relief_at_the_centre(flute, flank)


def _has_relief_at_the_centre(flute: Flute, flank: PlaneFlank) -> bool:
    slope_y = flank.over(flute, 1).slope(np.zeros(1), np.zeros(1))[1]
    return bool(slope_y[0] > 0.01)


@given(plain_drills(), st.floats(0.001, 0.02), shares)
def test_fall_of_the_flank(drill: dict[str, float], turn: float, share: float) -> None:
    """For a small step round, the flank falls by what its slope says; the rest is of second order."""
    radius = _radius(drill, share)
    point = ground(drill)
    lip = point.lips[0]
    place = lip.at_radius(np.array([radius]))
    angle = math.atan2(place.y[0], place.x[0]) - np.array([1.0, -1.0]) * turn * 2 * math.pi
    heights = lip.own.height(radius * np.cos(angle), radius * np.sin(angle))
    relief = relief_at_radius(
        radius=radius, web=drill["web"], point_angle=drill["point_angle"], axial_relief=drill["axial_relief"]
    )
    said = flank_fall(radius=radius, relief_at_radius=relief, turn_share=turn)
    # A plane makes a sine round the axis: half the difference of a step ahead and a step back is sin / angle of it.
    straight = (heights[1] - heights[0]) / 2 * (turn * 2 * math.pi) / math.sin(turn * 2 * math.pi)
    assert straight == pytest.approx(said, rel=1e-8, abs=1e-10)


@given(plain_drills(), shares)
def test_flute(drill: dict[str, float], share: float) -> None:
    """Lead and local helix, from how a place of the wall moves round for a step along the axis."""
    flute = ground(drill).flute
    radius = drill["web"] / 2 + share * (drill["diameter"] - drill["web"]) / 2
    along = flute.along_at(1, np.array([radius]), np.zeros(1))
    low, high = (flute.wall(1, along, np.array([z])) for z in (0.0, 1e-3 * drill["diameter"]))
    turn = math.remainder(math.atan2(high[1][0], high[0][0]) - math.atan2(low[1][0], low[0][0]), 2 * math.pi)
    helix = local_helix(helix_angle=drill["helix_angle"], radius=radius, diameter=drill["diameter"])
    assert math.tan(math.radians(float(helix))) == pytest.approx(radius * turn / (1e-3 * drill["diameter"]), abs=1e-9)
    if drill["helix_angle"] > 1:
        expected = lead(diameter=drill["diameter"], helix_angle=drill["helix_angle"])
        assert 2 * math.pi / turn * 1e-3 * drill["diameter"] == pytest.approx(expected, rel=1e-6)


@given(plain_drills(), st.floats(0.01, 0.9))
def test_lips_of_unequal_height(drill: dict[str, float], share: float) -> None:
    """On a straight flute, so that the deeper lip is not turned by the helix: the tip moves and the lips differ."""
    straight = {**drill, "helix_angle": 0.0}
    # So much that both feet stay on the lips: beyond the foot of the axis, and well inside the corner.
    foot = float(ground(straight).feet[0].x[0])
    room = min(foot, 0.7 * drill["diameter"] / 2 - foot)
    error = share * 2 * room / math.tan(math.radians(drill["point_angle"] / 2))
    seen = ground(straight, flank_height=-error).inspect()
    assert seen.lip_height_difference == pytest.approx(error, **CLOSE)
    offset = point_offset(lip_height_difference=error, point_angle=drill["point_angle"])
    assert seen.point_offset == pytest.approx(offset, **CLOSE)
    difference = abs(seen.lip_length_1 - seen.lip_length_2)
    said = lip_height_difference(lip_length_difference=difference, point_angle=drill["point_angle"])
    assert said == pytest.approx(error, **CLOSE)
    assert seen.web == pytest.approx(drill["web"], **CLOSE)
    assert seen.chisel_edge_angle == pytest.approx(_psi(drill), **CLOSE)


@given(st.floats(0.5, 80), st.floats(45, 75), st.floats(0.5, 4), st.floats(0.002, 0.02))
def test_lips_at_unequal_angles(diameter: float, half: float, more: float, feed_share: float) -> None:
    """The relations leave the web out: with hardly any web, the ground point comes to them."""
    ratio = 1e-5
    flute = Flute(diameter=diameter, web_ratio=ratio, point_angle=2 * half, helix_angle=0)
    flanks = [PlaneFlank(point_angle=2 * h, axial_relief=10) for h in (half, half + more)]
    seen = GroundPoint(flute, *flanks).inspect()
    angles = {"half_angle_1": half, "half_angle_2": half + more}
    assert seen.half_angle_1 == pytest.approx(half, abs=1e-3)
    assert seen.half_angle_2 == pytest.approx(half + more, abs=1e-3)
    radius = 0.3 * diameter
    height = lip_height_from_angles(radius=radius, **angles)
    assert -seen.lip_height_difference_at(radius=radius) == pytest.approx(height, rel=1e-5, abs=1e-6 * diameter)
    idle = float(idle_radius(feed=feed_share * diameter, **angles))
    if idle < diameter / 2:
        # Half a turn later the leading lip has gone half a feed on.
        late = -seen.lip_height_difference_at(radius=idle)
        assert late == pytest.approx(feed_share * diameter / 2, rel=1e-4)


@given(plain_drills(), st.floats(0, 40))
def test_a_rolled_drill_reads_too_small(drill: dict[str, float], roll: float) -> None:
    """Look at the lips of the ground point from the side, rolled: the angle between them as drawn on that view."""
    first = ground(drill).inspect().lips[0]
    chord = first.corner - first.foot
    angle = math.radians(roll)
    seen = abs(chord[0] * math.cos(angle) + chord[1] * math.sin(angle))
    read = 2 * math.degrees(math.atan2(seen, -chord[2]))
    assert rolled_reading(point_angle=drill["point_angle"], roll_angle=roll) == pytest.approx(read, **CLOSE)


@given(plain_drills(), st.floats(-20, 20))
def test_stock_for_another_point_angle(drill: dict[str, float], more: float) -> None:
    """With hardly a web, the tip of the new point stands lower by the stock when the corners stay."""
    new = min(max(drill["point_angle"] + more, 66), 165)
    thin = {**drill, "web": 1e-6 * drill["diameter"], "helix_angle": 0.0}
    heights = [ground({**thin, "point_angle": angle}).inspect().tip_height for angle in (drill["point_angle"], new)]
    stock = stock_for_angle_change(diameter=drill["diameter"], point_angle=drill["point_angle"], new_point_angle=new)
    assert abs(heights[0] - heights[1]) == pytest.approx(stock, abs=3e-6 * drill["diameter"])


@given(plain_drills(), st.floats(1e-6, 1e-5))
def test_the_sharp_cone_is_the_limit_without_a_web(drill: dict[str, float], ratio: float) -> None:
    seen = ground({**drill, "web": ratio * drill["diameter"]}).inspect()
    height = point_height(diameter=drill["diameter"], point_angle=drill["point_angle"])
    assert seen.tip_height == pytest.approx(height, abs=2e-5 * drill["diameter"])
    real = ground(drill).inspect()
    assert real.tip_height < height


@given(plain_drills(), st.floats(0.001, 0.02), st.floats(0.1, 3))
def test_a_drill_ground_back_has_a_thicker_web(drill: dict[str, float], taper: float, diameters: float) -> None:
    """Grind the same flanks deeper into a drill whose web grows: both feet move back by what was removed."""
    removed = diameters * drill["diameter"]
    grown = float(web_after_shortening(web=drill["web"], web_taper=taper, length_removed=removed))
    assume(grown < 0.45 * drill["diameter"])
    flute = Flute(**{name: drill[name] for name in ("diameter", "web", "point_angle")}, helix_angle=0, web_taper=taper)
    readings, feet = [], []
    for height in (0.0, -removed):
        flank = PlaneFlank(point_angle=drill["point_angle"], axial_relief=drill["axial_relief"], flank_height=height)
        point = GroundPoint(flute, flank)
        readings.append(point.inspect().web)
        feet.append(float(point.feet[0].z[0]))
    at_the_feet = web_after_shortening(web=readings[0], web_taper=taper, length_removed=feet[0] - feet[1])
    assert readings[1] == pytest.approx(at_the_feet, **CLOSE)
    # The feet lie a little apart from where the flanks cross the axis, since relief carries them down a thicker web.
    assert readings[1] - readings[0] == pytest.approx(grown - drill["web"], rel=0.05)
