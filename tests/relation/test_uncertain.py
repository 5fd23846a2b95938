"""The ± of a result, against sampling."""

from __future__ import annotations

import numpy as np
import pytest

from drillpoint.errors import OutOfRange
from drillpoint.relations import chisel_edge_angle, lip_length, point_height

USUAL = {"diameter": (10, 0.01), "point_angle": (118, 1), "web": (1.5, 0.05), "chisel_edge_angle": (125, 2)}


def test_a_protractor_read_to_one_degree() -> None:
    # DERIVED: the slope of h = (D/2)/tan κ by the whole angle is -(D/4)/sin² κ a radian.
    found = point_height.uncertainty(diameter=10, point_angle=(118, 1))
    assert found.plus_minus == pytest.approx(2.5 / np.sin(np.radians(59)) ** 2 * np.pi / 180, rel=1e-12)
    assert str(found) == "3.00 mm ± 0.06 mm"
    assert found.main_share == "point_angle"


def test_sampling_agrees() -> None:
    chance = np.random.default_rng(7)
    samples = {n: chance.normal(v, e, 200_000) for n, (v, e) in USUAL.items()}
    found = lip_length.uncertainty(**USUAL)
    assert found.plus_minus == pytest.approx(float(np.std(lip_length(**samples))), rel=0.02)
    assert found.value == pytest.approx(lip_length(**{n: v for n, (v, _) in USUAL.items()}))
    assert found.plus_minus < found.at_most == pytest.approx(sum(found.shares.values()))
    assert max(found.shares.values()) <= found.plus_minus


def test_it_goes_through_what_is_worked_out_first() -> None:
    chance = np.random.default_rng(8)
    own = {"point_angle": (118, 0.5), "lip_relief": (20, 0.5), "web": (1.5, 0.02), "diameter": (10, 0.02)}
    samples = {n: chance.normal(v, e, 200_000) for n, (v, e) in own.items()}
    found = chisel_edge_angle.uncertainty(**own)
    assert found.plus_minus == pytest.approx(float(np.std(chisel_edge_angle(**samples))), rel=0.02)


def test_nothing_uncertain_and_nonsense() -> None:
    sure = point_height.uncertainty(diameter=10, point_angle=118)
    assert (sure.plus_minus, sure.at_most, sure.main_share, str(sure)) == (0, 0, "", "3 mm")
    for wrong in (-1, float("nan"), "1", None):
        with pytest.raises(OutOfRange, match="± of point_angle"):
            point_height.uncertainty(diameter=10, point_angle=(118, wrong))
    with pytest.raises(OutOfRange, match="pair"):
        point_height.uncertainty(diameter=10, point_angle=(118, 1, 2))
