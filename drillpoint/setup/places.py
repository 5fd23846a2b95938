"""Where things lie: the project, its environment and the learner's own copies.

In a project folder (a clone or an unpacked archive) the environment is `.venv` and the learner's copies are
`drillpoint-work`, both inside that folder and both left alone by git: the whole workbook can be moved or deleted as
one, and nothing outside it is touched. Where the project folder cannot be written (a class share prepared by the
instructor), the copies go to the learner's home instead.

Installed as a package, the project's files travel inside it, in `_shipped`, laid out as in the project folder.
"""

import os
import shutil
import tempfile
from dataclasses import dataclass, replace
from pathlib import Path

from drillpoint.setup.trouble import SetupError, explain

LOCK_NAME = "requirements.lock"
WORK_NAME = "drillpoint-work"
STATE_NAME = ".drillpoint"


@dataclass(frozen=True)
class Places:
    """The folders that the commands work with."""

    project: Path
    """Holds notebooks, exercises, tests and the lock, laid out as at the top of the repository."""
    folder: Path
    """The learner's own copies."""
    installed: bool
    """True when drillpoint runs as an installed package, outside a project folder."""

    @property
    def lock(self) -> Path:
        """The file with the exact versions."""
        return self.project / LOCK_NAME

    @property
    def environment(self) -> Path:
        """Where the environment is, or will be made."""
        return (self.unpacked if self.installed else self.project) / ".venv"

    @property
    def unpacked(self) -> Path:
        """Where an installed package is laid out as a project folder when it needs one."""
        return self.state / "project"

    @property
    def lessons(self) -> Path:
        """The lessons as they were published."""
        return self.project / "notebooks"

    @property
    def state(self) -> Path:
        """What drillpoint remembers about the learner's copies."""
        return self.folder / STATE_NAME


def find(folder: str | Path | None = None) -> Places:
    """Find the places for this copy of drillpoint; `folder` is where the learner wants the copies, if given."""
    package = Path(os.path.abspath(__file__)).parents[1]  # noqa: PTH100 - resolve() would undo a mapped drive
    project, installed = package.parent, False
    if not is_project(project):
        project, installed = package / "_shipped", True
    if not (project / LOCK_NAME).is_file():
        raise SetupError(f"Parts of drillpoint are missing from {package.parent}: fetch the whole project again.")
    if folder is not None:
        own = Path(os.path.abspath(Path(folder).expanduser()))  # noqa: PTH100
    else:
        inside = not installed and can_write(project)
        own = (project if inside else Path.home()) / WORK_NAME
    return Places(project=project, folder=own, installed=installed)


def is_project(folder: Path) -> bool:
    """Whether this is a project folder, not a place where packages are installed."""
    return (folder / "pyproject.toml").is_file() and (folder / LOCK_NAME).is_file()


def can_write(folder: Path) -> bool:
    """Whether files can be made in this folder, or in the nearest one above that exists."""
    while not os.path.exists(folder) and folder.parent != folder:  # noqa: PTH110 - Path's raises where it may not look
        folder = folder.parent
    try:
        with tempfile.TemporaryFile(dir=folder):
            return True
    except OSError:
        return False


def unpack(places: Places) -> Places:
    """Lay the installed package out as a project folder beside the learner's copies, and return its places.

    The installed tests need it: they look at the project as a whole, and write caches next to it.
    """
    package = places.project.parent
    project = places.unpacked
    try:
        project.mkdir(parents=True, exist_ok=True)
        for old in project.iterdir():
            if old.name != ".venv":
                shutil.rmtree(old) if old.is_dir() else old.unlink()
        shutil.copytree(places.project, project, dirs_exist_ok=True)
        shutil.copytree(package, project / package.name, ignore=shutil.ignore_patterns("_shipped", "__pycache__"))
    except OSError as error:
        raise explain(error, "laying out the project", project) from error
    return replace(places, project=project, installed=False)
