import io
import subprocess
import sys
from pathlib import Path

import pytest

from drillpoint.setup import console


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "cp437", "utf-8"])
def test_no_console_is_too_poor(encoding: str, monkeypatch: pytest.MonkeyPatch) -> None:
    written = io.BytesIO()
    monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(written, encoding=encoding))
    console.prepare()
    console.say("Ø 10, 118°, κ – Größe копия \udcff")
    assert b" 10, 118" in written.getvalue()


def test_no_console_at_all(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "stdout", None)
    monkeypatch.setattr(sys, "stderr", None)
    console.prepare()
    console.say("to nobody")
    steps = console.Steps(1)
    steps.begin("something")
    steps.progress("half")
    steps.end("done")


def test_steps_count_and_tell_the_time(capsys: pytest.CaptureFixture[str]) -> None:
    steps = console.Steps(2)
    steps.begin("first")
    steps.progress("half")
    steps.begin("second")
    steps.end("Done.")
    lines = capsys.readouterr().out.splitlines()
    assert lines == ["[1/2] first", "[2/2] second", "Done. (0 s)"]


def test_on_a_terminal_progress_rewrites_its_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys.stdout, "isatty", lambda: True)
    steps = console.Steps(1)
    steps.begin("first")
    steps.progress("package 1")
    steps.progress("package 1")
    steps.progress("p" * 200)
    steps.end("Done.")
    out = capsys.readouterr().out
    assert out.count("\r") == 2
    assert max(len(part) for part in out.replace("\n", "\r").split("\r")) <= 79


def test_children_speak_utf_8_and_see_the_users_own_settings(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("HTTPS_PROXY", "http://proxy.invalid:3128")
    monkeypatch.setenv("PIP_INDEX_URL", "http://127.0.0.1:9/simple")
    monkeypatch.setenv("PIP_TARGET", str(tmp_path))
    monkeypatch.setenv("PIP_USER", "1")
    made = console.child_environment({"EXTRA": "x"})
    assert made["HTTPS_PROXY"] == "http://proxy.invalid:3128"
    assert made["PIP_INDEX_URL"] == "http://127.0.0.1:9/simple"
    assert made["EXTRA"] == "x"
    assert "PIP_TARGET" not in made
    assert made["PIP_USER"] == "0"
    said = subprocess.run(
        [sys.executable, "-c", "print('κ Ø')"], env=made | {"LC_ALL": "C"}, capture_output=True, check=True
    )
    assert said.stdout.decode("utf-8").strip() == "κ Ø"
