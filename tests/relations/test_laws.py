"""Laws every relation of the book keeps: limits, round trips, monotony, symmetry, dimensions, scale."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
import sympy
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Relation
from drillpoint.relation.symbols import in_surface_units, symbols
from drillpoint.relations import (
    BOOK,
    chisel_edge_angle,
    chisel_edge_length,
    heel_clearance,
    lip_length,
    lip_relief,
    relief_at_radius,
)
from tests.relations.drills import USUAL, drills, givens_of

EVERY = pytest.mark.parametrize("relation", BOOK.values(), ids=BOOK)

DIMENSIONS: dict[str, tuple[int, int, int]] = {
    "": (0, 0, 0),
    "°": (0, 0, 0),
    "mm": (1, 0, 0),
    "mm/mm": (0, 0, 0),
    "mm/rev": (1, 0, 0),
    "m/min": (1, 0, -1),
    "mm/min": (1, 0, -1),
    "rev/min": (0, 0, -1),
    "min": (0, 0, 1),
    "N": (0, 1, 0),
    "N/mm²": (-2, 1, 0),
    "N·m": (1, 1, 0),
    "kW": (1, 1, -1),
}
"""Powers of length, force and time in every unit; a revolution is a plain number."""


def _scale(name: str, length: Any, force: Any = 1, time: Any = 1) -> Any:
    powers = DIMENSIONS[QUANTITIES[name].unit]
    return length ** powers[0] * force ** powers[1] * time ** powers[2]


def _answers(found: object) -> tuple[float, ...]:
    return tuple(float(a) for a in found) if isinstance(found, tuple) else (float(found),)  # type: ignore[arg-type]


@EVERY
@settings(max_examples=8, deadline=None)
@given(drill=drills())
def test_round_trip_through_every_unknown(relation: Relation, drill: dict[str, float]) -> None:
    givens = givens_of(relation, drill)
    result = float(relation(**givens))
    assume(result in relation.result.possible and (relation.result.name != "chisel_edge_angle" or result >= 90))
    for unknown, truth in givens.items():
        knowns = {n: v for n, v in givens.items() if n != unknown}
        answers = _answers(relation.solve(unknown, **knowns, **{relation.result.name: result}))
        for answer in answers:
            again = relation(**knowns, **{unknown: answer})
            # Where the curve is steep the last digit of the answer is worth more than 1e-12 of the result.
            digit = 2 * math.ulp(answer) * abs(relation.sensitivity(unknown, **knowns, **{unknown: answer}))
            assert again == pytest.approx(result, rel=1e-12, abs=1e-12 + digit), (unknown, answer)
        slope = abs(relation.sensitivity(unknown, **givens))
        # A flat curve cannot give the unknown back better than the last digit of its result allows; near a turning
        # point the allowance is the square root of that.
        allowed = 1e-12 * max(1.0, abs(truth)) + min(1e-13 * max(1.0, abs(result)) / max(slope, 1e-300), 1e-4)
        assert min(abs(a - truth) for a in answers) <= allowed, (unknown, truth, answers)


@EVERY
@settings(max_examples=5, deadline=None)
@given(drill=drills())
def test_sensitivity_is_the_slope(relation: Relation, drill: dict[str, float]) -> None:
    givens = givens_of(relation, drill)
    exact = relation.surface_expression
    s = symbols().table
    values = {s[n]: sympy.Float(v, 80) for n, v in givens.items()}
    for name in givens:
        step = sympy.Float("1e-30", 80)
        up = exact.evalf(80, subs={**values, s[name]: values[s[name]] + step})
        down = exact.evalf(80, subs={**values, s[name]: values[s[name]] - step})
        slope = float((up - down) / (2 * step))
        assert relation.sensitivity(name, **givens) == pytest.approx(slope, rel=1e-6, abs=1e-9)


@EVERY
def test_limits_are_what_the_relation_says(relation: Relation) -> None:
    s = symbols()
    assert relation.limits
    for limit in relation.limits:
        others = {s.table[n]: sympy.Float(USUAL[n], 60) for n in relation.givens if n != limit.quantity}
        angle = QUANTITIES[limit.quantity].is_angle
        edge = in_surface_units(limit.towards(s, sympy), angle).evalf(60, subs=others)
        value = in_surface_units(limit.value(s, sympy), relation.result.is_angle).evalf(60, subs=others)
        gaps = []
        for exponent in (8, 16):
            x = edge + (1 if limit.from_above else -1) * sympy.Float(10, 60) ** -exponent
            here = relation.surface_expression.evalf(60, subs={**others, s.table[limit.quantity]: x})
            gaps.append(abs(float(here - value)))
        assert gaps[1] < 1e-5, (limit, gaps)
        assert gaps[1] <= gaps[0], (limit, gaps)


@EVERY
@given(drill=drills(), factor=st.floats(0.1, 25.4))
def test_only_lengths_scale_with_the_drill(relation: Relation, drill: dict[str, float], factor: float) -> None:
    if relation.empirical:
        pytest.skip("sums up measurements: its constants carry units")
    givens = givens_of(relation, drill)
    larger = {n: v * _scale(n, factor) for n, v in givens.items()}
    expected = relation(**givens) * _scale(relation.result.name, factor)
    # The larger drill may be beyond what is possible; unchecked is the bare formula.
    assert relation.unchecked(**larger) == pytest.approx(expected, rel=1e-9, abs=1e-9)


@EVERY
@given(drill=drills())
def test_arrays_give_what_scalars_give(relation: Relation, drill: dict[str, float]) -> None:
    givens = givens_of(relation, drill)
    names = list(givens)
    arrays = {names[0]: np.array([[givens[names[0]]], [givens[names[0]]]])}
    if len(names) > 1:
        arrays[names[1]] = np.array([givens[names[1]]] * 3)
    found = relation(**{**givens, **arrays})
    assert found.shape == ((2, 3) if len(names) > 1 else (2, 1))
    assert found == pytest.approx(float(relation(**givens)), rel=1e-12, abs=1e-12)


@given(drills(), st.floats(0.01, 5))
def test_more_relief_turns_the_chisel_edge_on_and_clears_more_heel(drill: dict[str, float], more: float) -> None:
    angle, relief = drill["point_angle"], drill["axial_relief"]
    first, second = (chisel_edge_angle(point_angle=angle, axial_relief=r) for r in (relief, relief + more))
    assert second > first
    heels = [
        heel_clearance(point_angle=angle, axial_relief=r, web_ratio=drill["web_ratio"]) for r in (relief, relief + more)
    ]
    assert heels[1] > heels[0]


@given(drills())
def test_relief_grows_from_the_corner_to_the_chisel_edge(drill: dict[str, float]) -> None:
    names = ("web", "point_angle", "axial_relief")
    own = {n: drill[n] for n in names}
    inner = relief_at_radius(radius=drill["radius"], **own)
    outer = relief_at_radius(radius=drill["diameter"] / 2, **own)
    assert inner >= outer - 1e-9
    corner = lip_relief(
        axial_relief=drill["axial_relief"], point_angle=drill["point_angle"], web_ratio=drill["web_ratio"]
    )
    assert outer == pytest.approx(corner, abs=1e-9)


@given(drills())
def test_a_chisel_edge_angle_and_its_supplement_are_the_same_edge(drill: dict[str, float]) -> None:
    obtuse = drill["chisel_edge_angle"]
    assume(5 <= 180 - obtuse < 90)
    whole = chisel_edge_length(web=drill["web"], chisel_edge_angle=obtuse)
    acute = chisel_edge_length(web=drill["web"], chisel_edge_angle=180 - obtuse)
    assert acute == pytest.approx(whole, rel=1e-12)
    assert any("was read as" in note for note in acute.notes)
    own = {n: drill[n] for n in ("diameter", "point_angle", "web")}
    assert lip_length(**own, chisel_edge_angle=180 - obtuse) == pytest.approx(
        lip_length(**own, chisel_edge_angle=obtuse), rel=1e-9, abs=1e-9
    )


@given(drills())
def test_the_two_readings_of_web_agree(drill: dict[str, float]) -> None:
    common = {n: drill[n] for n in ("diameter", "point_angle", "chisel_edge_angle")}
    by_web = lip_length(**common, web=drill["web"])
    assert lip_length(**common, web_ratio=drill["web_ratio"]) == pytest.approx(by_web, rel=1e-9, abs=1e-9)


@EVERY
def test_dimensions_are_consistent(relation: Relation) -> None:
    if relation.empirical:
        pytest.skip("sums up measurements: its constants carry units")
    table = symbols().table
    at = {n: sympy.Float(USUAL[n], 30) for n in relation.givens}
    base = relation.surface_expression.evalf(30, subs={table[n]: v for n, v in at.items()})
    for units in ((2, 1, 1), (1, 3, 1), (1, 1, 7), (0.1, 4.448, 60)):
        larger = {table[n]: v * _scale(n, *units) for n, v in at.items()}
        found = relation.surface_expression.evalf(30, subs=larger)
        assert float(found) == pytest.approx(float(base * _scale(relation.result.name, *units)), rel=1e-12), units


def test_every_unit_has_its_dimensions() -> None:
    assert {q.unit for q in QUANTITIES.values()} <= set(DIMENSIONS)


def test_flat_and_square_edges() -> None:
    # DERIVED: with the chisel edge square to the lips it is as long as the web is thick.
    assert chisel_edge_length(web=1.5, chisel_edge_angle=90) == pytest.approx(1.5, rel=1e-12)
    # DERIVED: without a web the lip is the slant side of the cone.
    whole = lip_length(diameter=10, point_angle=118, web=0, chisel_edge_angle=125)
    assert whole == pytest.approx(5 / math.sin(math.radians(59)), rel=1e-12)
