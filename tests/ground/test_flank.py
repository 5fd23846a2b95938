"""Every surface behind a lip gives its height and slope alike, at once or one by one."""

import math

import numpy as np
import pytest

from drillpoint.ground import ConicalFlank, FacetedFlank, Flute, PlaneFlank
from drillpoint.ground.flank import Flank

STEP = 1e-6
FLANKS = {
    "plane": PlaneFlank(point_angle=118, lip_relief=12, flank_turn=3, flank_height=0.1),
    "facets": FacetedFlank(point_angle=118, lip_relief=10),
    "cone": ConicalFlank(cone_half_angle=25, cone_tilt=34, apex_distance=9.5, skew=1.45, flank_turn=-2),
}


@pytest.mark.parametrize("flank", FLANKS.values(), ids=FLANKS)
def test_height_and_slope_agree(flank: Flank) -> None:
    """DERIVED: the slope is the height's difference over a small step, away from the edge between facets."""
    surface = flank.over(Flute(diameter=10, web=1.5), 1)
    x, y = np.array([0.3, 2.0, 4.0, 1.0]), np.array([0.7, 0.5, -1.0, -2.0])
    height, slope = surface.height_and_slope(x, y)
    assert height == pytest.approx(surface.height(x, y), abs=1e-15)
    assert np.array_equal(slope, surface.slope(x, y))
    ahead = surface.height(x + STEP, y) - surface.height(x - STEP, y)
    aside = surface.height(x, y + STEP) - surface.height(x, y - STEP)
    assert slope[0] == pytest.approx(ahead / (2 * STEP), abs=1e-8)
    assert slope[1] == pytest.approx(aside / (2 * STEP), abs=1e-8)


def test_a_cone_has_no_height_beyond_its_apex() -> None:
    surface = FLANKS["cone"].over(Flute(diameter=10, web=1.5), 1)
    height, slope = surface.height_and_slope(np.array([-20.0]), np.array([0.0]))
    assert all(math.isnan(value[0]) for value in (height, *slope))
