import shutil
from pathlib import Path

import pytest

from drillpoint.setup import places
from drillpoint.setup.trouble import SetupError


def pretend(monkeypatch: pytest.MonkeyPatch, package: Path) -> None:
    """Let the package lie in another folder."""
    monkeypatch.setattr(places, "__file__", str(package / "setup" / "places.py"))


def project_at(folder: Path) -> Path:
    folder.mkdir(parents=True)
    (folder / "pyproject.toml").touch()
    (folder / places.LOCK_NAME).touch()
    return folder


def test_in_the_project_everything_lies_in_its_folder(project: Path) -> None:
    here = places.find()
    assert not here.installed
    assert here.project == project
    assert here.environment == project / ".venv"
    assert here.folder == project / "drillpoint-work"
    assert here.lock.is_file()


def test_what_the_commands_make_in_the_project_is_ignored_by_git(project: Path) -> None:
    ignored = (project / ".gitignore").read_text(encoding="utf-8").splitlines()
    assert f"/{places.WORK_NAME}/" in ignored
    assert "/.venv/" in ignored


def test_installed_everything_lies_in_the_home_of_the_learner(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    package = tmp_path / "site-packages" / "drillpoint"
    project_at(package / "_shipped")
    pretend(monkeypatch, package)
    monkeypatch.setattr(Path, "home", lambda: tmp_path / "home")
    here = places.find()
    assert here.installed
    assert here.lessons == package / "_shipped" / "notebooks"
    assert here.folder == tmp_path / "home" / "drillpoint-work"
    assert here.folder in here.environment.parents


def test_a_project_that_may_not_be_written_sends_the_copies_home(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    project = project_at(tmp_path / "share")
    pretend(monkeypatch, project / "drillpoint")
    monkeypatch.setattr(places, "can_write", lambda folder: folder != project)
    monkeypatch.setattr(Path, "home", lambda: tmp_path / "home")
    assert places.find().folder == tmp_path / "home" / "drillpoint-work"


def test_a_folder_of_ones_own_choice(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("HOME", str(tmp_path / "home"))
    monkeypatch.setenv("USERPROFILE", str(tmp_path / "home"))
    assert places.find("Ecke Süd").folder == tmp_path / "Ecke Süd"
    assert places.find("~/mine").folder == tmp_path / "home" / "mine"


def test_a_project_with_parts_missing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    project = project_at(tmp_path / "torn")
    (project / places.LOCK_NAME).unlink()
    pretend(monkeypatch, project / "drillpoint")
    with pytest.raises(SetupError, match="fetch the whole project again"):
        places.find()


def test_can_write_asks_the_nearest_folder_that_exists(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert places.can_write(tmp_path / "not" / "yet")
    assert not (tmp_path / "not").exists()

    def refuse(**_: object) -> None:
        raise PermissionError

    monkeypatch.setattr(places.tempfile, "TemporaryFile", refuse)
    assert not places.can_write(tmp_path / "not" / "yet")


def test_unpacking_lays_the_package_out_as_the_project(tmp_path: Path) -> None:
    package = tmp_path / "site-packages" / "drillpoint"
    shipped = project_at(package / "_shipped")
    (shipped / "tests").mkdir()
    (shipped / "tests" / "test_new.py").touch()
    (package / "__init__.py").touch()
    (package / "__pycache__").mkdir()
    here = places.Places(project=shipped, folder=tmp_path / "mine", installed=True)
    (here.unpacked / ".venv" / "bin").mkdir(parents=True)
    (here.unpacked / "tests").mkdir()
    (here.unpacked / "tests" / "test_old.py").touch()

    there = places.unpack(here)

    assert not there.installed
    assert there.folder == here.folder
    assert there.environment == here.environment
    assert places.is_project(there.project)
    assert (there.environment / "bin").is_dir()
    assert sorted(path.name for path in (there.project / "tests").iterdir()) == ["test_new.py"]
    assert sorted(path.name for path in (there.project / "drillpoint").iterdir()) == ["__init__.py"]


def test_unpacking_without_permission(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    shipped = project_at(tmp_path / "site-packages" / "drillpoint" / "_shipped")

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(shutil, "copytree", refuse)
    with pytest.raises(SetupError, match="Not allowed to write"):
        places.unpack(places.Places(project=shipped, folder=tmp_path / "mine", installed=True))
