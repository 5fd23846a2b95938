"""Random drills for property tests: givens that go together, for every relation of the book."""

from __future__ import annotations

import math
from typing import Any

from hypothesis import assume
from hypothesis import strategies as st

from drillpoint.relation import Relation

USUAL: dict[str, float] = {
    "diameter": 10,
    "point_angle": 118,
    "web": 1.5,
    "web_ratio": 0.15,
    "radius": 2.5,
    "chisel_edge_angle": 125,
    "axial_relief": 7,
    "lip_relief": 12,
    "web_taper": 0.014,
    "length_removed": 20,
    "pilot_diameter": 3,
    "thinned_chisel_length": 0.8,
    "thinning_angle": 30,
    "feed": 0.2,
    "spindle_speed": 500,
    "chip_thickness": 0.086,
    "chisel_edge_length": 1.8,
    "chisel_ratio": 0.18,
    "reference_chisel_ratio": 0.1,
    "torque_factor": 1.085,
    "thrust_factor": 1.355,
    "chisel_thrust_factor": 0.03,
    "reference_torque_factor": 1.02,
    "reference_thrust_factor": 1.235,
    "reference_chisel_thrust_factor": 0.01,
    "material_factor": 24000,
    "tool_wear_factor": 1.3,
    "torque": 8.5,
    "power": 0.45,
    "efficiency": 0.8,
    "specific_force_at_1_mm": 2100,
    "chip_thickness_exponent": 0.25,
    "specific_cutting_force": 4170,
    "shoulder_depth": 25,
    "point_height": 3.0043,
    "depth_to_point": 28,
    "thread_depth": 20,
    "thread_allowance": 5,
    "sheet_thickness": 6,
    "mouth_diameter": 11,
    "countersink_angle": 90,
    "flat_diameter": 5.5,
    "cutting_speed": 25,
    "speed_constant": 320,
    "approach": 2,
    "overrun": 1,
    "lip_length_difference": 0.2,
    "lip_height_difference": 0.103,
    "point_offset": 0.0857,
    "oversize": 0.171,
    "run_out": 0.12,
    "half_angle_1": 59,
    "half_angle_2": 61,
    "roll_angle": 20,
    "new_point_angle": 135,
    "stock": 0.5,
    "corner_stock": 0.3,
    "wear_land": 0.4,
    "worn_margin": 0.8,
    "chip_depth": 0.3,
    "usable_length": 40,
    "regrinds": 10,
    "web_ratio_limit": 0.18,
    "length_before": 120.4,
    "length_after": 119.95,
    "helix_angle": 30,
    "local_helix": 16.1,
    "normal_rake": 9.5,
    "lip_inclination": 14.9,
    "normal_relief": 14.9,
    "wedge_angle": 65.6,
    "dub_rake": 2,
    "dub_normal_rake": -4.5,
    "dub_width": 0.2,
    "relief_at_radius": 16.6,
    "feed_relief_loss": 0.73,
    "relief_margin": 8,
    "turn_share": 0.125,
}
"""One drill with round numbers: every given of the book has a value here."""

