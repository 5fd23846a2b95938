"""Figures of rake and of relief at work, printed or derived, against the book of relations.

Each names its source and how it was seen. The tolerance is the rounding of the figure.
"""

from __future__ import annotations

import pytest

from drillpoint.relations import (
    axial_relief,
    chip_thickness,
    chisel_edge_angle,
    chisel_edge_rake,
    dub_normal_rake,
    dub_set_back,
    feed_relief_loss,
    flank_fall,
    lead,
    least_dub_width,
    least_lip_relief,
    lip_inclination,
    lip_relief,
    local_helix,
    normal_rake,
    orthogonal_rake,
    relief_at_radius,
    wedge_angle,
    working_relief,
)

DRILL = {"diameter": 10.0, "web": 1.5, "point_angle": 118.0}
FLUTE = {**DRILL, "helix_angle": 30.0}


@pytest.mark.parametrize(("radius", "rake"), [(5, 30.62), (2.5, 9.52), (2, 3.0), (1, -24.92)])
def test_rake_falls_from_the_helix_to_far_below_zero(radius: float, rake: float) -> None:
    # DERIVED: 10 mm, 118°, web 0.15 of the diameter, helix 30°.
    assert normal_rake(**FLUTE, radius=radius) == pytest.approx(rake, abs=0.0101)


@pytest.mark.parametrize(("radius", "rake"), [(5, 30.83), (2.5, 9.85), (1, -31.23)])
def test_orthogonal_rake_is_further_from_zero(radius: float, rake: float) -> None:
    # DERIVED: the same drill.
    assert orthogonal_rake(**FLUTE, radius=radius) == pytest.approx(rake, abs=0.006)


@pytest.mark.parametrize(("radius", "inclination"), [(5, 7.39), (1.5, 25.38)])
def test_the_lip_leans_more_towards_the_centre(radius: float, inclination: float) -> None:
    # DERIVED: 118°, web 0.15 of the diameter.
    assert lip_inclination(radius=radius, web=1.5, point_angle=118) == pytest.approx(inclination, abs=0.006)


def test_the_helix_half_way_in() -> None:
    # DERIVED: tan 30°/2 is the tangent of 16.10°; a 10 mm drill with a 30° helix has a lead of 54.41 mm.
    assert local_helix(helix_angle=30, radius=2.5, diameter=10) == pytest.approx(16.10, abs=0.006)
    assert lead(diameter=10, helix_angle=30) == pytest.approx(54.41, abs=0.006)


def test_a_flat_for_brass_takes_the_rake_away() -> None:
    # DERIVED: 10 mm, 118°, web 0.15 of the diameter, helix 30°. Common practice: brass wants a flat on the lip.
    flat = dub_normal_rake(dub_rake=0, radius=5, web=1.5, point_angle=118)
    assert flat == pytest.approx(-4.47, abs=0.006)
    # What makes the normal rake itself nothing at the corner leans a little from the axis.
    lean = dub_normal_rake.solve("dub_rake", dub_normal_rake=0, radius=5, web=1.5, point_angle=118)
    assert lean == pytest.approx(3.83, abs=0.006)
    # With a feed of 0.2 mm/rev the layer is 0.086 mm thick; hardly more of a flat meets it all.
    least = least_dub_width(feed=0.2, dub_rake=0, radius=5, web=1.5, point_angle=118)
    assert least == pytest.approx(0.0860, abs=6e-5)
    back = dub_set_back(**FLUTE, radius=5, lip_relief=12, dub_rake=0, dub_width=0.2)
    assert back == pytest.approx(0.153, abs=6e-4)


def test_the_wedge_at_the_corner() -> None:
    # DERIVED: rake 30.62° and a relief of 10.53° square to the lip leave 48.85°.
    assert wedge_angle(**FLUTE, radius=5, lip_relief=12) == pytest.approx(48.85, abs=0.006)


@pytest.mark.parametrize(("angle", "rake"), [(125, -53.7), (117, -56.0)])
def test_rake_of_the_chisel_edge(angle: float, rake: float) -> None:
    # DERIVED: plane flanks, 118°.
    assert chisel_edge_rake(point_angle=118, chisel_edge_angle=angle) == pytest.approx(rake, abs=0.051)


def test_rake_measured_on_a_chisel_edge() -> None:
    # SOURCE: Ernst and Haggerty 1958, The spiral point drill (abstract seen): about -56° on the chisel edge of a
    # half-inch drill. Their point and chisel edge angle are not in the abstract; an ordinary point comes within 3°.
    for angle in (115, 120, 125):
        assert chisel_edge_rake(point_angle=118, chisel_edge_angle=angle) == pytest.approx(-56, abs=3)


