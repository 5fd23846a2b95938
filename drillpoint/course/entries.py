"""Single entries of an exercise file: taken, checked, and refused with file, line, task and what would be right."""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterable, Mapping
from typing import Any

from attrs import evolve, field, frozen

from drillpoint.course.toml_lines import Path
from drillpoint.errors import InstructorError

IDENTIFIER = re.compile(r"[a-z0-9][a-z0-9-]{0,39}")
_MISSING = object()
_TYPE_WORDS = {
    bool: "true or false",
    str: "text in quotes",
    int: "a whole number",
    list: "a list in [ ]",
    dict: "a table in { }",
}


@frozen
class Place:
    """Where in a file something stands: for messages, with the line of the entry if it has one of its own."""

    file: str
    what: str = ""
    path: Path = ()
    lines: Mapping[Path, int] = field(factory=dict, repr=False)

    def inside(self, *path: str | int, what: str = "") -> Place:
        """The place of a table in here."""
        return evolve(self, path=(*self.path, *path), what=", ".join(part for part in (self.what, what) if part))

    def line(self, *path: str | int) -> int:
        """The line of an entry in here, or of what it stands in."""
        full = (*self.path, *path)
        return next((self.lines[full[:n]] for n in range(len(full), 0, -1) if full[:n] in self.lines), 0)

    def at(self, *path: str | int) -> str:
        """How a message begins that is about an entry in here."""
        line = self.line(*path)
        parts = (self.file, f"line {line}" if line else "", self.what)
        return ", ".join(part for part in parts if part)

    def __str__(self) -> str:
        return self.at()


def entry(raw: Mapping[str, Any], key: str, kind: Any, where: Place, default: Any = _MISSING) -> Any:
    """One entry of a table, if it is of this kind; InstructorError says what it should be."""
    value = raw.get(key, default)
    if value is _MISSING:
        raise InstructorError(f"{where}: {key} is missing")
    if not isinstance(value, kind) or (isinstance(value, bool) and kind is not bool):
        raise InstructorError(f"{where.at(key)}: {key} = {value!r} is not {_TYPE_WORDS.get(kind, 'a number')}")
    return value


def identifier(raw: Mapping[str, Any], where: Place) -> str:
    """The entry `id`: it becomes the name of a file or a box."""
    found: str = entry(raw, "id", str, where)
    if not IDENTIFIER.fullmatch(found) or found.isdigit():
        raise InstructorError(
            f"{where.at('id')}: id {found!r} may hold small letters, digits and hyphens, not digits only"
        )
    return found


def texts(raw: Mapping[str, Any], key: str, where: Place) -> Mapping[str, str]:
    """A table of texts."""
    table: dict[str, str] = entry(raw, key, dict, where, {})
    if any(not isinstance(text, str) for text in table.values()):
        raise InstructorError(f"{where.at(key)}: every entry of {key} is text in quotes")
    return table


def list_of_texts(raw: Mapping[str, Any], key: str, where: Place) -> tuple[str, ...]:
    """A list of texts."""
    items = entry(raw, key, list, where, [])
    if any(not isinstance(item, str) for item in items):
        raise InstructorError(f"{where.at(key)}: every entry of {key} is text in quotes")
    return tuple(items)


def check_keys(raw: Any, allowed: Iterable[str], where: Place) -> None:
    """Refuse entries that nobody reads, with the nearest name."""
    if not isinstance(raw, Mapping):
        raise InstructorError(f"{where}: a table is expected here, not {raw!r}")
    for key in raw:
        if key not in allowed:
            known = ", ".join(sorted(allowed))
            raise InstructorError(
                f"{where.at(key)}: {key!r} is not known here{nearest_to(key, allowed)}; known: {known}"
            )


def one_of(known: Iterable[str], word: str, what: str, where: Place, key: str = "") -> str:
    """A word out of a list; InstructorError names the nearest one."""
    known = list(known)
    if word in known:
        return word
    begins = where.at(key or what)
    guess = nearest_to(word, known)
    raise InstructorError(f"{begins}: {what} {word!r} is not known{guess}; known are {', '.join(known)}")


def nearest_to(word: str, known: Iterable[str]) -> str:
    """A guess at what was meant, for the end of a message."""
    close = difflib.get_close_matches(word, list(known), 1, 0.6)
    return f" (did you mean {close[0]!r}?)" if close else ""
