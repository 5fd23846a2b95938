"""What is done with a used drill, and why: leave it alone, regrind, re-point, thin, scrap it, or pass it on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType
from typing import Literal

from attrs import frozen

from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.fault import Fault
from drillpoint.ground.diagnosis.faults import Report
from drillpoint.ground.diagnosis.readings import Measured, worked_out
from drillpoint.planning.shop import Shop
from drillpoint.planning.used_drill import Job, Wear
from drillpoint.planning.web_growth import WebGrowth
from drillpoint.planning.words import length
from drillpoint.quantities import capital, quantity
from drillpoint.relations import regrinds_left

Decision = Literal["leave alone", "regrind", "re-point", "thin", "scrap", "pass on"]
SAYS: Mapping[Decision, str] = MappingProxyType(
    {
        "leave alone": "Leave it alone: nothing has to be ground.",
        "regrind": "Regrind it: the same point, ground sharp and level again.",
        "re-point": "Re-point it: grind it to another point angle.",
        "thin": "Thin the web, and leave the lips as they are.",
        "scrap": "Scrap it: mark it and take it out of the tray.",
        "pass on": "Pass it on: this shop cannot grind it.",
    }
)
GROUND: tuple[Decision, ...] = ("regrind", "re-point")
"""The decisions that take the drill to the wheel with its flanks."""

_NOT_GROUND, _AT_THE_WEB = 0, 5
"""Places in the order of grinding that leave the flanks alone."""
_ACROSS = " The reading error reaches across: measure again first."


@frozen
class Flutes:
    """How much flute a drill has, and needs. left: after the grind, from the corners; needed: for the deepest hole and
    the chips; mm. regrinds: how many more such grinds there are after this one, whole ones.
    """

    left: Measured
    needed: float
    regrinds: int

    @property
    def short(self) -> bool:
        """Whether too little is left."""
        return self.left.value < self.needed

    @property
    def doubtful(self) -> bool:
        """Whether the reading error reaches across."""
        return abs(self.left.value - self.needed) <= self.left.plus_minus


def flutes(case: Case, wear: Wear, job: Job, shop: Shop, corners: Measured) -> Flutes | None:
    """What flute is left when the corners have lost so much; None where it, or what is to be drilled, is not known."""
    flute, diameter = wear.read("flute_length"), case.readings.diameter
    if flute is None or job.deepest_hole is None or diameter is None:
        return None
    left = worked_out(lambda whole, off: whole - off, flute, corners)
    needed = job.deepest_hole + shop.flute_reserve * diameter
    usable = left.value - needed
    more = regrinds_left(usable_length=usable, stock=corners.value) if usable > 0 and corners.value else 0.0
    return Flutes(left, needed, int(more + 1e-9))


def decided(
    case: Case,
    wear: Wear,
    report: Report,
    shop: Shop,
    wanted: tuple[str, ...],
    web: WebGrowth | None,
    fluting: Flutes | None,
) -> tuple[Decision, tuple[str, ...]]:
    """The decision, with its reasons in words. wanted: why the flanks have to be ground, if they have to."""
    if wear.cracked:
        return "scrap", ("A crack, a split web or a bent drill is never ground out: it breaks at work.",)
    thinned = (*(web.reasons(now=not wanted) if web else ()), *map(_called, off_centre(report)))
    if not wanted and not thinned:
        return "leave alone", tuple(_sound(case, wear, report, shop))
    if cannot := tuple(_cannot(case, wear, shop)):
        return "pass on", cannot
    if wanted and fluting and fluting.short:
        return "scrap", (*wanted, _too_short(fluting, shop))
    if not wanted:
        return "thin", thinned
    changed = abs(case.angle.value - case.limits.point_angle) > shop.repoint_from
    return "re-point" if changed else "regrind", (*wanted, *thinned)


def at_the_flanks(fault: Fault) -> bool:
    """Whether a fault is shown, stands for itself, and is cured where the flanks are ground."""
    return _stands(fault) and fault.kind.order not in (_NOT_GROUND, _AT_THE_WEB)


def off_centre(report: Report) -> tuple[Fault, ...]:
    """A web that is shown to lie beside the axis, and so is thinned on its thicker side; nothing where it is not."""
    return tuple(f for f in report.faults if _stands(f) and f.key == "web_off_centre")


def not_for_the_wheel(report: Report) -> tuple[Fault, ...]:
    """Faults that are shown and that no wheel cures, such as a worn body."""
    return tuple(f for f in report.faults if _stands(f) and f.kind.order == _NOT_GROUND)


def _stands(fault: Fault) -> bool:
    return fault.confidence == "shown" and not fault.follows_from


def _called(fault: Fault) -> str:
    return f"{capital(str(fault.evidence[0]))} That is called {fault.name}."


def _cannot(case: Case, wear: Wear, shop: Shop) -> Iterator[str]:
    """Why this shop cannot grind the drill."""
    diameter, angle = case.readings.diameter, case.limits.point_angle
    low, high = shop.smallest_diameter, shop.largest_diameter
    if diameter is not None and not low <= diameter <= high:
        whose = shop.whose("smallest_diameter" if diameter < low else "largest_diameter")
        yield f"The drill is {length(diameter)}; this shop grinds {length(low)} to {length(high)} ({whose})."
    if not shop.sharpest_point <= angle <= shop.flattest_point:
        show = quantity("point_angle").show
        yield (
            f"Wanted is a point of {show(angle)}; this shop grinds {show(shop.sharpest_point)} to "
            f"{show(shop.flattest_point)} ({shop.whose('sharpest_point')})."
        )
    if wear.drill_material not in shop.grinds:
        yield f"The drill is {wear.drill_material}; this shop has a wheel for {' and '.join(shop.grinds)} only."


def why_ground(case: Case, wear: Wear, report: Report, shop: Shop) -> tuple[str, ...]:
    """Why the flanks have to be ground, in words; nothing where they need not be."""
    return tuple(_why_ground(case, wear, report, shop))


def _why_ground(case: Case, wear: Wear, report: Report, shop: Shop) -> Iterator[str]:
    diameter = case.readings.diameter or 0.0
    land, allowed = wear.read("wear_land"), shop.wear_share * diameter
    if land and land.value > allowed:
        sure = _ACROSS if land.value - land.plus_minus <= allowed else ""
        yield (
            f"The wear land is {length(land)}, and this drill is ground from {length(allowed)} on "
            f"({shop.whose('wear_share')}).{sure}"
        )
    if case.readings.worn_margin:
        yield f"The corner is worn or burnt for {length(case.readings.worn_margin)}."
    if wear.chip_depth:
        yield f"A lip is chipped {length(wear.chip_depth)} deep."
    for fault in report.faults:
        if not at_the_flanks(fault):
            continue
        if fault.key == "wrong_point_angle":
            wanted = quantity("point_angle").show(case.limits.point_angle)
            yield f"The point angle reads {case.angle.show('point_angle')}, and {wanted} is wanted."
        else:
            yield _called(fault)


def _sound(case: Case, wear: Wear, report: Report, shop: Shop) -> Iterator[str]:
    """Why nothing has to be ground, and what is worth a second look."""
    land, allowed = wear.read("wear_land"), shop.wear_share * (case.readings.diameter or 0.0)
    if land and land.value:
        whose, sure = shop.whose("wear_share"), _ACROSS if land.value + land.plus_minus > allowed else ""
        yield f"The wear land of {length(land)} is within the {length(allowed)} allowed ({whose}).{sure}"
    yield "The readings show nothing for sure that a wheel would cure, and each grind makes a drill shorter."
    doubtful = [f.name for f in report.faults if f.confidence == "possible" and not f.follows_from]
    if doubtful:
        yield f"Read again with a better tool, because the reading error reaches the limit: {'; '.join(doubtful)}."


def _too_short(fluting: Flutes, shop: Shop) -> str:
    sure = _ACROSS if fluting.doubtful else ""
    return (
        f"After that the flutes are {length(fluting.left)} long, and {length(fluting.needed)} are needed: "
        f"the deepest hole, and {shop.flute_reserve:g} × the diameter for the chips "
        f"({shop.whose('flute_reserve')}).{sure}"
    )
