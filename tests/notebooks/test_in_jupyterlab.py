"""The first lesson in a real JupyterLab: run to its end, moved by mouse and keyboard, its questions answered."""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from drillpoint.course.practice import practice_question
from drillpoint.drawing.draw import facts
from drillpoint.drawing.showing import show
from drillpoint.explorers.lips import LIPS
from tests.jupyterlab import Lab

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Locator, Page

PATIENCE = 120_000  # milliseconds, for a server and a kernel that start on a busy machine
NAME = "01-lips-and-chisel-edge.ipynb"


@pytest.fixture(scope="module")
def lesson(browser: Browser, jupyterlab: Lab, project: Path) -> Iterator[Page]:
    from playwright.sync_api import expect

    shutil.copy(project / "notebooks" / NAME, jupyterlab.folder / NAME)
    # A tall window, so that no cell is left out for not being in view.
    page = browser.new_page(viewport={"width": 1300, "height": 16_000})
    page.goto(jupyterlab.address(NAME))
    expect(page.locator(".jp-StatusBar-Widget")).to_contain_text("Idle", timeout=PATIENCE)
    page.get_by_role("menuitem", name="Run", exact=True).click()
    page.locator(".lm-Menu-itemLabel").get_by_text("Run All Cells", exact=True).click()
    expect(page.locator(".drillpoint-explorer")).to_be_visible(timeout=PATIENCE)
    expect(page.locator(".jp-CodeCell .jp-InputArea-prompt").last).to_have_text(
        re.compile(r"\[\d+\]"), timeout=PATIENCE
    )
    yield page
    page.close()


def test_it_runs_without_an_error(lesson: Page) -> None:
    assert lesson.locator(".jp-RenderedText[data-mime-type='application/vnd.jupyter.stderr']").count() == 0
    assert lesson.locator(".jp-OutputArea-output[data-mime-type*='error']").count() == 0
    # Every drawing has its text twin.
    drawings = lesson.locator(".jp-OutputArea-output img, svg.drillpoint-drawing")
    assert drawings.count() >= 4
    for drawing in drawings.all():
        said = drawing.get_attribute("alt") or drawing.get_attribute("aria-label") or ""
        assert re.search(r"\d", said), said


def test_drawing_and_numbers_follow_mouse_and_keyboard(lesson: Page) -> None:
    slider = lesson.get_by_role("slider", name=re.compile("lip relief"))
    before = lesson.locator(".drillpoint-explorer svg .chisel").first.get_attribute("d")
    spot = slider.bounding_box()
    assert spot is not None
    lesson.mouse.move(spot["x"] + spot["width"] * 0.3, spot["y"] + spot["height"] / 2)
    lesson.mouse.down()
    lesson.mouse.move(spot["x"] + spot["width"] * 0.5, spot["y"] + spot["height"] / 2, steps=8)
    lesson.mouse.up()
    dragged = float(slider.input_value())
    assert dragged > LIPS.start["lip_relief"]
    _expect_drill(lesson, dragged)
    assert lesson.locator(".drillpoint-explorer svg .chisel").first.get_attribute("d") != before
    slider.press("ArrowLeft")
    _expect_drill(lesson, dragged - 0.5)


def _expect_drill(page: Page, lip_relief: float) -> None:
    from playwright.sync_api import expect

    values = facts(**{**LIPS.start, "lip_relief": lip_relief})
    angle = re.escape(show("chisel_edge_angle", values["chisel_edge_angle"], "mm"))
    explorer = page.locator(".drillpoint-explorer")
    expect(explorer.locator("svg.drillpoint-drawing").first).to_have_attribute("aria-label", re.compile(angle))
    expect(explorer.locator(".worked")).to_contain_text(show("lip_length", values["lip_length"], "mm"))


@pytest.mark.parametrize("name", ["point-height", "lip-length", "chisel-edge-angle"])
def test_questions_answered_right_and_with_each_slip(lesson: Page, name: str) -> None:
    question = practice_question(f"lips/{name}")
    cell = lesson.locator(".jp-CodeCell").filter(has_text=f'ask("lips/{name}")')
    right = question.numbers.right[0]
    assert _reply(cell, f"{right:.{question.task.decimals}f}").startswith("Right.")
    for wrong in question.numbers.wrong:
        said = _reply(cell, f"{wrong.values[0]:.6f}")
        assert wrong.says in said, (wrong.name, said)
    assert "could not be read" in _reply(cell, "3.5.1")


def _reply(cell: Locator, typed: str) -> str:
    from playwright.sync_api import expect

    box, line = cell.locator("input[type=text]"), cell.locator("[role=status]").last
    before = line.inner_text() if line.count() else ""
    box.fill(typed)
    box.press("Enter")
    expect(line).not_to_have_text(before, timeout=30_000)
    return line.inner_text()
