"""The solid as a page that stands alone, for everybody."""

import re

import pytest
from playwright.sync_api import expect

from drillpoint.explorers import solid_page
from tests.drawing.solid.points import points
from tests.explorers.solid.pages import page_of, press
from tests.explorers.test_accessibility import violations


def test_the_page_asks_for_nothing_from_outside_and_is_small():
    page = page_of("plain")
    assert not re.search(r"https?://(?!www\.w3\.org/(2000/svg|1999/xlink))", page)
    assert "default-src 'none'" in page
    assert len(page) < 450_000


def test_the_page_shows_a_picture_before_its_script_and_without_it(browser, tmp_path):
    file = tmp_path / "solid.html"
    file.write_text(page_of("plain"), encoding="utf-8")
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(file.as_uri())
    assert page.locator("img").evaluate("e => e.naturalWidth") == 480
    context.close()


def test_a_hostile_name_stays_text():
    bad = "</script><script>alert(1)</script>"
    page = solid_page(points()["small"], beside=points()["small"], names=(bad, "other"))
    assert "<script>alert" not in page


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("without", [False, True], ids=["turning", "still"])
def test_axe_finds_nothing(open_solid, scheme, without):
    page = open_solid("plain", color_scheme=scheme, without=without, bypass_csp=True)
    if not without:
        page.get_by_label("along the axis and the lips").check()
    assert violations(page) == []


def test_everything_is_reached_by_keyboard_in_order_and_seen_to_be(open_solid):
    page = open_solid("plain")
    reached = []
    parts = page.locator(".parts button").all_inner_texts()
    for _ in range(10 + len(parts)):
        press(page, "Tab")
        reached.append(page.evaluate("document.activeElement.textContent || document.activeElement.tagName"))
        assert "solid 2px" in page.evaluate(
            "((s) => `${s.outlineStyle} ${s.outlineWidth}`)(getComputedStyle(document.activeElement))"
        )
    assert reached[:8] == [*page.locator(".views button").all_inner_texts()]
    assert reached[8] == "CANVAS"
    assert reached[9 : 9 + len(parts)] == parts
    assert reached[9 + len(parts)] == "INPUT"


def test_the_canvas_is_an_image_with_its_numbers(open_solid):
    image = open_solid("unequal").get_by_role("img")
    expect(image).to_have_count(1)
    expect(image).to_have_attribute("aria-label", re.compile("arrow keys.*Diameter 10 mm.*off centre"))


def test_forced_colours_keep_the_drill_and_its_words(open_solid):
    page = open_solid("plain", forced_colors="active", color_scheme="dark")
    expect(page.locator("canvas")).to_be_visible()
    expect(page.locator(".scale")).to_have_text(re.compile(r"^\d+ mm$"))
