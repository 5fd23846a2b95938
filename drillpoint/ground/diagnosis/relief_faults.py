"""Faults of the relief: too little, none, too much, unequal, and what the chisel edge tells of it."""

from __future__ import annotations

from collections.abc import Iterator

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.evidence import Evidence, at_least, at_most, difference
from drillpoint.ground.diagnosis.fault import Fault, Finding, called
from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.ground.diagnosis.spoken import said
from drillpoint.quantities import quantity
from drillpoint.relation import Value
from drillpoint.relations import chisel_edge_angle, feed_relief_loss, flank_fall

_ANGLE_SCALE = 5.0
_HEIGHT_SCALE = 0.1
_GEOMETRY = "follows from the geometry"
_NONE = "hardly any relief at all"
_TELL_TALE = 95.0


def relief_faults(case: Case) -> Iterator[Finding]:
    """Everything that reliefs, heel and chisel edge angle tell."""
    negative = _called("negative_relief", case, _negative(case))
    little = _called("too_little_relief", case, _too_little(case))
    if isinstance(negative, Fault):
        # Too little of it is then no news.
        little = None
    much = _called("too_much_relief", case, _too_much(case))
    yield from (finding for finding in (negative, little, much) if finding)
    if unequal := _unequal(case):
        yield unequal
    yield from _chisel_edge(case, *(f for f in (negative, little, much) if isinstance(f, Fault)))


def _called(key: str, case: Case, evidence: list[Evidence]) -> Finding | None:
    """The finding, with its stock, if there is any evidence to look at."""
    if not evidence:
        return None
    stock, where = _stock(key, case)
    return called(key, *evidence, stock=stock, stock_at=where, remarks=tuple(_about(key, case)))


def _negative(case: Case) -> list[Evidence]:
    found = [
        at_least(f"{_what(name)} is", name, relief, 0.0, _GEOMETRY, scale=_ANGLE_SCALE)
        for name, relief in case.readings.reliefs
    ]
    # With the relief at the corner known, a heel that stands proud tells of a flank that comes up again.
    heel = case.readings.read("heel_height")
    if heel and not found:
        found.append(_heel(heel))
    return found


def _heel(heel: Measured) -> Evidence:
    return at_most("the heel stands above its corner by", "heel_height", heel, 0.0, _GEOMETRY, scale=_HEIGHT_SCALE)


def _too_little(case: Case) -> list[Evidence]:
    limits, r = case.limits, case.readings
    whose = limits.whose("lowest_lip_relief")
    found = [
        at_least(f"{_what(name)} is", name, relief, limits.lowest_lip_relief, whose, scale=_ANGLE_SCALE)
        for name, relief in r.reliefs
    ]
    clearance, heel, height = r.read("heel_clearance"), r.heel_angle, r.read("heel_height")
    if clearance and heel:
        words = "behind the corner the flank is clear for"
        found.append(
            at_least(words, "heel_clearance", clearance, heel, "the heel of this drill", scale=4 * _ANGLE_SCALE)
        )
    if height and r.reliefs:
        found.append(_heel(height))
    if r.chisel_edge_leans_back and r.edge:
        words = "the chisel edge leans back; counted from the flank's side its angle is"
        found.append(at_least(words, "chisel_edge_angle", r.edge, 90.0, _GEOMETRY, scale=_ANGLE_SCALE))
    return found


def _too_much(case: Case) -> list[Evidence]:
    limit, whose = case.limits.highest_lip_relief, case.limits.whose("highest_lip_relief")
    return [
        at_most(f"{_what(name)} is", name, relief, limit, whose, scale=_ANGLE_SCALE)
        for name, relief in case.readings.reliefs
    ]


def _unequal(case: Case) -> Finding | None:
    if not case.readings.reads("lip_relief_1", "lip_relief_2"):
        return None
    (_, first), (_, second) = case.readings.reliefs
    apart = Measured(first.value - second.value, first.plus_minus + second.plus_minus)
    limit, whose = case.limits.relief_difference, case.limits.whose("relief_difference")
    return called("unequal_relief", difference("the lip reliefs differ by", "relief_difference", apart, limit, whose))


