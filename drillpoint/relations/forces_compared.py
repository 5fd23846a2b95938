"""The same drilling with two chisel edges: how thrust and torque of one point compare with another's.

Work and wear drop out, so what remains is the points themselves: thinned, split, or with a web that has grown.
"""

from __future__ import annotations

from types import ModuleType
from typing import Any

from drillpoint.relation import Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols

_SOURCES = ("Machinery's Handbook 31, pp. 1152-1153, Tables 7 to 9 (seen): two thrusts or torques, divided.",)
_ASSUMPTIONS = (
    "Both points drill the same work at the same size and feed, equally sharp.",
    "The formula sums up drilling tests; between two points it is nearer than for one, since work and wear drop out.",
)


def _parts(s: Symbols, sp: ModuleType, cutting: Any, indenting: Any) -> Any:
    lips = sp.Rational(5029, 100000) * (s.feed * s.diameter) ** sp.Rational(4, 5)
    return lips * cutting + sp.Rational(68948, 10**7) * s.diameter**2 * indenting


def _here(s: Symbols, sp: ModuleType) -> Any:
    return _parts(s, sp, s.thrust_factor, s.chisel_thrust_factor)


def _reference(s: Symbols, sp: ModuleType) -> Any:
    return _parts(s, sp, s.reference_thrust_factor, s.reference_chisel_thrust_factor)


thrust_ratio = Relation(
    name="thrust_ratio",
    result="thrust_ratio",
    givens=(
        "diameter",
        "feed",
        "thrust_factor",
        "chisel_thrust_factor",
        "reference_thrust_factor",
        "reference_chisel_thrust_factor",
    ),
    says="thrust of one point over another's: what thinning or splitting the point saves, what a thick web costs",
    formula=lambda s, sp: _here(s, sp) / _reference(s, sp),
    steps=(
        let("T_1", "Thrust of the one point, for work and wear of 1: lips' part and chisel edge's part.", _here),
        let("T_0", "Thrust of the other, the same way.", _reference),
        read_off(
            "Work and wear are the same for both, so they drop out of the ratio.",
            lambda s, sp: s.thrust_ratio * s.local("T_0"),
            lambda s, sp: s.local("T_1"),
        ),
        follow(
            "Divide by the other thrust.", lambda s, sp: s.thrust_ratio, lambda s, sp: _here(s, sp) / _reference(s, sp)
        ),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit(
            "feed",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.chisel_thrust_factor / s.reference_chisel_thrust_factor,
            "with hardly any feed the two chisel edges alone are compared",
        ),
    ),
    empirical=True,
)

torque_ratio = Relation(
    name="torque_ratio",
    result="torque_ratio",
    givens=("torque_factor", "reference_torque_factor"),
    says="torque of one point over torque of another; thinning saves little torque, whatever size or feed",
    formula=lambda s, sp: s.torque_factor / s.reference_torque_factor,
    steps=(
        read_off(
            "Everything but the chisel edge's factor is the same for both points.",
            lambda s, sp: s.torque_ratio * s.reference_torque_factor,
            lambda s, sp: s.torque_factor,
        ),
        follow(
            "Divide by the factor that is compared with.",
            lambda s, sp: s.torque_ratio,
            lambda s, sp: s.torque_factor / s.reference_torque_factor,
        ),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit(
            "torque_factor",
            lambda s, sp: s.reference_torque_factor,
            lambda s, sp: sp.Integer(1),
            "two points with the same chisel edge turn equally hard",
        ),
    ),
    empirical=True,
)

RELATIONS: tuple[Relation, ...] = (thrust_ratio, torque_ratio)
"""What the chapter on forces says of two points compared."""
