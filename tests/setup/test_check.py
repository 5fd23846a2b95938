import os
import sys
from pathlib import Path

import pytest

from drillpoint.setup import check, environment
from drillpoint.setup.places import Places
from tests.setup.miniature import Miniature


def states(findings: list[check.Finding]) -> dict[str, str]:
    return {finding.what: finding.state for finding in findings}


@pytest.fixture(autouse=True)
def no_network(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep the index out of it, except where a test asks for it."""
    monkeypatch.setattr(check, "_index", lambda _: check.Finding("Package index", "ok", "answers"))


def test_before_setting_up(miniature: Miniature, capsys: pytest.CaptureFixture[str]) -> None:
    assert check.run(miniature.places) == 0
    out = capsys.readouterr().out
    assert "not set up yet; `open` does it" in out
    assert "`open` would work on this machine." in out
    assert not miniature.places.environment.exists()


def test_half_made(miniature: Miniature) -> None:
    miniature.places.environment.mkdir()
    assert any("half-made or out of date" in finding.said for finding in check.examine(miniature.places))


@pytest.mark.parametrize(
    ("break_it", "what", "cure"),
    [
        ("permission", "Environment", "copy the drillpoint folder to a place of your own"),
        ("space", "Disk", "free some space"),
        ("ensurepip", "Making environments", "install"),
        ("index", "Package index", "connect this computer to the internet"),
    ],
)
def test_what_open_would_miss_fails_with_its_cure(
    miniature: Miniature,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    break_it: str,
    what: str,
    cure: str,
) -> None:
    if break_it == "permission":
        monkeypatch.setattr(check, "can_write", lambda folder: folder != miniature.places.environment)
    elif break_it == "space":
        usage = environment.shutil.disk_usage(miniature.index)._replace(free=1_000_000)
        monkeypatch.setattr(environment.shutil, "disk_usage", lambda _: usage)
    elif break_it == "ensurepip":
        monkeypatch.setattr(environment.importlib.util, "find_spec", lambda _: None)
    else:
        said = "The package index cannot be reached: connect this computer to the internet and start again."
        monkeypatch.setattr(check, "_index", lambda _: check.Finding(what, "missing", said))
    assert check.run(miniature.places) == 1
    (line,) = (line for line in capsys.readouterr().out.splitlines() if line.split()[:1] == ["missing"])
    assert what in line
    assert cure in line


def test_the_index_is_asked_as_setting_up_would(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.undo()
    pytest.importorskip("pip")
    monkeypatch.setattr(check, "SMALL_PACKAGE", "drill_one")
    monkeypatch.setenv("PIP_NO_INDEX", "1")
    monkeypatch.setenv("PIP_FIND_LINKS", miniature.index.as_uri())
    assert check._index(miniature.places).state == "ok"

    monkeypatch.delenv("PIP_NO_INDEX")
    monkeypatch.delenv("PIP_FIND_LINKS")
    monkeypatch.setenv("PIP_CONFIG_FILE", os.devnull)
    monkeypatch.setenv("PIP_INDEX_URL", "http://127.0.0.1:9/simple")
    found = check._index(miniature.places)
    assert found.state == "missing"
    assert "connect this computer to the internet" in found.said


def test_the_package_asked_for_is_locked(project: Path) -> None:
    places = Places(project=project, folder=project, installed=False)
    names = [pin.name for pin in environment.Environment.of(places).sections["open"].pins]
    assert check.SMALL_PACKAGE in names


def test_without_the_learners_folder(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(check, "can_write", lambda folder: folder != miniature.places.folder)
    found = states(list(check.examine(miniature.places)))
    assert found["Your folder"] == "missing"


def test_no_browser_is_no_hindrance(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(check.browser, "graphical", lambda: None)
    assert states(list(check.examine(miniature.places)))["Browser"] == "note"
    assert check.run(miniature.places) == 0


def test_a_python_newer_than_those_tried(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 99, 0, "final", 0))
    assert check._python().state == "note"


def test_sliders_are_looked_for_where_jupyterlab_looks(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    # This very Python runs the tests, so it has the whole workbook.
    found = list(check._sliders(Path(sys.executable)))
    assert states(found) == {"JupyterLab": "ok", "Sliders": "ok"}
    assert "ipywidgets 8." in found[0].said

    lost = tmp_path / "lost.py"
    lost.write_text("import jupyter_core.paths\njupyter_core.paths.jupyter_path = lambda *_: []\n")
    monkeypatch.setattr(check, "_ASK", lost.read_text() + check._ASK)
    found = list(check._sliders(Path(sys.executable)))
    assert states(found) == {"JupyterLab": "ok", "Sliders": "missing"}
    assert "@jupyter-widgets/jupyterlab-manager" in found[1].said

    monkeypatch.setattr(check, "_ASK", "raise SystemExit(1)")
    assert states(list(check._sliders(Path(sys.executable)))) == {"JupyterLab": "missing"}


def test_installed_with_everything_nothing_is_to_be_set_up(tmp_path: Path) -> None:
    here = Places(project=tmp_path, folder=tmp_path / "mine", installed=True)
    assert check.usable_python(here) == Path(sys.executable)
