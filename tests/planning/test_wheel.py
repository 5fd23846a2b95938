"""The set-up of a plan gives the point that the plan asks for."""

import pytest

from drillpoint.ground import GroundPoint, Readings, find_faults
from drillpoint.planning.shop import Shop
from tests.planning.drills import WORN, plan


@pytest.mark.parametrize(("angle", "relief"), [(118, 12), (135, 10), (130, 11)])
def test_a_drill_ground_so_passes_its_own_inspection(angle: float, relief: float) -> None:
    found = plan(**WORN, new_point_angle=angle, new_lip_relief=relief)
    seen = found.wheel.setup.point.inspect()
    assert (seen.point_angle, seen.lip_relief) == pytest.approx((angle, relief), abs=1e-6)
    assert seen.chisel_edge_angle_at_axis == pytest.approx(125, abs=1e-6)
    assert seen.web == pytest.approx(found.web.after.value, abs=1e-9)
    assert find_faults(Readings.of(seen), limits=found.limits).faults == ()


def test_a_flatter_point_on_the_same_flutes_has_hollow_lips() -> None:
    found = plan(new_point_angle=135)
    (said,) = [note for note in found.wheel.notes if "made for 118°" in note]
    assert "hollow by 0.12 mm" in said
    # DERIVED: the same flank on the flute as it is.
    from attrs import evolve

    flute = evolve(found.wheel.setup.flute, point_angle=118)
    seen = GroundPoint(flute, found.wheel.setup.flank).inspect()
    assert seen.lip_bow_1 < -0.1
    assert f"reads {seen.point_angle:.1f}°" in said
    assert plan(**WORN).wheel.notes == ()


def test_a_plane_says_where_its_chisel_edge_comes_out() -> None:
    found = plan(**WORN, shop=Shop(flank="plane"))
    # DERIVED: cot of the half angle over the tangent of the relief square to the lip; a 118° plane of 12°, web 0.15.
    assert found.wheel.setup.family == "plane"
    assert "at 101.6°; 125° would need a curved flank" in found.wheel.notes[0]


def test_where_there_is_no_cone_the_nearest_is_named() -> None:
    found = plan(**WORN, new_lip_relief=30)
    assert "nearest set-up there is" in found.wheel.notes[0]
    assert found.wheel.setup is not None
