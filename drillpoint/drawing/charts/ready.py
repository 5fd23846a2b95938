"""The ready-made charts: their curves, and a usual drill to draw them for."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from attrs import field, frozen

from drillpoint.quantities import QUANTITIES

# A given on the left comes instead of those on the right.
_INSTEAD_OF: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {"web": ("web_ratio",), "web_ratio": ("web",), "lip_relief": ("axial_relief",), "axial_relief": ("lip_relief",)}
)
_POINT_ANGLES = (90, 118, 135)


@frozen
class Ready:
    """A ready-made chart.

    results: the relations drawn. against: what goes to the right. title: what goes up, where the terms of the results
    are not enough. typical: givens that take their typical value when nobody says. values: givens that take these.
    first: a given that is worked out by another relation before the results are, from the given of the same name.
    """

    results: tuple[str, ...]
    against: str
    title: str = ""
    typical: tuple[str, ...] = ()
    values: Mapping[str, Any] = field(factory=dict)
    first: Mapping[str, str] = field(factory=dict)

    def filled(self, givens: Mapping[str, Any]) -> dict[str, Any]:
        """The givens, and a usual drill's for those left out."""
        usual = {**{name: QUANTITIES[name].typical for name in self.typical}, **self.values}
        replaced = {other for name in givens for other in _INSTEAD_OF.get(name, ())}
        return {**{name: value for name, value in usual.items() if name not in replaced}, **givens}


READY: Mapping[str, Ready] = MappingProxyType(
    {
        "relief_along_lip": Ready(
            ("relief_at_radius", "working_relief"),
            "radius",
            "relief along the lip, at rest and at work",
            ("diameter", "web", "point_angle", "lip_relief", "feed"),
        ),
        "rake_along_lip": Ready(
            ("normal_rake",),
            "radius",
            "normal rake along the lip",
            ("diameter", "web", "helix_angle"),
            {"point_angle": _POINT_ANGLES},
        ),
        "inclination_along_lip": Ready(
            ("lip_inclination",),
            "radius",
            "lip inclination along the lip",
            ("diameter", "web"),
            {"point_angle": _POINT_ANGLES},
        ),
        "chisel_edge_by_relief": Ready(
            ("chisel_edge_angle",),
            "lip_relief",
            "chisel edge angle (obtuse) of plane flanks",
            ("web_ratio",),
            {"point_angle": _POINT_ANGLES},
        ),
        "lip_length_by_web": Ready(
            ("lip_length",), "web", "", ("diameter", "chisel_edge_angle"), {"point_angle": _POINT_ANGLES}
        ),
        "factors_by_chisel_edge": Ready(
            ("thrust_factor", "torque_factor", "chisel_thrust_factor"), "chisel_ratio", "chisel edge factors"
        ),
        "factors_by_web": Ready(
            ("thrust_factor", "torque_factor", "chisel_thrust_factor"),
            "web",
            "chisel edge factors",
            ("diameter", "chisel_edge_angle"),
        ),
        "shortening": Ready(
            ("web_after_shortening", "chisel_edge_length"),
            "length_removed",
            "web and chisel edge as the drill is ground back",
            ("web", "web_taper", "chisel_edge_angle"),
            first={"web": "web_after_shortening"},
        ),
        "oversize_by_lip_height": Ready(
            ("oversize",), "lip_height_difference", "", values={"point_angle": _POINT_ANGLES}
        ),
    }
)
"""Every ready-made chart by name. No name is that of a relation."""
