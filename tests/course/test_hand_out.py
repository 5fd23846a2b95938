"""What hand-out writes: a page and a notebook for each student without any key, and the key elsewhere on request."""

from __future__ import annotations

from html import unescape
from pathlib import Path

import pytest

from drillpoint.__main__ import main
from drillpoint.course.exercise_file import load_set
from drillpoint.course.variant import Question, Variants

SETS = ("lips", "relief")
STUDENT = "s02"


@pytest.fixture(scope="module", params=SETS)
def handed_out(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> tuple[str, Path, Path]:
    """A set, the folder of its sheets and the folder of its keys, for a class of two."""
    here = tmp_path_factory.mktemp(request.param)
    roster = here / "roster.csv"
    roster.write_text("id\ns01\ns02\n", encoding="utf-8")
    sheets, keys = here / "sheets", here / "keys"
    assert main(["hand-out", request.param, str(roster), str(sheets), "--key", str(keys)]) == 0
    return request.param, sheets, keys


def questions(name: str) -> list[Question]:
    """The questions of one student."""
    return list(Variants(load_set(name)).questions(STUDENT))


def secrets(name: str) -> list[str]:
    """What only the key may say: the lines of each solution that hold its numbers, and what is said of each slip."""
    told = []
    for question in questions(name):
        told += [line for line in question.worked.splitlines() if " = " in line and any(c.isdigit() for c in line)]
        told += [slip.says for slip in question.task.slips if len(slip.says) > 20]
        told += [f"{value:.6g}" for value, _ in question.right_values.values() if len(f"{value:.6g}") > 5]
    return told


def test_each_student_gets_a_page_and_a_notebook(handed_out: tuple[str, Path, Path]) -> None:
    name, sheets, keys = handed_out
    written = {path.name for path in (sheets / STUDENT).iterdir()}
    assert written == {f"{name}.html", f"{name}.ipynb", f"{name}.sheet.json"}
    assert {path.name for path in keys.iterdir()} == {f"{name}-key-s01.html", f"{name}-key-s02.html"}


def test_no_key_is_in_what_a_student_gets(handed_out: tuple[str, Path, Path]) -> None:
    name, sheets, _ = handed_out
    assert len(secrets(name)) > 10
    for path in (sheets / STUDENT).iterdir():
        text = unescape(path.read_text(encoding="utf-8")).replace('\\"', '"')
        assert [secret for secret in secrets(name) if secret in text] == [], path.name


def test_the_key_says_what_is_right_for_this_student(handed_out: tuple[str, Path, Path]) -> None:
    name, _, keys = handed_out
    text = unescape((keys / f"{name}-key-{STUDENT}.html").read_text(encoding="utf-8"))
    for question in questions(name):
        assert question.worked in text
        right = [shown for shown, wrong in question.options if wrong is None]
        assert all(f"{shown} <strong>(right)</strong>" in text for shown in right)
    # The search for keys would find this one.
    assert all(secret in text for secret in secrets(name) if " = " in secret)


@pytest.mark.parametrize(("which", "ending"), [("page", ".html"), ("notebook", ".ipynb")])
def test_one_kind_of_sheet_alone(tmp_path: Path, which: str, ending: str) -> None:
    roster = tmp_path / "roster.csv"
    roster.write_text("id\ns01\n", encoding="utf-8")
    assert main(["hand-out", "lips", str(roster), str(tmp_path / "sheets"), "--sheets", which]) == 0
    written = {path.suffix for path in (tmp_path / "sheets" / "s01").iterdir()}
    assert ending in written and written <= {ending, ".json"}


@pytest.mark.parametrize("place", ["sheets", "sheets/keys", "."])
def test_a_key_among_the_sheets_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str], place: str) -> None:
    roster = tmp_path / "roster.csv"
    roster.write_text("id\ns01\n", encoding="utf-8")
    sheets = tmp_path / "sheets"
    assert main(["hand-out", "lips", str(roster), str(sheets), "--key", str(tmp_path / place)]) == 2
    assert "could be handed out" in capsys.readouterr().err
    assert not sheets.exists()
