import http.server
import json
import signal
import socket
import subprocess
import sys
import threading
from collections.abc import Iterator
from pathlib import Path

import nbformat
import nbformat.sign
import pytest

from drillpoint.setup import lab
from drillpoint.setup.lab import Server
from drillpoint.setup.places import Places
from drillpoint.setup.trouble import SetupError

# Stands in for JupyterLab: answers only to its token, and writes down how it was called.
FAKE = """
import http.server, json, os, sys
port = next(int(part.split("=")[1]) for part in sys.argv if part.startswith("--ServerApp.port="))
json.dump({"arguments": sys.argv[1:], "variables": dict(os.environ)}, open(os.environ["FAKE_NOTES"], "w"))
class Handler(http.server.BaseHTTPRequestHandler):
    def do_GET(self):
        good = self.headers.get("Authorization") == "token " + os.environ["JUPYTER_TOKEN"]
        self.send_response(200 if good else 403)
        self.end_headers()
    def log_message(self, *_): pass
print("listening", flush=True)
if os.environ.get("FAKE_DIES"): sys.exit(os.environ["FAKE_DIES"])
http.server.HTTPServer(("127.0.0.1", port), Handler).serve_forever()
"""


@pytest.fixture
def places(tmp_path: Path) -> Places:
    made = Places(project=tmp_path / "project", folder=tmp_path / "mein Ordner", installed=False)
    made.state.mkdir(parents=True)
    return made


