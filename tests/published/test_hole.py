"""Figures on depths, time, speed and hole size. Each names its source and how it was seen.

The tolerance is the rounding of the figure. Where no source is named the figure is DERIVED.
"""

from __future__ import annotations

import math

import pytest

from drillpoint.errors import Impossible
from drillpoint.relations import (
    breakthrough,
    countersink_depth,
    drilling_time,
    feed_rate,
    full_diameter_depth,
    idle_radius,
    largest_hole,
    lip_height_difference,
    lip_height_from_angles,
    offset_from_run_out,
    oversize,
    point_height,
    point_offset,
    rolled_reading,
    sheet_cover,
    shoulder_depth,
    speed_rule_ratio,
    spindle_speed,
    spindle_speed_by_rule,
    spot_depth,
    tap_drill_depth,
)

INCH = 25.4


@pytest.mark.parametrize(("point_angle", "depth"), [(118, 28.00), (135, 27.07)])
def test_depth_to_the_point_of_a_ten_millimetre_hole(point_angle: float, depth: float) -> None:
    # DERIVED: 25 mm at full diameter.
    found = full_diameter_depth(shoulder_depth=25, diameter=10, point_angle=point_angle)
    assert found == pytest.approx(depth, abs=6e-3)


def test_twenty_five_to_the_point_leaves_twenty_two_at_full_diameter() -> None:
    # DERIVED.
    assert shoulder_depth(depth_to_point=25, diameter=10, point_angle=118) == pytest.approx(22.00, abs=5e-3)
    with pytest.raises(Impossible, match="no part of the hole has the full diameter"):
        shoulder_depth(depth_to_point=2, diameter=10, point_angle=118)


def test_a_dowel_of_forty_in_two_holes_of_twenty_one() -> None:
    # DERIVED: 8 mm at 118°. Measured to the tip, each hole lacks the point, and the two parts stand 2.8 mm apart.
    tip = point_height(diameter=8, point_angle=118)
    assert tip == pytest.approx(2.40, abs=5e-3)
    deep = shoulder_depth(depth_to_point=21, diameter=8, point_angle=118)
    assert 40 - 2 * deep == pytest.approx(2.8, abs=0.05)


def test_tap_drill_of_seventeen_thirty_seconds() -> None:
    # Common practice: 0.3 of the diameter at 118°, 0.2 at 135°. How far off they are is DERIVED.
    drill = 17 / 32 * INCH
    tip = tap_drill_depth(thread_depth=20, thread_allowance=5, diameter=drill, point_angle=118) - 25
    assert tip / INCH == pytest.approx(0.1596, abs=5e-5)
    assert 1 - 0.3 * drill / tip == pytest.approx(0.0014, abs=5e-5)
    flat = tap_drill_depth(thread_depth=20, thread_allowance=5, diameter=drill, point_angle=135) - 25
    assert flat / drill == pytest.approx(0.2071, abs=5e-5)
    assert 1 - 0.2 * drill / flat == pytest.approx(0.034, abs=5e-4)


@pytest.mark.parametrize(("angle", "depth"), [(90, 5.50), (120, 3.18), (142, 1.89)])
def test_spot_with_a_mouth_of_eleven(angle: float, depth: float) -> None:
    # DERIVED.
    assert spot_depth(mouth_diameter=11, countersink_angle=angle) == pytest.approx(depth, abs=6e-3)


def test_a_spot_as_deep_as_the_drill_is_wide() -> None:
    # DERIVED, against the shop's saying: 10 mm deep at 90° the cone is 20 mm wide.
    mouth = spot_depth.solve("mouth_diameter", spot_depth=10, countersink_angle=90)
    assert mouth == pytest.approx(20, abs=1e-9)


