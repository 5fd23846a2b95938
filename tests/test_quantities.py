"""The vocabulary is complete, sound and used."""

from __future__ import annotations

import inspect
import math
import tomllib
from importlib import resources

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.errors import UnknownGiven
from drillpoint.ground import STATED
from drillpoint.ground.record import OF_EACH_LIP, OF_THE_POINT
from drillpoint.planning import STATED as PLANNED
from drillpoint.quantities import QUANTITIES, Quantity, Span, plain_number, quantity
from drillpoint.relations import BOOK


@pytest.mark.parametrize("q", QUANTITIES.values(), ids=QUANTITIES)
def test_every_quantity_is_whole(q: Quantity) -> None:
    assert q.name.isidentifier()
    assert q.term and q.symbol and q.latex and len(q.meaning) > 20
    assert q.unit in ("mm", "°", "", "mm/mm", "mm/rev", "mm/min", "m/min", "rev/min", "min", "N", "N/mm²", "N·m", "kW")
    assert q.typical in q.possible
    assert q.usual.low >= q.possible.low or q.usual.low == 0
    assert q.usual.low < q.usual.high


def test_every_quantity_stands_in_one_chapter_only() -> None:
    folder = resources.files("drillpoint").joinpath("vocabulary")
    files = [tomllib.loads(entry.read_text(encoding="utf-8")) for entry in folder.iterdir()]
    assert sorted(name for file in files for name in file) == sorted(QUANTITIES)


def test_every_quantity_is_used_and_symbols_are_distinct() -> None:
    used = {q.name for relation in BOOK.values() for q in relation.quantities}
    stated = {name for cls in (*STATED, *PLANNED) for name in inspect.signature(cls).parameters}
    read = {*OF_THE_POINT, *OF_EACH_LIP}
    assert used | ((stated | read) & set(QUANTITIES)) == set(QUANTITIES)
    assert len({q.symbol for q in QUANTITIES.values()}) == len(QUANTITIES)


def test_an_unknown_name_gets_the_nearest() -> None:
    with pytest.raises(UnknownGiven, match="did you mean 'lip_relief'"):
        quantity("lip_releif")
    with pytest.raises(UnknownGiven, match="choose from"):
        quantity("zzzz")


@pytest.mark.parametrize(
    ("value", "decimals", "said"),
    [(5.154506, 2, "5.15"), (5.0, 2, "5"), (0.125, 2, "0.13"), (-0.001, 2, "0"), (100.0, 0, "100"), (1e-9, 3, "0")],
)
def test_plain_numbers(value: float, decimals: int, said: str) -> None:
    assert plain_number(value, decimals) == said


def test_numbers_too_long_to_read_keep_their_exponent() -> None:
    assert [plain_number(v, 2) for v in (1e300, -1e21, math.inf)] == ["1e+300", "-1e+21", "inf"]
    assert plain_number(math.nan, 2) == "nan"
    assert plain_number(1e20, 8) == "1" + 20 * "0"


@given(st.floats(-1e6, 1e6), st.integers(0, 6))
def test_plain_numbers_are_within_half_a_digit(value: float, decimals: int) -> None:
    assert abs(float(plain_number(value, decimals)) - value) <= 0.5 * 10.0**-decimals * (1 + 1e-9)


def test_open_ends_exclude_themselves() -> None:
    assert 0.0 not in Span(0, 1, open_low=True)
    assert 1.0 not in Span(0, 1, open_high=True)
    assert 0.0 in Span(0, 1)
    assert float("nan") not in Span(0, 1)
