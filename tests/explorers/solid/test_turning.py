"""The solid under mouse, fingers and keys, in a browser."""

import re

import numpy as np
import pytest
from playwright.sync_api import expect

from tests.explorers.solid.pages import apart, covered, pixels, press


def status(page):
    return page.get_by_role("status")


def test_the_screen_shows_a_drill_in_greys_and_not_blank(open_solid):
    seen = pixels(open_solid("plain"))
    grey = np.array(seen[::2])[np.array(seen[1::2]) > 250]
    assert 0.12 < covered(seen) < 0.6
    assert len(set(np.round(grey / 16))) > 5


@pytest.mark.parametrize("name", ["left", "conical", "split", "small"])
def test_other_points_show_as_well(open_solid, name):
    assert 0.12 < covered(pixels(open_solid(name))) < 0.6


def test_the_end_view_is_a_full_circle_with_flanks_lighter_than_flutes(open_solid):
    page = open_solid("plain")
    box = page.locator(".frame").bounding_box()
    page.get_by_role("button", name="end view").click()
    live = np.array(pixels(page)).reshape(120, 160, 2)
    # DERIVED: a circle of the diameter, nine tenths of the frame's height a diameter and a half
    side = 0.9 * box["height"] / 1.5
    area = np.pi / 4 * side**2 / (box["width"] * box["height"])
    assert (live[..., 1] / 255).mean() == pytest.approx(area, rel=0.04)
    flank, flute = live[60 + 15, 80 + 20, 0], live[60 - 20, 80 + 20, 0]
    assert flank > flute + 50


def test_a_drag_turns_the_drill_and_home_brings_it_back(open_solid):
    page = open_solid("plain")
    first = pixels(page)
    box = page.locator("canvas").bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 90, y + 20, steps=4)
    page.mouse.up()
    page.mouse.move(5, 5)
    turned = pixels(page)
    assert apart(first, turned) > 4
    page.locator("canvas").focus()
    press(page, "Home")
    assert apart(first, pixels(page)) < 0.5


def test_keys_turn_zoom_and_shift_and_say_so(open_solid):
    page = open_solid("plain")
    page.locator("canvas").focus()
    seen = [pixels(page)]
    for keys in (["ArrowLeft"] * 4, ["ArrowUp"] * 4, ["+"] * 2, ["-"] * 4, ["Shift+ArrowRight"] * 3):
        press(page, *keys)
        seen.append(pixels(page))
        assert apart(seen[-2], seen[-1]) > 1, keys
    assert covered(seen[3]) > covered(seen[2]) > covered(seen[4])
    # 345° - 4 * 5°; 45° - 4 * 5°
    expect(status(page)).to_have_text("Turned 325°, seen 25° from square to the axis.")
    assert page.evaluate("document.activeElement.tagName") == "CANVAS"


def test_a_full_turn_of_a_plain_point_shows_the_same_every_half_turn(open_solid):
    page = open_solid("plain")
    page.locator("canvas").focus()
    first = pixels(page)
    press(page, *["ArrowRight"] * 18)
    assert apart(first, pixels(page)) > 4
    press(page, *["ArrowRight"] * 18)
    # DERIVED: both halves are alike
    assert apart(first, pixels(page)) < 0.5


def test_two_fingers_zoom(open_solid):
    page = open_solid("plain")
    before = covered(pixels(page))
    page.locator("canvas").evaluate(
        """(canvas) => {
          canvas.setPointerCapture = () => {};
          const box = canvas.getBoundingClientRect();
          const touch = (kind, pointerId, x) => canvas.dispatchEvent(new PointerEvent(kind, {
            pointerId, pointerType: "touch", clientX: box.left + x, clientY: box.top + 200, bubbles: true }));
          touch("pointerdown", 7, 280); touch("pointerdown", 8, 320);
          touch("pointermove", 7, 250); touch("pointermove", 8, 350);
          touch("pointerup", 7, 250); touch("pointerup", 8, 350);
        }"""
    )
    assert covered(pixels(page)) > 1.3 * before


def test_the_wheel_scrolls_the_page_until_the_drill_has_the_focus(open_solid):
    page = open_solid("plain", viewport={"width": 1000, "height": 400}, bypass_csp=True)
    first = pixels(page)
    page.mouse.move(300, 250)
    page.mouse.wheel(0, 120)
    page.wait_for_function("scrollY > 0")
    page.mouse.move(1, 1)
    assert apart(first, pixels(page)) < 0.5
    page.locator("canvas").focus()
    page.evaluate("scrollTo(0, 0)")
    page.mouse.move(300, 250)
    page.mouse.wheel(0, -300)
    page.mouse.move(1, 1)
    assert apart(first, pixels(page)) > 1


def test_named_views_are_reached_by_button_with_the_chisel_edge_on_end(open_solid):
    page = open_solid("plain")
    seen = []
    for name in ("end view", "square to the lips", "along the lips", "along the chisel edge", "from above"):
        page.get_by_role("button", name=name, exact=True).click()
        seen.append(pixels(page))
        expect(status(page)).to_have_text(f"Seen {name}.")
    assert all(apart(a, b) > 1.5 for i, a in enumerate(seen) for b in seen[:i])


def test_the_turn_is_shown_on_the_way_unless_motion_is_unwanted(open_solid):
    code = """async () => {
      const canvas = document.querySelector("canvas"), seen = new Set();
      const stop = performance.now() + 900;
      [...document.querySelectorAll("button")].find((b) => b.textContent === "end view").click();
      while (performance.now() < stop) {
        await new Promise(requestAnimationFrame);
        seen.add(canvas.toDataURL().length);
      }
      return seen.size;
    }"""
    assert open_solid("plain").evaluate(code) <= 2
    assert open_solid("plain", reduced_motion="no-preference").evaluate(code) > 2


def test_the_scale_bar_is_true_and_follows_the_zoom(open_solid):
    page = open_solid("plain", units="inch")
    frame = page.locator(".frame").bounding_box()

    def bar():
        written = page.locator(".scale").inner_text().strip()
        top, bottom = re.fullmatch(r"(\d+)/(\d+) in", written).groups()
        return 25.4 * int(top) / int(bottom), page.locator(".bar").bounding_box()["width"]

    # DERIVED: at first, one and a half diameters to nine tenths of the height
    length, width = bar()
    assert width == pytest.approx(length * 0.9 * frame["height"] / 15, abs=0.6)
    page.locator("canvas").focus()
    press(page, "+", "+", "+")
    pixels(page)
    length, width = bar()
    assert width == pytest.approx(1.25**3 * length * 0.9 * frame["height"] / 15, abs=0.6)
    assert width <= 111
