"""Slider to picture: what one step of a drag costs in the browser, against re-plotting with matplotlib.

Read the ratios, not the times: `python -m pytest tests/benchmarks/test_explorer.py -s`.
"""

from __future__ import annotations

import io
import statistics
import time
from pathlib import Path
from typing import TYPE_CHECKING

from drillpoint.drawing.draw import coordinates, facts, scene
from drillpoint.drawing.scene import Label, Outline, Scene
from drillpoint.explorers import standalone_page
from drillpoint.explorers.lips import LIPS
from drillpoint.explorers.script import style, widget_module

if TYPE_CHECKING:
    from playwright.sync_api import Browser

STEPS = 120

# One step is timed twice: the work alone (with layout forced at the end), and from the hand to the painted picture.
MEASURE = """
async (steps) => {
  const range = [...document.querySelectorAll("input[type=range]")].at(-1);
  const chisel = document.querySelector("svg .chisel");
  const move = (i) => {
    range.value = 8 + (i % 50) * 0.5;
    range.dispatchEvent(new Event("input", {bubbles: true}));
  };
  const painted = () => new Promise((done) => requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = done;
    channel.port2.postMessage(0);
  }));
  const picture = [], work = [], seen = new Set();
  for (let i = 0; i < steps; i++) {
    const start = performance.now();
    move(i);
    await painted();
    picture.push(performance.now() - start);
    if (i < 50) seen.add(chisel.getAttribute("d"));
  }
  const waiting = window.requestAnimationFrame;
  window.requestAnimationFrame = (draw) => { draw(); return 0; };
  for (let i = 0; i < steps; i++) {
    const start = performance.now();
    move(i);
    chisel.getBoundingClientRect();
    work.push(performance.now() - start);
  }
  window.requestAnimationFrame = waiting;
  return {picture, work, seen: seen.size};
}
"""


def test_slider_to_picture(browser: Browser, tmp_path: Path) -> None:
    file = tmp_path / "lips.html"
    file.write_text(standalone_page("lips"), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    page.get_by_role("slider").first.wait_for()
    found = page.evaluate(MEASURE, STEPS)
    page.close()
    plotted = [_seconds_to_plot(8 + i * 0.5) * 1000 for i in range(12)]
    work, replot = statistics.median(found["work"]), statistics.median(plotted)
    print("\nslider to picture, milliseconds: median, 95 in 100")
    print(f"  formula and drawing alone      {_spread(found['work'])}")
    print(f"  from the hand to the picture   {_spread(found['picture'])}   (frames included)")
    print(f"  matplotlib, drawing to PNG     {_spread(plotted)}   (without sending or showing it)")
    print(f"  matplotlib / formula and drawing  {replot / work:.0f}")
    print(f"  widget script and style: {_bytes() / 1000:.0f} kB, sent once; a step sends nothing until the hand rests")
    assert found["seen"] == 50, "every step of the drag is drawn"


def _bytes() -> int:
    return sum(len(text.encode()) for text in (widget_module("lips"), style()))


def _spread(times: list[float]) -> str:
    return f"{statistics.median(times):6.2f} {statistics.quantiles(times, n=20)[-1]:6.2f}"


def _seconds_to_plot(relief: float) -> float:
    """The same two drawings, plotted anew as a slider with inline figures would."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    start = time.perf_counter()
    values = facts(**{**LIPS.start, "lip_relief": relief})
    figure = Figure(figsize=(11.6, 4.8))
    canvas = FigureCanvasAgg(figure)
    for axes, name in zip(figure.subplots(1, 2), LIPS.scenes, strict=True):
        _plot(axes, scene(name), coordinates(scene(name), values))
    canvas.print_png(io.BytesIO())
    return time.perf_counter() - start


def _plot(axes: object, shown: Scene, numbers: list[float]) -> None:
    for shape in shown.shapes:
        if isinstance(shape, Label):
            axes.text(numbers[shape.x], numbers[shape.y], shape.parts)  # type: ignore[attr-defined]
        elif isinstance(shape, Outline):
            flat = [numbers[step] for step in shape.steps if isinstance(step, int)]
            axes.plot(flat[::2], flat[1::2])  # type: ignore[attr-defined]
