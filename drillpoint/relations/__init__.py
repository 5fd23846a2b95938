"""The book of relations: everything this workbook knows about the point of a drill, a chapter a file.

Every relation is called with keywords, in degrees and millimetres:

>>> lip_length(diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)
5.15451 mm
"""

from collections.abc import Mapping
from types import MappingProxyType

from drillpoint.relation import Relation
from drillpoint.relations import chisel_edge, finding, forces, hole, lips, rake, regrind, relief, web
from drillpoint.relations.chip import chip_thickness, chip_width, specific_cutting_force, torque_specific_force
from drillpoint.relations.chisel_edge import chisel_edge_angle, chisel_edge_length
from drillpoint.relations.chisel_factors import (
    chisel_ratio,
    chisel_thrust_factor,
    reference_chisel_thrust_factor,
    reference_thrust_factor,
    reference_torque_factor,
    thrust_factor,
    torque_factor,
)
from drillpoint.relations.forces import motor_power, power, thrust, torque
from drillpoint.relations.forces_compared import thrust_ratio, torque_ratio
from drillpoint.relations.lips import lip_length, point_height
from drillpoint.relations.relief import axial_relief, heel_clearance, lip_relief, relief_at_radius
from drillpoint.relations.thinning import (
    thinned_lip_in_end_view,
    thinned_lip_length,
    thinned_web,
    thinning_reach,
    untouched_lip_length,
    untouched_lip_share,
)
from drillpoint.relations.web import pilot_cover, pilot_diameter, web_after_shortening, web_from_ratio, web_ratio

CHAPTERS: Mapping[str, tuple[Relation, ...]] = MappingProxyType(
    {
        "lips": lips.CHAPTER,
        "chisel_edge": chisel_edge.CHAPTER,
        "relief": relief.CHAPTER,
        "rake": rake.CHAPTER,
        "web": web.CHAPTER,
        "hole": hole.CHAPTER,
        "forces": forces.CHAPTER,
        "regrind": regrind.CHAPTER,
    }
)
"""The relations by chapter, in reading order."""

BOOK: Mapping[str, Relation] = MappingProxyType({r.name: r for chapter in CHAPTERS.values() for r in chapter})
"""Every relation by name."""


def find(words: str) -> finding.Found:
    """The relations that speak of these words, the best first: `find("how long is the lip")`.

    Raises LearnerError when none does.
    """
    return finding.find(words, BOOK)


__all__ = [
    "BOOK",
    "CHAPTERS",
    "axial_relief",
    "chip_thickness",
    "chip_width",
    "chisel_edge_angle",
    "chisel_edge_length",
    "chisel_ratio",
    "chisel_thrust_factor",
    "find",
    "heel_clearance",
    "lip_length",
    "lip_relief",
    "motor_power",
    "pilot_cover",
    "pilot_diameter",
    "point_height",
    "power",
    "reference_chisel_thrust_factor",
    "reference_thrust_factor",
    "reference_torque_factor",
    "relief_at_radius",
    "specific_cutting_force",
    "thinned_lip_in_end_view",
    "thinned_lip_length",
    "thinned_web",
    "thinning_reach",
    "thrust",
    "thrust_factor",
    "thrust_ratio",
    "torque",
    "torque_factor",
    "torque_ratio",
    "torque_specific_force",
    "untouched_lip_length",
    "untouched_lip_share",
    "web_after_shortening",
    "web_from_ratio",
    "web_ratio",
]
