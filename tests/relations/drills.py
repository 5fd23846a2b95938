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
