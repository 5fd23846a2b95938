"""Plain words on any console, and the surroundings that child processes get."""

import os
import sys
import time
from collections.abc import Mapping


def prepare() -> None:
    """Make printing safe: a console that lacks a letter shows a stand-in instead of stopping the program."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(errors="replace", line_buffering=True)


def say(text: str = "") -> None:
    """Print a line at once."""
    print(text, flush=True)


def complain(text: str) -> None:
    """Print a line to the error stream."""
    print(text, file=sys.stderr, flush=True)


class Steps:
    """Announces the steps of a longer job, and how far the present one has come."""

    def __init__(self, total: int) -> None:
        self.total = total
        self.done = 0
        self._started = time.monotonic()
        self._open_line = False
        self._last = ""

    def begin(self, text: str) -> None:
        """Announce the next step."""
        self._close_line()
        self.done += 1
        say(f"[{self.done}/{self.total}] {text}")

    def progress(self, text: str) -> None:
        """Say how far the step has come: on a terminal the line is rewritten, elsewhere nothing is printed."""
        if text == self._last or not (sys.stdout and sys.stdout.isatty()):
            return
        self._last = text
        self._open_line = True
        width = 76
        print("\r" + f"      {text}"[:width].ljust(width), end="", flush=True)

    def end(self, text: str) -> None:
        """Close the job with the time it took."""
        self._close_line()
        seconds = round(time.monotonic() - self._started)
        took = f"{seconds} s" if seconds < 100 else f"{seconds // 60} min {seconds % 60:02d} s"
        say(f"{text} ({took})")

    def _close_line(self) -> None:
        if self._open_line:
            print()
        self._open_line = False


# Settings of the user's that would send packages somewhere else than into the environment.
_MISLEADING = ("PIP_TARGET", "PIP_PREFIX", "PIP_ROOT", "PIP_REQUIRE_HASHES", "PYTHONHOME", "PYTHONSTARTUP")


def child_environment(extra: Mapping[str, str] | None = None) -> dict[str, str]:
    """The environment variables of every child: UTF-8 throughout, and otherwise the user's own (proxy, index)."""
    variables = {name: value for name, value in os.environ.items() if name not in _MISLEADING}
    variables |= {"PYTHONUTF8": "1", "PYTHONIOENCODING": "utf-8", "PIP_USER": "0", "JUPYTER_PREFER_ENV_PATH": "1"}
    return variables | dict(extra or {})
