"""The still picture of a solid."""

import base64
import io
import math
import re

import numpy as np
import pytest
from PIL import Image

from drillpoint.drawing import solid_picture
from drillpoint.drawing.solid.picture import HEIGHT, WIDTH, still
from drillpoint.drawing.solid.shown import View
from drillpoint.errors import LearnerError
from tests.drawing.solid.points import NAMES, points, shown_point


def greys(picture):
    """Grey and cover of each pixel."""
    data = re.search(r"data:image/png;base64,([^\"]+)", picture.svg)[1]
    return np.moveaxis(np.asarray(Image.open(io.BytesIO(base64.b64decode(data))), dtype=float), 2, 0) / 255


def strokes(picture, kind):
    """Ends of the strokes of one kind of line, shape (n, 2, 2), x right and y up."""
    path = re.search(rf'class="{kind}" d="([^"]+)"', picture.svg)
    if path is None:
        return np.zeros((0, 2, 2))
    return np.array([float(n) for n in re.findall(r"[\d.]+", path[1])]).reshape(-1, 2, 2) * [1, -1]


def direction(ends):
    """Degrees of the longest stretch of some strokes, 0 to 180."""
    places = ends.reshape(-1, 2)
    apart = np.linalg.norm(places[:, None] - places[None], axis=2)
    first, second = (places[k] for k in np.unravel_index(apart.argmax(), apart.shape))
    return math.degrees(math.atan2(*(second - first)[::-1])) % 180


VIEWS = ("above", "end", "side", "along lips", "along chisel edge")


@pytest.mark.parametrize(
    ("name", "view"), [*((name, "above") for name in NAMES), *(("split", view) for view in VIEWS[1:])]
)
def test_every_point_has_a_picture_of_moderate_size_from_everywhere(name, view):
    picture = solid_picture(points()[name], view=view)
    grey, cover = greys(picture)
    assert grey.shape == (HEIGHT, WIDTH)
    assert 0.2 < cover.mean() < 0.9
    assert np.ptp(grey[cover == 1]) > 0.3
    assert len(strokes(picture, "lip")) > 5
    assert len(picture.svg) < 70_000
    assert re.search(r"chisel edge is [\d.]+ mm long", picture.alt)


def test_the_end_view_is_round_and_its_chisel_edge_stands_at_the_inspected_angle():
    point = points()["conical"]
    picture = solid_picture(point, view="end")
    _, cover = greys(picture)
    radius = WIDTH * 0.45
    # DERIVED: a full circle of the diameter, flutes closed by the twist of the body below
    assert cover.sum() == pytest.approx(math.pi * radius**2, rel=0.03)
    # DERIVED: lip 1 points to the right, so the edge leans by the acute angle
    assert direction(strokes(picture, "chisel-edge")) == pytest.approx(180 - point.inspect().chisel_edge_angle, abs=1.0)


def test_square_to_the_lips_the_drawn_lips_enclose_the_point_angle():
    picture = solid_picture(points()["plain"], view="side")
    lips = strokes(picture, "lip")
    left = lips[lips[..., 0].max(axis=1) < WIDTH / 2]
    right = lips[lips[..., 0].min(axis=1) > WIDTH / 2]
    # DERIVED: one rises to the tip, the other falls from it
    assert direction(right) - direction(left) == pytest.approx(118, abs=0.6)


def test_edges_behind_the_drill_are_not_drawn():
    solid = shown_point("plain")
    from_behind = still(solid, View("shank", "from the shank", 0, -80), "", "mm")
    assert len(strokes(from_behind, "chisel-edge")) == 0
    assert len(strokes(from_behind, "edge")) > 20


def test_a_left_hand_drill_looks_like_the_mirror_image():
    right, left = (greys(solid_picture(points()[name]))[1] for name in ("plain", "left"))
    assert np.abs(right[:, ::-1] - left).mean() < 0.01
    assert np.abs(right - left).mean() > 0.05


def test_flanks_and_flutes_differ_in_grey():
    solid = shown_point("plain")
    grey, cover = greys(still(solid, solid.views[1], "", "mm"))
    middle = WIDTH // 2
    reach = int(0.25 * WIDTH)
    flank, flute = grey[middle + 60, middle + reach], grey[middle - 90, middle + reach]
    assert cover[middle + 60, middle + reach] == 1
    assert abs(flank - flute) > 0.2


@pytest.mark.parametrize(("units", "bar"), [("mm", ">2 mm<"), ("inch", ">1/16 in<")])
def test_the_scale_bar_is_true(units, bar):
    picture = solid_picture(points()["plain"], view="end", units=units)
    assert bar in picture.svg
    ends = re.search(r"M(\d+\.\d+) \d+\.\d+H(\d+\.\d+)", picture.svg)
    length = {"mm": 2.0, "inch": 25.4 / 16}[units]
    # DERIVED: ten millimetres are nine tenths of the frame
    assert float(ends[2]) - float(ends[1]) == pytest.approx(length * 0.9 * WIDTH / 10, rel=0.005)


def test_the_alt_text_is_in_the_picture_and_what_is_no_point_is_refused():
    picture = solid_picture(points()["plain"], view="along lips")
    assert picture.alt.startswith("The point as a solid, seen along the lips. Diameter 10 mm")
    assert picture.alt in picture.svg
    with pytest.raises(LearnerError, match="shows a GroundPoint, not Flute"):
        solid_picture(points()["plain"].flute)
    with pytest.raises(LearnerError, match="no view 'ends'; did you mean 'end'"):
        solid_picture(points()["plain"], view="ends")
