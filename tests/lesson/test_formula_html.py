"""Formulas in HTML: how they look in plain text once every tag is taken away, and which tags they use."""

import html
import re

import pytest
import sympy as sp

from drillpoint.lesson.formula_html import as_html, letter_html
from drillpoint.relation.symbols import letter
from drillpoint.relations import BOOK

a, b, x = sp.symbols("a b x", real=True)


def without_tags(shown: str) -> str:
    """What copying, a screen reader and a viewer without styles get."""
    return html.unescape(re.sub(r"<[^>]*>", "", shown))


@pytest.mark.parametrize(
    ("expression", "text"),
    [
        (a - b, "a − b"),
        (-a + b, "b − a"),
        (-a - b, "−a − b"),
        (-a * b, "−a·b"),
        (2 * a, "2·a"),
        (a / b, "a/b"),
        ((a + b) / (a * x), "(a + b)/(a·x)"),
        (a * (b + x), "a·(b + x)"),
        (sp.sqrt(a**2 - b**2), "√(a2 − b2)"),
        (1 / a, "1/a"),
        (a / 2, "a/2"),
        ((a / b) ** 2, "a2/b2"),
        (sp.sin(a) / sp.tan(b), "sin a/tan b"),
        (sp.sin(a - b), "sin(a − b)"),
        (sp.pi - sp.atan2(a, b), "180° − atan(a/b)"),
        (sp.pi / 2 - a, "90° − a"),
        (2 * sp.pi * a, "2·π·a"),
        (a / (2 * sp.pi * b), "a/(2·π·b)"),
        (sp.sqrt(1 - a) * sp.cot(b), "cot b·√(1 − a)"),
    ],
)
def test_reads_as_one_line_without_styles(expression: sp.Expr, text: str) -> None:
    read = without_tags(as_html(expression, str))
    factors = sorted(read.split("·")) if "√" in text and "·" in text else read
    wanted = sorted(text.split("·")) if "√" in text and "·" in text else text
    assert factors == wanted


@pytest.mark.parametrize("name", sorted(BOOK))
def test_every_relation_of_the_book_can_be_shown_with_plain_tags_only(name: str) -> None:
    shown = as_html(BOOK[name].expression, letter)
    assert set(re.findall(r"</?([a-z]+)", shown)) <= {"span", "sub", "sup", "i"}
    assert shown.count("<span") == shown.count("</span>")


@pytest.mark.parametrize("name", sorted(BOOK))
def test_the_line_without_styles_means_the_same(name: str) -> None:
    """Read back as arithmetic, the line gives the value of the relation's own expression."""
    expression = BOOK[name].expression
    names = sorted(s.name for s in expression.free_symbols)
    numbers = {s: 0.21 + 0.07 * i for i, s in enumerate(sp.Symbol(n, real=True) for n in names)}
    code = {n: f"q{i}q" for i, n in enumerate(names)}
    shown = re.sub(r"<sup>(\d)</sup>", r"**\1", as_html(expression, lambda n: code[n]))
    line = (
        without_tags(shown)
        .replace("·", "*")
        .replace("−", "-")
        .replace("180°", "pi")
        .replace("90°", "pi/2")
        .replace("π", "pi")
        .replace("√", "sqrt")
        .replace("^", "**")
    )
    line = re.sub(r"(a?sin|cot|tan|cos) (q\d+q)", r"\1(\2)", line)
    line = re.sub(r"\|([^|]*)\|", r"Abs(\1)", line)
    value = sp.parse_expr(line, {"atan": sp.atan}).subs({sp.Symbol(code[s.name]): v for s, v in numbers.items()})
    assert complex(value) == pytest.approx(complex(expression.subs(numbers)), abs=1e-9)


def test_an_amount_without_its_sign_stands_between_strokes() -> None:
    assert without_tags(as_html(sp.Abs(a - 2), str)) == "|a − 2|"


def test_a_letter_with_a_subscript_and_a_hostile_letter() -> None:
    assert letter_html("α_f") == "<i>α</i><sub>f</sub>"
    assert "<b>" not in letter_html("<b>")


def test_a_function_without_a_known_form_is_refused() -> None:
    with pytest.raises(TypeError, match="mystery"):
        as_html(sp.Function("mystery")(a), str)
