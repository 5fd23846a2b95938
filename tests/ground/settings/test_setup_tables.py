"""Set-ups as tables: what is to be set, and what the inspection of the point reads."""

from __future__ import annotations

import numpy as np
import pytest

from drillpoint.ground.settings.setup import Setup
from drillpoint.ground.settings.setup_tables import family_table, setup_tables, sized
from drillpoint.ground.settings.setups import conical_setup, plane_setup
from drillpoint.quantities import quantity

USUAL = {"diameter": 10, "web": 1.5, "point_angle": 118, "lip_relief": 12}


@pytest.fixture(scope="module")
def cone() -> Setup:
    return conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=25)


def test_everything_to_set_stands_there_with_its_value(cone: Setup) -> None:
    to_set, _ = setup_tables(cone)
    shown = {term: value for term, value, _ in to_set.rows}
    for setting in cone.settings:
        term = setting.quantity.term
        assert (term in shown) == (setting.quantity.name != "flank_turn")
        assert term not in shown or shown[term] == sized(setting.quantity.name, setting.value)
    turned = conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=25, family="lip_on_cone")
    assert quantity("flank_turn").term in {row[0] for row in setup_tables(turned)[0].rows}


def test_what_comes_out_is_what_the_inspection_reads(cone: Setup) -> None:
    seen = cone.point.inspect()
    rows = {row[0]: row[1:] for row in setup_tables(cone)[1].rows}
    assert rows["chisel edge angle (obtuse, at the axis)"] == ("125°", "125°")
    assert rows["flank level with the corner again after"] == ("", f"{seen.heel_clearance:.1f}°")
    half_way = float(seen.lip_at(1, radii=np.array([2.5])).relief[0])
    assert rows["lip relief at half the radius"] == ("", f"{half_way:.1f}°")


def test_an_angle_that_was_left_free_is_said_to_be() -> None:
    rows = {row[0]: row[1:] for row in setup_tables(plane_setup(**USUAL))[1].rows}
    # SOURCE: worked out from the relation of plane flanks, 101.64° to the digits shown.
    assert rows["chisel edge angle (obtuse, at the axis)"] == ("left free", "101.6°")


def test_lengths_are_told_in_mm_and_in_inches() -> None:
    assert sized("apex_distance", 8.2123) == "8.21 mm (0.3233 in)"  # DERIVED: 8.2123/25.4 = 0.32332
    assert sized("cone_tilt", 33.774) == "33.77°"


def test_a_family_has_a_line_for_each_cone(cone: Setup) -> None:
    other = conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=15)
    table = family_table([other, cone])
    assert [row[0] for row in table.rows] == ["15°", "25°"]
    assert table.rows[0][-1] == "never" and all(len(row) == len(table.heads) for row in table.rows)
    assert "118°" in table.title and "125°" in table.title
