"""The instructor's guide says what is there."""

import re
from argparse import ArgumentParser
from pathlib import Path

import pytest

from drillpoint.course.commands import COMMANDS
from drillpoint.course.exercise_file import load_set
from drillpoint.course.lint import lint
from drillpoint.course.mark_command import mark_arguments
from drillpoint.course.marking import EXCUSED, LOOK, MARKED, NO_HAND_IN, NOT_MARKED
from drillpoint.course.reading import read_number
from drillpoint.course.roster import Student
from drillpoint.course.rules_file import read_rules
from drillpoint.course.slips import SLIPS
from drillpoint.course.task_file import ENTRIES, KINDS, PART_ENTRIES
from drillpoint.course.variant import Variants

GUIDE = (Path(__file__).resolve().parents[2] / "docs" / "instructor.md").read_text(encoding="utf-8")
FLAT = " ".join(GUIDE.split())


@pytest.mark.parametrize("name", [*SLIPS, *KINDS, MARKED, LOOK, NOT_MARKED, NO_HAND_IN, EXCUSED])
def test_every_name_an_instructor_meets_is_explained(name):
    assert name in FLAT


@pytest.mark.parametrize("entry", sorted(set().union(PART_ENTRIES, *ENTRIES.values())))
def test_every_entry_of_a_task_is_explained(entry):
    assert re.search(rf"\b{entry}\b", GUIDE)


def test_every_command_but_the_maker_of_the_invented_class_is_shown():
    for command in COMMANDS:
        assert f"python3 -m drillpoint {command.name}" in GUIDE or command.name == "demo-class"


def examples():
    chapter = GUIDE.split("## Writing a task")[1].split("## What students may type")[0]
    blocks = re.findall(r"(?:^    .*\n)+", chapter, re.MULTILINE)
    return ["\n".join(line[4:] for line in block.splitlines()) for block in blocks if "[[task]]" in block]


@pytest.mark.parametrize("example", examples(), ids=lambda example: example.splitlines()[1])
def test_every_example_can_be_used_as_it_stands(tmp_path, example):
    path = tmp_path / "guide.toml"
    path.write_text('set = "guide"\ntitle = "G"\ncourse = "C"\nversion = 1\n' + example, encoding="utf-8")
    exercise_set = load_set(path)
    assert [line for line in lint(exercise_set, 50) if "not handed out" not in line and "only " not in line] == []
    assert next(Variants(exercise_set).questions("s01")).worked


def test_there_is_an_example_of_most_kinds():
    kinds = {kind for kind in KINDS if any(f'kind = "{kind}"' in example for example in examples())}
    assert kinds == set(KINDS) - {"number", "judgement", "settings"}


def test_what_students_may_type_can_be_read():
    typed = GUIDE.split("## What students may type")[1].strip().split(";")[0]
    for example in typed.split(" · "):
        for text in example.split(" or "):
            read_number(text, "°" if "°" in text or "deg" in text or "rad" in text else "mm")


def test_the_example_of_rules_can_be_used(tmp_path, lips):
    example = GUIDE.split("## Rules and decisions")[1].split("Students read the reason")[0]
    lines = [line.removeprefix("    ") for line in example.splitlines() if line.startswith("    ")]
    path = tmp_path / "rules.toml"
    path.write_text("\n".join(lines), encoding="utf-8")
    rules = read_rules(path, (lips,), [Student(f"s{number:02}") for number in range(1, 25)])
    assert len(rules.accept) == len(rules.drop) == len(rules.add) == len(rules.excuse) == len(rules.extend) == 1
    assert rules.deadline < rules.closes


def test_every_option_of_marking_is_explained():
    parser = ArgumentParser()
    mark_arguments(parser)
    options = {word for action in parser._actions for word in action.option_strings} - {"-h", "--help"}
    assert len(options) >= 9
    assert [word for word in sorted(options) if word not in GUIDE] == []


def test_every_file_that_marking_writes_is_explained():
    for name in ("grades.csv", "grades-class.html", "grades-files.csv", "grades-results.json", "grades-feedback"):
        assert f"`{name}" in GUIDE
