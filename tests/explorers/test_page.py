"""The explorer under mouse, keyboard and typed numbers, as a page from a file."""

import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing.draw import facts
from drillpoint.drawing.showing import show
from drillpoint.errors import LearnerError
from drillpoint.explorers import standalone_page
from drillpoint.explorers.lips import LIPS


def slider(page, term):
    return page.get_by_role("slider", name=re.compile(term))


def box(page, term):
    return page.get_by_role("textbox", name=re.compile(term))


def drawn(page):
    """The words and lines of both drawings."""
    return page.locator("svg.drillpoint-drawing").evaluate_all("all => all.map((e) => e.innerHTML).join()")


def described(page):
    return page.locator("svg.drillpoint-drawing").first.get_attribute("aria-label")


def test_it_opens_from_a_file_and_shows_the_first_drill(open_explorer):
    page = open_explorer()
    values = facts(**LIPS.start)
    assert show("chisel_edge_angle", values["chisel_edge_angle"], "mm") in described(page)
    expect(page.get_by_role("status")).to_contain_text("flatter than the usual 120° to 135°")
    expect(page.locator(".worked")).to_contain_text("= 5.59 mm")
    expect(page.locator("table")).to_contain_text("1.53")


def test_nothing_from_outside_is_allowed_or_asked_for(browser, tmp_path):
    file = tmp_path / "page.html"
    file.write_text(standalone_page("lips"), encoding="utf-8")
    assert "default-src 'none'" in file.read_text(encoding="utf-8")
    page = browser.new_page()
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(file.as_uri())
    page.get_by_role("slider").first.wait_for()
    assert asked == [file.as_uri()]
    page.close()


def test_without_scripts_the_page_still_shows_the_drawings(browser, tmp_path):
    file = tmp_path / "page.html"
    file.write_text(standalone_page("lips"), encoding="utf-8")
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(file.as_uri())
    assert page.locator("svg[role=img]").count() == 2
    context.close()


def test_dragging_the_relief_swings_the_chisel_edge(open_explorer):
    page = open_explorer()
    relief = slider(page, "lip relief")
    before = drawn(page)
    spot = relief.bounding_box()
    middle = spot["y"] + spot["height"] / 2
    page.mouse.move(spot["x"] + spot["width"] * (12 - 2) / 34, middle)
    page.mouse.down()
    page.mouse.move(spot["x"] + spot["width"] * 0.7, middle, steps=12)
    page.mouse.up()
    expect(box(page, "lip relief")).not_to_have_value("12")
    now = float(relief.input_value())
    assert now > 20
    assert now * 2 == int(now * 2), "a drag stops on half degrees"
    values = facts(**{**LIPS.start, "lip_relief": now})
    assert drawn(page) != before
    assert show("chisel_edge_angle", values["chisel_edge_angle"], "mm") in described(page)
    expect(page.locator(".worked")).to_contain_text(show("lip_length", values["lip_length"], "mm"))


@pytest.mark.parametrize(
    ("key", "after"),
    [("ArrowRight", 119), ("ArrowUp", 119), ("ArrowLeft", 117), ("ArrowDown", 117), ("PageUp", 128), ("PageDown", 108),
     ("Home", 60), ("End", 150)],
)  # fmt: skip
def test_every_key_moves_the_slider(open_explorer, key, after):
    page = open_explorer({"lip_relief": 20})
    point = slider(page, "point angle")
    point.focus()
    page.keyboard.press(key)
    expect(point).to_have_js_property("value", str(after))
    expect(point).to_have_attribute("aria-valuetext", f"{after}°")
    expect(box(page, "point angle")).to_have_value(str(after))
    expect(page.locator("svg.drillpoint-drawing").last).to_have_attribute(
        "aria-label", re.compile(f"point angle {after}°")
    )


def test_everything_is_reached_with_the_tab_key(open_explorer):
    page = open_explorer()
    reached = []
    for _ in range(12):
        page.keyboard.press("Tab")
        reached.append(page.evaluate("document.activeElement.type + ' ' + document.activeElement.className"))
    assert reached == ["range ", "text "] * 4 + ["radio ", "button reset", "button hold", "button copy"]


