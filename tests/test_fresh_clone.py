"""A newcomer's first minutes: the two commands, in a fresh copy of the project, with nothing installed."""

import json
import os
import re
import shutil
import signal
import socket
import subprocess
import sys
import threading
import urllib.error
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from drillpoint.setup import check, lessons, places
from drillpoint.setup.lab import HOST

INSIDE = "DRILLPOINT_INSIDE_FRESH_CLONE"
# The geometry, the drawings, the reading and marking of answers and what the lessons claim do not depend on where the
# project lies, and the run around this one has just worked through them; inside they would only double the time. The
# documents, whose commands are walked through, and the lessons themselves do look at the folder, and are run.
NOT_INSIDE = (
    *("relation", "relations", "published", "editions", "benchmarks", "drawing", "ground", "explorers", "course"),
    *("planning", "notebooks"),
)
INNER = tuple(f"--ignore=tests/{room}" for room in NOT_INSIDE)
PATIENCE = 900
"""Seconds for setting up on a slow network, or for all the tests."""

pytestmark = pytest.mark.skipif(INSIDE in os.environ, reason="this is the test run inside the fresh copy")


@pytest.fixture(scope="module", autouse=True)
def _index_answers() -> None:
    """Without a package index nothing can be set up; a build machine always has one."""
    found = check._index(places.find())
    if found.state == "missing" and not os.environ.get("CI"):
        pytest.skip(f"setting up cannot be tried: {found.said}")


@pytest.fixture(scope="module")
def clone(project: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A fresh copy, in a folder with a space and letters beyond ASCII in its name."""
    target = tmp_path_factory.mktemp("fresh") / "Bohrer schärfen – заточка"
    target.mkdir()
    for name in own_files(project):
        (target / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(project / name, target / name)
    return target


def own_files(project: Path) -> list[str]:
    """What belongs to the project: what git would take; without git everything but what the commands make."""
    command = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    if (project / ".git").exists() and shutil.which("git"):
        listed = subprocess.run(command, cwd=project, capture_output=True, check=True).stdout.decode("utf-8")
        return [name for name in listed.split("\0") if name and (project / name).is_file()]
    made = re.compile(r"(^|/)(\.venv|\.git|drillpoint-work|__pycache__|\.[a-z_]*cache|\.hypothesis|\.benchmarks)(/|$)")
    everything = (path.relative_to(project).as_posix() for path in project.rglob("*") if path.is_file())
    return [name for name in everything if not made.search(name)]


def as_newcomer(**variables: str) -> dict[str, str]:
    """The environment of somebody who has just installed Python."""
    hidden = ("VIRTUAL_ENV", "PYTHONPATH", "PYTHONHOME", "DRILLPOINT_", "JUPYTER", "PYTEST")
    return {name: value for name, value in os.environ.items() if not name.startswith(hidden)} | variables


def plain_python() -> str:
    """The Python that the environment of these tests was made from."""
    return getattr(sys, "_base_executable", sys.executable)


@contextmanager
def opened(clone: Path, port: int) -> Iterator[tuple[subprocess.Popen[str], list[str]]]:
    """Run `open` until the address has been told; yield the process and all that it printed."""
    process = subprocess.Popen(
        [plain_python(), "-m", "drillpoint", "open", "--no-browser", "--port", str(port)],
        cwd=clone,
        env=as_newcomer(PYTHONIOENCODING="utf-8"),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        creationflags=getattr(subprocess, "CREATE_NEW_PROCESS_GROUP", 0),
    )
    overdue = threading.Timer(PATIENCE, process.kill)
    overdue.start()
    said: list[str] = []
    try:
        assert process.stdout is not None
        for line in process.stdout:
            said.append(line)
            if "Ctrl-C" in line:
                break
        yield process, said
    finally:
        overdue.cancel()
        if process.poll() is None:
            process.kill()
        process.wait()


def stop(process: subprocess.Popen[str]) -> None:
    process.send_signal(getattr(signal, "CTRL_BREAK_EVENT", signal.SIGINT))
    process.wait(60)


def status(address: str, token: str | None) -> tuple[int, bytes]:
    headers = {"Authorization": f"token {token}"} if token else {}
    opener = urllib.request.build_opener(urllib.request.ProxyHandler({}))
    try:
        with opener.open(urllib.request.Request(address, headers=headers), timeout=30) as reply:  # noqa: S310
            return reply.status, reply.read()
    except urllib.error.HTTPError as error:
        return error.code, b""


def test_open_and_then_test(clone: Path) -> None:
    with socket.socket() as probe:
        probe.bind((HOST, 0))
        port = probe.getsockname()[1]
    before = {path.name for path in clone.iterdir()}

    with opened(clone, port) as (process, said):
        text = "".join(said)
        assert "[4/4]" in text, text
        found = re.search(r"http://127\.0\.0\.1:(\d+)(/\S*)\?token=(\w+)", text)
        assert found, text
        root, token = f"http://{HOST}:{found[1]}", found[3]
        assert status(f"{root}/api/contents", None)[0] == 403
        first = lessons.first_lesson([path.name for path in (clone / "notebooks").glob("*.ipynb")])
        assert first is not None
        assert found[2] == f"/lab/tree/{first}"
        code, body = status(f"{root}/api/contents/{first}", token)
        assert code == 200
        assert json.loads(body)["content"]["cells"]
        assert not reachable_from_outside(int(found[1]))
        stop(process)
        assert process.returncode == 0
    assert {path.name for path in clone.iterdir()} - before == {".venv", "drillpoint-work"}

    with opened(clone, port) as (process, said):
        assert "Setting up" not in "".join(said)
        assert "token=" in "".join(said)
        stop(process)

    tested = subprocess.run(
        [plain_python(), "-m", "drillpoint", "test", "--", "-q", "--benchmark-disable", *INNER],
        cwd=clone,
        env=as_newcomer(**{INSIDE: "1"}),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        timeout=PATIENCE,
        check=False,
    )
    assert tested.returncode == 0, tested.stdout[-20000:]
    assert re.search(r"\d+ passed", tested.stdout)


def reachable_from_outside(port: int) -> bool:
    """Whether the server answers on this machine's other addresses, where the network could reach it."""
    own = {str(entry[4][0]) for entry in socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)}
    for address in own - {HOST}:
        if address.startswith("127."):
            continue
        with socket.socket() as probe:
            probe.settimeout(2)
            if probe.connect_ex((address, port)) == 0:
                return True
    return False
