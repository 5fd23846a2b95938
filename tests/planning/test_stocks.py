"""What comes off: DERIVED by the formulas of the drawing, worked out here once more."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.planning.shop import Shop
from tests.planning.drills import plan

ALLOWANCE = Shop().finish_allowance
LAND, MARGIN, CHIP = 0.6, 0.9, 0.4


def tan(degrees: float) -> float:
    return math.tan(math.radians(degrees))


def change(diameter: float, one: float, other: float) -> float:
    return diameter / 2 * abs(1 / tan(one / 2) - 1 / tan(other / 2))


def amounts(found) -> dict[str, float]:
    return {stock.fault: stock.amount.value for stock in found.off.stocks}


def test_each_fault_asks_for_its_own_stock() -> None:
    found = plan(wear_land=LAND, worn_margin=MARGIN, chip_depth=CHIP, new_point_angle=135)
    assert amounts(found) == pytest.approx(
        {
            "wear_land": LAND * tan(12),
            "worn_corner": MARGIN,
            "chip": CHIP / math.sin(math.radians(59)),
            "angle_change": change(10, 118, 135),
        },
        abs=1e-9,
    )
    # The largest at the corners, and the flatter point on top of it at the tip.
    assert found.off.decides == "the worn or burnt corner"
    assert found.off.on_top == "the change of angle"
    assert found.off.corners.value == pytest.approx(MARGIN + ALLOWANCE, abs=1e-9)
    assert found.off.tip.value == pytest.approx(MARGIN + change(10, 118, 135) + ALLOWANCE, abs=1e-9)


def test_a_sharper_point_comes_off_the_corners_and_spares_the_tip() -> None:
    flat = {"half_angle_1": 67.5, "half_angle_2": 67.5}
    found = plan(**flat, new_point_angle=118)
    assert found.off.corners.value == pytest.approx(change(10, 118, 135) + ALLOWANCE, abs=1e-9)
    assert found.off.tip.value == pytest.approx(ALLOWANCE, abs=1e-9)
    chipped = plan(**flat, new_point_angle=118, chip_depth=2)
    chip = 2 / math.sin(math.radians(67.5))
    assert chip > change(10, 118, 135)
    assert chipped.off.decides == "the chip in the lip"
    assert chipped.off.tip.value == pytest.approx(chip - change(10, 118, 135) + ALLOWANCE, abs=1e-9)


def test_the_lip_ahead_loses_more() -> None:
    found = plan(lip_height_difference=0.3, higher_lip=2)
    assert found.off.ahead.value == pytest.approx(0.3)
    assert found.off.decides == "the lip height difference"
    # Half angles alone: so much of a height at the corners.
    angles = plan(half_angle_1=57, half_angle_2=61, lip_height_difference=None)
    assert angles.off.ahead.value == pytest.approx(5 * (1 / tan(57) - 1 / tan(61)), abs=1e-9)
    assert plan(lip_height_difference=0.02).off.ahead.value == 0


def test_reading_errors_say_what_else_may_decide() -> None:
    near = plan(worn_margin=0.5, chip_depth=0.4)
    # DERIVED: 0.4/sin 59° is 0.467, and the rule along the margin may be 0.25 out.
    assert near.off.decides == "the worn or burnt corner"
    assert near.off.doubtful == ("the chip",)
    assert plan(worn_margin=2, chip_depth=0.4).off.doubtful == ()
    assert near.off.corners.plus_minus == pytest.approx(0.25)


@given(
    land=st.floats(0, 2),
    margin=st.floats(0, 3),
    chip=st.floats(0, 2),
    new=st.sampled_from([118.0, 125.0, 135.0, 150.0]),
)
def test_the_take_off_covers_every_fault_and_no_more(land: float, margin: float, chip: float, new: float) -> None:
    found = plan(wear_land=land, worn_margin=margin, chip_depth=chip, new_point_angle=new)
    at_corners = [s.amount.value for s in found.off.stocks if s.at == "both corners"]
    assert found.off.corners.value == pytest.approx(max(at_corners, default=0) + ALLOWANCE, abs=1e-9)
    flatter = [s.amount.value for s in found.off.stocks if s.at == "the tip"]
    assert found.off.tip.value == pytest.approx(found.off.corners.value + sum(flatter), abs=1e-9)
