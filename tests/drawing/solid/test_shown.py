"""What is seen of a solid lies where the inspection finds it."""

import math

import numpy as np
import pytest

from drillpoint.drawing.solid.parts import LINES, SURFACES, kind_of
from drillpoint.drawing.solid.picture import turned
from drillpoint.drawing.solid.shown import NO_PART, view_named
from drillpoint.errors import LearnerError
from tests.drawing.solid.points import NAMES, points, shown_point


@pytest.fixture(params=NAMES)
def name(request):
    return request.param


@pytest.fixture
def point(name):
    return points()[name]


@pytest.fixture
def solid(name):
    return shown_point(name)


def line(solid, name):
    """The places of a named edge."""
    return solid.places[np.unique(solid.lines[solid.of_line == solid.parts.index(name)])]


def test_every_part_has_a_look_of_its_own(solid):
    for number, name in enumerate(solid.parts):
        faces, edges = (solid.of_place == number).sum(), (solid.of_line == number).sum()
        assert (faces > 0) != (edges > 0), name
        assert kind_of(name) in (SURFACES if faces else LINES), name
    assert {"lip 1", "lip 2", "chisel edge", "margin 1", "body 2", "flute 1"} <= set(solid.parts)


def test_the_chisel_edge_has_the_inspected_length_and_angle(point, solid):
    read = point.inspect()
    places = line(solid, "chisel edge")[:, :2]
    apart = np.linalg.norm(places[:, None] - places[None], axis=2)
    first, second = (places[k] for k in np.unravel_index(apart.argmax(), apart.shape))
    thinned = read.thinning
    length = thinned.thinned_chisel_length if thinned else read.chisel_edge_length
    # DERIVED: the triangles follow the drill to a few thousandths of its diameter
    close = 0.004 * point.flute.diameter
    assert apart.max() == pytest.approx(length, abs=close)
    if point.is_alike:
        lip = line(solid, "lip 1")[:, :2]
        along, edge = lip[np.hypot(*lip.T).argmax()] - lip[np.hypot(*lip.T).argmin()], first - second
        angle = math.degrees(math.acos(abs(along @ edge) / np.linalg.norm(along) / np.linalg.norm(edge)))
        given = thinned.chisel_edge_angle if thinned else read.chisel_edge_angle
        assert 180 - angle == pytest.approx(given, abs=math.degrees(close / length))


def test_lips_reach_from_the_chisel_edge_to_the_diameter(point, solid):
    for lip in (1, 2):
        radii = np.hypot(*line(solid, f"lip {lip}")[:, :2].T)
        assert radii.max() == pytest.approx(point.flute.radius, rel=0.002)


def test_corners_are_split_so_that_normals_are_smooth_within_a_face_only(solid):
    assert np.linalg.norm(solid.normals, axis=1) == pytest.approx(1)
    a, b, c = (solid.places[corner] for corner in solid.triangles.T)
    across = np.cross(b - a, c - a)
    size = np.linalg.norm(across, axis=1)
    big = size > 1e-3 * size.max()
    flat = across[big] / size[big, None]
    agree = np.einsum("ij,ikj->ik", flat, solid.normals[solid.triangles[big]])
    # Normals look out of the metal, as the triangles do, but for a hair's breadth at creases within a face.
    assert np.mean(agree > 0.7) > 0.98
    parts = solid.of_place[solid.triangles]
    assert (parts == parts[:, :1]).all()


def test_lines_are_sorted_by_part_and_short(point, solid):
    assert (np.diff(solid.of_line) >= 0).all()
    assert (solid.of_line == NO_PART).sum() > 50
    lengths = np.linalg.norm(np.diff(solid.places[solid.lines], axis=1), axis=2)
    assert lengths.max() < point.flute.diameter


def test_seen_along_the_chisel_edge_it_is_a_point_and_square_to_the_lips_they_show_the_point_angle():
    for name in ("plain", "left"):
        solid = shown_point(name)
        edge = turned(line(solid, "chisel edge"), view_named(solid.views, "along chisel edge"))
        assert np.ptp(edge[:, 0]) < 0.01
        assert np.ptp(edge[:, 2]) > 1.4
        lip = turned(line(solid, "lip 1"), view_named(solid.views, "side"))
        width, height = np.ptp(lip[:, 0]), np.ptp(lip[:, 1])
        # DERIVED: half the point angle to the axis
        assert math.degrees(math.atan2(width, height)) == pytest.approx(59, abs=0.1)


def test_end_view_has_lip_1_to_the_right_and_a_left_hand_drill_is_its_mirror_image():
    for name, up in (("plain", 1), ("left", -1)):
        solid = shown_point(name)
        lip = turned(line(solid, "lip 1"), view_named(solid.views, "end"))
        assert lip[:, 0].max() > 4.9
        assert up * lip[:, 1] == pytest.approx(0.75, abs=0.01)


def test_an_unknown_view_is_refused_with_the_nearest():
    with pytest.raises(LearnerError, match="no view 'sides'; did you mean 'side'"):
        view_named(shown_point("small").views, "sides")
