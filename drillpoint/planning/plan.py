"""A regrind plan: what to do with one used drill, why, and everything to have at hand when it is done."""

from __future__ import annotations

import inspect
from collections.abc import Iterator, Mapping
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from attrs import evolve, frozen

from drillpoint.errors import LearnerError, MissingGiven, OutOfRange, UnknownGiven
from drillpoint.ground import GroundPoint, Limits, Readings, find_faults
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.fault import Fault
from drillpoint.ground.diagnosis.faults import Report
from drillpoint.ground.diagnosis.readings import Measured, usual_errors
from drillpoint.pages import write_page
from drillpoint.planning.cautions import cautions
from drillpoint.planning.deciding import (
    GROUND,
    SAYS,
    Decision,
    Flutes,
    at_the_flanks,
    decided,
    flutes,
    not_for_the_wheel,
    off_centre,
    why_ground,
)
from drillpoint.planning.inspecting import Check, checks
from drillpoint.planning.shop import Shop, UsualPoint, usual_choices, usual_points, wear_errors
from drillpoint.planning.stocks import TakeOff, take_off
from drillpoint.planning.used_drill import Job, Wear
from drillpoint.planning.web_growth import WebGrowth, web_growth
from drillpoint.planning.wheel import Wheel, set_up
from drillpoint.planning.words import length
from drillpoint.quantities import capital, nearest, quantity

if TYPE_CHECKING:
    from drillpoint.planning.writing import Excerpt


@frozen(kw_only=True)
class RegrindPlan:
    """What to do with one used drill. Shows as a table in a notebook, as text elsewhere; `save` writes a page to print.

    name: of the drill. decision: one of "leave alone", "regrind", "re-point", "thin", "scrap", "pass on"; reasons: why,
    in words. new: the point to be ground. off: the stock of each fault, which decides, and what comes off corners and
    tip. web: how it grows and whether it is thinned. flutes: what is left of them. checks: what is
    inspected afterwards; limits: the same as `Limits`. cautions, notes: sentences. report: the faults that were found.
    """

    name: str
    readings: Readings
    wear: Wear
    job: Job
    shop: Shop
    limits: Limits
    decision: Decision
    reasons: tuple[str, ...]
    new: UsualPoint
    off: TakeOff
    web: WebGrowth | None
    flutes: Flutes | None
    checks: tuple[Check, ...]
    cautions: tuple[str, ...]
    notes: tuple[str, ...]
    report: Report

    @property
    def says(self) -> str:
        """The decision in a sentence."""
        if self.decision in GROUND and self.thin:
            return f"{SAYS[self.decision].rstrip('.')}, then thin the web."
        return SAYS[self.decision]

    @property
    def diameter(self) -> float:
        """Of the drill, mm."""
        return float(self.readings.diameter or 0.0)

    @property
    def ground(self) -> bool:
        """Whether its flanks are ground."""
        return self.decision in GROUND

    @property
    def thin(self) -> bool:
        """Whether its web is thinned."""
        return _is_thinned(self.decision, self.web, self.report)

    @cached_property
    def wheel(self) -> Wheel | None:
        """The set-up, worked out when it is first asked for; None where the flanks are not ground."""
        return _wheel(self.readings, self.shop, self.new, self.web) if self.ground else None

    def check(self, **read: Any) -> Report:
        """Hold what is read after the grind against the limits of the plan; `Readings` says what can be read.

        Raises what `Readings` raises.
        """
        return find_faults(Readings(**{"diameter": self.diameter, **read}), limits=self.limits)

    @property
    def cures(self) -> tuple[str, ...]:
        """What to grind for each fault that is shown and cured at the flanks, in the order of grinding."""
        found = [f for f in self.report.faults if at_the_flanks(f) and f.key != "wrong_point_angle"]
        return tuple(_cure(fault) for fault in sorted(found, key=lambda f: f.kind.order))

    @property
    def point(self) -> GroundPoint:
        """The point as it comes out of the plan, on the flutes this drill has: to draw, to inspect, to look at.

        Raises LearnerError where the plan grinds nothing.
        """
        if self.wheel is None or self.wheel.point is None:
            raise LearnerError(f"this plan grinds no point ({self.decision}); only one that regrinds or re-points does")
        return self.wheel.point

    def only(self, *titles: str) -> Excerpt:
        """Some parts of the plan by their titles, as in `plan.only("Why", "Stock")`.

        Raises UnknownGiven with the nearest title for a part that there is none of.
        """
        from drillpoint.planning.writing import Excerpt

        return Excerpt(self, titles)

    def save(self, path: str | Path, *, paper: str = "A4") -> Path:
        """Write the plan as one page to print, an .html file, and return its path. paper: "A4" or "Letter"."""
        from drillpoint.planning.page import page

        return write_page(path, page(self, paper))

    def __str__(self) -> str:
        from drillpoint.planning.writing import as_text

        return as_text(self)

    __repr__ = __str__

    def _repr_html_(self) -> str:
        from drillpoint.planning.writing import as_html

        return as_html(self)


