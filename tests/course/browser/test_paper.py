"""The page, printed."""

import io
import re
import shutil
import subprocess

import pytest
from PIL import Image
from playwright.sync_api import expect

from .filling import box


def printed(page, **settings):
    """The text of each printed page."""
    data = page.pdf(format="A4", prefer_css_page_size=True, **settings)
    done = subprocess.run(["pdftotext", "-layout", "-", "-"], input=data, capture_output=True, check=True)
    return done.stdout.decode("utf-8").rstrip("\f").split("\f")


@pytest.mark.skipif(
    shutil.which("pdftotext") is None, reason="pdftotext, which reads the printed pages, is not installed"
)
def test_on_paper_every_task_has_its_line_with_its_unit_and_is_not_cut_in_two(desk_of, variants):
    with desk_of() as page:
        box(page, 9).fill("12.5")
        pages = printed(page)
    everything = "\n".join(pages)
    assert re.search(r"Name: *Student 7 +Number: *s07 +Date:", pages[0])
    for number, text in enumerate(pages, start=1):
        assert re.search(rf"Lips and chisel edge . s07 +Page {number} of {len(pages)}", text)
    for question in variants.questions("s07"):
        holding = [text for text in pages if f"Task {question.number} ·" in text]
        assert len(holding) == 1
        assert re.search(rf"Answer {question.number}\b", holding[0])
        for given in question.numbers.givens.values():
            if given.shown in question.text:
                assert given.shown.replace(" ", "") in re.sub(r"\s", "", holding[0])
    assert re.search(r"Answer 1\s+mm", everything)
    assert re.search(r"Answer 2\s+in", everything)
    assert re.search(r"Answer 9\s+12\.5\s+°", everything), "what is filled in is printed"
    assert "Grinding and drilling can hurt you" in everything
    assert "Hints, for those who are stuck" in everything
    for only_on_screen in ("Save the file", "How to answer", "Saved in this browser", "no answer", "12.3"):
        assert only_on_screen not in everything, only_on_screen


def test_on_paper_nothing_hangs_on_colour_or_runs_off_the_sheet(desk_of):

    with desk_of() as page:
        page.emulate_media(media="print")
        page.set_viewport_size({"width": 680, "height": 900})  # the width of A4 between its margins
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
        picture = Image.open(io.BytesIO(page.screenshot(full_page=True)))
        assert min(picture.convert("L").getextrema()) < 60
        tasks = page.locator("section.task")
        for task in tasks.all():
            assert task.evaluate("e => getComputedStyle(e).breakInside") == "avoid"
            assert task.bounding_box()["height"] < 900
        for shown in (*page.locator(".unit").all(), page.get_by_text("Hints, for those"), page.locator(".fields")):
            expect(shown).to_be_visible()
        for name in ("Save the file", "Print this sheet", "Remove the answers"):
            expect(page.get_by_role("button", name=name)).to_have_count(0)
        lines = page.evaluate(
            "[...document.querySelectorAll('input[type=text]')].map((e) => getComputedStyle(e).borderBottom)"
        )
        assert set(lines) == {"1px solid rgb(0, 0, 0)"}
