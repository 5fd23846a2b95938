"""An explorer that asks Python for its drawing, with a stand-in for the notebook between the two."""

import json
import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing import draw
from drillpoint.explorers import explore, standalone_page
from drillpoint.explorers.answering import answer
from drillpoint.explorers.cone import CONE
from drillpoint.explorers.script import widget_module

NAME = "ground_end_view"

# A model as the notebook gives it to a widget. Questions go to Python; `pause` holds the answers back.
NOTEBOOK = """
async ({module, traits}) => {
  const heard = {};
  window.asked = [];
  window.answers = [];
  window.pause = false;
  const emit = (name, ...said) => (heard[name] ?? []).forEach((then) => then(...said));
  window.answerNow = () => window.answers.splice(0).forEach((answer) => emit("msg:custom", JSON.parse(answer)));
  const model = {
    get: (name) => traits[name],
    set: (name, value) => { traits[name] = value; },
    save_changes: () => {},
    on: (names, then) => names.split(" ").forEach((name) => (heard[name] ??= []).push(then)),
    off: (names, then) => names.split(" ").forEach((name) => { heard[name] = heard[name].filter((f) => f !== then); }),
    send: async (question) => {
      window.asked.push(question);
      window.answers.push(await window.python(JSON.stringify(question)));
      if (!window.pause) window.answerNow();
    },
  };
  window.traits = traits;
  window.listeners = () => Object.values(heard).flat().length;
  const source = URL.createObjectURL(new Blob([module], {type: "text/javascript"}));
  const {default: widget} = await import(source);
  window.close_ = widget.render({model, el: document.body});
}
"""


@pytest.fixture
def notebook(browser):
    """Opens the explorer "cone" with some traits; Python's answers can be replaced."""
    pages = []

    def opened(reply=lambda question: answer(CONE, question), **traits):
        widget = explore("cone", key=f"asking {len(pages)}")
        given = {**widget.get_state(["config", "state", "units", "held", "first", "trouble"]), **traits}
        widget.close()
        page = browser.new_page()
        pages.append(page)
        page.expose_function("python", lambda question: json.dumps(reply(json.loads(question))))
        page.evaluate(NOTEBOOK, {"module": widget_module("cone"), "traits": given})
        page.get_by_role("slider").first.wait_for()
        return page

    yield opened
    for page in pages:
        page.close()


def described(page):
    return page.locator("svg.drillpoint-drawing")


def tilt(page):
    return page.get_by_role("slider", name=re.compile("tilt"))


def test_the_drawing_follows_the_slider_through_python(notebook):
    page = notebook()
    before = page.locator("svg .chisel").get_attribute("d")
    tilt(page).focus()
    page.keyboard.press("PageUp")
    moved = {**CONE.start, "cone_tilt": 38.0}
    alt = draw(NAME, **moved).alt
    expect(described(page)).to_have_attribute("aria-label", alt)
    assert page.locator("svg .chisel").get_attribute("d") != before
    reading = answer(CONE, {"state": moved})["answers"][NAME]["values"]["chisel_edge_angle"]
    expect(page.get_by_role("status")).to_contain_text(f"Chisel edge {reading:.1f}°")
    expect(page.locator("table")).to_contain_text(f"{reading:.1f}°")


def test_one_question_at_a_time_and_always_the_newest(notebook):
    page = notebook()
    page.wait_for_function("window.asked.length === 1 && window.answers.length === 0")
    page.evaluate("window.pause = true")
    tilt(page).focus()
    for _ in range(6):
        page.keyboard.press("ArrowLeft")
        page.evaluate("() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))")
    assert page.evaluate("window.asked.map((q) => q.state.cone_tilt)") == [34, 33.5]
    page.evaluate("window.pause = false; window.answerNow()")
    page.wait_for_function("window.asked.length === 3")
    assert page.evaluate("window.asked.at(-1).state.cone_tilt") == 31
    expect(described(page)).to_have_attribute("aria-label", draw(NAME, **{**CONE.start, "cone_tilt": 31.0}).alt)
    # The shapes came with the first answer only.
    assert page.evaluate("window.asked.at(-1).has") == {
        NAME: answer(CONE, {"state": CONE.start})["answers"][NAME]["id"]
    }


