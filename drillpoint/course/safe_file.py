"""Writing a file so that a reader, or a machine that stops half-way, finds the old one or the new one, never a part."""

from __future__ import annotations

import os
import secrets
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

# A virus scanner or a viewer may hold the file for a moment on Windows.
_TRIES = 6
_PAUSE = 0.05


def write_safely(path: Path, data: bytes, *, lasting: bool = True) -> None:
    """Write beside the file, make sure the data is on the disk, then put it in place in one step.

    `lasting=False` leaves it to the system when the data goes to the disk: for what can be made again at any time.
    """
    with writing_safely(path, lasting=lasting) as file:
        file.write(data)


@contextmanager
def writing_safely(path: Path, *, lasting: bool = True) -> Iterator[BinaryIO]:
    """Write bit by bit what does not fit into memory; the file is put in place when the block ends without an error."""
    beside = path.with_name(f".{path.name}.{os.getpid()}-{secrets.token_hex(4)}.part")
    try:
        with beside.open("xb") as file:
            yield file
            file.flush()
            if lasting:
                os.fsync(file.fileno())
        _put_in_place(beside, path)
    except BaseException:
        beside.unlink(missing_ok=True)
        raise


def _put_in_place(beside: Path, path: Path) -> None:
    for attempt in range(1, _TRIES + 1):
        try:
            beside.replace(path)
            return
        except PermissionError as error:
            if attempt == _TRIES:
                # The system names the file beside it; the person knows this one.
                raise PermissionError(error.errno, error.strerror, str(path)) from None
            time.sleep(_PAUSE * attempt)
