"""Faults ground on purpose are named, the right one first; good points have none; and readings of real drills."""

from __future__ import annotations

import json
import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.ground import ConicalFlank, Flute, GroundPoint, Limits, PlaneFlank, Readings, find_faults
from drillpoint.ground.diagnosis.fault import Fault, kinds
from drillpoint.ground.diagnosis.faults import CAUTION, NOTHING, NOTHING_READ, Report
from drillpoint.ground.diagnosis.readings import usual_errors

INCH = 25.4
# A conical flank makes a sound 118° point. One plane flank does so at 135°, where relief and chisel edge go together.
CONE: dict[str, float] = {"cone_half_angle": 20, "cone_tilt": 38.83, "apex_distance": 9.9, "skew": 1.41}
PLANE: dict[str, float] = {"point_angle": 135, "lip_relief": 19.2}
AT_135 = Limits(point_angle=135)
EXACT = dict.fromkeys(usual_errors(), 0.0)


def conical(other: dict[str, float] | None = None, **flute: float) -> GroundPoint:
    """A 118° point on a drill of 10 mm, with another second flank."""
    drill = Flute(**{"diameter": 10, "web": 1.5, "heel_angle": 40, **flute})
    return GroundPoint(drill, ConicalFlank(**CONE), ConicalFlank(**CONE | (other or {})))


def plane(other: dict[str, float] | None = None, one: dict[str, float] | None = None, **flute: float) -> GroundPoint:
    """A 135° point of plane flanks on a drill of 10 mm."""
    drill = Flute(**{"diameter": 10, "web": 1.5, "point_angle": 135, **flute})
    first = PLANE | (one or {})
    return GroundPoint(drill, PlaneFlank(**first), PlaneFlank(**first | (other or {})))


def at_118(relief: float) -> GroundPoint:
    """A 118° point of plane flanks."""
    return GroundPoint(Flute(diameter=10, web=1.5), PlaneFlank(point_angle=118, lip_relief=relief))


def examined(point: GroundPoint, **more: Any) -> Report:
    """What is found on a ground point at a usual feed."""
    body = point.flute.body_diameter
    return find_faults(Readings.of(point.inspect(), feed=0.2, body_diameter=body), **more)


def keys(report: Report) -> list[str]:
    """The faults by keyword, as they are sorted."""
    return [fault.key for fault in report.faults]


def one(report: Report, key: str) -> Fault:
    """The fault with this keyword."""
    return next(fault for fault in report.faults if fault.key == key)


@pytest.mark.parametrize(
    ("point", "limits"),
    [
        (conical(), None),
        (plane(), AT_135),
        (plane(diameter=16, web=2.4), AT_135),
        (plane(helix_angle=20), AT_135),
    ],
    ids=["conical", "plane", "larger", "less helix"],
)
def test_a_good_point_has_no_fault(point: GroundPoint, limits: Limits | None) -> None:
    report = examined(point, limits=limits)
    assert report.faults == () and report.undecided == ()
    assert report.says() == NOTHING
    assert {"unequal_lips", "unequal_angles", "negative_relief", "too_little_relief"} <= report.cleared


