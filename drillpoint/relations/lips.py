"""How long the lips are, and how tall the point."""

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off

point_height = Relation(
    name="point_height",
    result="point_height",
    givens=("diameter", "point_angle"),
    says="the sharper the point angle, the taller the point: half the diameter over the tangent of half the angle",
    formula=lambda s, sp: s.R / sp.tan(s.kappa),
    steps=(
        read_off(
            "Look square to the lips. Half of the point is a right-angled triangle: the radius R across, the height h "
            "along the axis, and half the point angle, κ, at the tip.",
            lambda s, sp: sp.tan(s.kappa),
            lambda s, sp: s.R / s.point_height,
        ),
        follow(
            "Multiply by h: the height times the tangent of κ is the radius.",
            lambda s, sp: s.point_height * sp.tan(s.kappa),
            lambda s, sp: s.R,
        ),
        follow(
            "Divide by the tangent. (With the tangent on top the tip would come out nearly three times too tall.)",
            lambda s, sp: s.point_height,
            lambda s, sp: s.R / sp.tan(s.kappa),
        ),
    ),
    assumptions=(
        "The point is taken as a sharp cone through both lips; the chisel edge cuts a little off its very tip.",
        "Both halves are ground to the same angle.",
    ),
    sources=(
        "Follows from the drawing alone.",
        "Common practice: the tip of a 118° point is about 0.3 of the diameter (exactly 0.3004).",
        "ISO 5419:1982 for the terms.",
    ),
    limits=(
        Limit("point_angle", lambda s, sp: sp.pi, lambda s, sp: sp.Integer(0), "a flat end has no tip", False),
        Limit("diameter", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no drill, no tip"),
    ),
    stands_in=True,
)

corner_radius = Relation(
    name="corner_radius",
    result="radius",
    givens=("diameter",),
    says="the outer corner, where the lip ends, lies half the drill diameter from the axis",
    formula=lambda s, sp: s.diameter / 2,
    steps=(
        read_off(
            "Look at the point from the tip. The circle through both outer corners has the drill diameter: two radii.",
            lambda s, sp: 2 * s.radius,
            lambda s, sp: s.diameter,
        ),
        follow("Halve both sides.", lambda s, sp: s.radius, lambda s, sp: s.diameter / 2),
    ),
    assumptions=("The place on the lip that is looked at is the outer corner.",),
    sources=("Follows from the drawing alone.",),
    limits=(Limit("diameter", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no drill, no corner"),),
)

lip_length = Relation(
    name="lip_length",
    result="lip_length",
    givens=("diameter", "point_angle", "web", "chisel_edge_angle"),
    says="a lip runs from the chisel edge's corner to the outer corner; seen from the tip it is foreshortened by sin κ",
    formula=lambda s, sp: (sp.sqrt(s.R**2 - s.t**2) - s.t * sp.cot(s.delta)) / sp.sin(s.kappa),
    steps=(
        let(
            "x_o",
            "Look at the point from the tip. The lip lies half a web, t, beside the axis. Its outer corner is where "
            "that line meets the circle of radius R.",
            lambda s, sp: sp.sqrt(s.R**2 - s.t**2),
        ),
        read_off(
            "The chisel edge runs through the axis and meets the lip at the acute angle δ. Its corner is at x_c along "
            "the lip and t beside the axis.",
            lambda s, sp: sp.tan(s.delta),
            lambda s, sp: s.t / s.local("x_c"),
        ),
        let("x_c", "So the corner of the chisel edge is this far along.", lambda s, sp: s.t * sp.cot(s.delta)),
        let(
            "p",
            "Between the two corners lies the lip as it is seen from the tip.",
            lambda s, sp: s.local("x_o") - s.local("x_c"),
        ),
        read_off(
            "Look square to the lips. The lip slopes at κ to the axis, so across the axis it takes L·sin κ, and that "
            "is what was seen from the tip.",
            lambda s, sp: s.lip_length * sp.sin(s.kappa),
            lambda s, sp: s.local("p"),
        ),
        follow(
            "Put in both corners.",
            lambda s, sp: s.lip_length * sp.sin(s.kappa),
            lambda s, sp: sp.sqrt(s.R**2 - s.t**2) - s.t * sp.cot(s.delta),
        ),
        follow(
            "Divide by sin κ.",
            lambda s, sp: s.lip_length,
            lambda s, sp: (sp.sqrt(s.R**2 - s.t**2) - s.t * sp.cot(s.delta)) / sp.sin(s.kappa),
        ),
    ),
    assumptions=(
        "The lips are straight: the point angle is the one the flute was made for.",
        "The lips are parallel in the end view and equally far from the axis; the chisel edge runs through the axis.",
        "The web is measured at the point, before any thinning.",
    ),
    sources=(
        "Follows from the drawing alone.",
        "BS 328 for measuring the chisel edge angle as the obtuse one.",
        "ISO 5419:1982 for the terms.",
    ),
    limits=(
        Limit(
            "web",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.diameter / 2 / sp.sin(s.point_angle / 2),
            "without a web the lip runs from the axis to the corner",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.sqrt((s.diameter / 2) ** 2 - (s.web / 2) ** 2) + s.web / 2 * sp.cot(s.chisel_edge_angle),
            "on a flat end the lip is seen at its true length from the tip",
            False,
        ),
        Limit(
            "chisel_edge_angle",
            lambda s, sp: sp.pi / 2,
            lambda s, sp: sp.sqrt((s.diameter / 2) ** 2 - (s.web / 2) ** 2) / sp.sin(s.point_angle / 2),
            "a chisel edge square to the lips takes nothing off the lip",
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.diameter * sp.sin(s.chisel_edge_angle) - s.web,
            "a chisel edge at {chisel_edge_angle} across a web of {web} would reach past the drill, diameter "
            "{diameter}: no lip is left; use a thinner web or a chisel edge angle nearer 120° to 135°",
        ),
    ),
)

CHAPTER: tuple[Relation, ...] = (point_height, lip_length, corner_radius)
