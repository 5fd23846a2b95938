"""Flat outlines filled with triangles."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.ground import CannotBeGround
from drillpoint.ground.solids.filling import filled


def _areas(outline: np.ndarray, triangles: np.ndarray) -> np.ndarray:
    a, b, c = (outline[triangles[:, corner]] for corner in range(3))
    return np.asarray(((b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]) / 2)


def _area(outline: np.ndarray) -> float:
    x, y = outline.T
    return float((x * np.roll(y, -1) - y * np.roll(x, -1)).sum() / 2)


@given(st.lists(st.floats(0.3, 2.0), min_size=3, max_size=40))
def test_the_triangles_fill_the_outline_and_no_more(reach: list[float]) -> None:
    # Any distances round a middle make an outline that does not cross itself.
    angle = np.arange(len(reach)) * 2 * math.pi / len(reach)
    outline = np.array(reach)[:, None] * np.stack([np.cos(angle), np.sin(angle)], axis=1)
    triangles = filled(outline, 1e-9)
    assert len(triangles) == len(outline) - 2
    areas = _areas(outline, triangles)
    assert (areas > 0).all()
    assert areas.sum() == pytest.approx(_area(outline), rel=1e-12)
    assert set(triangles.ravel()) == set(range(len(outline)))


def test_nodes_in_a_straight_line_make_no_flat_triangles() -> None:
    side = np.linspace(0, 1, 12, endpoint=False)
    corners = np.array([[0.0, 0.0], [4.0, 0.0], [1.0, 3.0]])
    outline = np.concatenate(
        [a + side[:, None] * (b - a) for a, b in zip(corners, np.roll(corners, -1, 0), strict=True)]
    )
    assert _areas(outline, filled(outline, 1e-9)).min() > 1e-3


def test_corners_lie_outside_the_circles_round_neighbouring_triangles() -> None:
    angle = np.linspace(0, math.pi, 20)
    outline = np.concatenate([np.stack([np.cos(angle), np.sin(angle)], axis=1), [[-0.5, -0.4], [0.6, -0.5]]])
    for triangle in filled(outline, 1e-9):
        a, b, c = outline[triangle]
        middle = np.linalg.solve(2 * np.array([b - a, c - a]), [b @ b - a @ a, c @ c - a @ a])
        # DERIVED: for a convex outline that is what makes a triangulation Delaunay's.
        assert np.linalg.norm(outline - middle, axis=1).min() > np.linalg.norm(a - middle) - 1e-9


def test_an_outline_the_wrong_way_round_is_refused() -> None:
    with pytest.raises(CannotBeGround):
        filled(np.array([[0.0, 0.0], [0.0, 1.0], [1.0, 1.0], [1.0, 0.0]]), 1e-9)
