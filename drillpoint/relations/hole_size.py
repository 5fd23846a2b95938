"""How wide the hole gets when lips or angles are unequal or the drill runs out: part of the chapter on the hole."""

from __future__ import annotations

from types import ModuleType
from typing import Any

from drillpoint.relation import Condition, Limit, Relation, follow, let, read_off
from drillpoint.relation.symbols import Symbols

_DRAWING = ("Follows from the drawing alone.",)
_EQUAL_ANGLES = "Both lips stand at the same angle; only the tip is beside the axis."
_GUIDED = (
    "This is an upper bound: the drill pivots freely on its own point. A drill guided by its margins, a bush or a "
    "pilot cuts less."
)

lip_height_difference = Relation(
    name="lip_height_difference",
    result="lip_height_difference",
    givens=("lip_length_difference", "point_angle"),
    says="the corner of a longer lip lies behind that of the shorter one, by the difference seen along the axis",
    formula=lambda s, sp: s.lip_length_difference * sp.cos(s.kappa),
    steps=(
        read_off(
            "Look square to the lips. The longer lip has an extra piece. It slopes at κ to the axis, so along the axis "
            "it takes its length times cos κ. One corner is that much further back from the tip.",
            lambda s, sp: s.lip_height_difference,
            lambda s, sp: s.lip_length_difference * sp.cos(s.kappa),
        ),
    ),
    assumptions=(_EQUAL_ANGLES, "Both lips end at the same radius, and the web is thin against the lip."),
    sources=_DRAWING,
    limits=(
        Limit(
            "point_angle",
            lambda s, sp: sp.pi,
            lambda s, sp: sp.Integer(0),
            "on a flat end no lip stands ahead",
            False,
        ),
        Limit("lip_length_difference", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "equal lips"),
    ),
    stands_in=True,
)

point_offset = Relation(
    name="point_offset",
    result="point_offset",
    givens=("lip_height_difference", "point_angle"),
    says="lips of unequal height mean that the tip is not on the axis",
    formula=lambda s, sp: s.lip_height_difference / 2 * sp.tan(s.kappa),
    steps=(
        let(
            "z_1",
            "Look square to the lips, with the tip at a distance e from the axis. At a radius r lip 1 is r − e from "
            "the tip, so it lies this far below it.",
            lambda s, sp: (s.local("r_1") - s.point_offset) / sp.tan(s.kappa),
        ),
        let(
            "z_2",
            "On the other side lip 2 is r + e from the tip.",
            lambda s, sp: (s.local("r_1") + s.point_offset) / sp.tan(s.kappa),
        ),
        read_off(
            "The difference of the two is what is measured, and the radius has dropped out.",
            lambda s, sp: s.lip_height_difference,
            lambda s, sp: s.local("z_2") - s.local("z_1"),
        ),
        follow(
            "Put in both.",
            lambda s, sp: s.lip_height_difference * sp.tan(s.kappa),
            lambda s, sp: 2 * s.point_offset,
        ),
        follow(
            "Halve both sides now.",
            lambda s, sp: s.point_offset,
            lambda s, sp: s.lip_height_difference / 2 * sp.tan(s.kappa),
        ),
    ),
    assumptions=(_EQUAL_ANGLES, "The tip is off in the plane of the lips."),
    sources=_DRAWING,
    limits=(Limit("lip_height_difference", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "level lips"),),
    stands_in=True,
)

offset_from_run_out = Relation(
    name="offset_from_run_out",
    result="point_offset",
    givens=("run_out",),
    says="an indicator swings by twice the distance that a thing runs out of the axis",
    formula=lambda s, sp: s.run_out / 2,
    steps=(
        let("x_1", "At one place the drill stands out by its offset.", lambda s, sp: s.local("a_0") + s.point_offset),
        let("x_2", "Half a turn later it stands in by as much.", lambda s, sp: s.local("a_0") - s.point_offset),
        read_off(
            "The full swing is the difference of the two.",
            lambda s, sp: s.run_out,
            lambda s, sp: s.local("x_1") - s.local("x_2"),
        ),
        follow("So the offset is half the swing.", lambda s, sp: s.point_offset, lambda s, sp: s.run_out / 2),
    ),
    assumptions=(
        "The drill is round where the indicator touches, and bent or held off the axis rather than tilted.",
        "The whole point goes round with that offset.",
    ),
    sources=_DRAWING,
    limits=(Limit("run_out", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "no swing, no offset"),),
)