MADE_ON_PURPOSE: dict[str, tuple[str, GroundPoint, dict[str, Any]]] = {
    "half angles 2° apart": ("unequal_angles", plane({"point_angle": 139}), {"limits": AT_135}),
    "cone tilted 2° more": ("unequal_angles", conical({"cone_tilt": 40.83}), {}),
    "plane flank higher": ("unequal_lips", plane({"flank_height": 0.2}), {"limits": AT_135}),
    "plane flank much higher": ("unequal_lips", plane({"flank_height": 0.5}), {"limits": AT_135}),
    "plane flank lower": ("unequal_lips", plane({"flank_height": -0.2}), {"limits": AT_135}),
    "conical flank higher": ("unequal_lips", conical({"flank_height": 0.15}), {}),
    "heel proud": ("negative_relief", at_118(-8), {}),
    "heel a little proud": ("negative_relief", at_118(-2), {}),
    "no relief": ("too_little_relief", at_118(0), {}),
    "little relief": ("too_little_relief", at_118(4), {}),
    "heel of one plane flank": ("too_little_relief", at_118(12), {}),
    "much relief": ("too_much_relief", at_118(35), {}),
    "reliefs unequal": ("unequal_relief", plane({"lip_relief": 22.5}), {"limits": AT_135}),
    "web aside": ("web_off_centre", plane(web_offset=0.2), {"limits": AT_135}),
    "web to the other side": ("web_off_centre", plane(web_offset=-0.15), {"limits": AT_135}),
    "another point angle": ("wrong_point_angle", plane(), {}),
    "thick web": ("thick_web", plane(web=2.2), {"limits": AT_135}),
    "stepped body": ("thin_body", conical(body_diameter=9.5), {}),
    "turned ahead": (
        "turned",
        plane(one={"flank_turn": 8}),
        {"limits": AT_135, "set_up": Readings.of(plane().inspect())},
    ),
    "turned back": (
        "turned",
        plane(one={"flank_turn": -8}),
        {"limits": AT_135, "set_up": Readings.of(plane().inspect())},
    ),
    "cone turned": (
        "turned",
        GroundPoint(Flute(diameter=10, web=1.5, heel_angle=40), ConicalFlank(**CONE, flank_turn=8)),
        {"set_up": Readings.of(conical().inspect())},
    ),
}


@pytest.mark.parametrize(("key", "point", "more"), MADE_ON_PURPOSE.values(), ids=MADE_ON_PURPOSE)
def test_a_fault_made_on_purpose_is_named_first(key: str, point: GroundPoint, more: dict[str, Any]) -> None:
    report = examined(point, **more)
    assert keys(report)[0] == key
    assert report.faults[0].confidence == "shown"
    # Whatever else is read off the same point is named as its consequence, or weighs less.
    for fault in report.faults[1:]:
        assert fault.follows_from or fault.weight < report.faults[0].weight


@pytest.mark.parametrize(
    ("point", "limits", "alone"),
    [
        (plane(web_offset=0.2), AT_135, "web_off_centre"),
        (plane(), None, "wrong_point_angle"),
        (plane({"lip_relief": 22.5}), AT_135, "unequal_relief"),
        (plane(web=2.2), AT_135, "thick_web"),
        (plane({"flank_height": 0.2}), AT_135, "unequal_lips"),
        (conical({"flank_height": 0.15}), None, "unequal_lips"),
        (at_118(-8), None, "negative_relief"),
        (at_118(4), None, "too_little_relief"),
        (at_118(35), None, "too_much_relief"),
    ],
)
def test_one_fault_is_one_cause(point: GroundPoint, limits: Limits | None, alone: str) -> None:
    assert [f.key for f in examined(point, limits=limits).faults if not f.follows_from] == [alone]


@given(st.floats(5, 40), st.floats(0.1, 0.16), st.floats(0.006, 0.02))
def test_any_raised_flank_makes_lips_of_unequal_length(diameter: float, ratio: float, share: float) -> None:
    sizes = {"diameter": diameter, "web": ratio * diameter}
    limits = Limits(point_angle=135, lip_height_difference=0.004 * diameter, point_offset=0.004 * diameter)
    report = examined(plane({"flank_height": share * diameter}, **sizes), limits=limits)
    assert keys(report)[0] == "unequal_lips"
    # DERIVED: bringing the raised flank down by as much as it was raised levels the lips.
    stock = report.faults[0].stock
    assert stock is not None and stock == pytest.approx(share * diameter, rel=0.12)
    assert report.faults[0].stock_at == "off the flank of lip 2, along the axis"


# --- readings of real drills


