"""How much has to come off for each fault, which of them decides, and what that takes off corners and tip."""

from __future__ import annotations

from collections.abc import Iterator

from attrs import frozen

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.faults import Report
from drillpoint.ground.diagnosis.readings import Measured, worked_out
from drillpoint.planning.shop import Shop
from drillpoint.planning.used_drill import Wear
from drillpoint.relations import (
    governing_stock,
    stock_for_angle_change,
    stock_for_chip,
    stock_for_wear_land,
    stock_for_worn_corner,
    tip_stock,
)

CORNERS, TIP, ONE_LIP = "both corners", "the tip", "the lip ahead"
_UNLEVEL = {"unequal_lips", "lip_height", "unequal_angles", "point_off_centre"}


@frozen
class Stock:
    """What one fault asks for: mm along the axis. fault: its keyword. says: in words. at: where it comes off."""

    fault: str
    says: str
    at: str
    amount: Measured


@frozen
class TakeOff:
    """What comes off a drill in all. stocks: those of each fault. decides: the fault that does, in words; "" for none.
    on_top: what comes on top of that at the tip, "" for nothing. doubtful: what else might decide, within the reading
    errors. corners, tip: mm along the axis, with the shop's allowance. ahead: how much more the lip that stands ahead
    loses, mm.
    """

    stocks: tuple[Stock, ...]
    decides: str
    on_top: str
    doubtful: tuple[str, ...]
    corners: Measured
    tip: Measured
    ahead: Measured


def take_off(case: Case, wear: Wear, report: Report, shop: Shop, new_angle: float, relief: Measured) -> TakeOff:
    """What comes off the drill of a case when it is ground to a new angle. relief: at the corner, for the wear land."""
    damage = tuple(_damage(case, wear, relief))
    ahead = _levelled(case, report)
    change = _angle_change(case, report, new_angle)
    deeper = next((s for s in change if s.at == CORNERS), None)
    at_corners = (*damage, *change) if deeper else damage
    need = max((s.amount for s in at_corners), key=lambda m: m.value, default=Measured(0.0))
    tip = _at_tip(case, need, new_angle) if change else need
    stocks = (*damage, *change, *ahead)
    return TakeOff(
        stocks,
        _decides(stocks),
        change[0].says if change and damage and not deeper else "",
        tuple(s.says for s in at_corners if s.amount.value < need.value and _reaches(s.amount, need)),
        _more(need, shop.finish_allowance),
        _more(tip, shop.finish_allowance),
        ahead[0].amount if ahead else Measured(0.0),
    )


def _damage(case: Case, wear: Wear, relief: Measured) -> Iterator[Stock]:
    land, chip, margin = wear.read("wear_land"), wear.read("chip_depth"), case.readings.read("worn_margin")
    if land and land.value:
        amount = worked_out(lambda b, a: stock_for_wear_land(wear_land=b, lip_relief=a), land, relief)
        yield Stock("wear_land", "the wear land", CORNERS, amount)
    if margin and margin.value:
        amount = worked_out(lambda m: stock_for_worn_corner(worn_margin=m), margin)
        yield Stock("worn_corner", "the worn corner", CORNERS, amount)
    if chip and chip.value:
        amount = worked_out(lambda c, a: stock_for_chip(chip_depth=c, point_angle=a), chip, case.angle)
        yield Stock("chip", "the chip", CORNERS, amount)


def _levelled(case: Case, report: Report) -> tuple[Stock, ...]:
    """What the lip ahead loses more than the other, where the lips are shown to be unequal."""
    unlevel = {fault.key for fault in report.faults if fault.confidence == "shown"} & _UNLEVEL
    if not unlevel:
        return ()
    for height in (case.height, case.height_from_angles, case.height_from_lengths):
        if height and height.value:
            amount = Measured(abs(height.value), height.plus_minus)
            return (Stock("unequal_lips", "the lip height difference", ONE_LIP, amount),)
    return ()


def _angle_change(case: Case, report: Report, new_angle: float) -> tuple[Stock, ...]:
    """What another point angle takes, off the tip for a flatter one and off the corners for a sharper one."""
    wrong = any(f.key == "wrong_point_angle" and f.confidence == "shown" for f in report.faults)
    diameter = case.readings.read("diameter")
    if not wrong or not diameter:
        return ()
    amount = worked_out(
        lambda d, a: stock_for_angle_change(diameter=d, point_angle=a, new_point_angle=new_angle), diameter, case.angle
    )
    at = TIP if new_angle > case.angle.value else CORNERS
    return (Stock("angle_change", "the change of angle", at, amount),)


def _at_tip(case: Case, corners: Measured, new_angle: float) -> Measured:
    """What the tip loses when the corners lose so much and the point gets another angle."""
    diameter = case.readings.read("diameter") or Measured(0.0)

    def tip(corner: float, d: float, angle: float) -> float:
        try:
            return float(
                tip_stock(corner_stock=max(corner, 0.0), diameter=d, point_angle=angle, new_point_angle=new_angle)
            )
        except DrillpointError:
            # A sharper point that takes all of it off the corners: the tip stays.
            return 0.0

    return worked_out(tip, corners, diameter, case.angle)


def _decides(stocks: tuple[Stock, ...]) -> str:
    """The fault that decides, in words: at the corners first, since both corners lose that much in any case."""
    for place in (CORNERS, TIP, ONE_LIP):
        there = [stock for stock in stocks if stock.at == place and stock.amount.value]
        if there and place == ONE_LIP:
            return there[0].says
        if there:
            return governing_stock(**{stock.fault: stock.amount.value for stock in there}).because
    return ""


def _reaches(less: Measured, more: Measured) -> bool:
    return less.value + less.plus_minus >= more.value - more.plus_minus


def _more(amount: Measured, allowance: float) -> Measured:
    return Measured(amount.value + allowance, amount.plus_minus)
