"""Drills that are ground wrong on purpose, for tasks that ask what is wrong.

Each is ground from planes on an otherwise sound 135° point, and inspected. What is wrong with it is what the diagnosis
finds from the printed readings alone; a drill of which that is not the fault it was ground for is not handed out.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from attrs import field, frozen

from drillpoint.errors import DrillpointError
from drillpoint.quantities import QUANTITIES

if TYPE_CHECKING:
    from drillpoint.ground import GroundPoint, Readings

WANTED_ANGLE = 135.0
FAULT, AMOUNT = "fault", "amount"
DRAWN_HERE = (FAULT, AMOUNT)
"""Names of what is drawn for each student beside the givens: which fault, and how far it goes."""
SOUND = "sound"
SOUND_NAME = "nothing: the point is sound"
SOUND_CURE = "Nothing: leave the point as it is."
_SOUND_RELIEF = 19.2
_WEB_SHARE = 0.15
# Decimals in which a reading is printed where those of its quantity would say more than a shop can read.
_DECIMALS = {"lip_relief_1": 1, "lip_relief_2": 1, "chisel_edge_angle": 0, "heel_clearance": 0}

Grind = Mapping[str, float]
# How a fault is ground, from how far it goes (0 to 1): what changes on both flanks, on the second one, on the drill.
# Lengths grow with the diameter, as they do in a shop.
_GROUND: Mapping[str, Callable[[float, float], tuple[Grind, Grind, Grind]]] = {
    SOUND: lambda far, diameter: ({}, {}, {}),
    "unequal_angles": lambda far, diameter: ({}, {"point_angle": WANTED_ANGLE + 2.0 + 4.0 * far}, {}),
    "unequal_lips": lambda far, diameter: ({}, {"flank_height": (0.015 + 0.02 * far) * diameter}, {}),
    "too_little_relief": lambda far, diameter: ({"lip_relief": 2.0 + 5.0 * far}, {}, {}),
    "negative_relief": lambda far, diameter: ({"lip_relief": -2.0 - 6.0 * far}, {}, {}),
    "too_much_relief": lambda far, diameter: ({"lip_relief": 28.0 + 7.0 * far}, {}, {}),
    "unequal_relief": lambda far, diameter: ({}, {"lip_relief": _SOUND_RELIEF + 2.6 + 1.6 * far}, {}),
    "wrong_point_angle": lambda far, diameter: ({"point_angle": WANTED_ANGLE + 5.0 + 4.0 * far}, {}, {}),
    "thick_web": lambda far, diameter: ({}, {}, {"web": (0.20 + 0.05 * far) * diameter}),
    "web_off_centre": lambda far, diameter: ({}, {}, {"web_offset": (0.015 + 0.012 * far) * diameter}),
}
KNOWN_FAULTS = tuple(_GROUND)


@frozen
class FaultyDrill:
    """A drill as it lies on the bench: the point, its fault by keyword, and its readings as they are printed."""

    point: GroundPoint = field(repr=False)
    fault: str
    printed: tuple[tuple[str, str], ...]
    """The term of each reading and its value with the unit."""


@lru_cache(maxsize=2048)
def drill_with(fault: str, far: float, diameter: float, readings: tuple[str, ...]) -> FaultyDrill | str:
    """Grind a drill with this fault and read it; a sentence where its readings do not show just this fault."""
    from drillpoint.ground import Flute, GroundPoint, Limits, PlaneFlank, Readings, find_faults

    both, second, drill = _GROUND[fault](far, diameter)
    first = {"point_angle": WANTED_ANGLE, "lip_relief": _SOUND_RELIEF, **both}
    flute: dict[str, Any] = {"web": round(_WEB_SHARE * diameter, 3), **drill}
    point = GroundPoint(
        Flute(diameter=diameter, point_angle=WANTED_ANGLE, **flute),
        PlaneFlank(**first),
        PlaneFlank(**{**first, **second}),
    )
    exact = Readings.of(point.inspect())
    taken = {name: _printed_value(name, exact) for name in ("diameter", *readings)}
    errors = {name: 0.5 * 10.0 ** -_decimals(name) for name in taken}
    higher = exact.higher_lip if taken.get("lip_height_difference") else None
    read: dict[str, Any] = {**taken, "higher_lip": higher, "reading_errors": errors}
    try:
        report = find_faults(Readings(**read), limits=Limits(point_angle=WANTED_ANGLE))
    except DrillpointError as error:
        return str(error).splitlines()[0]
    causes = [found.key for found in report.faults if not found.follows_from]
    found = causes[0] if causes else SOUND
    if found != fault:
        return f"the readings of a drill ground for {fault} show {found}"
    if causes and report.faults[0].confidence != "shown":
        return f"the readings of a drill ground for {fault} do not show it for sure"
    printed = [(QUANTITIES[name].term, QUANTITIES[name].show(value, _decimals(name))) for name, value in taken.items()]
    if higher:
        printed.append(("lip that stands nearer to the tip at its corner", str(higher)))
    return FaultyDrill(point, fault, tuple(printed))


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


def _decimals(name: str) -> int:
    return _DECIMALS.get(name, QUANTITIES[name].decimals)