@pytest.mark.parametrize(("radius", "loss"), [(5, 0.365), (1, 1.823)])
def test_what_the_feed_takes(radius: float, loss: float) -> None:
    # DERIVED: 10 mm drill, 0.2 mm/rev.
    assert feed_relief_loss(feed=0.2, radius=radius) == pytest.approx(loss, abs=6e-4)


@pytest.mark.parametrize(("radius", "relief"), [(2.5, 16.61), (1, 28.04)])
def test_relief_along_a_plane_flank(radius: float, relief: float) -> None:
    # DERIVED: 118°, web 0.15 of the diameter, 12° at the corner.
    found = relief_at_radius(radius=radius, **DRILL, lip_relief=12)
    assert found == pytest.approx(relief, abs=0.006)
    left = working_relief(radius=radius, **DRILL, lip_relief=12, feed=0.2)
    assert left == pytest.approx(found - feed_relief_loss(feed=0.2, radius=radius), abs=1e-12)


def test_a_drill_without_relief_rubs() -> None:
    # DERIVED: at 0.2 mm/rev a 10 mm drill needs more than 0.365° at the corner.
    assert least_lip_relief(feed=0.2, diameter=10, relief_margin=0) == pytest.approx(0.365, abs=6e-4)
    for relief, rubs in ((0.0, True), (0.36, True), (0.37, False), (12, False)):
        left = working_relief(radius=5, **DRILL, lip_relief=relief, feed=0.2)
        assert (left < 0) is rubs
        assert any("rubs" in note for note in left.notes) is rubs
    # How it shows: no relief at the corner is less than none square to the lip, and the chisel edge hardly slants.
    assert axial_relief(lip_relief=0, point_angle=118, web_ratio=0.15) == pytest.approx(-5.2, abs=0.051)
    assert chisel_edge_angle(lip_relief=8, point_angle=118, web_ratio=0.15) == pytest.approx(94.9, abs=0.051)


def test_relief_of_a_plane_flank_from_the_chisel_edge_wanted() -> None:
    # DERIVED: a chisel edge of 125° needs 26.84° at the corner of a 118° point, 19.23° of a 135° point.
    for point, corner in ((118, 26.84), (135, 19.23)):
        wanted = {"chisel_edge_angle": 125, "point_angle": point, "web_ratio": 0.15}
        assert chisel_edge_angle.solve("lip_relief", **wanted) == pytest.approx(corner, abs=0.006)
    # The same square to the lip, and from there to the corner: 130° at 118° needs 26.8°.
    square = chisel_edge_angle.solve("axial_relief", chisel_edge_angle=130, point_angle=118)
    assert square == pytest.approx(26.8, abs=0.051)
    at_corner = lip_relief(axial_relief=square, point_angle=118, web_ratio=0.15)
    again = chisel_edge_angle(lip_relief=at_corner, point_angle=118, web_ratio=0.15)
    assert again == pytest.approx(130, abs=1e-9)


def test_a_heel_ahead_of_its_lip_stands_in_the_way() -> None:
    # DERIVED: 8° the wrong way, 60° round at a radius of 38.1 mm: the heel stands 5.6 mm proud. It is relief, not rake.
    heel = flank_fall(radius=38.1, relief_at_radius=-8, turn_share=60 / 360)
    assert heel == pytest.approx(-5.6, abs=0.051)
    assert any("ahead of its lip" in note for note in heel.notes)


def test_relief_must_grow_inwards_with_the_feed() -> None:
    # DERIVED: a key that says relief may be the same everywhere forgets that the feed takes five times as much at a
    # fifth of the radius; an even 1.8° rubs there and not at the corner.
    assert working_relief(relief_at_radius=1.8, feed=0.2, radius=5) > 1.4
    assert working_relief(relief_at_radius=1.8, feed=0.2, radius=1) < 0


def test_chip_thickness_in_print() -> None:
    # SOURCE: Ghosh and Mallik, Manufacturing Science (second hand): 0.23 mm/rev at 118° printed as 0.1 mm.
    found = chip_thickness(feed=0.23, point_angle=118)
    assert found == pytest.approx(0.1, abs=0.05)
    # DERIVED: the same to four places.
    assert found == pytest.approx(0.0986, abs=5e-5)
