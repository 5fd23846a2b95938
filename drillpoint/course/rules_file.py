"""Reading the rules of a class from a small TOML file, and saying on which line something is wrong with it.

deadline = 2026-03-12T20:00:00+01:00
counts = "last"                 # or "best"
penalty_per_day = 10            # per cent

[[accept]]
student = "s14"
task = "point-height"
typed = "1,234"
reason = "meant 1.234, as the sketch shows"
"""

from __future__ import annotations

import difflib
import tomllib
from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any, NoReturn

from attrs import NOTHING, fields

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.roster import Student
from drillpoint.course.rules import BEST, LAST, Accept, Add, Decision, Drop, Excuse, Extend, Rules
from drillpoint.course.toml_lines import lines_of
from drillpoint.errors import InstructorError

LARGEST_FILE = 1_000_000
_KINDS: Mapping[str, type[Decision]] = {"accept": Accept, "drop": Drop, "add": Add, "excuse": Excuse, "extend": Extend}
_ABOUT_ALL = ("deadline", "closes", "counts", "penalty_per_day")
_TIME = "a date and time with its offset from UTC, as in 2026-03-12T20:00:00+01:00"


def read_rules(path: Path, sets: Sequence[ExerciseSet], roster: Sequence[Student]) -> Rules:
    """Read rules and check them against the tasks of a set (all its versions) and the roster."""
    text = _text_of(path)
    try:
        raw = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise InstructorError(f"{path} is not valid TOML: {error}; look at quotes and brackets in that line") from None
    return _Reader(path, text, sets, roster).rules(raw)


def _text_of(path: Path) -> str:
    try:
        if path.stat().st_size > LARGEST_FILE:
            raise InstructorError(f"{path} is larger than {LARGEST_FILE // 1_000_000} MB, too large for rules")
        return path.read_text(encoding="utf-8-sig")
    except FileNotFoundError:
        raise InstructorError(f"there is no file {path}; give the file with the rules of the class") from None
    except UnicodeDecodeError:
        raise InstructorError(f"{path} is not UTF-8 text; save it as UTF-8") from None
    except OSError as error:
        raise InstructorError(f"{path} cannot be read ({error.strerror}); give the file with the rules") from None


class _Reader:
    def __init__(self, path: Path, text: str, sets: Sequence[ExerciseSet], roster: Sequence[Student]) -> None:
        self.path, self.lines = path, lines_of(text)
        self.students = [student.id for student in roster]
        self.known_students = frozenset(self.students)
        self.tasks = list(dict.fromkeys(task.id for exercise_set in sets for task in exercise_set.tasks))
        self.numbered = [task.id for task in sets[0].tasks]

    def rules(self, raw: Mapping[str, Any]) -> Rules:
        for key in raw:
            self._known(key, (*_ABOUT_ALL, *_KINDS), "entry", self._line(key))
        counts = raw.get("counts", LAST)
        line = self._line("counts")
        self._known(counts, (LAST, BEST), "counts =", line)
        penalty = self._number(raw, "penalty_per_day", self._line("penalty_per_day"), 0.0, 0, 100)
        deadline, closes = (self._time(raw.get(key), key, self._line(key)) for key in ("deadline", "closes"))
        if deadline is None and (penalty or closes):
            self._refuse(self._line("penalty_per_day"), f"there is no deadline; add {_TIME}")
        if deadline and closes and closes < deadline:
            self._refuse(self._line("closes"), "closes is before the deadline; it must be after it")
        made = {kind: self._decisions(raw, kind) for kind in _KINDS}
        return Rules(self.path.name, deadline, closes, counts, penalty, **made)

    def _decisions(self, raw: Mapping[str, Any], kind: str) -> tuple[Any, ...]:
        entries = raw.get(kind, [])
        if not isinstance(entries, list) or not all(isinstance(entry, dict) for entry in entries):
            self._refuse(self._line(kind), f"{kind} is written as a table, [[{kind}]] on a line of its own")
        return tuple(self._decision(kind, entry, number) for number, entry in enumerate(entries))

    def _decision(self, kind: str, entry: Mapping[str, Any], number: int) -> Decision:
        def line(*key: str) -> int:
            return self._line(kind, number, *key)

        made = _KINDS[kind]
        allowed = {field.name: field for field in fields(made) if field.name != "line"}
        for key in entry:
            self._known(key, allowed, f"entry of [[{kind}]]", line(key))
        for key in allowed:
            if key not in entry and (key == "reason" or allowed[key].default is NOTHING):
                self._refuse(line(), f"[[{kind}]] lacks {key}" + (' = "…"' if key != "points" else " = 1"))
        values = {key: self._value(key, entry, line(key)) for key in entry}
        return made(line=line(), **values)

    def _value(self, key: str, entry: Mapping[str, Any], line: int) -> Any:
        value = entry[key]
        if key == "deadline":
            return self._time(value, key, line)
        if key in ("share", "points"):
            return self._number(entry, key, line, 0.0, *((0, 1) if key == "share" else (-1000, 1000)))
        if not isinstance(value, str) or not value.strip():
            self._refuse(line, f"{key} = {value!r} is not text in quotes")
        if key == "student" and value not in self.known_students:
            self._known(value, self.students, "student of the roster", line)
        if key == "task":
            if value.isdigit() and 1 <= int(value) <= len(self.numbered):
                return self.numbered[int(value) - 1]
            self._known(value, self.tasks, "task of the set", line)
        return value

    def _number(self, raw: Mapping[str, Any], key: str, line: int, default: float, least: float, most: float) -> float:
        value = raw.get(key, default)
        if isinstance(value, bool) or not isinstance(value, (int, float)) or not least <= value <= most:
            self._refuse(line, f"{key} = {value!r} is not a number from {least:g} to {most:g}")
        return float(value)

    def _time(self, value: Any, key: str, line: int) -> datetime | None:
        if value is None:
            return None
        if not isinstance(value, datetime) or value.tzinfo is None:
            self._refuse(line, f"{key} = {value} is not {_TIME} (write it without quotes)")
        return value

    def _known(self, word: Any, known: Iterable[str], what: str, line: int) -> None:
        known = list(known)
        if word in known:
            return
        close = difflib.get_close_matches(str(word), known, 1, 0.6)
        nearest = f"; did you mean {close[0]!r}?" if close else ""
        some = ", ".join(known[:12]) + (" …" if len(known) > 12 else "")
        self._refuse(line, f"{what} {word!r} is not known{nearest or f'; known are {some}'}")

    def _line(self, *path: str | int) -> int:
        """The line of an entry, or of the table in which it is missing."""
        return next((self.lines[path[:n]] for n in range(len(path), 0, -1) if path[:n] in self.lines), 1)

    def _refuse(self, line: int, what: str) -> NoReturn:
        raise InstructorError(f"{self.path}, line {line}: {what}")