OTHER: dict[str, float] = {
    "diameter": 25.4,
    "point_angle": 135,
    "web": 6.1,
    "web_ratio": 0.24,
    "radius": 8.5,
    "chisel_edge_angle": 101,
    "axial_relief": 21,
    "lip_relief": 26,
    "web_taper": 0.021,
    "length_removed": 47.5,
    "pilot_diameter": 9.4,
    "thinned_chisel_length": 2.9,
    "thinning_angle": 41.5,
    "feed": 0.35,
    "spindle_speed": 230,
    "chip_thickness": 0.16,
    "chisel_edge_length": 6.2,
    "chisel_ratio": 0.244,
    "reference_chisel_ratio": 0.03,
    "torque_factor": 1.155,
    "thrust_factor": 1.445,
    "chisel_thrust_factor": 0.065,
    "reference_torque_factor": 1.0,
    "reference_thrust_factor": 1.1,
    "reference_chisel_thrust_factor": 0.001,
    "material_factor": 7000,
    "tool_wear_factor": 1.05,
    "torque": 41.0,
    "power": 1.1,
    "efficiency": 0.72,
    "specific_force_at_1_mm": 1250,
    "chip_thickness_exponent": 0.19,
    "specific_cutting_force": 1950,
    "shoulder_depth": 61,
    "point_height": 5.26,
    "depth_to_point": 44.5,
    "thread_depth": 33,
    "thread_allowance": 7.5,
    "sheet_thickness": 3.2,
    "mouth_diameter": 19.5,
    "countersink_angle": 118,
    "flat_diameter": 2.5,
    "cutting_speed": 38,
    "speed_constant": 333.3,
    "approach": 0.8,
    "overrun": 2.7,
    "lip_length_difference": 0.35,
    "lip_height_difference": 0.21,
    "point_offset": 0.33,
    "oversize": 0.58,
    "run_out": 0.27,
    "half_angle_1": 68.5,
    "half_angle_2": 66,
    "roll_angle": 33,
    "new_point_angle": 118,
    "stock": 0.72,
    "corner_stock": 3.1,
    "wear_land": 0.9,
    "worn_margin": 1.7,
    "chip_depth": 0.65,
    "usable_length": 71,
    "regrinds": 17,
    "web_ratio_limit": 0.31,
    "length_before": 212.7,
    "length_after": 211.6,
    "helix_angle": 38,
    "local_helix": 27.6,
    "normal_rake": 23.5,
    "lip_inclination": 19.4,
    "normal_relief": 27.5,
    "wedge_angle": 39,
    "dub_rake": -5,
    "dub_normal_rake": -12.5,
    "dub_width": 0.55,
    "relief_at_radius": 28.5,
    "feed_relief_loss": 0.375,
    "relief_margin": 5.5,
    "turn_share": 0.17,
}
"""A second drill, unlike the first in every given."""

DIAMETERS = st.floats(0.5, 100.0)
POINT_ANGLES = st.floats(60.0, 179.0)
WEB_RATIOS = st.floats(0.01, 0.6)
AXIAL_RELIEFS = st.floats(0.5, 45.0)


@st.composite
def drills(draw: Any) -> dict[str, float]:
    """Every quantity a relation of the book may ask for, of one drill with plane flanks and a place on its lip."""
    diameter, point_angle, ratio = draw(DIAMETERS), draw(POINT_ANGLES), draw(WEB_RATIOS)
    axial = draw(AXIAL_RELIEFS)
    web = ratio * diameter
    # A chisel edge that stays inside the drill, with a little lip left.
    flattest = 180 - math.degrees(math.asin(min(1.0, ratio * 1.02)))
    chisel = draw(st.floats(90.0, flattest))
    cot = 1 / math.tan(math.radians(point_angle / 2))
    delta = math.atan2(cot, math.tan(math.radians(axial)))
    corner = web / 2 / math.sin(delta) * (1 + 1e-9)
    assume(corner < 0.98 * diameter / 2)
    radius = corner + draw(st.floats(0.0, 1.0)) * (diameter / 2 - corner)
    tangent = ratio * cot + math.sqrt(1 - ratio**2) * math.tan(math.radians(axial))
    assume(tangent < math.tan(math.radians(59)))
    return {
        "diameter": diameter,
        "point_angle": point_angle,
        "web": web,
        "web_ratio": ratio,
        "chisel_edge_angle": chisel,
        "axial_relief": axial,
        "lip_relief": math.degrees(math.atan(tangent)),
        "radius": radius,
        **draw(_shortened()),
        "pilot_diameter": draw(st.floats(0.05, 0.9)) * diameter,
        **draw(_thinned(diameter, web, chisel)),
        **draw(_loads(diameter)),
        **draw(_rakes(diameter, point_angle, ratio, radius)),
        **draw(_hole(diameter, point_angle)),
        **draw(_faults(diameter)),
        **draw(_regrind(diameter, point_angle, ratio)),
    }


