"""What is inspected afterwards, against which limits."""

import math

from drillpoint.ground import Limits
from tests.planning.drills import WORN, plan


def rows(found) -> dict[str, tuple[str, str, str]]:
    return {check.what: (check.allowed, check.tool, check.before) for check in found.checks}


def test_every_limit_says_whose_it_is_and_every_reading_what_it_is_read_with() -> None:
    found = plan(**WORN, lip_height_difference=0.03)
    shown = rows(found)
    assert shown["point angle"] == ("118° ± 2° (shop's choice)", "bevel protractor on the lip, ± 0.5°", "118° ± 1°")
    # DERIVED: 0.05/cos 59° of lip length makes 0.05 of height.
    length = 0.05 / math.cos(math.radians(59))
    assert f"{length:.1f}" in shown["heights of the corners"][0]
    assert shown["heights of the corners"][2] == "0.03 mm (0.001 in)"
    assert shown["web"][0] == "at most 1.8 mm (0.071 in) (shop's choice)"
    assert shown["chisel edge off centre"][2] == "not read"
    assert all("± " in tool or tool == "magnifier" for _, tool, _ in shown.values())
    assert sum("(" in allowed for allowed, *_ in shown.values()) >= len(shown) - 1


def test_a_limit_of_ones_own_is_used_and_named() -> None:
    found = plan(**WORN, limits=Limits(lip_height_difference=0.02, highest_lip_relief=16))
    shown = rows(found)
    assert shown["heights of the corners"][0].startswith("at most 0.02 mm")
    assert "as asked for here" in shown["heights of the corners"][0]
    # Each end of a range has its own source: the least is printed in a standard, the most is not.
    said = shown["lip relief, both"][0]
    assert said.startswith("8° to 16° (the least: ") and "ISO 10899" in said.partition("; the most: ")[0]
    assert said.endswith("; the most: as asked for here)")


def test_only_what_was_ground_is_inspected() -> None:
    assert list(rows(plan(web=2.0))) == ["web", "chisel edge off centre"]
    assert "thinned: chisel edge" in rows(plan(web=2.0))["web"][0]
    for read in ({}, {"cracked": True}, {**WORN, "drill_material": "carbide"}):
        assert plan(**read).checks == ()


def test_the_limits_of_a_plan_tell_a_good_grind_from_a_bad_one() -> None:
    found = plan(**WORN, new_point_angle=135)
    good = found.check(half_angle_1=67.5, half_angle_2=67.6, lip_relief=10, chisel_edge_angle=125, web=1.5)
    assert good.faults == ()
    bad = found.check(half_angle_1=59, half_angle_2=59, lip_relief=10, chisel_edge_angle=125, web=1.5)
    assert [fault.key for fault in bad.faults] == ["wrong_point_angle"]
