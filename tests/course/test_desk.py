"""Answering on a student's machine."""

import json
import os
import subprocess
import sys
from datetime import UTC, datetime
from pathlib import Path

import pytest

from drillpoint.course import answer, go_on, hand_in, status
from drillpoint.course.desk import open_desk
from drillpoint.course.hand_in_file import read_hand_in
from drillpoint.course.judging import judge_answer
from drillpoint.course.roster import Student
from drillpoint.course.sheet import write_sheet
from drillpoint.errors import LearnerError

NOON = datetime(2026, 3, 12, 12, 0, tzinfo=UTC)


@pytest.fixture
def folder(make_sheet):
    return make_sheet("s07")


def saved(folder):
    return {a["task"]: a["typed"] for a in json.loads((folder / "lips.answers.json").read_text())["answers"]}


def test_answers_in_any_order_and_says_how_they_were_read(folder, capsys):
    answer("3", "5,15", folder=folder)
    answer("lips/1", "1 7/8 in", folder=folder)
    answer("point-height-formula", "h = D/2*cot κ", folder=folder)
    answer("6", 118, folder=folder)
    said = capsys.readouterr().out
    assert "Task 3: read as 5,15 mm = 5.15 mm. Saved on this machine, not yet handed in." in said
    assert "Task 1: read as 1 7/8 in = 1.875 in = 47.625 mm." in said
    assert "Task 4: read as D/2·cot(κ)." in said
    assert "Task 6: read as 118°." in said
    assert saved(folder) == {
        "lip-length": "5,15",
        "point-height": "1 7/8 in",
        "point-height-formula": "h = D/2*cot κ",
        "point-angle-from-lip": "118",
    }


def test_running_a_cell_again_neither_loses_nor_doubles(folder):
    desk = open_desk("lips", folder)
    desk.give("1", "3.00 mm", NOON)
    before = (folder / "lips.answers.json").read_bytes()
    desk.give("1", "3.00 mm")
    assert (folder / "lips.answers.json").read_bytes() == before
    desk.give("1", "3.01 mm")
    assert saved(folder) == {"point-height": "3.01 mm"}
    assert open_desk("lips", folder).answers()["point-height"].typed == "3.01 mm"  # a new kernel finds it


def test_what_cannot_be_read_is_saved_and_the_place_is_shown(folder, capsys):
    answer("3", "1,234", folder=folder)
    said = capsys.readouterr().out
    assert "saved as typed, but it cannot be read yet" in said
    assert "two ways" in said
    assert "\n    1,234\n     ^\n" in said
    assert saved(folder)["lip-length"] == "1,234"


def test_from_answer_to_receipt(folder, capsys):
    status(folder=folder)
    assert capsys.readouterr().out == "0 of 10 answers given.\n"
    answer("1", "3 mm", folder=folder)
    capsys.readouterr()
    status("lips", folder=folder)
    assert capsys.readouterr().out == "1 of 10 answers given. Saved on this machine, not yet handed in.\n"
    hand_in("lips", folder=folder)
    receipt = capsys.readouterr().out
    assert "1 of 10 answers" in receipt
    assert "Not answered: task 2, 3, 4, 5, 6, 7, 8, 9, 10." in receipt
    assert str(folder / "lips-s07.hand-in.json") in receipt
    handed = read_hand_in((folder / "lips-s07.hand-in.json").read_bytes())
    assert handed.intact
    assert handed.digest[:4].upper() in receipt
    assert [(a.task, a.typed) for a in handed.answers] == [("point-height", "3 mm")]
    status("lips", folder=folder)
    assert "All are in the hand-in file" in capsys.readouterr().out
    answer("2", "7/8", folder=folder)
    capsys.readouterr()
    status("lips", folder=folder)
    assert "Changed since the hand-in file was written" in capsys.readouterr().out


