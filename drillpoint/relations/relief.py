"""Relief: how the flank falls away behind the lip, at the corner, along the lip, and round to the heel.

A relief angle needs a place and a plane. `lip_relief` is at the outer corner in the plane that touches the cylinder
there. `axial_relief` is square to the lip, in a plane parallel to the drill axis.
"""

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relations import relief_at_work

_PLANE = "Each flank is one plane through its straight lip."
_SOURCES = ("Follows from the drawing alone.", "BS 328 for measuring lip relief at the periphery of the drill.")

axial_relief = Relation(
    name="axial_relief",
    result="axial_relief",
    givens=("lip_relief", "point_angle", "web_ratio"),
    says="part of the relief seen at the outer corner comes from the slope of the lip itself; the rest is this",
    formula=lambda s, sp: sp.atan((sp.tan(s.lip_relief) - s.web_ratio * sp.cot(s.kappa)) / sp.sqrt(1 - s.web_ratio**2)),
    steps=(
        let(
            "v_x",
            "Stand at the outer corner. The web puts it an angle ω round from the lip's direction, sin ω = u. Going "
            "back round the drill, a step moves outwards along the lip by sin ω",
            lambda s, sp: sp.sin(s.omega),
        ),
        let("v_y", "and back from the lip by cos ω.", lambda s, sp: -sp.cos(s.omega)),
        read_off(
            "The flank falls by cot κ outwards and by tan α_x backwards. Along the step it falls by the lip relief.",
            lambda s, sp: sp.tan(s.lip_relief),
            lambda s, sp: s.local("v_x") * sp.cot(s.kappa) - s.local("v_y") * sp.tan(s.axial_relief),
        ),
        follow(
            "Put in sin ω = u and cos ω = √(1 − u²).",
            lambda s, sp: sp.tan(s.lip_relief),
            lambda s, sp: s.web_ratio * sp.cot(s.kappa) + sp.sqrt(1 - s.web_ratio**2) * sp.tan(s.axial_relief),
        ),
        follow(
            "Solve for the relief square to the lip.",
            lambda s, sp: sp.tan(s.axial_relief),
            lambda s, sp: (sp.tan(s.lip_relief) - s.web_ratio * sp.cot(s.kappa)) / sp.sqrt(1 - s.web_ratio**2),
        ),
        follow(
            "Take the angle.",
            lambda s, sp: s.axial_relief,
            lambda s, sp: sp.atan((sp.tan(s.lip_relief) - s.web_ratio * sp.cot(s.kappa)) / sp.sqrt(1 - s.web_ratio**2)),
        ),
    ),
    assumptions=(_PLANE,),
    sources=_SOURCES,
    limits=(
        Limit(
            "web_ratio",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.lip_relief,
            "without a web the two planes are the same plane",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.atan(sp.tan(s.lip_relief) / sp.sqrt(1 - s.web_ratio**2)),
            "on a flat end the lip does not slope",
            False,
        ),
    ),
    stands_in=True,
)

lip_relief = Relation(
    name="lip_relief",
    result="lip_relief",
    givens=("axial_relief", "point_angle", "web_ratio"),
    says="the relief at the outer corner: the relief square to the lip, plus a part that the lip's own slope adds",
    formula=lambda s, sp: sp.atan(s.web_ratio * sp.cot(s.kappa) + sp.sqrt(1 - s.web_ratio**2) * sp.tan(s.axial_relief)),
    steps=(
        *axial_relief.steps[:4],
        follow(
            "Take the angle.",
            lambda s, sp: s.lip_relief,
            lambda s, sp: sp.atan(s.web_ratio * sp.cot(s.kappa) + sp.sqrt(1 - s.web_ratio**2) * sp.tan(s.axial_relief)),
        ),
    ),
    assumptions=(_PLANE,),
    sources=_SOURCES,
    limits=(
        Limit(
            "web_ratio",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.axial_relief,
            "without a web the two planes are the same plane",
        ),
        Limit(
            "axial_relief",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.atan(s.web_ratio * sp.cot(s.point_angle / 2)),
            "what is left is the part that comes from the slope of the lip",
        ),
    ),
    stands_in=True,
)

