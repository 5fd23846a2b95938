"""Cautions stand in every plan, and those that fit it."""

import pytest

from tests.planning.drills import WORN, plan

EVERY = [{}, WORN, {"new_point_angle": 135}, {"web": 2.0}, {"cracked": True}, {**WORN, "drill_material": "carbide"}]


@pytest.mark.parametrize("read", EVERY)
def test_every_plan_defers_to_those_who_know_the_shop(read: dict) -> None:
    said = plan(**read).cautions
    for word in ("local rules", "maker's instructions", "qualified instructor"):
        assert word in said[0].lower()
    assert len(said) >= 2


@pytest.mark.parametrize("read", [WORN, {"new_point_angle": 135}, {"web": 2.0}])
def test_whoever_goes_to_the_wheel_is_told_of_eyes_hands_wheel_dust_and_heat(read: dict) -> None:
    said = " ".join(plan(**read).cautions)
    for word in ("eye protection", "no gloves", "ring-tested", "3 mm (1/8 in)", "extraction", "never shock-cool"):
        assert word in said


def test_dust_is_told_by_what_the_drill_is_made_of() -> None:
    assert any(
        "Dust of cobalt steel harms the lungs" in c for c in plan(**WORN, drill_material="cobalt steel").cautions
    )
    assert not any("cobalt" in c for c in plan(**WORN).cautions)


def test_thinning_and_scrap_have_their_own() -> None:
    assert any("Thin both sides alike" in c for c in plan(web=2.0).cautions)
    assert not any("Thin both sides alike" in c for c in plan(**WORN).cautions)
    assert any("nobody takes it again" in c for c in plan(cracked=True).cautions)