@pytest.mark.parametrize(("longer", "wider"), [(0.1, 0.086), (0.2, 0.171), (0.5, 0.429)])
def test_lips_of_unequal_length_widen_the_hole(longer: float, wider: float) -> None:
    # DERIVED: ΔL·cos κ·tan κ = ΔL·sin κ at 118°.
    report = find_faults(
        Readings(lip_length_1=5.2 + longer, lip_length_2=5.2, point_angle=118, diameter=10, reading_errors=EXACT)
    )
    fault = one(report, "unequal_lips")
    assert fault.oversize == pytest.approx(wider, abs=0.0005)
    assert fault.oversize == pytest.approx(longer * math.sin(math.radians(59)), abs=1e-12)
    assert fault.stock == pytest.approx(longer * math.cos(math.radians(59)), abs=1e-12)
    assert fault.stock_at == "off the flank of lip 2, along the axis"


def test_and_back_from_a_wide_hole_to_the_lips() -> None:
    # DERIVED: the same the other way round.
    report = find_faults(Readings(hole_diameter=10.171, diameter=10, point_angle=118, reading_errors=EXACT))
    assert keys(report) == ["wide_hole"]
    assert "at least 0.103 mm (0.004 in) in height, or 0.199 mm (0.0079 in) in length" in report.faults[0].remarks[0]


@pytest.mark.parametrize(("angle", "hole"), [(118, 0.505), (135, 0.5072)])
def test_three_thousandths_of_height_in_a_half_inch_drill(angle: float, hole: float) -> None:
    # DERIVED: D + h·tan κ, in inches.
    readings = Readings(
        lip_height_difference=0.003 * INCH, diameter=0.5 * INCH, point_angle=angle, reading_errors=EXACT
    )
    fault = one(find_faults(readings, limits=Limits(point_angle=angle)), "lip_height")
    assert fault.oversize is not None
    assert (0.5 * INCH + fault.oversize) / INCH == pytest.approx(hole, abs=0.00005)
    assert fault.stock_at == "off the flank of the lip that stands ahead, along the axis"


@pytest.mark.parametrize(
    ("feed", "idle"), [(0.10, "1.07 mm (0.0423 in)"), (0.15, "1.61 mm (0.0634 in)"), (0.20, "2.15 mm (0.0846 in)")]
)
def test_59_on_one_side_and_61_on_the_other(feed: float, idle: str) -> None:
    # DERIVED: R·(cot 59° - cot 61°) = 0.233 mm; (f/2) over the difference of the cotangents.
    report = find_faults(Readings(diameter=10, half_angle_1=59, half_angle_2=61, feed=feed))
    fault = report.faults[0]
    assert fault.key == "unequal_angles" and fault.confidence == "shown"
    assert "At the corners that makes 0.233 mm" in fault.remarks[1]
    assert f"lip 1 is idle outside a radius of {idle}." in fault.remarks[2]
    assert fault.stock == pytest.approx(0.23275, abs=5e-5) and fault.stock_at == "off the corner of lip 2"
    assert fault.oversize is None


def test_a_feed_that_keeps_both_lips_cutting_is_said() -> None:
    report = find_faults(Readings(diameter=10, half_angle_1=59, half_angle_2=60, feed=0.5, reading_errors=EXACT))
    assert (
        report.faults[0].remarks[2]
        == "At a feed of 0.5 mm/rev (0.0197 in/rev) both lips still cut as far as the corner."
    )


@pytest.mark.parametrize(
    ("half_1", "half_2", "stock", "where"),
    [
        (57, 57.9, 0.2427, "off the tip"),
        (59, 60, 0.1175, "off the corner of lip 2"),
        (58, 60, 0.2375, "off the corner"),
    ],
)
def test_stock_for_unequal_angles(half_1: float, half_2: float, stock: float, where: str) -> None:
    # DERIVED: the new cone of 59° must lie inside both old lips: s = R·max(cot κi - cot 59°, 0) at the tip, and at each
    # corner s + R·(cot 59° - cot κi).
    cot = [1 / math.tan(math.radians(k)) for k in (59, half_1, half_2)]
    tip = 5 * max(0.0, cot[1] - cot[0], cot[2] - cot[0])
    most = max(tip, *(tip + 5 * (cot[0] - c) for c in cot[1:]))
    report = find_faults(Readings(diameter=10, half_angle_1=half_1, half_angle_2=half_2, reading_errors=EXACT))
    fault = one(report, "unequal_angles")
    assert fault.stock == pytest.approx(most, abs=1e-12)
    assert fault.stock == pytest.approx(stock, abs=5e-4)
    assert fault.stock_at.startswith(where)


