"""The uncut chip, and the torque from its area and a specific cutting force."""

from __future__ import annotations

from types import ModuleType
from typing import Any

from drillpoint.relation import Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols
from drillpoint.relations.lips import lip_length

chip_thickness = Relation(
    name="chip_thickness",
    result="chip_thickness",
    givens=("feed", "point_angle"),
    says="each lip takes half the feed, and the chip is measured square to the sloping lip",
    formula=lambda s, sp: s.feed / 2 * sp.sin(s.kappa),
    steps=(
        let(
            "f_z",
            "In one turn the drill goes forward by the feed. Two lips share it.",
            lambda s, sp: s.feed / 2,
        ),
        read_off(
            "Look square to the lips. The lip has moved along the axis by its share; the layer it takes, measured "
            "square to the lip, is the side opposite to κ in a right-angled triangle.",
            lambda s, sp: s.chip_thickness,
            lambda s, sp: s.local("f_z") * sp.sin(s.kappa),
        ),
        follow(
            "Put in the share.",
            lambda s, sp: s.chip_thickness,
            lambda s, sp: s.feed / 2 * sp.sin(s.kappa),
        ),
    ),
    assumptions=("Both lips cut alike: a higher lip takes more than half.", "The lips are straight."),
    sources=(
        "Follows from the drawing alone.",
        "Ghosh and Mallik, Manufacturing Science (second hand): the same form, with a feed of 0.23 mm/rev as example.",
    ),
    limits=(
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: s.feed / 2,
            "on a flat end the chip is as thick as half the feed",
            False,
        ),
        Limit("feed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no feed, no chip"),
    ),
    stands_in=True,
)

chip_width = Relation(
    name="chip_width",
    result="chip_width",
    givens=lip_length.givens,
    says="the chip is as wide as the lip is long",
    formula=lip_length.formula,
    steps=(
        *lip_length.steps[:4],
        read_off(
            "The chip comes off the whole lip and is as wide as it. Look square to the lips: the lip slopes at κ, so "
            "across the axis it takes b·sin κ.",
            lambda s, sp: s.chip_width * sp.sin(s.kappa),
            lambda s, sp: s.local("p"),
        ),
        follow("Divide by sin κ and put both corners in.", lambda s, sp: s.chip_width, lip_length.formula),
    ),
    assumptions=(*lip_length.assumptions, "The whole lip cuts: the drill is in with its full diameter."),
    sources=("Follows from the drawing alone.",),
    limits=lip_length.limits,
    conditions=lip_length.conditions,
)


def _specific(s: Symbols, _: ModuleType) -> Any:
    return s.specific_force_at_1_mm * s.chip_thickness ** (-s.chip_thickness_exponent)


specific_cutting_force = Relation(
    name="specific_cutting_force",
    result="specific_cutting_force",
    givens=("specific_force_at_1_mm", "chip_thickness", "chip_thickness_exponent"),
    says="thin chips cost more force for their area than thick ones",
    formula=_specific,
    steps=(
        let(
            "r_h",
            "Measured forces for each square millimetre of chip rise as the chip gets thinner, by the same factor for "
            "the same ratio of thickness. Against a chip of 1 mm the factor is a power.",
            lambda s, sp: s.chip_thickness ** (-s.chip_thickness_exponent),
        ),
        read_off(
            "A table gives the value for a chip of 1 mm and the exponent.",
            lambda s, sp: s.specific_cutting_force,
            lambda s, sp: s.specific_force_at_1_mm * s.local("r_h"),
        ),
        follow("Put the factor in.", lambda s, sp: s.specific_cutting_force, _specific),
    ),
    assumptions=(
        "The law sums up cutting tests, most of them in turning; rake and cutting speed are left out.",
        "Very thin chips, where the edge rubs more than it cuts, stretch the law.",
    ),
    sources=("Common practice in machining textbooks; the table for the work is given, not kept here.",),
    limits=(
        Limit(
            "chip_thickness",
            lambda s, sp: sp.Integer(1),
            lambda s, sp: s.specific_force_at_1_mm,
            "at 1 mm it is the table's value",
        ),
        Limit(
            "chip_thickness_exponent",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.specific_force_at_1_mm,
            "without the exponent thickness does not matter",
        ),
    ),
    stands_in=True,
    empirical=True,
)

torque_specific_force = Relation(
    name="torque_specific_force",
    result="torque",
    givens=("specific_cutting_force", "feed", "diameter"),
    says="torque as the area of the chip times a specific force, at the middle of each lip",
    formula=lambda s, sp: s.specific_cutting_force * s.feed * s.diameter**2 / 8000,
    steps=(
        let(
            "a",
            "Seen along the feed, each lip takes a chip of half the feed by half the diameter (as if it reached the "
            "axis).",
            lambda s, sp: s.feed / 2 * s.R,
        ),
        let("F_1", "Its force is area times specific force.", lambda s, sp: s.specific_cutting_force * s.local("a")),
        let("r_1", "The force acts, on the whole, at the middle of the lip.", lambda s, sp: s.R / 2),
        read_off(
            "Two lips turn the drill. Newton millimetres over 1000 are newton metres.",
            lambda s, sp: s.torque * 1000,
            lambda s, sp: 2 * s.local("F_1") * s.local("r_1"),
        ),
        follow(
            "Put everything in.",
            lambda s, sp: s.torque,
            lambda s, sp: s.specific_cutting_force * s.feed * s.diameter**2 / 8000,
        ),
    ),
    assumptions=(
        "The lips reach the axis: the chisel edge is not seen, and thinning changes nothing.",
        "One specific force holds all along the lip, whatever the rake there.",
        "Margins do not rub and chips do not jam.",
    ),
    sources=(
        "Follows from the drawing and a specific force.",
        (
            "Stephenson and Agapiou, Metal Cutting Theory and Practice, 3rd ed., eq. 6.19 (second hand): the same "
            "turned round, specific energy = 8 M/(D² f)."
        ),
    ),
    limits=(Limit("feed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "without feed nothing is cut"),),
)

RELATIONS: tuple[Relation, ...] = (chip_thickness, chip_width, specific_cutting_force, torque_specific_force)
"""What the chapter on forces says of the chip."""