def _chisel_edge(case: Case, *reliefs: Fault) -> Iterator[Finding]:
    edge, limits = case.readings.edge, case.limits
    if edge is None:
        return
    words = "the chisel edge angle (obtuse) is" if edge.value >= 90 else "the chisel edge leans back, and its angle is"
    low, high = limits.lowest_chisel_edge_angle, limits.highest_chisel_edge_angle
    little = at_least(
        words, "chisel_edge_angle", edge, low, limits.whose("lowest_chisel_edge_angle"), scale=_ANGLE_SCALE
    )
    much = at_most(
        words, "chisel_edge_angle", edge, high, limits.whose("highest_chisel_edge_angle"), scale=_ANGLE_SCALE
    )
    for key, evidence, causes in (
        ("chisel_tells_little", little, ("negative_relief", "too_little_relief")),
        ("chisel_tells_much", much, ("too_much_relief",)),
    ):
        from_relief = next((f.name for f in reliefs if f.key in causes), "")
        remarks = tuple(_about_edge(case, edge)) if evidence.speaks else ()
        yield called(key, evidence, remarks=remarks, follows_from=from_relief)


def _about_edge(case: Case, edge: Measured) -> Iterator[str]:
    if edge.value < 90:
        yield "Leaning back, it tells of a flank that stands above its lip at the centre."
        return
    if edge.value <= _TELL_TALE:
        yield f"At {quantity('chisel_edge_angle').show(_TELL_TALE)} or less there is {_NONE}."
    try:
        relief = chisel_edge_angle.solve("axial_relief", chisel_edge_angle=edge.value, point_angle=case.angle.value)
    except DrillpointError:
        return
    if isinstance(relief, Value):
        shown = relief.quantity.show(relief)
        yield f"On a plane flank this chisel edge goes with a relief of {shown}, square to the lip."
    limits = case.limits
    reliefs = [m.value for _, m in case.readings.reliefs]
    if reliefs and edge.value < limits.lowest_chisel_edge_angle and min(reliefs) >= limits.lowest_lip_relief:
        yield "The relief is right at the corner. One plane flat does this: it wants a curved flank or a second facet."


def _about(key: str, case: Case) -> Iterator[str]:
    r = case.readings
    if key == "too_much_relief" or not r.diameter or not r.reliefs:
        return
    lowest = min(m.value for _, m in r.reliefs)
    if r.feed:
        loss = feed_relief_loss(feed=r.feed, radius=r.diameter / 2)
        feed, taken = said("feed", r.feed), loss.quantity.show(loss)
        rubs = "more than there is: the flank rubs" if lowest < loss else "and the rest is left to cut with"
        yield f"A feed of {feed} takes {taken} of the relief at the corner, {rubs}."
    if lowest < 0 and r.heel_angle:
        proud = flank_fall.unchecked(radius=r.diameter / 2, relief_at_radius=lowest, turn_share=r.heel_angle / 360)
        shown = said("heel_height", -proud)
        yield f"Carried on as it starts, the flank stands {shown} above the lip at the heel."


def _stock(key: str, case: Case) -> tuple[Value | None, str]:
    """What has to come off so that the whole land as far as the heel has the least, or the most, relief asked for."""
    r = case.readings
    if not r.diameter or not r.heel_angle:
        return None, ""
    # Where the heel itself was measured nothing has to be taken for granted between it and the lip.
    many = key == "too_much_relief"
    wanted = case.limits.highest_lip_relief if many else case.limits.lowest_lip_relief
    share = r.heel_angle / 360
    asked = flank_fall.unchecked(radius=r.diameter / 2, relief_at_radius=wanted, turn_share=share)
    if r.heel_height is not None and not many:
        there = -r.heel_height
    elif r.reliefs:
        values = [m.value for _, m in r.reliefs]
        worst = max(values) if many else min(values)
        there = flank_fall.unchecked(radius=r.diameter / 2, relief_at_radius=worst, turn_share=share)
    else:
        return None, ""
    stock = there - asked if many else asked - there
    if stock <= 0:
        return None, ""
    return Value(stock, "stock"), "off the lip at most, if the whole land is ground" if many else "off the heel only"


def _what(name: str) -> str:
    return f"the {quantity(name).term} at the corner" if name == "lip_relief" else f"the {quantity(name).term}"
