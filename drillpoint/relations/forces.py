"""Thrust, torque and power, and what the chisel edge has to do with them.

There are two models. The handbook's (Machinery's Handbook 31) sums up drilling tests: thrust and torque from feed,
size, work, wear and the length of the chisel edge. The other multiplies the area of the uncut chip by a specific
cutting force, as for turning; it gives the torque only.

Where they part company. With the feed both torques grow nearly alike: as its power 0.8 in the one, and 1 less the chip
thickness exponent, about 0.75, in the other. With the diameter they do not: power 1.8 against 2, so that two models
which agree at 10 mm differ by a third at 40 mm. The specific force knows nothing of the chisel edge: it lets the lips
reach the axis, so thinning changes nothing in it. The point angle, which thickens the chip, matters only to it.
Neither knows rubbing, a packed flute or a dull corner, except as the handbook's wear factor. Take the one whose factor
was found nearest to the job, and believe neither to the last digit.
"""

from __future__ import annotations

from types import ModuleType
from typing import Any

from drillpoint.relation import Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols
from drillpoint.relations import chip, chisel_factors, forces_compared

_HANDBOOK = "Machinery's Handbook 31, pp. 1152-1153, Tables 7 to 9 (seen)."
_SOURCES = (
    _HANDBOOK,
    (
        "The handbook prints the metric constants as 0.05, 0.007 and 0.000025. Here they are the inch formula's 2, 1 "
        "and 1 converted, to more figures, so that both unit systems give the same force."
    ),
)
_ASSUMPTIONS = (
    "The formula sums up drilling tests; it is an estimate, not good to the digits it prints.",
    "The printed feed and size factors are f^0.8, D^0.8 and D^1.8, to the rounding of the table.",
    "Work material factor and tool wear factor come from tables and are given; the drill is ground right and cooled.",
)


def _cutting(s: Symbols, sp: ModuleType) -> Any:
    return sp.Rational(5029, 100000) * (s.feed * s.diameter) ** sp.Rational(4, 5) * s.thrust_factor


def _indenting(s: Symbols, sp: ModuleType) -> Any:
    return sp.Rational(68948, 10**7) * s.diameter**2 * s.chisel_thrust_factor


def _thrust(s: Symbols, sp: ModuleType) -> Any:
    return s.material_factor * s.tool_wear_factor * (_cutting(s, sp) + _indenting(s, sp))


thrust = Relation(
    name="thrust",
    result="thrust",
    givens=(
        "diameter",
        "feed",
        "material_factor",
        "tool_wear_factor",
        "thrust_factor",
        "chisel_thrust_factor",
    ),
    says="thrust has a part that grows with the feed and a part that the chisel edge presses in whatever the feed",
    formula=_thrust,
    steps=(
        let(
            "F",
            "The handbook's tables of feed and size, multiplied, are the power 0.8 of feed and diameter.",
            lambda s, sp: (s.feed * s.diameter) ** sp.Rational(4, 5),
        ),
        let(
            "T_1",
            "The lips' part, for work and wear of 1: the chisel edge raises it by its factor.",
            lambda s, sp: sp.Rational(5029, 100000) * s.local("F") * s.thrust_factor,
        ),
        let("T_2", "The chisel edge's own part, for work and wear of 1: it does not ask for the feed.", _indenting),
        read_off(
            "Both grow with the work and the wear, and both push against the feed.",
            lambda s, sp: s.thrust,
            lambda s, sp: s.material_factor * s.tool_wear_factor * (s.local("T_1") + s.local("T_2")),
        ),
        follow("Put both parts in.", lambda s, sp: s.thrust, _thrust),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit(
            "feed",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.material_factor * s.tool_wear_factor * _indenting(s, sp),
            "with hardly any feed only the chisel edge's own part is left",
        ),
        Limit(
            "chisel_thrust_factor",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: s.material_factor * s.tool_wear_factor * _cutting(s, sp),
            "without a chisel edge only the lips push back",
        ),
    ),
    empirical=True,
)


def _torque(s: Symbols, sp: ModuleType) -> Any:
    size = s.feed ** sp.Rational(4, 5) * s.diameter ** sp.Rational(9, 5)
    return sp.Rational(25145, 10**9) * s.material_factor * s.tool_wear_factor * size * s.torque_factor


