"""Holding readings against limits: what is called, what is left undecided, and that worse is never called less."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.ground.diagnosis.evidence import Evidence, at_least, at_most, difference, together
from drillpoint.ground.diagnosis.readings import Measured

RANK = {"clear": 0, "undecided": 1, "possible": 2, "shown": 3}
sizes = st.floats(0, 10)


def apart(value: float, plus_minus: float, limit: float = 1.0) -> Evidence:
    """Two lips that differ by a value."""
    return difference("they differ by", "lip_height_difference", Measured(value, plus_minus), limit, "shop's choice")


def low(value: float, plus_minus: float) -> Evidence:
    """A relief that should be at least 8°."""
    return at_least("it is", "lip_relief", Measured(value, plus_minus), 8.0, "shop's choice", scale=5.0)


@pytest.mark.parametrize(
    ("value", "plus_minus", "verdict"),
    [
        (0.5, 0.2, "clear"),
        (0.9, 0.2, "undecided"),
        (1.1, 0.2, "possible"),
        (1.3, 0.2, "shown"),
        (-1.3, 0.2, "shown"),
        (1.3, 1.4, "undecided"),
        (1.5, 1.4, "possible"),
        (1.0, 0.0, "clear"),
        (1.001, 0.0, "shown"),
    ],
)
def test_a_difference_is_called_only_beyond_the_reading_error(value: float, plus_minus: float, verdict: str) -> None:
    assert apart(value, plus_minus).verdict == verdict


@pytest.mark.parametrize(
    ("value", "plus_minus", "verdict"),
    [(12, 1, "clear"), (8.5, 1, "undecided"), (7.5, 1, "possible"), (6.5, 1, "shown"), (8, 0, "clear")],
)
def test_a_reading_below_its_limit_is_called(value: float, plus_minus: float, verdict: str) -> None:
    assert low(value, plus_minus).verdict == verdict
    mirrored = at_most("it is", "lip_relief", Measured(-value, plus_minus), -8.0, "shop's choice", scale=5.0)
    assert mirrored.verdict == verdict
    assert mirrored.times == low(value, plus_minus).times


@given(sizes, sizes, sizes)
def test_a_difference_within_the_reading_error_is_never_a_fault(value: float, more: float, limit: float) -> None:
    assert apart(value, value + more, limit).verdict in ("clear", "undecided")


@given(sizes, sizes, sizes, st.floats(0.01, 5))
def test_a_worse_reading_is_never_called_less(value: float, more: float, plus_minus: float, limit: float) -> None:
    better, worse = apart(value, plus_minus, limit), apart(value + more, plus_minus, limit)
    assert RANK[worse.verdict] >= RANK[better.verdict]
    assert worse.times >= better.times
    higher, lower = low(value, plus_minus), low(value - more, plus_minus)
    assert RANK[lower.verdict] >= RANK[higher.verdict]
    assert lower.times >= higher.times


@given(sizes, sizes, sizes, st.floats(0.01, 5))
def test_a_closer_reading_of_a_fault_is_never_less_sure(
    value: float, plus_minus: float, more: float, limit: float
) -> None:
    rough, fine = apart(value, plus_minus + more, limit), apart(value, plus_minus, limit)
    if value > limit + 1e-6:
        assert RANK[fine.verdict] >= RANK[rough.verdict]


def test_several_readings_of_one_fault() -> None:
    clear, undecided, possible, shown = apart(0, 0), apart(0.9, 0.2), apart(1.1, 0.2), apart(1.3, 0.2)
    assert together((clear, shown, undecided)) == "shown"
    assert together((clear, possible)) == "possible"
    assert together((undecided, clear)) == "clear"
    assert together((undecided, undecided)) == "undecided"


def test_evidence_says_number_error_limit_and_whose() -> None:
    assert str(apart(0.26, 0.02, 0.05)) == (
        "they differ by 0.26 mm ± 0.02 mm (0.0102 ± 0.0008 in); allowed is at most 0.05 mm (0.002 in): shop's choice."
    )
    assert str(low(5, 1)) == "it is 5° ± 1°; it should be at least 8°: shop's choice."
