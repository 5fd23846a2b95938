"""The explorer for relief, worked with the keyboard as a learner would."""

import re

import pytest
from playwright.sync_api import expect

from drillpoint.explorers.relief import RELIEF
from drillpoint.relations import heel_clearance, least_lip_relief


def slider(page):
    return page.get_by_role("slider", name=re.compile("lip relief"))


def heel(page):
    """How high the end of the flank is drawn: the last place of the longest line."""
    lines = page.locator("svg.drillpoint-drawing").first.locator("path.edge:not([display=none])")
    steps = lines.evaluate_all("all => all.map((e) => e.getAttribute('d'))")
    return float(max(steps, key=len).split()[-1])


def chisel_edge_turn(page):
    d = page.locator("svg.drillpoint-drawing").nth(1).locator("path.chisel").get_attribute("d")
    x0, y0, x1, y1 = map(float, re.findall(r"-?[\d.]+", d))
    return abs((y1 - y0) / (x1 - x0))


def clearance(relief):
    found = RELIEF.values(RELIEF.state(lip_relief=relief))["heel_clearance"]
    return f"again {found:.1f}° behind it"


def test_more_relief_lifts_the_heel_swings_the_chisel_edge_and_the_numbers_follow(open_explorer):
    page = open_explorer({"lip_relief": 5}, explorer="relief")
    expect(page.get_by_role("status")).to_contain_text(clearance(5))
    low, upright = heel(page), chisel_edge_turn(page)
    slider(page).focus()
    for _ in range(40):
        page.keyboard.press("ArrowRight")
    expect(slider(page)).to_have_value("25")
    expect(page.get_by_role("status")).to_contain_text(clearance(25))
    expect(page.get_by_role("status")).to_contain_text("24.64° of relief is left")
    assert heel(page) < low  # y points down
    assert chisel_edge_turn(page) < upright / 2
    alt = page.locator("svg.drillpoint-drawing").first.get_attribute("aria-label")
    assert "keeps clear of the work over the whole land" in alt


def test_its_numbers_are_those_of_the_corner():
    known = RELIEF.values(RELIEF.start)
    assert known["radius"] == known["diameter"] / 2
    # The relief at the corner is the lip relief itself.
    assert known["relief_at_radius"] == pytest.approx(known["lip_relief"])
    clear = heel_clearance(point_angle=118, axial_relief=known["axial_relief"], web_ratio=0.14)
    assert known["heel_clearance"] == pytest.approx(float(clear))
    least = least_lip_relief(feed=0.2, diameter=10, relief_margin=known["relief_margin"])
    assert known["least_lip_relief"] == pytest.approx(float(least))


def test_too_little_relief_is_said_to_rub(open_explorer):
    # With a large point angle a relief below the feed's slope still leaves a chisel edge to draw.
    page = open_explorer({"point_angle": 150, "lip_relief": 2, "feed": 0.5, "web": 0.5}, explorer="relief")
    expect(page.get_by_role("status")).to_contain_text("hardly enough")
