"""How much of the drill the chisel edge is, and by how much that raises thrust and torque.

The handbook prints the three factors as a table (`drillpoint.handbook.chisel_factors`). Here they are smooth curves,
after Shaw and Oxford; the table is what they are checked against.
"""

from __future__ import annotations

from collections.abc import Callable
from types import ModuleType
from typing import Any

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols

_SOURCES = (
    "Form of the curve: after Shaw and Oxford, Trans. ASME 79 (1957) 139 (from memory).",
    (
        "Checked against Machinery's Handbook 31, pp. 1152-1153, chisel edge factors (seen): torque within 0.7 % "
        "except at a ratio of 0.15, where the printed 1.080 looks out of line; thrust within 0.9 %; the indenting part "
        "within 0.0025. At 0.18 the table prints 0.030 where the square is 0.032, so thrusts come out about 2 % higher "
        "than with the table's own factors (`drillpoint.handbook.chisel_factors`)."
    ),
)
_ASSUMPTIONS = (
    "The curve sums up drilling tests on points with chisel edges from 0.03 to 0.40 of the diameter.",
    "Only the length of the chisel edge counts, however it was made: by a thin web, by thinning or by splitting.",
)


def _in_table(given: str) -> Condition:
    return Condition(
        lambda s, sp: sp.Rational(2, 5) - getattr(s, given),
        f"a chisel edge of {{{given}}} of the diameter is longer than any in the handbook's table, which ends at 0.4; "
        "a standard drill has 0.18, a split point 0.03",
        allows_zero=True,
    )


def _torque_curve(c: Any, sp: ModuleType) -> Any:
    return (1 - c**2) / (1 + c) ** sp.Rational(1, 5) + sp.Rational(16, 5) * c ** sp.Rational(9, 5)


def _thrust_curve(c: Any, sp: ModuleType) -> Any:
    return (1 - c) / (1 + c) ** sp.Rational(1, 5) + sp.Rational(11, 5) * c ** sp.Rational(4, 5)


def _share_of_lips(c: Any, sp: ModuleType) -> Any:
    return 1 / (1 + c) ** sp.Rational(1, 5)


def _factor(
    result: str,
    given: str,
    says: str,
    curve: Callable[[Any, ModuleType], Any],
    lips: tuple[str, Callable[[Any, ModuleType], Any]],
    chisel: tuple[str, Callable[[Any, ModuleType], Any]],
) -> Relation:
    """One factor as a function of one chisel edge ratio: what the lips do, and what the chisel edge adds."""

    def formula(s: Symbols, sp: ModuleType) -> Any:
        return curve(getattr(s, given), sp)

    return Relation(
        name=result,
        result=result,
        givens=(given,),
        says=says,
        formula=formula,
        steps=(
            let("a_1", lips[0], lambda s, sp: lips[1](getattr(s, given), sp)),
            let("a_2", chisel[0], lambda s, sp: chisel[1](getattr(s, given), sp)),
            read_off(
                "The factor is both together.",
                lambda s, sp: getattr(s, result),
                lambda s, sp: s.local("a_1") + s.local("a_2"),
            ),
            follow("Put both in.", lambda s, sp: getattr(s, result), formula),
        ),
        assumptions=_ASSUMPTIONS,
        sources=_SOURCES,
        limits=(
            Limit(
                given, lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(1), "without a chisel edge only lips cut"
            ),
        ),
        conditions=(_in_table(given),),
        stands_in=True,
        empirical=True,
    )


def _torque_factor(result: str, given: str, says: str) -> Relation:
    return _factor(
        result,
        given,
        says,
        _torque_curve,
        (
            (
                "The lips work on what is outside the chisel edge. Measured torques fall a little quicker with size "
                "than with the chip's area, which is the root below the line."
            ),
            lambda c, sp: (1 - c**2) * _share_of_lips(c, sp),
        ),
        (
            "The chisel edge squeezes work aside at a short arm, and adds this.",
            lambda c, sp: sp.Rational(16, 5) * c ** sp.Rational(9, 5),
        ),
    )


