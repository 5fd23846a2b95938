"""What is checked after the grind: each limit with whose it is, the tool, what was read before, and room for after."""

from __future__ import annotations

from collections.abc import Iterator

from attrs import frozen

from drillpoint.errors import DrillpointError
from drillpoint.ground import Limits, Readings
from drillpoint.ground.diagnosis.readings import Measured, usual_errors, usual_tools
from drillpoint.planning.deciding import GROUND, Decision
from drillpoint.planning.web_growth import WebGrowth
from drillpoint.planning.words import length, reading
from drillpoint.quantities import quantity
from drillpoint.relation import Value
from drillpoint.relations import lip_height_difference, web_from_ratio

NOT_READ = "not read"


@frozen
class Check:
    """One line of the inspection. what: is read; allowed: the limits, with whose they are; tool: and how far it may be
    off; before: what was read on the used drill. After the grind somebody writes beside it.
    """

    what: str
    allowed: str
    tool: str
    before: str


def checks(decision: Decision, readings: Readings, limits: Limits, web: WebGrowth | None) -> tuple[Check, ...]:
    """What is checked after the grind; nothing where nothing is ground."""
    if decision in GROUND:
        return (*_of_the_point(readings, limits), *_of_the_web(readings, limits, web), *_by_eye(limits))
    if decision == "thin":
        return (*_of_the_web(readings, limits, web), *_centre(readings, limits))
    return ()


def _of_the_point(readings: Readings, limits: Limits) -> Iterator[Check]:
    q = quantity
    angle = q("point_angle").show
    yield _check(
        "point angle",
        f"{angle(limits.point_angle)} ± {angle(limits.point_angle_tolerance, 1)}",
        limits.whose("point_angle_tolerance"),
        "half_angle_1",
        _said("point_angle", readings.angle),
    )
    yield _check(
        "half angles",
        f"at most {q('half_angle_difference').show(limits.half_angle_difference)} apart",
        limits.whose("half_angle_difference"),
        "half_angle_1",
        _pair("half_angle_1", readings.half_angle_1, readings.half_angle_2),
    )
    yield _check(
        "heights of the corners",
        f"at most {length(limits.lip_height_difference)} apart: {length(_longer(limits))} of lip length",
        limits.whose("lip_height_difference"),
        "lip_height_difference",
        _said("lip_height_difference", readings.lip_height_difference),
    )
    show = q("lip_relief").show
    yield _check(
        "lip relief, both",
        f"{show(limits.lowest_lip_relief)} to {show(limits.highest_lip_relief)}",
        _of_both(limits, "lowest_lip_relief", "highest_lip_relief"),
        "lip_relief",
        _pair("lip_relief", *(m.value for _, m in readings.reliefs)),
    )
    show = q("chisel_edge_angle").show
    yield _check(
        "chisel edge angle",
        f"{show(limits.lowest_chisel_edge_angle)} to {show(limits.highest_chisel_edge_angle)}, obtuse",
        _of_both(limits, "lowest_chisel_edge_angle", "highest_chisel_edge_angle"),
        "chisel_edge_angle",
        _said("chisel_edge_angle", readings.chisel_edge_angle),
    )
    yield from _centre(readings, limits)


def _of_both(limits: Limits, lowest: str, highest: str) -> str:
    """Whose the ends of a range are: each end has its own source."""
    low, high = limits.whose(lowest), limits.whose(highest)
    return low if low == high else f"the least: {low}; the most: {high}"


def _centre(readings: Readings, limits: Limits) -> Iterator[Check]:
    yield _check(
        "chisel edge off centre",
        f"at most {length(limits.point_offset)}",
        limits.whose("point_offset"),
        "point_offset",
        _said("point_offset", readings.point_offset),
    )


def _of_the_web(readings: Readings, limits: Limits, web: WebGrowth | None) -> Iterator[Check]:
    if readings.diameter is None:
        return
    most = float(web_from_ratio(web_ratio=limits.web_ratio_limit, diameter=readings.diameter))
    allowed = f"at most {length(most)}"
    if web and web.thin and web.thinned is not None:
        allowed = f"thinned: chisel edge {length(web.thinned)}, both sides alike"
    yield _check("web", allowed, limits.whose("web_ratio_limit"), "web", _said("web", readings.web))


def _by_eye(limits: Limits) -> Iterator[Check]:
    yield Check("by eye", "corners, lips and margins whole and sharp, without colour", "magnifier", "")
    yield Check(
        "trial hole, in scrap",
        f"at most {length(limits.oversize)} wider ({limits.whose('oversize')}); two equal chips",
        _with("hole_diameter"),
        "",
    )


def _check(what: str, allowed: str, whose: str, tool: str, before: str) -> Check:
    return Check(what, f"{allowed} ({whose})", _with(tool), before)


def _with(name: str) -> str:
    """The tool for a reading, in short, and how far it may be off."""
    return f"{usual_tools()[name].split(',')[0]}, ± {reading(name, usual_errors()[name])}"


def _longer(limits: Limits) -> float:
    """The difference of the lip lengths that makes the height difference allowed."""
    try:
        found = lip_height_difference.solve(
            "lip_length_difference",
            lip_height_difference=limits.lip_height_difference,
            point_angle=limits.point_angle,
        )
    except DrillpointError:
        return 0.0
    return float(found) if isinstance(found, Value) else 0.0


def _said(name: str, value: float | Measured | None) -> str:
    return NOT_READ if value is None else reading(name, value)


def _pair(name: str, *values: float | None) -> str:
    read = [reading(name, value) for value in values if value is not None]
    return " and ".join(read) if read else NOT_READ
