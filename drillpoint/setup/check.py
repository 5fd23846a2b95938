"""Whether this machine can set up and show the workbook: one line a finding, each with its cure."""

import importlib.util
import json
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from drillpoint.setup import browser
from drillpoint.setup.console import child_environment, say
from drillpoint.setup.environment import Environment, importable, require_python, require_space
from drillpoint.setup.installing import meaning
from drillpoint.setup.places import Places, can_write
from drillpoint.setup.trouble import SetupError

NEWEST_TESTED = (3, 14)
SMALL_PACKAGE = "anywidget"
"""Asked of the package index, to see whether it answers."""

# Run by the workbook's Python: which versions are there, and which of the parts that JupyterLab itself must load.
_ASK = """
import importlib.metadata, json
from pathlib import Path
from jupyter_core.paths import jupyter_path
names = ["jupyterlab", "ipywidgets", "anywidget"]
parts = ["@jupyter-widgets/jupyterlab-manager", "anywidget"]
folders = [Path(folder) for folder in jupyter_path("labextensions")]
print(json.dumps({
    "versions": {name: importlib.metadata.version(name) for name in names},
    "lacking": [part for part in parts if not any((folder / part / "package.json").is_file() for folder in folders)],
}))
"""


@dataclass(frozen=True)
class Finding:
    """One line of the report."""

    what: str
    state: str
    """`ok`, `missing` (`open` would not work) or `note` (it would, with less comfort)."""
    said: str


def run(places: Places) -> int:
    """Print the report; 0 when `open` would work here."""
    findings = list(examine(places))
    for finding in findings:
        say(f"  {finding.state:<8} {finding.what}: {finding.said}")
    say()
    if any(finding.state == "missing" for finding in findings):
        say("`open` would not work yet: see the lines marked missing.")
        return 1
    say("`open` would work on this machine.")
    return 0


def examine(places: Places) -> Iterator[Finding]:
    """Look at one thing after the other."""
    yield _python()
    python = usable_python(places)
    if python is None:
        yield from _before_setting_up(places)
    else:
        yield Finding("Packages", "ok", f"set up ({python})")
        yield from _sliders(python)
    yield _own_folder(places)
    yield _browser()


def usable_python(places: Places) -> Path | None:
    """The Python that has everything the workbook needs; None before setting up."""
    if places.installed and importable("open"):
        return Path(sys.executable)
    environment = Environment.of(places)
    return environment.python if environment.is_ready("open") else None


def _python() -> Finding:
    version = ".".join(str(part) for part in sys.version_info[:3])
    if sys.version_info[:2] > NEWEST_TESTED:
        return Finding("Python", "note", f"{version} is newer than those tried; if setting up fails, use 3.11 to 3.14")
    return Finding("Python", "ok", version)


def _before_setting_up(places: Places) -> Iterator[Finding]:
    folder = places.environment
    yield _try("Making environments", require_python, "this Python can")
    if can_write(folder):
        yield Finding("Environment", "ok", f"may be made in {folder}")
    else:
        cure = "copy the drillpoint folder to a place of your own and start again there"
        yield Finding("Environment", "missing", f"not allowed to write in {folder.parent}; {cure}")
    yield _try("Disk", lambda: require_space(folder, "open"), "enough space")
    state = "half-made or out of date; `open` makes it anew" if folder.exists() else "not set up yet; `open` does it"
    yield Finding("Packages", "note", state)
    yield _index(places)


def _index(places: Places) -> Finding:
    """Ask the user's package index for one small package, in the way that setting up would."""
    what = "Package index"
    if importlib.util.find_spec("pip") is None:
        return Finding(what, "note", "not asked, as this Python has no pip of its own; `open` brings one and will ask")
    pins = {pin.name: pin for pin in Environment.of(places).sections["open"].pins}
    with tempfile.TemporaryDirectory() as scratch:
        requirements = Path(scratch) / "requirements.txt"
        requirements.write_text(pins[SMALL_PACKAGE].text, encoding="utf-8")
        asked = subprocess.run(  # noqa: S603
            [
                *(sys.executable, "-m", "pip", "--disable-pip-version-check", "--no-input", "--retries", "1"),
                *("--timeout", "20", "download", "--require-hashes", "--no-deps", "--only-binary=:all:"),
                *("--dest", scratch, "--requirement", str(requirements)),
            ],
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            encoding="utf-8",
            errors="replace",
            env=child_environment(),
            check=False,
        )
    if asked.returncode:
        return Finding(what, "missing", meaning(asked.stdout, places.project))
    return Finding(what, "ok", "answers")


def _sliders(python: Path) -> Iterator[Finding]:
    asked = subprocess.run(  # noqa: S603
        [str(python), "-c", _ASK],
        capture_output=True,
        text=True,
        encoding="utf-8",
        env=child_environment(),
        check=False,
    )
    again = "delete the folder .venv in the project and run `open`"
    if asked.returncode:
        yield Finding("JupyterLab", "missing", f"does not start here; {again}")
        return
    answer = json.loads(asked.stdout)
    yield Finding("JupyterLab", "ok", ", ".join(f"{name} {version}" for name, version in answer["versions"].items()))
    if answer["lacking"]:
        yield Finding("Sliders", "missing", f"JupyterLab lacks its part {' and '.join(answer['lacking'])}; {again}")
    else:
        yield Finding("Sliders", "ok", "JupyterLab has the parts that draw them")


def _own_folder(places: Places) -> Finding:
    if can_write(places.folder):
        return Finding("Your folder", "ok", str(places.folder))
    return Finding("Your folder", "missing", f"not allowed to write in {places.folder}; choose another with `--folder`")


def _browser() -> Finding:
    if browser.graphical() is None:
        return Finding("Browser", "note", "none found from here; `open` prints the address to open in one")
    return Finding("Browser", "ok", "found")


def _try(what: str, require: Callable[[], None], good: str) -> Finding:
    try:
        require()
    except SetupError as error:
        return Finding(what, "missing", str(error))
    return Finding(what, "ok", good)
