"""The names in a formula."""

import pytest

from drillpoint.course.formula import read_formula
from drillpoint.course.formula_names import key, meant
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES

NAMES = ("D", "d", "κ_1", "α_f1", "A′", "ΔL", "δ", "e_c", "μ", "D_Δ")


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("D", "D"),
        ("d", "d"),
        ("kappa_1", "κ_1"),
        ("kappa1", "κ_1"),
        ("KAPPA1", "κ_1"),
        ("κ₁", "κ_1"),
        ("κ1", "κ_1"),
        ("alpha_f1", "α_f1"),
        ("αf1", "α_f1"),
        ("A'", "A′"),
        ("a’", "A′"),
        ("DeltaL", "ΔL"),
        ("Delta_L", "ΔL"),
        ("delta", "δ"),
        ("∆L", "ΔL"),
        ("ec", "e_c"),
        ("µ", "μ"),
        ("mu", "μ"),
        ("D_Delta", "D_Δ"),
        ("pi", "π"),
        ("Pi", "π"),
        ("κ", None),
        ("A", None),
        ("DL", None),
        ("psig", None),
    ],
)
def test_spellings(typed, name):
    assert meant(typed, NAMES) == name


def test_two_names_that_differ_in_size_only_must_be_typed_as_they_are():
    assert meant("KC", ("k_c", "K_c")) is None
    assert meant("k_c", ("k_c", "K_c")) == "k_c"


def test_every_symbol_of_the_book_can_be_typed_in_a_formula():
    symbols = sorted({quantity.symbol for quantity in QUANTITIES.values()} - {"e"})
    for symbol in symbols:
        assert read_formula(symbol, symbols).names == {symbol}
        assert read_formula(f"2*{symbol} + 1", symbols).at(dict.fromkeys(symbols, 3.0)) == 7.0


def test_a_key_is_the_same_for_the_key():
    for name in NAMES:
        assert key(key(name)) == key(name)


@pytest.mark.parametrize(
    ("name", "reason"),
    [
        ("k_c1.1", "Latin or Greek letter, then letters, digits or _"),
        ("2D", "Latin or Greek letter"),
        ("", "Latin or Greek letter"),
        ("D W", "Latin or Greek letter"),
        ("д", "Latin or Greek letter"),
        ("tan", "read as a function"),
        ("sin2", "read as a function"),
        ("pi", "already has a meaning"),
        ("deg", "already has a meaning"),
    ],
)
def test_an_instructor_is_told_which_names_cannot_be_typed(name, reason):
    with pytest.raises(InstructorError, match=reason) as caught:
        read_formula("1", ("D", name))
    assert f"“{name}” cannot be a name in a formula" in str(caught.value)
    assert "choose another symbol" in str(caught.value)


def test_an_instructor_is_told_which_functions_there_are():
    with pytest.raises(InstructorError, match=r"“sinh” is not a function that formulas know; known: abs, acos, .*tan"):
        read_formula("1", ("D",), functions=("sin", "sinh"))
