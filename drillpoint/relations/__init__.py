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
from drillpoint.relations.chisel_edge import chisel_edge_angle, chisel_edge_length, chisel_edge_rake
from drillpoint.relations.chisel_factors import (
    chisel_ratio,
    chisel_thrust_factor,
    reference_chisel_thrust_factor,
    reference_thrust_factor,
    reference_torque_factor,
    thrust_factor,
    torque_factor,
)
from drillpoint.relations.drill_life import (
    length_removed_by_regrinds,
    length_until_thinning,
    regrinds_left,
    take_off_correction,
)
from drillpoint.relations.drilling import (
    drilling_time,
    feed_rate,
    speed_rule_ratio,
    spindle_speed,
    spindle_speed_by_rule,
)
from drillpoint.relations.dubbing import dub_normal_rake, dub_set_back, dub_wedge_angle, least_dub_width
from drillpoint.relations.forces import motor_power, power, thrust, torque
from drillpoint.relations.forces_compared import thrust_ratio, torque_ratio
from drillpoint.relations.governing import governing_stock
from drillpoint.relations.helix import lead, local_helix
from drillpoint.relations.hole import (
    breakthrough,
    countersink_angle,
    countersink_depth,
    full_diameter_depth,
    sheet_cover,
    shoulder_depth,
    spot_depth,
    tap_drill_depth,
)
from drillpoint.relations.hole_size import (
    idle_radius,
    largest_hole,
    lip_height_difference,
    lip_height_from_angles,
    offset_from_run_out,
    oversize,
    point_offset,
    rolled_reading,
)
from drillpoint.relations.lips import corner_radius, lip_length, point_height
from drillpoint.relations.rake import lip_inclination, normal_rake, orthogonal_rake
from drillpoint.relations.regrind import (
    stock_for_angle_change,
    stock_for_chip,
    stock_for_wear_land,
    stock_for_worn_corner,
    tip_stock,
)
from drillpoint.relations.relief import axial_relief, flank_fall, heel_clearance, lip_relief, relief_at_radius
from drillpoint.relations.relief_at_work import feed_relief_loss, least_lip_relief, working_relief
from drillpoint.relations.thinning import (
    thinned_lip_in_end_view,
    thinned_lip_length,
    thinned_web,
    thinning_reach,
    untouched_lip_length,
    untouched_lip_share,
)
from drillpoint.relations.web import pilot_cover, pilot_diameter, web_after_shortening, web_from_ratio, web_ratio
from drillpoint.relations.wedge import normal_relief, wedge_angle

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
    "breakthrough",
    "chip_thickness",
    "chip_width",
    "chisel_edge_angle",
    "chisel_edge_length",
    "chisel_edge_rake",
    "chisel_ratio",
    "chisel_thrust_factor",
    "corner_radius",
    "countersink_angle",
    "countersink_depth",
    "drilling_time",
    "dub_normal_rake",
    "dub_set_back",
    "dub_wedge_angle",
    "feed_rate",
    "feed_relief_loss",
    "find",
    "flank_fall",
    "full_diameter_depth",
    "governing_stock",
    "heel_clearance",
    "idle_radius",
    "largest_hole",
    "lead",
    "least_dub_width",
    "least_lip_relief",
    "length_removed_by_regrinds",
    "length_until_thinning",
    "lip_height_difference",
    "lip_height_from_angles",
    "lip_inclination",
    "lip_length",
    "lip_relief",
    "local_helix",
    "motor_power",
    "normal_rake",
    "normal_relief",
    "offset_from_run_out",
    "orthogonal_rake",
    "oversize",
    "pilot_cover",
    "pilot_diameter",
    "point_height",
    "point_offset",
    "power",
    "reference_chisel_thrust_factor",
    "reference_thrust_factor",
    "reference_torque_factor",
    "regrinds_left",
    "relief_at_radius",
    "rolled_reading",
    "sheet_cover",
    "shoulder_depth",
    "specific_cutting_force",
    "speed_rule_ratio",
    "spindle_speed",
    "spindle_speed_by_rule",
    "spot_depth",
    "stock_for_angle_change",
    "stock_for_chip",
    "stock_for_wear_land",
    "stock_for_worn_corner",
    "take_off_correction",
    "tap_drill_depth",
    "thinned_lip_in_end_view",
    "thinned_lip_length",
    "thinned_web",
    "thinning_reach",
    "thrust",
    "thrust_factor",
    "thrust_ratio",
    "tip_stock",
    "torque",
    "torque_factor",
    "torque_ratio",
    "torque_specific_force",
    "untouched_lip_length",
    "untouched_lip_share",
    "web_after_shortening",
    "web_from_ratio",
    "web_ratio",
    "wedge_angle",
    "working_relief",
]
