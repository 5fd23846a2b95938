"""What the browser is sent is the solid itself, and not much."""

import numpy as np
import pytest
from attrs import evolve

from drillpoint.explorers.solid.packing import is_wide, layout, packed
from tests.drawing.solid.points import NAMES, shown_point


@pytest.mark.parametrize("name", NAMES)
def test_the_bytes_hold_the_solid(name):
    solid = shown_point(name)
    data, counts = packed(solid), layout(solid)
    assert len(data) < 400_000
    assert counts["wide"] is False
    places = counts["places"]
    corners = np.frombuffer(data, dtype="V16", count=places).view("u1").reshape(-1, 16)
    assert corners[:, :12].copy().view("<f4") == pytest.approx(solid.places, abs=1e-5)
    assert corners[:, 12:15].copy().view("i1") / 127 == pytest.approx(solid.normals, abs=0.005)
    assert (corners[:, 15] == solid.of_place).all()
    rest = np.frombuffer(data, dtype="<u2", offset=16 * places, count=3 * counts["triangles"] + 2 * counts["lines"])
    assert (rest[: 3 * counts["triangles"]].reshape(-1, 3) == solid.triangles).all()
    assert (rest[3 * counts["triangles"] :].reshape(-1, 2) == solid.lines).all()
    assert (np.frombuffer(data[-counts["lines"] :], dtype="u1") == solid.of_line).all()


def test_more_corners_than_two_bytes_count_are_numbered_in_four():
    solid = shown_point("small")
    many = evolve(
        solid,
        places=np.resize(solid.places, (70_000, 3)),
        normals=np.resize(solid.normals, (70_000, 3)),
        of_place=np.resize(solid.of_place, 70_000),
    )
    assert is_wide(many)
    assert len(packed(many)) == 16 * 70_000 + 12 * len(many.triangles) + 9 * len(many.lines)
