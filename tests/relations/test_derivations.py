"""Every derivation holds step by step, and a wrong step is found out."""

from __future__ import annotations

import random

import attrs
import pytest
import sympy

from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Relation, Step
from drillpoint.relation.symbols import spelled_out, symbols
from drillpoint.relations import BOOK
from tests.relations.drills import USUAL

EVERY = pytest.mark.parametrize("relation", BOOK.values(), ids=BOOK)
DIGITS = 40


def _drill(seed: int) -> dict[str, sympy.Float]:
    chance = random.Random(seed)
    web_ratio = chance.uniform(0.05, 0.3)
    diameter = chance.uniform(2, 30)
    degrees = {"point_angle": chance.uniform(70, 170), "chisel_edge_angle": chance.uniform(100, 140)}
    degrees |= {"axial_relief": chance.uniform(2, 30), "lip_relief": chance.uniform(10, 35)}
    lengths = {"diameter": diameter, "web": web_ratio * diameter, "radius": chance.uniform(0.4, 0.5) * diameter}
    lengths |= {n: chance.uniform(0.2, 0.5) * web_ratio * diameter for n in ("thinned_chisel_length", "pilot_diameter")}
    lengths |= {"web_taper": chance.uniform(0.01, 0.03), "length_removed": chance.uniform(1, 60)}
    degrees["thinning_angle"] = chance.uniform(15, 38)
    # What has no bearing on the drill's shape may be anything near its value in the usual drill.
    rest = {n: v * chance.uniform(0.8, 1.2) for n, v in USUAL.items() if n not in {**lengths, **degrees}}
    degrees |= {n: rest.pop(n) for n in list(rest) if QUANTITIES[n].is_angle}
    plain = {**rest, **lengths, "web_ratio": web_ratio}
    values = {n: sympy.Float(v, DIGITS) for n, v in plain.items()}
    return values | {n: sympy.Float(v, DIGITS) * sympy.pi.evalf(DIGITS) / 180 for n, v in degrees.items()}


def unsound(relation: Relation, steps: tuple[Step, ...]) -> list[int]:
    """The numbers of the steps that do not hold for some drill.

    Letters come from the steps that introduce them, the result from the relation; every other equation must then hold.
    A letter that no step introduces (a height that drops out, a place along an edge) may be anything.
    """
    wrong: set[int] = set()
    for seed in range(3):
        table = symbols().table
        given = _drill(seed)
        values = {table[n]: given[n] for n in relation.givens}
        values[table[relation.result.name]] = spelled_out(relation.expression).evalf(DIGITS, subs=values)
        free = random.Random(seed + 100)
        for number, step in enumerate(steps):
            equation = step.equation()
            left, right = (spelled_out(side) for side in (equation.lhs, equation.rhs))
            for letter in sorted((left.free_symbols | right.free_symbols) - set(values), key=str):
                later = [s.equation() for s in steps if s.kind == "let" and s.equation().lhs == letter]
                if later:
                    values[letter] = spelled_out(later[0].rhs).evalf(DIGITS, subs=values)
                else:
                    known = given.get(letter.name)
                    values[letter] = known if known is not None else sympy.Float(free.uniform(0.5, 3), DIGITS)
            gap = abs((left - right).evalf(DIGITS, subs=values))
            if not gap < sympy.Float("1e-25", DIGITS):
                wrong.add(number)
    return sorted(wrong)


@EVERY
def test_every_step_holds(relation: Relation) -> None:
    assert unsound(relation, relation.derivation) == []


@EVERY
def test_a_spoiled_step_is_found(relation: Relation) -> None:
    for number, step in enumerate(relation.derivation):
        if step.kind == "let":
            continue
        spoiled = attrs.evolve(
            step, right=lambda s, sp, right=step.right: right(s, sp) * sp.Rational(1001, 1000) + sp.Rational(1, 10**6)
        )
        steps = (*relation.derivation[:number], spoiled, *relation.derivation[number + 1 :])
        assert number in unsound(relation, steps), step.words


@EVERY
def test_the_derivation_ends_at_the_equation(relation: Relation) -> None:
    last = relation.derivation[-1].equation()
    assert last.lhs == symbols().table[relation.result.name]
    difference = spelled_out(last.rhs) - relation.spelled_out
    given = {symbols().table[n]: v for n, v in _drill(3).items()}
    assert abs(difference.evalf(DIGITS, subs=given)) < 1e-25


@EVERY
def test_every_step_says_something(relation: Relation) -> None:
    for step in relation.derivation:
        assert step.words[0].isupper() or step.words.startswith("and"), step.words
        assert len(step.words.split()) >= 3
        assert step.kind in ("let", "read off", "follow")
