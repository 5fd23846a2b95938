import sys
from pathlib import Path

import pytest

from drillpoint.setup import testing


@pytest.fixture
def little(tmp_path: Path) -> Path:
    (tmp_path / "test_little.py").write_text("def test_good(): pass\n\ndef test_bad(): assert False\n")
    return tmp_path


def test_the_exit_code_is_pytests_and_arguments_are_passed_on(little: Path) -> None:
    assert testing.run(little, Path(sys.executable), ["-q", "-k", "good"]) == 0
    assert testing.run(little, Path(sys.executable), ["-q"]) == 1


def test_without_arguments_all_cores_work(little: Path, capfd: pytest.CaptureFixture[str]) -> None:
    assert testing.run(little, Path(sys.executable), []) == 1
    assert "1 failed, 1 passed" in capfd.readouterr().out


def test_how_pytest_is_called_is_stated_once(project: Path) -> None:
    import tomllib

    options = tomllib.loads((project / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["pytest"]["ini_options"]
    assert options["testpaths"] == ["tests", "notebooks"]
    assert "--nbval" in options["addopts"]
