"""Formulas as people type them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.formula import read_formula, same_formula
from drillpoint.course.reading import ReadingError
from drillpoint.errors import LearnerError

from .hostile import HOSTILE_STRINGS

NAMES = ("D", "W", "κ", "ψ")
AT = {"D": 10.0, "W": 1.5, "κ": 59.0, "ψ": 125.0}
DOMAIN = {"D": (3.0, 20.0), "W": (0.5, 2.5), "κ": (40.0, 75.0), "ψ": (100.0, 140.0)}
HEIGHT = 5 / math.tan(math.radians(59))  # DERIVED: D/(2 tan κ) with D = 10, κ = 59°


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ("D/(2*tan(κ))", HEIGHT),
        ("D/(2 tan κ)", HEIGHT),
        ("D/2/tan κ", HEIGHT),
        ("(D/2)*cot(kappa)", HEIGHT),
        ("0,5 d cot κ", HEIGHT),
        ("h = D/2·cotκ", HEIGHT),
        ("D/2*tan(90 - κ)", HEIGHT),
        ("D/(2 tan(59°))", HEIGHT),
        ("W/sin psi", 1.5 / math.sin(math.radians(125))),
        ("√(D² − W²)/2", math.sqrt(100 - 2.25) / 2),
        ("[D + (W)]", 11.5),
        ("sin^2 κ + cos²(κ)", 1.0),
        ("-D^2", -100.0),
        ("(-D)^2", 100.0),
        ("2^3^2", 512.0),
        ("D**-1", 0.1),
        ("D - W - 1", 7.5),
        ("D/W/2", 10 / 1.5 / 2),
        ("2(D − W)", 17.0),
        ("2 sin κ cos κ", 2 * math.sin(math.radians(59)) * math.cos(math.radians(59))),
        ("tanκ D", 10 * math.tan(math.radians(59))),
        ("atan(1)", 45.0),
        ("arcsin(0.5)", 30.0),
        ("abs(-D)", 10.0),
        ("2*pi*D", 20 * math.pi),
    ],
)
def test_reads(typed, value):
    formula = read_formula(typed, NAMES, result="h")
    assert formula(**AT) == pytest.approx(value, rel=1e-12)
    again = read_formula(formula.echo, NAMES)
    assert again(**AT) == pytest.approx(value, rel=1e-12)  # the echo says the same


@pytest.mark.parametrize(
    ("typed", "place", "reason"),
    [
        ("D/2 tan κ", 2, "brackets after the /"),
        ("1/2 D", 2, "brackets after the /"),
        ("sin 2κ", 5, "brackets after it"),
        ("sin κ/2", 6, "angle divided, or the function"),
        ("sin κ^2", 0, "angle raised, or the function"),
        ("DW", 0, "not a name in this task (names: D, W, κ, ψ)"),
        ("D 2", 2, "sign is missing"),
        ("eval(D)", 0, "not a name"),
        ("D+", 2, "too early"),
        ("D*)", 2, "never opened"),
        ("(D", 0, "never closed"),
        ("D*/W", 2, "cannot go on"),
        ("", 0, "no formula"),
        ("1,234 D", 1, "two ways"),
        ("9**9**9", 0, "no finite value"),
        ("x = D", 2, "right-hand side"),
        ("κ.real", 1, "sign cannot be read"),
        ("(" * 21 + "D" + ")" * 21, 20, "nested"),
        ("D" + "+D" * 90, 0, "more than 120 parts"),
        ("D" * 201, 200, "longer than 200"),
    ],
)
def test_refuses_and_marks_the_place(typed, place, reason):
    with pytest.raises(ReadingError) as caught:
        read_formula(typed, NAMES)
    assert reason in caught.value.reason
    assert caught.value.position == place
    for example in caught.value.examples:
        read_formula(example, NAMES)


def test_no_value_is_an_error_not_a_number():
    with pytest.raises(LearnerError, match="no finite value"):
        read_formula("sqrt(W - D)", NAMES)(**AT)
    with pytest.raises(LearnerError, match="needs a value for W"):
        read_formula("W", NAMES)(D=1.0)
    assert math.isnan(read_formula("9^D^D", NAMES).at(AT))


@pytest.mark.parametrize("typed", HOSTILE_STRINGS, ids=range(len(HOSTILE_STRINGS)))
def test_hostile_text_is_refused_or_harmless(typed):
    try:
        formula = read_formula(typed, NAMES)
    except ReadingError as error:
        assert len(str(error)) < 500
    else:
        assert isinstance(formula.at(AT), float)


@given(st.text(max_size=60) | st.text(alphabet="DWκψsincota()+-*/^²√ 0123456789.,", max_size=40))
def test_anything_typed_is_read_or_refused(typed):
    try:
        formula = read_formula(typed, NAMES)
    except ReadingError as error:
        assert 0 <= error.position <= len(typed)
    else:
        value = formula.at(AT)
        again = read_formula(formula.echo, NAMES).at(AT) if len(formula.echo) <= 200 else value
        assert again == pytest.approx(value, rel=1e-9, nan_ok=True)


@pytest.mark.parametrize(
    ("first", "second", "same"),
    [
        ("D/(2 tan κ)", "D/2*tan(90-κ)", True),
        ("D/(2 tan κ)", "D cos(κ)/(2 sin κ)", True),
        ("D/(2 tan κ)", "D/2*tan κ", False),
        ("W/sin ψ", "W/sin(180 - ψ)", True),
        ("W/sin ψ", "W sin ψ", False),
        ("D - W", "W - D", False),
        ("sqrt(W - D)", "sqrt(W - D)", False),  # no value anywhere proves nothing
        ("D", "sqrt(W-D)", False),
    ],
)
def test_same_formula(first, second, same):
    assert same_formula(read_formula(first, NAMES), read_formula(second, NAMES), DOMAIN) is same
    assert same_formula(read_formula(second, NAMES), read_formula(first, NAMES), DOMAIN) is same