@pytest.fixture
def fake(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Start the stand-in instead of JupyterLab; return the file with its notes."""
    program = tmp_path / "fake.py"
    program.write_text(FAKE)
    real = lab.command

    def command(places: Places, python: Path, server: Server) -> list[str]:
        return [str(python), str(program), *real(places, python, server)[3:]]

    monkeypatch.setattr(lab, "command", command)
    monkeypatch.setenv("FAKE_NOTES", str(tmp_path / "notes.json"))
    return tmp_path / "notes.json"


@pytest.fixture
def stop_when_welcomed(monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, bool]]:
    """Press Ctrl-C as soon as the address has been told; keep whether the server answered then."""
    seen: list[tuple[str, bool]] = []
    real = lab._welcome

    def welcome(server: Server, lesson: str | None, browser: bool) -> None:
        real(server, lesson, browser)
        seen.append((server.address(lesson), server.answers()))
        raise KeyboardInterrupt

    monkeypatch.setattr(lab, "_welcome", welcome)
    return seen


@pytest.fixture
def busy() -> Iterator[int]:
    """A port that another program holds."""
    with socket.socket() as holder:
        holder.bind((lab.HOST, 0))
        holder.listen()
        yield holder.getsockname()[1]


def test_started_told_and_stopped(
    places: Places, fake: Path, stop_when_welcomed: list[tuple[str, bool]], capsys: pytest.CaptureFixture[str]
) -> None:
    assert lab.run(places, Path(sys.executable), "01_lips.ipynb", lab.USUAL_PORT, browser=False) == 0
    ((address, answered),) = stop_when_welcomed
    assert answered
    out = capsys.readouterr().out
    assert address in out
    assert "press Ctrl-C" in out
    notes = json.loads(fake.read_text(encoding="utf-8"))
    token = notes["variables"]["JUPYTER_TOKEN"]
    assert address == f"http://127.0.0.1:{address.split(':')[2].split('/')[0]}/lab/tree/01_lips.ipynb?token={token}"
    assert not any(token in argument for argument in notes["arguments"])
    assert f"--ServerApp.root_dir={places.folder}" in notes["arguments"]
    assert "--ServerApp.ip=127.0.0.1" in notes["arguments"]
    assert notes["variables"]["PYTHONUTF8"] == "1"
    settings = json.loads((places.state / "jupyter/labconfig/page_config.json").read_text(encoding="utf-8"))
    assert settings == {"disabledExtensions": {"@jupyterlab/apputils-extension:announcements": True}}
    own = [notes["variables"][name] for name in ("JUPYTER_CONFIG_DIR", "JUPYTER_DATA_DIR", "IPYTHONDIR")]
    assert all(Path(folder).is_relative_to(places.state) for folder in own)
    assert not Path(notes["variables"]["JUPYTER_RUNTIME_DIR"]).exists()
    port = int(address.split(":")[2].split("/")[0])
    assert not Server(port, token).answers()


@pytest.mark.usefixtures("fake")
def test_a_busy_port_gives_way_to_the_next_in_words(
    places: Places, busy: int, stop_when_welcomed: list[tuple[str, bool]], capsys: pytest.CaptureFixture[str]
) -> None:
    assert lab.run(places, Path(sys.executable), None, busy, browser=False) == 0
    said = capsys.readouterr().out
    assert f"Port {busy} is taken by another program, so port " in said
    assert f":{busy}/" not in stop_when_welcomed[0][0]


@pytest.mark.usefixtures("fake", "stop_when_welcomed")
def test_the_browser_is_shown_the_address(
    places: Places, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    shown: list[str] = []
    monkeypatch.setattr(lab, "show", lambda address: bool(shown.append(address)))
    lab.run(places, Path(sys.executable), "01 lips & Co.ipynb", lab.USUAL_PORT, browser=True)
    assert "/lab/tree/01%20lips%20%26%20Co.ipynb?token=" in shown[0]
    assert "No browser could be started" in capsys.readouterr().out


@pytest.mark.usefixtures("fake")
@pytest.mark.parametrize(
    ("last_words", "told"), [("some traceback", "stopped by itself"), ("[Errno 28] No space left", "disk is full")]
)
def test_a_server_that_dies(places: Places, monkeypatch: pytest.MonkeyPatch, last_words: str, told: str) -> None:
    monkeypatch.setenv("FAKE_DIES", last_words)
    with pytest.raises(SetupError, match=told):
        lab.run(places, Path(sys.executable), None, lab.USUAL_PORT, browser=False)
    assert last_words in (places.state / "jupyter.log").read_text(encoding="utf-8")


@pytest.mark.usefixtures("fake")
def test_a_python_that_does_not_start(places: Places, tmp_path: Path) -> None:
    with pytest.raises(SetupError, match="starting JupyterLab"):
        lab.run(places, tmp_path / "no-python", None, lab.USUAL_PORT, browser=False)


def test_lessons_as_published_are_trusted_and_edited_ones_not(places: Places) -> None:
    notebook = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell("1")])
    for name in ("01_lips.ipynb", "mine.ipynb"):
        nbformat.write(notebook, places.folder / name)
        notebook.cells[0].source = "2"
    lab.trust(places, Path(sys.executable), ["01_lips.ipynb", "drill.svg"])
    data = Path(lab.surroundings(places)["JUPYTER_DATA_DIR"])
    assert data.is_relative_to(places.state)
    notary = nbformat.sign.NotebookNotary(data_dir=str(data))
    assert notary.check_signature(nbformat.read(places.folder / "01_lips.ipynb", 4))
    assert not notary.check_signature(nbformat.read(places.folder / "mine.ipynb", 4))
    notary.store.close()


@pytest.mark.parametrize("port", [0, 80, 65536, -1])
def test_a_port_that_cannot_be(port: int) -> None:
    with pytest.raises(SetupError, match="1024 to 65535: 8888 is usual"):
        lab.free_port(port)


def test_no_port_free(monkeypatch: pytest.MonkeyPatch, busy: int) -> None:
    monkeypatch.setattr(lab, "_PORTS_TRIED", 1)
    with pytest.raises(SetupError, match="choose another `--port`"):
        lab.free_port(busy)


def test_nothing_is_asked_of_the_internet(places: Places) -> None:
    arguments = lab.command(places, Path("python"), Server(8888, "secret"))
    assert "--LabApp.news_url=None" in arguments
    assert any(argument.endswith("NeverCheckForUpdate") for argument in arguments)
    assert "--LabApp.extension_manager=readonly" in arguments


def test_another_server_on_the_port_is_not_ours() -> None:
    class Stranger(http.server.BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self.send_response(403)
            self.end_headers()

        def log_message(self, *_: object) -> None:
            pass

    with http.server.HTTPServer((lab.HOST, 0), Stranger) as stranger:
        threading.Thread(target=stranger.serve_forever, daemon=True).start()
        assert not Server(stranger.server_address[1], "secret").answers()
        stranger.shutdown()


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no such signals")
@pytest.mark.parametrize("name", ["SIGTERM", "SIGHUP"])
def test_a_closed_terminal_is_like_ctrl_c_and_the_old_handling_comes_back(name: str) -> None:
    number = getattr(signal, name)
    before = signal.getsignal(number)
    with pytest.raises(KeyboardInterrupt), lab.stopping_on_signals():
        signal.raise_signal(number)
    assert signal.getsignal(number) is before


@pytest.mark.skipif(sys.platform == "win32", reason="Windows ends the server together with its window")
def test_a_server_that_ignores_the_wish_to_stop_is_ended(monkeypatch: pytest.MonkeyPatch) -> None:
    code = (
        "import signal, time; signal.signal(signal.SIGTERM, signal.SIG_IGN); print('deaf', flush=True); time.sleep(60)"
    )
    monkeypatch.setattr(lab, "_GRACE", 1)
    with subprocess.Popen([sys.executable, "-c", code], stdout=subprocess.PIPE) as child:
        assert child.stdout is not None
        child.stdout.readline()
        lab._end(child)
        assert child.returncode == -signal.SIGKILL
