"""A shop's rule held against the drawing."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.errors import OutOfRange
from drillpoint.ground.diagnosis.shop_rule import twice_the_height

INCH = 25.4


@pytest.mark.parametrize(("angle", "thousandths"), [(118, 4.99), (135, 7.24)])
def test_three_thousandths_of_lip_height(angle: float, thousandths: float) -> None:
    # DERIVED: h·tan κ with h 0.003 in; a 1/2 in drill at 118° makes at most 0.505 in, where the rule says 0.506.
    held = twice_the_height(lip_height_difference=0.003 * INCH, point_angle=angle)
    assert held.by_drawing / INCH * 1000 == pytest.approx(thousandths, abs=0.005)
    assert held.by_rule / INCH == pytest.approx(0.006)


def test_the_rule_is_wrong_both_ways() -> None:
    # DERIVED: it is right only where tan κ = 2, at a point angle of 126.87°.
    assert "promises more than can be" in str(twice_the_height(lip_height_difference=0.1, point_angle=118))
    assert "falls short" in str(twice_the_height(lip_height_difference=0.1, point_angle=135))
    assert twice_the_height(lip_height_difference=0.1, point_angle=126.8698976458).ratio == pytest.approx(2)


@given(st.floats(0.001, 5), st.floats(60, 170))
def test_the_ratio_does_not_go_by_the_height(height: float, angle: float) -> None:
    one = twice_the_height(lip_height_difference=height, point_angle=angle).ratio
    assert one == pytest.approx(twice_the_height(lip_height_difference=2 * height, point_angle=angle).ratio)


def test_what_is_no_error_is_refused() -> None:
    with pytest.raises(OutOfRange):
        twice_the_height(lip_height_difference=-0.1, point_angle=118)
    with pytest.raises(OutOfRange, match="above 0 mm"):
        twice_the_height(lip_height_difference=0.0, point_angle=118)
