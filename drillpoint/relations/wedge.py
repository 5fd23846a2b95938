"""The wedge of metal between the flute's face and the flank, seen along the lip."""

from types import ModuleType
from typing import Any

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols

NOT_FED = "The drill turns and is not fed: the feed adds a little rake and takes as much relief."


def tilt_of_the_movement(s: Symbols, sp: ModuleType) -> Any:
    """Seen along the lip: how far the movement round the axis is tilted from square across the lip."""
    return sp.atan(sp.tan(s.omega_r) * sp.cos(s.kappa))


def _normal_relief(s: Symbols, sp: ModuleType) -> Any:
    return sp.atan(sp.tan(s.axial_relief) * sp.sin(s.kappa)) + tilt_of_the_movement(s, sp)


normal_relief = Relation(
    name="normal_relief",
    result="normal_relief",
    givens=("radius", "web", "point_angle", "axial_relief"),
    says="what the web takes from the rake it gives to the relief: near the centre there is more",
    formula=_normal_relief,
    steps=(
        let(
            "f_n",
            "Look along the lip. A step of one back from it, square to it in the end view, goes down the flank by "
            "tan α_x; square to the lip, so much of that is seen.",
            lambda s, sp: sp.tan(s.axial_relief) * sp.sin(s.kappa),
        ),
        let(
            "γ_2",
            "The place on the lip moves round the axis, ω_r aside. Seen along the lip that way is tilted by this, away "
            "from the flank.",
            tilt_of_the_movement,
        ),
        read_off(
            "Relief is counted from the movement, so the tilt comes on top.",
            lambda s, sp: s.normal_relief,
            lambda s, sp: sp.atan(s.local("f_n")) + s.local("γ_2"),
        ),
        follow("Put both in.", lambda s, sp: s.normal_relief, _normal_relief),
    ),
    assumptions=("Each flank is one plane through its straight lip.", NOT_FED),
    sources=("Follows from the drawing alone.", "ISO 3002-1 for the plane, from memory."),
    limits=(
        Limit(
            "web",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.atan(sp.tan(s.axial_relief) * sp.sin(s.point_angle / 2)),
            "without a web only the slope of the lip makes it differ from the relief square to the lip",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: s.axial_relief,
            "on a flat end the two planes are the same",
            False,
        ),
    ),
    stands_in=True,
)


def _wedge(s: Symbols, sp: ModuleType) -> Any:
    return sp.pi / 2 - s.normal_rake - s.normal_relief


wedge_angle = Relation(
    name="wedge_angle",
    result="wedge_angle",
    givens=("normal_rake", "normal_relief"),
    says="rake and relief are cut out of a right angle; the wedge is the metal that is left to carry the edge",
    formula=_wedge,
    steps=(
        read_off(
            "Look along the lip. From square to the movement round to the movement is a right angle. Rake, wedge and "
            "relief lie in it side by side.",
            lambda s, sp: s.normal_rake + s.wedge_angle + s.normal_relief,
            lambda s, sp: sp.pi / 2,
        ),
        follow("Take rake and relief off.", lambda s, sp: s.wedge_angle, _wedge),
    ),
    assumptions=("Rake and relief are those of the same place, both square to the lip.",),
    sources=("A definition.", "ISO 3002-1: normal rake, wedge and clearance make a right angle, from memory."),
    limits=(
        Limit(
            "normal_rake",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.pi / 2 - s.normal_relief,
            "without rake only the relief is taken off",
        ),
    ),
    conditions=(
        Condition(
            _wedge,
            "normal rake {normal_rake} and normal relief {normal_relief} together leave no metal; they must be less "
            "than 90° together",
        ),
    ),
    stands_in=True,
)

RELATIONS: tuple[Relation, ...] = (normal_relief, wedge_angle)
"""What the chapter on rake says of the metal behind the lip."""