relief_at_radius = Relation(
    name="relief_at_radius",
    result="relief_at_radius",
    givens=("radius", "web", "point_angle", "axial_relief"),
    says="nearer to the axis a plane flank has more relief, since the web turns the lip away from the radius",
    formula=lambda s, sp: sp.atan(
        s.t / s.radius * sp.cot(s.kappa) + sp.sqrt(1 - (s.t / s.radius) ** 2) * sp.tan(s.axial_relief)
    ),
    steps=(
        let(
            "v_x",
            "Stand at a place on the lip, r from the axis. Going back round the axis, a step moves outwards along the "
            "lip by t/r",
            lambda s, sp: s.t / s.radius,
        ),
        let(
            "v_y",
            "and back from the lip by the rest of the unit step.",
            lambda s, sp: -sp.sqrt(1 - (s.t / s.radius) ** 2),
        ),
        read_off(
            "The flank falls by cot κ outwards and by tan α_x backwards. Along the step it falls by the relief there.",
            lambda s, sp: sp.tan(s.relief_at_radius),
            lambda s, sp: s.local("v_x") * sp.cot(s.kappa) - s.local("v_y") * sp.tan(s.axial_relief),
        ),
        follow(
            "Put in both parts of the step and take the angle.",
            lambda s, sp: s.relief_at_radius,
            lambda s, sp: sp.atan(
                s.t / s.radius * sp.cot(s.kappa) + sp.sqrt(1 - (s.t / s.radius) ** 2) * sp.tan(s.axial_relief)
            ),
        ),
    ),
    assumptions=(
        _PLANE,
        "The place is on the lip, which ends at the chisel edge's corner, half a chisel edge from the axis.",
        "The feed is left out: this is the relief of the drill at rest.",
    ),
    sources=_SOURCES,
    limits=(
        Limit(
            "web",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.axial_relief,
            "without a web the relief is the same everywhere",
        ),
        Limit(
            "radius",
            lambda s, sp: s.web / 2,
            lambda s, sp: sp.pi / 2 - s.point_angle / 2,
            "half a web from the axis the step goes straight down the lip",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.atan(sp.sqrt(1 - (s.web / 2 / s.radius) ** 2) * sp.tan(s.axial_relief)),
            "on a flat end the lip does not slope",
            False,
        ),
    ),
    cautions=(
        Condition(
            lambda s, sp: s.radius * sp.sin(s.delta_plane) - s.t,
            "radius {radius} lies inside the corner of the chisel edge, where there is no lip any more",
            allows_zero=True,
        ),
    ),
    stands_in=True,
)

