"""What a setting of the notch does is what the closed forms' slopes say, and nothing where it can do nothing."""

from __future__ import annotations

import pytest

from drillpoint.ground import CannotBeGround, Flute, GroundPoint, PlaneFlank
from drillpoint.ground.notch_effects import EFFECTS, effects
from drillpoint.relations import (
    thinned_lip_in_end_view,
    thinned_lip_length,
    thinned_web,
    thinning_reach,
    untouched_lip_length,
    untouched_lip_share,
)
from tests.ground.thinned_points import USUAL

_FIVE = {"thinning_angle", "notch_depth", "notch_rake", "corner_radius"}
_ENDS = ("web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle")


@pytest.fixture(scope="module")
def table() -> dict[str, dict[str, float]]:
    """The effects on a usual thinned point."""
    return effects(USUAL.grind(corner_radius=0.05))


def test_each_of_the_five_settings_has_a_row_with_every_reading(table: dict[str, dict[str, float]]) -> None:
    assert set(table) == {"thinned_chisel_length"} | _FIVE
    assert all(set(row) == set(EFFECTS) for row in table.values())
    stated_by_distance = USUAL.grind(thinned_chisel_length=None, face_distance=0.17)
    assert set(effects(stated_by_distance)) == {"face_distance"} | _FIVE


@pytest.mark.parametrize("setting", ["thinned_chisel_length", "thinning_angle"])
def test_place_and_angle_do_what_the_closed_forms_say(table: dict[str, dict[str, float]], setting: str) -> None:
    forms = {
        thinning_reach: _ENDS,
        thinned_lip_in_end_view: _ENDS,
        thinned_lip_length: (*_ENDS, "point_angle", "axial_relief"),
        untouched_lip_length: (*_ENDS, "point_angle", "diameter"),
        untouched_lip_share: (*_ENDS, "diameter"),
        thinned_web: _ENDS[1:],
    }
    for relation, names in forms.items():
        # DERIVED: the slope of the closed form.
        slope = relation.sensitivity(of=setting, **USUAL.book(*names))
        assert table[setting][relation.name] == pytest.approx(float(slope), rel=1e-5, abs=1e-8)
    assert table[setting][setting] == pytest.approx(1.0, abs=1e-6)


def test_below_the_edges_depth_rake_and_rounding_change_none_of_them(table: dict[str, dict[str, float]]) -> None:
    below = {"middle_rake", "face_overrun", "core_thickness"}
    for setting in ("notch_depth", "notch_rake", "corner_radius"):
        assert all(abs(change) < 1e-6 for reading, change in table[setting].items() if reading not in below)
    assert table["notch_depth"]["core_thickness"] < -0.1
    assert table["notch_depth"]["face_overrun"] > 0.1
    assert table["notch_rake"]["middle_rake"] == pytest.approx(1.0, abs=0.15)
    assert table["corner_radius"]["core_thickness"] > 0.1


def test_a_rounding_that_reaches_up_lengthens_the_chisel_edge() -> None:
    table = effects(USUAL.grind(notch_depth=0.02, corner_radius=0.1))
    assert table["corner_radius"]["thinned_chisel_length"] > 0.1
    assert table["notch_depth"]["thinned_chisel_length"] < -0.1


def test_at_the_end_of_a_setting_the_effect_is_that_of_the_other_side() -> None:
    # A sharp corner can only be rounded, a notch of no depth only deepened.
    table = effects(USUAL.grind(notch_depth=0.0, corner_radius=0.0))
    assert table["corner_radius"]["thinned_chisel_length"] > 0.1
    assert table["notch_depth"]["face_overrun"] > 0.1


def test_without_a_notch_there_is_nothing_to_look_at() -> None:
    with pytest.raises(CannotBeGround, match="give thinning_1 a Notch"):
        effects(GroundPoint(Flute(diameter=10, web=1.5), PlaneFlank(point_angle=118, axial_relief=20)))
