from fractions import Fraction

import pytest

from drillpoint.drawing.scene import Sentence
from drillpoint.drawing.showing import bar_length, describe, fill, fraction, read_units, show
from drillpoint.errors import LearnerError


@pytest.mark.parametrize(
    ("name", "value", "units", "written"),
    [
        ("diameter", 9.525, "mm", "9.53 mm"),
        ("diameter", 9.525, "inch", "3/8 in"),
        ("diameter", 47.625, "inch", "1 7/8 in"),
        ("diameter", 10.0, "inch", "0.3937 in"),
        ("web", 3.175, "inch", "0.125 in"),
        ("web", 0.05, "mm", "0.05 mm"),
        ("lip_length", 5.1545, "mm", "5.15 mm"),
        ("chisel_edge_angle", 101.6448, "inch", "101.6°"),
        ("feed", 0.2, "mm", "0.2 mm/rev"),
        ("feed", 0.2, "inch", "0.0079 in/rev"),
        ("cutting_speed", 20, "inch", "65.617 ft/min"),
        ("thrust", 812.4, "inch", "812 N"),
        ("web_ratio", 0.15, "mm", "0.15"),
    ],
)
def test_a_value_is_written_as_the_workshop_reads_it(name, value, units, written):
    assert show(name, value, units) == written


@pytest.mark.parametrize(
    ("inches", "written"), [(0.375, "3/8"), (1.875, "1 7/8"), (2.0, "2"), (0.001, "0"), (63.6 / 64, "1")]
)
def test_a_fraction_is_in_lowest_terms(inches, written):
    assert fraction(inches) == written


@pytest.mark.parametrize("longest", [0.04, 0.5, 1, 3, 9.525, 10, 25.4, 40, 100])
@pytest.mark.parametrize("units", ["mm", "inch"])
def test_the_scale_bar_is_a_round_length_that_fits(longest, units):
    length, written = bar_length(longest, units)
    assert longest / 2.6 < length <= longest * (1 + 1e-9)
    number, unit = written.split()
    assert length == pytest.approx(float(Fraction(number)) * {"mm": 1, "in": 25.4}[unit])


def test_a_name_of_the_scene_is_written_like_its_quantity():
    assert fill("{inner} at {radius}", {"inner": 16.61, "radius": 2.5}, "mm", {"inner": "relief_at_radius"}) == (
        "16.6° at 2.5 mm"
    )


def test_a_sentence_says_its_judgement_on_either_side_of_the_usual():
    clause = Sentence(
        "{chisel_edge_angle}, ", "chisel_edge_angle", "?", "chisel_edge_angle", 120, 135, "low", "fine", "high"
    )
    said = [describe((clause,), {"chisel_edge_angle": a}, "mm", frozenset()) for a in (101.64, 120, 135, 136)]
    assert said == ["101.6°, low", "120°, fine", "135°, fine", "136°, high"]
    assert describe((clause,), {"chisel_edge_angle": 110}, "mm", frozenset({"chisel_edge_angle"})) == "?"


def test_other_units_are_refused():
    with pytest.raises(LearnerError, match="units='inch'"):
        read_units("cm")
