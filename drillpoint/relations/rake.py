"""Rake along the lip: how the lip leans, and how the flute's face stands to the way it moves.

A rake angle needs a place and a plane. Here the place is on the lip, at a radius. The plane is square to the lip
(normal rake) or holds the way the place moves (orthogonal rake). The names are those of ISO 3002-1 for tool angles: the
drill by itself, turning and not fed.
"""

from types import ModuleType
from typing import Any

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols
from drillpoint.relations import dubbing, helix, wedge
from drillpoint.relations.wedge import NOT_FED, tilt_of_the_movement

STRAIGHT_LIP = (
    "The flute's face is the one a straight lip makes when it is screwed along the drill: the point is ground to the "
    "angle the flute was made for."
)
DRAWING = "Follows from the drawing alone."


def _inclination(s: Symbols, sp: ModuleType) -> Any:
    return sp.asin(s.t / s.radius * sp.sin(s.kappa))


lip_inclination = Relation(
    name="lip_inclination",
    result="lip_inclination",
    givens=("radius", "web", "point_angle"),
    says="the web sets the lip beside the axis, so that it does not cut square on; near the centre it slices most",
    formula=_inclination,
    steps=(
        let(
            "m",
            "Seen from the tip, a place on the lip moves square to its radius. The web turns that way along the lip "
            "by t/r.",
            lambda s, sp: s.t / s.radius,
        ),
        let(
            "l",
            "The lip itself slopes. For one millimetre of it, sin κ is seen from the tip.",
            lambda s, sp: sp.sin(s.kappa),
        ),
        read_off(
            "The share of the movement that goes along the lip is both together. It is the sine of the inclination.",
            lambda s, sp: sp.sin(s.lip_inclination),
            lambda s, sp: s.local("l") * s.local("m"),
        ),
        follow("Put both in and take the angle.", lambda s, sp: s.lip_inclination, _inclination),
    ),
    assumptions=("The lip is straight and lies half a web beside the axis.", NOT_FED),
    sources=(DRAWING, "ISO 3002-1 for the tool cutting edge inclination, from memory; here its size, without sign."),
    limits=(
        Limit("web", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "without a web the lip cuts square on"),
        Limit(
            "radius",
            lambda s, sp: s.web / 2,
            lambda s, sp: s.point_angle / 2,
            "half a web from the axis the movement, seen from the tip, goes along the lip",
        ),
    ),
    stands_in=True,
)


def _normal_rake(s: Symbols, sp: ModuleType) -> Any:
    back = sp.tan(s.local_helix) * sp.cos(s.omega_r)
    down = sp.sin(s.kappa) - sp.tan(s.local_helix) * sp.sin(s.omega_r) * sp.cos(s.kappa)
    return sp.atan(back / down) - tilt_of_the_movement(s, sp)


normal_rake = Relation(
    name="normal_rake",
    result="normal_rake",
    givens=("local_helix", "radius", "web", "point_angle"),
    says="about the helix angle at the outer corner, less and less inwards, and well below zero near the chisel edge",
    formula=_normal_rake,
    steps=(
        let(
            "b",
            "Look along the lip, so that it is a dot. The flute's face runs through it. Go up the face by one "
            "millimetre along the axis: it goes back round by tan β_r. Of that, so much is seen going back:",
            lambda s, sp: sp.tan(s.local_helix) * sp.cos(s.omega_r),
        ),
        let(
            "c",
            "and so much going away from the tip, since the lip slopes at κ and the web turns the step by ω_r.",
            lambda s, sp: sp.sin(s.kappa) - sp.tan(s.local_helix) * sp.sin(s.omega_r) * sp.cos(s.kappa),
        ),
        let(
            "γ_1",
            "The face leans back by this from a face that stands square to the lip's own side view.",
            lambda s, sp: sp.atan(s.local("b") / s.local("c")),
        ),
        let(
            "γ_2",
            "But the place on the lip does not move straight across it. It moves round the axis, ω_r aside. Seen along "
            "the lip that way is tilted by this.",
            tilt_of_the_movement,
        ),
        read_off(
            "Rake is counted from square to the movement, so the tilt comes off.",
            lambda s, sp: s.normal_rake,
            lambda s, sp: s.local("γ_1") - s.local("γ_2"),
        ),
        follow("Put both angles in.", lambda s, sp: s.normal_rake, _normal_rake),
    ),
    assumptions=(STRAIGHT_LIP, NOT_FED, "The lip has not been thinned or dubbed at this place."),
    sources=(DRAWING, "ISO 3002-1 for the plane square to the cutting edge, from memory."),
    limits=(
        Limit(
            "web",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.atan(sp.tan(s.local_helix) / sp.sin(s.point_angle / 2)),
            "without a web only the helix and the slope of the lip count",
        ),
        Limit(
            "radius",
            lambda s, sp: s.web / 2,
            lambda s, sp: -sp.pi / 2,
            "half a web from the axis the face goes ahead flat over the work",
        ),
        Limit(
            "local_helix",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: -sp.atan(sp.tan(sp.asin(s.web / 2 / s.radius)) * sp.cos(s.point_angle / 2)),
            "with a straight flute only the web's share is left, below zero",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.atan(sp.tan(s.local_helix) * sp.cos(sp.asin(s.web / 2 / s.radius))),
            "on a flat end the movement is not tilted",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: sp.sin(s.kappa) - sp.tan(s.local_helix) * sp.sin(sp.asin(s.t / s.radius)) * sp.cos(s.kappa),
            "with a local helix angle of {local_helix} at radius {radius} the flute would run along the lip and leave "
            "no metal behind it; a helix angle up to 45° and a web up to a third of the diameter are usual",
        ),
    ),
    stands_in=True,
)

orthogonal_rake = Relation(
    name="orthogonal_rake",
    result="orthogonal_rake",
    givens=("normal_rake", "lip_inclination"),
    says="the same face looks steeper along the way it moves than square to the lip, since the lip slices",
    formula=lambda s, sp: sp.atan(sp.tan(s.normal_rake) / sp.cos(s.lip_inclination)),
    steps=(
        let(
            "d_n",
            "Go one millimetre up from the lip, square to the lip and to its movement. Square to the lip, the face has "
            "by then gone back by this.",
            lambda s, sp: sp.tan(s.normal_rake),
        ),
        read_off(
            "The lip stands at λ to square. Going back along the movement instead, the way to the same line of the "
            "face is the slanting side: its share square to the lip is cos λ of it.",
            lambda s, sp: sp.tan(s.orthogonal_rake) * sp.cos(s.lip_inclination),
            lambda s, sp: s.local("d_n"),
        ),
        follow(
            "Divide and take the angle.",
            lambda s, sp: s.orthogonal_rake,
            lambda s, sp: sp.atan(sp.tan(s.normal_rake) / sp.cos(s.lip_inclination)),
        ),
    ),
    assumptions=(
        "The plane holds the way the place moves and is square to both the reference plane and the cutting edge plane.",
        NOT_FED,
    ),
    sources=(DRAWING, "ISO 3002-1 for the orthogonal plane and for this conversion, from memory."),
    limits=(
        Limit(
            "lip_inclination",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.normal_rake,
            "where the lip cuts square on, both planes are the same",
        ),
        Limit(
            "normal_rake",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "a face square to the movement is so in every plane",
        ),
    ),
)


CHAPTER: tuple[Relation, ...] = (
    *helix.RELATIONS,
    lip_inclination,
    normal_rake,
    orthogonal_rake,
    *wedge.RELATIONS,
    *dubbing.RELATIONS,
)
