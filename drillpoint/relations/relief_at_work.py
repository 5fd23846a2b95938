"""Relief at work: what the feed takes of it, and how much relief keeps the flank from rubbing."""

from types import ModuleType
from typing import Any

from drillpoint.relation import Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols

_STEADY = "The feed is the same in every part of the turn."
_DRAWING = "Follows from the drawing alone."


def _loss(s: Symbols, sp: ModuleType) -> Any:
    return sp.atan(s.feed / (2 * sp.pi * s.radius))


feed_relief_loss = Relation(
    name="feed_relief_loss",
    result="feed_relief_loss",
    givens=("feed", "radius"),
    says="the lip goes down a screw, steeper the nearer to the axis, and the relief is less by that slope",
    formula=_loss,
    steps=(
        let(
            "c",
            "In one turn a place on the lip goes once round the axis,",
            lambda s, sp: 2 * sp.pi * s.radius,
        ),
        read_off(
            "And the feed deep. Roll the way out flat: it is a slope.",
            lambda s, sp: sp.tan(s.feed_relief_loss),
            lambda s, sp: s.feed / s.local("c"),
        ),
        follow("Put in the way round and take the angle.", lambda s, sp: s.feed_relief_loss, _loss),
    ),
    assumptions=(
        _STEADY,
        "The feed is that of one turn, not of one lip: each lip goes down the whole of it in a turn.",
    ),
    sources=(_DRAWING,),
    limits=(
        Limit("feed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "without feed nothing is taken"),
        Limit(
            "radius",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.pi / 2,
            "at the axis the way goes straight down",
        ),
    ),
    stands_in=True,
)


def _rubbing(angle: float) -> tuple[str, ...]:
    if angle > 0:
        return ()
    return ("no relief is left at work: the flank rubs here; give more lip relief or less feed",)


working_relief = Relation(
    name="working_relief",
    result="working_relief",
    givens=("relief_at_radius", "feed_relief_loss"),
    says="what the feed leaves of the relief; where nothing is left the flank rubs and the lip cannot go in",
    formula=lambda s, sp: s.relief_at_radius - s.feed_relief_loss,
    steps=(
        read_off(
            "Unroll the cylinder through the place. The flank falls away behind the lip by α, the work by the slope of "
            "the screw, η. What lies between them is the working relief.",
            lambda s, sp: s.working_relief + s.feed_relief_loss,
            lambda s, sp: s.relief_at_radius,
        ),
        follow(
            "Take the slope of the screw off.",
            lambda s, sp: s.working_relief,
            lambda s, sp: s.relief_at_radius - s.feed_relief_loss,
        ),
    ),
    assumptions=(
        "Both angles are those of the same radius, in the plane that touches the cylinder there.",
        _STEADY,
        "The flank just behind the lip is looked at; its heel may touch where the lip is clear.",
    ),
    sources=(_DRAWING,),
    limits=(
        Limit(
            "feed_relief_loss",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.relief_at_radius,
            "without feed all the relief is left",
        ),
    ),
    notes=_rubbing,
)


def _least(s: Symbols, sp: ModuleType) -> Any:
    return sp.atan(s.feed / (sp.pi * s.diameter)) + s.relief_margin


least_lip_relief = Relation(
    name="least_lip_relief",
    result="least_lip_relief",
    givens=("feed", "diameter", "relief_margin"),
    says="the outer corner needs the slope of the feed and a margin above it",
    formula=_least,
    steps=(
        let(
            "η_R",
            "The outer corner goes round on the whole diameter and down by the feed. That slope is taken.",
            lambda s, sp: sp.atan(s.feed / (sp.pi * s.diameter)),
        ),
        read_off(
            "The margin is what must be left.",
            lambda s, sp: s.least_lip_relief - s.local("η_R"),
            lambda s, sp: s.relief_margin,
        ),
        follow("Put the slope in.", lambda s, sp: s.least_lip_relief, _least),
    ),
    assumptions=(
        _STEADY,
        (
            "Only the outer corner is looked at. A plane flank has more relief further in; a curved flank may have "
            "less: look at the working relief along the lip."
        ),
        "With a margin of 0° the flank just touches the work; with less relief it rubs.",
    ),
    sources=(
        _DRAWING,
        "Common practice asks for some degrees more than this: published lip reliefs run from 7° to 24°.",
    ),
    limits=(
        Limit(
            "feed",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.relief_margin,
            "without feed the margin is all that is needed",
        ),
        Limit(
            "relief_margin",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.atan(s.feed / (sp.pi * s.diameter)),
            "with no margin the flank just touches the work",
        ),
    ),
)

RELATIONS: tuple[Relation, ...] = (feed_relief_loss, working_relief, least_lip_relief)
"""What the chapter on relief says of the drill at work."""
