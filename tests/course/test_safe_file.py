"""Files that are whole or not there, even if the machine stops half-way."""

import json
import subprocess
import sys
import time
from pathlib import Path

import pytest

from drillpoint.course.safe_file import write_safely

REPEATS = 20


def test_writes_and_replaces(tmp_path):
    path = tmp_path / "a.json"
    write_safely(path, b"one")
    write_safely(path, b"two")
    assert path.read_bytes() == b"two"
    assert [entry.name for entry in tmp_path.iterdir()] == ["a.json"]


def test_a_failed_write_leaves_the_old_file_and_nothing_else(tmp_path, monkeypatch):
    path = tmp_path / "a.json"
    write_safely(path, b"old")

    def full_disk(_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("drillpoint.course.safe_file.os.fsync", full_disk)
    with pytest.raises(OSError, match="No space"):
        write_safely(path, b"new")
    assert path.read_bytes() == b"old"
    assert [entry.name for entry in tmp_path.iterdir()] == ["a.json"]


def test_a_file_held_for_a_moment_is_tried_again(tmp_path, monkeypatch):
    path = tmp_path / "a.json"
    calls = []
    real = Path.replace

    def busy(source, target):
        calls.append(target)
        if len(calls) < 3:
            raise PermissionError(13, "held by another program")
        return real(source, target)

    monkeypatch.setattr(Path, "replace", busy)
    monkeypatch.setattr("drillpoint.course.safe_file._PAUSE", 0)
    write_safely(path, b"new")
    assert path.read_bytes() == b"new"
    assert len(calls) == 3


ANSWERING = """
import sys
from drillpoint.course.desk import open_desk
desk = open_desk("lips", sys.argv[1])
number = 0
while True:
    number += 1
    desk.give("1", f"{number} mm")
    print(number, flush=True)
"""


def test_killing_the_kernel_while_it_saves_loses_nothing(make_sheet):
    """What was acknowledged is on the disk, and the file can always be read."""
    folder = make_sheet("s07")
    saved_file = folder / "lips.answers.json"
    for repeat in range(REPEATS):
        saved_file.unlink(missing_ok=True)
        process = subprocess.Popen([sys.executable, "-c", ANSWERING, str(folder)], stdout=subprocess.PIPE, text=True)
        assert process.stdout is not None
        first = process.stdout.readline()
        time.sleep(0.002 * repeat)
        process.kill()
        acknowledged = [first, *process.stdout.read().splitlines()]
        process.wait()
        last = max(int(line) for line in acknowledged if line.strip().isdigit())
        saved = json.loads(saved_file.read_text(encoding="ascii"))["answers"]
        assert len(saved) == 1
        assert int(saved[0]["typed"].removesuffix(" mm")) >= last
