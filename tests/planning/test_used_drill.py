"""What is read of a worn drill and wanted of it."""

import pytest

from drillpoint.errors import OutOfRange, UnknownGiven
from drillpoint.planning.used_drill import Job, Wear


def test_nothing_worn_is_nothing_misread() -> None:
    assert Wear().read("wear_land").plus_minus == 0
    assert Wear(wear_land=0.4).read("wear_land").plus_minus == 0.05
    assert Wear(wear_land=0.4, errors={"wear_land": 0.01}).read("wear_land").plus_minus == 0.01
    assert Wear().read("flute_length") is None


def test_the_usual_taper_stands_in() -> None:
    # SOURCE: printed as 1.4 mm to 2.0 mm in 100 mm in a secondary source; the lower end.
    assert (Wear().taper.value, Wear().taper.plus_minus) == (0.014, 0)
    assert Wear(web_taper=0.02).taper.value == 0.02


def test_an_acute_chisel_edge_is_read_as_its_supplement() -> None:
    assert Job(new_chisel_edge_angle=55).new_chisel_edge_angle == 125
    assert Job(new_chisel_edge_angle=125).new_chisel_edge_angle == 125


def test_what_no_drill_has_is_refused() -> None:
    with pytest.raises(OutOfRange, match="wear_land 30 mm is outside"):
        Wear(wear_land=30)
    with pytest.raises(UnknownGiven, match="did you mean 'carbide'"):
        Wear(drill_material="carbid")
    with pytest.raises(OutOfRange, match="new_point_angle 59° is outside"):
        Job(new_point_angle=59)
