"""The instructor's guide says what is there."""

import re
from pathlib import Path

import pytest
from attrs import fields

from drillpoint.course.commands import COMMANDS
from drillpoint.course.exercise import Task
from drillpoint.course.exercise_file import load_set
from drillpoint.course.lint import lint
from drillpoint.course.marking import LOOK, MARKED, NO_HAND_IN, NOT_MARKED
from drillpoint.course.reading import read_number
from drillpoint.course.slips import SLIPS
from drillpoint.course.task_file import KINDS

GUIDE = (Path(__file__).resolve().parents[2] / "docs" / "instructor.md").read_text(encoding="utf-8")
FLAT = " ".join(GUIDE.split())


@pytest.mark.parametrize("name", [*SLIPS, *KINDS, MARKED, LOOK, NOT_MARKED, NO_HAND_IN])
def test_every_name_an_instructor_meets_is_explained(name):
    assert name in FLAT


@pytest.mark.parametrize("entry", [f.name for f in fields(Task) if f.name != "figure"])
def test_every_entry_of_a_task_is_explained(entry):
    assert re.search(rf"\b{entry}\b", GUIDE)


def test_every_command_but_the_maker_of_the_invented_class_is_shown():
    for command in COMMANDS:
        assert f"python3 -m drillpoint {command.name}" in GUIDE or command.name == "demo-class"


def test_the_example_task_can_be_used(tmp_path):
    example = GUIDE.split("## Writing a task")[1].split("The right answer and the wrong ones")[0]
    lines = [line.removeprefix("    ") for line in example.splitlines() if line.startswith("    ")]
    path = tmp_path / "guide.toml"
    path.write_text('set = "guide"\ntitle = "G"\ncourse = "C"\nversion = 1\n' + "\n".join(lines), encoding="utf-8")
    assert [line for line in lint(load_set(path), 50) if "not handed out" not in line] == []


def test_what_students_may_type_can_be_read():
    typed = GUIDE.split("## What students may type")[1].strip().split(";")[0]
    for example in typed.split(" · "):
        for text in example.split(" or "):
            read_number(text, "°" if "°" in text or "deg" in text or "rad" in text else "mm")
