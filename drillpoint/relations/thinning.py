"""Thinning: the web ground thinner at the point by a second, short lip beside the main lip.

Seen from the tip, the thinned lip starts at an end of what is left of the chisel edge and runs at the thinning angle to
the main lip until it meets it. Everything happens twice, half a turn apart.
"""

from __future__ import annotations

from types import ModuleType
from typing import Any

from drillpoint.relation import Condition, Limit, Relation, Step, follow, let, read_off
from drillpoint.relation.symbols import Symbols

_SOURCES = (
    "Follows from the drawing alone.",
    (
        "Thinning a drill that has been ground short, and both sides equally: US Navy Steelworker, NAVEDTRA 14251 ch. "
        "12 (seen); Model Engineer, 20 April 1916 (seen in an abridged copy)."
    ),
)
_ASSUMPTIONS = (
    "Both sides are thinned alike.",
    "The thinned lip is straight in the end view and starts where the chisel edge now ends.",
    "The chisel edge keeps its direction.",
)


def _across(s: Symbols, sp: ModuleType) -> Any:
    """From the end of the chisel edge square across to the main lip."""
    return s.t - s.thinned_chisel_length / 2 * sp.sin(s.delta)


def _reach(s: Symbols, sp: ModuleType) -> Any:
    return s.thinned_chisel_length / 2 * sp.cos(s.delta) + _across(s, sp) / sp.tan(s.thinning_angle)


def _outer(s: Symbols, sp: ModuleType) -> Any:
    return sp.sqrt(s.R**2 - s.t**2)


_SHORTENED = Condition(
    lambda s, sp: s.web / sp.sin(s.chisel_edge_angle) - s.thinned_chisel_length,
    "a chisel edge of {thinned_chisel_length} is no shorter than the web of {web} gives at {chisel_edge_angle} without "
    "thinning; thinning makes it shorter, often to half",
    allows_zero=True,
)
_MEETS = Condition(
    lambda s, sp: s.delta - s.thinning_angle,
    "thinned at {thinning_angle}, the two thinned lips would pass the axis on the wrong sides: no web is left to hold "
    "the tip together. Use a thinning angle smaller than the acute angle between lip and chisel edge, 180° less "
    "{chisel_edge_angle}",
)
_LIP_LEFT = Condition(
    lambda s, sp: _outer(s, sp) - _reach(s, sp),
    "thinned from a chisel edge of {thinned_chisel_length} at {thinning_angle}, the thinned lip would reach the outer "
    "corner, diameter {diameter}: no main lip is left and the point angle is lost; thin at a larger angle, or less",
)

_WHERE: tuple[Step, ...] = (
    let(
        "x_1",
        "Look at the point from the tip. The end of the chisel edge is half its length from the axis, at δ to the main "
        "lip: so far along the lip",
        lambda s, sp: s.thinned_chisel_length / 2 * sp.cos(s.delta),
    ),
    let("y_1", "and so far across it.", lambda s, sp: s.thinned_chisel_length / 2 * sp.sin(s.delta)),
    let("b", "The main lip lies half a web, t, across. This much is still to go.", lambda s, sp: s.t - s.local("y_1")),
)

thinning_reach = Relation(
    name="thinning_reach",
    result="thinning_reach",
    givens=("web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"),
    says="the thinned lip starts at the end of the chisel edge and meets the main lip this far along it",
    formula=_reach,
    steps=(
        *_WHERE,
        read_off(
            "The thinned lip crosses that at the angle ν, from the chisel edge to the place on the main lip.",
            lambda s, sp: (s.thinning_reach - s.local("x_1")) * sp.tan(s.thinning_angle),
            lambda s, sp: s.local("b"),
        ),
        follow("Divide by the tangent and put everything in.", lambda s, sp: s.thinning_reach, _reach),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit(
            "thinned_chisel_length",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.web / 2 / sp.tan(s.thinning_angle),
            "thinned to the axis, the thinned lip starts there",
        ),
        Limit(
            "thinned_chisel_length",
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
            lambda s, sp: -s.web / 2 * sp.cot(s.chisel_edge_angle),
            "with nothing thinned it is the corner of the chisel edge",
            False,
        ),
    ),
    conditions=(_SHORTENED, _MEETS),
)

