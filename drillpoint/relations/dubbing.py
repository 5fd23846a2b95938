"""A dubbed lip: a narrow flat ground on the flute's face along the lip, so that it does not grab or chip.

It serves in brass and bronze, where a lip with rake pulls itself into the work, and wherever a stronger edge is wanted.
"""

from types import ModuleType
from typing import Any

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols
from drillpoint.relations.wedge import NOT_FED, tilt_of_the_movement

_FLAT = "The flat is one plane along the straight lip."
_SOURCES = (
    "Follows from the drawing alone.",
    "Common practice: a lip for brass is dubbed to no rake, with a flat parallel to the axis.",
)


def _dub_normal_rake(s: Symbols, sp: ModuleType) -> Any:
    return sp.atan(sp.tan(s.dub_rake) / sp.sin(s.kappa)) - tilt_of_the_movement(s, sp)


dub_normal_rake = Relation(
    name="dub_normal_rake",
    result="dub_normal_rake",
    givens=("dub_rake", "radius", "web", "point_angle"),
    says="a flat parallel to the axis takes the helix away; what is left is the web's share, a little below zero",
    formula=_dub_normal_rake,
    steps=(
        let(
            "γ_1",
            "Look along the lip. One millimetre up the drill, the flat goes back by tan γ_x; of the millimetre, sin κ "
            "is seen square to the lip.",
            lambda s, sp: sp.atan(sp.tan(s.dub_rake) / sp.sin(s.kappa)),
        ),
        let(
            "γ_2",
            "The place on the lip moves round the axis, ω_r aside. Seen along the lip that way is tilted by this.",
            tilt_of_the_movement,
        ),
        read_off(
            "Rake is counted from square to the movement, so the tilt comes off.",
            lambda s, sp: s.dub_normal_rake,
            lambda s, sp: s.local("γ_1") - s.local("γ_2"),
        ),
        follow("Put both angles in.", lambda s, sp: s.dub_normal_rake, _dub_normal_rake),
    ),
    assumptions=(_FLAT, NOT_FED),
    sources=_SOURCES,
    limits=(
        Limit(
            "dub_rake",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: -sp.atan(sp.tan(sp.asin(s.web / 2 / s.radius)) * sp.cos(s.point_angle / 2)),
            "a flat parallel to the axis has only the web's share",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: s.dub_rake,
            "on a flat end the two planes are the same",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: sp.pi / 2 + _dub_normal_rake(s, sp),
            "a flat that leans {dub_rake} would lie ahead of the lip at radius {radius} and leave no edge; 0° is usual "
            "for brass",
        ),
    ),
    stands_in=True,
)


def _dub_wedge(s: Symbols, sp: ModuleType) -> Any:
    return sp.pi / 2 - s.dub_normal_rake - s.normal_relief


dub_wedge_angle = Relation(
    name="dub_wedge_angle",
    result="dub_wedge_angle",
    givens=("dub_normal_rake", "normal_relief"),
    says="the flat takes the rake away and leaves the edge a blunter, stronger wedge",
    formula=_dub_wedge,
    steps=(
        read_off(
            "Look along the lip. From square to the movement round to the movement is a right angle. The flat's rake, "
            "the wedge and the relief lie in it side by side.",
            lambda s, sp: s.dub_normal_rake + s.dub_wedge_angle + s.normal_relief,
            lambda s, sp: sp.pi / 2,
        ),
        follow("Take rake and relief off.", lambda s, sp: s.dub_wedge_angle, _dub_wedge),
    ),
    assumptions=("The flank is not touched.", "Rake and relief are those of the same place, both square to the lip."),
    sources=("A definition.", "ISO 3002-1: normal rake, wedge and clearance make a right angle, from memory."),
    limits=(
        Limit(
            "dub_normal_rake",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.pi / 2 - s.normal_relief,
            "without rake only the relief is taken off",
        ),
    ),
    conditions=(
        Condition(
            _dub_wedge,
            "rake {dub_normal_rake} on the flat and normal relief {normal_relief} together leave no metal; they must "
            "be less than 90° together",
        ),
    ),
)

least_dub_width = Relation(
    name="least_dub_width",
    result="least_dub_width",
    givens=("chip_thickness", "dub_normal_rake"),
    says="a flat works when the layer being cut meets the flat alone: a little over the chip's thickness is enough",
    formula=lambda s, sp: s.chip_thickness / sp.cos(s.dub_normal_rake),
    steps=(
        read_off(
            "Look along the lip. The layer is as thick as the chip, square to the movement. The flat leans from that "
            "by its rake, so its width seen square to the movement is cos γ_d of it.",
            lambda s, sp: s.least_dub_width * sp.cos(s.dub_normal_rake),
            lambda s, sp: s.chip_thickness,
        ),
        follow(
            "Divide by the cosine.",
            lambda s, sp: s.least_dub_width,
            lambda s, sp: s.chip_thickness / sp.cos(s.dub_normal_rake),
        ),
    ),
    assumptions=(
        _FLAT,
        (
            "Only the layer before it is cut is looked at. The chip gets thicker and slides on for some way, so a flat "
            "is made wider than this."
        ),
    ),
    sources=_SOURCES,
    limits=(
        Limit(
            "dub_normal_rake",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.chip_thickness,
            "a flat square to the movement needs the thickness itself",
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: sp.cos(s.dub_normal_rake),
            "with a rake of {dub_normal_rake} the flat lies flat on the work; it must be between -90° and 90°",
        ),
    ),
)


def _set_back(s: Symbols, sp: ModuleType) -> Any:
    return s.dub_width * sp.sin(s.rake_change) / sp.sin(s.wedge_angle)


dub_set_back = Relation(
    name="dub_set_back",
    result="dub_set_back",
    givens=("dub_width", "normal_rake", "dub_normal_rake", "wedge_angle"),
    says="a flat moves the lip back along the flank, so both lips must be dubbed alike",
    formula=_set_back,
    steps=(
        let(
            "rake_change",
            "Look along the lip. The flat cuts a small triangle off the wedge. At the far end of the flat the "
            "triangle's angle is the change of rake.",
            lambda s, sp: s.normal_rake - s.dub_normal_rake,
        ),
        read_off(
            "The flat lies across from the wedge angle, and the piece lost from the flank across from the change of "
            "rake. Sides are as the sines of the angles across from them.",
            lambda s, sp: s.dub_set_back * sp.sin(s.wedge_angle),
            lambda s, sp: s.dub_width * sp.sin(s.rake_change),
        ),
        follow("Divide by the sine of the wedge angle.", lambda s, sp: s.dub_set_back, _set_back),
    ),
    assumptions=(_FLAT, "Flute and flank are straight over so short a way, seen along the lip."),
    sources=_SOURCES,
    limits=(
        Limit(
            "dub_width",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "no flat, no set-back",
        ),
        Limit(
            "dub_normal_rake",
            lambda s, sp: s.normal_rake,
            lambda s, sp: sp.Integer(0),
            "a flat in the flute's own face takes nothing off",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.normal_rake - s.dub_normal_rake,
            "the flat's rake {dub_normal_rake} is not less than the flute's own {normal_rake} here: there is nothing "
            "to take off; give a flat with less rake",
            allows_zero=True,
        ),
    ),
)

RELATIONS: tuple[Relation, ...] = (dub_normal_rake, dub_wedge_angle, least_dub_width, dub_set_back)
"""What the chapter on rake says of a dubbed lip."""
