"""Shared by all tests: a browser, and the folder of the project."""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, settings

if TYPE_CHECKING:
    from playwright.sync_api import Browser

# The same drills on every run and every machine, so that a failure is somebody's change and never chance;
# `--hypothesis-profile=thorough` looks further, and elsewhere each time: for changes to a law itself.
_SLOW = [HealthCheck.too_slow]
settings.register_profile("usual", max_examples=25, deadline=None, derandomize=True, suppress_health_check=_SLOW)
settings.register_profile("thorough", max_examples=500, deadline=None, suppress_health_check=_SLOW)
settings.load_profile("usual")

PROJECT = Path(__file__).parents[1]
_PROGRAMS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge")
_ELSEWHERE = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    r"C:\Program Files\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
)

# Where all files are spread over the cores, these go first, so that at the end no core waits for one of them.
_LONGEST = ("test_fresh_clone.py", "test_every_lesson_in_jupyterlab.py", "test_environment.py", "test_editions.py")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The longest files in front; within a file, and among the others, the order stays."""
    items.sort(key=lambda item: _LONGEST.index(item.path.name) if item.path.name in _LONGEST else len(_LONGEST))


@pytest.fixture(scope="session")
def project() -> Path:
    """The folder of the project."""
    return PROJECT


@pytest.fixture(scope="session")
def chromium() -> str:
    """The path of a Chromium-like browser. Without one, browser tests are skipped; on a build machine they fail."""
    found = next((path for path in map(shutil.which, _PROGRAMS) if path), None)
    found = found or next((path for path in _ELSEWHERE if Path(path).exists()), None)
    if found is None:
        message = "no Chromium, Chrome or Edge was found: install one to run the browser tests"
        (pytest.fail if os.environ.get("CI") else pytest.skip)(message)
    return found


@pytest.fixture(scope="session")
def chromium_arguments() -> list[str]:
    """Arguments that a browser needs on the machine at hand: as root, Chromium starts only without its sandbox."""
    as_root = sys.platform != "win32" and os.geteuid() == 0
    return ["--no-sandbox"] if as_root else []


@pytest.fixture(scope="module")
def browser(chromium: str, chromium_arguments: list[str]) -> Iterator[Browser]:
    """A headless browser, for the tests of one module."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        opened = playwright.chromium.launch(executable_path=chromium, args=chromium_arguments)
        yield opened
        opened.close()
