"""The commands that set up and start: open, test and check."""

import os
import subprocess
import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Sequence
from pathlib import Path

from drillpoint.command import Command
from drillpoint.setup import check, lab, lessons, places, testing
from drillpoint.setup.console import child_environment, say
from drillpoint.setup.environment import Environment, importable
from drillpoint.setup.places import Places
from drillpoint.setup.trouble import SetupError

_RERUN = "DRILLPOINT_RERUN"


def rerun_with_packages(arguments: Sequence[str]) -> int | None:
    """Run the same command where the packages are, setting up first if need be; None when they are here already."""
    if importable("open"):
        return None
    if os.environ.get(_RERUN):
        raise SetupError("The packages were set up but are not found: delete the folder .venv and start again.")
    _, python = with_packages(places.find(), "open")
    done = subprocess.run(  # noqa: S603
        [str(python), "-m", "drillpoint", *arguments], env=child_environment({_RERUN: "1"}), check=False
    )
    return done.returncode


def with_packages(here: Places, section: str) -> tuple[Places, Path]:
    """The Python that has what `section` needs, and the places that go with it; sets up what is missing."""
    complete = here.installed and importable(section)
    if here.installed and (section == "test" or not complete):
        here = places.unpack(here)
    if complete:
        return here, Path(sys.executable)
    environment = Environment.of(here)
    if not environment.is_ready(section):
        say("Setting up: this happens once.")
        environment.make(section)
    return here, environment.python


def _add_folder(parser: ArgumentParser) -> None:
    parser.add_argument(
        "--folder",
        metavar="DIR",
        help="where your own copies of the lessons live (default: drillpoint-work in the project's folder; "
        "in your home when drillpoint is installed as a package)",
    )


def _open_arguments(parser: ArgumentParser) -> None:
    _add_folder(parser)
    parser.add_argument("--port", metavar="N", type=int, default=lab.USUAL_PORT, help="where JupyterLab listens (8888)")
    parser.add_argument("--no-browser", action="store_true", help="only print the address, and open no browser")


def _open(options: Namespace) -> int:
    here = places.find(options.folder)
    lab.free_port(options.port)
    here, python = with_packages(here, "open")
    copied = lessons.copy(here)
    lab.trust(here, python, (*copied.fresh, *copied.beside))
    say(f"Your own copies of the lessons are in {here.folder}")
    for name in copied.beside:
        say(f"A lesson has changed since you edited your copy: yours stays, the new one is beside it as {name}")
    if copied.first is None:
        say("There are no lessons in this copy of drillpoint, so JupyterLab opens on your folder.")
    return lab.run(here, python, copied.first, options.port, browser=not options.no_browser)


def _test_arguments(parser: ArgumentParser) -> None:
    parser.add_argument("rest", nargs="*", metavar="-- ARGUMENTS", help="passed on to pytest, as in: test -- -k lips")


def _test(options: Namespace) -> int:
    here, python = with_packages(places.find(), "test")
    say(f"Running every test with {python}")
    return testing.run(here.project, python, options.rest)


def _check(options: Namespace) -> int:
    return check.run(places.find(options.folder))


COMMANDS = (
    Command("open", "open the workbook in JupyterLab (sets up on first use)", _open_arguments, _open),
    Command("test", "run every test (sets up on first use)", _test_arguments, _test),
    Command("check", "say whether this machine can show the workbook, and what is missing", _add_folder, _check),
)
