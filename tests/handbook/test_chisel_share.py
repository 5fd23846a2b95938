"""The chisel edge's share of the thrust is a band with its conditions; its worked-out row can be worked out again."""

from __future__ import annotations

import pytest

from drillpoint.handbook import chisel_factors, chisel_share
from drillpoint.handbook.library import ranges
from drillpoint.relations import thrust, torque_ratio


def test_a_band_and_what_each_figure_holds_for() -> None:
    band = chisel_share()
    assert (band.low, band.high, band.unit) == (30, 60, "%")
    assert len(band.conditions) == len(ranges("chisel_share"))
    said = str(band)
    assert "30 to 60 %" in said
    assert "never one number" in said
    # Davim (ed.), Modern Machining Technology, p. 145 (seen).
    assert any("6 mm pilot" in c and "29.5 mm" in c and "200 HB" in c and "p. 145; seen" in c for c in band.conditions)


def test_the_worked_out_row() -> None:
    # DERIVED from Machinery's Handbook 31 (seen): the thrust that goes when the chisel edge does.
    (row,) = (row for row in ranges("chisel_share") if row.seen == "worked out")
    standard = chisel_factors(chisel_ratio=0.18).of_thrust
    shares = []
    for diameter in (6.35, 38.1):
        job = {"diameter": diameter, "feed": 0.008 * 25.4, "material_factor": 24000, "tool_wear_factor": 1}
        without = thrust(**job, thrust_factor=1, chisel_thrust_factor=0)
        shares.append(100 * (1 - without / thrust(**job, **standard)))
    assert shares == [pytest.approx(row.low, abs=0.5), pytest.approx(row.high, abs=0.5)]


def test_of_the_torque_it_is_far_less() -> None:
    # DERIVED from Machinery's Handbook 31 (seen): the torque that goes when the chisel edge does.
    table = ranges("chisel_torque_share")
    (row,) = (row for row in table if row.seen == "worked out")
    share = 100 * (1 - 1 / torque_ratio(**chisel_factors(chisel_ratio=0.18).of_torque, reference_torque_factor=1))
    assert share == pytest.approx(row.low, abs=0.5)
    assert table.span[1] < ranges("chisel_share").span[0]
