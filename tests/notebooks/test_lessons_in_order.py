"""All lessons one after the other in one session, and each a second time: what they show is what was saved."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from IPython.core.interactiveshell import InteractiveShell

from tests.notebooks.lessons import IN_ORDER
from tests.notebooks.prose import Cell, cells, source

LIVE_ONLY = "application/vnd.jupyter.widget-view+json"


@pytest.fixture(scope="module")
def session() -> Iterator[InteractiveShell]:
    """One session for every lesson, as when a learner goes on without a restart."""
    yield InteractiveShell.instance()
    InteractiveShell.clear_instance()


@pytest.mark.parametrize("lesson", IN_ORDER)
def test_a_lesson_after_the_others_and_twice_in_a_row_shows_what_was_saved(
    session: InteractiveShell, lesson: str
) -> None:
    shown = [cell for cell in cells(lesson) if cell["cell_type"] == "code"]
    for round_ in ("once", "again"):
        differ = [cell["id"] for cell in shown if _run(session, cell) != _saved(cell)]
        assert differ == [], f"{round_}: run `python -m drillpoint.lesson` and commit what it writes"


def _run(session: InteractiveShell, cell: Cell) -> dict[str, str]:
    done = session.run_cell(source(cell))
    done.raise_error()
    if done.result is None:
        return {}
    data, _ = session.display_formatter.format(done.result)
    return {kind: text for kind, text in data.items() if kind != LIVE_ONLY}


def _saved(cell: Cell) -> dict[str, str]:
    found: dict[str, Any] = {}
    for output in cell["outputs"]:
        found |= output["data"]
    return {kind: "".join(text) for kind, text in found.items()}
