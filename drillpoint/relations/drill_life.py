"""What many regrinds add up to, and checking the take-off: part of the chapter on regrinding."""

from __future__ import annotations

import math

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off

_NO_STOCK = Condition(
    lambda s, sp: s.stock,
    "with a stock of {stock} nothing is ground off, so the drill would last for ever; give the stock of one regrind",
)


def _whole(regrinds: float) -> tuple[str, ...]:
    whole = math.floor(regrinds + 1e-9)
    return (f"that is {whole} whole regrinds",) if regrinds - whole > 1e-9 else ()


regrinds_left = Relation(
    name="regrinds_left",
    result="regrinds_left",
    givens=("usable_length", "stock"),
    says="how many more times a drill can be ground before its flutes are too short",
    formula=lambda s, sp: s.usable_length / s.stock,
    steps=(
        read_off(
            "Every regrind takes its stock off the usable length, until that is gone.",
            lambda s, sp: s.regrinds_left * s.stock,
            lambda s, sp: s.usable_length,
        ),
        follow("Divide by the stock.", lambda s, sp: s.regrinds_left, lambda s, sp: s.usable_length / s.stock),
    ),
    assumptions=(
        "Every regrind takes the same stock, measured as the drill gets shorter.",
        "Only whole regrinds count.",
    ),
    sources=("Follows from counting.",),
    limits=(Limit("usable_length", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "nothing left to grind"),),
    conditions=(_NO_STOCK,),
    notes=_whole,
)

length_removed_by_regrinds = Relation(
    name="length_removed_by_regrinds",
    result="length_removed",
    givens=("regrinds", "stock"),
    says="how much shorter a drill is after so many regrinds",
    formula=lambda s, sp: s.regrinds * s.stock,
    steps=(
        read_off(
            "Every regrind makes the drill shorter by its stock.",
            lambda s, sp: s.length_removed,
            lambda s, sp: s.regrinds * s.stock,
        ),
    ),
    assumptions=("Every regrind takes the same stock, measured as the drill gets shorter.",),
    sources=("Follows from counting.",),
    limits=(Limit("regrinds", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "a new drill"),),
    stands_in=True,
)

length_until_thinning = Relation(
    name="length_until_thinning",
    result="length_removed",
    givens=("web_ratio_limit", "diameter", "web", "web_taper"),
    says="how much may be ground off before the thickening web reaches the limit and has to be thinned",
    formula=lambda s, sp: (s.web_ratio_limit * s.diameter - s.web) / s.web_taper,
    steps=(
        let("W_m", "The thickest web that the shop allows is this.", lambda s, sp: s.web_ratio_limit * s.diameter),
        read_off(
            "Ground back by ΔL, the web has grown by the taper for each millimetre. It reaches the limit there.",
            lambda s, sp: s.web + s.web_taper * s.length_removed,
            lambda s, sp: s.local("W_m"),
        ),
        follow(
            "Put in the limit and take the web away.",
            lambda s, sp: s.web_taper * s.length_removed,
            lambda s, sp: s.web_ratio_limit * s.diameter - s.web,
        ),
        follow(
            "Divide by the taper.",
            lambda s, sp: s.length_removed,
            lambda s, sp: (s.web_ratio_limit * s.diameter - s.web) / s.web_taper,
        ),
    ),
    assumptions=(
        "The taper is the same all along the flute.",
        "The limit is the shop's choice: no source names one. The web is measured at the point, not thinned.",
    ),
    sources=(
        "Follows from how the web grows.",
        "Model Engineer, 20 April 1916: the web grows as the drill wears back; thin it (seen in an abridged copy).",
    ),
    limits=(
        Limit(
            "web",
            lambda s, sp: s.web_ratio_limit * s.diameter,
            lambda s, sp: sp.Integer(0),
            "a web at the limit is due now",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.web_ratio_limit * s.diameter - s.web,
            "the web, {web}, is already thicker than {web_ratio_limit} of the diameter, {diameter}: thin it now",
            allows_zero=True,
        ),
        Condition(
            lambda s, sp: s.web_taper,
            "a web without taper, {web_taper}, never thickens; 0.014 mm for each millimetre is usual",
        ),
    ),
)

take_off_correction = Relation(
    name="take_off_correction",
    result="take_off_correction",
    givens=("stock", "length_before", "length_after"),
    says="measure the drill before and after: what was asked for less what came off is what the setting lacks",
    formula=lambda s, sp: s.stock - (s.length_before - s.length_after),
    steps=(
        let("x", "This much has come off.", lambda s, sp: s.length_before - s.length_after),
        read_off(
            "What came off and what is still lacking make up the stock that was asked for.",
            lambda s, sp: s.local("x") + s.take_off_correction,
            lambda s, sp: s.stock,
        ),
        follow(
            "Put in both lengths.",
            lambda s, sp: s.take_off_correction,
            lambda s, sp: s.stock - (s.length_before - s.length_after),
        ),
    ),
    assumptions=(
        "Both lengths are measured from the same stop to the tip, the drill cool and clean.",
        "The stock asked for is the stock at the tip.",
        "A correction smaller than its own uncertainty says nothing: ask `take_off_correction.uncertainty(...)`.",
    ),
    sources=(
        "Follows from counting.",
        "Common practice: measure a drill before and after, again after every change of the wheel.",
    ),
    limits=(
        Limit(
            "length_after",
            lambda s, sp: s.length_before,
            lambda s, sp: s.stock,
            "where nothing came off, all of it is lacking",
            False,
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.length_before - s.length_after,
            "the drill is longer after grinding, {length_after}, than before, {length_before}; the two lengths are "
            "probably the wrong way round",
            allows_zero=True,
        ),
    ),
)

RELATIONS: tuple[Relation, ...] = (
    regrinds_left,
    length_removed_by_regrinds,
    length_until_thinning,
    take_off_correction,
)
