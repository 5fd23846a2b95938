import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

import pytest

from drillpoint.setup import commands, lab, lessons, places
from drillpoint.setup.environment import Environment
from drillpoint.setup.places import Places
from drillpoint.setup.trouble import SetupError
from tests.setup.miniature import Miniature


def parse(name: str, *arguments: str) -> Namespace:
    (command,) = (command for command in commands.COMMANDS if command.name == name)
    parser = ArgumentParser()
    command.add_arguments(parser)
    return parser.parse_args(arguments)


@pytest.fixture
def served(monkeypatch: pytest.MonkeyPatch) -> list[tuple[Path, str | None, int, bool]]:
    """Take down what would be served, instead of serving it."""
    calls: list[tuple[Path, str | None, int, bool]] = []

    def run(_: Places, python: Path, lesson: str | None, port: int, browser: bool) -> int:
        calls.append((python, lesson, port, browser))
        return 0

    monkeypatch.setattr(lab, "run", run)
    monkeypatch.setattr(lab, "trust", lambda *_: None)
    return calls


def test_open_sets_up_copies_and_serves(
    ready: Miniature,
    served: list[tuple[Path, str | None, int, bool]],
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setattr(places, "find", lambda _=None: ready.places)
    ready.places.lessons.mkdir()
    (ready.places.lessons / "01_lips.ipynb").write_text("one")
    assert commands._open(parse("open", "--no-browser", "--port", "9000")) == 0
    assert served == [(ready.environment.python, "01_lips.ipynb", 9000, False)]
    assert (ready.places.folder / "01_lips.ipynb").read_text() == "one"
    assert str(ready.places.folder) in capsys.readouterr().out


def test_open_tells_of_newer_lessons(
    ready: Miniature,
    served: list[tuple[Path, str | None, int, bool]],
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setattr(places, "find", lambda _=None: ready.places)
    ready.places.lessons.mkdir()
    (ready.places.lessons / "01_lips.ipynb").write_text("one")
    lessons.copy(ready.places)
    (ready.places.folder / "01_lips.ipynb").write_text("mine")
    (ready.places.lessons / "01_lips.ipynb").write_text("two")
    commands._open(parse("open"))
    assert "yours stays, the new one is beside it as 01_lips (new version).ipynb" in capsys.readouterr().out
    assert served[0][3] is True


def test_open_without_lessons(
    ready: Miniature,
    served: list[tuple[Path, str | None, int, bool]],
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setattr(places, "find", lambda _=None: ready.places)
    commands._open(parse("open"))
    assert "There are no lessons" in capsys.readouterr().out
    assert served[0][1] is None


def test_a_wrong_port_is_refused_before_anything_is_set_up(
    miniature: Miniature, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(places, "find", lambda _=None: miniature.places)
    with pytest.raises(SetupError, match="Port 1 is outside"):
        commands._open(parse("open", "--port", "1"))
    assert not miniature.places.environment.exists()


def test_test_runs_in_the_environment_with_the_test_tools(
    ready: Miniature, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    ran: list[tuple[Path, Path, list[str]]] = []
    monkeypatch.setattr(places, "find", lambda _=None: ready.places)
    monkeypatch.setattr(commands.testing, "run", lambda *call: ran.append(call) or 3)
    assert commands._test(parse("test", "tests/setup")) == 3
    assert ran == [(ready.places.project, ready.environment.python, ["tests/setup"])]
    assert ready.environment.is_ready("test")
    assert "this happens once" in capsys.readouterr().out


def test_installed_the_packages_at_hand_serve(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    here = Places(project=tmp_path / "drillpoint" / "_shipped", folder=tmp_path / "mine", installed=True)
    unpacked = Places(project=here.unpacked, folder=here.folder, installed=False)
    monkeypatch.setattr(places, "unpack", lambda _: unpacked)
    monkeypatch.setattr(commands, "importable", lambda _: True)
    assert commands.with_packages(here, "open") == (here, Path(sys.executable))
    assert commands.with_packages(here, "test") == (unpacked, Path(sys.executable))


def test_installed_without_packages_an_environment_is_made_beside_the_copies(
    ready: Miniature, monkeypatch: pytest.MonkeyPatch
) -> None:
    here = Places(project=ready.places.project, folder=ready.places.folder, installed=True)
    monkeypatch.setattr(places, "unpack", lambda _: ready.places)
    monkeypatch.setattr(commands, "importable", lambda _: False)
    assert commands.with_packages(here, "open") == (ready.places, ready.environment.python)


def test_a_course_command_runs_where_the_packages_are(
    ready: Miniature, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    package = ready.places.project / "drillpoint"
    (package / "__main__.py").write_text("import os, sys; print(sys.argv[1:], os.getcwd()); sys.exit(7)")
    monkeypatch.setattr(places, "find", lambda _=None: ready.places)
    monkeypatch.setattr(commands, "importable", lambda _: False)
    monkeypatch.chdir(ready.index)
    assert commands.rerun_with_packages(["mark", "Ablage Süd"]) == 7
    assert capfd.readouterr().out.strip() == f"['mark', 'Ablage Süd'] {ready.index}"


def test_a_course_command_with_its_packages_at_hand_is_not_run_again(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(commands, "importable", lambda _: True)
    assert commands.rerun_with_packages(["mark"]) is None


def test_running_again_never_goes_round_in_circles(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(commands, "importable", lambda _: False)
    monkeypatch.setattr(Environment, "make", lambda *_: pytest.fail("set up once more"))
    monkeypatch.setenv("DRILLPOINT_RERUN", "1")
    with pytest.raises(SetupError, match=r"delete the folder \.venv"):
        commands.rerun_with_packages(["mark"])
