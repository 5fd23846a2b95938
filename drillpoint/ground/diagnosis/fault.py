"""A fault of a ground point: its name, how it shows, where it comes from, what it does and how it is cured."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any, Literal

from attrs import frozen

from drillpoint.ground.diagnosis.evidence import Evidence, together
from drillpoint.ground.diagnosis.spoken import said_of
from drillpoint.quantities import capital
from drillpoint.relation import Value

Confidence = Literal["shown", "possible"]


@frozen
class Kind:
    """What there is to say of a fault whatever its size; see `faults.toml`, which explains each entry."""

    name: str
    importance: float
    order: int
    cause: str
    hole: str
    chips: str
    wear: str
    cure: str
    settled_by: tuple[str, ...]


@cache
def kinds() -> Mapping[str, Kind]:
    """Every fault that can be named, by its keyword."""
    text = resources.files("drillpoint.ground.diagnosis").joinpath("faults.toml").read_text(encoding="utf-8")
    rows = tomllib.loads(text)
    return MappingProxyType({key: Kind(**{**row, "settled_by": tuple(row["settled_by"])}) for key, row in rows.items()})


@frozen(kw_only=True)
class Fault:
    """A fault that the readings show, or make possible.

    key: its keyword. confidence: "shown" when it exceeds its limit by more than the reading error, else "possible".
    weight: what it is sorted by, heavier first; only its order means something. evidence: the readings that tell.
    remarks: what the book makes of them. oversize: the most the hole can be wider because of it, mm, where that
    follows. stock: how much has to come off, mm, and stock_at: where. follows_from: the name of the fault that makes
    this one, or "". cure_here: what to do where these readings know better than the kind of the fault, or "".
    """

    key: str
    confidence: Confidence
    weight: float
    evidence: tuple[Evidence, ...]
    remarks: tuple[str, ...] = ()
    oversize: Value | None = None
    stock: Value | None = None
    stock_at: str = ""
    follows_from: str = ""
    cure_here: str = ""

    @property
    def kind(self) -> Kind:
        """What there is to say of it whatever its size."""
        return kinds()[self.key]

    @property
    def name(self) -> str:
        """As the trade calls it."""
        return self.kind.name

    @property
    def cause(self) -> str:
        """Where it comes from."""
        return self.kind.cause

    @property
    def effects(self) -> Mapping[str, str]:
        """What it does to the hole, to the chips and to the wear of the drill."""
        return {"hole": self.kind.hole, "chips": self.kind.chips, "wear": self.kind.wear}

    @property
    def cure(self) -> str:
        """What to grind, and how much has to come off."""
        cure = self.cure_here or self.kind.cure
        if self.stock is None:
            return cure
        return f"{cure} Stock {self.stock_at}: {said_of(self.stock)}."

    def __str__(self) -> str:
        sure = (
            "shown by the readings" if self.confidence == "shown" else "possible: the reading error reaches the limit"
        )
        lines = [f"{capital(self.name)} ({sure})."]
        lines += [f"  Evidence: {e}" for e in self.evidence]
        lines += [f"  {remark}" for remark in self.remarks]
        if self.follows_from:
            return "\n".join(
                [*lines, f"  It follows from another fault here: {self.follows_from}. Put that right first."]
            )
        if self.oversize is not None:
            lines.append(f"  The hole comes out at most {said_of(self.oversize)} wider because of it.")
        lines += [f"  Likely cause: {self.cause}", f"  Hole: {self.kind.hole}"]
        lines += [f"  Chips: {self.kind.chips}", f"  Wear: {self.kind.wear}", f"  Cure: {self.cure}"]
        return "\n".join(lines)

    __repr__ = __str__


@frozen
class Undecided:
    """A fault that the readings neither show nor rule out. key, evidence: as for `Fault`."""

    key: str
    evidence: tuple[Evidence, ...]

    @property
    def name(self) -> str:
        """As the trade calls it."""
        return kinds()[self.key].name

    def __str__(self) -> str:
        return f"{self.name}, within the reading error: {' '.join(str(e) for e in self.evidence)}"

    __repr__ = __str__


@frozen
class Cleared:
    """A fault that the readings rule out, as far as they tell."""

    key: str


Finding = Fault | Undecided | Cleared


def called(key: str, *evidence: Evidence, **more: Any) -> Finding:
    """What the evidence makes of one fault. more: the further entries of a `Fault`.

    Evidence that is clear is left out of a fault that other evidence calls.
    """
    verdict = together(evidence)
    if verdict == "clear":
        return Cleared(key)
    if verdict == "undecided":
        return Undecided(key, evidence)
    speaking = tuple(e for e in evidence if e.speaks)
    times = max(e.times for e in speaking if e.verdict == verdict)
    weight = kinds()[key].importance * times / (1 + times) * (1.0 if verdict == "shown" else 0.5)
    return Fault(key=key, confidence=verdict, weight=weight, evidence=speaking, **more)
