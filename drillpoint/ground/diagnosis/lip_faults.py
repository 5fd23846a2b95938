"""Faults that show when the two lips are compared: angles, lengths, heights, and where the point lies."""

from __future__ import annotations

import math
import operator
from collections.abc import Iterator
from typing import Any

from attrs import evolve

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.evidence import Evidence, difference
from drillpoint.ground.diagnosis.fault import Fault, Finding, called, kinds
from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.ground.diagnosis.spoken import said, said_of
from drillpoint.quantities import quantity
from drillpoint.relation import Value
from drillpoint.relations import idle_radius, largest_hole, oversize, stock_for_angle_change

_LEAST_SHARE = 0.005


def lip_faults(case: Case) -> Iterator[Finding]:
    """Unequal half angles, lips of unequal length or height, and a point or web off centre."""
    angles = _unequal_angles(case)
    if angles:
        yield angles
    has_angle_fault = isinstance(angles, Fault)
    lips = _the_one_and_the_other(_lengths(case, has_angle_fault), _heights(case, has_angle_fault))
    yield from lips
    yield from _off_centre(case, lips)


def _the_one_and_the_other(lengths: Finding | None, heights: Finding | None) -> list[Finding]:
    """Lengths and heights tell of the same fault; the surer one leads, and of two equally sure ones the lengths."""
    if isinstance(lengths, Fault) and isinstance(heights, Fault) and not heights.follows_from:
        if lengths.confidence == heights.confidence and not lengths.follows_from:
            heights = evolve(heights, follows_from=lengths.name)
        elif heights.confidence == "shown":
            lengths = evolve(lengths, follows_from=heights.name)
    return [f for f in (lengths, heights) if f]


def _unequal_angles(case: Case) -> Finding | None:
    if not case.half_angles:
        return None
    first, second = case.half_angles
    apart = case.readings.of_both_half_angles(operator.sub) or Measured(0.0)
    limit = case.limits.half_angle_difference
    evidence = difference(
        "the half angles differ by", "half_angle_difference", apart, limit, case.limits.whose("half_angle_difference")
    )
    stock, where = _stock_for_angles(case, first.value, second.value)
    remarks = tuple(_about_angles(case, first.value, second.value))
    return called("unequal_angles", evidence, remarks=remarks, stock=stock, stock_at=where)


def _about_angles(case: Case, first: float, second: float) -> Iterator[str]:
    ahead, behind = (1, 2) if first > second else (2, 1)
    yield f"Lip {ahead} is the flatter one, so its corner stands ahead of lip {behind}'s."
    height = case.height_from_angles
    if height:
        shown = _size(height, "lip_height_difference")
        yield f"At the corners that makes {shown} along the axis."
    if case.readings.feed and case.readings.diameter and first != second:
        radius = idle_radius(feed=case.readings.feed, half_angle_1=first, half_angle_2=second)
        feed = said("feed", case.readings.feed)
        if radius < case.readings.diameter / 2:
            yield f"At a feed of {feed} lip {behind} is idle outside a radius of {said_of(radius)}."
        else:
            yield f"At a feed of {feed} both lips still cut as far as the corner."


def _stock_for_angles(case: Case, first: float, second: float) -> tuple[Value | None, str]:
    """The stock where most has to come off, to bring both lips to the wanted angle with the tip on the axis."""
    diameter, wanted = case.readings.diameter, case.wanted_angle
    if not diameter:
        return None, ""
    try:
        # Positive: to a sharper angle, so the corner goes back. Negative: to a flatter one, so the tip does.
        changes = [
            math.copysign(
                stock_for_angle_change(diameter=diameter, point_angle=2 * k, new_point_angle=wanted), 2 * k - wanted
            )
            for k in (first, second)
        ]
    except DrillpointError:
        return None, ""
    tip = max(0.0, *(-c for c in changes))
    places = {"off the tip": tip}
    places |= {f"off the corner of lip {n}": tip + change for n, change in enumerate(changes, 1)}
    where = max(places, key=places.__getitem__)
    return Value(places[where], "stock"), where


def _lengths(case: Case, has_angle_fault: bool) -> Finding | None:
    longer, height = case.length_difference, case.height_from_lengths
    if longer is None or height is None:
        return None
    evidence = difference(
        f"the lips differ in length by {_size(longer, 'lip_length_difference')}, which makes a height difference of",
        "lip_height_difference",
        height,
        case.limits.lip_height_difference,
        case.limits.whose("lip_height_difference"),
    )
    share = case.length_from_angles
    from_angles = has_angle_fault and share is not None and abs(longer.value - share) < abs(share)
    by_angles = Measured(0.0)
    if share is not None and longer.value and case.angles_differ:
        by_angles = Measured(height.value * share / longer.value)
    return _unlevel("unequal_lips", case, evidence, (height, by_angles), from_angles, 1 if height.value > 0 else 2)


