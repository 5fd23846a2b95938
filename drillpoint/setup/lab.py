"""Starting JupyterLab on the learner's folder, and ending it tidily."""

import contextlib
import json
import os
import secrets
import signal
import socket
import subprocess
import sys
import tempfile
import time
import urllib.error
import urllib.parse
import urllib.request
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from drillpoint.setup.browser import show
from drillpoint.setup.console import child_environment, say
from drillpoint.setup.places import Places
from drillpoint.setup.trouble import SetupError, explain

HOST = "127.0.0.1"
USUAL_PORT = 8888
PORTS = range(1024, 65536)
_PORTS_TRIED = 50
_NEWS = "@jupyterlab/apputils-extension:announcements"
_DOCUMENTS, _PREVIEW = "@jupyterlab/docmanager-extension/plugin", "Markdown Preview"
_PATIENCE = 180
"""Seconds until a server that does not answer is given up: a slow disk under a virus scanner takes over a minute."""
_GRACE = 15
"""Seconds that the server has for ending its kernels."""


@dataclass(frozen=True)
class Server:
    """Where the notebook server listens, and the token that opens it."""

    port: int
    token: str

    @property
    def root(self) -> str:
        """The address without the token."""
        return f"http://{HOST}:{self.port}"

    def address(self, lesson: str | None) -> str:
        """What to open in a browser."""
        page = f"/lab/tree/{urllib.parse.quote(lesson)}" if lesson else "/lab"
        return f"{self.root}{page}?token={self.token}"

    def answers(self) -> bool:
        """Whether this very server, knowing this token, is up."""
        request = urllib.request.Request(  # noqa: S310
            f"{self.root}/api/status", headers={"Authorization": f"token {self.token}"}
        )
        direct = urllib.request.build_opener(urllib.request.ProxyHandler({}))
        try:
            with direct.open(request, timeout=5) as reply:
                return bool(reply.status == 200)
        except (OSError, urllib.error.HTTPError):
            return False


def run(places: Places, python: Path, lesson: str | None, port: int, browser: bool) -> int:
    """Serve the learner's folder until stopped, opening a browser on `lesson` unless told not to."""
    free = free_port(port)
    if free != port:
        say(f"Port {port} is taken by another program, so port {free} is used.")
    server = Server(free, secrets.token_hex(24))
    log = places.state / "jupyter.log"
    say("Starting JupyterLab (some seconds; the first time it may take a minute) ...")
    with tempfile.TemporaryDirectory(prefix="drillpoint-") as runtime, stopping_on_signals():
        try:
            _prepare(places)
            with log.open("wb") as words:
                child = subprocess.Popen(  # noqa: S603
                    command(places, python, server),
                    stdin=subprocess.DEVNULL,
                    stdout=words,
                    stderr=subprocess.STDOUT,
                    cwd=places.folder,
                    env=surroundings(
                        places,
                        # The runtime folder is on the local disk: a stick or a network drive may not keep it private.
                        {"JUPYTER_TOKEN": server.token, "JUPYTER_RUNTIME_DIR": runtime},
                    ),
                    start_new_session=os.name != "nt",
                )
        except OSError as error:
            raise explain(error, "starting JupyterLab", places.folder) from error
        try:
            _wait_until_it_answers(server, child, log)
            _welcome(server, lesson, browser)
            child.wait()
        except KeyboardInterrupt:
            say("\nStopping JupyterLab ...")
            return 0
        finally:
            _end(child)
    return 0 if child.returncode == 0 else _died(log)


def command(places: Places, python: Path, server: Server) -> list[str]:
    """The call that starts the server. The token is not in it: other users can read a program's arguments."""
    arguments = [
        f"--ServerApp.ip={HOST}",
        f"--ServerApp.port={server.port}",
        "--ServerApp.port_retries=0",
        f"--ServerApp.root_dir={places.folder}",
        "--ServerApp.open_browser=False",
        "--ServerApp.answer_yes=True",
        # Nothing is asked of the internet: a room without network must see no error for it.
        "--LabApp.news_url=None",
        "--LabApp.check_for_updates_class=jupyterlab.handlers.announcements.NeverCheckForUpdate",
        "--LabApp.extension_manager=readonly",
    ]
    if sys.platform != "win32" and os.geteuid() == 0:
        arguments.append("--allow-root")
    return [str(python), "-m", "jupyterlab", *arguments]


