"""A plan prints on one page of either paper, and stands alone."""

import re

import pytest

from drillpoint.errors import OutOfRange
from drillpoint.planning.page import page
from tests.drawing.paper.printed import pages
from tests.planning.drills import plan

# Everything is wrong with it that can be, so its page is the fullest.
FULLEST = {
    "name": "drill 3",
    "drills": "stainless pins",
    "half_angle_1": 58,
    "half_angle_2": 60.5,
    "new_point_angle": 135,
    "lip_relief": None,
    "lip_relief_1": 5,
    "lip_relief_2": 9,
    "chisel_edge_angle": 104,
    "web": 1.9,
    "wear_land": 0.5,
    "chip_depth": 0.3,
    "worn_margin": 0.4,
    "length_before": 120.4,
    "lip_height_difference": 0.3,
    "higher_lip": 1,
    "drill_material": "cobalt steel",
}


# SOURCE: ISO 216 and ANSI/ASME Y14.1 sizes, mm.
@pytest.mark.parametrize(("paper", "size"), [("A4", (210, 297)), ("Letter", (215.9, 279.4))])
def test_the_fullest_plan_prints_on_one_page(browser, tmp_path, paper, size) -> None:
    saved = plan(**FULLEST).save(tmp_path / "plan", paper=paper)
    assert saved.name == "plan.html"
    shown = browser.new_page()
    shown.goto(saved.as_uri())
    wide = shown.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    pdf = shown.pdf(prefer_css_page_size=True)
    shown.close()
    assert pages(pdf) == [pytest.approx(size, abs=0.5)]
    assert wide <= 0


def test_it_stands_alone_and_what_was_given_is_text() -> None:
    text = page(plan(**{**FULLEST, "name": "<script>alert(1)</script>"}))
    assert "<script" not in text and "&lt;script&gt;" in text
    assert not re.search(r"(?:src|href)=", text)
    assert "default-src 'none'" in text
    assert text.count('aria-label="to write here"') >= 12


def test_another_paper_is_refused() -> None:
    with pytest.raises(OutOfRange, match="a plan prints on A4 or Letter"):
        page(plan(), "A3")
    assert "size: Letter" in page(plan(), "letter")
