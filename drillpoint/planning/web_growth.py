"""How the web grows by the grind, whether it has to be thinned then, and what thinning leaves."""

from __future__ import annotations

from contextlib import suppress

from attrs import frozen

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.readings import Measured, worked_out
from drillpoint.planning.shop import Shop
from drillpoint.planning.used_drill import Wear
from drillpoint.planning.words import length
from drillpoint.quantities import quantity
from drillpoint.relations import (
    chisel_edge_length,
    length_until_thinning,
    untouched_lip_share,
    web_after_shortening,
    web_ratio,
)


@frozen
class WebGrowth:
    """The web before and after the grind. now, after: mm. ratio: after, over the diameter. limit: at which it is
    thinned; whose: who says so. chisel: the chisel edge after the grind, mm; thinned: what thinning brings it to;
    lip_left: the share of each lip that this leaves as it was. until: how much may still be ground off before it is
    due, mm; None when it is due.
    """

    now: Measured
    after: Measured
    ratio: Measured
    limit: float
    whose: str
    chisel: float
    thinned: float | None
    lip_left: float | None
    until: float | None

    @property
    def thin(self) -> bool:
        """Whether the web is thinned after the grind."""
        return self.ratio.value > self.limit

    @property
    def doubtful(self) -> bool:
        """Whether the reading error reaches across the limit."""
        return abs(self.ratio.value - self.limit) <= self.ratio.plus_minus

    def reasons(self, *, now: bool) -> tuple[str, ...]:
        """Why it is thinned, in words; nothing when it is not. now: nothing else is ground."""
        if not self.thin:
            return ()
        ratio = quantity("web_ratio").show
        web = self.now if now else self.after
        grown = "The web is" if now else f"The web grows from {length(self.now)} to"
        sure = " The reading error reaches across: measure it again after the grind." if self.doubtful else ""
        says = f"{grown} {length(web)}, {ratio(self.ratio.value)} of the diameter"
        return (f"{says}; it is thinned from {ratio(self.limit)} on ({self.whose}).{sure}",)


def web_growth(case: Case, wear: Wear, shop: Shop, removed: Measured, new_edge: float) -> WebGrowth | None:
    """The web after so much has come off the tip; None where it was not read. new_edge: the chisel edge angle then."""
    web, diameter = case.readings.read("web"), case.readings.read("diameter")
    if not web or not diameter:
        return None
    after = worked_out(
        lambda w, t, off: web_after_shortening(web=w, web_taper=t, length_removed=max(off, 0.0)),
        *(web, wear.taper, removed),
    )
    ratio = worked_out(lambda w, d: web_ratio(web=w, diameter=d), after, diameter)
    limit = case.limits.web_ratio_limit
    chisel = float(chisel_edge_length(web=after.value, chisel_edge_angle=new_edge))
    thin = ratio.value > limit
    thinned = left = until = None
    if thin:
        thinned = float(chisel_edge_length(web=shop.thinned_web_ratio * diameter.value, chisel_edge_angle=new_edge))
        # Where the thinned lip would not meet the main one, the shape is left to whoever thins it.
        with suppress(DrillpointError):
            left = float(
                untouched_lip_share(
                    diameter=diameter.value,
                    web=after.value,
                    chisel_edge_angle=new_edge,
                    thinned_chisel_length=thinned,
                    thinning_angle=shop.thinning_angle,
                )
            )
    else:
        until = float(
            length_until_thinning(
                web_ratio_limit=limit, diameter=diameter.value, web=after.value, web_taper=wear.taper.value
            )
        )
    return WebGrowth(web, after, ratio, limit, case.limits.whose("web_ratio_limit"), chisel, thinned, left, until)