def _thrust_factor(result: str, given: str, says: str) -> Relation:
    return _factor(
        result,
        given,
        says,
        _thrust_curve,
        (
            (
                "The lips are shorter by the chisel edge. Measured thrusts fall a little quicker with size than with "
                "the chip's width, which is the root below the line."
            ),
            lambda c, sp: (1 - c) * _share_of_lips(c, sp),
        ),
        (
            "The chisel edge cuts badly, with a steeply negative rake, and adds this.",
            lambda c, sp: sp.Rational(11, 5) * c ** sp.Rational(4, 5),
        ),
    )


def _chisel_thrust_factor(result: str, given: str, says: str) -> Relation:
    def formula(s: Symbols, _: ModuleType) -> Any:
        return getattr(s, given) ** 2

    return Relation(
        name=result,
        result=result,
        givens=(given,),
        says=says,
        formula=formula,
        steps=(
            read_off(
                "The middle of the chisel edge does not cut: it is pressed in like a punch. A punch's force goes with "
                "its area, and the area with the square of the chisel edge.",
                lambda s, sp: getattr(s, result),
                formula,
            ),
        ),
        assumptions=_ASSUMPTIONS,
        sources=_SOURCES,
        limits=(
            Limit(
                given,
                lambda s, sp: sp.Integer(0),
                lambda s, sp: sp.Integer(0),
                "without a chisel edge nothing is pressed in",
            ),
        ),
        conditions=(_in_table(given),),
        stands_in=True,
        empirical=True,
    )


chisel_ratio = Relation(
    name="chisel_ratio",
    result="chisel_ratio",
    givens=("chisel_edge_length", "diameter"),
    says="the chisel edge as a share of the drill; thinning makes it smaller, grinding back makes it larger",
    formula=lambda s, sp: s.chisel_edge_length / s.diameter,
    steps=(
        read_off(
            "The chisel edge ratio is the chisel edge's length divided by the diameter.",
            lambda s, sp: s.chisel_ratio,
            lambda s, sp: s.chisel_edge_length / s.diameter,
        ),
    ),
    assumptions=("The chisel edge is measured as it is, after any thinning.",),
    sources=("A definition.", "Machinery's Handbook 31, pp. 1152-1153, c/d (seen)."),
    limits=(
        Limit(
            "chisel_edge_length", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no chisel edge, no share"
        ),
    ),
    stands_in=True,
)

torque_factor = _torque_factor(
    "torque_factor", "chisel_ratio", "by how much the chisel edge raises the torque: very little (the handbook's A)"
)
thrust_factor = _thrust_factor(
    "thrust_factor", "chisel_ratio", "by how much the chisel edge raises the thrust that goes with feed (B in tables)"
)
chisel_thrust_factor = _chisel_thrust_factor(
    "chisel_thrust_factor", "chisel_ratio", "the thrust that the chisel edge takes whatever the feed (J in tables)"
)
reference_torque_factor = _torque_factor(
    "reference_torque_factor", "reference_chisel_ratio", "the torque's factor for the point that is compared with"
)
reference_thrust_factor = _thrust_factor(
    "reference_thrust_factor", "reference_chisel_ratio", "the thrust's factor for the point that is compared with"
)
reference_chisel_thrust_factor = _chisel_thrust_factor(
    "reference_chisel_thrust_factor",
    "reference_chisel_ratio",
    "the indenting thrust's factor for the point that is compared with",
)

RELATIONS: tuple[Relation, ...] = (
    chisel_ratio,
    torque_factor,
    thrust_factor,
    chisel_thrust_factor,
    reference_torque_factor,
    reference_thrust_factor,
    reference_chisel_thrust_factor,
)
"""What the chapter on forces says of the chisel edge."""
