"""The lesson on the point angle in a real JupyterLab: explorers dragged, questions answered right and wrong."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from drillpoint.course.practice import practice_question
from drillpoint.course.variant import Question
from drillpoint.drawing.showing import show
from drillpoint.quantities import QUANTITIES
from drillpoint.relation import Relation
from drillpoint.relations import full_diameter_depth, sheet_cover, spot_depth
from tests.jupyterlab import Lab
from tests.notebooks.opened import REPLY, cell, complaints, drag, drawings_without_numbers, opened, reply

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

NAME = "02-point-angle.ipynb"
NUMBERS = ["point-height", "depth-to-point", "spot-depth", "thin-sheet"]


@pytest.fixture(scope="module")
def lesson(browser: Browser, jupyterlab: Lab, project: Path) -> Iterator[Page]:
    with opened(browser, jupyterlab, project / "notebooks" / NAME) as page:
        yield page


def test_it_runs_without_an_error(lesson: Page) -> None:
    from playwright.sync_api import expect

    expect(lesson.locator(".drillpoint-explorer")).to_have_count(4, timeout=REPLY)
    assert complaints(lesson) == 0
    assert drawings_without_numbers(lesson) == []


def test_each_explorer_has_units_and_labels_of_its_own(lesson: Page) -> None:
    explorers = lesson.locator(".drillpoint-explorer").all()
    assert all(one.locator("input[type=radio][value=mm]").is_checked() for one in explorers)
    names = lesson.locator(".drillpoint-explorer [id]").evaluate_all("found => found.map((one) => one.id)")
    assert len(set(names)) == len(names) > 0


@pytest.mark.parametrize(
    ("explorer", "slider", "relation", "others"),
    [
        ("hole", "point_angle", full_diameter_depth, {"diameter": 10, "shoulder_depth": 25}),
        ("spot", "countersink_angle", spot_depth, {"mouth_diameter": 11}),
        ("breakthrough", "sheet_thickness", sheet_cover, {"diameter": 10, "point_angle": 118}),
    ],
)
def test_numbers_and_words_follow_the_slider(
    lesson: Page, explorer: str, slider: str, relation: Relation, others: Mapping[str, float]
) -> None:
    from playwright.sync_api import expect

    shown = cell(lesson, f'explore("{explorer}")')
    handle = shown.get_by_role("slider", name=QUANTITIES[slider].term)
    before = handle.input_value()
    dragged = drag(lesson, handle, 0.3, 0.7)
    assert str(dragged) != before
    name = relation.result.name
    number = show(name, float(relation(**others, **{slider: dragged})), "mm")
    expect(shown.locator(".worked")).to_contain_text(number)
    expect(shown.locator("svg.drillpoint-drawing").first).to_have_attribute("aria-label", re.compile(re.escape(number)))


@pytest.mark.parametrize("name", NUMBERS)
def test_questions_answered_right_and_with_each_slip(lesson: Page, name: str) -> None:
    question = practice_question(f"point-angle/{name}")
    asked = cell(lesson, f'ask("point-angle/{name}")')
    assert reply(asked, _typed(question, question.numbers.right[0])).startswith("Right.")
    for wrong in question.numbers.wrong:
        said = reply(asked, _typed(question, wrong.values[0], 6, other=True))
        assert wrong.says in said, (wrong.name, said)
    assert "could not be read" in reply(asked, "3.5.1")


def _typed(question: Question, value: float, decimals: int = 2, *, other: bool = False) -> str:
    """A value as it is typed; for a judgement with yes or no in front, the other one on request."""
    if question.numbers.yes is None:
        return f"{value:.{decimals}f}"
    return f"{'yes' if question.numbers.yes != other else 'no'}, {value:.{decimals}f}"


def test_the_prediction_is_answered_with_each_letter(lesson: Page) -> None:
    question = practice_question("point-angle/other-point")
    asked = cell(lesson, 'ask("point-angle/other-point")')
    for letter, (_, wrong) in zip(question.form.letters, question.options, strict=True):
        said = reply(asked, letter)
        assert (wrong.says in said) if wrong else said.startswith("Right.")