@pytest.mark.parametrize(("angle", "depth", "copied"), [(82, 0.288, 0.217), (100, 0.210, 0.298)])
def test_countersinks_of_half_an_inch(angle: float, depth: float, copied: float) -> None:
    # DERIVED, in inches. The copied formula takes the tangent of half the angle the wrong way up; it is right at 90°.
    found = spot_depth(mouth_diameter=0.5 * INCH, countersink_angle=angle) / INCH
    assert found == pytest.approx(depth, abs=5.1e-4)
    assert 0.25 * math.tan(math.radians(angle / 2)) == pytest.approx(copied, abs=5.1e-4)
    assert abs(found - copied) > 0.05


def test_countersink_in_a_hole_that_is_already_there() -> None:
    # DERIVED: a 90° countersink from 5.5 mm to 11 mm goes in by half the difference.
    own = {"flat_diameter": 5.5, "countersink_angle": 90}
    assert countersink_depth(mouth_diameter=11, **own) == pytest.approx(2.75, abs=1e-12)
    with pytest.raises(Impossible, match="the mouth is the wider one"):
        countersink_depth(mouth_diameter=5, **own)


def test_time_for_a_twenty_millimetre_hole() -> None:
    # DERIVED: 25 mm deep, 20 m/min, 0.25 mm/rev, nothing for approach and overrun; without and with the point.
    speed = {"cutting_speed": 20, "diameter": 20, "feed": 0.25}
    assert 25 / feed_rate(**speed) == pytest.approx(0.314, abs=5.1e-4)
    whole = drilling_time(shoulder_depth=25, point_angle=118, approach=0, overrun=0, **speed)
    assert whole == pytest.approx(0.390, abs=5.1e-4)


def test_approach_and_overrun_take_their_time() -> None:
    # DERIVED: 4 mm more at 0.25 mm/rev and 320 rev/min is 0.05 min.
    own = {"shoulder_depth": 25, "point_height": 6, "feed": 0.25, "spindle_speed": 320}
    longer = drilling_time(approach=3, overrun=1, **own) - drilling_time(approach=0, overrun=0, **own)
    assert longer == pytest.approx(0.05, abs=1e-12)
    assert feed_rate(feed=0.25, spindle_speed=320) == pytest.approx(80, abs=1e-12)


@pytest.mark.parametrize(
    ("constant", "ratio"), [(318, 0.9990), (320, 1.0053), (300, 0.9425), (4 * INCH / 0.3048, 1.0472)]
)
def test_shop_rules_for_the_speed(constant: float, ratio: float) -> None:
    # Common practice for the rules (4 × ft/min over inches is the last); how far off they are is DERIVED.
    assert speed_rule_ratio(speed_constant=constant) == pytest.approx(ratio, abs=5.1e-5)
    own = {"cutting_speed": 20, "diameter": 20}
    ruled = spindle_speed_by_rule(speed_constant=constant, **own)
    assert ruled / spindle_speed(**own) == pytest.approx(ratio, abs=5.1e-5)


def test_the_finer_inch_rule_is_good_to_a_hundredth_of_a_percent() -> None:
    # Common practice: 3.82 × ft/min over inches; 100 ft/min on 1/2 in. Exactly 3.8197.
    exact = spindle_speed(cutting_speed=100 * 0.3048, diameter=0.5 * INCH)
    assert 3.82 * 100 / 0.5 / exact == pytest.approx(1.0001, abs=5e-5)
    assert 4 * 100 / 0.5 / exact == pytest.approx(1.0472, abs=5e-5)


def test_the_sheet_is_thinner_than_the_point() -> None:
    # DERIVED: a 20 mm drill at 118° in 3 mm sheet; the point is 6.01 mm tall.
    cover = sheet_cover(sheet_thickness=3, diameter=20, point_angle=118)
    assert cover == pytest.approx(3 / 6.0086, rel=1e-4)
    assert any("grab" in note for note in cover.notes)
    assert breakthrough(sheet_thickness=3, diameter=20, point_angle=118) == pytest.approx(9.01, abs=5e-3)


@pytest.mark.parametrize(("longer", "over"), [(0.1, 0.086), (0.2, 0.171), (0.5, 0.429)])
def test_one_lip_longer_than_the_other(longer: float, over: float) -> None:
    # DERIVED: at 118°, at most so much over; and back.
    assert oversize(lip_length_difference=longer, point_angle=118) == pytest.approx(over, abs=5.1e-4)
    back = oversize.solve("lip_length_difference", oversize=over, point_angle=118)
    assert back == pytest.approx(longer, abs=6e-4)


