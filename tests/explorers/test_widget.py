import json

import nbformat
import pytest

from drillpoint.errors import LearnerError
from drillpoint.explorers import explore
from drillpoint.explorers.lips import LIPS


@pytest.fixture
def widget(request):
    made = explore("lips", key=request.node.name)
    yield made
    made.close()


def test_the_state_is_readable_and_gives_every_value(widget):
    assert widget.state == LIPS.start
    assert widget.facts["chisel_edge_angle"] == pytest.approx(101.64, abs=0.005)
    givens = "diameter=10, point_angle=118, web=1.5, lip_relief=12"
    assert widget.call == f'draw("end_view", {givens})\ndraw("side_view", {givens})'


def test_a_picture_of_the_state_or_of_one_scene(widget):
    widget.state = {**widget.state, "lip_relief": 24.0}
    both = widget.picture()
    assert both.svg.count('class="drillpoint-drawing"') == 2
    assert "120.9°" in both.alt
    assert "Side view" not in widget.picture("end_view").alt
    with pytest.raises(LearnerError, match="did you mean"):
        widget.picture("side")


def test_running_the_cell_again_keeps_the_state_and_closes_the_old_one():
    first = explore("lips", key="again", diameter=12)
    first.state = {**first.state, "lip_relief": 20.0}
    second = explore("lips", key="again", diameter=12)
    assert second.state["lip_relief"] == 20.0
    assert first.comm is None
    third = explore("lips", key="again", diameter=14)
    assert third.state == LIPS.state(diameter=14)
    assert second.comm is None
    third.close()


def test_running_the_cell_again_keeps_the_held_drill_and_the_units():
    first = explore("lips", key="held")
    first.held = {"state": {**first.state, "web": 2.0}, "answers": {}}
    first.units = "inch"
    second = explore("lips", key="held")
    assert second.held["state"]["web"] == 2.0
    assert second.units == "inch"
    assert explore("lips", key="held", diameter=14).held == {}
    explore("lips", key="held").close()


def test_running_a_cell_many_times_keeps_one_widget():
    from ipywidgets.widgets.widget import _instances

    before = len(_instances)
    for _ in range(20):
        explore("lips", key="many")
    after = len(_instances)
    # A widget has a layout, which is a widget too.
    assert after - before <= 2
    explore("lips", key="many").close()


def test_a_thousand_moves_leave_nothing_in_the_kernel():
    import gc
    import tracemalloc

    made = explore("cone", key="moves")
    question = {"kind": "draw", "state": made.state, "has": {name: one["id"] for name, one in made.first.items()}}

    def move(times):
        for i in range(times):
            tilt = 34 + (i % 20) / 10
            made.state = {**made.state, "cone_tilt": tilt}
        for i in range(times // 50):
            made._asked(made, {**question, "asked": i, "state": made.state}, [])
        gc.collect()

    move(100)
    tracemalloc.start()
    move(50)
    before = tracemalloc.get_traced_memory()[0]
    move(1000)
    grown = tracemalloc.get_traced_memory()[0] - before
    tracemalloc.stop()
    made.close()
    assert grown < 100_000


def test_a_computed_drawing_asks_nothing_of_formulas():
    made = explore("cone", key="computed")
    assert set(made.first) == {"ground_end_view"}
    assert made.facts["chisel_edge_angle"] == pytest.approx(
        made.first["ground_end_view"]["values"]["chisel_edge_angle"]
    )
    assert "End view of a ground point" in made.picture().alt
    assert made.call.startswith('draw("ground_end_view", diameter=10, web=1.5, cone_half_angle=25')
    with pytest.raises(LearnerError, match="did you mean 'ground_end_view'"):
        made.picture("ground_end")
    made.close()


def test_a_reset_goes_back_to_the_start_that_was_asked_for():
    made = explore("lips", key="reset", diameter=12)
    assert {s["name"]: s["start"] for s in made.config["sliders"]} == LIPS.state(diameter=12)
    made.close()


def test_two_explorers_do_not_disturb_each_other():
    first, second = explore("lips", key="a"), explore("lips", key="b")
    first.state = {**first.state, "lip_relief": 20.0}
    assert second.state == LIPS.start
    assert first.comm is not None
    first.close()
    second.close()


def test_an_error_in_a_callback_is_shown_in_the_widget(widget):
    def broken(_values):
        raise KeyError("no such thing")

    widget.on_move(broken)
    widget.state = {**widget.state, "lip_relief": 15.0}
    assert "no such thing" in widget.trouble


def test_a_callback_gets_the_values_and_clears_old_trouble(widget):
    seen = []
    widget.on_move(seen.append)
    widget.state = {**widget.state, "lip_relief": 2.0}
    assert "give more relief" in widget.trouble
    widget.state = {**widget.state, "lip_relief": 15.0}
    assert widget.trouble == ""
    assert [values["lip_relief"] for values in seen] == [15.0]


def test_beside_the_live_view_stand_a_picture_and_the_worked_lines(widget):
    data, _ = widget._repr_mimebundle_()
    assert "application/vnd.jupyter.widget-view+json" in data
    assert "data:image/svg+xml;base64," in data["text/html"]
    assert "= 5.59 mm" in data["text/html"]
    assert "flatter than the usual" in data["text/plain"]


def exported(tmp_path, with_state):
    from nbclient import NotebookClient
    from nbconvert import HTMLExporter
    from traitlets.config import Config

    cell = nbformat.v4.new_code_cell('from drillpoint.explorers import explore\nexplore("lips")')
    notebook = nbformat.v4.new_notebook(cells=[cell])
    NotebookClient(notebook, store_widget_state=with_state, resources={"metadata": {"path": str(tmp_path)}}).execute()
    settings = Config()
    if with_state:
        settings.NbConvertBase.display_data_priority = ["text/html", "image/svg+xml", "image/png", "text/plain"]
    page, _ = HTMLExporter(config=settings).from_notebook_node(notebook)
    return page


@pytest.mark.parametrize("with_state", [False, True], ids=["saved without widget state", "pictures preferred"])
def test_an_export_shows_the_picture(browser, project, tmp_path, monkeypatch, with_state):
    monkeypatch.setenv("PYTHONPATH", str(project))
    file = tmp_path / "lesson.html"
    file.write_text(exported(tmp_path, with_state), encoding="utf-8")
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.route("http*://**", lambda route: route.abort())
    page.goto(file.as_uri())
    picture = page.locator("figure img")
    assert picture.get_attribute("alt").startswith("End view")
    assert picture.evaluate("e => e.naturalWidth") == 1160
    assert picture.bounding_box()["width"] > 300
    context.close()


def test_the_state_travels_as_plain_numbers(widget):
    assert json.loads(json.dumps(widget.get_state(["state", "units", "config"])))["state"] == LIPS.start
