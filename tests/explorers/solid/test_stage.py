"""One WebGL context a page: made when first seen, shared, given back, its loss survived, its want told."""

import pytest
from playwright.sync_api import expect

from tests.explorers.solid.pages import apart, covered, page_of, pixels, press


def status(page):
    return page.get_by_role("status")


LIVE = "contexts.filter((gl) => !gl.isContextLost()).length"
# Mounts more views of the same solid on the page, as further cells of a notebook would.
MOUNT = """(how) => {
  const config = JSON.parse(document.getElementById("drillpoint-config").textContent);
  const packs = config.packs.map((text) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)));
  const model = (state) => ({ get: (name) => ({ config, packs, state })[name], set() {}, save_changes() {} });
  window.closers ??= [];
  for (let i = 0; i < how.many; i++) {
    const place = document.body.appendChild(document.createElement("div"));
    window.closers.push([place, render({ model: model({}), el: place })]);
  }
}"""


@pytest.fixture
def scripted(open_solid, monkeypatch):
    """Opens a page whose script can be called from outside."""
    from drillpoint.explorers.solid import script

    page_of.cache_clear()
    whole = script.page_script().replace("startPage();", "window.render = render;\nstartPage();")
    monkeypatch.setattr("drillpoint.explorers.solid.page.page_script", lambda: whole)
    yield lambda *names, **settings: open_solid(*names, bypass_csp=True, **settings)
    page_of.cache_clear()


def test_many_views_share_one_context_and_each_shows_its_drill(scripted):
    page = scripted("plain")
    page.evaluate(MOUNT, {"many": 6})
    for number in range(7):
        page.locator(".frame").nth(number).scroll_into_view_if_needed()
        expect(page.locator("canvas").nth(number)).to_be_visible()
        assert covered(pixels(page, number)) > 0.12
    assert page.evaluate("contexts.length") == 1
    first = pixels(page, 0)
    page.locator("canvas").nth(3).focus()
    press(page, "ArrowLeft", "ArrowLeft", "ArrowLeft")
    assert apart(first, pixels(page, 3)) > 2
    assert apart(first, pixels(page, 0)) < 0.5


def test_running_a_cell_two_hundred_times_leaves_one_context_and_no_buffers(scripted):
    page = scripted("plain")
    page.evaluate(
        """() => {
          window.buffers = 0;
          for (const kind of [WebGLRenderingContext.prototype]) {
            const [make, drop] = [kind.createBuffer, kind.deleteBuffer];
            kind.createBuffer = function () { window.buffers += 1; return make.call(this); };
            kind.deleteBuffer = function (one) { window.buffers -= 1; return drop.call(this, one); };
          }
        }"""
    )
    code = """async (mount) => {
      const again = eval(mount);
      for (let i = 0; i < 200; i++) {
        again({ many: 1 });
        const [place, close] = window.closers.pop();
        scrollTo(0, document.body.scrollHeight);
        if (i % 10 === 0) await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        close();
        place.remove();
      }
      const page = window[Symbol.for("drillpoint.solid.stage")];
      return { contexts: contexts.length, buffers, views: page.views.size, uploaded: page.stage.uploaded.size };
    }"""
    session = page.context.new_cdp_session(page)
    assert page.evaluate(code, MOUNT) == {"contexts": 1, "buffers": 0, "views": 1, "uploaded": 1}
    session.send("HeapProfiler.collectGarbage")
    before = page.evaluate("performance.memory.usedJSHeapSize")
    page.evaluate(code, MOUNT)
    session.send("HeapProfiler.collectGarbage")
    # A solid is a third of a megabyte; two hundred kept would be sixty.
    assert page.evaluate("performance.memory.usedJSHeapSize") - before < 5e6


def test_the_context_is_made_when_first_seen_and_given_back_with_the_last_view(scripted):
    page = scripted("plain")
    page.evaluate(MOUNT, {"many": 1})
    assert page.evaluate(LIVE) == 1
    assert page.evaluate("window[Symbol.for('drillpoint.solid.stage')].views.size") == 2
    page.evaluate("closers.pop()[1]()")
    assert page.evaluate(LIVE) == 1
    # The page's own view never closes by itself, so it is taken for closed here.
    page.evaluate("window[Symbol.for('drillpoint.solid.stage')].views.clear()")
    page.evaluate(MOUNT, {"many": 1})
    page.evaluate("closers.pop()[1]()")
    page.wait_for_function(f"{LIVE} === 0")


def test_far_down_a_page_nothing_is_made_before_it_is_scrolled_into_sight(scripted):
    page = scripted("plain", viewport={"width": 1000, "height": 500})
    page.evaluate("document.body.append(Object.assign(document.createElement('div'), {style: 'height: 4000px'}))")
    page.evaluate(MOUNT, {"many": 1})
    pixels(page)
    expect(page.locator("canvas").nth(1)).to_be_hidden()
    expect(page.locator(".still img").nth(1)).to_be_attached()
    page.locator(".drillpoint-solid").nth(1).scroll_into_view_if_needed()
    page.evaluate("scrollTo(0, document.body.scrollHeight)")
    expect(page.locator("canvas").nth(1)).to_be_visible()


def test_a_lost_context_is_made_again_but_not_for_ever(open_solid):
    page = open_solid("plain", bypass_csp=True)
    before = pixels(page)
    lose = "contexts[contexts.length - 1].getExtension('WEBGL_lose_context').loseContext()"
    for made in (2, 3):
        page.evaluate(lose)
        page.wait_for_function(f"contexts.length === {made}")
        assert apart(before, pixels(page)) < 0.5
        expect(page.locator("canvas")).to_be_visible()
    page.evaluate(lose)
    page.locator(".drillpoint-solid[data-live=no]").wait_for()
    expect(page.locator(".still img")).to_be_visible()
    expect(status(page)).to_contain_text("stands still")
    assert page.evaluate("contexts.length") == 3


def test_without_webgl_the_still_picture_stands_there_with_a_sentence_and_the_list(open_solid):
    page = open_solid("unequal", without=True)
    expect(status(page)).to_have_text(
        "This browser shows no solid that can be turned (WebGL is missing or switched off), so the drawing stands "
        "still. Every part is in the list."
    )
    still = page.locator(".still img")
    expect(still).to_be_visible()
    assert still.evaluate("e => e.naturalWidth") == 480
    assert "off centre" in still.get_attribute("alt")
    expect(page.locator("canvas")).to_be_hidden()
    expect(page.get_by_role("button", name="end view")).to_be_hidden()
    expect(page.get_by_role("group", name="Cut open")).to_be_hidden()
    page.get_by_role("button", name="lip 2", exact=True).click()
    expect(status(page)).to_contain_text("62.2° to the axis")
