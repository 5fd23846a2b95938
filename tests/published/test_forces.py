"""Figures on thrust, torque and power. Each names its source and how it was seen.

The tolerance is the rounding of the figure. The inch formulas of Machinery's Handbook 31, pp. 1152-1153 (seen), stand
here in inches, pounds and inch-pounds, and are held against the relations.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.errors import Impossible
from drillpoint.handbook import ChiselFactors, chisel_factors
from drillpoint.handbook.library import printed
from drillpoint.relations import (
    chip_thickness,
    chip_width,
    chisel_thrust_factor,
    lip_length,
    motor_power,
    power,
    specific_cutting_force,
    thrust,
    thrust_factor,
    thrust_ratio,
    torque,
    torque_factor,
    torque_ratio,
    torque_specific_force,
)

INCH = 25.4
POUND = 4.4482216152605
INCH_POUND = POUND * INCH / 1000
HORSEPOWER = 0.74569987
STANDARD = chisel_factors(chisel_ratio=0.18)
SPLIT = chisel_factors(chisel_ratio=0.03)


def _ratio(row: ChiselFactors, diameter: float, feed: float = 0.008 * INCH) -> float:
    return float(thrust_ratio(diameter=diameter, feed=feed, **row.of_thrust, **STANDARD.to_compare_thrust_with))


def test_worked_example_of_the_handbook() -> None:
    # Machinery's Handbook 31: 7/8 in, 200 BHN, 350 rpm, efficiency 0.80 (seen). Feed 0.008 in/rev, work material factor
    # 24000, wear 1.30 and the answers 2313 lb, 559 in-lb, 3.1 hp, 3.9 hp: from memory, recomputed 3.10 and 3.88.
    job = {"diameter": 7 / 8 * INCH, "feed": 0.008 * INCH, "material_factor": 24000, "tool_wear_factor": 1.30}
    push, turn = thrust(**job, **STANDARD.of_thrust), torque(**job, **STANDARD.of_torque)
    assert push / POUND == pytest.approx(2313, abs=0.5)
    assert turn / INCH_POUND == pytest.approx(559, abs=0.5)
    used = power(torque=turn, spindle_speed=350)
    assert used / HORSEPOWER == pytest.approx(3.10, abs=0.01)
    needed = motor_power(power=used, efficiency=0.80)
    assert needed / HORSEPOWER == pytest.approx(3.88, abs=0.005)
    assert motor_power(torque=turn, spindle_speed=350, efficiency=0.80) == pytest.approx(needed, rel=1e-12)


def test_horsepower_as_handbooks_write_it() -> None:
    # Handbooks: hp = M n / 63025, M in in-lb.
    assert power(torque=559 * INCH_POUND, spindle_speed=350) / HORSEPOWER == pytest.approx(559 * 350 / 63025, rel=1e-5)


@given(st.floats(0.05, 2), st.floats(0.001, 0.03), st.floats(1000, 50000), st.floats(1, 2), st.integers(0, 11))
def test_both_unit_systems_give_the_same(size: float, feed: float, work: float, wear: float, row: int) -> None:
    # Inch formulas, printed (seen): T = 2 Kd Ff FT B W + Kd d² J W in lb, M = Kd Ff FM A W in in-lb.
    factors = list(printed("chisel_factors"))[row]
    a, b, j = factors["torque_factor"], factors["thrust_factor"], factors["chisel_thrust_factor"]
    pounds = 2 * work * feed**0.8 * size**0.8 * b * wear + work * size**2 * j * wear
    inch_pounds = work * feed**0.8 * size**1.8 * a * wear
    job = {"diameter": size * INCH, "feed": feed * INCH, "material_factor": work, "tool_wear_factor": wear}
    # The converted constants are written to four or five figures.
    assert thrust(**job, thrust_factor=b, chisel_thrust_factor=j) / POUND == pytest.approx(pounds, rel=1e-4)
    assert torque(**job, torque_factor=a) / INCH_POUND == pytest.approx(inch_pounds, rel=1e-4)


def test_printed_metric_constants_are_these_rounded() -> None:
    # Machinery's Handbook 31 (seen), SI: 0.05 and 0.007 for the thrust, 0.000025 for the torque.
    unit = {"diameter": 1, "feed": 1, "material_factor": 1000, "tool_wear_factor": 1}
    assert thrust(**unit, thrust_factor=1, chisel_thrust_factor=0) / 1000 == pytest.approx(0.05, abs=0.0005)
    both = thrust(**unit, thrust_factor=1, chisel_thrust_factor=1) - thrust(
        **unit, thrust_factor=1, chisel_thrust_factor=0
    )
    assert both / 1000 == pytest.approx(0.007, abs=0.0005)
    assert torque(**unit, torque_factor=1) / 1000 == pytest.approx(0.000025, abs=0.0000005)


@pytest.mark.parametrize(
    ("table", "column", "power_of"),
    [
        ("feed_factors_inch", "feed_factor", ("feed_in", 0.8)),
        ("feed_factors_metric", "feed_factor", ("feed", 0.8)),
        ("size_factors_inch", "thrust_size_factor", ("diameter_in", 0.8)),
        ("size_factors_inch", "torque_size_factor", ("diameter_in", 1.8)),
        ("size_factors_metric", "thrust_size_factor", ("diameter", 0.8)),
    ],
)
def test_printed_feed_and_size_factors_are_powers(table: str, column: str, power_of: tuple[str, float]) -> None:
    # Machinery's Handbook 31, pp. 1152-1153 (seen).
    rows = printed(table)
    name, exponent = power_of
    for row in rows:
        assert row[name] ** exponent == pytest.approx(row[column], abs=rows.rounding(column) * 1.0001), row


def test_metric_rows_of_the_handbook_give_the_relations_thrust() -> None:
    # Printed factors put in by hand, 12.5 mm at 0.20 mm/rev, against the relation: the rounding of three figures.
    feed = {row["feed"]: row["feed_factor"] for row in printed("feed_factors_metric")}[0.2]
    size = {row["diameter"]: row["thrust_size_factor"] for row in printed("size_factors_metric")}[12.5]
    b, j = STANDARD.thrust_factor, STANDARD.chisel_thrust_factor
    by_hand = 0.05 * 24000 * feed * size * b + 0.007 * 24000 * 12.5**2 * j
    found = thrust(diameter=12.5, feed=0.2, material_factor=24000, tool_wear_factor=1, **STANDARD.of_thrust)
    assert found == pytest.approx(by_hand, rel=0.01)


def test_smooth_factors_against_the_table() -> None:
    # Machinery's Handbook 31 (seen) against the curves after Shaw and Oxford 1957 (from memory).
    for row in printed("chisel_factors"):
        c = row["chisel_ratio"]
        # The printed torque factor at 0.15 looks out of line with its neighbours.
        allowed = 0.0225 if c == 0.15 else 0.007
        assert torque_factor(chisel_ratio=c) == pytest.approx(row["torque_factor"], rel=allowed), c
        assert thrust_factor(chisel_ratio=c) == pytest.approx(row["thrust_factor"], rel=0.009), c
        assert chisel_thrust_factor(chisel_ratio=c) == pytest.approx(row["chisel_thrust_factor"], abs=0.00251), c


def test_the_printed_torque_factor_at_fifteen_hundredths_is_out_of_line() -> None:
    # DERIVED: the curve misses it by about 2 %, three times as much as any other row.
    row = chisel_factors(chisel_ratio=0.15)
    assert abs(torque_factor(chisel_ratio=0.15) / row.torque_factor - 1) > 0.02


def test_split_against_standard_at_seven_eighths() -> None:
    # DERIVED from the printed table (seen): 7/8 in, 0.008 in/rev.
    assert _ratio(SPLIT, 7 / 8 * INCH) == pytest.approx(0.571, abs=5e-4)
    assert torque_ratio(**SPLIT.of_torque, **STANDARD.to_compare_torque_with) == pytest.approx(0.922, abs=5e-4)


@pytest.mark.parametrize(("ratio", "expected"), [(0.10, 0.732), (0.25, 1.407), (0.30, 1.694)])
def test_thinned_and_thickened_webs(ratio: float, expected: float) -> None:
    # DERIVED from the printed table (seen): 7/8 in, 0.008 in/rev, against a chisel edge ratio of 0.18. The figures were
    # worked with the printed feed factor 0.021; the power it stands for gives up to 0.0006 less or more.
    assert _ratio(chisel_factors(chisel_ratio=ratio), 7 / 8 * INCH) == pytest.approx(expected, abs=1e-3)


@pytest.mark.parametrize(("inches", "expected"), [(1 / 4, 0.741), (1 / 2, 0.666), (7 / 8, 0.571), (1.5, 0.452)])
def test_a_split_point_helps_a_large_drill_more(inches: float, expected: float) -> None:
    # DERIVED from the printed table (seen), 0.008 in/rev; worked with the printed feed factor, as above.
    assert _ratio(SPLIT, inches * INCH) == pytest.approx(expected, abs=1e-3)


@pytest.mark.parametrize("ratio", [0.03, 0.10, 0.25, 0.30])
def test_the_curves_tell_the_same_story_as_the_table(ratio: float) -> None:
    # DERIVED: the curves run through 0.0324 where the table prints 0.030 for the standard drill, hence 5 %.
    job = {"diameter": 7 / 8 * INCH, "feed": 0.008 * INCH}
    smooth = thrust_ratio(**job, chisel_ratio=ratio, reference_chisel_ratio=0.18)
    assert smooth == pytest.approx(_ratio(chisel_factors(chisel_ratio=ratio), 7 / 8 * INCH), rel=0.05)


def test_a_longer_chisel_edge_than_any_in_the_table_is_refused() -> None:
    with pytest.raises(Impossible, match=r"longer than any in the handbook's table, which ends at 0\.4"):
        thrust_factor(chisel_ratio=0.41)
    with pytest.raises(Impossible, match=r"a split point 0\.03"):
        thrust(diameter=10, feed=0.2, material_factor=24000, tool_wear_factor=1, chisel_edge_length=5)


def test_torque_by_a_specific_force() -> None:
    # DERIVED: 10 mm, 0.15 mm/rev, 118°, 2100 N/mm² at 1 mm, exponent 0.25.
    work = {"specific_force_at_1_mm": 2100, "chip_thickness_exponent": 0.25}
    force = specific_cutting_force(feed=0.15, point_angle=118, **work)
    assert force == pytest.approx(4170, abs=0.5)
    assert torque_specific_force(diameter=10, feed=0.15, point_angle=118, **work) == pytest.approx(7.82, abs=5e-3)
    # Stephenson and Agapiou, eq. 6.19 (second hand): specific energy = 8 M / (D² f).
    assert pytest.approx(force, rel=1e-3) == 8 * 7820 / (10**2 * 0.15)


@pytest.mark.parametrize(("angle", "thickness"), [(90, 0.071), (118, 0.086), (135, 0.092)])
def test_chip_thickness_by_point_angle(angle: float, thickness: float) -> None:
    # DERIVED, feed 0.2 mm/rev.
    assert chip_thickness(feed=0.2, point_angle=angle) == pytest.approx(thickness, abs=5e-4)


def test_chip_thickness_of_a_textbook() -> None:
    # Ghosh and Mallik, Manufacturing Science (second hand): feed 0.23 mm/rev gives 0.1; exactly 0.0986 at 118°.
    exact = chip_thickness(feed=0.23, point_angle=118)
    assert exact == pytest.approx(0.1, abs=0.05)
    assert exact == pytest.approx(0.0986, abs=5e-5)


def test_chip_width_is_the_lip() -> None:
    # DERIVED: 5.15 mm on the usual 10 mm drill.
    drill = {"diameter": 10, "point_angle": 118, "web": 1.5, "chisel_edge_angle": 125}
    assert chip_width(**drill) == pytest.approx(5.1545, abs=5e-5)
    assert chip_width(**drill) == pytest.approx(lip_length(**drill), rel=1e-12)


def test_flat_points_take_a_thicker_narrower_chip() -> None:
    # DERIVED: 118° to 135°, same feed: the chip is 1.078 times as thick, and so is the lips' share along the axis; the
    # lip without its web goes from 5.83 mm to 5.41 mm on a 10 mm drill.
    thicker = chip_thickness(feed=0.2, point_angle=135) / chip_thickness(feed=0.2, point_angle=118)
    assert thicker == pytest.approx(1.078, abs=5e-4)
    no_web = {"diameter": 10, "web": 0, "chisel_edge_angle": 125}
    assert chip_width(**no_web, point_angle=118) == pytest.approx(5.83, abs=5e-3)
    assert chip_width(**no_web, point_angle=135) == pytest.approx(5.41, abs=5e-3)


def test_where_the_two_torques_part_company() -> None:
    # DERIVED: set the specific force so that both agree at 10 mm and 0.2 mm/rev.
    def handbook(diameter: float, feed: float) -> float:
        job = {"material_factor": 24000, "tool_wear_factor": 1, **STANDARD.of_torque}
        return float(torque(diameter=diameter, feed=feed, **job))

    matched = torque_specific_force.solve(
        "specific_force_at_1_mm",
        torque=handbook(10, 0.2),
        diameter=10,
        feed=0.2,
        point_angle=118,
        chip_thickness_exponent=0.25,
    )
    assert isinstance(matched, float)

    def specific(diameter: float, feed: float, angle: float = 118) -> float:
        work = {"specific_force_at_1_mm": matched, "chip_thickness_exponent": 0.25}
        return float(torque_specific_force(diameter=diameter, feed=feed, point_angle=angle, **work))

    # With the feed they keep together: twice the feed moves them 3.5 % apart (2 to the power 0.05).
    assert handbook(10, 0.4) / specific(10, 0.4) == pytest.approx(2**0.05, rel=1e-6)
    # With the diameter they part: at 40 mm the specific force asks a third more (4 to the power 0.2).
    assert specific(40, 0.2) / handbook(40, 0.2) == pytest.approx(4**0.2, rel=1e-6)
    # Only the handbook sees the chisel edge, only the specific force the point angle.
    assert torque_ratio(**SPLIT.of_torque, **STANDARD.to_compare_torque_with) < 1
    assert "chisel_ratio" not in torque_specific_force.accepts
    assert specific(10, 0.2, 90) > specific(10, 0.2)
    assert "point_angle" not in torque.accepts
