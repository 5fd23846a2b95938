"""An explorer for those who see little, see no colours, or use no mouse."""

import re
from importlib import resources

import pytest
from playwright.sync_api import expect

from drillpoint.explorers import explore, explorer_names, standalone_page

AXE = resources.files("axe_core_python").joinpath("axe.min.js").read_text(encoding="utf-8")
LEAST_CONTRAST = 3.0  # of lines against what they lie on: WCAG 2.1, 1.4.11, from memory


def violations(page):
    """What axe-core finds wrong, as "rule: element"."""
    page.evaluate(AXE)
    found = page.evaluate("axe.run(document, {resultTypes: ['violations']}).then((r) => r.violations)")
    return [f"{rule['id']}: {node['html'][:120]}" for rule in found for node in rule["nodes"]]


def open_page(browser, tmp_path, name, **settings):
    file = tmp_path / f"{name}.html"
    file.write_text(standalone_page(name), encoding="utf-8")
    page = browser.new_context(viewport={"width": 1000, "height": 1200}, **settings).new_page()
    page.goto(file.as_uri())
    page.get_by_role("slider").first.wait_for()
    return page


@pytest.mark.parametrize("name", explorer_names())
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing(browser, tmp_path, name, scheme):
    page = open_page(browser, tmp_path, name, color_scheme=scheme)
    assert violations(page) == []
    page.context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_a_held_drill_and_a_refused_number(open_explorer, scheme):
    page = open_explorer(color_scheme=scheme)
    page.get_by_role("button", name="Hold this one").click()
    box = page.get_by_role("textbox").first
    box.fill("nonsense")
    box.press("Enter")
    expect(page.get_by_role("status")).to_contain_text("cannot be read")
    assert violations(page) == []


@pytest.mark.parametrize("name", explorer_names())
def test_axe_finds_nothing_in_what_an_export_shows(browser, name):
    widget = explore(name, key="axe")
    shown = widget._repr_mimebundle_()[0]["text/html"]
    widget.close()
    page = browser.new_page()
    page.set_content(f"<!doctype html><html lang=en><title>lesson</title><main><h1>Lesson</h1>{shown}</main></html>")
    assert page.locator("img").evaluate("e => e.complete && e.naturalWidth > 0")
    assert violations(page) == []
    page.close()


def test_axe_would_find_a_slider_without_a_name_and_pale_text(browser):
    page = browser.new_page()
    page.set_content(
        "<html lang=en><title>x</title><main><h1>x</h1><input type=range>"
        "<p style='color:#bbb;background:#fff'>pale</p></main>"
    )
    found = " ".join(violations(page))
    assert "label" in found
    assert "color-contrast" in found
    page.close()


def test_every_control_has_a_name_a_role_and_a_value(open_explorer):
    page = open_explorer()
    for slider in page.get_by_role("slider").all():
        assert re.search(r"\d", slider.get_attribute("aria-valuetext"))
        assert slider.evaluate("e => e.labels.length") == 1
    for box in page.get_by_role("textbox").all():
        assert box.get_attribute("aria-label").endswith(", typed")
    for drawing in page.locator("svg.drillpoint-drawing").all():
        assert drawing.get_attribute("role") == "img"
        assert re.search(r"\d", drawing.get_attribute("aria-label"))
    expect(page.get_by_role("group", name="Lips and chisel edge")).to_be_visible()
    expect(page.get_by_role("group", name="units")).to_be_visible()


def test_the_focus_is_seen(open_explorer):
    page = open_explorer()
    for role in ("slider", "textbox", "radio", "button"):
        control = page.get_by_role(role).first
        page.keyboard.press("Tab")
        control.focus()
        outline = control.evaluate("e => getComputedStyle(e).outline")
        assert "solid" in outline, (role, outline)
        assert "2px" in outline, (role, outline)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_cutting_edges_are_told_apart_without_colour(open_explorer, scheme):
    page = open_explorer(color_scheme=scheme)
    style = "e => { const s = getComputedStyle(e); return [s.stroke, s.fill, parseFloat(s.strokeWidth)]; }"
    one = {
        name: page.locator(f"svg .{name}").first.evaluate(style)
        for name in ("lip", "chisel", "edge", "thin", "flank", "flute", "paper")
    }
    for line in ("lip", "chisel", "edge"):
        for ground in ("flank", "flute", "paper"):
            assert contrast(one[line][0], one[ground][1]) >= LEAST_CONTRAST, (line, ground)
    assert min(one["lip"][2], one["chisel"][2]) >= 2 * one["edge"][2] > 2 * one["thin"][2] * 0.9


def contrast(first, second):
    light, dark = sorted((luminance(first), luminance(second)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def luminance(colour):
    """Relative luminance as WCAG 2.1 defines it, from memory."""
    parts = [int(n) / 255 for n in re.findall(r"\d+", colour)[:3]]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def test_the_ghost_is_kept_under_forced_colours(open_explorer):
    page = open_explorer(forced_colors="active")
    page.get_by_role("button", name="Hold this one").click()
    ghost = page.locator("svg .ghost path").first
    paper = page.locator("svg .paper").first
    assert (
        contrast(ghost.evaluate("e => getComputedStyle(e).stroke"), paper.evaluate("e => getComputedStyle(e).fill"))
        > LEAST_CONTRAST
    )
    assert ghost.evaluate("e => getComputedStyle(e).strokeDasharray") != "none"
