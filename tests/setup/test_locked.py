from pathlib import Path

import pytest

from drillpoint.setup import locked
from drillpoint.setup.trouble import SetupError

LOCK = """\
# a preface

# section: open
one==1.0 \\
    --hash=sha256:aa \\
    --hash=sha256:bb
two-parts==2.1.post1 ; os_name == 'nt' \\
    --hash=sha256:cc

# section: test
three==3 \\
    --hash=sha256:dd
"""


def write(folder: Path, text: str) -> Path:
    path = folder / "requirements.lock"
    path.write_text(text, encoding="utf-8")
    return path


def test_sections_and_pins(tmp_path: Path) -> None:
    sections = locked.read(write(tmp_path, LOCK))
    assert [(pin.name, pin.version, pin.marker) for pin in sections["open"].pins] == [
        ("one", "1.0", ""),
        ("two-parts", "2.1.post1", "os_name == 'nt'"),
    ]
    assert sections["test"].text == "three==3 \\\n    --hash=sha256:dd\n"


def test_the_digest_follows_every_change_of_its_section_only(tmp_path: Path) -> None:
    before = locked.read(write(tmp_path, LOCK))
    after = locked.read(write(tmp_path, LOCK.replace("sha256:bb", "sha256:be")))
    assert before["open"].digest != after["open"].digest
    assert before["test"].digest == after["test"].digest


def test_line_ends_of_another_system_make_no_difference(tmp_path: Path) -> None:
    before = locked.read(write(tmp_path, LOCK))
    path = tmp_path / "requirements.lock"
    path.write_bytes(LOCK.replace("\n", "\r\n").encode())
    assert locked.read(path) == before


@pytest.mark.parametrize(
    "text",
    [
        "",
        LOCK.split("# section: test", maxsplit=1)[0],
        LOCK.replace("three==3 \\\n    --hash=sha256:dd\n", ""),
        LOCK.replace("one==1.0", "one>=1.0"),
        LOCK.replace("one==1.0", "<<<<<<< HEAD"),
    ],
)
def test_a_damaged_lock_is_refused(tmp_path: Path, text: str) -> None:
    with pytest.raises(SetupError, match="fetch the whole project again"):
        locked.read(write(tmp_path, text))


def test_no_lock_at_all(tmp_path: Path) -> None:
    with pytest.raises(SetupError, match="fetch the whole project again"):
        locked.read(tmp_path / "requirements.lock")
