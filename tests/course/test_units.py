"""The units a number can be typed in."""

import re
from pathlib import Path

import pytest

from drillpoint.course.reading import read_number
from drillpoint.course.typed import ReadingError
from drillpoint.course.units import KINDS, PARTS, UNITS, known_unit, unit_and_factor, unit_at, units_of, with_unit
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES


@pytest.mark.parametrize("name", QUANTITIES)
def test_every_quantity_of_the_book_can_be_asked_for_in_a_box(name):
    unit = QUANTITIES[name].unit
    assert unit_and_factor(unit) == (unit, 1.0)
    assert read_number("2.5", unit).unit == unit


@pytest.mark.parametrize("kind", KINDS)
def test_the_librarys_unit_comes_first_and_has_the_factor_one(kind):
    assert units_of(kind)[0] == KINDS[kind].kept_in
    assert UNITS[KINDS[kind].kept_in].factor == 1.0


@pytest.mark.parametrize("unit", [unit for unit in UNITS if unit])
def test_every_unit_is_read_as_itself_and_in_no_box_of_another_kind(unit):
    assert unit_at(f"5 {unit}", 2) == (unit, len(unit) + 2)
    reading = read_number(f"5 {unit}", KINDS[UNITS[unit].kind].kept_in)
    assert (reading.typed_unit, reading.value) == (unit, 5 * UNITS[unit].factor)
    for kind in KINDS.values():
        if kind is not KINDS[UNITS[unit].kind]:
            with pytest.raises(ReadingError, match="is asked for here"):
                read_number(f"5 {unit}", kind.kept_in)


# SOURCE: The International System of Units, US edition, NIST SP 811 (2008), appendix B.8, to the digits given there;
# from memory.
@pytest.mark.parametrize(
    ("unit", "factor"),
    [
        ("ft", 304.8),
        ("lbf", 4.448222),
        ("in-lb", 0.1129848),
        ("ft-lb", 1.355818),
        ("hp", 0.7456999),
        ("psi", 6.894757e-3),
        ("ft/min", 5.08e-3 * 60),
    ],
)
def test_factors_are_the_published_ones(unit, factor):
    assert UNITS[unit].factor == pytest.approx(factor, rel=1e-6)


@pytest.mark.parametrize(
    ("spelt", "unit"),
    [
        ("IN.", "in"),
        ("Inches", "in"),
        ("lbf-in", "in-lb"),
        ("lb. ft.", "ft-lb"),
        ("N . m", "N·m"),
        ("newton-metres", "N·m"),
        ("N/mm^2", "N/mm²"),
        ("RPM", "rev/min"),
        ("rev per min", "rev/min"),
        ("in./rev", "in/rev"),
        ('"/min', "in/min"),
        ("surface feet / min", "ft/min"),
        ("per cent", "%"),
    ],
)
def test_spellings(spelt, unit):
    assert known_unit(spelt) == unit
    assert unit_at(f"5 {spelt}", 2) == (unit, len(spelt) + 2)


@pytest.mark.parametrize("text", ["furlong", "mmm", "inx", "\u212aN", "5", "", "ſ"])
def test_no_unit_is_found_in_other_words(text):
    assert unit_at(text, 0) is None


def test_an_instructor_is_told_which_units_there_are():
    with pytest.raises(InstructorError, match=r"unit 'furlong' is not known; a box can ask for mm, cm, .* min, s or h"):
        known_unit("furlong")


def test_the_instructors_guide_lists_every_unit():
    guide = (Path(__file__).resolve().parents[2] / "docs" / "instructor.md").read_text(encoding="utf-8")
    table = guide.split("## What students may type")[1].split("|---|---|")[1].split("\n\n")[0]
    listed = set(re.split(r"[|,;()\s]+", table))
    assert {unit for unit in UNITS if unit} <= listed


def test_print_closes_up_degrees_and_per_cent():
    assert [with_unit("5", unit) for unit in ("mm", "°", "%", "", "′")] == ["5 mm", "5°", "5%", "5", "5′"]


@pytest.mark.parametrize("unit", PARTS)
def test_the_example_of_each_part_can_be_read(unit):
    for part in PARTS[unit]:
        assert read_number(part.example, unit).typed_unit == part.unit