@pytest.mark.parametrize(
    ("typed", "diameter"), [("3/8 in", 9.525), ("9,5", 9.5), ('1 1/4"', 31.75), ("12.7 mm", 12.7), ("2 cm", 20.0)]
)
def test_a_typed_size_moves_the_drill(open_explorer, typed, diameter):
    page = open_explorer()
    size = box(page, "diameter")
    size.fill(typed)
    size.press("Enter")
    expect(slider(page, "diameter")).to_have_js_property("valueAsNumber", diameter)
    expect(page.locator("svg.drillpoint-drawing").first).to_have_attribute(
        "aria-label", re.compile(re.escape(show("diameter", diameter, "mm")))
    )
    expect(box(page, "web")).to_have_value(show("web", LIPS.state(diameter=diameter)["web"], "mm").replace(" mm", ""))


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("abc", "cannot be read"),
        ("1,234", "could mean two numbers"),
        ("3.5.1", "cannot be read"),
        ("", "Nothing was typed"),
        ("50", "outside 1 mm to 40 mm"),
        ("3/8", "write “3/8 in” if that was meant"),
        ("12°", "for a length"),
    ],
)
def test_nonsense_is_refused_with_what_is_valid_and_moves_nothing(open_explorer, typed, said):
    page = open_explorer()
    before = drawn(page)
    size = box(page, "diameter")
    size.fill(typed)
    size.press("Enter")
    expect(page.get_by_role("status")).to_contain_text(said)
    expect(size).to_have_attribute("aria-invalid", "true")
    expect(size).to_have_value(typed)
    assert drawn(page) == before
    size.press("Escape")
    expect(size).to_have_value("10")
    expect(size).to_have_attribute("aria-invalid", "false")


def test_units_change_without_moving_the_drill(open_explorer):
    page = open_explorer({"diameter": 9.525})
    outline = page.locator("svg .lip").first.get_attribute("d")
    page.get_by_label("inch", exact=True).check()
    expect(box(page, "diameter")).to_have_value("3/8")
    expect(page.locator("svg.drillpoint-drawing").first).to_contain_text("Ø3/8 in")
    assert page.locator("svg .lip").first.get_attribute("d") == outline
    assert float(slider(page, "diameter").input_value()) == 9.525
    slider(page, "diameter").focus()
    page.keyboard.press("ArrowRight")
    expect(box(page, "diameter")).to_have_value("25/64")
    page.get_by_label("mm", exact=True).check()
    expect(box(page, "diameter")).to_have_value("9.92")


def test_reset_brings_the_first_drill_back(open_explorer):
    page = open_explorer()
    before = drawn(page)
    slider(page, "point angle").focus()
    page.keyboard.press("End")
    expect(box(page, "point angle")).to_have_value("150")
    page.get_by_role("button", name="Reset").click()
    expect(box(page, "point angle")).to_have_value("118")
    assert drawn(page) == before


def test_an_impossible_drill_is_named_and_the_last_possible_one_is_drawn(open_explorer):
    page = open_explorer()
    slider(page, "lip relief").focus()
    page.keyboard.press("Home")
    expect(page.get_by_role("status")).to_contain_text("Not possible: with so little relief")
    expect(page.get_by_role("status")).to_contain_text("Nearest possible: lip relief angle 5.2°")
    expect(page.locator(".mark")).to_contain_text("Last possible drill")
    assert described(page).startswith("Last possible drill")
    assert "NaN" not in drawn(page)
    page.keyboard.press("End")
    expect(page.locator(".mark")).to_have_text("")
    expect(page.get_by_role("status")).not_to_contain_text("Not possible")


def test_a_chisel_edge_past_the_drill_is_named_too(open_explorer):
    page = open_explorer({"web": 4.0, "point_angle": 150, "lip_relief": 20})
    slider(page, "lip relief").focus()
    page.keyboard.press("End")
    status = page.get_by_role("status")
    expect(status).to_contain_text("Not possible")
    expect(status).to_contain_text("no lip is left")
    nearest = float(re.search(r"lip relief angle ([\d.]+)°; that", status.inner_text())[1])
    start = {**LIPS.start, "web": 4.0, "point_angle": 150.0}
    assert facts(**{**start, "lip_relief": nearest})["lip_length"] > 0
    with pytest.raises(LearnerError):
        facts(**{**start, "lip_relief": nearest + 0.15})


