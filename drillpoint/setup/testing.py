"""Running the tests. How pytest is called is stated once, under `tool.pytest` in pyproject.toml."""

import subprocess
from collections.abc import Sequence
from pathlib import Path

from drillpoint.setup.console import child_environment
from drillpoint.setup.trouble import explain


def run(project: Path, python: Path, arguments: Sequence[str]) -> int:
    """Run pytest on the whole project, passing `arguments` on; return its exit code."""
    try:
        done = subprocess.run(  # noqa: S603
            [str(python), "-m", "pytest", *arguments], cwd=project, env=child_environment(), check=False
        )
    except OSError as error:
        raise explain(error, "running the tests", project) from error
    return done.returncode
