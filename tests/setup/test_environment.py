import errno
import os
import shutil
import subprocess
import sys
import threading
from pathlib import Path

import pytest

from drillpoint.setup import environment
from drillpoint.setup.environment import Environment, guard, require_python, require_space
from drillpoint.setup.trouble import SetupError
from tests.setup.miniature import Miniature, make_wheel


def ask(made: Environment, code: str, cwd: Path) -> str:
    done = subprocess.run([str(made.python), "-c", code], capture_output=True, text=True, cwd=cwd, check=True)
    return done.stdout.strip()


@pytest.fixture
def no_pip(monkeypatch: pytest.MonkeyPatch) -> None:
    """Fail if anything is installed."""

    def refuse(*_: object) -> None:
        raise AssertionError("pip was run")

    monkeypatch.setattr(environment, "install", refuse)


def test_made_once_extended_for_tests_and_still_good_after_the_folder_moved(
    miniature: Miniature, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    made = miniature.environment
    assert not made.is_ready("open")
    made.make("open")
    assert made.is_ready("open")
    assert not made.is_ready("test")
    assert "[4/4]" in capsys.readouterr().out
    kept = made.folder / "kept-by-extending"
    kept.touch()

    made.make("test")
    assert made.is_ready("test")
    assert kept.exists()
    said = capsys.readouterr().out
    assert "[3/3]" in said
    assert "Making" not in said

    moved = tmp_path / "moved elsewhere"
    miniature.places.project.rename(moved)
    there = Environment(moved / ".venv", made.sections)
    assert there.is_ready("test")
    found = ask(there, "import drillpoint, drill_two; print(ascii(drillpoint.__file__))", tmp_path)
    assert found == ascii(str(moved / "drillpoint" / "__init__.py"))


@pytest.mark.usefixtures("no_pip")
def test_the_second_time_nothing_is_installed(ready: Miniature, capsys: pytest.CaptureFixture[str]) -> None:
    ready.environment.make("open")
    assert capsys.readouterr().out == ""


def test_project_path_line_is_ascii_and_relative(ready: Miniature) -> None:
    made = ready.environment
    (line,) = made.folder.rglob("drillpoint-project.pth")
    assert line.read_bytes().isascii()
    assert line.read_text().startswith("import ")
    assert len(line.read_text().splitlines()) == 1


def test_a_changed_lock_makes_it_anew(ready: Miniature) -> None:
    leftover = ready.environment.folder / "leftover"
    leftover.touch()
    ready.lock(open=make_wheel(ready.index, "drill_one"), test=make_wheel(ready.index, "drill_three"))
    assert ready.environment.is_ready("open")
    pair = make_wheel(ready.index, "drill_one") + make_wheel(ready.index, "drill_three")
    ready.lock(open=pair, test=make_wheel(ready.index, "drill_two"))
    assert not ready.environment.is_ready("open")
    ready.environment.make("open")
    assert not leftover.exists()
    assert ask(ready.environment, "import drill_three; print(drill_three.NAME)", ready.index) == "drill_three"


@pytest.mark.parametrize("content", ["", "{", "[]", '{"lock": "other", "python": "3.11"}'])
def test_no_wrong_stamp_counts(ready: Miniature, content: str) -> None:
    made = ready.environment
    made.stamp("open").write_text(content)
    assert not made.is_ready("open")


def test_another_python_version_does_not_count(ready: Miniature) -> None:
    made = ready.environment
    stamp = made.stamp("open")
    stamp.write_text(stamp.read_text().replace(f"3.{sys.version_info[1]}", "3.2"))
    assert not made.is_ready("open")


def test_a_vanished_interpreter_does_not_count(ready: Miniature) -> None:
    made = ready.environment
    made.python.unlink()
    assert not made.is_ready("open")


def test_stopped_halfway_is_made_anew(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupted(*_: object) -> None:
        raise KeyboardInterrupt

    made = miniature.environment
    with monkeypatch.context() as patch:
        patch.setattr(environment, "install", interrupted)
        with pytest.raises(KeyboardInterrupt):
            made.make("open")
    assert made.folder.exists()
    assert not made.is_ready("open")
    debris = made.folder / "debris"
    debris.mkdir()
    made.make("open")
    assert made.is_ready("open")
    assert not debris.exists()


def test_stopped_before_the_environment_has_its_own_mark(miniature: Miniature) -> None:
    made = miniature.environment
    made.folder.mkdir()
    (made.folder / "drillpoint.txt").touch()
    (made.folder / "lib").mkdir()
    made.make("open")
    assert made.is_ready("open")


def test_something_else_in_its_place_is_left_alone(miniature: Miniature) -> None:
    made = miniature.environment
    made.folder.mkdir()
    treasure = made.folder / "treasure.txt"
    treasure.write_text("mine")
    with pytest.raises(SetupError, match="move it away"):
        made.make("open")
    assert treasure.read_text() == "mine"


def test_failing_to_add_the_test_tools_leaves_the_workbook_ready(ready: Miniature) -> None:
    (ready.index / "drill_two-1.0-py3-none-any.whl").unlink()
    with pytest.raises(SetupError, match="no ready-made package"):
        ready.environment.make("test")
    assert ready.environment.is_ready("open")
    assert not ready.environment.is_ready("test")


def test_an_altered_package_is_refused_and_the_log_named(ready: Miniature) -> None:
    wheel = ready.index / "drill_two-1.0-py3-none-any.whl"
    wheel.write_bytes(wheel.read_bytes() + b"\0")
    with pytest.raises(SetupError, match="damaged or altered") as refused:
        ready.environment.make("test")
    assert str(ready.environment.log) in str(refused.value)
    assert ready.environment.log.stat().st_size > 0
    assert not ready.environment.is_ready("test")


def test_without_network_one_sentence_says_so(ready: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("PIP_NO_INDEX")
    monkeypatch.setenv("PIP_FIND_LINKS", (ready.index / "empty").as_uri())
    monkeypatch.setenv("PIP_INDEX_URL", "http://127.0.0.1:9/simple")
    monkeypatch.setenv("PIP_RETRIES", "1")
    monkeypatch.setenv("PIP_CONFIG_FILE", os.devnull)
    with pytest.raises(SetupError, match="cannot be reached: connect this computer to the internet"):
        ready.environment.make("test")
    assert not ready.environment.is_ready("test")


def test_packages_that_do_not_start_are_not_called_ready(ready: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(environment.MODULES, "test", ("drill_two", "held_back"))
    with pytest.raises(SetupError, match="do not start here"):
        ready.environment.make("test")
    assert not ready.environment.is_ready("test")
    assert "held_back" in ready.environment.log.read_text(encoding="utf-8")


def test_a_disk_that_fills_up_on_the_way(ready: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(environment, "install", full)
    with pytest.raises(SetupError, match="disk is full"):
        ready.environment.make("test")
    assert not ready.environment.is_ready("test")


@pytest.mark.usefixtures("no_pip")
def test_a_disk_too_full_to_begin(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    usage = shutil.disk_usage(miniature.index)._replace(free=123_000_000)
    monkeypatch.setattr(shutil, "disk_usage", lambda _: usage)
    with pytest.raises(SetupError, match=r"123 MB are free .* 700 MB are needed"):
        miniature.environment.make("open")


def test_space_is_asked_of_the_disk_even_before_the_folder_is_there(tmp_path: Path) -> None:
    require_space(tmp_path / "not" / "yet", "open")


def test_no_permission(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(errno.EACCES, "Permission denied")

    monkeypatch.setattr(Path, "mkdir", refuse)
    with pytest.raises(SetupError, match="Not allowed to write"):
        miniature.environment.make("open")


def test_a_python_without_the_parts_for_environments(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(environment.importlib.util, "find_spec", lambda name: None if name == "ensurepip" else object())
    monkeypatch.setattr(sys, "platform", "linux")
    with pytest.raises(SetupError, match="lacks its module ensurepip: install it with `sudo apt install python3-venv`"):
        require_python()


def test_a_32_bit_python(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "maxsize", 2**31 - 1)
    with pytest.raises(SetupError, match="64-bit"):
        require_python()


def test_venv_failing_is_told_with_its_log(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "executable", shutil.which("false") or pytest.skip("no program that fails"))
    with pytest.raises(SetupError, match="could not make an environment") as refused:
        miniature.environment.make("open")
    assert str(miniature.environment.log) in str(refused.value)


def test_two_at_once_set_up_once(miniature: Miniature, monkeypatch: pytest.MonkeyPatch) -> None:
    installs = []
    real = environment.install

    def counted(*arguments: object) -> None:
        installs.append(1)
        real(*arguments)  # type: ignore[arg-type]

    monkeypatch.setattr(environment, "install", counted)
    failures: list[Exception] = []

    def make() -> None:
        try:
            miniature.environment.make("open")
        except Exception as error:
            failures.append(error)

    threads = [threading.Thread(target=make) for _ in range(2)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert failures == []
    assert installs == [1]
    assert miniature.environment.is_ready("open")


def test_the_guard_says_that_it_waits_and_lets_go_with_its_process(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "guard"
    code = (
        "import sys, time; from pathlib import Path; from drillpoint.setup.environment import guard\n"
        "with guard(Path(sys.argv[1])): print('held', flush=True); time.sleep(60)"
    )
    with subprocess.Popen([sys.executable, "-c", code, str(path)], stdout=subprocess.PIPE, text=True) as holder:
        assert holder.stdout is not None
        assert holder.stdout.readline() == "held\n"
        threading.Timer(1, holder.kill).start()
        with guard(path):
            pass
    assert "waiting for it to finish" in capsys.readouterr().out
