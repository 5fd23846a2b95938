"""The decision: one for each drill, with its reasons."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.ground import Limits
from drillpoint.planning.deciding import SAYS
from drillpoint.planning.shop import Shop
from tests.planning.drills import WORN, plan


@pytest.mark.parametrize(
    ("read", "decision", "because"),
    [
        ({}, "leave alone", "nothing for sure"),
        ({"wear_land": 0.2}, "leave alone", "within the 0.2 mm (0.008 in) allowed"),
        ({"wear_land": 0.3}, "regrind", "ground from 0.2 mm"),
        ({"chip_depth": 0.2}, "regrind", "chipped 0.2 mm"),
        ({"worn_margin": 0.5}, "regrind", "worn or burnt for 0.5 mm"),
        ({"half_angle_1": 58, "half_angle_2": 61}, "regrind", "unequal half angles"),
        ({"lip_relief": 3}, "regrind", "too little relief"),
        ({"new_point_angle": 135}, "re-point", "135° is wanted"),
        ({"web": 2.0}, "thin", "0.2 of the diameter"),
        ({"web": 2.0, **WORN}, "regrind", "thinned from 0.18"),
        ({**WORN, "flute_length": 34}, "scrap", "35 mm (1.378 in) are needed"),
        ({"flute_length": 34}, "leave alone", "nothing for sure"),
        ({"cracked": True}, "scrap", "never ground out"),
        ({"cracked": True, "web": 2.0}, "scrap", "never ground out"),
        ({**WORN, "drill_material": "carbide"}, "pass on", "high-speed steel and cobalt steel only"),
        ({**WORN, "new_point_angle": 90}, "pass on", "118° to 150°"),
        # What needs nothing is left alone, also where it could not be ground.
        ({"drill_material": "carbide"}, "leave alone", "nothing for sure"),
        ({"web_offset": 0.3}, "thin", "web off centre"),
        ({"web_offset": 0.3, **WORN}, "regrind", "web off centre"),
        ({"body_diameter": 9.5}, "leave alone", "nothing for sure"),
    ],
)
def test_each_drill_gets_its_decision(read: dict, decision: str, because: str) -> None:
    found = plan(**read)
    assert found.decision == decision
    assert because in " ".join(found.reasons)
    assert found.says.startswith(SAYS[decision].rstrip("."))


@pytest.mark.parametrize(("diameter", "decision"), [(2, "pass on"), (3, "regrind"), (16, "regrind"), (16.5, "pass on")])
def test_the_shop_grinds_what_it_can_hold(diameter: float, decision: str) -> None:
    web, edges = 0.15 * diameter, {"flute_length": 150, "wear_land": 0.04 * diameter}
    assert plan(diameter=diameter, web=web, **edges).decision == decision


def test_the_shop_decides_and_says_so() -> None:
    strict, easy = Shop(wear_share=0.01), Shop(wear_share=0.05)
    read = {"wear_land": 0.3}
    assert plan(**read, shop=strict).decision == "regrind"
    assert plan(**read, shop=easy).decision == "leave alone"
    assert "as asked for here" in plan(**read, shop=easy).reasons[0]
    assert plan(web=1.6, limits=Limits(web_ratio_limit=0.15)).decision == "thin"


def test_a_small_change_of_angle_is_a_correction_and_a_large_one_another_point() -> None:
    for off, decision in ((3.5, "regrind"), (4.9, "regrind"), (5.1, "re-point"), (17, "re-point")):
        assert plan(new_point_angle=118 + off).decision == decision
    assert plan(new_point_angle=122, shop=Shop(repoint_from=3)).decision == "re-point"


def test_what_is_only_possible_is_read_again_and_not_ground() -> None:
    # A relief of 7.5° is below the 8°, by less than the protractor's 1°.
    found = plan(lip_relief=7.5)
    assert found.decision == "leave alone"
    assert "Read again with a better tool" in found.reasons[-1] and "too little relief" in found.reasons[-1]


def test_it_is_scrap_where_grinding_leaves_too_little_flute() -> None:
    # DERIVED: 25 mm deep, one diameter for the chips, and what comes off the corners.
    off = plan(worn_margin=2).off.corners.value
    for more in (-0.01, 0.01):
        found = plan(worn_margin=2, flute_length=35 + off + more)
        assert found.decision == ("scrap" if more < 0 else "regrind")
        assert found.flutes.doubtful
        assert ("reading error reaches across" in " ".join(found.reasons)) == (more < 0)


def test_how_often_a_drill_can_still_be_ground() -> None:
    found = plan(worn_margin=0.95, flute_length=80)
    # DERIVED: 80 − 1 is left, 35 is needed, and each grind takes 1 mm.
    assert found.off.corners.value == pytest.approx(1)
    assert found.flutes.regrinds == 44


@given(land=st.floats(0, 3), margin=st.floats(0, 30), web=st.floats(1, 3), flute=st.floats(20, 100))
def test_a_drill_that_is_kept_can_do_its_work(land: float, margin: float, web: float, flute: float) -> None:
    found = plan(wear_land=land, worn_margin=margin, web=web, flute_length=flute)
    if found.ground:
        assert found.flutes.left.value >= found.flutes.needed
        assert found.wheel is not None and found.checks
    else:
        assert found.wheel is None
    assert (found.decision == "leave alone") == (land <= 0.2 and not margin and web <= 1.8)
    assert found.reasons


def test_a_land_near_the_limit_is_read_again() -> None:
    # The magnifier may be 0.05 mm out.
    for land, across in ((0.14, False), (0.16, True), (0.24, True), (0.26, False)):
        assert ("reading error reaches across" in plan(wear_land=land).reasons[0]) == across


def test_what_no_wheel_cures_is_told_beside() -> None:
    assert any("Use the drill for shallow holes" in note for note in plan(body_diameter=9.5).notes)
    assert any("Measure the lips before anything is ground" in note for note in plan(hole_diameter=10.4).notes)
    for web in (1.5, None):
        assert "Thin the thicker side" in str(plan(web_offset=0.3, web=web).only("Web"))
