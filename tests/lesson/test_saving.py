"""Saving a lesson: it runs from top to bottom, and the same lesson gives the same bytes."""

import json
from pathlib import Path

import pytest

from drillpoint.errors import InstructorError
from drillpoint.lesson.__main__ import main
from drillpoint.lesson.saving import run_and_save, settled

LESSONS = Path(__file__).parents[2] / "notebooks"


def lesson(path: Path, *sources: str) -> Path:
    """A small notebook with these code cells."""
    cells = [
        {"cell_type": "code", "id": f"c{i}", "metadata": {}, "execution_count": None, "outputs": [], "source": source}
        for i, source in enumerate(sources)
    ]
    path.write_text(json.dumps({"cells": cells, "metadata": {}, "nbformat": 4, "nbformat_minor": 5}), encoding="utf-8")
    return path


def test_a_committed_lesson_is_as_saving_leaves_it(tmp_path: Path) -> None:
    """One stands for all: what the others show is held against their saved outputs in tests/notebooks."""
    path = min(LESSONS.glob("*.ipynb"))
    copy = tmp_path / path.name
    copy.write_bytes(path.read_bytes())
    run_and_save(copy)
    assert copy.read_text(encoding="utf-8") == path.read_text(encoding="utf-8"), (
        "run `python -m drillpoint.lesson` and commit what it writes"
    )


def test_a_stale_output_is_replaced(tmp_path: Path) -> None:
    path = lesson(tmp_path / "1.ipynb", "1 + 1", "'two'")
    run_and_save(path)
    first = path.read_text(encoding="utf-8")
    path.write_text(
        first.replace('"2"', '"3"').replace('"execution_count": 1', '"execution_count": 7'), encoding="utf-8"
    )
    assert path.read_text(encoding="utf-8") != first
    run_and_save(path)
    assert path.read_text(encoding="utf-8") == first


def test_the_live_widget_is_left_out_and_its_still_kept(tmp_path: Path) -> None:
    path = lesson(tmp_path / "1.ipynb", "from drillpoint.lesson import *", 'explore("lips")')
    run_and_save(path)
    data = json.loads(path.read_text(encoding="utf-8"))["cells"][1]["outputs"][0]["data"]
    assert set(data) == {"text/html", "text/plain"}


def test_a_failing_cell_is_named_and_the_file_left_alone(tmp_path: Path) -> None:
    path = lesson(tmp_path / "broken.ipynb", "1 / 0")
    before = path.read_bytes()
    with pytest.raises(InstructorError, match=r"broken\.ipynb .*ZeroDivisionError"):
        run_and_save(path)
    assert path.read_bytes() == before


def test_the_command_says_what_it_did(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    good = lesson(tmp_path / "good.ipynb", "1 + 1")
    bad = lesson(tmp_path / "bad.ipynb", "1 / 0")
    assert main([str(good)]) == 0
    assert "Saved" in capsys.readouterr().out
    assert main([str(bad)]) == 1
    assert "bad.ipynb" in capsys.readouterr().err


def test_the_command_without_lessons_says_what_to_do(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main([]) == 2
    assert "project's folder" in capsys.readouterr().err


def test_what_differs_between_machines_is_taken_out() -> None:
    output = {"output_type": "execute_result", "execution_count": 9, "data": {"text/plain": "2"}, "metadata": {}}
    cell = {
        "cell_type": "code",
        "execution_count": 9,
        "outputs": [output],
        "source": "1 + 1\n2",
        "metadata": {},
        "id": "a",
    }
    there = {"cells": [cell], "metadata": {"language_info": {"version": "3.99"}}, "nbformat": 4, "nbformat_minor": 5}
    text = settled(there)
    assert "3.99" not in text
    assert json.loads(text)["cells"][0]["execution_count"] == 1
    assert json.loads(text)["cells"][0]["source"] == ["1 + 1\n", "2"]
