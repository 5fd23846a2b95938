"""Figures on the web, its growth, its thinning and pilot holes. Each names its source and how it was seen.

The tolerance is the rounding of the figure.
"""

from __future__ import annotations

import pytest

from drillpoint.errors import Impossible
from drillpoint.handbook.library import ranges
from drillpoint.relations import (
    chisel_edge_length,
    lip_length,
    pilot_cover,
    pilot_diameter,
    thinned_lip_in_end_view,
    thinned_lip_length,
    thinned_web,
    thinning_reach,
    untouched_lip_length,
    untouched_lip_share,
    web_after_shortening,
)

INCH = 25.4
THINNED = {"web": 1.5, "chisel_edge_angle": 125, "thinned_chisel_length": 0.8, "thinning_angle": 30}


def test_a_web_of_ten_millimetres_after_twenty_are_gone() -> None:
    # Taper 1.4 mm per 100 mm: printed as usual, seen in a secondary source. The rest DERIVED.
    taper = ranges("web_taper").span[0]
    web = web_after_shortening(web=1.5, web_taper=taper, length_removed=20)
    assert web == pytest.approx(1.78, abs=5e-3)
    assert chisel_edge_length(web=1.5, chisel_edge_angle=125) == pytest.approx(1.831, abs=5e-4)
    assert chisel_edge_length(web=web, chisel_edge_angle=125) == pytest.approx(2.173, abs=5e-4)


def test_a_twenty_millimetre_drill_reground_short() -> None:
    # DERIVED: web 3.0 mm, an assumed taper of 0.024 mm per mm, 40 mm gone.
    web = web_after_shortening(web=3.0, web_taper=0.024, length_removed=40)
    assert web == pytest.approx(3.96, abs=5e-3)
    assert chisel_edge_length(web=3.0, chisel_edge_angle=125) == pytest.approx(3.66, abs=5e-3)
    assert chisel_edge_length(web=web, chisel_edge_angle=125) == pytest.approx(4.83, abs=5e-3)
    gone = web_after_shortening.solve("length_removed", web_after_shortening=3.96, web=3.0, web_taper=0.024)
    assert gone == pytest.approx(40, abs=1e-9)


def test_web_from_a_measured_chisel_edge_and_back() -> None:
    # DERIVED: 10 mm drill, web 1.5 mm, chisel edge at 125°.
    web = chisel_edge_length.solve("web", chisel_edge_length=1.8312, chisel_edge_angle=125)
    assert web == pytest.approx(1.5, abs=5e-5)
    assert chisel_edge_length(web=web, chisel_edge_angle=55) == pytest.approx(1.8312, abs=1e-12)


def test_a_pilot_that_covers_the_chisel_edge() -> None:
    # DERIVED: half an inch, web 0.15 of it: the chisel edge is 0.092 in.
    least = pilot_diameter(diameter=0.5 * INCH, web_ratio=0.15, chisel_edge_angle=125)
    assert least / INCH == pytest.approx(0.092, abs=5e-4)
    third = pilot_cover(pilot_diameter=0.5 * INCH / 3, diameter=0.5 * INCH, web_ratio=0.15, chisel_edge_angle=125)
    assert third > 1
    assert third.notes == ()


def test_where_a_third_of_the_drill_stops_covering_the_chisel_edge() -> None:
    # DERIVED, at 125°, whatever the size. A pilot of a third of the drill is common practice.
    most = pilot_diameter.solve("web_ratio", pilot_diameter=10 / 3, diameter=10, chisel_edge_angle=125)
    assert most == pytest.approx(0.273, abs=5e-4)
    short = pilot_cover(pilot_diameter=10 / 3, diameter=10, web_ratio=0.28, chisel_edge_angle=125)
    assert short < 1
    assert any("must still be pushed through" in note for note in short.notes)
    assert pilot_cover.solve("web_ratio", pilot_cover=1, pilot_diameter=4, diameter=12, chisel_edge_angle=125) == (
        pytest.approx(most, abs=1e-9)
    )


def test_a_thinned_point() -> None:
    # DERIVED by hand from the end view: chisel edge left 0.8 mm, thinned at 30° to the lip.
    assert thinning_reach(**THINNED) == pytest.approx(0.9609, abs=5e-5)
    assert thinned_lip_in_end_view(**THINNED) == pytest.approx(0.8447, abs=5e-5)
    assert thinned_web(chisel_edge_angle=125, thinned_chisel_length=0.8, thinning_angle=30) == pytest.approx(
        0.3381, abs=5e-5
    )
    assert thinned_lip_length(**THINNED, point_angle=118, axial_relief=0) == pytest.approx(
        0.8447 * (1 + (0.60086 * 0.86603) ** 2) ** 0.5, abs=1e-4
    )
    whole = lip_length(diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)
    left = untouched_lip_length(diameter=10, point_angle=118, **THINNED)
    assert untouched_lip_share(diameter=10, **THINNED) == pytest.approx(left / whole, rel=1e-12)
    assert left == pytest.approx(4.646, abs=5e-4)


@pytest.mark.parametrize(
    ("change", "reason"),
    [
        ({"thinning_angle": 56}, "no web is left to hold the tip together"),
        ({"thinning_angle": 55}, "no web is left to hold the tip together"),
        ({"thinned_chisel_length": 1.9}, "is no shorter than the web"),
        ({"thinning_angle": 4}, "no main lip is left and the point angle is lost"),
    ],
)
def test_thinning_that_goes_too_far_is_refused_with_the_reason(change: dict[str, float], reason: str) -> None:
    with pytest.raises(Impossible, match=reason):
        untouched_lip_length(diameter=10, point_angle=118, **{**THINNED, **change})
