"""Writing a file so that a reader, or a machine that stops half-way, finds the old one or the new one, never a part."""

from __future__ import annotations

import os
import secrets
import time
from pathlib import Path

# A virus scanner or a viewer may hold the file for a moment on Windows.
_TRIES = 6
_PAUSE = 0.05


def write_safely(path: Path, data: bytes) -> None:
    """Write beside the file, make sure the data is on the disk, then put it in place in one step."""
    beside = path.with_name(f".{path.name}.{os.getpid()}-{secrets.token_hex(4)}.part")
    try:
        with beside.open("xb") as file:
            file.write(data)
            file.flush()
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
        except PermissionError:
            if attempt == _TRIES:
                raise
            time.sleep(_PAUSE * attempt)
