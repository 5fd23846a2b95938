"""What several set-up tests share."""

import shutil
from pathlib import Path

import pytest

from drillpoint.setup import environment
from tests.setup.miniature import Miniature, lay_out


@pytest.fixture
def miniature(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Miniature:
    """A project in miniature, not set up, and a package index in a folder that serves it."""
    made = lay_out(tmp_path)
    _serve(made, monkeypatch)
    return made


@pytest.fixture(scope="session")
def ready_once(tmp_path_factory: pytest.TempPathFactory) -> Miniature:
    """A project in miniature that is set up; only ever copied."""
    made = lay_out(tmp_path_factory.mktemp("ready"))
    with pytest.MonkeyPatch.context() as patch:
        _serve(made, patch)
        made.environment.make("open")
    return made


@pytest.fixture
def ready(ready_once: Miniature, miniature: Miniature) -> Miniature:
    """A project in miniature, set up for the workbook but not for its tests."""
    shutil.copytree(ready_once.environment.folder, miniature.environment.folder, symlinks=True)
    return miniature


def _serve(made: Miniature, patch: pytest.MonkeyPatch) -> None:
    patch.setenv("PIP_NO_INDEX", "1")
    patch.setenv("PIP_FIND_LINKS", made.index.as_uri())
    patch.setattr(environment, "MODULES", {"open": ("drill_one",), "test": ("drill_two",)})