def test_what_python_refuses_is_said_and_the_last_drill_stays(notebook):
    def reply(question):
        if question["state"]["cone_tilt"] > 37:
            return {"asked": question["asked"], "state": question["state"], "problem": "the wheel finds no land."}
        return answer(CONE, question)

    page = notebook(reply)
    last = draw(NAME, **CONE.start).alt
    expect(described(page)).to_have_attribute("aria-label", last)
    tilt(page).focus()
    page.keyboard.press("End")
    expect(page.get_by_role("status")).to_have_text(
        "Not possible: the wheel finds no land. The last possible drill is drawn."
    )
    expect(described(page)).to_have_attribute("aria-label", f"Last possible drill. {last}")
    page.keyboard.press("Home")
    expect(page.get_by_role("status")).not_to_contain_text("Not possible")
    expect(described(page)).to_have_attribute("aria-label", re.compile("^End view"))


def test_an_error_in_python_is_shown(notebook):
    def reply(question):
        return answer(CONE, {**question, "state": {}}) | {"asked": question["asked"]}

    expect(notebook(reply).get_by_role("status")).to_contain_text("KeyError")


def test_without_an_answer_the_first_picture_stands_and_it_is_said(notebook):
    page = notebook(lambda question: {"asked": -1})
    expect(described(page)).to_have_attribute("aria-label", draw(NAME, **CONE.start).alt)
    expect(page.get_by_role("status")).to_contain_text("Python is busy or has stopped", timeout=12_000)


def test_an_answer_that_comes_late_is_still_taken(notebook):
    page = notebook()
    page.wait_for_function("window.asked.length === 1 && window.answers.length === 0")
    page.evaluate("window.pause = true")
    tilt(page).focus()
    page.keyboard.press("ArrowRight")
    expect(page.get_by_role("status")).to_contain_text("Python is busy", timeout=12_000)
    page.evaluate("window.answerNow()")
    expect(described(page)).to_have_attribute("aria-label", draw(NAME, **{**CONE.start, "cone_tilt": 34.5}).alt)
    expect(page.get_by_role("status")).not_to_contain_text("busy")


def test_an_answer_to_another_view_is_not_taken(notebook):
    def reply(question):
        other = {**CONE.start, "cone_tilt": 37.0}
        return answer(CONE, {**question, "asked": "another view-1", "state": other})

    page = notebook(reply)
    page.wait_for_function("window.asked.length === 1 && window.answers.length === 0")
    page.wait_for_timeout(100)
    assert described(page).get_attribute("aria-label") == draw(NAME, **CONE.start).alt


def test_the_held_drill_stays_while_python_draws_another(notebook):
    page = notebook()
    page.wait_for_function("window.asked.length === 1 && window.answers.length === 0")
    held = page.locator("svg > .chisel").get_attribute("d")
    page.get_by_role("button", name="Hold this one").click()
    tilt(page).focus()
    page.keyboard.press("End")
    page.wait_for_function("d => document.querySelector('svg > .chisel').getAttribute('d') !== d", arg=held)
    expect(page.locator("svg .ghost .chisel")).to_have_attribute("d", held)
    page.wait_for_function("window.traits.held.state")
    again = notebook(held=page.evaluate("window.traits.held"), state=page.evaluate("window.traits.state"))
    expect(again.locator("svg .ghost .chisel")).to_have_attribute("d", held)


def test_closing_leaves_nothing_behind(notebook):
    page = notebook()
    page.wait_for_function("window.asked.length === 1 && window.answers.length === 0")
    assert page.evaluate("window.listeners()") == 4
    page.evaluate("window.close_()")
    assert page.evaluate("window.listeners()") == 0
    assert page.locator(".drillpoint-explorer").inner_html() == ""


def test_a_page_without_python_shows_the_first_drill_and_says_so(browser, tmp_path):
    file = tmp_path / "cone.html"
    file.write_text(standalone_page("cone"), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    expect(described(page)).to_have_attribute("aria-label", draw(NAME, **CONE.start).alt)
    expect(page.locator(".held")).to_contain_text(["", "Only Python can move this drawing"])
    for slider in page.get_by_role("slider").all():
        expect(slider).to_be_disabled()
    expect(page.get_by_label("inch")).to_be_enabled()
    page.close()