@pytest.mark.parametrize(("feed", "rubs"), [(0.2, True), (0.1, False)])
def test_relief_below_the_slope_of_the_feed_rubs(feed: float, rubs: bool) -> None:
    # DERIVED: atan(f / πD) on 10 mm is 0.365° at 0.2 mm/rev and 0.182° at 0.1.
    report = find_faults(Readings(diameter=10, lip_relief=0.3, feed=feed, reading_errors=EXACT))
    assert keys(report) == ["too_little_relief"]
    assert ("the flank rubs" in report.faults[0].remarks[0]) is rubs


@pytest.mark.parametrize(("edge", "telling"), [(94.9, True), (95, True), (101.6, False)])
def test_a_chisel_edge_near_95_is_the_tell_tale(edge: float, telling: bool) -> None:
    # DERIVED: a plane flank of 118° with 8° at the corner (web 0.15 of the diameter) has 94.9°.
    report = find_faults(Readings(chisel_edge_angle=edge, point_angle=118))
    fault = report.faults[0]
    assert keys(report) == ["chisel_tells_little"] and fault.confidence == "shown"
    assert any("hardly any relief" in remark for remark in fault.remarks) is telling


def test_the_chisel_edge_of_a_plane_flank_tells_its_relief() -> None:
    # DERIVED: tan δ = cot κ / tan α_x: 109.5° goes with 12° at 118°.
    report = find_faults(Readings(chisel_edge_angle=109.5, point_angle=118))
    assert "a relief of 12°, square to the lip" in report.faults[0].remarks[0]


def test_a_heel_ahead_of_its_lip() -> None:
    # DERIVED: 2π·38.1·(60/360)·tan 8° = 5.61 mm.
    report = find_faults(Readings(diameter=76.2, lip_relief=-8, heel_angle=60))
    fault = report.faults[0]
    assert fault.key == "negative_relief" and fault.confidence == "shown"
    assert "the flank stands 5.61 mm (0.2208 in) above the lip at the heel" in fault.remarks[0]
    # DERIVED: and to fall away at the 8° asked for, it has to lose as much again.
    assert fault.stock == pytest.approx(2 * 5.607, abs=0.001)


def test_one_plane_flank_is_told_from_too_little_relief_at_the_corner() -> None:
    report = find_faults(Readings(lip_relief=12, chisel_edge_angle=101.6, point_angle=118, web=1.5, diameter=10))
    assert keys(report) == ["chisel_tells_little"]
    assert "right at the corner" in report.faults[0].remarks[-1]
    assert "They agree with one plane flank." in report.agreements[0]


@pytest.mark.parametrize(("degrees_a_side", "called"), [(60, False), (57, True)])
def test_a_point_angle_by_set_square(degrees_a_side: float, called: bool) -> None:
    readings = Readings(half_angle_1=degrees_a_side, half_angle_2=degrees_a_side, diameter=10, reading_errors=EXACT)
    assert ("wrong_point_angle" in keys(find_faults(readings))) is called


def test_a_sharp_reading_may_be_a_rolled_drill() -> None:
    # DERIVED: 118° rolled by 20° reads 114.8°.
    fault = find_faults(Readings(point_angle=114.8)).faults[0]
    assert fault.key == "wrong_point_angle"
    assert "rolled by 20°" in fault.remarks[0]
    # Held against a roll that was read, the same drill is right.
    assert find_faults(Readings(point_angle=114.8, roll_angle=20)).faults == ()


def test_stock_for_another_point_angle() -> None:
    # DERIVED: 0.0933 D off the tip from 118° to 135°, and as much off the corners the other way.
    flatter = find_faults(Readings(point_angle=118, diameter=10), limits=AT_135).faults[0]
    sharper = find_faults(Readings(point_angle=135, diameter=10)).faults[0]
    assert flatter.stock == pytest.approx(0.933, abs=0.0005) and flatter.stock_at == "off the tip"
    assert sharper.stock == flatter.stock and sharper.stock_at == "off the corners"


