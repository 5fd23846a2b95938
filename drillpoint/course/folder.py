"""The folder of hand-ins: every file in it, with its data or the reason why it was not read."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from pathlib import Path

from attrs import frozen

from drillpoint.course.hand_in_file import LARGEST_FILE
from drillpoint.errors import InstructorError

_SYSTEM_FILES = frozenset({".ds_store", "thumbs.db", "desktop.ini"})
_SYSTEM_FOLDERS = frozenset({"__MACOSX", ".ipynb_checkpoints", "__pycache__", ".git"})
_HEAD = 64


@frozen
class File:
    """One file found in the folder: its data, or why it was not read."""

    path: str
    data: bytes = b""
    problem: str = ""


def read_folder(folder: Path, leave_out: Sequence[Path] = ()) -> Iterator[File]:
    """Give every file below a folder, one at a time in order of its path; never more of one than a hand-in may be long.

    Links are not followed, archives are not opened, and the outputs of an earlier marking (`leave_out`) are passed
    over. A folder that cannot be opened is told as a file with a problem.
    """
    if not folder.is_dir():
        raise InstructorError(f"there is no folder {folder}; give the folder that holds the hand-in files")
    root = folder.resolve()
    skip = {path.resolve().relative_to(root).as_posix() for path in leave_out if path.resolve().is_relative_to(root)}
    # A list and not a recursion: a folder may be nested more deeply than Python can call.
    waiting = list(_entries_from_last(os.fspath(folder), ""))
    while waiting:
        name, entry = waiting.pop()
        if entry is None:
            yield File(name, problem="it is a folder that cannot be opened")
        elif entry.name.lower() in _SYSTEM_FILES or name in skip:
            continue
        elif entry.is_dir(follow_symlinks=False):
            if entry.name not in _SYSTEM_FOLDERS:
                waiting.extend(_entries_from_last(entry.path, name))
        else:
            yield _read(name, entry)


def _entries_from_last(folder: str, name: str) -> Iterator[tuple[str, os.DirEntry[str] | None]]:
    try:
        with os.scandir(folder) as found:
            entries = sorted(found, key=lambda entry: entry.name, reverse=True)
    except OSError:
        yield name or ".", None
        return
    for entry in entries:
        yield f"{name}/{entry.name}" if name else entry.name, entry


def _read(name: str, entry: os.DirEntry[str]) -> File:
    try:
        if not entry.is_file(follow_symlinks=False):
            return File(name, problem="it is a link or a device, not a file")
        with open(entry.path, "rb") as file:  # noqa: PTH123 - a Path for each of 100,000 files takes longer than reading
            head = file.read(_HEAD)
            if head and not name.lower().endswith(".json") and b"{" not in head:
                return File(name, problem=_kind_of(head))
            # One byte more than allowed tells that there is too much, even if the file grows meanwhile.
            data = head + file.read(LARGEST_FILE + 1 - len(head))
    except OSError as error:
        return File(name, problem=f"it cannot be read ({error.strerror})")
    if len(data) > LARGEST_FILE:
        return File(name, problem=f"it is larger than {LARGEST_FILE // 1000} kB")
    return File(name, data)


def _kind_of(head: bytes) -> str:
    return "it is a zip archive: unpack it first" if head[:2] == b"PK" else "it is not a hand-in"
