"""Finding faults: from a few readings to what is wrong, why, what it does, and what to grind.

>>> find_faults(Readings(lip_length_1=5.4, lip_length_2=4.4, point_angle=118))

works from the numbers somebody read off a real drill; `find_faults(Readings.of(point.inspect()))` from a ground point.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from attrs import evolve, frozen

from drillpoint.ground.diagnosis.agreement import agreements
from drillpoint.ground.diagnosis.case import Case
from drillpoint.ground.diagnosis.drill_faults import drill_faults
from drillpoint.ground.diagnosis.evidence import Evidence
from drillpoint.ground.diagnosis.fault import Cleared, Fault, Finding, Undecided, kinds
from drillpoint.ground.diagnosis.limits import Limits
from drillpoint.ground.diagnosis.lip_faults import lip_faults
from drillpoint.ground.diagnosis.readings import Readings
from drillpoint.ground.diagnosis.relief_faults import relief_faults
from drillpoint.ground.diagnosis.signs import read_signs
from drillpoint.ground.diagnosis.table import as_html, as_text
from drillpoint.quantities import quantity

NOTHING = "No fault was found, as far as these readings tell."
NOTHING_READ = "Nothing was read that would tell of a fault."
CAUTION = (
    "Before you measure or grind: stop the machine and wear eye protection. Grind only as your instructor has shown "
    "you, by the maker's instructions and the rules of your shop."
)
_MADE_BY_A_TURN = {
    "wrong_point_angle",
    "too_little_relief",
    "too_much_relief",
    "chisel_tells_little",
    "chisel_tells_much",
}
# Settled by the same readings as another one, so asked for once.
_SAME = {
    "point_off_centre": "web_off_centre",
    "chisel_off_centre": "web_off_centre",
    "thin_body": "worn_corners",
    "chisel_tells_much": "chisel_tells_little",
}


@frozen
class NotMeasured:
    """A fault nothing was read about. key: its keyword. readings: the keywords of what would settle it."""

    key: str
    readings: tuple[str, ...]

    @property
    def name(self) -> str:
        """As the trade calls it."""
        return kinds()[self.key].name

    def __str__(self) -> str:
        return f"{self.name}: {' and '.join(quantity(r).term for r in self.readings)}"

    __repr__ = __str__


@frozen
class Report:
    """What the readings say.

    faults: those shown or possible, what follows from another behind it, else the heaviest first. undecided: where the
    reading error alone could make the difference. not_measured: what nothing was read about, and what would settle it.
    cleared: keywords of the faults ruled out. agreements: sentences on readings that speak of the same thing. signs:
    what the signs say that were seen at work. A notebook shows it as a small table; `print` says all there is to say.
    """

    faults: tuple[Fault, ...]
    undecided: tuple[Undecided, ...]
    not_measured: tuple[NotMeasured, ...]
    cleared: frozenset[str]
    agreements: tuple[str, ...]
    signs: tuple[str, ...]

    def says(self) -> str:
        """The verdict in one sentence."""
        if self.faults:
            names = [f"{f.name}{'' if f.confidence == 'shown' else ' (possible)'}" for f in self.faults]
            return f"Found: {'; '.join(names)}."
        if not self.undecided:
            return NOTHING if self.cleared else NOTHING_READ
        names = [u.name for u in self.undecided]
        return f"{NOTHING} Within the reading error, and so not called a fault: {'; '.join(names)}."

    def plan(self) -> tuple[str, ...]:
        """The cures in the order of grinding: angles, then relief, then level lips, then the web."""
        elsewhere = (f for f in self.faults if not f.follows_from and not f.kind.order)
        return tuple(dict.fromkeys(f"{f.name}: {f.cure}" for f in (*self.for_the_wheel(), *elsewhere)))

    def for_the_wheel(self) -> tuple[Fault, ...]:
        """The faults that grinding cures and that follow from no other, in the order of grinding."""
        return tuple(
            sorted((f for f in self.faults if f.kind.order and not f.follows_from), key=lambda f: f.kind.order)
        )

    def data(self) -> dict[str, Any]:
        """The whole report as plain lists, dicts, numbers and text."""
        return {
            "says": self.says(),
            "faults": [_fault(f) for f in self.faults],
            "undecided": [
                {"key": u.key, "name": u.name, "evidence": [_evidence(e) for e in u.evidence]} for u in self.undecided
            ],
            "not_measured": [{"key": n.key, "name": n.name, "readings": list(n.readings)} for n in self.not_measured],
            "cleared": sorted(self.cleared),
            "agreements": list(self.agreements),
            "signs": list(self.signs),
            "plan": list(self.plan()),
            "caution": CAUTION,
        }

    def __str__(self) -> str:
        return "\n".join(self._lines())

    def __repr__(self) -> str:
        return as_text(self)

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        return {"text/html": as_html(self), "text/plain": as_text(self)}

    def _lines(self) -> Iterator[str]:
        yield self.says()
        for fault in self.faults:
            yield ""
            yield str(fault)
        for title, entries in (
            ("Within the reading error", self.undecided),
            ("Ruled out by the readings", sorted(kinds()[key].name for key in self.cleared)),
            ("Readings held against each other", self.agreements),
            ("Seen at work", self.signs),
            ("In this order", self.plan()),
            ("Not measured, and what would settle it", self.not_measured),
        ):
            if entries:
                yield ""
                yield f"{title}:"
                yield from (f"  {entry}" for entry in entries)
        yield ""
        yield CAUTION


def find_faults(
    readings: Readings, *, limits: Limits | None = None, set_up: Readings | None = None, signs: Iterable[str] = ()
) -> Report:
    """The faults that readings of a drill show.

    limits: what the shop lets pass; `Limits()` when left out. set_up: what the wheel or fixture was set for, as the
    readings it should have given: point angle, chisel edge angle. With it, a drill that was clamped turned about its
    axis can be told. signs: what was seen at work, keywords of `drillpoint.ground.diagnosis.signs.signs()`.

    Raises UnknownGiven with the nearest name for a sign there is none of.
    """
    case = Case(readings, limits or Limits(), set_up)
    found: list[Finding] = [*relief_faults(case), *lip_faults(case), *drill_faults(case)]
    found = _behind_the_lips(_behind_a_turn(_beside_level_corners(found, readings)))
    faults = sorted((f for f in found if isinstance(f, Fault)), key=lambda f: (bool(f.follows_from), -f.weight))
    cleared = frozenset(f.key for f in found if isinstance(f, Cleared))
    return Report(
        faults=tuple(faults),
        undecided=tuple(f for f in found if isinstance(f, Undecided)),
        not_measured=tuple(_not_measured(readings, {f.key for f in found})),
        cleared=cleared,
        agreements=tuple(agreements(case)),
        signs=tuple(read_signs(signs, tuple(faults), cleared)),
    )


def _behind_a_turn(found: list[Finding]) -> list[Finding]:
    """What a drill clamped turned gets wrong follows from the turn."""
    turned = next((f for f in found if isinstance(f, Fault) and f.key == "turned"), None)
    if turned is None:
        return found
    return [
        evolve(f, follows_from=turned.name) if isinstance(f, Fault) and f.key in _MADE_BY_A_TURN else f for f in found
    ]


def _beside_level_corners(found: list[Finding], readings: Readings) -> list[Finding]:
    """With both corners level, lengths and chisel edge differ because of something else, and the hole keeps its size.

    Unequal reliefs move the end of the chisel edge along the lips; a web off centre lengthens one lip.
    """
    named = {f.key: f for f in found if isinstance(f, Fault)}
    if not any(isinstance(f, Cleared) and f.key == "lip_height" for f in found):
        return found
    cause = named.get("unequal_relief") or named.get("web_off_centre")
    if cause is None:
        return found
    made = {"unequal_lips", "chisel_off_centre"} | ({"web_off_centre"} if readings.web_offset is None else set())
    return [_made_by(cause, f) if isinstance(f, Fault) and f.key in made and f.key != cause.key else f for f in found]


def _made_by(cause: Fault, fault: Fault) -> Fault:
    # That the web is to blame was only concluded from the lips, which have no part in it here.
    key = "chisel_off_centre" if fault.key == "web_off_centre" else fault.key
    return evolve(fault, key=key, follows_from=cause.name, remarks=(), oversize=None, stock=None, stock_at="")


def _behind_the_lips(found: list[Finding]) -> list[Finding]:
    """A hole that is no wider than unequal lips can make it follows from them."""
    lips = next((f for f in found if isinstance(f, Fault) and f.oversize is not None and not f.follows_from), None)
    if lips is None or lips.oversize is None:
        return found
    most = float(lips.oversize)
    return [
        evolve(f, follows_from=lips.name) if isinstance(f, Fault) and f.key == "wide_hole" and _least(f) <= most else f
        for f in found
    ]


def _least(fault: Fault) -> float:
    """The number of a fault less its reading error."""
    return min(e.measured.value - e.measured.plus_minus for e in fault.evidence)


def _not_measured(readings: Readings, looked_at: set[str]) -> Iterator[NotMeasured]:
    seen = {_SAME.get(key, key) for key in looked_at}
    for key, kind in kinds().items():
        missing = tuple(name for name in kind.settled_by if not _is_read(name, readings))
        if key not in _SAME and key not in seen and missing:
            yield NotMeasured(key, missing)


def _is_read(name: str, readings: Readings) -> bool:
    return name in readings.taken or (name == "lip_relief" and bool(readings.reliefs))


def _evidence(evidence: Evidence) -> dict[str, Any]:
    return {
        "says": str(evidence),
        "quantity": evidence.name,
        "unit": quantity(evidence.name).unit,
        "value": float(evidence.measured.value),
        "plus_minus": float(evidence.measured.plus_minus),
        "limit": float(evidence.limit),
        "whose": evidence.whose,
        "verdict": evidence.verdict,
    }


def _fault(fault: Fault) -> dict[str, Any]:
    return {
        "key": fault.key,
        "name": fault.name,
        "confidence": fault.confidence,
        "weight": fault.weight,
        "evidence": [_evidence(e) for e in fault.evidence],
        "remarks": list(fault.remarks),
        "cause": fault.cause,
        "effects": dict(fault.effects),
        "cure": fault.cure,
        "oversize": None if fault.oversize is None else float(fault.oversize),
        "stock": None if fault.stock is None else float(fault.stock),
        "stock_at": fault.stock_at,
        "follows_from": fault.follows_from,
    }
