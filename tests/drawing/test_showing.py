import pytest

from drillpoint.drawing.scene import Sentence
from drillpoint.drawing.showing import bar_length, describe, fraction, read_units, show
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
        ("acute", 78.3552, "mm", "78.4°"),
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


@pytest.mark.parametrize("diameter", [0.5, 1, 3, 9.525, 10, 25.4, 40, 100])
@pytest.mark.parametrize("units", ["mm", "inch"])
def test_the_scale_bar_is_shorter_than_the_drill(diameter, units):
    length, _ = bar_length(diameter, units)
    assert 0 < length < diameter


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