thinned_lip_in_end_view = Relation(
    name="thinned_lip_in_end_view",
    result="thinned_lip_in_end_view",
    givens=("web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"),
    says="seen from the tip, the thinned lip is the way still to go across, over the sine of its angle",
    formula=lambda s, sp: _across(s, sp) / sp.sin(s.thinning_angle),
    steps=(
        *_WHERE,
        read_off(
            "The thinned lip crosses that at the angle ν to the main lip.",
            lambda s, sp: s.thinned_lip_in_end_view * sp.sin(s.thinning_angle),
            lambda s, sp: s.local("b"),
        ),
        follow(
            "Divide by the sine and put everything in.",
            lambda s, sp: s.thinned_lip_in_end_view,
            lambda s, sp: _across(s, sp) / sp.sin(s.thinning_angle),
        ),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit(
            "thinned_chisel_length",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.web / 2 / sp.sin(s.thinning_angle),
            "thinned to the axis, it crosses the whole half web",
        ),
        Limit(
            "thinned_chisel_length",
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
            lambda s, sp: sp.Integer(0),
            "with nothing thinned there is no thinned lip",
            False,
        ),
    ),
    conditions=(_SHORTENED, _MEETS),
)


def _true_length(s: Symbols, sp: ModuleType) -> Any:
    fall = sp.cot(s.kappa) * sp.cos(s.thinning_angle) - sp.tan(s.axial_relief) * sp.sin(s.thinning_angle)
    return _across(s, sp) / sp.sin(s.thinning_angle) * sp.sqrt(1 + fall**2)


thinned_lip_length = Relation(
    name="thinned_lip_length",
    result="thinned_lip_length",
    givens=("web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle", "point_angle", "axial_relief"),
    says="the thinned lip lies on the flank, so its true length is longer than seen from the tip by the flank's slope",
    formula=_true_length,
    steps=(
        *_WHERE,
        let(
            "p",
            "The thinned lip crosses that at ν to the main lip. As seen from the tip it is this long.",
            lambda s, sp: s.local("b") / sp.sin(s.thinning_angle),
        ),
        let(
            "m",
            "It lies on the flank, which falls by cot κ outwards along the lip and rises by tan α_x across towards it. "
            "For each millimetre of the end view the thinned lip falls by this.",
            lambda s, sp: (
                sp.cot(s.kappa) * sp.cos(s.thinning_angle) - sp.tan(s.axial_relief) * sp.sin(s.thinning_angle)
            ),
        ),
        read_off(
            "What is seen from the tip and the fall are the sides of a right-angled triangle; the thinned lip is its "
            "long side.",
            lambda s, sp: s.thinned_lip_length**2,
            lambda s, sp: s.local("p") ** 2 * (1 + s.local("m") ** 2),
        ),
        follow("Take the root and put everything in.", lambda s, sp: s.thinned_lip_length, _true_length),
    ),
    assumptions=(
        *_ASSUMPTIONS,
        "Between chisel edge and main lip the flank is plane, with the relief it has square to the lip.",
    ),
    sources=_SOURCES,
    limits=(
        Limit(
            "thinned_chisel_length",
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
            lambda s, sp: sp.Integer(0),
            "with nothing thinned there is no thinned lip",
            False,
        ),
        Limit(
            "axial_relief",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: (
                (s.web / 2 - s.thinned_chisel_length / 2 * sp.sin(s.chisel_edge_angle))
                / sp.sin(s.thinning_angle)
                * sp.sqrt(1 + (sp.cot(s.point_angle / 2) * sp.cos(s.thinning_angle)) ** 2)
            ),
            "without relief square to the lip only the lip's own slope counts",
        ),
    ),
    conditions=(_SHORTENED, _MEETS),
)

_UNTOUCHED: tuple[Step, ...] = (
    *_WHERE,
    let(
        "x_m",
        "The thinned lip crosses that at the angle ν and meets the main lip here.",
        lambda s, sp: s.local("x_1") + s.local("b") / sp.tan(s.thinning_angle),
    ),
    let("x_o", "The main lip ends at the outer corner, on the circle of radius R.", _outer),
)

