"""The project's own environment, `.venv`: whether it is ready, and making it.

It is ready when a stamp, written last of all, names the lock's digest and the Python it was made with. Whatever has no
such stamp is half-made or out of date, and is made anew.
"""

import contextlib
import errno
import importlib.util
import json
import os
import shutil
import subprocess
import sys
import sysconfig
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from drillpoint.setup import locked
from drillpoint.setup.console import Steps, child_environment, say
from drillpoint.setup.installing import install
from drillpoint.setup.places import Places
from drillpoint.setup.trouble import SetupError, explain

SPACE_NEEDED = {"open": 700_000_000, "test": 1_000_000_000}
"""Free bytes that setting up asks for: what is installed, and room for the packages while they are unpacked."""

# The project is found from sys.prefix, the environment's own folder, so that the line still holds after the project has
# been moved, and is plain ASCII whatever the project's path is.
_PATH_FILE = "drillpoint-project.pth"
_PATH_LINE = "import os, sys; sys.path.append(os.path.dirname(sys.prefix))\n"
_GUARD = "drillpoint.guard"
_OWN = "drillpoint.txt"
MODULES: dict[str, tuple[str, ...]] = {
    "open": (
        "anywidget",
        "attrs",
        "cattrs",
        "ipywidgets",
        "jinja2",
        "jupyterlab",
        "lark",
        "matplotlib",
        "numpy",
        "sympy",
    ),
    "test": ("hypothesis", "mypy", "nbval", "playwright", "pytest", "pytest_benchmark"),
}
"""What each section of the lock makes importable."""


