"""Pages that show an explorer."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from drillpoint.explorers import standalone_page
from tests.jupyterlab import jupyterlab

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

__all__ = ["jupyterlab"]


@pytest.fixture
def open_explorer(browser: Browser, tmp_path: Path) -> Iterator[Callable[..., Page]]:
    """Opens an explorer ("lips" unless named) as a page from a file. Any error in the page fails the test."""
    errors: list[str] = []
    contexts = []

    def opened(
        start: dict[str, float] | None = None, units: str = "mm", explorer: str = "lips", **settings: Any
    ) -> Page:
        file = tmp_path / f"{explorer}.html"
        file.write_text(standalone_page(explorer, units=units, **(start or {})), encoding="utf-8")
        context = browser.new_context(viewport={"width": 1000, "height": 1000}, **settings)
        contexts.append(context)
        page = context.new_page()
        page.on("pageerror", lambda error: errors.append(str(error)))
        page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
        page.goto(file.as_uri())
        page.get_by_role("slider").first.wait_for()
        return page

    yield opened
    for context in contexts:
        context.close()
    assert errors == []
