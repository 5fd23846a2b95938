import math

import sympy as sp

from drillpoint.drawing.letter import letter, letters_in, quantities_in
from drillpoint.editions.functions import javascript_function, python_function
from drillpoint.relation.symbols import symbols

s = symbols()
SHARE = letter("share", s.web / s.diameter)
ANGLE = letter("angle", sp.asin(SHARE) + sp.Max(0, SHARE - s.web_ratio))
OUTPUTS = [ANGLE * s.diameter, SHARE, sp.Integer(3), sp.sin(ANGLE) + SHARE]


def made(outputs):
    place = {}
    exec(python_function("f", ("diameter", "web", "web_ratio"), outputs), place)  # noqa: S102  (our own text, in a test)
    return place["f"](math, 10.0, 4.0, 0.15)


def test_letters_come_after_those_they_need():
    assert letters_in([ANGLE + 1, SHARE]) == [SHARE, ANGLE]
    assert letters_in([sp.Integer(1), 2.5]) == []


def test_the_quantities_behind_letters_are_known():
    assert quantities_in([ANGLE]) == {"diameter", "web", "web_ratio"}


def test_letters_with_the_same_name_are_not_the_same():
    assert letter("x", 1) != letter("x", 2)


def test_an_edition_with_letters_gives_the_same_numbers():
    # DERIVED: worked out by hand from the definitions above.
    angle = math.asin(0.4) + 0.25
    assert made(OUTPUTS) == [angle * 10, 0.4, 3, math.sin(angle) + 0.4]


def test_each_letter_is_worked_out_once_in_either_language():
    python = python_function("f", ("diameter", "web", "web_ratio"), OUTPUTS)
    script = javascript_function("f", ("diameter", "web", "web_ratio"), OUTPUTS)
    assert python.count("asin(") == script.count("asin(") == 1
