"""A lesson opened in a real JupyterLab: run to its end, and its questions answered."""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from tests.jupyterlab import Lab

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Locator, Page

PATIENCE = 120_000  # milliseconds, for a server and a kernel that start on a busy machine
REPLY = 30_000
# A tall window, so that no cell is left out for not being in view.
WIDTH, HEIGHT = 1300, 30_000


@contextmanager
def opened(browser: Browser, jupyterlab: Lab, lesson: Path) -> Iterator[Page]:
    """A copy of the lesson, open and run from its first cell to its last."""
    from playwright.sync_api import expect

    shutil.copy(lesson, jupyterlab.folder / lesson.name)
    page = browser.new_page(viewport={"width": WIDTH, "height": HEIGHT})
    page.goto(jupyterlab.address(lesson.name))
    expect(page.locator(".jp-StatusBar-Widget")).to_contain_text("Idle", timeout=PATIENCE)
    page.get_by_role("menuitem", name="Run", exact=True).click()
    page.locator(".lm-Menu-itemLabel").get_by_text("Run All Cells", exact=True).click()
    expect(page.locator(".drillpoint-explorer").last).to_be_visible(timeout=PATIENCE)
    last = page.locator(".jp-CodeCell .jp-InputArea-prompt").last
    expect(last).to_have_text(re.compile(r"\[\d+\]"), timeout=PATIENCE)
    try:
        yield page
    finally:
        page.close()


def cell(page: Page, code: str) -> Locator:
    """The cell with this code."""
    return page.locator(".jp-CodeCell").filter(has=page.locator(".jp-InputArea", has_text=code))


def complaints(page: Page) -> int:
    """How many outputs are errors or warnings."""
    kinds = ("='application/vnd.jupyter.stderr'", "*='error'")
    return sum(page.locator(f".jp-OutputArea-output[data-mime-type{kind}]").count() for kind in kinds)


def drawings_without_numbers(page: Page) -> list[str]:
    """The words of drawings that have no text twin with numbers in it."""
    drawings = page.locator(".jp-OutputArea-output img, svg.drillpoint-drawing").all()
    said = [drawing.get_attribute("alt") or drawing.get_attribute("aria-label") or "" for drawing in drawings]
    assert said, "the lesson shows no drawing"
    return [words for words in said if not re.search(r"\d", words)]


def drag(page: Page, slider: Locator, start: float, end: float) -> float:
    """Drag a slider with the mouse between two shares of its width; the value it comes to."""
    spot = slider.bounding_box()
    assert spot is not None
    level = spot["y"] + spot["height"] / 2
    page.mouse.move(spot["x"] + spot["width"] * start, level)
    page.mouse.down()
    page.mouse.move(spot["x"] + spot["width"] * end, level, steps=8)
    page.mouse.up()
    return float(slider.input_value())


def reply(asked: Locator, *typed: str) -> str:
    """Type an answer into each box of a question, press Enter in the last, and read what it says."""
    from playwright.sync_api import expect

    boxes, line = asked.locator("input[type=text]"), asked.locator("[role=status]").last
    before = line.inner_text()
    for number, text in enumerate(typed):
        boxes.nth(number).fill(text)
    boxes.nth(len(typed) - 1).press("Enter")
    expect(line).not_to_have_text(before, timeout=REPLY)
    return line.inner_text()
