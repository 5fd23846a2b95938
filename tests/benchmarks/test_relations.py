"""What a relation costs: one value and a million, against hand-written numpy and sympy's own lambdify, in one run.

Read the ratios, not the times: `python -m pytest tests/benchmarks --benchmark-group-by=group`.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
import sympy

from drillpoint.relation.symbols import symbols
from drillpoint.relations import lip_length

ONE = {"diameter": 10.0, "point_angle": 118.0, "web": 1.5, "chisel_edge_angle": 125.0}
MANY = {**ONE, "diameter": np.linspace(4.0, 40.0, 1_000_000), "point_angle": np.linspace(90.0, 150.0, 1_000_000)}


def _by_hand(m: Any, diameter: Any, point_angle: Any, web: Any, chisel_edge_angle: Any) -> Any:
    t, delta = web / 2, (180 - chisel_edge_angle) * (math.pi / 180)
    return (m.sqrt(diameter**2 / 4 - t**2) - t / m.tan(delta)) / m.sin(point_angle * (math.pi / 360))


@pytest.fixture(scope="module")
def lambdified() -> Any:
    table = symbols().table
    return sympy.lambdify([table[n] for n in lip_length.givens], lip_length.surface_expression, "numpy")


def _agrees(value: Any, givens: dict[str, Any]) -> None:
    module = np if isinstance(givens["diameter"], np.ndarray) else math
    assert value == pytest.approx(_by_hand(module, **givens), rel=1e-12)


@pytest.mark.benchmark(group="one value")
def test_one_by_hand(benchmark: Any) -> None:
    _agrees(benchmark(lambda: _by_hand(math, **ONE)), ONE)


@pytest.mark.benchmark(group="one value")
def test_one_checked(benchmark: Any) -> None:
    _agrees(float(benchmark(lambda: lip_length(**ONE))), ONE)


@pytest.mark.benchmark(group="one value")
def test_one_unchecked(benchmark: Any) -> None:
    _agrees(benchmark(lambda: lip_length.unchecked(**ONE)), ONE)


@pytest.mark.benchmark(group="one value")
def test_one_lambdified(benchmark: Any, lambdified: Any) -> None:
    _agrees(float(benchmark(lambda: lambdified(**ONE))), ONE)


@pytest.mark.benchmark(group="a million values")
def test_million_by_hand(benchmark: Any) -> None:
    _agrees(benchmark(lambda: _by_hand(np, **MANY)), MANY)


@pytest.mark.benchmark(group="a million values")
def test_million_checked(benchmark: Any) -> None:
    _agrees(benchmark(lambda: lip_length(**MANY)), MANY)


@pytest.mark.benchmark(group="a million values")
def test_million_lambdified(benchmark: Any, lambdified: Any) -> None:
    _agrees(benchmark(lambda: lambdified(**MANY)), MANY)
