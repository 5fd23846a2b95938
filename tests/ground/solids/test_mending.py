"""Triangles too thin to survive rounding are taken out, and the solid stays closed."""

from __future__ import annotations

import numpy as np
import pytest

from drillpoint.ground.solids.mending import mended
from drillpoint.ground.solids.solid import Mesh
from tests.ground.solids.test_mesh import faults


def _block_with_a_node_beside_a_corner(gap: float) -> Mesh:
    """A cube whose edge from (1, 0, 0) to (1, 1, 0) has a node close to its first end."""
    corners = [[x, y, z] for z in (0, 1) for y in (0, 1) for x in (0, 1)]
    vertices = np.array([*corners, [1.0, gap, 0.0]], dtype=float)
    quads = [(4, 5, 7, 6), (0, 1, 5, 4), (2, 6, 7, 3), (0, 4, 6, 2)]
    triangles = [t for a, b, c, d in quads for t in ((a, b, c), (a, c, d))]
    triangles += [(0, 8, 1), (0, 3, 8), (0, 2, 3), (1, 8, 5), (8, 7, 5), (8, 3, 7)]
    faces = np.array([*([0] * 8), *([1] * 6)], dtype=np.int32)
    lines = {"edge": np.array([1, 8, 3], dtype=np.int32), "short": np.array([1, 8], dtype=np.int32)}
    return Mesh(vertices, np.array(triangles, dtype=np.int32), ("sides", "others"), faces, lines)


def test_a_thin_triangle_is_drawn_together() -> None:
    made = _block_with_a_node_beside_a_corner(1e-7)
    assert faults(made) == ["a triangle has no area"]
    better = mended(made, 1e-3)
    assert faults(better) == []
    assert len(better.vertices) == 8
    assert len(better.triangles) == len(better.faces) == 12
    assert better.volume == pytest.approx(1, abs=1e-6)
    assert better.vertices[better.edges["edge"]][[0, -1]] == pytest.approx(np.array([[1, 0, 0], [1, 1, 0]]), abs=1e-6)
    assert "short" not in better.edges


def test_what_is_thick_enough_or_out_of_reach_stays() -> None:
    thick = _block_with_a_node_beside_a_corner(0.01)
    assert np.array_equal(mended(thick, 1e-3).triangles, thick.triangles)
    thin = _block_with_a_node_beside_a_corner(1e-7)
    assert np.array_equal(mended(thin, 1e-9).triangles, thin.triangles)
