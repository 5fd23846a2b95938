"""Reading what a task measures on a ground point: which reading, on which point, where along the lip."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any

from drillpoint.course.entries import Place, check_keys, entry, one_of
from drillpoint.course.exercise import Given, GivenValue, Measure
from drillpoint.course.formula import read_formula
from drillpoint.course.grinding import READINGS, taken
from drillpoint.course.reading import ReadingError
from drillpoint.errors import InstructorError
from drillpoint.quantities import QUANTITIES

_NAME = re.compile(r"[a-z][a-z0-9_]{0,39}")
_NO_NAMES = frozenset({"answer", "pi"})


def measures_from(table: Mapping[str, Any], givens: tuple[Given, ...], where: Place) -> Mapping[str, Measure]:
    """The measured numbers of a task by the names that its texts and formulas use."""
    own = tuple(given.name for given in givens if not given.shown_only)
    names = tuple(given.name for given in givens)
    found = {}
    for name, raw in table.items():
        place = where.inside("measure", name, what=f"measure {name}")
        if not _NAME.fullmatch(name) or name in {*QUANTITIES, *_NO_NAMES}:
            raise InstructorError(
                f"{place}: a measured number has a name of its own: small letters, digits and _, and not that of a "
                "quantity; for example relief_after"
            )
        found[name] = measure_from(raw, own, names, place)
    return found


def measure_from(raw: Any, own: Iterable[str], names: Iterable[str], where: Place) -> Measure:
    """One reading: its name alone, or a table with `reading`, `with` and `radius`.

    own: the numbers the point is ground from; names: those that formulas may use.
    """
    if isinstance(raw, str):
        raw = {"reading": raw}
    check_keys(raw, {"reading", "with", "radius"}, where)
    reading = one_of(READINGS, entry(raw, "reading", str, where), "reading", where)
    names = tuple(names)
    changed = {}
    for name, text in entry(raw, "with", dict, where, {}).items():
        one_of(QUANTITIES, name, "quantity", where, "with")
        changed[name] = checked_formula(str(text), names, where)
    radius = str(entry(raw, "radius", (str, int, float), where, ""))
    if radius:
        checked_formula(radius, (*names, *changed), where)
    measure = Measure(reading, changed, radius)
    try:
        taken(measure, tuple(own))
    except InstructorError as error:
        raise InstructorError(f"{where}: {error}") from None
    return measure


def with_measured(givens: tuple[Given, ...], measures: Mapping[str, Measure]) -> tuple[Given, ...]:
    """The givens of a task, and behind them the names of what is measured; its value is worked out for each draw."""
    later = (Given(name, (GivenValue(0.0, ""),), shown_only=True) for name in measures)
    return (*givens, *later)


def checked_formula(text: str, names: Iterable[str], where: Place | str) -> str:
    """The formula as it stands, once it has been read; ReadingError says where in the file it cannot be."""
    try:
        read_formula(text, tuple(names))
    except ReadingError as error:
        raise error.in_file(f"{where}, formula {text!r}") from None
    return text