def plan_regrind(
    *, name: str = "drill", shop: Shop | None = None, limits: Limits | None = None, **read: Any
) -> RegrindPlan:
    """A plan for one used drill, from what was read of it and what it is kept for.

    name: as it is called in the tray. shop: what the shop grinds and when; limits: what it lets pass; the usual ones
    when left out. Everything else is read off the drill or asked by the job, by name, in mm and degrees: the readings
    of `Readings` (diameter is needed), the wear and lengths of `Wear`, the wants of `Job`. reading_errors: how far a
    reading may be off, by its name.

    Raises UnknownGiven with the nearest name, MissingGiven without a diameter, OutOfRange for what no drill has.

    >>> plan_regrind(diameter=10, point_angle=118, wear_land=0.5, lip_relief=12, web=1.5, new_point_angle=118)
    """
    readings, wear, job = _sorted_out(read)
    new = _new_point(readings, job)
    shop, limits = shop or Shop(), evolve(limits or Limits(), point_angle=new.point_angle)
    case = Case(readings, limits)
    report = find_faults(readings, limits=limits)
    off = take_off(case, wear, report, shop, new.point_angle, _relief(readings, new))
    wanted = why_ground(case, wear, report, shop)
    # Where nothing is ground nothing comes off, so the web stays as it is.
    removed, edge = (off.tip, new.chisel_edge_angle) if wanted else (Measured(0.0), _edge_now(readings, new))
    web = web_growth(case, wear, shop, removed, edge)
    fluting = flutes(case, wear, job, shop, off.corners)
    decision, reasons = decided(case, wear, report, shop, wanted, web, fluting)
    return RegrindPlan(
        name=name,
        readings=readings,
        wear=wear,
        job=job,
        shop=shop,
        limits=limits,
        decision=decision,
        reasons=reasons,
        new=new,
        off=off,
        web=web,
        flutes=fluting,
        checks=checks(decision, readings, limits, web),
        cautions=cautions(decision, wear.drill_material, thin=_is_thinned(decision, web, report)),
        notes=(*_notes(readings, wear, job, new, decision, fluting), *map(_besides, not_for_the_wheel(report))),
        report=report,
    )


def _is_thinned(decision: Decision, web: WebGrowth | None, report: Report) -> bool:
    return decision == "thin" or (decision in GROUND and (bool(web and web.thin) or bool(off_centre(report))))


def _cure(fault: Fault) -> str:
    """What to grind for a fault. What comes off the lips is told once for all faults; the heel has its own."""
    if fault.stock is None or "heel" not in fault.stock_at:
        return fault.kind.cure
    return f"{fault.kind.cure} {capital(fault.stock_at)}: {length(float(fault.stock))}."


def _besides(fault: Fault) -> str:
    """What to know of a fault that no wheel cures."""
    return f"{capital(str(fault.evidence[0]))} {fault.kind.cure}"