def test_a_web_due_for_thinning() -> None:
    # DERIVED: 3.96 mm on 20 mm is 0.198; to 0.18 (3.6 mm) half of 0.36 mm goes on each side; C = W / sin 125° = 4.83.
    report = find_faults(Readings(web=3.96, diameter=20, chisel_edge_angle=125))
    fault = report.faults[0]
    assert fault.key == "thick_web" and fault.confidence == "shown"
    assert fault.remarks == (
        "To come to the limit, 0.18 mm (0.0071 in) has to go on each side. The lips lose nothing.",
        "The chisel edge is now 4.83 mm (0.1903 in) long.",
    )


@pytest.mark.parametrize(("body", "key", "stock"), [(10.3, "worn_corners", 0.8), (9.6, "thin_body", None)])
def test_a_body_other_than_its_point(body: float, key: str, stock: float | None) -> None:
    fault = find_faults(Readings(body_diameter=body, diameter=10, worn_margin=0.8)).faults[0]
    assert (fault.key, fault.confidence, fault.stock) == (key, "shown", stock)


def test_a_chisel_edge_off_centre_with_nothing_read_of_the_lips() -> None:
    report = find_faults(Readings(point_offset=0.3))
    assert keys(report) == ["chisel_off_centre"]
    level = find_faults(Readings(point_offset=0.3, lip_height_difference=0.0))
    assert keys(level) == ["web_off_centre"]
    unsure = find_faults(Readings(point_offset=0.3, lip_length_1=5.2, lip_length_2=5.1))
    assert keys(unsure) == ["chisel_off_centre"]


def test_a_web_measured_aside() -> None:
    fault = find_faults(Readings(web_offset=-0.2)).faults[0]
    assert fault.key == "web_off_centre"
    assert "thicker than the other by twice that, 0.4 mm" in fault.remarks[0]


def test_a_hole_that_the_lips_explain_follows_from_them() -> None:
    lips = {"lip_height_difference": 0.26, "diameter": 10, "point_angle": 118}
    explained = find_faults(Readings(hole_diameter=10.3, **lips))
    assert one(explained, "wide_hole").follows_from == "lip height difference"
    other = find_faults(Readings(hole_diameter=11.2, **lips))
    assert one(other, "wide_hole").follows_from == ""
    assert any("run-out" in said for said in other.agreements)
    # DERIVED: 0.28·tan 59° = 0.466 mm is the most that the lips make, and the hole is 1.2 mm wider.
    assert "grinding them does not cure it" in one(other, "wide_hole").cure
    assert "grinding them" not in one(explained, "wide_hole").cure
    level = find_faults(Readings(hole_diameter=10.36, lip_height_difference=0, diameter=10, point_angle=118))
    assert keys(level) == ["wide_hole"] and "run-out" in level.faults[0].cure
    differ = {"half_angle_1": 59, "half_angle_2": 62}
    angled = find_faults(Readings(hole_diameter=10.36, lip_height_difference=0, diameter=10, **differ))
    assert "run-out" not in one(angled, "wide_hole").cure
    unread = find_faults(Readings(hole_diameter=10.36, diameter=10, point_angle=118))
    assert unread.faults[0].cure == "Measure the lips before anything is ground."


def test_a_drill_is_called_turned_only_against_its_set_up() -> None:
    turned = plane(one={"flank_turn": 8})
    assert "turned" not in keys(examined(turned, limits=AT_135))
    # A point set flatter and with more relief has another steepness: it was set wrong, not turned.
    set_up = Readings(point_angle=150, chisel_edge_angle=125)
    assert "turned" not in keys(examined(turned, limits=AT_135, set_up=set_up))


# --- what is never called, and what is called more surely


GOOD: dict[str, float] = {
    "diameter": 10,
    "half_angle_1": 59,
    "half_angle_2": 59,
    "lip_length_1": 5.15,
    "lip_length_2": 5.15,
    "lip_height_difference": 0,
    "chisel_edge_angle": 127,
    "web": 1.5,
    "lip_relief_1": 12,
    "lip_relief_2": 12,
    "point_offset": 0,
    "body_diameter": 10,
    "hole_diameter": 10,
}
shares = st.floats(-0.99, 0.99)


