"""Parts of the solid: named under the pointer, shown from the list, and cut open."""

import re

from playwright.sync_api import expect

from tests.explorers.solid.pages import apart, changed, pixels, press


def status(page):
    return page.get_by_role("status")


def hover(page, across, up, number=0):
    """Move to a place given in radii of the drill from its middle, in the end view."""
    box = page.locator("canvas").nth(number).bounding_box()
    radius = 0.9 * min(box["height"], box["width"]) / 3
    page.mouse.move(box["x"] + box["width"] / 2 + radius * across, box["y"] + box["height"] / 2 - radius * up)
    pixels(page)


def end_view(page):
    page.get_by_role("button", name="end view").click()
    pixels(page)


PLACES = {
    "lip 1": (0.6, 0.15),
    "lip 2": (-0.6, -0.15),
    "chisel edge": (0.0, 0.02),
    "flank 1": (0.6, -0.2),
    "flank 2": (-0.6, 0.2),
    "flute 1": (0.4, 0.6),
    "flute 2": (-0.4, -0.6),
}


def test_the_part_under_the_pointer_is_named_beside_it_and_marked_in_the_list(open_solid):
    page = open_solid("plain")
    end_view(page)
    before = pixels(page)
    for part, place in PLACES.items():
        hover(page, *place)
        expect(page.locator(".tag")).to_have_text(part)
        expect(page.locator(".tag")).to_be_visible()
        expect(page.locator(".parts .marked")).to_have_text(part)
        assert changed(before, pixels(page)) > 12, part
    hover(page, 1.4, 0.9)
    expect(page.locator(".tag")).to_be_hidden()
    expect(page.locator(".parts .marked")).to_have_count(0)
    assert changed(before, pixels(page)) < 3


def test_a_click_on_a_part_says_what_it_is(open_solid):
    page = open_solid("plain")
    end_view(page)
    hover(page, 0.6, -0.2)
    page.mouse.down()
    page.mouse.up()
    expect(status(page)).to_have_text("Flank 1: the ground face behind lip 1, with a relief of 12° at the corner.")


def test_notches_have_names_of_their_own(open_solid):
    page = open_solid("split")
    names = page.locator(".parts button").all_inner_texts()
    assert {"notch 1 face", "notch 2 floor", "notch 1 corner", "thinned lip 2", "primary facet 1"} <= set(names)
    page.get_by_role("button", name="thinned lip 1").click()
    expect(status(page)).to_contain_text("Thinned lip 1: the short cutting edge")


def test_every_part_in_the_list_is_marked_when_it_has_the_focus(open_solid):
    page = open_solid("plain")
    end_view(page)
    plain = pixels(page)
    buttons = page.locator(".parts button")
    buttons.first.focus()
    for number in range(buttons.count()):
        name = buttons.nth(number).inner_text()
        expect(buttons.nth(number)).to_be_focused()
        expect(status(page)).to_contain_text(name[0].upper() + name[1:] + ": ")
        # From the tip the body is hidden behind the point.
        if name.split()[0] in ("lip", "chisel", "flank", "flute"):
            assert changed(plain, pixels(page)) > 12, name
        press(page, "Tab")
    assert changed(plain, pixels(page)) < 3


def test_a_press_turns_the_drill_so_that_the_part_is_seen(open_solid):
    page = open_solid("plain")
    for part in ("flute 1", "margin 2", "flank 1", "body clearance 2", "chisel edge", "heel 1"):
        page.get_by_role("button", name=part, exact=True).click()
        page.mouse.move(1, 1)
        marked = pixels(page)
        page.locator("canvas").focus()
        assert changed(marked, pixels(page)) > 12, part


def test_cut_along_the_axis_the_web_is_hatched_and_the_slider_moves_the_plane(open_solid):
    page = open_solid("plain")
    whole = pixels(page)
    expect(page.get_by_label("where")).to_be_hidden()
    page.get_by_label("along the axis and the lips").check()
    cut = pixels(page)
    assert apart(whole, cut) > 4
    expect(page.locator(".cutting .said")).to_have_text("through the axis")
    box = page.locator("canvas").bounding_box()
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] * 0.6)
    expect(page.locator(".tag")).to_have_text("cut metal")
    slider = page.get_by_label("where")
    slider.focus()
    press(page, *["ArrowRight"] * 20)
    expect(page.locator(".cutting .said")).to_have_text("2 mm before the axis")
    expect(slider).to_have_attribute("aria-valuetext", "2 mm before the axis")
    assert apart(cut, pixels(page)) > 1
    page.get_by_label("whole").check()
    expect(slider).to_be_hidden()


def test_the_choices_of_one_solid_are_not_those_of_another_on_the_page(open_solid):
    # Each solid of a notebook runs its own copy of the script.
    groups = {open_solid("plain").get_by_label("whole").get_attribute("name") for _ in range(2)}
    assert len(groups) == 2


def test_the_cut_is_told_and_square_to_the_axis_shows_the_web(open_solid):
    page = open_solid("plain")
    page.get_by_label("square to the axis").check()
    expect(status(page)).to_have_text(re.compile(r"Cut square to the axis, 5 mm below the tip\.$"))
    hover(page, 0.0, 0.25)
    expect(page.locator(".tag")).to_have_text("cut metal")


def test_two_drills_turn_together_and_are_told_apart(open_solid):
    page = open_solid("plain", "unequal")
    assert page.locator("canvas").count() == 2
    before = [pixels(page, k) for k in (0, 1)]
    assert apart(*before) > 0.2
    page.locator("canvas").nth(1).focus()
    press(page, *["ArrowLeft"] * 4)
    assert all(apart(before[k], pixels(page, k)) > 2 for k in (0, 1))
    page.get_by_role("button", name="flank 2", exact=True).focus()
    expect(status(page)).to_contain_text(re.compile("plain: Flank 2: .* 12° .* unequal: Flank 2: .* 9.6°"))
    captions = page.locator("figcaption").all_inner_texts()
    assert captions == ["plain", "unequal"]
