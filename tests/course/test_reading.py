"""Numbers as people type them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.reading import LONGEST_TEXT, ReadingError, read_number
from drillpoint.errors import InstructorError

from .hostile import HOSTILE_STRINGS


# DERIVED: 1 in = 25.4 mm exactly; the rest is arithmetic.
@pytest.mark.parametrize(
    ("typed", "unit", "value", "echo"),
    [
        ("5.15", "mm", 5.15, "5.15 mm"),
        ("5,15", "mm", 5.15, "5,15 mm = 5.15 mm"),
        ("5.15mm", "mm", 5.15, "5.15 mm"),
        ("  5.15   mm ", "mm", 5.15, "5.15 mm"),
        ("5.15 MM", "mm", 5.15, "5.15 mm"),
        ("0,375", "mm", 0.375, "0,375 mm = 0.375 mm"),
        (".5", "mm", 0.5, ".5 mm"),
        (",5", "mm", 0.5, ",5 mm = .5 mm"),
        ("1.234", "mm", 1.234, "1.234 mm"),
        ("1234,567", "mm", 1234.567, "1234,567 mm = 1234.567 mm"),
        ("0.515 cm", "mm", 5.15, "0.515 cm = 5.15 mm"),
        ("7/8", "in", 22.225, "7/8 in = 0.875 in = 22.225 mm"),
        ("7/8", "mm", 0.875, "7/8 mm = 0.875 mm"),
        ("7 / 8 in", "mm", 22.225, "7 / 8 in = 0.875 in = 22.225 mm"),
        ("1 7/8 in", "mm", 47.625, "1 7/8 in = 1.875 in = 47.625 mm"),
        ("1-7/8 in", "mm", 47.625, "1-7/8 in = 1.875 in = 47.625 mm"),
        ('1 7/8"', "mm", 47.625, "1 7/8 in = 1.875 in = 47.625 mm"),
        ("1⅞″", "mm", 47.625, "1⅞ in = 1.875 in = 47.625 mm"),
        ("1 7⁄8 inch", "mm", 47.625, "1 7/8 in = 1.875 in = 47.625 mm"),
        ("11/4 in", "mm", 69.85, "11/4 in = 2.75 in = 69.85 mm"),
        ("1 1/4 in", "mm", 31.75, "1 1/4 in = 1.25 in = 31.75 mm"),
        ("2/4 in", "mm", 12.7, "2/4 in = 0.5 in = 12.7 mm"),
        ("1/3 in", "mm", 25.4 / 3, "1/3 in ≈ 0.333333 in ≈ 8.46667 mm"),
        ("−3.2", "mm", -3.2, "-3.2 mm"),
        ("- 3.2", "mm", -3.2, "-3.2 mm"),
        ("+3.2", "mm", 3.2, "3.2 mm"),
        ("-1 7/8 in", "mm", -47.625, "-1 7/8 in = -1.875 in = -47.625 mm"),
        ("1.5e1", "mm", 15.0, "1.5e1 mm = 15 mm"),
        ("118", "°", 118.0, "118°"),
        ("118°", "°", 118.0, "118°"),
        ("118 deg", "°", 118.0, "118°"),
        ("118 degrees", "deg", 118.0, "118°"),
        ("1 rad", "°", math.degrees(1), "1 rad ≈ 57.2958°"),
        ("0.15", "", 0.15, "0.15"),
        ("15 %", "", 0.15, "15% = 0.15"),
    ],
)
def test_reads_and_echoes(typed, unit, value, echo):
    reading = read_number(typed, unit)
    assert reading.value == pytest.approx(value, rel=1e-12)
    assert reading.echo == echo
    assert reading.typed == typed


@pytest.mark.parametrize(
    ("typed", "place", "reason"),
    [
        ("1,234", 1, "two ways: write 1234 or 1.234"),
        ("12,345 mm", 2, "two ways"),
        ("3.5.1", 3, "one decimal point"),
        ("1,234.5", 5, "one decimal point"),
        ("59deg8", 5, "after the unit"),
        ("5 mm 3", 5, "after the unit"),
        ("5 3", 2, "second one begins"),
        ("1.5/2", 3, "whole number over another"),
        ("1 7/8.5", 5, "whole numbers only"),
        ("1/0", 2, "divided by 0"),
        ("1 9/8", 2, "less than one"),
        ("5 - 3", 2, "not a calculation"),
        ("5 miles", 2, "not a unit"),
        ("5°", 1, "A length is asked for"),
        ("abc", 0, "A number is expected"),
        ("-", 1, "a sign but no number"),
        ("", 0, "no number"),
        ("5,", 1, "followed by a digit"),
        ("9" * 21, 0, "more than 20 digits"),
        ("9" * (LONGEST_TEXT + 1), LONGEST_TEXT, "longer than 60"),
        ("1e999", 0, "too large"),
    ],
)
def test_refuses_and_marks_the_place(typed, place, reason):
    with pytest.raises(ReadingError) as caught:
        read_number(typed)
    error = caught.value
    assert error.position == place
    assert reason in error.reason
    assert error.marked().splitlines()[1].index("^") - 4 == place - max(0, place - 30)
    assert error.examples
    for example in error.examples:
        read_number(example)  # what is recommended can be read
        assert example in str(error)


@pytest.mark.parametrize("unit", ["°", "", "in", "mm"])
def test_examples_can_be_read_in_every_box(unit):
    with pytest.raises(ReadingError) as caught:
        read_number("?", unit)
    for example in caught.value.examples:
        read_number(example, unit)


def test_precision_typed():
    assert (read_number("3.00").digits, read_number("3.00").decimals) == (3, 2)
    assert (read_number("0,05").digits, read_number("0,05").decimals) == (1, 2)
    assert (read_number("7/8").digits, read_number("7/8").decimals) == (None, None)


def test_unknown_unit_beside_the_box_is_the_instructors_error():
    with pytest.raises(InstructorError, match="furlong"):
        read_number("5", "furlong")


def test_text_only():
    with pytest.raises(ReadingError, match="not as float"):
        read_number(5.15)  # type: ignore[arg-type]


READABLE = {"+1+1", "-2+3"}


@pytest.mark.parametrize("typed", HOSTILE_STRINGS, ids=range(len(HOSTILE_STRINGS)))
@pytest.mark.parametrize("unit", ["mm", "°", ""])
def test_hostile_text_is_refused(typed, unit):
    with pytest.raises(ReadingError) as caught:
        read_number(typed, unit)
    assert len(str(caught.value)) < 400


@given(st.text(max_size=80))
def test_anything_typed_is_read_or_refused(typed):
    try:
        reading = read_number(typed)
    except ReadingError as error:
        assert 0 <= error.position <= len(typed)
    else:
        assert math.isfinite(reading.value)


@given(st.text(alphabet='0123456789.,/- +mincdegra"°⅞', max_size=14))
def test_no_character_is_dropped(typed):
    """Whatever is read can be read again from its own echo with the same value."""
    try:
        reading = read_number(typed)
    except ReadingError:
        return
    first = reading.echo.split(" = ")[0].split(" ≈ ")[0]
    assert read_number(first).value == reading.value
    digits = [c for c in typed if c.isdigit() or c in ".,/⅞"]
    assert [c for c in first.removesuffix(".") if c.isdigit() or c in ".,/⅞"] == digits or typed.rstrip().endswith(".")


@given(
    st.floats(-1e6, 1e6), st.integers(0, 6), st.booleans(), st.sampled_from([("mm", 1.0), ("cm", 10.0), ("in", 25.4)])
)
def test_formatted_numbers_come_back(value, decimals, comma, unit):
    spelling, factor = unit
    printed = f"{value:.{decimals}f}"
    typed = printed.replace(".", ",") if comma and decimals != 3 else printed
    assert read_number(f"{typed} {spelling}").value == pytest.approx(float(printed) * factor, rel=1e-12, abs=1e-12)


@given(st.integers(0, 20), st.integers(1, 63), st.sampled_from([2, 4, 8, 16, 32, 64]), st.sampled_from([" ", "-"]))
def test_mixed_numbers_come_back(whole, top, bottom, link):
    top %= bottom
    assert read_number(f"{whole}{link}{top}/{bottom} in").value == pytest.approx((whole + top / bottom) * 25.4)
