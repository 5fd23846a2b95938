"""The helix of the flute: its lead, and how it runs steeper towards the axis."""

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off

DRAWING = "Follows from the drawing alone."

lead = Relation(
    name="lead",
    result="lead",
    givens=("diameter", "helix_angle"),
    says="how far the flute goes along the drill in one turn",
    formula=lambda s, sp: sp.pi * s.diameter / sp.tan(s.helix_angle),
    steps=(
        let(
            "c",
            "Roll the drill on paper. The flute's edge draws a straight line; in one turn the drill rolls on by its "
            "circumference.",
            lambda s, sp: sp.pi * s.diameter,
        ),
        read_off(
            "The line leaves the axis at the helix angle: over the lead it goes aside by the circumference.",
            lambda s, sp: s.lead * sp.tan(s.helix_angle),
            lambda s, sp: s.local("c"),
        ),
        follow(
            "Put in the circumference and divide.",
            lambda s, sp: s.lead,
            lambda s, sp: sp.pi * s.diameter / sp.tan(s.helix_angle),
        ),
    ),
    assumptions=("The helix angle is that of the outside diameter.", "The flute has the same lead all along."),
    sources=(DRAWING,),
    limits=(
        Limit(
            "diameter",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "for the same helix angle a thin drill has a short lead",
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.helix_angle,
            "with a helix angle of {helix_angle} the flute is straight and has no lead; give more than 0°",
        ),
    ),
)

local_helix = Relation(
    name="local_helix",
    result="local_helix",
    givens=("helix_angle", "radius", "diameter"),
    says="nearer to the axis the same flute runs steeper: the helix angle falls towards nothing",
    formula=lambda s, sp: sp.atan(s.radius / s.R * sp.tan(s.helix_angle)),
    steps=(
        let(
            "p",
            "Go up the flute. For each millimetre along the axis it turns by so much (as an angle in radians): at the "
            "outside, R from the axis, that turn is tan β to the side.",
            lambda s, sp: sp.tan(s.helix_angle) / s.R,
        ),
        read_off(
            "At the radius r the same turn goes r times as far to the side.",
            lambda s, sp: sp.tan(s.local_helix),
            lambda s, sp: s.radius * s.local("p"),
        ),
        follow(
            "Put in the turn and take the angle.",
            lambda s, sp: s.local_helix,
            lambda s, sp: sp.atan(s.radius / s.R * sp.tan(s.helix_angle)),
        ),
    ),
    assumptions=("The flute has one lead from the axis to the outside.",),
    sources=(DRAWING,),
    limits=(
        Limit(
            "radius",
            lambda s, sp: s.diameter / 2,
            lambda s, sp: s.helix_angle,
            "at the outer corner it is the helix angle",
            False,
        ),
        Limit(
            "radius", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "at the axis the flute only goes along"
        ),
    ),
    stands_in=True,
)

RELATIONS: tuple[Relation, ...] = (lead, local_helix)
"""What the chapter on rake says of the flute by itself."""
