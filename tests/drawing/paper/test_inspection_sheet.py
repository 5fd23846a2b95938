"""The blank inspection sheet: one page on either paper, with all there is to write on, and room for a hand."""

import html
import re

import pytest

from drillpoint.drawing import inspection_sheet
from drillpoint.drawing.paper.format import PAPERS
from drillpoint.drawing.paper.inspection_rows import rows
from drillpoint.drawing.paper.inspection_sheet import CAUTION
from drillpoint.errors import LearnerError
from drillpoint.ground import Limits
from tests.drawing.paper.printed import pages

SHEETS = [("A4", "mm"), ("A4", "inch"), ("Letter", "mm"), ("Letter", "inch")]
SIZES = """() => {
  const scale = 25.4 / 96;
  const size = (n) => [n.getBoundingClientRect().width * scale, n.getBoundingClientRect().height * scale];
  const cells = [...document.querySelectorAll("td")].filter((n) => !n.textContent.trim()).map(size);
  const page = document.querySelector("main").getBoundingClientRect();
  const out = [...document.querySelectorAll("main *")].filter((n) => n.getBoundingClientRect().right > page.right + 1);
  return {cells, out: out.map((n) => n.textContent), tall: page.height * scale};
}"""


def text_of(sheet):
    return " ".join(html.unescape(re.sub(r"<style>.*?</style>|<[^>]*>", " ", sheet.page, flags=re.S)).split())


@pytest.mark.parametrize(("paper", "units"), SHEETS)
def test_it_prints_on_one_page_with_room_for_a_hand(browser, tmp_path, paper, units):
    page = browser.new_page()
    page.goto(inspection_sheet(paper=paper, units=units).save(tmp_path / "sheet").as_uri())
    # Chromium rounds the paper to whole points.
    assert pages(page.pdf(prefer_css_page_size=True)) == [pytest.approx(PAPERS[paper], abs=0.36)]
    # In a wide font it is still one page.
    page.evaluate("document.body.style.fontFamily = 'DejaVu Sans'")
    assert len(pages(page.pdf(prefer_css_page_size=True))) == 1
    page.emulate_media(media="print")
    found = page.evaluate(SIZES)
    page.close()
    assert found["out"] == []
    assert found["tall"] < PAPERS[paper][1] - 18
    assert len(found["cells"]) > 40
    assert min(wide for wide, _ in found["cells"]) > 13
    assert min(tall for _, tall in found["cells"]) > 8


@pytest.mark.parametrize(("paper", "units"), SHEETS[1:3])
def test_all_there_is_to_inspect_is_on_it(paper, units):
    sheet = inspection_sheet(paper=paper, units=units)
    said = text_of(sheet)
    for row in rows(Limits(), units):
        for told in (row.term, row.place, row.error, row.limit):
            assert told in said
        assert row.term in sheet.alt
    for told in (
        CAUTION,
        "shown",
        "possible",
        "not decided",
        "Decision",
        "scrap",
        "signature",
        "shop's choice",
        "date",
    ):
        assert told in said
    assert ("mm" in re.findall(r"± [\d.]+ (\w+)", said)) is (units == "mm")


def test_its_limits_may_be_the_shops_own():
    assert "at most 0.02 mm" in text_of(inspection_sheet(limits=Limits(point_offset=0.02)))
    assert "at most 0.02 mm" not in text_of(inspection_sheet())


def test_it_says_in_a_notebook_how_to_print_it():
    shown = inspection_sheet()._repr_mimebundle_()
    assert "save" in shown["text/plain"] and "save" in shown["text/html"]
    assert "A4" in shown["text/plain"]


def test_it_needs_no_network_and_runs_nothing():
    page = inspection_sheet().page
    assert "<script" not in page and "default-src 'none'" in page
    assert re.findall(r"(?:src|href)=", page) == []


@pytest.mark.parametrize(("changes", "says"), [({"paper": "A5"}, "A4"), ({"units": "feet"}, "inch")])
def test_other_paper_and_units_are_refused(changes, says):
    with pytest.raises(LearnerError, match=says):
        inspection_sheet(**changes)
