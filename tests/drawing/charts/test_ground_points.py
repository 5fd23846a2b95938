"""Charts of ground points: their curves are the inspection's own readings."""

from __future__ import annotations

import numpy as np
import pytest

from drillpoint.drawing.charts.ground_points import chart_points
from drillpoint.errors import LearnerError
from drillpoint.ground import FacetedFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.ground.stations import stations
from drillpoint.relations import feed_relief_loss, heel_clearance, normal_rake, relief_at_radius

FLUTE = Flute(diameter=10, web=1.5)
PLAIN = GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=12))
FACETS = GroundPoint(FLUTE, FacetedFlank(point_angle=118, lip_relief=12, secondary_relief=25))


def test_the_relief_along_the_lip_of_a_plane_is_that_of_the_book() -> None:
    drawn = chart_points("relief_along_lip", one_plane=PLAIN, feed=0.2)
    plane, taken = drawn.curves
    assert (plane.label, taken.label) == ("one plane", "taken by the feed")
    assert plane.x[-1] == 5 and plane.y[-1] == pytest.approx(12)
    for x, y in list(zip(plane.x, plane.y, strict=True))[1:-1:20]:
        assert y == pytest.approx(
            float(relief_at_radius(radius=x, diameter=10, web=1.5, point_angle=118, lip_relief=12)), abs=1e-6
        )
    assert taken.y[-1] == pytest.approx(float(feed_relief_loss(feed=0.2, radius=5)))
    assert "One plane: from" in drawn.alt and "12° at 5 mm" in drawn.alt


def test_the_rake_along_a_straight_lip_is_that_of_the_book_and_a_bowed_lip_has_its_own() -> None:
    bowed = GroundPoint(FLUTE, PlaneFlank(point_angle=90, lip_relief=12))
    straight, sharper = chart_points("rake_along_lip", as_made=PLAIN, to_90=bowed).curves
    for x, y in list(zip(straight.x, straight.y, strict=True))[1:-1:20]:
        book = normal_rake(radius=x, diameter=10, web=1.5, point_angle=118, helix_angle=30)
        assert y == pytest.approx(float(book), abs=1e-6)
    # DERIVED: the face at the corner is the same, so cos(rake) times cos(inclination) is, too.
    corners = [stations(point.lips[0], point.lips[0].corner) for point in (PLAIN, bowed)]
    same = [np.cos(np.radians(c.normal_rake[0])) * np.cos(np.radians(c.inclination[0])) for c in corners]
    assert same[0] == pytest.approx(same[1], abs=1e-6)
    assert sharper.y[-1] < straight.y[-1]


def test_behind_the_corner_a_plane_comes_up_again_where_the_book_says() -> None:
    drawn = chart_points("fall_behind_corner", one_plane=PLAIN, four_facets=FACETS)
    plane, facets = drawn.curves
    (back,) = plane.crossings(0.0)
    assert back == pytest.approx(float(heel_clearance(lip_relief=12, point_angle=118, web_ratio=0.15)), abs=1e-6)
    assert facets.crossings(0.0)[0] == pytest.approx(FACETS.inspect().heel_clearance, abs=0.05)
    # The same plane as far as it reaches, and then a steeper one.
    assert facets.at(5.0) == pytest.approx(plane.at(5.0)) and facets.at(60.0) > plane.at(60.0) + 1


def test_it_is_written_in_inches_too() -> None:
    assert "0.1969 in" in chart_points("relief_along_lip", one_plane=PLAIN, units="inch").alt  # 5 mm


def test_what_cannot_be_charted_is_refused() -> None:
    with pytest.raises(LearnerError, match="did you mean 'relief_along_lip'"):
        chart_points("relief_along_lips", one_plane=PLAIN)
    with pytest.raises(LearnerError, match="does not go by feed"):
        chart_points("fall_behind_corner", one_plane=PLAIN, feed=0.2)
    with pytest.raises(LearnerError, match="give a ground point"):
        chart_points("relief_along_lip", one_plane=12)
