"""The folder of hand-ins."""

import os

import pytest

from drillpoint.course.folder import read_folder
from drillpoint.course.hand_in_file import LARGEST_FILE
from drillpoint.errors import InstructorError


def test_reading_a_folder(tmp_path):
    (tmp_path / "a").mkdir()
    (tmp_path / "a" / "x.json").write_bytes(b"{}")
    (tmp_path / "picture.jpg").write_bytes(b"\xff\xd8" + b"\0" * 100)
    (tmp_path / "all.zip").write_bytes(b"PK\x03\x04" + b"\0" * 100)
    (tmp_path / "renamed.txt").write_bytes(b' {"format": 1}')
    (tmp_path / "huge.json").write_bytes(b" " * (LARGEST_FILE + 1))
    (tmp_path / ".DS_Store").write_bytes(b"x")
    (tmp_path / "__MACOSX").mkdir()
    (tmp_path / "__MACOSX" / "y.json").write_bytes(b"{}")
    (tmp_path / "grades.csv").write_bytes(b"old")
    files = {file.path: file for file in read_folder(tmp_path, [tmp_path / "grades.csv"])}
    assert list(files) == sorted(files) == ["a/x.json", "all.zip", "huge.json", "picture.jpg", "renamed.txt"]
    assert files["a/x.json"].data == b"{}"
    assert files["renamed.txt"].data
    assert "zip archive" in files["all.zip"].problem
    assert "larger than" in files["huge.json"].problem
    assert files["huge.json"].data == b""


@pytest.mark.skipif(os.name == "nt", reason="links and pipes are made differently there")
def test_links_and_pipes_are_not_followed(tmp_path):
    (tmp_path / "link.json").symlink_to("/etc/passwd")
    (tmp_path / "loop").symlink_to(tmp_path, target_is_directory=True)
    os.mkfifo(tmp_path / "pipe.json")
    assert [file.problem for file in read_folder(tmp_path)] == ["it is a link or a device, not a file"] * 3


def test_no_folder(tmp_path):
    with pytest.raises(InstructorError, match="there is no folder"):
        list(read_folder(tmp_path / "nowhere"))
