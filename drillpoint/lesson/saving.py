"""Running a lesson from top to bottom and saving it with its outputs, the same bytes every time.

The saved lesson has to read well before anything runs. So what only a running kernel can show is left out of it (the
live widget; its still picture and text stay), and so is everything that differs between two machines.
"""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

from drillpoint.errors import InstructorError

_LIVE_ONLY = "application/vnd.jupyter.widget-view+json"
_METADATA = {
    "kernelspec": {"display_name": "Python 3", "language": "python", "name": "python3"},
    "language_info": {"name": "python"},
}
_PATIENCE = 120
"""Seconds for one cell; a cold disk under a virus scanner is slow to import."""


def run_and_save(path: Path) -> None:
    """Run the notebook from top to bottom in a fresh kernel and save it with its outputs.

    Raises InstructorError, naming the cell, when a cell fails; the file then stays as it was.
    """
    import nbformat
    from nbclient import NotebookClient
    from nbclient.exceptions import CellExecutionError

    notebook = nbformat.reads(path.read_text(encoding="utf-8"), as_version=4)  # type: ignore[no-untyped-call]
    client = NotebookClient(
        notebook,
        timeout=_PATIENCE,
        kernel_name=_METADATA["kernelspec"]["name"],
        resources={"metadata": {"path": str(path.parent)}},
        record_timing=False,
        store_widget_state=False,
    )
    try:
        client.execute(env=_surroundings())
    except CellExecutionError as error:
        raise InstructorError(f"{path.name} does not run from top to bottom: {error.ename}: {error.evalue}") from None
    path.write_text(settled(notebook), encoding="utf-8", newline="\n")


def _surroundings() -> dict[str, str]:
    """The environment variables of the kernel, in which this very copy of drillpoint is the one imported."""
    here = str(Path(__file__).parents[2])
    others = os.environ.get("PYTHONPATH")
    return {**os.environ, "PYTHONPATH": os.pathsep.join([here, others] if others else [here])}


def settled(notebook: Any) -> str:
    """The notebook as text, without what differs from run to run."""
    content = json.loads(json.dumps(notebook))
    content["metadata"] = _METADATA
    count = 0
    for cell in content["cells"]:
        if cell["cell_type"] != "code":
            continue
        count += 1
        cell["execution_count"] = count
        for output in cell["outputs"]:
            if "execution_count" in output:
                output["execution_count"] = count
            output.get("data", {}).pop(_LIVE_ONLY, None)
    for cell in content["cells"]:
        cell["source"] = _lines(cell["source"])
        for output in cell.get("outputs", []):
            for kind, shown in output.get("data", {}).items():
                output["data"][kind] = _lines(shown)
    return json.dumps(content, indent=1, ensure_ascii=False, sort_keys=True) + "\n"


def _lines(text: Any) -> Any:
    return text.splitlines(keepends=True) if isinstance(text, str) else text
