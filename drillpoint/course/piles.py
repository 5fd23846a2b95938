"""Sorting files by what is in them: every file goes onto a student's pile, or is told with the reason why not.

A pile is kept on the disk once a class is large, so that memory does not grow with the number of answers. What is
kept there is data that was checked, written and read again by this module.
"""

from __future__ import annotations

import json
import re
from array import array
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from tempfile import SpooledTemporaryFile
from types import TracebackType
from typing import Any, Self

from attrs import frozen

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import AnswerRecord, HandIn, HandInProblem, read_hand_in
from drillpoint.course.roster import Student

# A class of some thousand students stays in memory; nothing is then written anywhere.
_IN_MEMORY = 16_000_000
_NOTHING = -1


@frozen
class Unclaimed:
    """A file that belongs to no student of the roster, or that cannot be marked for one."""

    path: str
    reason: str
    student: str = ""
    """The student of the roster that it says it is from, if it says so."""


@frozen
class Sitting:
    """One hand-in file of a student: where it lay, what it says, and whether it is as it was made."""

    path: str
    version: int
    time: str
    digest: str
    intact: bool
    answers: tuple[AnswerRecord, ...]


@frozen
class Pile:
    """What was found for one student. Notes are about files that may be theirs and could not be marked."""

    sittings: tuple[Sitting, ...]
    notes: tuple[str, ...]


class Piles:
    """The piles of a class. A context manager: what it keeps on the disk is gone when the block ends."""

    def __init__(self, sets: Sequence[ExerciseSet], roster: Sequence[Student], room: Path | None = None) -> None:
        """Take the set and its older versions; `room` is the folder in which a large class is kept meanwhile."""
        self._newest = sets[0]
        self._versions = frozenset(exercise_set.version for exercise_set in sets)
        self._place = {student.id: place for place, student in enumerate(roster)}
        self._ids = _Folded(roster)
        self._last = array("q", [_NOTHING]) * len(roster)
        self._unclaimed = array("q")
        # It lives as long as the piles.
        self._kept = SpooledTemporaryFile(_IN_MEMORY, dir=None if room is None else str(room))  # noqa: SIM115
        self._end = 0

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        self._kept.close()

    def sort_in(self, file: File) -> Unclaimed | None:
        """Put a file on its student's pile, or say why it belongs to nobody's."""
        unclaimed = self._sort_in(file)
        if unclaimed is not None:
            content = (unclaimed.path, unclaimed.reason, unclaimed.student)
            self._unclaimed.append(self._keep(_NOTHING, content))
        return unclaimed

    def unclaimed(self) -> Iterator[Unclaimed]:
        """The files that belong to nobody, in the order in which they came."""
        return (Unclaimed(*content) for place in self._unclaimed for content in self._chain(place))

    def _sort_in(self, file: File) -> Unclaimed | None:
        problem = file.problem
        if not problem:
            try:
                hand_in = read_hand_in(file.data)
            except HandInProblem as error:
                problem = str(error)
        if problem:
            # Only the name of the file can tell whose it may be.
            for student in self._ids.named_in(file.path):
                self._put(student, [f"{file.path} may be theirs and was not marked: {problem}"])
            return Unclaimed(file.path, problem)
        student = hand_in.student.strip()
        if student not in self._place:
            return Unclaimed(file.path, f"its student “{plain(hand_in.student)}” is not in the roster")
        if reason := self._foreign(hand_in):
            self._put(student, [f"{file.path} was not marked: {reason}"])
            return Unclaimed(file.path, f"{reason} (student {student})", student)
        answers = [(answer.task, answer.typed, answer.time) for answer in hand_in.answers]
        about = (file.path, hand_in.version, hand_in.time, hand_in.digest, hand_in.intact)
        self._put(student, [*about, answers])
        return None

    def of(self, student: Student) -> Pile:
        """A student's pile, in the same order whatever the order in which the files came."""
        sittings, notes = [], []
        for content in self._chain(self._last[self._place[student.id]]):
            if len(content) == 1:
                notes.append(content[0])
            else:
                sittings.append(_sitting(*content))
        sittings.sort(key=lambda sitting: (sitting.time, sitting.digest, sitting.path))
        return Pile(tuple(sittings), tuple(sorted(notes)))

    def _put(self, student: str, content: Sequence[object]) -> None:
        place = self._place[student]
        self._last[place] = self._keep(self._last[place], content)

    def _keep(self, before: int, content: Sequence[object]) -> int:
        """Keep something, with the place of what was kept before it; give its own place."""
        line = json.dumps([before, content], separators=(",", ":")).encode("ascii") + b"\n"
        place = self._end
        self._kept.seek(place)
        self._kept.write(line)
        self._end += len(line)
        return place

    def _chain(self, place: int) -> Iterator[Any]:
        """What was kept, from the last back to the first."""
        while place != _NOTHING:
            self._kept.seek(place)
            place, content = json.loads(self._kept.readline())
            yield content

    def _foreign(self, hand_in: HandIn) -> str:
        newest = self._newest
        if hand_in.course != newest.course:
            return f"it belongs to another course, “{plain(hand_in.course)}”"
        if hand_in.set != newest.id:
            return f"it belongs to another set, “{plain(hand_in.set)}”"
        if hand_in.version in self._versions:
            return ""
        answers = f"it answers version {hand_in.version} of the set"
        if hand_in.version > newest.version:
            return f"{answers}; the set here is only version {newest.version}"
        kept = f"keep the file of that version as {newest.id}.v{hand_in.version}.toml beside the set to mark it"
        return f"{answers}, which is now version {newest.version}: other numbers; {kept}"


def _sitting(path: str, version: int, time: str, digest: str, intact: bool, answers: list[list[str]]) -> Sitting:
    return Sitting(path, version, time, digest, intact, tuple(AnswerRecord(*answer) for answer in answers))


class _Folded:
    """Finds the ids of a roster in the names of files."""

    def __init__(self, roster: Sequence[Student]) -> None:
        self._ids: Mapping[str, str] = {student.id.casefold(): student.id for student in roster}

    def named_in(self, path: str) -> list[str]:
        """The ids that stand as a word of their own in a path: `s07` in `inbox/lips-s07 (1).json`."""
        folded = path.casefold()
        words = [*re.split(r"[\W_]+", folded), *re.split(r"[^\w-]+|_", folded), *folded.split("/")]
        return [self._ids[word] for word in dict.fromkeys(words) if word in self._ids]


def plain(text: str, longest: int = 60) -> str:
    """A stranger's text on one short line, without signs that cannot be seen."""
    shown = "".join(c if c.isprintable() else "\ufffd" for c in text[:longest])
    return shown + ("…" if len(text) > longest else "")
