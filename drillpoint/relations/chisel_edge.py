"""The chisel edge: how long it is, and how the relief of a plane flank turns it."""

from drillpoint.relation import Limit, Relation, follow, let, read_off

chisel_edge_length = Relation(
    name="chisel_edge_length",
    result="chisel_edge_length",
    givens=("web", "chisel_edge_angle"),
    says="the chisel edge is longer than the web is thick, because it crosses the web at a slant",
    formula=lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
    steps=(
        read_off(
            "Look at the point from the tip. The chisel edge crosses the web from one lip's line to the other's. Those "
            "lines are W apart, and the chisel edge stands at ψ to them.",
            lambda s, sp: s.chisel_edge_length * sp.sin(s.chisel_edge_angle),
            lambda s, sp: s.web,
        ),
        follow(
            "Divide by the sine. It is the same for ψ and for its supplement, so either reading serves here.",
            lambda s, sp: s.chisel_edge_length,
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
        ),
    ),
    assumptions=("The chisel edge is straight in the end view.", "The web is measured at the point."),
    sources=(
        "Follows from the drawing alone.",
        "BS 328 for measuring the chisel edge angle as the obtuse one.",
    ),
    limits=(
        Limit("web", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "without a web there is no chisel edge"),
        Limit(
            "chisel_edge_angle",
            lambda s, sp: sp.pi / 2,
            lambda s, sp: s.web,
            "square to the lips it is as long as the web is thick",
        ),
    ),
)


def _leaning_back(angle: float) -> tuple[str, ...]:
    if angle >= 90:
        return ()
    return ("under 90° here means that the flank stands above its lip at the centre: it rubs and cannot cut",)


chisel_edge_angle = Relation(
    name="chisel_edge_angle",
    result="chisel_edge_angle",
    givens=("point_angle", "axial_relief"),
    says="on plane flanks the relief alone turns the chisel edge: more relief, a larger (obtuse) chisel edge angle",
    formula=lambda s, sp: sp.pi - sp.atan2(sp.cot(s.kappa), sp.tan(s.axial_relief)),
    steps=(
        let(
            "y",
            "Take a place on the chisel edge, x along the lips and y across them. The chisel edge runs through the "
            "axis at δ to the lips.",
            lambda s, sp: s.local("x") * sp.tan(s.delta),
        ),
        let(
            "z_1",
            "Flank 1 falls from the axis outwards by cot κ and, square to its lip, by tan α_x. Its height over that "
            "place:",
            lambda s, sp: (
                s.local("z_0") - s.local("x") * sp.cot(s.kappa) + (s.local("y") - s.t) * sp.tan(s.axial_relief)
            ),
        ),
        let(
            "z_2",
            "Flank 2 is flank 1 turned half round, so x and y change sign.",
            lambda s, sp: (
                s.local("z_0") + s.local("x") * sp.cot(s.kappa) + (-s.local("y") - s.t) * sp.tan(s.axial_relief)
            ),
        ),
        read_off(
            "The chisel edge is where the two flanks meet, so there they are equally high.",
            lambda s, sp: s.local("z_1"),
            lambda s, sp: s.local("z_2"),
        ),
        follow(
            "Everything they have in common drops out.",
            lambda s, sp: s.local("y") * sp.tan(s.axial_relief),
            lambda s, sp: s.local("x") * sp.cot(s.kappa),
        ),
        follow(
            "The chisel edge rises by y over x.",
            lambda s, sp: sp.tan(s.delta),
            lambda s, sp: sp.cot(s.kappa) / sp.tan(s.axial_relief),
        ),
        follow(
            "The chisel edge angle is the obtuse one, ψ = 180° − δ.",
            lambda s, sp: s.chisel_edge_angle,
            lambda s, sp: sp.pi - sp.atan2(sp.cot(s.kappa), sp.tan(s.axial_relief)),
        ),
    ),
    assumptions=(
        "Each flank is one plane. A curved flank or a second facet gives another chisel edge for the same lip relief.",
        "Both flanks are ground alike.",
    ),
    sources=(
        "Follows from the drawing alone.",
        "BS 328 for measuring the chisel edge angle as the obtuse one.",
        (
            "Training manuals ask for 8° to 15° of lip relief and a chisel edge of 120° to 135° together (US Army "
            "TC 9-524 and US Navy NAVEDTRA 12204-A, both from memory); one plane flank cannot give both."
        ),
    ),
    limits=(
        Limit(
            "axial_relief",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.pi / 2,
            "without relief square to the lip the chisel edge stands square to the lips",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.pi,
            "on a flat end any relief lays the chisel edge along the lips",
            False,
        ),
    ),
    notes=_leaning_back,
)

chisel_edge_rake = Relation(
    name="chisel_edge_rake",
    result="chisel_edge_rake",
    givens=("point_angle", "chisel_edge_angle"),
    says="the chisel edge meets the work with its flank leaning far ahead, so it presses more than it cuts",
    formula=lambda s, sp: -sp.atan(sp.tan(s.kappa) * sp.sin(s.chisel_edge_angle)),
    steps=(
        let(
            "g",
            "Look at one flank beside the chisel edge. Along the chisel edge it is level, so it falls steepest square "
            "to it. Call that fall g; along the lip, at ψ to the chisel edge, the sine of ψ of it is left, and the lip "
            "falls by cot κ.",
            lambda s, sp: sp.cot(s.kappa) / sp.sin(s.chisel_edge_angle),
        ),
        read_off(
            "The flank ahead of the chisel edge is its rake face. It goes one out for g down, on the forward side: its "
            "lean from the axis is a rake below zero.",
            lambda s, sp: sp.tan(-s.chisel_edge_rake),
            lambda s, sp: 1 / s.local("g"),
        ),
        follow(
            "Put in the fall.",
            lambda s, sp: sp.tan(-s.chisel_edge_rake),
            lambda s, sp: sp.tan(s.kappa) * sp.sin(s.chisel_edge_angle),
        ),
        follow(
            "Take the angle.",
            lambda s, sp: s.chisel_edge_rake,
            lambda s, sp: -sp.atan(sp.tan(s.kappa) * sp.sin(s.chisel_edge_angle)),
        ),
    ),
    assumptions=(
        "Each flank is one plane: near the axis a curved flank may fall more or less steeply.",
        "Both flanks are ground alike, and the chisel edge is not thinned.",
        "The feed is left out. Very near the axis the way into the work goes steeply down, which adds to the rake.",
    ),
    sources=(
        "Follows from the drawing alone.",
        (
            "Ernst and Haggerty 1958, The spiral point drill (abstract seen): about −56° measured on the chisel edge "
            "of a half-inch drill, 0.030 in from the centre."
        ),
    ),
    limits=(
        Limit(
            "chisel_edge_angle",
            lambda s, sp: sp.pi / 2,
            lambda s, sp: -s.point_angle / 2,
            "square to the lips the chisel edge leans as the lips do",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: -sp.pi / 2,
            "on a flat end the flank lies flat on the work",
            False,
        ),
    ),
)

CHAPTER: tuple[Relation, ...] = (chisel_edge_length, chisel_edge_angle, chisel_edge_rake)
