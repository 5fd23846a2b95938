"""What holds for whatever is typed: it is read and can be read again from its echo, or it is refused with a place."""

from __future__ import annotations

import math

from drillpoint.course.formula import DEEPEST_BRACKETS, LONGEST_FORMULA, read_formula
from drillpoint.course.reading import LONGEST_TEXT, ReadingError, read_number
from drillpoint.course.units import KINDS

BOXES = tuple(kind.kept_in for kind in KINDS.values())
NAMES = ("D", "W", "κ", "ψ")
AT = {"D": 10.0, "W": 1.5, "κ": 59.0, "ψ": 125.0}
LONGEST_MESSAGE = 600


def first_step(echo: str) -> str:
    """How the number was read, before it is turned into anything."""
    return echo.split(" = ")[0].split(" ≈ ")[0]


def number_is_read_or_refused(typed: str, unit: str) -> bool:
    """Hold one text against the laws for numbers, and say whether it was read."""
    try:
        reading = read_number(typed, unit)
    except ReadingError as error:
        _is_a_fair_refusal(error, typed)
        return False
    assert math.isfinite(reading.value)
    assert reading.typed == typed
    again = first_step(reading.echo)
    if len(again) <= LONGEST_TEXT:
        assert read_number(again, unit).value == reading.value
    return True


def formula_is_read_or_refused(typed: str) -> bool:
    """Hold one text against the laws for formulas, and say whether it was read."""
    try:
        formula = read_formula(typed, NAMES)
    except ReadingError as error:
        _is_a_fair_refusal(error, typed)
        return False
    value = formula.at(AT)
    assert type(value) is float
    # An echo writes every bracket out, so it may be too long to be typed.
    if len(formula.echo) <= LONGEST_FORMULA and formula.echo.count("(") <= DEEPEST_BRACKETS:
        again = read_formula(formula.echo, NAMES).at(AT)
        assert math.isclose(again, value, rel_tol=1e-9) or (math.isnan(again) and math.isnan(value))
    return True


def _is_a_fair_refusal(error: ReadingError, typed: str) -> None:
    assert error.reason.endswith((".", ")."))
    assert 0 <= error.position <= len(typed)
    assert error.examples
    assert len(str(error)) < LONGEST_MESSAGE
    # The message can be shown, stored and sent whatever was typed.
    str(error).encode("utf-8")