@st.composite
def _shortened(draw: Any) -> dict[str, float]:
    """Ground back along a web that thickens."""
    return {"web_taper": draw(st.floats(0.0005, 0.15)), "length_removed": draw(st.floats(0.01, 300.0))}


@st.composite
def _thinned(draw: Any, diameter: float, web: float, chisel: float) -> dict[str, float]:
    """A thinning that leaves some chisel edge, some web and some main lip."""
    delta, t = math.radians(180 - chisel), web / 2
    corner, outer = t / math.tan(delta), math.sqrt((diameter / 2) ** 2 - t**2)
    left = draw(st.floats(0.02, 0.98)) * t / math.sin(delta)
    reach = corner + draw(st.floats(0.02, 0.98)) * (outer - corner)
    angle = math.atan2(t - left * math.sin(delta), reach - left * math.cos(delta))
    return {"thinned_chisel_length": 2 * left, "thinning_angle": math.degrees(angle)}


@st.composite
def _hole(draw: Any, diameter: float, point_angle: float) -> dict[str, float]:
    """A hole of full diameter with its point, and a cone with a mouth wider than its foot."""
    height = diameter / 2 / math.tan(math.radians(point_angle / 2))
    mouth = draw(st.floats(0.5, 200.0))
    chances = {
        "shoulder_depth": (0.01, 1000.0),
        "thread_depth": (0.5, 500.0),
        "thread_allowance": (0.01, 100.0),
        "sheet_thickness": (0.05, 500.0),
        "countersink_angle": (20.0, 178.0),
        "cutting_speed": (1.0, 500.0),
        "speed_constant": (150.0, 900.0),
        "approach": (0.01, 50.0),
        "overrun": (0.01, 50.0),
    }
    return {
        "point_height": height,
        "depth_to_point": height + draw(st.floats(0.01, 1000.0)),
        "mouth_diameter": mouth,
        "flat_diameter": draw(st.floats(0.01, 0.98)) * mouth,
        **{name: draw(st.floats(*span)) for name, span in chances.items()},
    }


@st.composite
def _faults(draw: Any, diameter: float) -> dict[str, float]:
    """A point that is not true: uneven lips, two angles half a degree or more apart, run-out, a roll."""
    first, apart = draw(st.floats(21.0, 88.0)), draw(st.floats(0.5, 15.0))
    second = first + apart if first < 60 else first - apart
    small = ("lip_length_difference", "lip_height_difference", "point_offset", "run_out")
    return {
        "half_angle_1": first,
        "half_angle_2": second,
        "roll_angle": draw(st.floats(0.5, 85.0)),
        **{name: draw(st.floats(0.001, 5.0)) for name in small},
        # The tip stays inside the drill.
        "oversize": draw(st.floats(1e-4, 0.9)) * diameter,
    }


@st.composite
def _regrind(draw: Any, diameter: float, point_angle: float, ratio: float) -> dict[str, float]:
    """Damage to grind away, a new angle half a degree or more off, and lengths before and after."""
    apart = draw(st.floats(0.5, 50.0))
    new = point_angle + apart if point_angle < 120 else point_angle - apart
    heights = [diameter / 2 / math.tan(math.radians(angle / 2)) for angle in (point_angle, new)]
    after = draw(st.floats(5.0, 500.0))
    return {
        "new_point_angle": new,
        "corner_stock": max(0.0, heights[1] - heights[0]) * 1.01 + draw(st.floats(0.01, 5.0)),
        "stock": draw(st.floats(0.01, 20.0)),
        "wear_land": draw(st.floats(0.01, 5.0)),
        "worn_margin": draw(st.floats(0.01, 20.0)),
        "chip_depth": draw(st.floats(0.01, 10.0)),
        "usable_length": draw(st.floats(0.5, 500.0)),
        "regrinds": draw(st.floats(1.0, 500.0)),
        "web_ratio_limit": ratio + draw(st.floats(0.005, 0.3)),
        "length_after": after,
        "length_before": after + draw(st.floats(0.01, 20.0)),
    }


