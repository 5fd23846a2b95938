"""The page of a sheet, opened from a folder as on a computer of its own."""

from contextlib import contextmanager

import pytest

from drillpoint.course.html_sheet import html_sheet
from drillpoint.course.roster import Student


@pytest.fixture(scope="module")
def page_file(tmp_path_factory, lips, variants):
    file = tmp_path_factory.mktemp("stick with a space and ü") / "lips.html"
    file.write_text(html_sheet(lips, Student("s07", "Student 7"), list(variants.questions("s07"))), encoding="utf-8")
    return file


@pytest.fixture
def desk_of(browser, page_file):
    """Opens the page as on a computer of its own: each with a store of its own, no network, and errors noticed."""
    contexts, errors = [], []

    @contextmanager
    def opened(context=None, script="", **settings):
        if context is None:
            context = browser.new_context(offline=True, accept_downloads=True, **settings)
            contexts.append(context)
            if script:
                context.add_init_script(script)
        page = context.new_page()
        page.on("pageerror", lambda error: errors.append(str(error)))
        page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
        page.goto(page_file.as_uri())
        yield page

    yield opened
    for context in contexts:
        context.close()
    assert errors == []
