"""Finding a table by name, and reading its file."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from functools import cache
from importlib import resources

import cattrs
from attrs import evolve, fields
from cattrs.errors import ForbiddenExtraKeysError

from drillpoint.errors import InstructorError, OutOfRange, UnknownGiven
from drillpoint.handbook.table import PrintedTable, RangeTable
from drillpoint.quantities import nearest, plain_number

_FOLDER = resources.files("drillpoint").joinpath("handbook", "tables")

NAMES: tuple[str, ...] = tuple(
    sorted(entry.name.removesuffix(".toml") for entry in _FOLDER.iterdir() if entry.name.endswith(".toml"))
)
"""The tables there are."""

_CONVERTER = cattrs.Converter(forbid_extra_keys=True)


def look_up(name: str, *, diameter: float | None = None, work: str | None = None) -> RangeTable | PrintedTable:
    """The table called `name`, one of `NAMES`; with a diameter in mm or a work material, only the rows for those.

    Print it, or leave it as the last line of a notebook cell, to read it. A table of figures from several sources says
    in `verdict` where they disagree and why. A row that names no size, or no work, is for all of them.

    Raises UnknownGiven with the nearest name when there is no such table or work material; OutOfRange when no row is
    for that size.
    """
    if name not in NAMES:
        raise UnknownGiven(f"there is no table {name!r}{nearest(name, NAMES)}")
    table = _load(name)
    if work is not None:
        table = _for_work(table, work)
    return table if diameter is None else _of_size(table, diameter)


def _for_work(table: RangeTable | PrintedTable, work: str) -> RangeTable:
    known = tuple(dict.fromkeys(row.work for row in table if row.work)) if isinstance(table, RangeTable) else ()
    if not isinstance(table, RangeTable) or not known:
        raise UnknownGiven(f"the table {table.name!r} does not go by work material; look it up without one")
    if work not in known:
        raise UnknownGiven(f"{table.name} has no row for {work!r}{nearest(work, known)}; it has {', '.join(known)}")
    return evolve(table, row=tuple(row for row in table if row.work in ("", work)))


def _of_size(table: RangeTable | PrintedTable, diameter: float) -> RangeTable:
    if not isinstance(table, RangeTable) or not any(row.from_diameter is not None for row in table):
        raise UnknownGiven(f"the table {table.name!r} does not go by diameter; look it up without one")
    rows = tuple(row for row in table if row.fits(diameter))
    if not rows:
        sizes = [d for row in table for d in (row.from_diameter, row.to_diameter) if d is not None]
        span = f"{plain_number(min(sizes), 4)} mm to {plain_number(max(sizes), 4)} mm"
        raise OutOfRange(f"{table.name} has no row for a drill of {plain_number(diameter, 4)} mm; its sizes are {span}")
    return evolve(table, row=rows)


def ranges(name: str) -> RangeTable:
    """The table called `name`, which has to be one of figures from several sources."""
    table = look_up(name)
    if isinstance(table, RangeTable):
        return table
    raise UnknownGiven(f"{name!r} is a printed table of numbers, not one of figures from several sources")


def printed(name: str) -> PrintedTable:
    """The table called `name`, which has to be a printed table of numbers."""
    table = look_up(name)
    if isinstance(table, PrintedTable):
        return table
    raise UnknownGiven(f"{name!r} has figures from several sources; it is no printed table of numbers")


@cache
def _load(name: str) -> RangeTable | PrintedTable:
    return read_table(name, _FOLDER.joinpath(f"{name}.toml").read_text(encoding="utf-8"))


def read_table(name: str, text: str) -> RangeTable | PrintedTable:
    """A table from the text of its file.

    Raises InstructorError that names the file, the place in it and what would be right.
    """
    try:
        data = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise InstructorError(f"{name}.toml is not readable as TOML: {error}") from None
    kind: type[RangeTable | PrintedTable] = RangeTable if "row" in data else PrintedTable
    try:
        return _CONVERTER.structure({"name": name, **data}, kind)
    except cattrs.BaseValidationError as error:
        said = "; ".join(dict.fromkeys(_said(error, kind)))
        raise InstructorError(f"{name}.toml: {said}") from None


def _said(error: BaseException, kind: type, place: str = "") -> Iterator[str]:
    """What is wrong, in words, with its place in the file."""
    if isinstance(error, cattrs.BaseValidationError):
        for inner in error.exceptions:
            yield from _said(inner, getattr(error, "cl", kind), f"{place}{_place(inner, place)}")
        return
    where = f"in {place.strip()}, " if place else ""
    if isinstance(error, ForbiddenExtraKeysError):
        known = tuple(a.name for a in fields(error.cl))
        for key in sorted(error.extra_fields):
            yield f"{where}there is no entry {key!r}{nearest(key, known)}"
    elif isinstance(error, KeyError):
        yield f"{where}the entry {error.args[0]!r} is missing"
    else:
        yield f"{where}{error}"


def _place(error: BaseException, before: str) -> str:
    for note in getattr(error, "__notes__", []):
        if isinstance(note, cattrs.IterableValidationNote) and isinstance(note.index, int):
            return f"{'number' if before else 'row'} {note.index + 1} "
        if isinstance(note, cattrs.AttributeValidationNote) and note.name not in ("row", "rows"):
            return f"{note.name} "
    return ""
