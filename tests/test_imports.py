"""What importing costs: the heavy libraries stay out until something needs them."""

import subprocess
import sys
from pathlib import Path

import pytest

from drillpoint.setup.console import child_environment

HEAVY = {
    "numpy",
    "sympy",
    "matplotlib",
    "ipywidgets",
    "anywidget",
    "attrs",
    "attr",
    "cattrs",
    "jinja2",
    "lark",
    "IPython",
}


def loaded(code: str, project: Path) -> set[str]:
    """The top-level packages that running `code` imports, from Python's own account."""
    done = subprocess.run(
        [sys.executable, "-X", "importtime", "-c", code],
        cwd=project,
        env=child_environment(),
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=True,
    )
    lines = [line for line in done.stderr.splitlines() if line.startswith("import time:")]
    return {line.rsplit("|", 1)[1].strip().split(".")[0] for line in lines}


@pytest.mark.parametrize(
    "code",
    [
        "import drillpoint",
        "import drillpoint.__main__",
        "import drillpoint.command_line",
        "import drillpoint.setup.lock",
        "from drillpoint.__main__ import main; main([])",
    ],
)
def test_light(code: str, project: Path) -> None:
    names = loaded(code, project)
    assert "drillpoint" in names
    assert names & HEAVY == set()


def test_the_account_would_show_a_heavy_library(project: Path) -> None:
    assert "attr" in loaded("import attrs", project)


@pytest.mark.parametrize("name", ["__version__"])
def test_public_names_are_there(name: str) -> None:
    import drillpoint

    assert name in drillpoint.__all__
    assert name in dir(drillpoint)
    assert getattr(drillpoint, name)


def test_every_public_name_can_be_fetched() -> None:
    import drillpoint

    for name in drillpoint.__all__:
        assert getattr(drillpoint, name) is not None


def test_a_name_that_is_not_there() -> None:
    import drillpoint

    with pytest.raises(AttributeError, match="lip_lenth"):
        drillpoint.lip_lenth  # noqa: B018