torque = Relation(
    name="torque",
    result="torque",
    givens=("diameter", "feed", "material_factor", "tool_wear_factor", "torque_factor"),
    says="torque is nearly all the lips' doing; the chisel edge raises it by a few hundredths",
    formula=_torque,
    steps=(
        let(
            "F_f",
            "The handbook's table of feeds is the power 0.8 of the feed.",
            lambda s, sp: s.feed ** sp.Rational(4, 5),
        ),
        let(
            "F_M",
            "Its table of sizes for the torque is the power 1.8 of the diameter.",
            lambda s, sp: s.diameter ** sp.Rational(9, 5),
        ),
        read_off(
            "The torque is their product with the factors of work, wear and chisel edge.",
            lambda s, sp: s.torque,
            lambda s, sp: (
                sp.Rational(25145, 10**9)
                * s.material_factor
                * s.local("F_f")
                * s.local("F_M")
                * s.torque_factor
                * s.tool_wear_factor
            ),
        ),
        follow("Put both factors in.", lambda s, sp: s.torque, _torque),
    ),
    assumptions=_ASSUMPTIONS,
    sources=_SOURCES,
    limits=(
        Limit("feed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "without feed nothing is cut"),
        Limit(
            "torque_factor",
            lambda s, sp: sp.Integer(1),
            lambda s, sp: (
                sp.Rational(25145, 10**9)
                * s.material_factor
                * s.tool_wear_factor
                * s.feed ** sp.Rational(4, 5)
                * s.diameter ** sp.Rational(9, 5)
            ),
            "a factor of 1 is a drill without a chisel edge",
        ),
    ),
    empirical=True,
)

power = Relation(
    name="power",
    result="power",
    givens=("torque", "spindle_speed"),
    says="power is torque times how quickly the drill turns",
    formula=lambda s, sp: sp.pi * s.torque * s.spindle_speed / 30000,
    steps=(
        let(
            "E_1",
            "In one turn the torque does this work, in newton metres: as if a force M pushed once round a circle of "
            "1 m radius.",
            lambda s, sp: 2 * sp.pi * s.torque,
        ),
        let("E_n", "In one minute the drill turns n times.", lambda s, sp: s.local("E_1") * s.spindle_speed),
        read_off(
            "A kilowatt is 60 × 1000 newton metres a minute.",
            lambda s, sp: s.power * 60000,
            lambda s, sp: s.local("E_n"),
        ),
        follow(
            "Divide, and put the work in.",
            lambda s, sp: s.power,
            lambda s, sp: sp.pi * s.torque * s.spindle_speed / 30000,
        ),
    ),
    assumptions=(
        "The work of the thrust is left out; it is about a hundredth of this.",
        "Losses in the machine are not counted.",
    ),
    sources=("Follows from what power is.", "In inches the same is hp = M n/63025, M in in-lb (handbooks)."),
    limits=(
        Limit("spindle_speed", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "standing still takes none"),
    ),
    stands_in=True,
)

motor_power = Relation(
    name="motor_power",
    result="motor_power",
    givens=("power", "efficiency"),
    says="the motor must give the drill's power and what the machine loses on the way",
    formula=lambda s, sp: s.power / s.efficiency,
    steps=(
        read_off(
            "Efficiency is the part of the motor's power that arrives at the drill.",
            lambda s, sp: s.motor_power * s.efficiency,
            lambda s, sp: s.power,
        ),
        follow("Divide by it.", lambda s, sp: s.motor_power, lambda s, sp: s.power / s.efficiency),
    ),
    assumptions=("The machine loses the same share whatever the power.",),
    sources=("A definition.", "Machinery's Handbook 31 works with an efficiency of 0.80 in its example (seen)."),
    limits=(Limit("efficiency", lambda s, sp: sp.Integer(1), lambda s, sp: s.power, "a machine without loss", False),),
)

CHAPTER: tuple[Relation, ...] = (
    *chisel_factors.RELATIONS,
    thrust,
    torque,
    *forces_compared.RELATIONS,
    power,
    motor_power,
    *chip.RELATIONS,
)
