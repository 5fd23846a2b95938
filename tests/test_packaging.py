"""What travels in the package is what lies in the project."""

import tomllib
from pathlib import Path

import pytest

import drillpoint

NOT_SHIPPED = {".git", ".github", ".venv", "drillpoint-work", "build", "dist", "htmlcov"}


@pytest.fixture(scope="module")
def settings(project: Path) -> dict:
    return tomllib.loads((project / "pyproject.toml").read_text(encoding="utf-8"))


def test_the_whole_project_is_shipped_laid_out_as_it_is(project: Path, settings: dict) -> None:
    shipped = settings["tool"]["hatch"]["build"]["targets"]["wheel"]["force-include"]
    assert shipped == {name: f"drillpoint/_shipped/{name}" for name in shipped}
    made = {".benchmarks", ".coverage", ".hypothesis", ".mypy_cache", ".pytest_cache", ".ruff_cache", "__pycache__"}
    present = {path.name for path in project.iterdir()} - NOT_SHIPPED - made - {"drillpoint"}
    assert set(shipped) == present


def test_the_source_archive_holds_the_same_and_the_package(settings: dict) -> None:
    targets = settings["tool"]["hatch"]["build"]["targets"]
    archived = {name.removeprefix("/") for name in targets["sdist"]["include"]}
    assert archived == {*targets["wheel"]["force-include"], "drillpoint"}


def test_the_licence_says_which_applies_where(project: Path, settings: dict) -> None:
    text = (project / "LICENSE").read_text(encoding="utf-8")
    assert "https://creativecommons.org/licenses/by/4.0/legalcode" in text
    assert "THE SOFTWARE IS PROVIDED" in text
    assert "notebooks/ and\n  exercises/" in text
    assert settings["project"]["license"] == "MIT AND CC-BY-4.0"


def test_version() -> None:
    parts = drillpoint.__version__.split(".")
    assert len(parts) == 3
    assert all(part.isdigit() for part in parts)
