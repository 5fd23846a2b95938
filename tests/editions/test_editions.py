"""The generated editions are current, and both agree with sympy."""

from __future__ import annotations

import json
import math
import shutil
import subprocess
from pathlib import Path

import numpy as np
import pytest
import sympy
from hypothesis import given, settings

import drillpoint.generated
from drillpoint.editions.all import editions
from drillpoint.editions.functions import javascript_function, python_function
from drillpoint.generated import numbers
from drillpoint.quantities import plain_number
from drillpoint.relation import Relation
from drillpoint.relation.symbols import symbols
from drillpoint.relations import BOOK
from tests.relations.drills import OTHER, USUAL, drills, givens_of

FOLDER = Path(drillpoint.generated.__file__).parent
EVERY = pytest.mark.parametrize("relation", BOOK.values(), ids=BOOK)


@pytest.fixture(scope="module")
def written() -> dict[str, str]:
    """What the command writes into the folder, by name: worked out once, since it takes a while."""
    return dict(editions())


def test_the_committed_files_are_what_the_command_writes(written: dict[str, str]) -> None:
    for name, text in written.items():
        assert (FOLDER / name).read_text(encoding="utf-8") == text, f"run python -m drillpoint.editions ({name})"


def test_nothing_else_lies_in_the_folder(written: dict[str, str]) -> None:
    known = {*written, "__init__.py"}
    assert {path.name for path in FOLDER.iterdir() if path.is_file()} == known


def _exact(relation: Relation, givens: dict[str, float]) -> float:
    values = {symbols().table[n]: sympy.Float(v, 40) for n, v in givens.items()}
    return float(relation.surface_expression.evalf(40, subs=values))


@EVERY
@settings(max_examples=6, deadline=None)
@given(drill=drills())
def test_python_edition_agrees_with_sympy(relation: Relation, drill: dict[str, float]) -> None:
    givens = givens_of(relation, drill)
    exact = _exact(relation, givens)
    scale = _conditioning(relation, givens)
    one = getattr(numbers, relation.name)(math, *givens.values())
    assert one == pytest.approx(exact, rel=1e-12, abs=1e-12 * scale)
    several = getattr(numbers, relation.name)(np, *(np.full(3, v) for v in givens.values()))
    assert several == pytest.approx(np.full(3, exact), rel=1e-12, abs=1e-12 * scale)


def _conditioning(relation: Relation, givens: dict[str, float]) -> float:
    # Next to a fold (a place at half a web, an edge along the lip) the last digit of a given is worth more than 1e-12
    # of the result; the allowance is that digit times the slope.
    slopes = (abs(relation.sensitivity(n, **givens) * v) for n, v in givens.items())
    return max(1.0, *slopes) if givens else 1.0


def _node() -> str:
    found = shutil.which("node")
    if not found:
        pytest.skip("no node here; the browser tests run the same file")
    return found


def _run_javascript(source: str) -> str:
    done = subprocess.run([_node(), "-"], input=source, capture_output=True, text=True, check=True, encoding="utf-8")
    return done.stdout


def test_javascript_edition_agrees_with_sympy() -> None:
    asked = [(r.name, {n: d[n] for n in r.givens}) for r in BOOK.values() for d in (USUAL, OTHER)]
    program = (FOLDER / "numbers.js").read_text(encoding="utf-8") + (
        f"const asked = {json.dumps(asked)};"
        "console.log(JSON.stringify(asked.map(([name, givens]) => numbers.relations[name].value(givens))));"
    )
    for (name, givens), value in zip(asked, json.loads(_run_javascript(program)), strict=True):
        assert value == pytest.approx(_exact(BOOK[name], givens), rel=1e-12), name


def test_javascript_conditions_and_letters_agree_with_python() -> None:
    program = (FOLDER / "numbers.js").read_text(encoding="utf-8") + (
        "const lip = numbers.relations.lip_length;"
        "const bad = {diameter: 10, point_angle: 118, web: 8.5, chisel_edge_angle: 125};"
        "console.log(JSON.stringify([lip.margins(bad), lip.conditions, numbers.letters.kappa(bad)]));"
    )
    margins, conditions, kappa = json.loads(_run_javascript(program))
    assert len(margins) == len(conditions) == 2
    assert margins[0] == pytest.approx(1.5)
    assert margins[1] == pytest.approx(10 * math.sin(math.radians(125)) - 8.5)
    assert "no lip is left" in conditions[1]["says"]
    assert kappa == 59


def test_both_languages_print_the_same_digits() -> None:
    values = [0.125, 2.5, 1.005, 5.15450639, 0.5, 101.645, -0.125, 3.0000001, 0.045]
    program = f"console.log(JSON.stringify({json.dumps(values)}.map(v => v.toFixed(2))));"
    for value, text in zip(values, json.loads(_run_javascript(program)), strict=True):
        assert float(text) == float(plain_number(value, 2)), value


def test_functions_return_one_value_or_a_list() -> None:
    s = symbols()
    place: dict[str, object] = {}
    source = python_function("f", ["web"], s.web * 2) + python_function("g", ["web"], [s.web, sympy.cot(s.web)])
    exec(source, place)  # noqa: S102 - our own generated text, in a test
    assert place["f"](math, 3) == 6  # type: ignore[operator]
    assert place["g"](math, 1.0) == [1.0, pytest.approx(1 / math.tan(1))]  # type: ignore[operator]
    assert "return [" in javascript_function("g", ["web"], [s.web])