def test_no_setting_of_the_sliders_leaves_the_drawing_blank(open_explorer):
    page = open_explorer()
    ends = ["Home", "End"]
    for keys in [(a, b, c, d) for a in ends for b in ends for c in ends for d in ends]:
        for term, key in zip(("diameter", "point angle", "web", "lip relief"), keys, strict=True):
            slider(page, term).focus()
            page.keyboard.press(key)
        page.evaluate("() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))")
        picture = drawn(page)
        assert "NaN" not in picture, keys
        assert "Infinity" not in picture, keys
        assert 'd="M' in picture


def test_the_dark_theme_turns_paper_and_ink(open_explorer):
    dark, light = open_explorer(color_scheme="dark"), open_explorer(color_scheme="light")
    ink = "e => getComputedStyle(e).color"
    paper = "e => getComputedStyle(e).fill"
    for page, bright in ((dark, True), (light, False)):
        drawing = page.locator("svg.drillpoint-drawing").first
        assert (luminance(drawing.evaluate(ink)) > 0.5) is bright
        assert (luminance(drawing.locator(".paper").evaluate(paper)) < 0.5) is bright


def test_print_is_dark_on_white_even_from_a_dark_screen(open_explorer):
    page = open_explorer(color_scheme="dark")
    page.emulate_media(media="print", color_scheme="dark")
    drawing = page.locator("svg.drillpoint-drawing").first
    assert luminance(drawing.locator(".paper").evaluate("e => getComputedStyle(e).fill")) > 0.95
    assert luminance(drawing.locator(".flute").first.evaluate("e => getComputedStyle(e).fill")) > 0.6
    assert luminance(drawing.evaluate("e => getComputedStyle(e).color")) < 0.2
    assert not page.get_by_role("slider").first.is_visible()


def test_forced_colours_keep_every_line(open_explorer):
    page = open_explorer(forced_colors="active")
    drawing = page.locator("svg.drillpoint-drawing").first
    paper = drawing.locator(".paper").evaluate("e => getComputedStyle(e).fill")
    for style in ("edge", "lip", "chisel", "thin"):
        stroke = drawing.locator(f".{style}").first.evaluate("e => getComputedStyle(e).stroke")
        assert abs(luminance(stroke) - luminance(paper)) > 0.5, style


def luminance(colour):
    red, green, blue = (int(n) for n in re.findall(r"\d+", colour)[:3])
    return (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255


def test_a_screen_reader_is_not_flooded_by_a_drag(open_explorer):
    page = open_explorer()
    page.wait_for_timeout(800)
    page.evaluate(
        """() => {
          window.said = 0;
          const heard = new MutationObserver(() => { window.said += 1; });
          heard.observe(document.querySelector("[role=status]"), {childList: true});
        }"""
    )
    relief = slider(page, "lip relief")
    relief.focus()
    for _ in range(40):
        page.keyboard.press("ArrowRight")
    expect(page.get_by_role("status")).to_contain_text("117.8°" if relief.input_value() == "22" else "Chisel edge")
    page.wait_for_timeout(900)
    assert 1 <= page.evaluate("window.said") <= 6
    expect(page.get_by_role("status")).to_contain_text(re.search(r"to the lips is ([\d.]+°)", described(page))[1])


def test_every_step_of_a_drag_is_drawn(open_explorer):
    page = open_explorer()
    counted = page.evaluate(
        """async () => {
          const range = [...document.querySelectorAll("input[type=range]")].at(-1);
          const seen = new Set();
          for (let i = 0; i < 30; i++) {
            range.value = 8 + i * 0.5;
            range.dispatchEvent(new Event("input", {bubbles: true}));
            await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
            seen.add(document.querySelector("svg .chisel").getAttribute("d"));
          }
          return seen.size;
        }"""
    )
    assert counted == 30