def test_a_notebook_shows_the_sentence_and_no_traceback(folder):
    """What a student sees when a call is refused."""
    from IPython.core.interactiveshell import InteractiveShell
    from IPython.utils.capture import capture_output

    shell = InteractiveShell()
    with capture_output() as shown:
        shell.run_cell(f"from drillpoint.course import hand_in\nhand_in(folder={str(folder)!r})")
    assert shown.stdout.strip() == "there is nothing to hand in yet: no answer is saved on this machine"


def test_a_sheet_that_is_not_here(folder):
    with pytest.raises(LearnerError, match="no sheet 'holes' in this folder; here is lips"):
        answer("holes/1", "3", folder=folder)


def test_nothing_to_hand_in(folder):
    with pytest.raises(LearnerError, match="nothing to hand in"):
        hand_in(folder=folder)


def test_unknown_task(folder):
    with pytest.raises(LearnerError, match="no task '11' on this sheet; its tasks are 1 to 10"):
        answer("11", "3", folder=folder)


def test_no_sheet(tmp_path):
    with pytest.raises(LearnerError, match="open the notebook from the folder"):
        answer("1", "3", folder=tmp_path)


def test_two_sheets_in_one_folder(folder):
    other = json.loads((folder / "lips.sheet.json").read_text(encoding="utf-8"))
    other["set"] = "holes"
    (folder / "holes.sheet.json").write_text(json.dumps(other))
    with pytest.raises(LearnerError, match="which sheet"):
        answer("1", "3", folder=folder)
    answer("holes/1", "3 mm", folder=folder)
    assert (folder / "holes.answers.json").exists()
    assert not (folder / "lips.answers.json").exists()


def test_a_saved_file_that_something_else_broke_is_never_overwritten(folder):
    broken = folder / "lips.answers.json"
    broken.write_text("{")
    with pytest.raises(LearnerError, match="rename it and answer again"):
        answer("1", "3 mm", folder=folder)
    assert broken.read_text() == "{"


