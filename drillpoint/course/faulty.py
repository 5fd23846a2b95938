"""Drills that are ground wrong on purpose, for tasks that ask what is wrong.

Each is an otherwise sound point of one of several kinds, and is inspected. What is wrong with it is what the diagnosis
finds from the printed readings alone; a drill of which that is not the fault it was ground for is not handed out.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from attrs import field, frozen

from drillpoint.course.sound_points import SOUND_POINTS, WEB_SHARE, SoundPoint
from drillpoint.errors import DrillpointError
from drillpoint.quantities import QUANTITIES

if TYPE_CHECKING:
    from drillpoint.ground import GroundPoint, Readings

FAULT, AMOUNT, FLANK = "fault", "amount", "flank"
DRAWN_HERE = (FAULT, AMOUNT, FLANK)
"""Names of what is drawn for each student beside the givens: which fault, how far it goes, on which sound point."""
SOUND = "sound"
SOUND_NAME = "nothing: the point is sound"
SOUND_CURE = "Nothing: leave the point as it is."
# Decimals in which a reading is printed where those of its quantity would say more than a shop can read.
_DECIMALS = {"lip_relief_1": 1, "lip_relief_2": 1, "chisel_edge_angle": 0, "heel_clearance": 0}

Grind = Mapping[str, float]
# How a fault is ground, from how far it goes (0 to 1), the diameter and the sound point: what changes on both flanks,
# on the second one, on the drill. Lengths grow with the diameter, as they do in a shop.
_GROUND: Mapping[str, Callable[[float, float, SoundPoint], tuple[Grind, Grind, Grind]]] = {
    SOUND: lambda far, diameter, sound: ({}, {}, {}),
    "unequal_angles": lambda far, diameter, sound: ({}, {"point_angle": sound.point_angle + 2.0 + 4.0 * far}, {}),
    "unequal_lips": lambda far, diameter, sound: ({}, {"flank_height": (0.015 + 0.02 * far) * diameter}, {}),
    "too_little_relief": lambda far, diameter, sound: ({"lip_relief": 2.0 + 5.0 * far}, {}, {}),
    "negative_relief": lambda far, diameter, sound: ({"lip_relief": -2.0 - 6.0 * far}, {}, {}),
    "too_much_relief": lambda far, diameter, sound: ({"lip_relief": 28.0 + 7.0 * far}, {}, {}),
    "unequal_relief": lambda far, diameter, sound: ({}, {"lip_relief": sound.lip_relief + 2.6 + 1.6 * far}, {}),
    "wrong_point_angle": lambda far, diameter, sound: ({"point_angle": sound.point_angle + 5.0 + 4.0 * far}, {}, {}),
    "thick_web": lambda far, diameter, sound: ({}, {}, {"web": (0.20 + 0.05 * far) * diameter}),
    "web_off_centre": lambda far, diameter, sound: ({}, {}, {"web_offset": (0.015 + 0.012 * far) * diameter}),
}
KNOWN_FAULTS = tuple(_GROUND)


@frozen
class FaultyDrill:
    """A drill as it lies on the bench: the point, its fault by keyword, and its readings as they are printed."""

    point: GroundPoint = field(repr=False)
    fault: str
    sound: SoundPoint
    """What was to be ground."""
    printed: tuple[tuple[str, str], ...]
    """The term of each reading and its value with the unit."""


@lru_cache(maxsize=2048)
def drill_with(
    fault: str, far: float, diameter: float, readings: tuple[str, ...], flank: str = "plane"
) -> FaultyDrill | str:
    """Grind a drill with this fault and read it; a sentence where its readings do not show just this fault.

    flank: of which of `SOUND_POINTS` it is made.
    """
    from drillpoint.ground import Limits, Readings, find_faults

    sound = SOUND_POINTS[flank]
    try:
        point = _wrong_on_purpose(fault, far, diameter, sound)
        exact = Readings.of(point.inspect())
    except DrillpointError:
        return f"{sound.says} cannot be ground with {fault}"
    taken = {name: _printed_value(name, exact) for name in ("diameter", *readings)}
    errors = {name: 0.5 * 10.0 ** -_decimals(name) for name in taken}
    higher = exact.higher_lip if taken.get("lip_height_difference") else None
    read: dict[str, Any] = {**taken, "higher_lip": higher, "reading_errors": errors}
    try:
        report = find_faults(Readings(**read), limits=Limits(point_angle=sound.point_angle))
    except DrillpointError as error:
        return str(error).splitlines()[0]
    causes = [found.key for found in report.faults if not found.follows_from]
    found = causes[0] if causes else SOUND
    if found != fault:
        return f"the readings of a drill ground for {fault} show {found}"
    if causes and report.faults[0].confidence != "shown":
        return f"the readings of a drill ground for {fault} do not show it for sure"
    printed = [(QUANTITIES[name].term, _shown(name, value, exact)) for name, value in taken.items()]
    if higher:
        printed.append(("nearer to the tip at its corner stands", f"lip {higher}"))
    return FaultyDrill(point, fault, sound, tuple(printed))


def _wrong_on_purpose(fault: str, far: float, diameter: float, sound: SoundPoint) -> GroundPoint:
    from drillpoint.ground import Flute, GroundPoint

    both, second, drill = _GROUND[fault](far, diameter, sound)
    first = {"point_angle": sound.point_angle, "lip_relief": sound.lip_relief, "flank_height": 0.0, **both}
    flute: dict[str, Any] = {"web": round(WEB_SHARE * diameter, 3), **drill}
    return GroundPoint(
        Flute(diameter=diameter, point_angle=sound.point_angle, **flute),
        sound.flank(diameter, **first),
        sound.flank(diameter, **{**first, **second}),
    )


def fault_options(
    faults: tuple[str, ...], right: str
) -> tuple[list[tuple[str, tuple[str, str] | None]], list[tuple[str, tuple[str, str] | None]]]:
    """What may be chosen as the fault and as its cure: each with the slip it stands for, None for the right one."""
    names, cures = [], []
    for fault in faults:
        name, cure, sign = _about(fault)
        told = None if fault == right else (f"taken for “{name}”", sign)
        names.append((name, told))
        cures.append((cure, None if fault == right else (f"cure for “{name}”", "This puts another fault right.")))
    return names, cures


def about_fault(fault: str) -> tuple[str, str]:
    """The name of a fault and its cure, for the worked solution."""
    name, cure, _ = _about(fault)
    return name, cure


def readable() -> tuple[str, ...]:
    """The readings that can be printed."""
    from drillpoint.ground.diagnosis.readings import usual_errors

    return tuple(name for name in usual_errors() if name not in ("feed", "roll_angle", "hole_diameter", "worn_margin"))


def _about(fault: str) -> tuple[str, str, str]:
    if fault == SOUND:
        return SOUND_NAME, SOUND_CURE, "One of the readings is off by more than it may be; compare the two lips first."
    from drillpoint.ground.diagnosis.fault import kinds

    kind = kinds()[fault]
    terms = " and ".join(QUANTITIES[name].term for name in kind.settled_by)
    return kind.name, kind.cure, f"That fault would show in {terms}; hold these against what is wanted."


def _printed_value(name: str, exact: Readings) -> float:
    measured = exact.angle if name == "point_angle" else exact.read(name)
    value = measured.value if measured else 0.0
    return round(value, _decimals(name)) + 0.0


def _shown(name: str, value: float, exact: Readings) -> str:
    """A reading as it is printed; a chisel edge that leans back is told as the drawing tells it."""
    if name == "chisel_edge_angle" and exact.chisel_edge_leans_back:
        return f"{QUANTITIES[name].show(180 - value, _decimals(name))}, past square"
    return QUANTITIES[name].show(value, _decimals(name))


def _decimals(name: str) -> int:
    return _DECIMALS.get(name, QUANTITIES[name].decimals)
