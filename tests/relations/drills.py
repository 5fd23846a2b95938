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