def test_a_full_disk_is_said_and_what_was_saved_stays(folder, monkeypatch):
    answer("1", "3 mm", folder=folder)

    def full(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("drillpoint.course.desk.write_safely", full)
    with pytest.raises(LearnerError, match=r"could not be saved.*No space left"):
        answer("2", "3 mm", folder=folder)
    assert saved(folder) == {"point-height": "3 mm"}


@pytest.mark.parametrize("typed", ["<script>alert(1)</script>", "=1+1", "\ud800", "x" * 1000, "\x00"])
def test_odd_answers_are_saved_as_given(folder, typed):
    open_desk("lips", folder).give("1", typed)
    assert open_desk("lips", folder).answers()["point-height"].typed == typed
    open_desk("lips", folder).hand_in(NOON)
    assert read_hand_in((folder / "lips-s07.hand-in.json").read_bytes()).answers[0].typed == typed


def test_an_endless_answer_is_refused(folder):
    with pytest.raises(LearnerError, match="longer than 4000"):
        answer("1", "9" * 1_000_000, folder=folder)


def test_the_hand_in_is_the_same_for_the_same_answers(folder):
    desk = open_desk("lips", folder)
    desk.give("2", "7/8", NOON)
    desk.give("1", "3", NOON)
    desk.hand_in(NOON)
    first = (folder / "lips-s07.hand-in.json").read_bytes()
    desk.hand_in(NOON)
    assert (folder / "lips-s07.hand-in.json").read_bytes() == first


def test_going_on_with_a_file_from_another_sitting_counts_the_last_answers_and_tells_both(make_sheet, tmp_path, capsys):
    folder = make_sheet("s07")
    desk = open_desk("lips", folder)
    desk.give("1", "3", NOON)
    desk.give("2", "7/8", NOON)
    desk.hand_in(NOON)
    stick = tmp_path / "stick.json"
    stick.write_bytes(desk.hand_in_file.read_bytes())
    desk.answers_file.unlink()  # another computer
    desk.give("2", "0.8", NOON.replace(hour=13))
    desk.give("3", "5.15", NOON.replace(hour=13))
    go_on(stick, folder=folder)
    said = capsys.readouterr().out
    assert "Taken up from stick.json: answers 1." in said
    assert "Task 2 was answered twice: “0.8” is the later one and counts, earlier “7/8”." in said
    assert "3 of 10 answers given." in said
    assert saved_counting(folder) == {"point-height": "3", "point-height-inch": "0.8", "lip-length": "5.15"}
    assert "3 of 10 answers" in desk.hand_in(NOON.replace(hour=14))
    handed = read_hand_in(desk.hand_in_file.read_bytes()).answers
    assert [(a.task, a.typed) for a in handed] == [
        ("point-height", "3"), ("point-height-inch", "7/8"), ("point-height-inch", "0.8"), ("lip-length", "5.15"),
    ]  # fmt: skip


def saved_counting(folder):
    return {task: record.typed for task, record in open_desk("lips", folder).answers().items()}


@pytest.mark.parametrize(
    ("student", "changed", "says"),
    [
        ("s08", {}, "it is the file of s08, and this is the sheet of s07"),
        ("s07", {"version": 1}, "it answers version 1 of the set"),
        ("s07", {"set": "holes"}, "it belongs to the set holes"),
        ("s07", {"answers": 5}, "its answers are not a list"),
    ],
)
def test_a_file_that_is_not_of_this_sheet_is_not_taken_up(make_sheet, student, changed, says):
    other, folder = open_desk("lips", make_sheet(student)), make_sheet("s07")
    other.give("1", "9", NOON)
    other.hand_in(NOON)
    content = json.loads(other.hand_in_file.read_text()) | changed
    other.hand_in_file.write_text(json.dumps(content))
    before = (folder / "lips.answers.json").read_bytes() if (folder / "lips.answers.json").exists() else b""
    with pytest.raises(LearnerError, match=says):
        go_on(other.hand_in_file, folder=folder)
    after = (folder / "lips.answers.json").read_bytes() if (folder / "lips.answers.json").exists() else b""
    assert after == before


def test_an_answer_that_was_taken_back_is_not_handed_in(folder, capsys):
    answer("1", "3", folder=folder)
    answer("2", "7/8", folder=folder)
    answer("1", " ", folder=folder)
    assert "It counts as not answered" in capsys.readouterr().out
    hand_in(folder=folder)
    assert "Not answered: task 1, 3" in capsys.readouterr().out
    handed = read_hand_in((folder / "lips-s07.hand-in.json").read_bytes())
    assert [a.task for a in handed.answers] == ["point-height-inch"]


def test_killing_the_process_at_any_moment_loses_nothing_that_was_saved(folder):
    """200 processes that save as fast as they can are killed, each at another moment."""
    if not hasattr(os, "fork"):
        pytest.skip("this system cannot fork; a process for each kill would take minutes")
    here = Path(__file__)
    done = subprocess.run(
        [sys.executable, here.with_name("killed_while_saving.py"), folder, "200"],
        capture_output=True, text=True, check=False, env={**os.environ, "PYTHONPATH": str(here.parents[2])},
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    kills, lost, halfway = map(int, done.stdout.split())
    assert (kills, lost) == (200, 0)
    assert halfway > 0, "no kill met a save half-way: this would prove nothing"


def test_a_formula_box_knows_the_functions_of_its_task(tmp_path, relief):
    """What the box refuses while the learner can still change it is what marking would refuse."""
    write_sheet(relief.set, relief, Student("s01", "Student"), tmp_path)
    desk = open_desk("relief", tmp_path / "s01")
    assert desk.give("feed-angle-formula", "atan(f/(2*π*r))")[1] is None
    _, error = desk.give("feed-angle-formula", "sqrt(f)")
    assert error is not None
    question = relief.question("feed-angle-formula", "s01")
    assert judge_answer(question, "sqrt(f)").error.reason == error.reason
