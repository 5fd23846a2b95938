"""The web: its thickness in millimetres and as a share of the diameter."""

from drillpoint.relation import Limit, Relation, follow, read_off

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

CHAPTER: tuple[Relation, ...] = (web_ratio, web_from_ratio)
