"""Running the tests. How pytest is called is stated once, under `tool.pytest` in pyproject.toml."""

import subprocess
from collections.abc import Sequence
from pathlib import Path

from drillpoint.setup.console import child_environment
from drillpoint.setup.trouble import explain

# Files of tests go to as many processes as there are cores; what a file shares, such as a kernel, stays in one.
_SPREAD = ("-n", "auto", "--dist", "loadfile", "--no-loadscope-reorder")


def run(project: Path, python: Path, arguments: Sequence[str]) -> int:
    """Run pytest on the whole project; return its exit code.

    With `arguments`, which are passed on, it is an ordinary run in one process: for a few tests that is quicker, and
    measuring, or a debugger, needs it.
    """
    try:
        done = subprocess.run(  # noqa: S603
            [str(python), "-m", "pytest", *(arguments or _SPREAD)], cwd=project, env=child_environment(), check=False
        )
    except OSError as error:
        raise explain(error, "running the tests", project) from error
    return done.returncode