oversize = Relation(
    name="oversize",
    result="oversize",
    givens=("point_offset",),
    says="a drill with its tip beside the axis makes a hole that is wider by at most twice the offset",
    formula=lambda s, sp: 2 * s.point_offset,
    steps=(
        let(
            "R_h",
            "The drill turns about its own tip. The corner farther from the tip then sweeps a circle whose radius is "
            "half the diameter and the offset.",
            lambda s, sp: s.local("R_0") + s.point_offset,
        ),
        read_off(
            "The hole is twice that radius wide, the drill twice its own.",
            lambda s, sp: s.oversize,
            lambda s, sp: 2 * s.local("R_h") - 2 * s.local("R_0"),
        ),
        follow("The drill's own radius drops out.", lambda s, sp: s.oversize, lambda s, sp: 2 * s.point_offset),
    ),
    assumptions=(
        _GUIDED,
        "For a drill that runs out with the spindle the same bound holds: the body is carried round by the offset.",
    ),
    sources=(
        *_DRAWING,
        (
            "Common practice, to hold against it: oversize is twice the height difference of the lips. The geometry "
            "gives at most 1.664 times at 118° and 2.414 times at 135°."
        ),
    ),
    limits=(Limit("point_offset", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "a true tip"),),
    stands_in=True,
)

largest_hole = Relation(
    name="largest_hole",
    result="largest_hole",
    givens=("diameter", "oversize"),
    says="the widest hole is the drill's diameter and the most oversize together",
    formula=lambda s, sp: s.diameter + s.oversize,
    steps=(
        read_off(
            "The oversize is what the hole is wider than the drill.",
            lambda s, sp: s.oversize,
            lambda s, sp: s.largest_hole - s.diameter,
        ),
        follow("Add the diameter.", lambda s, sp: s.largest_hole, lambda s, sp: s.diameter + s.oversize),
    ),
    assumptions=(
        _GUIDED,
        "Soft work, heat and chips can open a hole further; this is the share of the point.",
    ),
    sources=_DRAWING,
    limits=(Limit("oversize", lambda s, sp: sp.Integer(0), lambda s, sp: s.diameter, "a true drill"),),
    conditions=(
        Condition(
            lambda s, sp: s.diameter - s.oversize,
            "a hole {oversize} wider than the drill, {diameter}, needs a tip outside the drill; check the reading of "
            "the lip heights, or of the run-out",
        ),
    ),
)


def _slopes(s: Symbols, sp: ModuleType) -> Any:
    return sp.Abs(sp.cot(s.half_angle_1) - sp.cot(s.half_angle_2))


_UNEQUAL = Condition(
    lambda s, sp: (s.half_angle_1 - s.half_angle_2) ** 2,
    "both half angles are {half_angle_1}: both lips cut at every radius, so there is no place where one stops",
)

lip_height_from_angles = Relation(
    name="lip_height_from_angles",
    result="lip_height_difference",
    givens=("radius", "half_angle_1", "half_angle_2"),
    says="lips ground to different angles drift apart towards the corner, in step with the radius",
    formula=lambda s, sp: s.radius * _slopes(s, sp),
    steps=(
        let(
            "z_1",
            "Look square to the lips. From the tip, lip 1 falls away at its own half angle; at the radius r it is this "
            "far below the tip.",
            lambda s, sp: s.radius * sp.cot(s.half_angle_1),
        ),
        let("z_2", "At the same radius lip 2 is this far below it.", lambda s, sp: s.radius * sp.cot(s.half_angle_2)),
        read_off(
            "The one with the flatter angle is ahead. The gap is the difference, whichever is larger.",
            lambda s, sp: s.lip_height_difference,
            lambda s, sp: sp.Abs(s.local("z_1") - s.local("z_2")),
        ),
        follow(
            "Put in both; the radius comes out of the difference.",
            lambda s, sp: s.lip_height_difference,
            lambda s, sp: s.radius * _slopes(s, sp),
        ),
    ),
    assumptions=("The tip is on the axis, so that both lips start level.", "The web is thin against the radius."),
    sources=_DRAWING,
    limits=(
        Limit("radius", lambda s, sp: sp.Integer(0), lambda s, sp: sp.Integer(0), "at the tip both are level"),
        Limit(
            "half_angle_1",
            lambda s, sp: s.half_angle_2,
            lambda s, sp: sp.Integer(0),
            "equal angles keep the lips level",
        ),
    ),
)

