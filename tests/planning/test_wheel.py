"""The set-up of a plan gives the point that the plan asks for."""

import pytest
from attrs import evolve

from drillpoint.ground import GroundPoint, Readings, conical_setup, find_faults
from drillpoint.planning.shop import Shop
from tests.planning.drills import WORN, plan


@pytest.mark.parametrize(("angle", "relief"), [(118, 12), (135, 10), (130, 11)])
def test_a_drill_ground_so_passes_its_own_inspection(angle: float, relief: float) -> None:
    found = plan(**WORN, new_point_angle=angle, new_lip_relief=relief)
    seen = found.wheel.setup.point.inspect()
    # Flutes made for the angle: as exact as the set-up is; others: mended until nobody could read the difference.
    close = 1e-6 if angle == 118 else 0.02
    assert (seen.point_angle, seen.lip_relief) == pytest.approx((angle, relief), abs=close)
    assert seen.chisel_edge_angle_at_axis == pytest.approx(125, abs=close)
    assert seen.web == pytest.approx(found.web.after.value, abs=1e-9)
    assert find_faults(Readings.of(seen), limits=found.limits).faults == ()


@pytest.mark.parametrize("flank", ["cone", "plane"])
@pytest.mark.parametrize(("made_for", "angle"), [(118, 130), (118, 135), (118, 140), (135, 118)])
def test_the_setting_allows_for_flutes_made_for_another_point(flank: str, made_for: float, angle: float) -> None:
    half = made_for / 2
    found = plan(half_angle_1=half, half_angle_2=half, new_point_angle=angle, shop=Shop(flank=flank))
    seen = found.point.inspect()
    assert found.point.flute.point_angle == made_for
    assert seen.point_angle == pytest.approx(angle, abs=0.02)
    assert seen.lip_relief == pytest.approx(found.new.lip_relief, abs=0.02)
    # Flatter than the flute: hollow; sharper: bulging.
    assert seen.lip_bow_1 * (made_for - angle) > 0
    if flank == "cone":
        assert seen.chisel_edge_angle_at_axis == pytest.approx(125, abs=0.02)
        assert find_faults(Readings.of(seen), limits=found.limits).faults == ()


def test_what_the_setting_allows_for_is_said() -> None:
    said = plan(new_point_angle=135).wheel.notes[-1]
    bow = plan(new_point_angle=135).point.inspect().lip_bow_1
    assert f"made for 118°, so the lips come out hollow by {-bow:.2f} mm" in said
    # DERIVED: the cone that a drill made for 135° would need, on the flute as it is.
    plain = conical_setup(
        diameter=10, web=1.5 + 0.014 * plan(new_point_angle=135).off.tip.value, point_angle=135, lip_relief=10,
        chisel_edge_angle=125, cone_half_angle=30,
    )  # fmt: skip
    read = GroundPoint(evolve(plain.flute, point_angle=118), plain.flank).inspect().point_angle
    assert read > 136 and f"would read {read:.1f}°" in said
    assert len(plan(new_point_angle=135).wheel.notes) == 1 and plan(**WORN).wheel.notes == ()


def test_where_nothing_allows_for_it_the_plan_says_what_comes_out() -> None:
    found = plan(new_point_angle=150)
    read = found.point.inspect().point_angle
    assert read > 153
    assert f"no setting was found that allows for that: the point will read about {read:.1f}°" in found.wheel.notes[-1]


def test_a_plane_says_where_its_chisel_edge_comes_out() -> None:
    found = plan(**WORN, shop=Shop(flank="plane"))
    # DERIVED: cot of the half angle over the tangent of the relief square to the lip; a 118° plane of 12°, web 0.15.
    assert found.wheel.setup.family == "plane"
    assert "at 101.6°; 125° would need a curved flank" in found.wheel.notes[0]
    # DERIVED: such a plane comes up again 40.5° behind the corner.
    assert "Its heel is clear for 40" in found.wheel.notes[0]


def test_where_there_is_no_cone_the_nearest_is_named() -> None:
    found = plan(**WORN, new_lip_relief=30)
    assert "nearest set-up there is" in found.wheel.notes[0]
    assert found.wheel.setup is not None
