"""The instructor's course plan speaks of the lessons, sets and slips that there are."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from drillpoint.course.exercise import Task
from drillpoint.course.exercise_file import load_set
from tests.notebooks.lessons import IN_ORDER, number_of, set_of
from tests.notebooks.prose import prose

PLAN = (Path(__file__).parents[2] / "docs" / "course.md").read_text(encoding="utf-8")
SECTIONS = {int(part.partition(" ")[0]): part for part in re.split(r"^### ", PLAN, flags=re.MULTILINE)[1:]}


def slips_of(tasks: tuple[Task, ...]) -> Iterator[str]:
    """The names under which slips come up."""
    for task in tasks:
        yield from (rule.name for rule in task.slips)
        yield from (statement.name for statement in task.statements)
        yield from slips_of(task.parts)


def test_every_lesson_has_its_section_and_no_other_has() -> None:
    assert sorted(SECTIONS) == [number_of(lesson) for lesson in IN_ORDER]


@pytest.mark.parametrize("lesson", IN_ORDER)
def test_a_section_has_the_title_the_set_and_all_that_an_instructor_needs(lesson: str) -> None:
    section = SECTIONS[number_of(lesson)]
    title = next(iter(prose(lesson).values())).splitlines()[0].removeprefix("# ")
    assert section.splitlines()[0] == title
    for word in ("**Aim.**", "**Time.**", f"`{set_of(lesson)}`", "**At the bench.**", "| slip | what to say |"):
        assert word in " ".join(section.split())


@pytest.mark.parametrize("lesson", IN_ORDER)
def test_the_slips_are_those_that_the_sets_know(lesson: str) -> None:
    said = re.findall(r"^\| ([^|]+) \| “", SECTIONS[number_of(lesson)], re.MULTILINE)
    known = set(slips_of(load_set(set_of(lesson)).tasks))
    known |= set(slips_of(load_set(f"practice/{set_of(lesson)}").tasks))
    assert said
    assert set(said) <= known


def test_every_set_of_the_plan_is_there() -> None:
    for name in {found for found in re.findall(r"`([a-z-]+)`", PLAN) if "-" in found}:
        assert load_set(name).tasks, name
