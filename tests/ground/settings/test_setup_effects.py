"""What each setting does: the table against the wheel really set a little differently."""

from __future__ import annotations

import math

import pytest
from attrs import evolve

from drillpoint.ground.point import GroundPoint
from drillpoint.ground.settings.setup import ANGLES, measured, settings_of
from drillpoint.ground.settings.setup_effects import effects
from drillpoint.ground.settings.setups import conical_setup, plane_setup

USUAL = {"diameter": 10, "web_ratio": 0.15, "point_angle": 118, "lip_relief": 12}


@pytest.mark.parametrize("name", ["cone_half_angle", "cone_tilt", "apex_distance", "skew"])
def test_a_small_change_does_what_the_table_says(name: str) -> None:
    found = conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=20)
    table = effects(found)
    change = 0.02
    changed = evolve(found.flank, **{name: settings_of(found.flank)[name] + change})
    after = measured(GroundPoint(found.flute, changed))
    for angle in ANGLES:
        assert after[angle] - found.reached[angle] == pytest.approx(table[name][angle] * change, abs=2e-3), angle


def test_on_a_plane_the_relief_answers_as_the_formula_says() -> None:
    found = plane_setup(**USUAL, helix_angle=0)
    table = effects(found)
    kappa, square = math.radians(59), math.radians(settings_of(found.flank)["axial_relief"])
    # DERIVED: by hand from tan α_f = u·cot κ + √(1 − u²)·tan α_x and tan δ = cot κ / tan α_x.
    relief = math.sqrt(1 - 0.15**2) * (1 + math.tan(square) ** 2) / (1 + math.tan(math.radians(12)) ** 2)
    fall = 1 / math.tan(kappa)
    edge = fall * (1 + math.tan(square) ** 2) / (math.tan(square) ** 2 + fall**2)
    assert table["axial_relief"]["lip_relief"] == pytest.approx(relief, rel=1e-6)
    assert table["axial_relief"]["chisel_edge_angle"] == pytest.approx(edge, rel=1e-6)
    assert table["point_angle"]["point_angle"] == pytest.approx(1, rel=1e-6)


def test_on_the_lips_own_cone_moving_the_apex_along_the_lip_leaves_the_point_angle() -> None:
    table = effects(conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=20, family="lip_on_cone"))
    assert table["apex_distance"]["point_angle"] == pytest.approx(0, abs=1e-3)
    assert table["apex_distance"]["chisel_edge_angle"] < -1


def test_the_table_prints_each_setting_with_its_unit() -> None:
    text = str(effects(conical_setup(**USUAL, chisel_edge_angle=125, cone_half_angle=20)))
    lines = text.splitlines()
    assert lines[0].split()[-3:] == ["chisel", "edge", "angle"]
    assert [line.split("   ")[0] for line in lines[1:]] == [
        "half angle of the grinding cone, °",
        "tilt of the grinding cone, °",
        "apex distance, mm",
        "skew of the grinding cone, mm",
        "flank turn, °",
    ]
    assert "+2.15°" in lines[2] and "−3.17°" in lines[3]  # REGRESSION
