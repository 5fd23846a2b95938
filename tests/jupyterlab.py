"""A JupyterLab server with a folder of its own, for browser tests."""

from __future__ import annotations

import http.client
import os
import secrets
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import nbformat
import pytest
from attrs import frozen

PATIENCE = 90  # seconds; a cold start on a busy machine takes its time


@frozen
class Lab:
    """A running server on the loopback address. folder: what it serves."""

    port: int
    token: str
    folder: Path

    def address(self, notebook: str) -> str:
        """Where the notebook of this name opens, in a workspace that nothing else uses."""
        return f"http://127.0.0.1:{self.port}/lab/workspaces/{secrets.token_hex(4)}/tree/{notebook}?token={self.token}"

    def write(self, notebook: str, *cells: str) -> str:
        """Put a notebook of code cells into the folder; returns its address."""
        made = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(cell) for cell in cells])
        made.metadata["kernelspec"] = {"name": "python3", "display_name": "Python 3", "language": "python"}
        nbformat.write(made, self.folder / notebook)
        return self.address(notebook)


@pytest.fixture(scope="session")
def jupyterlab(tmp_path_factory: pytest.TempPathFactory, project: Path) -> Iterator[Lab]:
    """JupyterLab on the loopback address, with settings and folder of its own."""
    home = tmp_path_factory.mktemp("lab")
    folder = home / "folder"
    folder.mkdir()
    # No question about news from outside may stand in the way.
    quiet = home / "settings" / "@jupyterlab" / "apputils-extension" / "notification.jupyterlab-settings"
    quiet.parent.mkdir(parents=True)
    quiet.write_text('{"fetchNews": "false", "checkForUpdates": false}', encoding="utf-8")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    token = secrets.token_hex(16)
    settings = {f"JUPYTER_{name}_DIR": str(home / name.lower()) for name in ("CONFIG", "RUNTIME")}
    environment = {**os.environ, **settings, "JUPYTERLAB_SETTINGS_DIR": str(home / "settings")}
    environment |= {"JUPYTERLAB_WORKSPACES_DIR": str(home / "workspaces"), "PYTHONPATH": str(project)}
    command = [sys.executable, "-m", "jupyterlab", "--no-browser", "--allow-root", "--ServerApp.ip=127.0.0.1"]
    command += [f"--ServerApp.port={port}", "--ServerApp.port_retries=0", f"--IdentityProvider.token={token}"]
    command += [f"--ServerApp.root_dir={folder}"]
    with (home / "log").open("w") as log:
        server = subprocess.Popen(command, env=environment, cwd=folder, stdout=log, stderr=log)
    try:
        lab = Lab(port, token, folder)
        _wait_for(lab, server, home / "log")
        yield lab
    finally:
        server.terminate()
        try:
            server.wait(20)
        except subprocess.TimeoutExpired:
            server.kill()


def _wait_for(lab: Lab, server: subprocess.Popen[bytes], log: Path) -> None:
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end and server.poll() is None:
        try:
            connection = http.client.HTTPConnection("127.0.0.1", lab.port, timeout=5)
            connection.request("GET", f"/api?token={lab.token}")
            if connection.getresponse().status == http.HTTPStatus.OK:
                return
        except OSError:
            pass
        time.sleep(0.2)
    pytest.fail("JupyterLab did not start:\n" + log.read_text()[-3000:])
