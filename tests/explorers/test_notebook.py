"""The explorer in a real JupyterLab."""

import itertools
import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing import draw
from drillpoint.drawing.draw import facts
from drillpoint.drawing.showing import show
from drillpoint.explorers.cone import CONE
from drillpoint.explorers.lips import LIPS

PATIENCE = 90_000  # milliseconds, for a server and a kernel that start on a busy machine


@pytest.fixture(scope="module")
def notebook(browser, jupyterlab):
    address = jupyterlab.write(
        "lips.ipynb",
        'from drillpoint.explorers import explore\nw = explore("lips")\nw',
        'print("kernel has", w.state["lip_relief"], w.call)',
        "w.on_move(lambda values: values['no such value'])",
        'v = explore("cone")\nv',
    )
    page = browser.new_page(viewport={"width": 1400, "height": 1400})
    page.goto(address)
    expect(page.locator(".jp-StatusBar-Widget")).to_contain_text("Idle", timeout=PATIENCE)
    run(page, 0)
    expect(page.locator(".drillpoint-explorer")).to_be_visible(timeout=PATIENCE)
    yield page
    page.close()


def run(page, number):
    cell = page.locator(".jp-CodeCell").nth(number)
    cell.locator(".cm-content").click(timeout=PATIENCE)
    prompt = cell.locator(".jp-InputArea-prompt")
    before = prompt.inner_text()
    page.keyboard.press("Control+Enter")
    expect(prompt).not_to_have_text(before, timeout=PATIENCE)
    return cell


def relief(page):
    return page.get_by_role("slider", name=re.compile("lip relief"))


def expect_drill(page, **moved):
    values = facts(**{**LIPS.start, **moved})
    drawing = page.locator("svg.drillpoint-drawing").first
    expect(drawing).to_have_attribute(
        "aria-label", re.compile(re.escape(show("chisel_edge_angle", values["chisel_edge_angle"], "mm")))
    )
    expect(page.locator(".drillpoint-explorer .worked")).to_contain_text(show("lip_length", values["lip_length"], "mm"))


def test_mouse_keyboard_and_kernel_follow_each_other(notebook):
    page = notebook
    expect_drill(page)
    # mouse
    spot = relief(page).bounding_box()
    before = page.locator("svg .chisel").first.get_attribute("d")
    page.mouse.click(spot["x"] + spot["width"] * 0.6, spot["y"] + spot["height"] / 2)
    expect(page.locator("svg .chisel").first).not_to_have_attribute("d", before)
    dragged = float(relief(page).input_value())
    expect_drill(page, lip_relief=dragged)
    # keyboard: the notebook's own shortcuts must not take the keys
    page.keyboard.press("ArrowRight")
    expect_drill(page, lip_relief=dragged + 0.5)
    page.keyboard.press("ArrowDown")
    page.keyboard.press("PageUp")
    now = dragged + 5
    expect_drill(page, lip_relief=now)
    assert page.locator(".jp-CodeCell").count() == 4
    # the kernel has heard
    page.wait_for_timeout(500)
    cell = run(page, 1)
    expect(cell.locator(".jp-OutputArea-output").last).to_contain_text(f"kernel has {now}", timeout=PATIENCE)
    expect(cell.locator(".jp-OutputArea-output").last).to_contain_text(f"lip_relief={now:g}")


def test_the_notebooks_own_styles_leave_the_worked_lines_in_order(notebook):
    boxes = notebook.locator(".drillpoint-explorer .worked > *").evaluate_all(
        "all => all.map((e) => e.getBoundingClientRect()).map((box) => [box.left, box.top, box.bottom])"
    )
    assert len(boxes) == 10
    assert len({left for left, _, _ in boxes}) == 1
    assert all(above[2] <= below[1] + 1 for above, below in itertools.pairwise(boxes))


def test_letters_typed_into_a_box_are_no_shortcuts(notebook):
    page = notebook
    size = page.get_by_role("textbox", name=re.compile("diameter"))
    size.fill("")
    size.press_sequentially("dd x")
    size.press("Enter")
    expect(page.locator(".drillpoint-explorer [role=status]")).to_contain_text("cannot be read")
    assert page.locator(".jp-CodeCell").count() == 4
    size.press("Escape")


def test_running_the_cell_again_shows_the_drill_as_it_was_left(notebook):
    page = notebook
    relief(page).focus()
    page.keyboard.press("End")
    page.keyboard.press("PageDown")
    expect_drill(page, lip_relief=31)
    page.wait_for_timeout(500)
    old = page.locator(".drillpoint-explorer").element_handle()
    run(page, 0)
    expect(page.locator(".drillpoint-explorer")).to_have_count(1, timeout=PATIENCE)
    page.wait_for_function("old => !old.isConnected", arg=old, timeout=PATIENCE)
    expect(relief(page)).to_have_js_property("value", "31", timeout=PATIENCE)
    expect_drill(page, lip_relief=31)


def test_what_goes_wrong_in_the_kernel_is_said_under_the_sliders(notebook):
    page = notebook
    run(page, 2)
    relief(page).focus()
    page.keyboard.press("ArrowLeft")
    expect(page.locator(".drillpoint-explorer [role=status]")).to_contain_text("no such value", timeout=PATIENCE)


def test_the_dark_theme_of_the_notebook_is_followed(notebook):
    page = notebook
    page.locator(".lm-MenuBar-itemLabel", has_text="Settings").click()
    page.locator(".lm-Menu-itemLabel").get_by_text("Theme", exact=True).click()
    page.locator(".lm-Menu-itemLabel").get_by_text("JupyterLab Dark", exact=True).click()
    expect(page.locator("body")).to_have_attribute("data-jp-theme-light", "false", timeout=PATIENCE)
    paper = page.locator("svg.drillpoint-drawing .paper").first
    page.wait_for_function(
        "e => getComputedStyle(e).fill.match(/\\d+/g).slice(0, 3).every((n) => n < 80)", arg=paper.element_handle()
    )
    ink = page.locator("svg.drillpoint-drawing").first.evaluate("e => getComputedStyle(e).color")
    assert all(float(n) > 180 for n in re.findall(r"[\d.]+", ink)[:3])


def test_a_ground_point_is_drawn_by_the_kernel_while_the_slider_moves(notebook):
    page = notebook
    run(page, 3)
    cone = page.locator(".drillpoint-explorer").nth(1)
    tilt = cone.get_by_role("slider", name=re.compile("tilt"))
    expect(tilt).to_be_visible(timeout=PATIENCE)
    drawing = cone.locator("svg.drillpoint-drawing")
    expect(drawing).to_have_attribute("aria-label", draw("ground_end_view", **CONE.start).alt, timeout=PATIENCE)
    cone.get_by_role("button", name="Hold this one").click()
    held = cone.locator("svg .ghost .chisel").get_attribute("d")
    tilt.focus()
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    moved = draw("ground_end_view", **{**CONE.start, "cone_tilt": 35.0})
    expect(drawing).to_have_attribute("aria-label", moved.alt, timeout=PATIENCE)
    # The cell again: the drill and the held one are as they were left.
    page.wait_for_timeout(500)
    run(page, 3)
    expect(drawing).to_have_attribute("aria-label", moved.alt, timeout=PATIENCE)
    expect(tilt).to_have_js_property("value", "35", timeout=PATIENCE)
    expect(cone.locator("svg .ghost .chisel")).to_have_attribute("d", held)
