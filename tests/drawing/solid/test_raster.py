"""The depth buffer, on triangles whose picture is known."""

import io

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from drillpoint.drawing.solid.raster import png, rasterised

SQUARE = np.array([[0, 1, 2], [0, 2, 3]])


def square(left, top, right, bottom, z):
    return np.array([[left, top, z], [left, bottom, z], [right, bottom, z], [right, top, z]], dtype=float)


def test_a_square_covers_exactly_its_pixels():
    seen = rasterised(square(3, 2, 8, 6, 1.5), SQUARE, 12, 10)
    # DERIVED: the pixels whose middles lie between 3 and 8, and 2 and 6
    expected = np.zeros((10, 12), dtype=bool)
    expected[2:6, 3:8] = True
    assert ((seen.depth > -np.inf) == expected).all()
    assert (seen.hit == np.flatnonzero(expected)).all()
    assert seen.depth[4, 5] == pytest.approx(1.5)
    assert seen.depth[0, 0] == -np.inf


@pytest.mark.parametrize("order", [1, -1])
def test_what_is_nearer_to_the_eye_hides_the_rest_whichever_comes_first(order):
    places = np.concatenate([square(0, 0, 8, 8, 1.0), square(4, 4, 12, 12, 2.0)])
    triangles = np.concatenate([SQUARE, SQUARE + 4])[::order]
    depth = rasterised(places, triangles, 12, 12).depth
    assert depth[2, 2] == pytest.approx(1)
    assert depth[6, 6] == pytest.approx(2)


@given(st.lists(st.tuples(st.floats(-5, 25), st.floats(-5, 25), st.floats(-3, 3)), min_size=3, max_size=3))
def test_each_pixel_is_in_its_triangle_at_its_depth(corners):
    places = np.array(corners)
    seen = rasterised(places, np.array([[0, 1, 2]]), 20, 20)
    for number, shares in zip(seen.hit, seen.shares, strict=True):
        row, column = divmod(number, 20)
        at = shares @ places
        assert at[:2] == pytest.approx([column + 0.5, row + 0.5], abs=1e-6)
        assert seen.depth[row, column] == pytest.approx(at[2], abs=1e-6)
        assert shares.min() > -1e-6


def test_a_triangle_seen_from_its_edge_or_outside_the_picture_shows_nothing():
    places = np.array([[1, 1, 0], [5, 5, 0], [9, 9, 4], [-9, -9, 0], [-3, -9, 0], [-3, -3, 0]], dtype=float)
    seen = rasterised(places, np.array([[3, 4, 5]]), 12, 12)
    assert seen.hit.size == 0
    assert np.isfinite(rasterised(places, np.array([[0, 1, 2]]), 12, 12).shares).all()


def test_the_image_holds_the_pixels_it_was_given():
    random = np.random.default_rng(4)
    grey, cover = random.integers(0, 256, (2, 13, 7), dtype=np.uint8)
    read = np.asarray(Image.open(io.BytesIO(png(grey, cover))))
    assert (read == np.stack([grey, cover], axis=2)).all()
