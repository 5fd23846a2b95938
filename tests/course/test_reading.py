"""Numbers as people type them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.reading import LONGEST_TEXT, ReadingError, read_number
from drillpoint.errors import InstructorError

from .reading_laws import BOXES, first_step


# DERIVED: 1 in = 25.4 mm, 1 ft = 12 in, 1 lbf = 4.4482216152605 N, 1 hp = 550 ft·lbf/s, all exactly; else arithmetic.
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
        ("15 per cent", "", 0.15, "15% = 0.15"),
        ("5 m", "mm", 5000.0, "5 m = 5000 mm"),
        ("50 µm", "mm", 0.05, "50 µm = 0.05 mm"),
        ("1 ⅝ in", "mm", 41.275, "1 ⅝ in = 1.625 in = 41.275 mm"),
        ("1-⅝ in", "mm", 41.275, "1-⅝ in = 1.625 in = 41.275 mm"),
        ("1e-3", "mm", 0.001, "1e-3 mm = 0.001 mm"),
        ("1E-3", "mm", 0.001, "1E-3 mm = 0.001 mm"),
        ("1×10^-3", "mm", 0.001, "1×10^-3 mm = 0.001 mm"),
        ("1 x 10^−3", "mm", 0.001, "1 x 10^-3 mm = 0.001 mm"),
        ("1*10**-3", "mm", 0.001, "1*10**-3 mm = 0.001 mm"),
        ("1·10⁻³ in", "mm", 0.0254, "1·10⁻³ in = 0.001 in = 0.0254 mm"),
        ("2,5·10²", "mm", 250.0, "2,5·10² mm = 250 mm"),
        ("59° 30′", "°", 59.5, "59° 30′ = 59.5°"),
        ("59°30'", "°", 59.5, "59° 30′ = 59.5°"),
        ("59 deg 30 min", "°", 59.5, "59° 30′ = 59.5°"),
        ("59° 30' 36\"", "°", 59.51, "59° 30′ 36″ = 59.51°"),
        ("59° 36″", "°", 59.01, "59° 36″ = 59.01°"),
        ("59° 30.5′", "°", 59 + 30.5 / 60, "59° 30.5′ ≈ 59.5083°"),
        ("-0° 30′", "°", -0.5, "-0° 30′ = -0.5°"),
        ("5 ft", "mm", 1524.0, "5 ft = 1524 mm"),
        ("5′ 3″", "mm", 1600.2, "5 ft 3 in = 63 in = 1600.2 mm"),
        ("5'-3 1/2\"", "mm", 1612.9, "5 ft 3 1/2 in = 63.5 in = 1612.9 mm"),
        ("1 ft 6 in", "in", 457.2, "1 ft 6 in = 18 in = 457.2 mm"),
        ("850", "N", 850.0, "850 N"),
        ("0.85 kN", "N", 850.0, "0.85 kN = 850 N"),
        ("1 lbf", "N", 4.4482216152605, "1 lbf ≈ 4.44822 N"),
        ("850 lb", "N", 850 * 4.4482216152605, "850 lbf ≈ 3780.99 N"),
        ("4.5 N·m", "N·m", 4.5, "4.5 N·m"),
        ("4,5 Nm", "N·m", 4.5, "4,5 N·m = 4.5 N·m"),
        ("4.5 N m", "N·m", 4.5, "4.5 N·m"),
        ("450 N*cm", "N·m", 4.5, "450 N·cm = 4.5 N·m"),
        ("40 in-lb", "N·m", 40 * 4.4482216152605 * 0.0254, "40 in-lb ≈ 4.51939 N·m"),
        ("40 lbf·in", "N·m", 40 * 4.4482216152605 * 0.0254, "40 in-lb ≈ 4.51939 N·m"),
        ("3 ft-lb", "N·m", 3 * 4.4482216152605 * 0.3048, "3 ft-lb ≈ 4.06745 N·m"),
        ("950", "rev/min", 950.0, "950 rev/min"),
        ("950 rpm", "rev/min", 950.0, "950 rev/min"),
        ("950 1/min", "rev/min", 950.0, "950 rev/min"),
        ("950/min", "rev/min", 950.0, "950 rev/min"),
        ("950 min⁻¹", "rev/min", 950.0, "950 rev/min"),
        ("0.15 mm/rev", "mm/rev", 0.15, "0.15 mm/rev"),
        ("0.006 in/rev", "mm/rev", 0.1524, "0.006 in/rev = 0.1524 mm/rev"),
        (".006 ipr", "mm/rev", 0.1524, ".006 in/rev = 0.1524 mm/rev"),
        ("5 in/min", "mm/min", 127.0, "5 in/min = 127 mm/min"),
        ("25 m/min", "m/min", 25.0, "25 m/min"),
        ("25 m per min", "m/min", 25.0, "25 m/min"),
        ("80 sfm", "m/min", 24.384, "80 ft/min = 24.384 m/min"),
        ("80 ft/min", "m/min", 24.384, "80 ft/min = 24.384 m/min"),
        ("1.5 kW", "kW", 1.5, "1.5 kW"),
        ("1500 W", "kW", 1.5, "1500 W = 1.5 kW"),
        ("2 hp", "kW", 2 * 550 * 4.4482216152605 * 0.3048 / 1000, "2 hp ≈ 1.4914 kW"),
        ("650 MPa", "N/mm²", 650.0, "650 MPa = 650 N/mm²"),
        ("650 N/mm2", "N/mm²", 650.0, "650 N/mm²"),
        ("1 ksi", "N/mm²", 4.4482216152605 * 1000 / 25.4**2, "1 ksi ≈ 6.89476 N/mm²"),
        ("1 min 30 s", "min", 1.5, "1 min 30 s = 90 s = 1.5 min"),
        ("0.144 in/ft", "mm/mm", 0.012, "0.144 in/ft = 0.012 mm/mm"),
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
        ("9e307 in", 0, "too large"),
        ("1e-999", 0, "too small"),
        ("1,234e2", 1, "two ways"),
        ("5e1.5", 3, "one decimal point"),
        ("5 e 3", 2, "power of ten"),
        ("5x10", 1, "not a calculation"),
        ("10^3", 2, "not a calculation"),
        ("1 8/8", 2, "less than one"),
        ("5' 3", 3, "marked inches, as in 5 ft 3 in"),
        ("5' 12\"", 3, "fewer than 12 inches"),
        ("5.5' 3\"", 0, "Only the last part may be broken"),
        ("3\" 5'", 3, "after the unit"),
        ("5 mm²", 2, "not a unit"),
        ("5 mmm", 2, "a length is asked for, in mm, cm, m, µm, in or ft"),
        ("５ mm", 0, "type it as 5"),
        ("1５ mm", 1, "type it as 5"),
        ("5\u200bmm", 1, "invisible sign (U+200B)"),
        ("5 mm\u202e", 4, "invisible sign (U+202E)"),
        ("5\u0301", 1, "sits on another sign (U+0301)"),
        ("5\nmm", 1, "a second line begins"),
        ("5\u3000mm", 1, "unusual space (U+3000)"),
        ("5 мм", 2, "Cyrillic letter"),
        ("1O.5", 1, "letter O, not the digit 0"),
        ("l.5", 0, "letter l, not the digit 1"),
        ("5 ;", 2, "sign cannot be read here"),
        ("5 Nm", 2, "A length is asked for here, in mm, cm, m, µm, in or ft; “Nm” goes with a torque"),
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


@pytest.mark.parametrize(
    ("typed", "unit", "reason"),
    [
        ("5 mm", "°", "An angle is asked for here, in ° or rad; “mm” goes with a length."),
        ("5 kW", "N·m", "A torque is asked for here, in N·m, N·cm, N·mm, in-lb or ft-lb; “kW” goes with a power."),
        ("5 m/min", "mm/min", "A feed rate is asked for here, in mm/min or in/min; “m/min” goes with a cutting speed."),
        ("59° 30′", "mm", "“° 30′” goes with an angle."),
        ("5 mm", "", "A plain number is asked for here, without a unit or in %; “mm” goes with a length."),
        ("59° 30", "°", "Nothing is expected after the unit but marked minutes, as in 59° 30′."),
        ("59deg8", "°", "Nothing is expected after the unit but marked minutes, as in 59° 30′."),
        ("59° 60′", "°", "There are fewer than 60 minutes here"),
        ("59.5° 30′", "°", "Only the last part may be broken"),
        ("59° 30′ 60″", "°", "There are fewer than 60 seconds here"),
        ("59° 30″ 20′", "°", "Nothing is expected after the unit"),
    ],
)
def test_a_unit_that_measures_something_else_or_stands_alone_is_refused(typed, unit, reason):
    with pytest.raises(ReadingError) as caught:
        read_number(typed, unit)
    assert reason in caught.value.reason


@pytest.mark.parametrize("unit", [*BOXES, "in", "%", "deg", "rpm", "ft-lb", "sfm"])
def test_examples_can_be_read_in_every_box(unit):
    with pytest.raises(ReadingError) as caught:
        read_number("?", unit)
    for example in caught.value.examples:
        read_number(example, unit)


def test_precision_typed():
    assert (read_number("3.00").digits, read_number("3.00").decimals) == (3, 2)
    assert (read_number("0,05").digits, read_number("0,05").decimals) == (1, 2)
    assert (read_number("7/8").digits, read_number("7/8").decimals) == (None, None)
    assert (read_number("5' 3.25\"").digits, read_number("5' 3.25\"").decimals) == (None, None)
    # The last digit of 8.30e-3 is a hundred-thousandth, that of 1.5e3 a hundred.
    assert (read_number("8.30e-3").digits, read_number("8.30e-3").decimals) == (3, 5)
    assert (read_number("1,5·10³").digits, read_number("1,5·10³").decimals) == (2, -2)


def test_unknown_unit_beside_the_box_is_the_instructors_error():
    with pytest.raises(InstructorError, match="furlong"):
        read_number("5", "furlong")


# DERIVED: arithmetic. Readers that drop what they do not know made 24 of 2/4 and 15 of 1.5, and stopped at 18,5.
@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("2/4", 0.5),
        ("1.5", 1.5),
        ("18,5", 18.5),
        ("3,5", 3.5),
        ("3.5", 3.5),
        ("7/8", 0.875),
        ("1 7/8", 1.875),
        ("1-7/8", 1.875),
    ],
)
def test_fractions_and_commas_keep_every_character(typed, value):
    reading = read_number(typed, "in")
    assert reading.value == pytest.approx(value * 25.4, rel=1e-12)
    assert first_step(reading.echo) == f"{typed} in"


@pytest.mark.parametrize(
    ("typed", "caret", "hint"), [("1,234", " ^", "write 1234 or 1.234"), ("3.5.1", "   ^", "one decimal point")]
)
def test_a_number_with_two_readings_is_refused_with_the_place_and_a_hint(typed, caret, hint):
    with pytest.raises(ReadingError, match=hint) as caught:
        read_number(typed, "in")
    _, shown, place, examples = str(caught.value).splitlines()
    assert (shown, place) == (f"    {typed}", f"    {caret}")
    assert examples == "You can write: 3.25 mm, 3,25 mm, 7/8 in, 1 7/8 in."


def test_eleven_quarters_and_one_and_a_quarter_are_told_apart_by_the_echo():
    assert read_number("1 1/4 in").echo == "1 1/4 in = 1.25 in = 31.75 mm"
    assert read_number("11/4 in").echo == "11/4 in = 2.75 in = 69.85 mm"


@pytest.mark.parametrize("number", range(1, 11))
def test_the_unit_stands_in_the_question_and_beside_the_box_and_counts_when_none_is_typed(variants, lips, number):
    question = variants.question(lips.tasks[number - 1].id, "s01")
    if question.task.kind not in ("number", "judgement"):
        assert "12.3" not in question.form.example  # a letter or a formula has no unit
        return
    words = {"in": "inches", "°": "degrees", "": "a plain number"}.get(question.task.unit, question.task.unit)
    assert f"in {words}, to" in question.asks
    assert (question.task.unit or "a plain number") in question.form.beside
    assert read_number("12.3", question.task.unit).echo.startswith(question.form.example.removeprefix("yes, "))


def test_text_only():
    with pytest.raises(ReadingError, match="not as float"):
        read_number(5.15)  # type: ignore[arg-type]


@given(st.text(alphabet='0123456789.,/- +mincdegra"°⅞', max_size=14), st.sampled_from(["mm", "in", "°", ""]))
def test_no_character_is_dropped(typed, unit):
    """Whatever is read can be read again from its own echo with the same value."""
    try:
        reading = read_number(typed, unit)
    except ReadingError:
        return
    first = first_step(reading.echo)
    assert read_number(first, unit).value == reading.value
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


@given(st.integers(0, 400), st.integers(0, 59), st.integers(0, 59))
def test_degrees_minutes_and_seconds_come_back(degrees, minutes, seconds):
    value = read_number(f"{degrees}° {minutes}′ {seconds}″", "°").value
    assert value == pytest.approx(degrees + minutes / 60 + seconds / 3600, rel=1e-12)


@given(st.floats(1e-9, 1e9), st.sampled_from(["{:.5e}", "{:.6g}"]))
def test_powers_of_ten_come_back(value, form):
    assert read_number(form.format(value), "").value == float(form.format(value))
