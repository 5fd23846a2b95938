"""The solid in a notebook."""

import inspect

import nbformat
import pytest
from playwright.sync_api import expect

from drillpoint.errors import LearnerError
from drillpoint.explorers import look
from drillpoint.lesson import look as of_a_lesson
from tests.drawing.solid.points import points
from tests.explorers.solid.pages import apart, covered, pixels, press

PATIENCE = 90_000  # milliseconds, for a server and a kernel that start on a busy machine


@pytest.fixture
def widget(request):
    made = look(points()["small"], key=request.node.name)
    yield made
    made.close()


def test_a_lesson_looks_with_the_same_call():
    assert inspect.unwrap(of_a_lesson) is look  # it also reads sizes with their unit


def test_beside_the_live_view_stand_a_picture_and_a_sentence_for_each_part(widget):
    data, _ = widget._repr_mimebundle_()
    assert "application/vnd.jupyter.widget-view+json" in data
    assert "data:image/svg+xml;base64," in data["text/html"]
    assert "<li>Lip 2: the cutting edge" in data["text/html"]
    assert data["text/plain"].startswith("The point as a solid, seen from above, before a lip. Diameter 1 mm")


def test_the_triangles_are_sent_once_as_bytes(widget):
    state = widget.get_state(["packs", "state"])
    assert [type(pack) for pack in state["packs"]] == [bytes]
    assert 50_000 < len(state["packs"][0]) < 400_000
    assert state["state"] == {}


def test_a_picture_of_any_view_and_of_two_side_by_side(widget):
    assert widget.picture("end").alt.startswith("The point as a solid, seen from the tip.")
    with pytest.raises(LearnerError, match="no view 'top'"):
        widget.picture("top")
    two = look(points()["plain"], beside=points()["unequal"], names=("good", "faulty"), key="two")
    assert "good: Diameter 10 mm" in two.picture().alt
    assert two.picture().svg.count("data:image/png") == 2
    assert "faulty: Diameter" in two.config["summary"]
    two.close()


def test_running_the_cell_again_keeps_the_turn_and_closes_the_old_one():
    first = look(points()["small"], key="again")
    turned = {"look": {"turn": 20, "tilt": 30, "zoom": 2, "right": 0, "up": 0}, "cut": {"kind": "lips", "at": 0}}
    first.state = turned
    second = look(points()["stepped"], key="again")
    assert second.state == turned
    assert first.comm is None
    third = look(points()["small"], view="end", key="again")
    assert third.state == {}
    third.close()


def test_running_a_cell_many_times_keeps_one_widget():
    from ipywidgets.widgets.widget import _instances

    look(points()["small"], key="many")
    before = len(_instances)
    for _ in range(8):
        look(points()["small"], key="many")
    # A widget has a layout, which is a widget too.
    assert len(_instances) == before
    look(points()["small"], key="many").close()


def test_an_export_shows_the_picture(browser, project, tmp_path, monkeypatch):
    from nbclient import NotebookClient
    from nbconvert import HTMLExporter

    monkeypatch.setenv("PYTHONPATH", str(project))
    call = "from drillpoint.explorers import look\nlook(diameter=10, point_angle=118, lip_relief=12, web=1.5)"
    notebook = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(call)])
    NotebookClient(notebook, store_widget_state=False, resources={"metadata": {"path": str(tmp_path)}}).execute()
    file = tmp_path / "lesson.html"
    file.write_text(HTMLExporter().from_notebook_node(notebook)[0], encoding="utf-8")
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.route("http*://**", lambda route: route.abort())
    page.goto(file.as_uri())
    picture = page.locator("figure img")
    assert picture.get_attribute("alt").startswith("The point as a solid")
    assert picture.evaluate("e => e.naturalWidth") == 480
    context.close()


def test_in_jupyterlab_it_turns_and_comes_back_as_it_was_left(browser, jupyterlab):
    call = "from drillpoint.explorers import look\nw = look(diameter=10, point_angle=118, lip_relief=12, web=1.5)\nw"
    page = browser.new_page(viewport={"width": 1300, "height": 1200})
    page.goto(jupyterlab.write("solid.ipynb", call, 'print("kernel has", round(w.state["look"]["turn"]))'))
    expect(page.locator(".jp-StatusBar-Widget")).to_contain_text("Idle", timeout=PATIENCE)

    def run(number):
        cell = page.locator(".jp-CodeCell").nth(number)
        cell.locator(".cm-content").click(timeout=PATIENCE)
        prompt = cell.locator(".jp-InputArea-prompt")
        before = prompt.inner_text()
        page.keyboard.press("Control+Enter")
        expect(prompt).not_to_have_text(before, timeout=PATIENCE)
        return cell

    live = page.locator(".drillpoint-solid[data-live=yes]")
    run(0)
    live.wait_for(timeout=PATIENCE)
    first = pixels(page)
    assert covered(first) > 0.12
    page.locator(".drillpoint-solid canvas").focus()
    press(page, *["ArrowLeft"] * 6)
    turned = pixels(page)
    assert apart(first, turned) > 3
    page.wait_for_timeout(600)
    # 345° - 6 * 5°
    expect(run(1).locator(".jp-OutputArea-output").last).to_contain_text("kernel has 315", timeout=PATIENCE)
    old = page.locator(".drillpoint-solid").element_handle()
    run(0)
    page.wait_for_function("old => !old.isConnected", arg=old, timeout=PATIENCE)
    live.wait_for(timeout=PATIENCE)
    assert apart(turned, pixels(page)) < 1
    page.close()