def test_three_thousandths_between_the_lips_of_a_half_inch_drill() -> None:
    # DERIVED, against the shop rule that says twice: .505 at 118°, .0072 over at 135°.
    own = {"lip_height_difference": 0.003 * INCH}
    hole = largest_hole(diameter=0.5 * INCH, point_angle=118, **own)
    assert hole / INCH == pytest.approx(0.5050, abs=5e-5)
    assert oversize(point_angle=135, **own) / INCH == pytest.approx(0.0072, abs=5.1e-5)
    assert oversize(point_angle=118, **own) < 2 * 0.003 * INCH < oversize(point_angle=135, **own)


def test_lip_lengths_and_heights_of_one_offset() -> None:
    # DERIVED: 0.1 mm off the axis at 118°: heights 2e·cot κ, lengths 2e/sin κ.
    height = point_offset.solve("lip_height_difference", point_offset=0.1, point_angle=118)
    assert height == pytest.approx(0.2 / math.tan(math.radians(59)), rel=1e-9)
    length = lip_height_difference.solve("lip_length_difference", lip_height_difference=height, point_angle=118)
    assert length == pytest.approx(0.2 / math.sin(math.radians(59)), rel=1e-9)


def test_full_swing_is_twice_the_offset() -> None:
    # DERIVED.
    assert offset_from_run_out(run_out=0.12) == pytest.approx(0.06, abs=1e-12)
    assert oversize(point_offset=offset_from_run_out(run_out=0.12)) == pytest.approx(0.12, abs=1e-12)


def test_fifty_nine_on_one_side_and_sixty_one_on_the_other() -> None:
    # DERIVED: at the corner of a 10 mm drill.
    assert lip_height_from_angles(radius=5, half_angle_1=59, half_angle_2=61) == pytest.approx(0.233, abs=5e-4)


@pytest.mark.parametrize(("feed", "radius"), [(0.10, 1.07), (0.15, 1.61), (0.20, 2.15)])
def test_where_the_lagging_lip_stops(feed: float, radius: float) -> None:
    # DERIVED: 59° and 61°.
    assert idle_radius(feed=feed, half_angle_1=59, half_angle_2=61) == pytest.approx(radius, abs=5e-3)
    with pytest.raises(Impossible, match="both lips cut at every radius"):
        idle_radius(feed=feed, half_angle_1=59, half_angle_2=59)


def test_one_degree_matters_less_on_both_sides_than_on_one() -> None:
    # DERIVED, at 118° and 10 mm: a degree on both sides is .012 of the diameter in depth; on one side .119 mm of lip
    # height at the corner.
    depth = 2 * point_height.sensitivity("point_angle", diameter=10, point_angle=118)
    assert abs(depth) / 10 == pytest.approx(0.012, abs=5e-4)
    height = lip_height_from_angles(radius=5, half_angle_1=58.5, half_angle_2=59.5)
    assert height == pytest.approx(0.119, abs=5e-4)


def test_sixty_degrees_by_a_set_square() -> None:
    # DERIVED: 60° a side is 120° in all; the tip of a 10 mm drill is 2.89 mm instead of 3.00 mm.
    assert point_height(diameter=10, point_angle=120) == pytest.approx(2.89, abs=5e-3)
    assert point_height(diameter=10, point_angle=118) == pytest.approx(3.00, abs=5e-3)


@pytest.mark.parametrize(("roll", "read"), [(10, 117.2), (20, 114.8), (30, 110.5)])
def test_a_rolled_drill_reads_low(roll: float, read: float) -> None:
    # DERIVED, and back.
    assert rolled_reading(point_angle=118, roll_angle=roll) == pytest.approx(read, abs=0.05)
    assert rolled_reading.solve("point_angle", rolled_reading=read, roll_angle=roll) == pytest.approx(118, abs=0.06)
