import itertools
import subprocess
import sys

import matplotlib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.drawing import chart, chart_names
from drillpoint.drawing.charts import plot as module
from drillpoint.drawing.charts.plot import spread
from drillpoint.drawing.charts.spans import MOST_IN_A_FAMILY


@given(st.lists(st.tuples(st.floats(0, 48), st.floats(1, 6)), min_size=1, max_size=7))
def test_names_keep_apart_and_in_order(names):
    wanted, tall = [w for w, _ in names], [t for _, t in names]
    placed = spread(wanted, tall, 48)
    order = sorted(range(len(names)), key=lambda i: (wanted[i], i))
    for lower, upper in itertools.pairwise(order):
        assert placed[upper] - placed[lower] >= (tall[upper] + tall[lower]) / 2 - 1e-9
    assert min(p - t / 2 for p, t in zip(placed, tall, strict=True)) >= -1e-9
    assert max(p + t / 2 for p, t in zip(placed, tall, strict=True)) <= max(48, sum(tall)) + 1e-9


def test_names_with_room_stay_where_they_are_wanted():
    assert spread([40, 10, 20], [2, 2, 2], 48) == [40, 10, 20]
    assert spread([], [], 48) == []


def test_names_that_would_touch_move_apart_about_their_middle():
    assert spread([20, 20, 40], [2, 2, 2], 48) == [19, 21, 40]  # DERIVED: half a height each
    assert spread([0, 0], [2, 2], 48) == [1, 3]  # DERIVED: not below the floor


@pytest.mark.parametrize("name", chart_names())
def test_no_text_leaves_the_sheet_or_touches_another(monkeypatch, name):
    figures = []
    made = module._figure
    monkeypatch.setattr(module, "_figure", lambda frame: figures.append(made(frame)) or figures[-1])
    chart(name, units="inch")  # whose numbers are the longer ones
    assert faults(figures[0]) == []


def test_a_text_that_leaves_or_touches_would_be_noticed(monkeypatch):
    figures = []
    made = module._figure
    monkeypatch.setattr(module, "_figure", lambda frame: figures.append(made(frame)) or figures[-1])
    chart("shortening")
    figures[0].text(0.98, 0.5, "too far right")
    figures[0].text(0.5, 0.0166, "on the axis' words", va="bottom")
    assert len(faults(figures[0])) >= 2


def faults(figure):
    """Texts that leave the sheet or overlap, as they are drawn."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg

    with matplotlib.rc_context({"font.family": module.FONT}):
        renderer = FigureCanvasAgg(figure).get_renderer()
        figure.draw(renderer)
        texts = [t for t in figure.findobj(matplotlib.text.Text) if t.get_visible() and t.get_text().strip()]
        boxes = [(t.get_text(), t.get_window_extent(renderer)) for t in texts]
    sheet = figure.bbox
    shown = [(text, box) for text, box in boxes if box.width and _drawn(text, box, figure)]
    assert len(shown) > 10
    out = [t for t, b in shown if b.x0 < 0 or b.y0 < 0 or b.x1 > sheet.x1 or b.y1 > sheet.y1]
    # Half a pixel of every box is air round the letters.
    touching = [
        (t, o)
        for (t, b), (o, c) in itertools.combinations(shown, 2)
        if min(b.x1, c.x1) - max(b.x0, c.x0) > 0.5 and min(b.y1, c.y1) - max(b.y0, c.y0) > 0.5
    ]
    return out + touching


def _drawn(text, box, figure):
    """Whether it is a tick's number inside the axes' range, or any other text."""
    axes = figure.axes[0]
    ticks = [label for axis in (axes.xaxis, axes.yaxis) for label in axis.get_ticklabels()]
    if text not in [t.get_text() for t in ticks]:
        return True
    inside, (x, y) = axes.bbox, ((box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2)
    return inside.x0 - 1 <= x <= inside.x1 + 1 if y < inside.y0 else inside.y0 - 1 <= y <= inside.y1 + 1


def test_a_chart_is_the_same_bytes_each_time_whatever_the_room_s_settings():
    first = chart("rake_along_lip").svg
    with matplotlib.rc_context({"lines.linewidth": 9, "font.family": "serif", "svg.fonttype": "none"}):
        assert chart("rake_along_lip").svg == first
    code = (
        "import sys; from drillpoint.drawing import chart; "
        "sys.stdout.buffer.write(chart('rake_along_lip').svg.encode('utf-8'))"
    )
    again = subprocess.run([sys.executable, "-c", code], capture_output=True, check=True).stdout.decode("utf-8")
    assert again == first


def test_letters_are_outlines_and_nothing_comes_from_outside():
    svg = chart("rake_along_lip").svg
    assert "<text" not in svg
    assert "<image" not in svg
    assert "dc:date" not in svg
    assert 'xlink:href="http' not in svg


def test_curves_differ_without_colour():
    looks = [(str(look["linestyle"]), look["marker"]) for look in module.LOOKS]
    assert len(set(looks)) == len(looks) == MOST_IN_A_FAMILY
