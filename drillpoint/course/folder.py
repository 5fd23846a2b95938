"""The folder of hand-ins: every file in it, with its data or the reason why it was not read."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

from attrs import frozen

from drillpoint.course.hand_in_file import LARGEST_FILE
from drillpoint.errors import InstructorError

_SYSTEM_FILES = frozenset({".ds_store", "thumbs.db", "desktop.ini"})
_SYSTEM_FOLDERS = frozenset({"__MACOSX", ".ipynb_checkpoints", "__pycache__", ".git"})


@frozen
class File:
    """One file found in the folder: its data, or why it was not read."""

    path: str
    data: bytes = b""
    problem: str = ""


def read_folder(folder: Path, leave_out: Sequence[Path] = ()) -> Iterator[File]:
    """Give every file below a folder, in order of its path; sizes are looked at before anything is read.

    Links are not followed, and the outputs of an earlier marking (`leave_out`) are passed over.
    """
    if not folder.is_dir():
        raise InstructorError(f"there is no folder {folder}; give the folder that holds the hand-in files")
    skip = {path.resolve() for path in leave_out}
    for path in _walk(folder, skip):
        name = path.relative_to(folder).as_posix()
        try:
            if path.is_symlink() or not path.is_file():
                yield File(name, problem="it is a link or a device, not a file")
            elif path.stat().st_size > LARGEST_FILE:
                yield File(name, problem=f"it is larger than {LARGEST_FILE // 1000} kB")
            elif path.stat().st_size and path.suffix.lower() != ".json" and b"{" not in (head := _head(path)):
                yield File(name, problem=_kind_of(head))
            else:
                yield File(name, path.read_bytes())
        except OSError as error:
            yield File(name, problem=f"it cannot be read ({error.strerror})")


def _walk(folder: Path, skip: set[Path]) -> Iterator[Path]:
    try:
        entries = sorted(folder.iterdir(), key=lambda path: path.name)
    except OSError:
        return
    for entry in entries:
        if entry.name.lower() in _SYSTEM_FILES or entry.resolve() in skip:
            continue
        if entry.is_dir() and not entry.is_symlink():
            if entry.name not in _SYSTEM_FOLDERS:
                yield from _walk(entry, skip)
        else:
            yield entry


def _head(path: Path) -> bytes:
    with path.open("rb") as file:
        return file.read(64)


def _kind_of(head: bytes) -> str:
    return "it is a zip archive: unpack it first" if head[:2] == b"PK" else "it is not a hand-in"
