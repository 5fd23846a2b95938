"""The lesson on relief and the chisel edge in a real JupyterLab: its explorer moved, its questions answered."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.practice import practice_question
from drillpoint.drawing.draw import facts
from drillpoint.drawing.showing import show
from drillpoint.explorers.relief import RELIEF
from tests.jupyterlab import Lab
from tests.notebooks.opened import cell, complaints, drag, drawings_without_numbers, opened, reply

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

NAME = "03-relief-and-the-chisel-edge.ipynb"
SET = "relief-and-chisel-edge"
TASKS = load_set(f"practice/{SET}").tasks


@pytest.fixture(scope="module")
def lesson(browser: Browser, jupyterlab: Lab, project: Path) -> Iterator[Page]:
    with opened(browser, jupyterlab, project / "notebooks" / NAME) as page:
        yield page


def test_it_runs_without_an_error(lesson: Page) -> None:
    assert complaints(lesson) == 0
    assert drawings_without_numbers(lesson) == []


def test_the_chisel_edge_and_the_numbers_follow_the_relief(lesson: Page) -> None:
    from playwright.sync_api import expect

    shown = cell(lesson, 'explore("relief", web=1.5)')
    slider = shown.get_by_role("slider", name=re.compile("lip relief"))
    dragged = drag(lesson, slider, 0.3, 0.6)
    assert dragged > RELIEF.start["lip_relief"]
    for at in (dragged, dragged - 0.5):
        values = facts(diameter=10, point_angle=118, web=1.5, lip_relief=at)
        angle = show("chisel_edge_angle", values["chisel_edge_angle"], "mm")
        expect(shown.locator(".worked")).to_contain_text(angle)
        expect(shown.locator("svg.drillpoint-drawing").last).to_have_attribute(
            "aria-label", re.compile(re.escape(angle))
        )
        slider.press("ArrowLeft")


@pytest.mark.parametrize("name", [task.id for task in TASKS if task.kind != "choice"])
def test_questions_answered_right_and_with_each_slip(lesson: Page, name: str) -> None:
    question = practice_question(f"{SET}/{name}")
    asked = cell(lesson, f'ask("{SET}/{name}")')
    word = {True: "yes, ", False: "no, ", None: ""}[question.numbers.yes]
    right = question.numbers.right[0]
    assert reply(asked, f"{word}{right:.{question.task.decimals}f}").startswith("Right.")
    for wrong in question.numbers.wrong:
        said = reply(asked, f"{word}{wrong.values[0]:.6f}")
        assert wrong.says in said, (wrong.name, said)
    assert "could not be read" in reply(asked, "3.5.1")


@pytest.mark.parametrize("name", [task.id for task in TASKS if task.kind == "choice"])
def test_predictions_answered_with_each_letter(lesson: Page, name: str) -> None:
    question = practice_question(f"{SET}/{name}")
    asked = cell(lesson, f'ask("{SET}/{name}")')
    for letter, (_, wrong) in zip(question.form.letters, question.options, strict=True):
        said = reply(asked, letter)
        assert (wrong.says in said) if wrong else said.startswith("Right.")
