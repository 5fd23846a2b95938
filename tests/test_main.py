"""The commands as they are started, on this Python and on ones too old for the rest."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

from drillpoint.__main__ import main, refusal
from drillpoint.setup.console import child_environment


def start(project: Path, *arguments: str, **variables: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "drillpoint", *arguments],
        cwd=project,
        env=child_environment(variables),
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


@pytest.mark.parametrize("name", ["__init__.py", "__main__.py"])
def test_what_runs_before_the_version_is_known_reads_on_old_pythons(project: Path, name: str) -> None:
    source = (project / "drillpoint" / name).read_text(encoding="utf-8")
    tree = ast.parse(source, feature_version=(3, 6))
    assert not any(isinstance(node, ast.ImportFrom) and node.module == "__future__" for node in ast.walk(tree))


@pytest.mark.parametrize("name", ["__init__.py", "__main__.py"])
def test_what_runs_before_the_version_is_known_imports_nothing_new(project: Path, name: str) -> None:
    tree = ast.parse((project / "drillpoint" / name).read_text(encoding="utf-8"))
    imported = {alias.name for node in tree.body if isinstance(node, ast.Import) for alias in node.names}
    imported |= {node.module or "" for node in tree.body if isinstance(node, ast.ImportFrom)}
    assert imported <= {"sys", "importlib"}


@pytest.mark.parametrize("version", [(3, 6), (3, 10), (2, 7)])
def test_an_old_python_is_refused_with_the_cure(version: tuple[int, int]) -> None:
    said = refusal(version)
    assert said is not None
    assert f"This is Python {version[0]}.{version[1]}" in said
    assert "install" in said
    assert "\n" not in said


@pytest.mark.parametrize("version", [(3, 11), (3, 14), (4, 0)])
def test_a_new_enough_python_is_welcome(version: tuple[int, int]) -> None:
    assert refusal(version) is None


def test_on_an_old_python_nothing_else_is_loaded(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 8, 18, "final", 0))
    monkeypatch.setitem(sys.modules, "drillpoint.command_line", None)
    assert main(["open"]) == 1
    assert "needs Python 3.11 to 3.14" in capsys.readouterr().err


def test_without_arguments_each_command_is_listed_with_an_example(project: Path) -> None:
    done = start(project)
    assert done.returncode == 0
    for name in ("open", "test", "check", "hand-out", "mark"):
        assert f" -m drillpoint {name}" in done.stdout
    assert done.stderr == ""


def test_version_and_misspelt_command(project: Path) -> None:
    assert start(project, "--version").stdout.startswith("drillpoint 0.")
    wrong = start(project, "opne")
    assert wrong.returncode == 2
    assert "opne" in wrong.stderr
    assert "open" in wrong.stderr


@pytest.mark.parametrize("arguments", [["--help"], ["open", "--help"], ["test", "--help"], ["mark", "--help"]])
def test_help_survives_a_poor_console(project: Path, arguments: list[str]) -> None:
    done = start(project, *arguments, PYTHONUTF8="0", PYTHONIOENCODING="cp1252")
    assert done.returncode == 0, done.stderr
    assert "usage" in done.stdout