def givens_of(relation: Relation, drill: dict[str, float]) -> dict[str, float]:
    """What the relation needs of the drill."""
    return {name: drill[name] for name in relation.givens}


@st.composite
def _loads(draw: Any, diameter: float) -> dict[str, float]:
    """What the drill is pushed and turned with, and the tables' factors for it."""
    ratio = draw(st.floats(0.01, 0.4))
    chances = {
        # A point and a much worse one: between two that are alike in everything no comparison tells size or feed.
        "torque_factor": (0.95, 1.2),
        "thrust_factor": (0.95, 1.2),
        "chisel_thrust_factor": (0.0005, 0.02),
        "reference_torque_factor": (1.05, 1.5),
        "reference_thrust_factor": (1.3, 1.8),
        "reference_chisel_thrust_factor": (0.06, 0.2),
        "reference_chisel_ratio": (0.01, 0.4),
        "feed": (0.005, 1.0),
        "spindle_speed": (20.0, 30000.0),
        "chip_thickness": (0.003, 0.5),
        "material_factor": (1000.0, 50000.0),
        "tool_wear_factor": (1.0, 2.5),
        "torque": (0.01, 500.0),
        "power": (0.01, 20.0),
        "efficiency": (0.3, 0.98),
        "specific_force_at_1_mm": (200.0, 5000.0),
        "chip_thickness_exponent": (0.05, 0.5),
        "specific_cutting_force": (300.0, 12000.0),
    }
    loads = {name: draw(st.floats(*span)) for name, span in chances.items()}
    return {**loads, "chisel_ratio": ratio, "chisel_edge_length": ratio * diameter}


@st.composite
def _rakes(draw: Any, diameter: float, point_angle: float, ratio: float, radius: float) -> dict[str, float]:
    """A flute that leaves metal behind the lip, a flat on it, and what the feed takes."""
    half, turned = math.radians(point_angle / 2), math.asin(min(1.0, ratio * diameter / 2 / radius))
    tilt = math.atan(math.tan(turned) * math.cos(half))
    # A flat that leans further ahead than this leaves no edge.
    least = math.degrees(math.atan(math.tan(max(math.radians(-60), tilt - math.radians(88))) * math.sin(half)))
    steepest = min(65.0, math.degrees(math.atan(0.9 * math.tan(math.radians(point_angle / 2)) / ratio)))
    helix = draw(st.floats(0.5, steepest))
    # A face without any rake has none in every plane, and no inclination can be read back from it.
    rake = draw(st.one_of(st.floats(-60.0, -0.5), st.floats(0.5, 50.0)))
    chances = {
        "lip_inclination": (0.1, 80.0),
        "normal_relief": (1.0, 35.0),
        "wedge_angle": (5.0, 150.0),
        "dub_rake": (max(-30.0, least), 30.0),
        "dub_width": (0.01, 2.0),
        "feed_relief_loss": (0.01, 40.0),
        "relief_margin": (0.0, 30.0),
        "turn_share": (0.01, 0.6),
    }
    return {
        **{name: draw(st.floats(*span)) for name, span in chances.items()},
        "helix_angle": helix,
        "local_helix": math.degrees(math.atan(2 * radius / diameter * math.tan(math.radians(helix)))),
        "normal_rake": rake,
        # Where the flank does not fall at all, nothing tells how far round one has looked.
        "relief_at_radius": draw(st.one_of(st.floats(-20.0, -0.1), st.floats(0.1, 60.0))),
        "dub_normal_rake": rake - draw(st.floats(0.1, 25.0)),
    }
