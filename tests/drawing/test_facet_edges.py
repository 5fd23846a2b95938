"""The line between two facets: where both planes are equally high, inside the drill, on its own side of the edge."""

from __future__ import annotations

import numpy as np
import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.facet_edges import facet_edges
from drillpoint.drawing.ground_end_view import _outline
from drillpoint.ground import FacetedFlank, Flute, GroundPoint, PlaneFlank

FLUTE = Flute(diameter=10, web=1.5)


def ground(**more: float) -> GroundPoint:
    return GroundPoint(FLUTE, FacetedFlank(point_angle=118, lip_relief=12, secondary_relief=25, **more))


@pytest.mark.parametrize("more", [{}, {"primary_width": 0.5}, {"primary_width": 1.8}, {"flank_turn": 4.0}])
def test_both_facets_are_equally_high_all_along_it(more: dict[str, float]) -> None:
    point = ground(**more)
    lines = list(facet_edges(point, _outline(point)))
    assert len(lines) == 2
    x, y = (np.linspace(*ends, 9) for ends in lines[0])
    assert np.hypot(x, y).max() <= 5 + 1e-9
    # DERIVED: across the line the slope of the flank changes from the one plane's to the other's; on it they agree.
    turn = np.radians(more.get("flank_turn", 0.0))
    across = np.array([-np.sin(turn), np.cos(turn)])
    slopes = [point.lips[0].own.slope(x + side * across[0], y + side * across[1]) for side in (1e-6, -1e-6)]
    steep = [sx * across[0] + sy * across[1] for sx, sy in slopes]
    assert np.allclose(steep[1], np.tan(np.radians(25)))
    assert (steep[0] < steep[1] - 0.1).all()
    assert [ends.tolist() for ends in lines[1]] == [(-ends).tolist() for ends in lines[0]]


def test_four_facets_meet_on_the_axis() -> None:
    point = ground()
    (x, y), _ = facet_edges(point, _outline(point))
    assert (abs(x[0]), abs(y[0])) == pytest.approx((0, 0), abs=0.003)
    narrow = ground(primary_width=0.5)
    (_, y), _ = facet_edges(narrow, _outline(narrow))
    assert y == pytest.approx(0.25)  # DERIVED: half a web of 0.75 less 0.5


def test_planes_have_none_and_facets_are_drawn() -> None:
    plain = GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=12))
    assert list(facet_edges(plain, _outline(plain))) == []
    assert "Two facets lie behind a lip" in draw("ground_end_view", ground()).alt
    assert "facet" not in draw("ground_end_view", plain).alt
    edges = [draw("ground_end_view", point).svg.count('class="edge"') for point in (ground(), plain)]
    assert edges[0] == edges[1] + 2