def _heights(case: Case, has_angle_fault: bool) -> Finding | None:
    height = case.height
    if height is None:
        return None
    evidence = difference(
        "the corners differ in height by",
        "lip_height_difference",
        height,
        case.limits.lip_height_difference,
        case.limits.whose("lip_height_difference"),
    )
    share = case.height_from_angles
    if share and not case.readings.higher_lip:
        share = Measured(abs(share.value), share.plus_minus)
    from_angles = has_angle_fault and share is not None and abs(height.value - share.value) < abs(share.value)
    by_angles = share if share and case.angles_differ else Measured(0.0)
    return _unlevel("lip_height", case, evidence, (height, by_angles), from_angles, case.readings.higher_lip)


def _unlevel(
    key: str,
    case: Case,
    evidence: Evidence,
    parts: tuple[Measured, Measured],
    from_angles: bool,
    higher: int | None,
) -> Finding:
    """parts: the height, and how much of it unequal half angles make."""
    whole, by_angles = parts
    height = Measured(whole.value - by_angles.value, whole.plus_minus + by_angles.plus_minus)
    if from_angles:
        remark = "The unequal half angles make most of this."
        return called(key, evidence, remarks=(remark,), follows_from=kinds()["unequal_angles"].name)
    lip = f"lip {higher}" if higher else "the lip that stands ahead"
    more: dict[str, Any] = {
        "stock": Value(abs(height.value), "stock"),
        "stock_at": f"off the flank of {lip}, along the axis",
    }
    remarks = list(_about_height(case, height))
    if abs(by_angles.value) > _LEAST_SHARE:
        share = _size(by_angles, "lip_height_difference")
        remarks.insert(0, f"The half angles have {share} of height to do with it; what follows is the rest.")
    return called(key, evidence, remarks=tuple(remarks), oversize=_wider(case, abs(height.value)), **more)


def _wider(case: Case, height: float) -> Value:
    wider: Value = oversize(lip_height_difference=height, point_angle=case.angle.value)
    return wider


def _about_height(case: Case, height: Measured) -> Iterator[str]:
    yield f"So the tip is {case.offset(height).show('point_offset')} off the axis."
    wider = _wider(case, abs(height.value))
    if height.plus_minus:
        furthest = _wider(case, abs(height.value) + height.plus_minus)
        yield f"Counting the reading error, the hole may be up to {said_of(furthest)} wider."
    if case.readings.diameter:
        widest = largest_hole(diameter=case.readings.diameter, oversize=wider)
        yield f"The hole is then at most {said_of(widest)} wide; a drill that is guided cuts less."
    if not case.readings.angle:
        yield f"The point angle was not read; {quantity('point_angle').show(case.wanted_angle)} was taken."
    if not case.half_angles:
        yield "Unequal half angles make such a difference too; read both to rule them out."


def _off_centre(case: Case, lips: list[Finding]) -> Iterator[Finding]:
    """The chisel edge beside the axis: because of the lips, because of the web, or nobody can tell."""
    limit, whose = case.limits.point_offset, case.limits.whose("point_offset")
    off, web = case.readings.read("point_offset"), case.readings.read("web_offset")
    by_web = [difference("the middle of the web is off the axis by", "point_offset", web, limit, whose)] if web else []
    by_edge = (
        [difference("the middle of the chisel edge is off the axis by", "point_offset", off, limit, whose)]
        if off
        else []
    )
    key = _whose_offset(case, off, lips) if off else "web_off_centre"
    if key == "web_off_centre" and (by_edge or by_web):
        yield called(key, *by_edge, *by_web, remarks=_about_web(web or off))
        return
    if by_web:
        yield called("web_off_centre", *by_web, remarks=_about_web(web))
    if by_edge and key == "point_off_centre":
        cause = next((f.name for f in lips if isinstance(f, Fault)), "")
        yield called(key, *by_edge, follows_from=cause)
    elif by_edge:
        yield called(key, *by_edge)


def _about_web(off: Measured | None) -> tuple[str, ...]:
    if not off:
        return ()
    thicker = said("web", 2 * abs(off.value))
    return (f"One half of the web is thicker than the other by twice that, {thicker}.",)


def _whose_offset(case: Case, off: Measured, lips: list[Finding]) -> str:
    """Whether the lips explain most of an offset of the chisel edge. The two parts stand square to each other."""
    height = case.height or case.height_from_lengths
    if height is None:
        return "chisel_off_centre"
    most = off.value / math.sqrt(2)
    by_lips = case.offset(height)
    if by_lips.value >= most:
        return "point_off_centre" if any(isinstance(f, Fault) for f in lips) else "chisel_off_centre"
    return "chisel_off_centre" if by_lips.value + by_lips.plus_minus >= most else "web_off_centre"


def _size(measured: Measured, name: str) -> str:
    return Measured(abs(measured.value), measured.plus_minus).show(name)