heel_clearance = Relation(
    name="heel_clearance",
    result="heel_clearance",
    givens=("point_angle", "axial_relief", "web_ratio"),
    says="behind the corner a plane flank falls, turns and rises again; past this angle it stands above the corner",
    formula=lambda s, sp: sp.pi - 2 * s.delta_plane + 2 * s.omega,
    steps=(
        let(
            "θ_h",
            "Go back round the drill from the outer corner, at ω from the lip's direction, by an angle q.",
            lambda s, sp: s.omega - s.heel_clearance,
        ),
        let(
            "z_c",
            "The flank's height at the corner, for a drill of radius 1:",
            lambda s, sp: -sp.cos(s.omega) * sp.cot(s.kappa) + sp.sin(s.omega) * sp.tan(s.axial_relief),
        ),
        let(
            "z_h",
            "and at the end of the way:",
            lambda s, sp: -sp.cos(s.local("θ_h")) * sp.cot(s.kappa) + sp.sin(s.local("θ_h")) * sp.tan(s.axial_relief),
        ),
        read_off(
            "The clearance ends where the flank has come up again to the height of the corner.",
            lambda s, sp: s.local("z_h"),
            lambda s, sp: s.local("z_c"),
        ),
        read_off(
            "Both heights are one wave, steepest across the chisel edge. The chisel edge of a plane flank stands at δ.",
            lambda s, sp: sp.tan(s.delta_plane),
            lambda s, sp: sp.cot(s.kappa) / sp.tan(s.axial_relief),
        ),
        follow(
            "Written as one sine, the two heights are equal when these are.",
            lambda s, sp: sp.sin(s.local("θ_h") - s.delta_plane),
            lambda s, sp: sp.sin(s.omega - s.delta_plane),
        ),
        follow(
            "A sine has the same value twice, as far before its lowest place as behind it.",
            lambda s, sp: (s.local("θ_h") - s.delta_plane) + (s.omega - s.delta_plane),
            lambda s, sp: -sp.pi,
        ),
        follow(
            "Put in ω − q and solve for q.",
            lambda s, sp: s.heel_clearance,
            lambda s, sp: sp.pi - 2 * s.delta_plane + 2 * s.omega,
        ),
    ),
    assumptions=(
        _PLANE,
        "The drill is not fed: with feed the flank rubs a little earlier.",
        "The land is as wide as it may be; where it ends sooner the heel is clear.",
    ),
    sources=_SOURCES,
    limits=(
        Limit(
            "axial_relief",
            lambda s, sp: -sp.atan(s.web_ratio / sp.sqrt(1 - s.web_ratio**2) * sp.cot(s.point_angle / 2)),
            lambda s, sp: sp.Integer(0),
            "with no lip relief at the corner the flank rises at once",
        ),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.pi + 2 * sp.asin(s.web_ratio),
            "on a flat end with relief square to the lip, half a turn and a little more is clear",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: sp.pi - 2 * s.delta_plane + 2 * s.omega,
            "with a relief of {axial_relief} square to the lip there is no relief at the outer corner: the flank rises "
            "straight behind it and nothing clears; give more lip relief",
            allows_zero=True,
        ),
    ),
)


def _ahead(fall: float) -> tuple[str, ...]:
    if fall >= 0:
        return ()
    return ("below zero the flank stands ahead of its lip: the heel meets the work first and the lip cannot cut",)


flank_fall = Relation(
    name="flank_fall",
    result="flank_fall",
    givens=("radius", "relief_at_radius", "turn_share"),
    says="how far the flank has fallen away a part of a turn behind the lip, if it keeps its slope",
    formula=lambda s, sp: 2 * sp.pi * s.radius * s.turn_share * sp.tan(s.relief_at_radius),
    steps=(
        let(
            "c",
            "Behind the lip, the way round at the radius r is this part of the circle.",
            lambda s, sp: 2 * sp.pi * s.radius * s.turn_share,
        ),
        read_off(
            "Unroll it: the flank falls along it at the relief angle.",
            lambda s, sp: s.flank_fall / s.local("c"),
            lambda s, sp: sp.tan(s.relief_at_radius),
        ),
        follow(
            "Multiply by the way.",
            lambda s, sp: s.flank_fall,
            lambda s, sp: 2 * sp.pi * s.radius * s.turn_share * sp.tan(s.relief_at_radius),
        ),
    ),
    assumptions=(
        (
            "The flank keeps its slope round the axis, as a screw does. A plane flank does not: it falls ever less and "
            "comes up again (see the heel clearance)."
        ),
        "The drill is not fed.",
    ),
    sources=("Follows from the drawing alone.",),
    limits=(
        Limit(
            "relief_at_radius",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "without relief the flank stays level with the lip",
        ),
        Limit(
            "turn_share",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "at the lip itself nothing has fallen yet",
        ),
    ),
    notes=_ahead,
)

CHAPTER: tuple[Relation, ...] = (
    axial_relief,
    lip_relief,
    relief_at_radius,
    heel_clearance,
    flank_fall,
    *relief_at_work.RELATIONS,
)
