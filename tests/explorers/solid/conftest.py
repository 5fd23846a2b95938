"""Pages that show a solid."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from tests.explorers.solid.pages import COUNTING, MISSING, page_of
from tests.jupyterlab import jupyterlab

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

__all__ = ["jupyterlab"]


@pytest.fixture
def open_solid(browser: Browser, tmp_path: Path) -> Iterator[Callable[..., Page]]:
    """Opens points as a page from a file. Any error in the page fails the test."""
    errors: list[str] = []
    contexts = []

    def opened(*names: str, units: str = "mm", without: bool = False, **settings: Any) -> Page:
        file = tmp_path / "solid.html"
        file.write_text(page_of(*names, units=units), encoding="utf-8")
        settings = {"viewport": {"width": 840, "height": 760}, "reduced_motion": "reduce", **settings}
        context = browser.new_context(**settings)
        contexts.append(context)
        context.add_init_script(MISSING if without else COUNTING)
        page = context.new_page()
        page.on("pageerror", lambda error: errors.append(str(error)))
        page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
        page.goto(file.as_uri())
        page.locator(f".drillpoint-solid[data-live={'no' if without else 'yes'}]").wait_for()
        return page

    yield opened
    for context in contexts:
        context.close()
    assert errors == []