@dataclass(frozen=True)
class Environment:
    """The environment of a project folder."""

    folder: Path
    sections: dict[str, locked.Section]

    @classmethod
    def of(cls, places: Places) -> "Environment":
        """The environment that belongs to these places, made or not."""
        return cls(places.environment, locked.read(places.lock))

    @property
    def python(self) -> Path:
        """Its interpreter."""
        return self.folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")

    @property
    def log(self) -> Path:
        """What pip said."""
        return self.folder / "pip.log"

    def stamp(self, section: str) -> Path:
        """The file that says a section is completely there."""
        return self.folder / f"drillpoint-{section}.json"

    def is_ready(self, section: str) -> bool:
        """Whether everything that `section` needs is completely there."""
        stamps = {name: self._read_stamp(name) for name in _needed(section)}
        if None in stamps.values() or (version := self.version()) is None:
            return False
        return all(stamp == self._mark(name, version) for name, stamp in stamps.items())

    def version(self) -> str | None:
        """The Python version of the environment, or None when its interpreter does not run."""
        try:
            asked = _run([str(self.python), "-I", "-S", "-c", "import sys; print('%d.%d' % sys.version_info[:2])"])
        except OSError:
            return None
        return asked.stdout.strip() if asked.returncode == 0 else None

    def make(self, section: str) -> None:
        """Make everything that `section` needs, or wait for another process that is just doing so."""
        if self.is_ready(section):
            return
        require_python()
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
            with guard(self.folder / _GUARD):
                if not self.is_ready(section):
                    require_space(self.folder, section)
                    self._build(section)
        except OSError as error:
            raise explain(error, "setting up", self.folder) from error

    def _build(self, section: str) -> None:
        adding = section != "open" and self.is_ready("open")
        steps = Steps(3 if adding else 4)
        if not adding:
            self._clear()
            steps.begin(f"Making a Python environment in {self.folder} (some seconds)")
            self._make_bare()
        steps.begin("Fetching packages (usually one to five minutes, depending on the network)")
        self._install(section, steps)
        steps.begin("Trying whether everything starts (some seconds)")
        self._try_out(section)
        version = self.version()
        for name in _needed(section):
            _write_last(self.stamp(name), self._mark(name, version))
        steps.end("Everything is set up: from now on this takes seconds and needs no network.")

    def _clear(self) -> None:
        """Empty the folder, all but the guard that this process holds; the stamps go first."""
        present = {item.name for item in self.folder.iterdir()} - {_GUARD}
        if present and not present & {_OWN, "pyvenv.cfg"}:
            raise SetupError(f"{self.folder} holds something else than an environment: move it away and start again.")
        for name in locked.SECTIONS:
            self.stamp(name).unlink(missing_ok=True)
        for name in sorted(present - {_OWN}):
            item = self.folder / name
            if item.is_dir() and not item.is_symlink():
                shutil.rmtree(item)
            else:
                item.unlink(missing_ok=True)

    def _make_bare(self) -> None:
        (self.folder / _OWN).write_text("Made by drillpoint, which can make it again: delete it whenever you like.\n")
        made = _run([sys.executable, "-m", "venv", str(self.folder)])
        if made.returncode or not self.python.exists():
            self._note(made.stdout)
            raise SetupError(
                "This Python could not make an environment: install Python 3.11 to 3.14 afresh and start again. "
                f"Details: {self.log}"
            )
        base = str(self.folder)
        packages = sysconfig.get_path("purelib", "venv", vars={"base": base, "platbase": base})
        (Path(packages) / _PATH_FILE).write_text(_PATH_LINE, encoding="ascii")

    def _install(self, section: str, steps: Steps) -> None:
        wanted = [self.sections[name] for name in _needed(section)]
        requirements = self.folder / "drillpoint-requirements.txt"
        requirements.write_text("".join(part.text for part in wanted), encoding="utf-8")
        total = sum(len(part.pins) for part in wanted)

        def report(count: int, name: str) -> None:
            if name:
                steps.progress(f"package {count} of about {total}: {name}")
            else:
                steps.begin("Putting the packages in place (about a minute)")

        install(self.python, requirements, self.log, report)

    def _try_out(self, section: str) -> None:
        for name in _needed(section):
            tried = _run([str(self.python), "-c", f"import drillpoint, {', '.join(MODULES[name])}"])
            if tried.returncode:
                self._note(tried.stdout)
                raise SetupError(
                    "The packages are in place but do not start here, as happens when a virus scanner or a rule of "
                    f"this computer holds them back: start again, or ask whoever looks after it. Details: {self.log}"
                )

    def _note(self, text: str) -> None:
        with self.log.open("a", encoding="utf-8") as log:
            log.write(text)

    def _mark(self, section: str, version: str | None) -> dict[str, str | None]:
        return {"lock": self.sections[section].digest, "python": version}

    def _read_stamp(self, section: str) -> object:
        try:
            return json.loads(self.stamp(section).read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return None


def importable(section: str) -> bool:
    """Whether the Python that is running now has what `section` needs."""
    return all(importlib.util.find_spec(module) for name in _needed(section) for module in MODULES[name])


def require_python() -> None:
    """Refuse a Python that cannot make an environment, with the cure."""
    lacking = [name for name in ("venv", "ensurepip") if importlib.util.find_spec(name) is None]
    if lacking:
        cure = "install it with `sudo apt install python3-venv`" if sys.platform == "linux" else "install Python afresh"
        raise SetupError(f"This Python lacks its module {' and '.join(lacking)}: {cure} and start again.")
    if sys.maxsize < 2**32:
        raise SetupError("This is a 32-bit Python: install the 64-bit Python 3.11 to 3.14 and start again.")


def require_space(folder: Path, section: str) -> None:
    """Refuse to begin on a disk that will not hold it."""
    present = next(place for place in (folder, *folder.parents) if place.exists())
    free = shutil.disk_usage(present).free
    if free < SPACE_NEEDED[section]:
        raise SetupError(
            f"The disk is too full: {free / 1e6:.0f} MB are free where {folder} lies and "
            f"{SPACE_NEEDED[section] / 1e6:.0f} MB are needed; free some space and start again."
        )


@contextlib.contextmanager
def guard(path: Path) -> Iterator[None]:
    """Let one process at a time set up; the system itself lets go when a process ends, however it ends."""
    with path.open("a+b") as file:
        waiting = False
        while not _seize(file.fileno()):
            if not waiting:
                say("Another drillpoint is setting up here; waiting for it to finish.")
                waiting = True
            time.sleep(0.5)
        yield


def _seize(descriptor: int) -> bool:
    try:
        if sys.platform == "win32":
            import msvcrt

            msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        # Some network drives know no locks; going on without one beats never starting.
        return error.errno not in (errno.EACCES, errno.EAGAIN, errno.EDEADLK)
    return True


def _needed(section: str) -> tuple[str, ...]:
    return locked.SECTIONS[: locked.SECTIONS.index(section) + 1]


def _run(command: list[str]) -> subprocess.CompletedProcess[str]:
    return subprocess.run(  # noqa: S603
        command,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        errors="replace",
        env=child_environment(),
        check=False,
    )


def _write_last(path: Path, content: object) -> None:
    """Write a file so that it is either completely there or not at all."""
    fresh = path.with_suffix(".new")
    fresh.write_text(json.dumps(content), encoding="utf-8")
    fresh.replace(path)
