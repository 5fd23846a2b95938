"""Holding a reading against a limit: what can be said of it, and how sure that is."""

from __future__ import annotations

from typing import Literal

from attrs import frozen

from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.ground.diagnosis.spoken import said

Verdict = Literal["clear", "undecided", "possible", "shown"]


# What is left over when a computer subtracts equal numbers.
_DUST = 1e-9


@frozen(kw_only=True)
class Evidence:
    """One reading, or what the book makes of several, held against one limit.

    what: the beginning of a sentence that ends in the number. name: the quantity. measured: the number and how far it
    may be off. asked: the words before the limit; limit: the limit; whose: who says so. verdict: "clear" (within the
    limit, error and all), "undecided" (the error reaches across), "possible" (beyond the limit, but by less than the
    error), "shown" (beyond the limit by more than the error). times: how bad, 1 at the limit.
    """

    what: str
    name: str
    measured: Measured
    asked: str
    limit: float
    whose: str
    verdict: Verdict
    times: float

    @property
    def speaks(self) -> bool:
        """Whether it makes a fault, sure or only possible."""
        return self.verdict in ("shown", "possible")

    def __str__(self) -> str:
        limit = said(self.name, self.limit)
        return f"{self.what} {self.measured.show(self.name)}; {self.asked} {limit}: {self.whose}."


def difference(what: str, name: str, measured: Measured, limit: float, whose: str) -> Evidence:
    """How far two things that should be alike are apart, held against what is allowed.

    Where the reading error alone could make the whole difference, nothing is called.
    """
    apart = Measured(abs(measured.value), measured.plus_minus)
    if apart.value > limit + _DUST:
        sure = apart.value - apart.plus_minus > limit
        verdict: Verdict = "shown" if sure else "possible" if apart.value > apart.plus_minus else "undecided"
    else:
        verdict = "undecided" if apart.value + apart.plus_minus > limit + _DUST else "clear"
    return Evidence(
        what=what,
        name=name,
        measured=apart,
        asked="allowed is at most",
        limit=limit,
        whose=whose,
        verdict=verdict,
        times=apart.value / limit if limit else 1 + apart.value,
    )


def at_least(what: str, name: str, measured: Measured, limit: float, whose: str, *, scale: float) -> Evidence:
    """A reading that should not be below a limit. scale: how much below it counts twice."""
    return _bound(what, name, measured, limit, whose, limit - measured.value, scale, "at least")


def at_most(what: str, name: str, measured: Measured, limit: float, whose: str, *, scale: float) -> Evidence:
    """A reading that should not be above a limit. scale: how much above it counts twice."""
    return _bound(what, name, measured, limit, whose, measured.value - limit, scale, "at most")


def _bound(
    what: str, name: str, measured: Measured, limit: float, whose: str, beyond: float, scale: float, words: str
) -> Evidence:
    if beyond > _DUST:
        verdict: Verdict = "shown" if beyond > measured.plus_minus else "possible"
    else:
        # A reading that is not off at all may sit on the limit.
        verdict = "undecided" if beyond + measured.plus_minus > _DUST else "clear"
    return Evidence(
        what=what,
        name=name,
        measured=measured,
        asked=f"it should be {words}",
        limit=limit,
        whose=whose,
        verdict=verdict,
        times=1 + max(beyond, 0.0) / scale,
    )


def together(evidence: tuple[Evidence, ...]) -> Verdict:
    """What several readings of the same fault say together.

    One that shows it is enough. One that is clear settles those that cannot tell; a "possible" one stands.
    """
    ranks = {e.verdict for e in evidence}
    for verdict in ("shown", "possible"):
        if verdict in ranks:
            return verdict
    return "clear" if "clear" in ranks or not ranks else "undecided"
