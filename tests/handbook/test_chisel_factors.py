"""Chisel edge factors from the table: as printed, between rows, and outside."""

from __future__ import annotations

import pytest

from drillpoint.errors import OutOfRange
from drillpoint.handbook import chisel_factors
from drillpoint.handbook.library import printed


def test_a_row_as_printed() -> None:
    # Machinery's Handbook 31, pp. 1152-1153 (seen): the standard drill.
    row = chisel_factors(chisel_ratio=0.18)
    assert row.printed
    assert (row.web_ratio, row.torque_factor, row.thrust_factor, row.chisel_thrust_factor) == (
        0.155,
        1.085,
        1.355,
        0.03,
    )
    assert row.of_thrust == {"thrust_factor": 1.355, "chisel_thrust_factor": 0.03}
    assert row.to_compare_thrust_with == {"reference_thrust_factor": 1.355, "reference_chisel_thrust_factor": 0.03}
    assert row.of_torque == {"torque_factor": 1.085}
    assert row.to_compare_torque_with == {"reference_torque_factor": 1.085}


def test_between_two_rows() -> None:
    # DERIVED: half way from 0.20 to 0.25.
    between = chisel_factors(chisel_ratio=0.225)
    assert not between.printed
    assert between.torque_factor == pytest.approx(1.13)
    assert between.chisel_thrust_factor == pytest.approx(0.0525)
    assert between.web_ratio == pytest.approx(0.1975)


def test_every_factor_grows_with_the_chisel_edge() -> None:
    for name in ("chisel_ratio", "web_ratio", "torque_factor", "thrust_factor", "chisel_thrust_factor"):
        column = printed("chisel_factors").column(name)
        assert list(column) == sorted(set(column)), name


@pytest.mark.parametrize("ratio", [0.02, 0.41, float("nan")])
def test_outside_the_table(ratio: float) -> None:
    with pytest.raises(OutOfRange, match=r"table, 0\.03 to 0\.4; a standard drill has 0\.18"):
        chisel_factors(chisel_ratio=ratio)