@given(st.fixed_dictionaries(dict.fromkeys(GOOD, shares)), st.integers(0, 2 ** len(GOOD) - 1))
def test_nothing_within_the_reading_errors_is_called(off: dict[str, float], chosen: int) -> None:
    taken = [name for number, name in enumerate(GOOD) if chosen >> number & 1]
    errors = usual_errors()
    unsigned = ("lip_height_difference", "point_offset")
    values = {name: GOOD[name] + errors[name] * (abs(off[name]) if name in unsigned else off[name]) for name in taken}
    assert find_faults(Readings(**values)).faults == ()


WORSE: dict[str, tuple[str, float]] = {
    "lip_length_1": ("unequal_lips", 1.0),
    "lip_height_difference": ("lip_height", 0.5),
    "half_angle_1": ("unequal_angles", 8.0),
    "lip_relief_1": ("negative_relief", -25.0),
    "lip_relief_2": ("too_much_relief", 30.0),
    "chisel_edge_angle": ("chisel_tells_little", -30.0),
    "web": ("thick_web", 3.0),
    "point_offset": ("web_off_centre", 0.5),
    "body_diameter": ("worn_corners", 1.0),
    "hole_diameter": ("wide_hole", 1.0),
}


def severity(report: Report, key: str) -> float:
    """How badly a fault is called: its weight; just above nothing when undecided."""
    called = [fault.weight for fault in report.faults if fault.key == key]
    return called[0] if called else 0.01 * any(u.key == key for u in report.undecided)


@pytest.mark.parametrize("name", WORSE)
@pytest.mark.parametrize("errors", [{}, EXACT], ids=["by hand", "exact"])
def test_a_worse_reading_is_not_less_severe(name: str, errors: dict[str, float]) -> None:
    key, most = WORSE[name]
    found = [
        severity(find_faults(Readings(**GOOD | {name: GOOD[name] + most * step / 10}, reading_errors=errors)), key)
        for step in range(11)
    ]
    assert found == sorted(found)
    assert found[0] <= 0.01 < found[-1]


@pytest.mark.parametrize("tool", [0.25, 0.08, 0.01])
def test_a_closer_tool_decides(tool: float) -> None:
    errors = {"lip_length_1": tool, "lip_length_2": tool}
    report = find_faults(Readings(lip_length_1=5.4, lip_length_2=5.2, point_angle=118, reading_errors=errors))
    called = {0.25: None, 0.08: "possible", 0.01: "shown"}[tool]
    assert (report.faults[0].confidence if report.faults else None) == called
    assert bool(report.undecided) is (called is None)


# --- what a report says


def test_a_report_says_what_it_knows_and_what_it_does_not() -> None:
    report = find_faults(Readings(lip_length_1=5.4, lip_length_2=4.4, point_angle=118))
    said = str(report)
    assert said.startswith("Found: lips of unequal length.")
    assert said.endswith(CAUTION)
    for part in ("Likely cause:", "Hole:", "Chips:", "Wear:", "Cure:", "Stock off the flank of lip 2", "shop's choice"):
        assert part in said
    assert "unequal half angles: half angle of lip 1 and half angle of lip 2" in said
    assert "± 0.5 mm" in said


def test_nothing_read_tells_nothing() -> None:
    assert find_faults(Readings()).says() == NOTHING_READ
    assert find_faults(Readings(web=1.5)).says() == NOTHING_READ


def test_what_is_left_undecided_is_not_called_a_fault() -> None:
    report = find_faults(Readings(lip_length_1=5.2, lip_length_2=5.1, point_angle=118))
    assert report.faults == ()
    assert report.says() == f"{NOTHING} Within the reading error, and so not called a fault: lips of unequal length."


