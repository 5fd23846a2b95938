"""Worked lines and printed formulas."""

from __future__ import annotations

import re

import pytest
import sympy

from drillpoint.relation.printing import as_latex, as_text
from drillpoint.relation.symbols import latex_letter, letter, symbols
from drillpoint.relations import BOOK, chisel_edge_angle, heel_clearance, lip_length, point_height, web_from_ratio
from tests.relations.drills import USUAL

EVERY = pytest.mark.parametrize("name", BOOK)


def test_lip_length_as_on_the_blackboard() -> None:
    worked = lip_length.worked(diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)
    assert worked.text == "L = (√(5² − 0.75²) − 0.75·cot 55°)/sin 59° = 5.15 mm"
    assert worked.formula.text == "L = (√(R² − t²) − t·cot δ)/sin κ"
    assert [line.text for line in worked.where] == [
        "R = D/2 = 10/2 = 5",
        "t = W/2 = 1.5/2 = 0.75",
        "κ = A/2 = 118°/2 = 59°",
        "δ = 180° − ψ = 180° − 125° = 55°",
    ]
    assert str(worked) == worked.text
    assert worked.latex.startswith("L = ")
    assert r"\mathrm{mm}" in worked.latex


def test_what_is_worked_out_first_has_its_own_line() -> None:
    worked = chisel_edge_angle.worked(point_angle=118, lip_relief=12, web=1.5, diameter=10)
    assert worked.text.splitlines() == [
        "u = 1.5/10 = 0.15",
        "α_x = atan((tan 12° − 0.15·cot 59°)/√(1 − 0.15²)) = 7.1°",
        "ψ = 180° − atan(cot 59°/tan 7.0589°) = 101.6°",
    ]
    assert worked.latex.count(r" \\ ") == 2


def test_negative_numbers_stand_in_brackets_and_notes_come_along() -> None:
    worked = chisel_edge_angle.worked(point_angle=118, axial_relief=-5)
    assert "tan (-5°)" in worked.text
    assert any("rubs" in note for note in worked.notes)
    assert "rubs" in worked._repr_html_()


@EVERY
def test_the_numbers_in_a_worked_line_give_its_result(name: str) -> None:
    relation = BOOK[name]
    givens = {n: USUAL[n] for n in relation.givens}
    left, *_, line, result = relation.worked(**givens).text.splitlines()[-1].split(" = ")
    assert left == relation.result.symbol
    # Read the printed line back as a calculation in degrees.
    code = line.replace("·", "*").replace("²", "**2").replace("−", "-").replace("√", "sqrt").replace("^", "**")
    code = re.sub(r"\|([^|]*)\|", r"abs(\1)", code).replace("π", "pi")
    code = re.sub(r"(-?[\d.]+)°", r"rad(\1)", code)
    code = re.sub(r"\b(sin|cos|tan|cot|asin|atan) (rad\([^)]*\)|[\d.]+)", r"\1(\2)", code)
    names = {f: getattr(sympy, f) for f in ("sin", "cos", "tan", "cot", "asin", "atan", "sqrt")}
    names |= {"abs": sympy.Abs, "pi": sympy.pi}
    names["rad"] = lambda degrees: sympy.Float(degrees, 30) * sympy.pi / 180
    value = float(sympy.sympify(code, locals=names).evalf(20))
    if relation.result.is_angle:
        value = value * 180 / float(sympy.pi)
    shown = float(result.split()[0].rstrip("°"))
    assert value == pytest.approx(float(relation(**givens)), rel=2e-4)
    assert shown == pytest.approx(float(relation(**givens)), abs=0.51 * 10**-relation.result.decimals)


@EVERY
def test_every_formula_prints_without_leftovers(name: str) -> None:
    for line in (BOOK[name].worked(**{n: USUAL[n] for n in BOOK[name].givens}).formula, *_worked_lines(name)):
        for text in (line.text, line.latex):
            assert "⟦" not in text
            assert "**" not in text
            assert "pi" not in text.replace(r"\pi", "")


def _worked_lines(name: str) -> tuple[object, ...]:
    worked = BOOK[name].worked(**{n: USUAL[n] for n in BOOK[name].givens})
    return (*worked.lines, *worked.where)


def test_printing_of_single_forms() -> None:
    s = symbols()
    assert as_text(-s.t + s.R, letter) == "R − t"
    assert as_text(1 / s.t, letter) == "1/t"
    assert as_text(s.R**3, letter) == "R^3"
    assert as_text(s.R * sympy.tan(s.kappa) / 2, letter) == "R·tan(κ)/2"
    assert as_text(sympy.cot(s.kappa) / sympy.tan(s.delta), letter) == "cot κ/tan δ"
    assert as_text(sympy.Abs(s.t), letter) == "|t|"
    assert as_text(sympy.sin(s.kappa + s.delta), letter).startswith("sin(")
    assert as_text(s.radius ** sympy.Rational(4, 5) * sympy.Rational(25, 10**6), letter) == "0.000025·r^0.8"
    assert as_text(sympy.pi - s.kappa, letter) == "180° − κ"
    assert as_text(s.t / (2 * sympy.pi * s.R), letter) == "t/(2·π·R)"
    assert as_text(1000 / sympy.pi, letter) == "1000/π"  # to divide by half a turn would say another number
    assert web_from_ratio.worked(diameter=10, web_ratio=0.15).latex == r"W = 10 \cdot 0.15 = 1.5\,\mathrm{mm}"
    assert as_text(sympy.pi / 2 - s.kappa, letter) == "90° − κ"
    assert as_latex(-sympy.pi / 2, latex_letter) == r"-90^{\circ}"
    assert as_latex(s.t * sympy.pi, latex_letter) == r"\pi t"
    assert as_latex(sympy.atan2(s.t, s.R), latex_letter) == r"\arctan\left(\frac{t}{R}\right)"


def test_equation_and_its_letters() -> None:
    assert str(point_height.equation.lhs) == "h"
    assert {str(s) for s in point_height.equation.rhs.free_symbols} == {"R", "κ"}
    assert point_height.where == {"R": "half the diameter", "κ": "half the point angle"}
    assert heel_clearance.abbreviations.index("kappa") < heel_clearance.abbreviations.index("delta_plane")
