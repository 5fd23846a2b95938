"""Regrinding: how much must come off, how often there is enough left for it, and whether the take-off was right."""

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relations import drill_life

_DRAWING = ("Follows from the drawing alone.",)
_LEAST = "This is the least; grind until the fault is gone, and not more."

stock_for_angle_change = Relation(
    name="stock_for_angle_change",
    result="stock",
    givens=("diameter", "point_angle", "new_point_angle"),
    says="another point angle makes the point taller or shorter, and the difference has to come off",
    formula=lambda s, sp: s.R * sp.Abs(sp.cot(s.kappa) - sp.cot(s.kappa_new)),
    steps=(
        let("h_1", "The old point is this tall.", lambda s, sp: s.R * sp.cot(s.kappa)),
        let("h_2", "The new one is this tall.", lambda s, sp: s.R * sp.cot(s.kappa_new)),
        read_off(
            "To a flatter point, the corners may stay and the tip comes down by the difference. To a sharper one, the "
            "tip may stay and the corners go back by the same.",
            lambda s, sp: s.stock,
            lambda s, sp: sp.Abs(s.local("h_1") - s.local("h_2")),
        ),
        follow(
            "Put in both heights.",
            lambda s, sp: s.stock,
            lambda s, sp: s.R * sp.Abs(sp.cot(s.kappa) - sp.cot(s.kappa_new)),
        ),
    ),
    assumptions=(
        "The point is a sharp cone before and after, and the drill is otherwise sound.",
        "To a flatter point the stock comes off the tip; to a sharper one it comes off the corners.",
        "Away from the angle the flute was made for, the lips are no longer straight.",
        _LEAST,
    ),
    sources=(
        *_DRAWING,
        "Common practice: a change of angle, like a chip, takes more stock than wear.",
    ),
    limits=(
        Limit(
            "new_point_angle",
            lambda s, sp: s.point_angle,
            lambda s, sp: sp.Integer(0),
            "the same angle needs no stock",
        ),
        Limit("diameter", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no drill, no stock"),
    ),
)

stock_for_wear_land = Relation(
    name="stock_for_wear_land",
    result="stock",
    givens=("wear_land", "lip_relief"),
    says="a flank rubbed flat has lost height behind the lip; the new flank must lie below the land",
    formula=lambda s, sp: s.wear_land * sp.tan(s.lip_relief),
    steps=(
        read_off(
            "Look along the radius at the outer corner. The sound flank falls away behind the lip at the lip relief. "
            "At the back of the land, b behind the lip, it has fallen this much, and down to there the lip is rubbed "
            "away.",
            lambda s, sp: s.stock / s.wear_land,
            lambda s, sp: sp.tan(s.lip_relief),
        ),
        follow(
            "Multiply by the width of the land.",
            lambda s, sp: s.stock,
            lambda s, sp: s.wear_land * sp.tan(s.lip_relief),
        ),
    ),
    assumptions=(
        "The land is flat along the direction of cutting, and measured along it at the outer corner.",
        "The new flank has the same relief as the old. The stock counts from the unworn lip.",
        _LEAST,
    ),
    sources=_DRAWING,
    limits=(
        Limit("wear_land", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "a sharp lip needs no stock"),
    ),
)

stock_for_worn_corner = Relation(
    name="stock_for_worn_corner",
    result="stock",
    givens=("worn_margin",),
    says="a worn or burnt corner is sharp again only when the lip has been ground back past the damage on the margin",
    formula=lambda s, sp: s.worn_margin,
    steps=(
        read_off(
            "Hold the drill with its axis along the rule. The damage runs from the corner along the margin for "
            "a length m. The new corner must lie at its end, so that much comes off along the axis.",
            lambda s, sp: s.stock,
            lambda s, sp: s.worn_margin,
        ),
    ),
    assumptions=(
        "The damage is measured along the axis, not along the spiral of the margin, and on the worse of the two lips.",
        "Burnt steel may be soft further than its colour shows.",
        _LEAST,
    ),
    sources=(*_DRAWING, "NIMI (India) fitter practical vol. 2 p. 84: grind as little as possible (seen)."),
    limits=(
        Limit("worn_margin", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "a sound corner needs no stock"),
    ),
)

stock_for_chip = Relation(
    name="stock_for_chip",
    result="stock",
    givens=("chip_depth", "point_angle"),
    says="a chip in the lip is gone when the whole lip has moved back past its bottom, along the axis",
    formula=lambda s, sp: s.chip_depth / sp.sin(s.kappa),
    steps=(
        read_off(
            "Look square to the lips. The new lip runs beside the old one, through the bottom of the chip. The axis "
            "meets both at κ. Between them, square to the lip, lies the depth of the chip.",
            lambda s, sp: s.stock * sp.sin(s.kappa),
            lambda s, sp: s.chip_depth,
        ),
        follow("Divide by sin κ.", lambda s, sp: s.stock, lambda s, sp: s.chip_depth / sp.sin(s.kappa)),
    ),
    assumptions=(
        "The chip is measured from the line of the lip, square to it, at its deepest.",
        "The point angle stays as it was.",
        _LEAST,
    ),
    sources=(*_DRAWING, "Common practice: a chipped drill takes more stock than a worn one."),
    limits=(
        Limit("chip_depth", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "a whole lip needs no stock"),
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: s.chip_depth,
            "on a flat end the depth of the chip lies along the axis",
            False,
        ),
    ),
)

tip_stock = Relation(
    name="tip_stock",
    result="tip_stock",
    givens=("corner_stock", "diameter", "point_angle", "new_point_angle"),
    says="what comes off the tip when damaged corners and the point angle are ground in one go",
    formula=lambda s, sp: s.corner_stock + s.R * (sp.cot(s.kappa) - sp.cot(s.kappa_new)),
    steps=(
        let("h_1", "Before, the tip stands this far ahead of the corners.", lambda s, sp: s.R * sp.cot(s.kappa)),
        let("h_2", "Afterwards it stands this far ahead.", lambda s, sp: s.R * sp.cot(s.kappa_new)),
        read_off(
            "Measure both points from the shank. The new tip is as far back as the new corners, and what it no longer "
            "stands ahead of them.",
            lambda s, sp: s.tip_stock,
            lambda s, sp: s.corner_stock + s.local("h_1") - s.local("h_2"),
        ),
        follow(
            "Put in both heights.",
            lambda s, sp: s.tip_stock,
            lambda s, sp: s.corner_stock + s.R * (sp.cot(s.kappa) - sp.cot(s.kappa_new)),
        ),
    ),
    assumptions=("The point is a sharp cone before and after.", "The corners keep their radius."),
    sources=_DRAWING,
    limits=(
        Limit(
            "new_point_angle",
            lambda s, sp: s.point_angle,
            lambda s, sp: s.corner_stock,
            "with the angle kept, tip and corners go back alike",
        ),
    ),
    conditions=(
        Condition(
            lambda s, sp: s.corner_stock + s.R * (sp.cot(s.kappa) - sp.cot(s.kappa_new)),
            "a sharper point of {new_point_angle} already takes more than {corner_stock} off the corners while the tip "
            "stays; nothing more has to come off the tip",
            allows_zero=True,
        ),
    ),
)

CHAPTER: tuple[Relation, ...] = (
    stock_for_angle_change,
    stock_for_wear_land,
    stock_for_worn_corner,
    stock_for_chip,
    tip_stock,
    *drill_life.RELATIONS,
)
