"""Faults of the point as a whole and of the drill behind it: angle, web, turn, body, and the hole it made."""

from __future__ import annotations

from collections.abc import Iterator

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.evidence import at_most, difference
from drillpoint.ground.diagnosis.fault import Finding, called
from drillpoint.ground.diagnosis.readings import Measured, worked_out
from drillpoint.ground.diagnosis.spoken import said, said_of
from drillpoint.quantities import quantity
from drillpoint.relation import Value
from drillpoint.relations import (
    chisel_edge_length,
    chisel_edge_rake,
    oversize,
    rolled_reading,
    stock_for_angle_change,
    stock_for_worn_corner,
    web_from_ratio,
    web_ratio,
)

_RATIO_SCALE = 0.05
# A turn keeps the flank's steepest slope, so the rake of the chisel edge stays as it was, within a curved flank's bend.
_SAME_RAKE = 3.0
_NOT_THE_LIPS = (
    "If the half angles agree as well, the lips cannot make it, and grinding them does not cure it. Look for run-out "
    "of drill and spindle with an indicator, for a bent drill, and for loose work."
)


def drill_faults(case: Case) -> Iterator[Finding]:
    """Everything that is not seen by comparing the lips or by looking at the relief."""
    for look in (_point_angle, _thick_web, _turned, _body, _hole):
        finding = look(case)
        if finding:
            yield finding


def _point_angle(case: Case) -> Finding | None:
    angle = case.readings.angle
    if not angle:
        return None
    wanted = quantity("point_angle").show(case.wanted_angle)
    off = Measured(angle.value - case.wanted_angle, angle.plus_minus)
    evidence = difference(
        f"the point angle is {angle.show('point_angle')}, which differs from the {wanted} wanted by",
        "point_angle_tolerance",
        off,
        case.limits.point_angle_tolerance,
        case.limits.whose("point_angle_tolerance"),
    )
    stock = _stock_for_angle(case, angle.value)
    where = "off the tip" if off.value < 0 else "off the corners"
    return called("wrong_point_angle", evidence, stock=stock, stock_at=where, remarks=tuple(_about_angle(case, angle)))


def _stock_for_angle(case: Case, angle: float) -> Value | None:
    if not case.readings.diameter:
        return None
    try:
        stock: Value = stock_for_angle_change(
            diameter=case.readings.diameter, point_angle=angle, new_point_angle=case.wanted_angle
        )
    except DrillpointError:
        return None
    return stock


def _about_angle(case: Case, angle: Measured) -> Iterator[str]:
    if angle.value >= case.wanted_angle or not angle.plus_minus or case.readings.roll_angle is not None:
        return
    try:
        roll = rolled_reading.solve("roll_angle", point_angle=case.wanted_angle, rolled_reading=angle.value)
    except DrillpointError:
        return
    if isinstance(roll, Value):
        shown = roll.quantity.show(roll)
        yield f"A right point reads so when the drill is rolled by {shown}; hold the lips square first."


def _thick_web(case: Case) -> Finding | None:
    web, diameter = case.readings.read("web"), case.readings.read("diameter")
    if not web or not diameter:
        return None
    limit = case.limits.web_ratio_limit
    ratio = worked_out(lambda w, d: float(web_ratio(web=w, diameter=d)), web, diameter)
    evidence = at_most(
        f"the web is {web.show('web')} thick, as a share of the diameter",
        "web_ratio",
        ratio,
        limit,
        case.limits.whose("web_ratio_limit"),
        scale=_RATIO_SCALE,
    )
    remarks = []
    if ratio.value > limit:
        thick = web.value - float(web_from_ratio(web_ratio=limit, diameter=diameter.value))
        remarks.append(f"To come to the limit, {said('web', thick / 2)} has to go on each side. The lips lose nothing.")
    edge = case.readings.edge
    if edge and edge.value >= 90:
        length = chisel_edge_length(web=web.value, chisel_edge_angle=edge.value)
        remarks.append(f"The chisel edge is now {said_of(length)} long.")
    return called("thick_web", evidence, remarks=tuple(remarks))


def _turned(case: Case) -> Finding | None:
    """The chisel edge turned, while the flank kept its steepness: the drill was held turned."""
    if not case.set_up:
        return None
    edge, asked = case.readings.edge, case.set_up.edge
    angle, wanted = case.readings.angle, case.set_up.angle
    if not edge or not asked or not angle or not wanted:
        return None
    now = worked_out(_steepness, angle, edge)
    meant = _steepness(wanted.value, asked.value)
    if abs(now.value - meant) > _SAME_RAKE + now.plus_minus:
        return None
    evidence = difference(
        f"the chisel edge stands at {edge.show('chisel_edge_angle')}, set for {asked.show('chisel_edge_angle')}: "
        "turned by",
        "turn_tolerance",
        Measured(asked.value - edge.value, edge.plus_minus + asked.plus_minus),
        case.limits.turn_tolerance,
        case.limits.whose("turn_tolerance"),
    )
    way = "ahead of" if asked.value > edge.value else "behind"
    where = "off the tip" if angle.value < wanted.value else "off the corners"
    return called(
        "turned",
        evidence,
        stock=_stock_for_angle(case, angle.value),
        stock_at=f"{where}, at least",
        remarks=(
            f"The flank is as steep as it was set, so only its direction is wrong: it stands {way} its lip.",
            "Point angle and relief are wrong because of it; do not reset them.",
        ),
    )


def _steepness(angle: float, edge: float) -> float:
    return float(chisel_edge_rake.unchecked(point_angle=angle, chisel_edge_angle=edge))


def _body(case: Case) -> Finding | None:
    body, point = case.readings.read("body_diameter"), case.readings.read("diameter")
    if not body or not point:
        return None
    apart = Measured(body.value - point.value, body.plus_minus + point.plus_minus)
    wide = apart.value > 0
    evidence = difference(
        f"the body is {'thicker' if wide else 'thinner'} than the point by",
        "body_difference",
        apart,
        case.limits.body_difference,
        case.limits.whose("body_difference"),
    )
    worn = case.readings.worn_margin
    stock = stock_for_worn_corner(worn_margin=worn) if wide and worn is not None else None
    return called(
        "worn_corners" if wide else "thin_body", evidence, stock=stock, stock_at="off the corners, along the axis"
    )


def _hole(case: Case) -> Finding | None:
    hole, diameter = case.readings.read("hole_diameter"), case.readings.read("diameter")
    if not hole or not diameter:
        return None
    wider = Measured(hole.value - diameter.value, hole.plus_minus + diameter.plus_minus)
    evidence = at_most(
        "the hole is wider than the drill by",
        "oversize",
        wider,
        case.limits.oversize,
        case.limits.whose("oversize"),
        scale=case.limits.oversize or 1.0,
    )
    most = case.most_by_lips
    if most is not None and wider.value - wider.plus_minus > most and not case.angles_differ:
        return called("wide_hole", evidence, cure_here=_NOT_THE_LIPS)
    return called("wide_hole", evidence, remarks=tuple(_about_hole(case, wider.value)) if evidence.speaks else ())


def _about_hole(case: Case, wider: float) -> Iterator[str]:
    try:
        height = oversize.solve("lip_height_difference", oversize=wider, point_angle=case.angle.value)
        length = oversize.solve("lip_length_difference", oversize=wider, point_angle=case.angle.value)
    except DrillpointError:
        return
    if isinstance(height, Value) and isinstance(length, Value):
        yield (
            f"If unequal lips alone did it, they differ by at least {said_of(height)} in height, "
            f"or {said_of(length)} in length."
        )
