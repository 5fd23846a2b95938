"""Formulas as people type them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.formula import read_formula, same_formula
from drillpoint.course.reading import ReadingError
from drillpoint.errors import LearnerError

from .reading_laws import AT, NAMES

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
        ("1e-3 D", 0.01),
        ("1,5E2*D", 1500.0),
        ("2×10⁻³ D", 0.02),
        ("D⁻¹", 0.1),
        ("D^-(1/2)", 1 / math.sqrt(10)),
        ("1.*D", 10.0),
        ("D/(2 tan(59 deg))", HEIGHT),
        ("D/(2 tan 59 degrees)", HEIGHT),
        ("tan²κ", math.tan(math.radians(59)) ** 2),
        ("−D − −W", -8.5),
        ("D ÷ W · 2", 10 / 1.5 * 2),
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
        ("-" * 65 + "D", 0, "nested more than 60 deep"),
        ("tan⁻¹(W)", 3, "Write atan(…) or 1/tan(…)"),
        ("tan^-1 W", 5, "Write atan(…) or 1/tan(…)"),
        ("tan(κ°)", 5, "in degrees already"),
        ("tan(1.03 rad)", 9, "write them in degrees"),
        ("ln(D)", 0, "“ln” is not a function of this task (functions: sin, cos, tan,"),
        ("log(D)", 0, "nor a function of it (functions: sin, cos, tan,"),
        ("9" * 21, 0, "more than 20 digits"),
        ("1e999 D", 0, "too large"),
        ("1e-999 D", 0, "too small"),
        ("D^" + "²" * 5, 2, "cannot go on"),
        ("D" + "²" * 5, 1, "more than 4 signs"),
        ("sqrt(-1)", 0, "no finite value"),
        ("tan", 3, "too early"),
        ("D!", 1, "sign cannot be read"),
        ("D, W", 1, "sign cannot be read"),
        ("D\u200b", 1, "invisible sign (U+200B)"),
        ("２D", 0, "type it as 2"),
        ("д", 0, "Cyrillic letter"),
        ("D mm", 2, "“mm” is not a name"),
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


def test_a_task_may_offer_other_functions():
    offered = ("ln", "log10", "exp")
    assert read_formula("ln(D)/ln(W)", NAMES, functions=offered)(**AT) == pytest.approx(math.log(10) / math.log(1.5))
    assert read_formula("exp(W) + log10(D)", NAMES, functions=offered)(**AT) == pytest.approx(math.exp(1.5) + 1)
    with pytest.raises(
        ReadingError, match=r"“sin” is not a function of this task \(functions: ln, log10, exp\)"
    ) as caught:
        read_formula("sin(D)", NAMES, functions=offered)
    for example in caught.value.examples:
        read_formula(example, NAMES, functions=offered)
    assert math.isnan(read_formula("exp(D^D)", NAMES, functions=offered).at(AT))
    with pytest.raises(ReadingError, match="functions: none"):
        read_formula("sqrt(D)", NAMES, functions=())


def test_an_e_is_a_power_of_ten_unless_it_is_a_name():
    assert read_formula("2e3", ("D",)).at({}) == 2000
    assert read_formula("2 e*3", ("e",)).at({"e": 5.0}) == 30
    with pytest.raises(ReadingError, match="power of ten here, or a name"):
        read_formula("2e3", ("e",))


def test_everything_is_worked_out_with_floats():
    """Whole numbers would grow without end; floats end at infinity, which is no value."""
    formula = read_formula("D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D*D", ("D",))
    assert type(formula.at({"D": 2})) is float
    assert math.isnan(formula.at({"D": 10**10}))
    assert math.isnan(formula.at({"D": 10**400}))


def test_text_only():
    with pytest.raises(ReadingError, match="not as int"):
        read_formula(5, NAMES)  # type: ignore[arg-type]


@pytest.mark.parametrize("typed", ["h = W", "h=W", " h  = W", "H = W"])
def test_the_symbol_asked_for_may_stand_in_front(typed):
    if typed.startswith("H"):
        with pytest.raises(ReadingError, match="right-hand side"):
            read_formula(typed, NAMES, result="h")
    else:
        assert read_formula(typed, NAMES, result="h")(**AT) == 1.5


def test_a_spelt_symbol_may_stand_in_front_too():
    assert read_formula("kappa_1 = W", NAMES, result="κ_1")(**AT) == 1.5


SIMPLE = st.sampled_from(["D", "W", "κ", "2", "0,5", "1e-1"])
TREES = st.recursive(
    SIMPLE,
    lambda inner: (
        st.tuples(inner, st.sampled_from(["+", "-", "*", "/"]), inner).map(lambda t: f"({t[0]}){t[1]}({t[2]})")
        | st.tuples(st.sampled_from(["sin", "cos", "tan", "abs", "sqrt"]), inner).map(lambda t: f"{t[0]}({t[1]})")
        | inner.map(lambda t: f"-({t})")
        | inner.map(lambda t: f"({t})²")
    ),
    max_leaves=8,
)


@given(TREES)
def test_formulas_agree_with_python(typed):
    """DERIVED: the same text, put into Python's own spelling and worked out by Python."""
    known = {
        **AT,
        "sin": lambda x: math.sin(math.radians(x)),
        "cos": lambda x: math.cos(math.radians(x)),
        "tan": lambda x: math.tan(math.radians(x)),
        "sqrt": math.sqrt,
    }
    try:
        formula = read_formula(typed, NAMES)
    except ReadingError as error:
        assert (
            error.reason == "This has no finite value."
            or "brackets are nested" in error.reason
            or "longer" in error.reason
        )
        formula = None
    try:
        expected = float(eval(typed.replace("0,5", "0.5").replace("²", "**2.0"), {"__builtins__": {"abs": abs}}, known))  # noqa: S307
    except (ArithmeticError, ValueError):
        expected = math.nan
    if formula is None:
        assert math.isnan(expected) or typed.count("(") > 20 or len(typed) > 200
        return
    assert formula.at(AT) == pytest.approx(expected, rel=1e-12, nan_ok=True)
    if len(formula.echo) <= 200 and formula.echo.count("(") <= 20:
        assert read_formula(formula.echo, NAMES).at(AT) == pytest.approx(formula.at(AT), rel=1e-9, nan_ok=True)


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
