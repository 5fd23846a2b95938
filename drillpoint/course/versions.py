"""Older versions of a set, kept beside it: `lips.v1.toml` next to `lips.toml`, or in a folder `old` there."""

from __future__ import annotations

import re
from pathlib import Path

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.exercise_file import load_set
from drillpoint.errors import InstructorError

OLD = "old"


def older_versions(newest: ExerciseSet, path: Path) -> tuple[ExerciseSet, ...]:
    """Read the versions kept beside a set's file. Those of another course (last term's) are left alone.

    InstructorError if a file is not what its name says.
    """
    named = re.compile(rf"{re.escape(newest.id)}\.v([0-9]{{1,6}})\.toml")
    found: dict[int, tuple[ExerciseSet, Path]] = {}
    for folder in (path.parent, path.parent / OLD):
        for kept in sorted(folder.glob(f"{newest.id}.v*.toml")):
            match = named.fullmatch(kept.name)
            if match is None or kept.resolve() == path.resolve():
                continue
            older = load_set(kept)
            number = int(match.group(1))
            if (older.id, older.version) != (newest.id, number):
                holds = f"set {older.id!r}, version {older.version}"
                raise InstructorError(f"{kept} holds {holds}; its name says version {number} of {newest.id!r}")
            if older.course != newest.course:
                continue
            if number >= newest.version:
                raise InstructorError(
                    f"{kept} is kept as version {number}, but {path.name} is version {newest.version}; "
                    "raise version in the set when a task changes"
                )
            if number in found:
                raise InstructorError(f"version {number} is kept twice, as {found[number][1]} and {kept}; keep one")
            found[number] = older, kept
    return tuple(found[number][0] for number in sorted(found))
