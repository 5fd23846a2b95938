"""Numbers as a diagnosis says them: lengths in both units, angles alone, an error with the figures it deserves."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.ground.diagnosis.spoken import said, said_of
from drillpoint.relations import oversize


@pytest.mark.parametrize(
    ("name", "value", "error", "words"),
    [
        # DERIVED: divided by 25.4 and rounded by hand.
        ("lip_height_difference", 0.0762, 0.0, "0.076 mm (0.003 in)"),
        ("lip_length_difference", 0.5, 0.5, "0.5 mm ± 0.5 mm (0.02 ± 0.02 in)"),
        ("diameter", 25.4, 0.0, "25.4 mm (1 in)"),
        ("feed", 0.15, 0.0, "0.15 mm/rev (0.0059 in/rev)"),
        ("half_angle_1", 59, 0.5, "59° ± 0.5°"),
        ("web_ratio", 0.15, 0.0, "0.15"),
    ],
)
def test_a_number_is_said_with_its_units(name: str, value: float, error: float, words: str) -> None:
    assert said(name, value, error) == words


def test_what_a_relation_gives_is_said_as_its_quantity() -> None:
    # DERIVED: 0.1·tan 59° = 0.1664.
    assert said_of(oversize(lip_height_difference=0.1, point_angle=118)) == "0.166 mm (0.0066 in)"


@given(value=st.floats(0.001, 500), error=st.one_of(st.just(0.0), st.floats(0.001, 5)))
def test_both_units_say_the_same_length(value: float, error: float) -> None:
    numbers = [float(n) for n in re.findall(r"[\d.]+", said("lip_height_difference", value, error))]
    in_mm, in_inches = numbers[: len(numbers) // 2], numbers[len(numbers) // 2 :]
    # The coarsest inch is rounded to a hundredth, where the error is of that size.
    for mm, inches in zip(in_mm, in_inches, strict=True):
        assert inches == pytest.approx(mm / 25.4, abs=0.0052 if error else 0.00055)