@pytest.mark.parametrize(("_", "point", "more"), MADE_ON_PURPOSE.values(), ids=MADE_ON_PURPOSE)
def test_every_report_is_plain_data_and_short_sentences(_: str, point: GroundPoint, more: dict[str, Any]) -> None:
    report = examined(point, **more)
    data = json.loads(json.dumps(report.data()))
    assert [fault["key"] for fault in data["faults"]] == keys(report)
    assert data["caution"] == CAUTION
    for line in str(report).splitlines():
        assert "nan" not in line.split() and "None" not in line
        assert all(len(sentence.split()) <= 32 for sentence in line.split(". ") if ";" not in sentence)


def test_cures_come_in_the_order_of_grinding() -> None:
    report = find_faults(
        Readings(
            half_angle_1=59,
            half_angle_2=62,
            lip_relief=2,
            lip_height_difference=0.8,
            web=2.6,
            diameter=10,
            higher_lip=1,
        )
    )
    names = [step.partition(": ")[0] for step in report.plan()]
    assert names.index("unequal half angles") < names.index("too little relief")
    assert names.index("too little relief") < names.index("lip height difference") < names.index("web too thick")


def test_every_kind_is_told_in_words() -> None:
    for kind in kinds().values():
        assert 1 <= kind.importance <= 10 and kind.order in range(6)
        for text in (kind.cause, kind.hole, kind.chips, kind.wear, kind.cure):
            assert text.endswith(".") and max(len(s.split()) for s in text.split(". ")) <= 25


def test_angles_that_differ_within_their_reading_error_take_no_share() -> None:
    lips = {"diameter": 10, "half_angle_1": 59, "half_angle_2": 59.4, "lip_height_difference": 0.3, "higher_lip": 2}
    by_hand = one(find_faults(Readings(**lips)), "lip_height")
    exact = one(find_faults(Readings(**lips, reading_errors=EXACT)), "lip_height")
    assert by_hand.stock == pytest.approx(0.3)
    # DERIVED: R·(cot 59° - cot 59.4°) = 0.0474 mm of the 0.3 mm.
    assert exact.stock == pytest.approx(0.3 - 0.0474, abs=1e-4)
    assert "0.047 mm (0.0019 in) of height" in exact.remarks[0]


def test_unequal_reliefs_shift_the_chisel_edge_and_leave_the_corners_level() -> None:
    report = examined(plane({"lip_relief": 22.5}), limits=AT_135)
    assert keys(report)[0] == "unequal_relief"
    for fault in report.faults[1:]:
        assert fault.key in ("unequal_lips", "chisel_off_centre")
        assert fault.follows_from == "unequal relief" and fault.oversize is None


@given(st.floats(5, 40), st.floats(0.1, 0.16), st.floats(1, 5))
def test_any_flank_at_another_angle_makes_unequal_half_angles(diameter: float, ratio: float, more: float) -> None:
    sizes = {"diameter": diameter, "web": ratio * diameter}
    limits = Limits(point_angle=135, lip_height_difference=0.004 * diameter, point_offset=0.004 * diameter)
    report = examined(plane({"point_angle": 135 + 2 * more}, **sizes), limits=limits)
    assert keys(report)[0] == "unequal_angles"
    assert one(report, "lip_height").follows_from == "unequal half angles"


@given(st.floats(-12, -0.5), st.floats(2, 40))
def test_any_relief_below_zero_is_negative(relief: float, diameter: float) -> None:
    point = GroundPoint(Flute(diameter=diameter, web_ratio=0.15), PlaneFlank(point_angle=118, lip_relief=relief))
    assert keys(examined(point))[0] == "negative_relief"


@given(st.floats(0.012, 0.03), st.booleans(), st.floats(5, 40))
def test_any_web_aside_is_told_from_unequal_lips(share: float, other_way: bool, diameter: float) -> None:
    limits = Limits(point_angle=135, lip_height_difference=0.005 * diameter, point_offset=0.005 * diameter)
    aside = (-share if other_way else share) * diameter
    report = examined(plane(web_offset=aside, diameter=diameter, web=0.15 * diameter), limits=limits)
    assert keys(report)[0] == "web_off_centre"