def _sorted_out(read: Mapping[str, Any]) -> tuple[Readings, Wear, Job]:
    """What was given, as readings of the point, as wear and as wants of the job."""
    of_point, of_wear, of_job = (_names(cls) for cls in (Readings, Wear, Job))
    known = (*of_point, *(n for n in of_wear if n != "errors"), *of_job)
    for name in read:
        if name not in known:
            raise UnknownGiven(f"plan_regrind has no given called {name!r}{nearest(name, known)}")
    if read.get("diameter") is None:
        raise MissingGiven("plan_regrind needs diameter (drill diameter, for example 10 mm)")
    errors = dict(read.get("reading_errors", {}))
    for name in errors:
        if name not in {**usual_errors(), **wear_errors()}:
            every = (*usual_errors(), *wear_errors())
            raise UnknownGiven(f"reading_errors has no reading called {name!r}{nearest(name, every)}")
    for name in set(errors) & set(wear_errors()):
        if not 0 <= float(errors[name]) < float("inf"):
            raise OutOfRange(f"the reading error of {name} is {errors[name]!r}; give a number from 0 up, in its unit")
    own = {name: error for name, error in errors.items() if name in usual_errors()}
    given = {name: value for name, value in read.items() if name != "reading_errors"}
    readings = Readings(**{n: v for n, v in given.items() if n in of_point}, reading_errors=own)
    wear = Wear(
        **{n: v for n, v in given.items() if n in of_wear},
        errors={name: float(error) for name, error in errors.items() if name in wear_errors()},
    )
    return readings, wear, Job(**{n: v for n, v in given.items() if n in of_job})


def _names(cls: type) -> tuple[str, ...]:
    return tuple(name for name in inspect.signature(cls).parameters if name != "self")


def _new_point(readings: Readings, job: Job) -> UsualPoint:
    """The point to be ground: what the job asks for, and for the rest the usual point nearest to it."""
    read = readings.angle or Measured(quantity("point_angle").typical)
    near = _usual(job.new_point_angle if job.new_point_angle is not None else read.value)
    return UsualPoint(
        job.new_point_angle if job.new_point_angle is not None else near.point_angle,
        job.new_lip_relief if job.new_lip_relief is not None else near.lip_relief,
        job.new_chisel_edge_angle if job.new_chisel_edge_angle is not None else near.chisel_edge_angle,
        near.whose,
    )


def _usual(angle: float) -> UsualPoint:
    return min(usual_points(), key=lambda point: abs(point.point_angle - angle))


def _relief(readings: Readings, new: UsualPoint) -> Measured:
    """The relief behind the worn lip: the larger one read, which takes more stock; else the one to grind."""
    return max((m for _, m in readings.reliefs), key=lambda m: m.value, default=Measured(new.lip_relief))


def _edge_now(readings: Readings, new: UsualPoint) -> float:
    edge = readings.edge
    return edge.value if edge else new.chisel_edge_angle


def _wheel(readings: Readings, shop: Shop, new: UsualPoint, web: WebGrowth | None) -> Wheel:
    diameter = float(readings.diameter or 0.0)
    made_for = _usual(readings.angle.value).point_angle if readings.angle else new.point_angle
    return set_up(
        shop,
        diameter=diameter,
        web=web.after.value if web else quantity("web_ratio").typical * diameter,
        point_angle=new.point_angle,
        lip_relief=new.lip_relief,
        edge=new.chisel_edge_angle,
        made_for=made_for,
    )


def _notes(
    readings: Readings, wear: Wear, job: Job, new: UsualPoint, decision: Decision, fluting: Flutes | None
) -> Iterator[str]:
    """What was taken for granted, and what would be worth reading."""
    ground = decision in GROUND
    if ground and job.new_point_angle is None:
        yield f"No point angle was asked for; {quantity('point_angle').show(new.point_angle)} is the nearest usual one."
    if ground and (job.new_lip_relief is None or job.new_chisel_edge_angle is None):
        yield f"Relief and chisel edge angle not asked for are the usual ones ({new.whose})."
    if ground and wear.wear_land and not readings.reliefs:
        yield "The lip relief was not read; for the wear land the one to be ground was taken."
    if ground and wear.chip_depth and readings.angle and new.point_angle - readings.angle.value > 1:
        yield "The chip is counted as if it were at the corner; further in, the flatter point takes part of it away."
    if ground and readings.web is None:
        yield "The web was not read; the set-up is for a usual one. Measure it, and see whether it has to be thinned."
    elif ground and wear.web_taper is None:
        taper = usual_choices()["web_taper"]
        yield f"The web taper was not read; {taper.value:g} mm in each mm was taken ({taper.whose})."
    if ground and fluting is None:
        yield "Flute length or deepest hole are not known, so nobody checked whether enough flute is left."
    if ground and readings.angle and abs(_usual(readings.angle.value).point_angle - new.point_angle) > 1:
        yield "The flutes were taken to be made for the usual point nearest to the angle read."