idle_radius = Relation(
    name="idle_radius",
    result="idle_radius",
    givens=("feed", "half_angle_1", "half_angle_2"),
    says="where the lips are further apart than half the feed, the lagging lip no longer reaches the work",
    formula=lambda s, sp: s.feed / 2 / _slopes(s, sp),
    steps=(
        let(
            "g",
            "The gap between the lips grows with the radius by this much for each millimetre.",
            lambda s, sp: _slopes(s, sp),
        ),
        let(
            "f_z",
            "From one lip's pass to the next is half a turn, in which the drill goes forward by half the feed.",
            lambda s, sp: s.feed / 2,
        ),
        read_off(
            "The lagging lip just reaches the work where the gap is as large as that.",
            lambda s, sp: s.idle_radius * s.local("g"),
            lambda s, sp: s.local("f_z"),
        ),
        follow(
            "Put in both and divide. Further out only the leading lip cuts, and takes the whole feed.",
            lambda s, sp: s.idle_radius,
            lambda s, sp: s.feed / 2 / _slopes(s, sp),
        ),
    ),
    assumptions=(
        "The drill does not give way: its tip stays on the axis of the hole.",
        "If the radius found lies beyond the corner, both lips cut all along, but not equally.",
    ),
    sources=_DRAWING,
    limits=(
        Limit(
            "feed",
            lambda s, sp: sp.Integer(0),
            lambda s, sp: sp.Integer(0),
            "the lighter the feed, the less of the lagging lip cuts",
        ),
    ),
    conditions=(_UNEQUAL,),
)

rolled_reading = Relation(
    name="rolled_reading",
    result="rolled_reading",
    givens=("point_angle", "roll_angle"),
    says="a drill that is not held with its lips square to the eye reads too sharp an angle",
    formula=lambda s, sp: 2 * sp.atan(sp.tan(s.kappa) * sp.cos(s.roll_angle)),
    steps=(
        let(
            "w",
            "Held square, a piece of lip that drops one millimetre along the axis goes out this far.",
            lambda s, sp: sp.tan(s.kappa),
        ),
        let(
            "w_s",
            "Roll the drill by ρ. The drop is seen as before, but the way out is turned towards the eye and looks "
            "shorter.",
            lambda s, sp: s.local("w") * sp.cos(s.roll_angle),
        ),
        read_off(
            "The eye sees half an angle whose tangent is the seen way out over the drop of one.",
            lambda s, sp: sp.tan(s.rolled_reading / 2),
            lambda s, sp: s.local("w_s"),
        ),
        follow(
            "Put in the ways, take the angle, and double it for both lips. It never reads high.",
            lambda s, sp: s.rolled_reading,
            lambda s, sp: 2 * sp.atan(sp.tan(s.kappa) * sp.cos(s.roll_angle)),
        ),
    ),
    assumptions=("The axis stays square to the line of sight; only the roll is wrong.", "The web is thin."),
    sources=_DRAWING,
    limits=(
        Limit("roll_angle", lambda s, sp: sp.Integer(0), lambda s, sp: s.point_angle, "held square it reads true"),
    ),
)

RELATIONS: tuple[Relation, ...] = (
    lip_height_difference,
    point_offset,
    offset_from_run_out,
    oversize,
    largest_hole,
    lip_height_from_angles,
    idle_radius,
    rolled_reading,
)
