"""The web: how thick it is, how it grows as the drill is ground back, how it is thinned or spared by a pilot."""

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relations import thinning

_SOURCES = (
    "A definition.",
    "Common practice: the web at the point is about an eighth of the diameter, more on small drills.",
)
_ASSUMPTIONS = ("The web is measured at the point.",)

web_ratio = Relation(
    name="web_ratio",
    result="web_ratio",
    givens=("web", "diameter"),
    says="the web as a share of the diameter; angles depend on the share, not on the size",
    formula=lambda s, sp: s.web / s.diameter,
    steps=(
        read_off(
            "The web ratio is the web divided by the diameter.",
            lambda s, sp: s.web_ratio,
            lambda s, sp: s.web / s.diameter,
        ),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(Limit("web", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no web, no share"),),
    stands_in=True,
)

web_from_ratio = Relation(
    name="web_from_ratio",
    result="web",
    givens=("web_ratio", "diameter"),
    says="the web in millimetres from its share of the diameter",
    formula=lambda s, sp: s.web_ratio * s.diameter,
    steps=(
        read_off(
            "The web ratio is the web divided by the diameter.",
            lambda s, sp: s.web_ratio,
            lambda s, sp: s.web / s.diameter,
        ),
        follow("Multiply by the diameter.", lambda s, sp: s.web, lambda s, sp: s.web_ratio * s.diameter),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(Limit("web_ratio", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no share, no web"),),
    stands_in=True,
)

web_after_shortening = Relation(
    name="web_after_shortening",
    result="web_after_shortening",
    givens=("web", "web_taper", "length_removed"),
    says="the web thickens towards the shank, so a drill that has been ground shorter has a thicker web at its point",
    formula=lambda s, sp: s.web + s.web_taper * s.length_removed,
    steps=(
        let(
            "g",
            "Each millimetre ground off brings a place to the point where the web is thicker by the taper. Over the "
            "whole length removed it grows by this much.",
            lambda s, sp: s.web_taper * s.length_removed,
        ),
        read_off(
            "What the web was, and what it has grown, make the web at the new point.",
            lambda s, sp: s.web_after_shortening,
            lambda s, sp: s.web + s.local("g"),
        ),
        follow(
            "Put in the growth.",
            lambda s, sp: s.web_after_shortening,
            lambda s, sp: s.web + s.web_taper * s.length_removed,
        ),
    ),
    assumptions=(
        "The taper is the same all along the flute.",
        "Both webs are measured at the point and before any thinning.",
    ),
    sources=(
        "Follows from the drawing alone.",
        "A web taper of 1.4 mm to 2.0 mm per 100 mm is printed as usual (seen in a secondary source).",
        "Model Engineer, 20 April 1916: the web grows as the drill wears back; thin it (seen in an abridged copy).",
    ),
    limits=(
        Limit(
            "length_removed", lambda s, sp: sp.Integer(0), lambda s, sp: s.web, "nothing ground off, nothing changed"
        ),
        Limit("web_taper", lambda s, sp: sp.Integer(0), lambda s, sp: s.web, "a web without taper stays as it is"),
    ),
)

pilot_diameter = Relation(
    name="pilot_diameter",
    result="pilot_diameter",
    givens=("web", "chisel_edge_angle"),
    says="the least pilot hole that leaves the chisel edge nothing to do is as wide as the chisel edge is long",
    formula=lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
    steps=(
        read_off(
            "Look at the point from the tip. The chisel edge crosses the web, W, at the angle ψ to the lips.",
            lambda s, sp: s.local("C") * sp.sin(s.chisel_edge_angle),
            lambda s, sp: s.web,
        ),
        let("C", "So it is this long.", lambda s, sp: s.web / sp.sin(s.chisel_edge_angle)),
        read_off(
            "Turning, the chisel edge sweeps a circle as wide as itself. A pilot hole of that width takes it all away.",
            lambda s, sp: s.pilot_diameter,
            lambda s, sp: s.local("C"),
        ),
        follow(
            "Put in the chisel edge.",
            lambda s, sp: s.pilot_diameter,
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
        ),
    ),
    assumptions=(
        "The pilot hole lies on the drill's axis.",
        "The chisel edge is straight in the end view and not thinned.",
        "This is the least; a pilot much wider than this lets the drill's lips grab at its rim.",
    ),
    sources=(
        "Follows from the drawing alone.",
        "Common practice: a pilot about the size of the chisel edge, and at most half the drill.",
    ),
    limits=(
        Limit("web", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "without a web no pilot is needed"),
        Limit(
            "chisel_edge_angle",
            lambda s, sp: sp.pi / 2,
            lambda s, sp: s.web,
            "a chisel edge square to the lips is as long as the web is thick",
        ),
    ),
)


def _cover(cover: float) -> tuple[str, ...]:
    if cover >= 1:
        return ()
    return ("under 1 the ends of the chisel edge stand outside the pilot hole and must still be pushed through",)


pilot_cover = Relation(
    name="pilot_cover",
    result="pilot_cover",
    givens=("pilot_diameter", "web", "chisel_edge_angle"),
    says="a pilot hole covers the chisel edge when it is at least as wide; this is how many times it does",
    formula=lambda s, sp: s.pilot_diameter * sp.sin(s.chisel_edge_angle) / s.web,
    steps=(
        read_off(
            "Look at the point from the tip. The chisel edge crosses the web, W, at the angle ψ to the lips.",
            lambda s, sp: s.local("C") * sp.sin(s.chisel_edge_angle),
            lambda s, sp: s.web,
        ),
        let("C", "So it is this long.", lambda s, sp: s.web / sp.sin(s.chisel_edge_angle)),
        read_off(
            "The cover is the pilot's width over the chisel edge's length.",
            lambda s, sp: s.pilot_cover * s.local("C"),
            lambda s, sp: s.pilot_diameter,
        ),
        follow(
            "Put in the chisel edge and divide.",
            lambda s, sp: s.pilot_cover,
            lambda s, sp: s.pilot_diameter * sp.sin(s.chisel_edge_angle) / s.web,
        ),
    ),
    assumptions=("The pilot hole lies on the drill's axis.", "The chisel edge is straight in the end view."),
    sources=(
        "Follows from the drawing alone.",
        (
            "Common practice, to hold against it: a pilot of a third of the drill. At a chisel edge angle of 125° that "
            "stops covering the chisel edge where the web is more than 0.273 of the diameter."
        ),
    ),
    limits=(
        Limit("pilot_diameter", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no pilot, no cover"),
        Limit(
            "chisel_edge_angle",
            lambda s, sp: sp.pi / 2,
            lambda s, sp: s.pilot_diameter / s.web,
            "square to the lips the chisel edge is as long as the web is thick",
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.web,
            "without a web, {web}, there is no chisel edge to cover; an eighth of the diameter is a usual web",
        ),
    ),
    notes=_cover,
)

CHAPTER: tuple[Relation, ...] = (
    web_ratio,
    web_from_ratio,
    web_after_shortening,
    pilot_diameter,
    pilot_cover,
    *thinning.RELATIONS,
)
