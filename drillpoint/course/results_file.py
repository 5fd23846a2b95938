"""Results as JSON, for other programs: every mark with the lines that say how it came about. Written bit by bit."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Any, BinaryIO

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.piles import Unclaimed
from drillpoint.course.results import Mark, StudentResult

FORMAT = "drillpoint results"
FORMAT_VERSION = 1


class ResultsFile:
    """One JSON document: about the set, then the files that count for nobody, then a list of students."""

    def __init__(self, file: BinaryIO, exercise_set: ExerciseSet) -> None:
        """Begin the document in a file opened for bytes."""
        self._file, self._between = file, b"\n"
        about: dict[str, Any] = {
            "format": FORMAT,
            "format_version": FORMAT_VERSION,
            "course": exercise_set.course,
            "set": exercise_set.id,
            "title": exercise_set.title,
            "version": exercise_set.version,
            "tasks": [{"id": task.id, "title": task.title, "points": task.points} for task in exercise_set.tasks],
        }
        file.write(_json(about)[:-1] + b',\n"files_that_count_for_nobody": [')

    def add_unclaimed(self, entry: Unclaimed) -> None:
        """Write one file that counts for nobody. All of these come before the first student."""
        self._item({"file": entry.path, "student": entry.student, "reason": entry.reason})

    def begin_students(self) -> None:
        """End the files and begin the students."""
        self._file.write(b'\n],\n"students": [')
        self._between = b"\n"

    def add(self, entry: StudentResult) -> None:
        """Write one student."""
        self._item(_student(entry))

    def close(self, unused: Sequence[str]) -> None:
        """End the document. The file stays open."""
        rest = _json({"decisions_that_changed_nothing": list(unused)})
        self._file.write(b"\n],\n" + rest[1:] + b"\n")

    def _item(self, content: dict[str, Any]) -> None:
        self._file.write(self._between + _json(content))
        self._between = b",\n"


def _student(entry: StudentResult) -> dict[str, Any]:
    return {
        "id": entry.student.id,
        "school_id": entry.student.school_id,
        "name": entry.student.name,
        "status": entry.status,
        "version": entry.version,
        "total": None if entry.excused else round(entry.total, 6),
        "out_of": round(entry.out_of, 6),
        "files": list(entry.files),
        "files_set_aside": [{"file": path, "reason": reason} for path, reason in entry.aside],
        "problems": list(entry.problems),
        "notes": list(entry.notes),
        "added": [{"points": added.points, "why": str(added.why)} for added in entry.added],
        "marks": [_mark(mark) for mark in entry.marks],
    }


def _mark(mark: Mark) -> dict[str, Any]:
    verdict = mark.verdict
    parts = verdict.parts or {mark.question.task.id: verdict}
    return {
        "task": mark.question.task.id,
        "answers": dict(mark.answers),
        "read_as": {key: part.echo for key, part in parts.items() if part.echo},
        "state": verdict.state,
        "slips": {key: part.slip for key, part in parts.items() if part.slip},
        "points": round(mark.points, 6),
        "out_of": round(mark.out_of, 6),
        "counts": mark.counts,
        "days_late": mark.days_late,
        "also_right_for": list(mark.also_right_for),
        "why": list(mark.why),
    }


def _json(content: dict[str, Any]) -> bytes:
    return json.dumps(content, ensure_ascii=True, allow_nan=False).encode("ascii")
