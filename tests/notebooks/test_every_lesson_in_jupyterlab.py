"""Every lesson in a real JupyterLab: run from top to bottom, its sliders moved, its questions answered."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from drillpoint.course.practice import practice_question
from tests.jupyterlab import Lab
from tests.notebooks.lessons import IN_ORDER, asked, filled_in, typed
from tests.notebooks.opened import REPLY, cell, complaints, drag, drawings_without_numbers, opened, reply

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Locator, Page


@pytest.fixture(scope="module", params=IN_ORDER)
def lesson(request: pytest.FixtureRequest, browser: Browser, jupyterlab: Lab, project: Path) -> Iterator[str]:
    with opened(browser, jupyterlab, project / "notebooks" / request.param) as page:
        request.module.PAGES[request.param] = page
        yield request.param
        del request.module.PAGES[request.param]


PAGES: dict[str, Page] = {}


def test_it_runs_without_an_error(lesson: str) -> None:
    assert complaints(PAGES[lesson]) == 0
    assert drawings_without_numbers(PAGES[lesson]) == []


def test_its_drawings_follow_mouse_and_keyboard(lesson: str) -> None:
    explorers = PAGES[lesson].locator(".drillpoint-explorer").all()
    for explorer in explorers:
        slider = explorer.get_by_role("slider").first
        said = _words(explorer)
        before = float(slider.input_value())
        assert drag(PAGES[lesson], slider, 0.2, 0.4) != before
        said = _changed(explorer, said)
        slider.press("ArrowRight")
        _changed(explorer, said)
    names = PAGES[lesson].locator(".drillpoint-explorer [id]").evaluate_all("found => found.map((one) => one.id)")
    assert len(set(names)) == len(names)


def _words(explorer: Locator) -> str:
    return explorer.locator("svg.drillpoint-drawing").first.get_attribute("aria-label") or ""


def _changed(explorer: Locator, said: str) -> str:
    """Wait until the drawing says something else, and return what."""
    from playwright.sync_api import expect

    drawing = explorer.locator("svg.drillpoint-drawing").first
    expect(drawing).not_to_have_attribute("aria-label", re.compile(f"^{re.escape(said)}$"), timeout=REPLY)
    return _words(explorer)


def test_its_questions_are_answered_right_and_with_each_slip(lesson: str) -> None:
    for name, task in asked(lesson):
        question = practice_question(f"{name}/{task}")
        place = cell(PAGES[lesson], f'ask("{name}/{task}")')
        if question.task.kind == "choice":
            for letter, (_, wrong) in zip(question.form.letters, question.options, strict=True):
                said = reply(place, letter)
                assert (wrong.says in said) if wrong else said.startswith("Right."), (task, letter, said)
            continue
        if question.task.enters:
            keys = [box.key.rpartition(".")[2] for box in question.boxes]
            good, bad = (filled_in(question, share) for share in (1.0, 1.5))
            assert "Not met" not in reply(place, *(good[key] for key in keys)), task
            assert "Not met" in reply(place, *(bad[key] for key in keys)), task
            continue
        assert reply(place, typed(question, question.numbers.right[0])).startswith("Right."), task
        for wrong in question.numbers.wrong:
            said = reply(place, typed(question, wrong.values[0], 6, other=True))
            assert wrong.says in said, (task, wrong.name, said)
        assert "could not be read" in reply(place, "3.5.1"), task