def surroundings(places: Places, extra: Mapping[str, str] | None = None) -> dict[str, str]:
    """Environment variables for JupyterLab: settings and history stay with the learner's copies."""
    own = places.state
    kept_there = {
        "JUPYTER_CONFIG_DIR": own / "jupyter",
        "JUPYTER_DATA_DIR": own / "jupyter" / "data",
        "JUPYTERLAB_SETTINGS_DIR": own / "jupyter" / "settings",
        "JUPYTERLAB_WORKSPACES_DIR": own / "jupyter" / "workspaces",
        "IPYTHONDIR": own / "ipython",
    }
    return child_environment({name: str(path) for name, path in kept_there.items()} | dict(extra or {}))


def _prepare(places: Places) -> None:
    """Choices of JupyterLab's that are made once; a learner may change them.

    The part that asks about news is left out: its question would cover the first lesson. Pages of the book open as
    pages, not as their source.
    """
    own = places.state / "jupyter"
    _unless_there(own / "labconfig" / "page_config.json", {"disabledExtensions": {_NEWS: True}})
    _unless_there(own / "settings" / f"{_DOCUMENTS}.jupyterlab-settings", {"defaultViewers": {"markdown": _PREVIEW}})


def _unless_there(path: Path, choices: Mapping[str, object]) -> None:
    if not path.exists():
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(json.dumps(choices), encoding="utf-8")


def trust(places: Places, python: Path, names: Sequence[str]) -> None:
    """Tell JupyterLab that these lessons are as published, so that their drawings show before anything is run."""
    notebooks = [str(places.folder / name) for name in names if name.endswith(".ipynb")]
    if notebooks:
        # Left undone, the drawings appear a little later, on the first run: no reason to stop.
        subprocess.run(  # noqa: S603
            [str(python), "-m", "nbformat.sign", *notebooks],
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            env=surroundings(places),
            check=False,
        )


def free_port(wanted: int) -> int:
    """The wanted port, or the next free one."""
    if wanted not in PORTS:
        raise SetupError(f"Port {wanted} is outside {PORTS.start} to {PORTS.stop - 1}: {USUAL_PORT} is usual.")
    last = min(wanted + _PORTS_TRIED, PORTS.stop)
    for port in range(wanted, last):
        with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as probe:
            if sys.platform != "win32":
                probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
            with contextlib.suppress(OSError):
                probe.bind((HOST, port))
                return port
    raise SetupError(f"No port from {wanted} to {last - 1} is free: close other programs or choose another `--port`.")


@contextlib.contextmanager
def stopping_on_signals() -> Iterator[None]:
    """Treat a closed terminal or a polite kill like Ctrl-C, so that the server never outlives its command."""

    def stop(*_: object) -> None:
        raise KeyboardInterrupt

    names = [name for name in ("SIGTERM", "SIGHUP", "SIGBREAK") if hasattr(signal, name)]
    before = {name: signal.signal(getattr(signal, name), stop) for name in names}
    try:
        yield
    finally:
        for name, handler in before.items():
            signal.signal(getattr(signal, name), handler)


def _wait_until_it_answers(server: Server, child: subprocess.Popen[bytes], log: Path) -> None:
    deadline = time.monotonic() + _PATIENCE
    while not server.answers():
        if child.poll() is not None:
            _died(log)
        if time.monotonic() > deadline:
            raise SetupError(f"JupyterLab did not answer within {_PATIENCE} s: start again. Details: {log}")
        time.sleep(0.1)


def _died(log: Path) -> int:
    words = log.read_text(encoding="utf-8", errors="replace")
    if "No space left" in words or "Errno 28" in words:
        raise SetupError(f"The disk is full: free some space where {log.parent} lies and start again.")
    raise SetupError(f"JupyterLab stopped by itself: start again. Details: {log}")


def _welcome(server: Server, lesson: str | None, browser: bool) -> None:
    address = server.address(lesson)
    opened = browser and show(address)
    say()
    if opened:
        say("JupyterLab opens in your browser. If it does not, open this address in it yourself:")
    else:
        if browser:
            say("No browser could be started from here.")
        say("Open this address in a browser on this computer:")
    say(f"    {address}")
    say()
    say("Leave this window open while you work. To stop, press Ctrl-C here.")


def _end(child: subprocess.Popen[bytes]) -> None:
    if child.poll() is not None:
        return
    with contextlib.suppress(KeyboardInterrupt):
        if sys.platform != "win32":
            child.terminate()
        # On Windows the server has had the Ctrl-C itself, and terminating would not let it end its kernels.
        with contextlib.suppress(subprocess.TimeoutExpired):
            child.wait(_GRACE)
            return
    child.kill()
    child.wait()
