"""Names beside the live solid: those of the still picture, following the drill as it turns."""

import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing import solid_picture
from drillpoint.explorers import look
from tests.drawing.solid.points import points
from tests.explorers.solid.pages import pixels, press


def names(page):
    pixels(page)
    return page.locator(".names text").all_text_contents()


def test_names_are_those_of_the_still_picture_and_go_when_not_wanted(open_solid):
    page = open_solid("plain")
    assert names(page) == []
    wanted = page.get_by_role("button", name="names")
    expect(wanted).to_have_attribute("aria-pressed", "false")
    wanted.click()
    expect(wanted).to_have_attribute("aria-pressed", "true")
    for button, view in (("from above", "above"), ("end view", "end"), ("square to the lips", "side")):
        page.get_by_role("button", name=button).click()
        still = solid_picture(points()["plain"], view=view, labels=True)
        written = re.findall(r'text-anchor="\w+"[^>]*>([^<]+)</text>', still.svg)
        assert sorted(names(page)) == sorted(written), view
    wanted.click()
    assert names(page) == []


def test_names_follow_the_drill_and_stay_in_the_frame(open_solid):
    page = open_solid("split", viewport={"width": 420, "height": 760})
    page.get_by_role("button", name="names").click()
    assert "thinned lip" in names(page)
    before = page.locator(".names circle").first.get_attribute("cx")
    page.locator("canvas").focus()
    press(page, *["ArrowLeft"] * 3)
    pixels(page)
    assert page.locator(".names circle").first.get_attribute("cx") != before
    frame = page.locator(".frame").bounding_box()
    for text in page.locator(".names text").all():
        box = text.bounding_box()
        assert box["x"] >= frame["x"] and box["x"] + box["width"] <= frame["x"] + frame["width"]


def test_what_is_cut_away_is_not_named(open_solid):
    page = open_solid("plain")
    page.get_by_role("button", name="names").click()
    page.get_by_label("square to the axis").check()
    assert not {"lip", "chisel edge", "flank"} & set(names(page))


@pytest.mark.parametrize("labels", [True, False])
def test_in_a_lesson_names_are_there_at_first_if_asked_for(labels):
    made = look(points()["small"], labels=labels, key="named")
    assert made.config["naming"]["on"] is labels
    assert (">outer corner</text>" in made.picture("end").svg) is labels
    assert ("Web: the metal between the two flutes" in made._still()["text/plain"]) is labels
    made.close()
