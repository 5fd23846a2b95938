"""Two drills compared, the call copied, errors said, and nothing piled up."""

import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing.showing import show
from drillpoint.explorers.lips import LIPS

UPDATES = 1000
MEGABYTE = 2**20


def relief(page):
    return page.get_by_role("slider", name=re.compile("lip relief"))


def hold(page):
    page.get_by_role("button", name="Hold this one").click()


def test_the_held_drill_is_drawn_dashed_behind_and_told_in_the_table(open_explorer):
    page = open_explorer()
    assert page.locator("svg .ghost path").count() == 0
    before = page.locator("svg > .chisel").first.get_attribute("d")
    hold(page)
    relief(page).focus()
    for _ in range(3):
        page.keyboard.press("PageUp")
    ghost = page.locator("svg .ghost .chisel").first
    expect(ghost).to_have_attribute("d", before)
    expect(page.locator("svg > .chisel").first).not_to_have_attribute("d", before)
    dashes, opacity, width = ghost.evaluate(
        "e => { const s = getComputedStyle(e); return [s.strokeDasharray, s.strokeOpacity, s.strokeWidth]; }"
    )
    live = page.locator("svg > .chisel").first.evaluate("e => getComputedStyle(e).strokeWidth")
    assert dashes != "none"
    assert float(opacity) < 1
    assert float(width[:-2]) < float(live[:-2])
    # Under the live lines, over the fillings.
    order = page.locator("svg").first.evaluate("e => [...e.children].map((c) => c.getAttribute('class'))")
    assert order.index("ghost") < order.index("chisel")
    assert order.index("ghost") > max(i for i, style in enumerate(order) if style == "flank")
    row = page.locator("tbody tr", has_text="chisel edge angle")
    expect(row.locator(".of-held")).to_have_text(
        show("chisel_edge_angle", LIPS.values(LIPS.start)["chisel_edge_angle"], "mm")
    )
    expect(page.get_by_role("columnheader", name="held")).to_be_visible()
    expect(page.locator(".held").first).to_contain_text("lip relief angle 12°")


def test_letting_go_takes_it_away_and_keeps_the_place_of_the_keyboard(open_explorer):
    page = open_explorer()
    hold(page)
    page.get_by_role("button", name="Let go").focus()
    page.keyboard.press("Enter")
    assert page.locator("svg .ghost path").count() == 0
    expect(page.get_by_role("button", name="Let go")).to_be_hidden()
    expect(page.get_by_role("columnheader", name="held")).to_be_hidden()
    expect(page.locator(".held").first).to_have_text("")
    assert page.evaluate("document.activeElement.textContent") == "Hold this one"


def test_holding_again_takes_the_newer_drill(open_explorer):
    page = open_explorer()
    hold(page)
    relief(page).focus()
    page.keyboard.press("End")
    now = page.locator("svg > .chisel").first
    expect(now).not_to_have_attribute("d", page.locator("svg .ghost .chisel").first.get_attribute("d"))
    hold(page)
    expect(page.locator("svg .ghost .chisel").first).to_have_attribute("d", now.get_attribute("d"))


def test_the_held_values_change_units_with_the_others(open_explorer):
    page = open_explorer()
    hold(page)
    cell = page.locator("tbody tr", has_text="web thickness").locator(".of-held")
    expect(cell).to_have_text("1.5 mm")
    page.get_by_label("inch").check()
    expect(cell).to_have_text("0.0591 in")


@pytest.mark.parametrize("allowed", [True, False])
def test_the_calls_can_be_copied(open_explorer, allowed):
    page = open_explorer()
    page.evaluate(
        """(allowed) => Object.defineProperty(navigator, "clipboard", {value: {
          writeText: (text) => { window.copied = text; return allowed ? Promise.resolve() : Promise.reject(); },
        }})""",
        allowed,
    )
    relief(page).focus()
    page.keyboard.press("ArrowRight")
    expected = LIPS.call({**LIPS.start, "lip_relief": 12.5}, "mm")
    expect(page.locator(".call code")).to_have_text(expected)
    page.get_by_role("button", name="Copy").click()
    if allowed:
        expect(page.get_by_role("status")).to_contain_text("Copied")
        assert page.evaluate("window.copied") == expected
    else:
        expect(page.get_by_role("status")).to_contain_text("Ctrl+C")
        assert page.evaluate("getSelection().toString()") == expected
    expect(page.get_by_role("status")).not_to_have_class(re.compile("problem"))


def test_what_goes_wrong_in_the_drawing_is_said(browser, tmp_path):
    from drillpoint.explorers import standalone_page

    file = tmp_path / "lips.html"
    file.write_text(standalone_page("lips"), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    relief(page).focus()
    page.evaluate("() => { Math.asin = () => { throw new Error('no arc sine here'); }; }")
    page.keyboard.press("ArrowRight")
    expect(page.get_by_role("status")).to_contain_text("The drawing failed: no arc sine here")
    page.close()


def test_a_thousand_updates_leave_nothing_behind(open_explorer):
    page = open_explorer()
    hold(page)
    session = page.context.new_cdp_session(page)
    session.send("Performance.enable")
    drag(page, 100)
    before = counts(session)
    drag(page, UPDATES)
    after = counts(session)
    assert after["Nodes"] <= before["Nodes"] + 20
    assert after["JSEventListeners"] <= before["JSEventListeners"]
    assert after["JSHeapUsedSize"] < before["JSHeapUsedSize"] + MEGABYTE


def drag(page, steps):
    # Each step is drawn at once, without waiting for the screen: a thousand frames would take the test a while.
    page.evaluate(
        """(steps) => {
          const waiting = window.requestAnimationFrame;
          window.requestAnimationFrame = (draw) => { draw(); return 0; };
          const range = [...document.querySelectorAll("input[type=range]")].at(-1);
          for (let i = 0; i < steps; i++) {
            range.value = 8 + (i % 50) * 0.5;
            range.dispatchEvent(new Event("input", {bubbles: true}));
          }
          window.requestAnimationFrame = waiting;
        }""",
        steps,
    )
    page.wait_for_timeout(900)  # the status line and the message to Python come to rest


def counts(session):
    session.send("HeapProfiler.collectGarbage")
    return {m["name"]: m["value"] for m in session.send("Performance.getMetrics")["metrics"]}
