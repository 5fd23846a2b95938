"""What a drill shows at work: chips, noise, force, holes. A sign says what to look at; only a reading shows a fault."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from importlib import resources
from types import MappingProxyType

from attrs import frozen

from drillpoint.errors import UnknownGiven
from drillpoint.ground.diagnosis.fault import Fault, kinds
from drillpoint.quantities import nearest


@frozen
class Sign:
    """One sign; see `signs.toml`, which explains each entry."""

    says: str
    points_to: tuple[str, ...]
    besides: str


@cache
def signs() -> Mapping[str, Sign]:
    """Every sign that is known, by its keyword."""
    text = resources.files("drillpoint.ground.diagnosis").joinpath("signs.toml").read_text(encoding="utf-8")
    rows = tomllib.loads(text)
    return MappingProxyType({key: Sign(**{**row, "points_to": tuple(row["points_to"])}) for key, row in rows.items()})


def read_signs(seen: Iterable[str], faults: tuple[Fault, ...], cleared: frozenset[str]) -> Iterator[str]:
    """What each sign that was seen says beside the readings.

    faults: what the readings show. cleared: the keywords of faults that they rule out.
    Raises UnknownGiven with the nearest sign.
    """
    for name in seen:
        if name not in signs():
            raise UnknownGiven(f"there is no sign called {name!r}{nearest(name, tuple(signs()))}")
        yield _said(signs()[name], {f.key: f.name for f in faults}, cleared)


def _said(sign: Sign, faults: Mapping[str, str], cleared: frozenset[str]) -> str:
    besides = f" {sign.besides}" if sign.besides else ""
    start = f"You saw {sign.says}."
    if not sign.points_to:
        return start + besides
    if fitting := [faults[key] for key in sign.points_to if key in faults]:
        return f"{start} It fits: {fitting[0]}."
    unread = [kinds()[key].name for key in sign.points_to if key not in cleared]
    if unread:
        return f"{start} It points to: {'; '.join(unread)}. The readings do not settle it.{besides}"
    return f"{start} The readings rule out what it usually points to.{besides}"