untouched_lip_length = Relation(
    name="untouched_lip_length",
    result="untouched_lip_length",
    givens=("diameter", "point_angle", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"),
    says="the main lip is left as it was from where the thinned lip meets it out to the corner",
    formula=lambda s, sp: (_outer(s, sp) - _reach(s, sp)) / sp.sin(s.kappa),
    steps=(
        *_UNTOUCHED,
        read_off(
            "Look square to the lips. The lip slopes at κ to the axis, so seen from the tip it is foreshortened by "
            "sin κ.",
            lambda s, sp: s.untouched_lip_length * sp.sin(s.kappa),
            lambda s, sp: s.local("x_o") - s.local("x_m"),
        ),
        follow(
            "Put in both ends and divide by sin κ.",
            lambda s, sp: s.untouched_lip_length,
            lambda s, sp: (_outer(s, sp) - _reach(s, sp)) / sp.sin(s.kappa),
        ),
    ),
    assumptions=(*_ASSUMPTIONS, "The main lips are straight."),
    sources=_SOURCES,
    limits=(
        Limit(
            "thinned_chisel_length",
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
            lambda s, sp: (
                (sp.sqrt((s.diameter / 2) ** 2 - (s.web / 2) ** 2) + s.web / 2 * sp.cot(s.chisel_edge_angle))
                / sp.sin(s.point_angle / 2)
            ),
            "with nothing thinned it is the whole lip",
            False,
        ),
    ),
    conditions=(_SHORTENED, _MEETS, _LIP_LEFT),
)


def _share(s: Symbols, sp: ModuleType) -> Any:
    return (_outer(s, sp) - _reach(s, sp)) / (_outer(s, sp) - s.t * sp.cot(s.delta))


untouched_lip_share = Relation(
    name="untouched_lip_share",
    result="untouched_lip_share",
    givens=("diameter", "web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle"),
    says="how much of the main lip thinning leaves, as a share of the whole lip; the point angle does not matter",
    formula=_share,
    steps=(
        *_UNTOUCHED,
        let(
            "x_c",
            "Before thinning the main lip began at the corner of the chisel edge.",
            lambda s, sp: s.t * sp.cot(s.delta),
        ),
        read_off(
            "Both lengths are foreshortened alike, so the share is the same as seen from the tip.",
            lambda s, sp: s.untouched_lip_share * (s.local("x_o") - s.local("x_c")),
            lambda s, sp: s.local("x_o") - s.local("x_m"),
        ),
        follow("Divide, and put everything in.", lambda s, sp: s.untouched_lip_share, _share),
    ),
    assumptions=(*_ASSUMPTIONS, "The main lips are straight."),
    sources=_SOURCES,
    limits=(
        Limit(
            "thinned_chisel_length",
            lambda s, sp: s.web / sp.sin(s.chisel_edge_angle),
            lambda s, sp: sp.Integer(1),
            "with nothing thinned the whole lip is left",
            False,
        ),
    ),
    conditions=(_SHORTENED, _MEETS, _LIP_LEFT),
)

thinned_web = Relation(
    name="thinned_web",
    result="thinned_web",
    givens=("chisel_edge_angle", "thinned_chisel_length", "thinning_angle"),
    says="between the two thinned lips a thinner web is left; it is nothing when they run along the chisel edge",
    formula=lambda s, sp: s.thinned_chisel_length * sp.sin(s.delta - s.thinning_angle),
    steps=(
        read_off(
            "Look at the point from the tip. The two thinned lips are parallel and start at the two ends of the chisel "
            "edge. The chisel edge stands at δ − ν to them, so it crosses the web between them at that angle.",
            lambda s, sp: s.thinned_web / sp.sin(s.delta - s.thinning_angle),
            lambda s, sp: s.thinned_chisel_length,
        ),
        follow(
            "Multiply by the sine.",
            lambda s, sp: s.thinned_web,
            lambda s, sp: s.thinned_chisel_length * sp.sin(s.delta - s.thinning_angle),
        ),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit(
            "thinning_angle",
            lambda s, sp: sp.pi - s.chisel_edge_angle,
            lambda s, sp: sp.Integer(0),
            "thinned along the chisel edge, nothing is left to hold the tip together",
            False,
        ),
        Limit(
            "thinned_chisel_length",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "thinned to the axis, the two lips meet and no web is left",
        ),
    ),
    conditions=(_MEETS,),
)

RELATIONS: tuple[Relation, ...] = (
    thinning_reach,
    thinned_lip_in_end_view,
    thinned_lip_length,
    untouched_lip_length,
    untouched_lip_share,
    thinned_web,
)
"""What the chapter on the web says of thinning."""
