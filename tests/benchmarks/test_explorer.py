"""Slider to picture: what one step of a drag costs in the browser, against re-plotting with matplotlib.

Read the ratios, not the times: `python -m pytest tests/benchmarks/test_explorer.py -s`.
"""

from __future__ import annotations

import io
import json
import statistics
import time
from pathlib import Path
from typing import TYPE_CHECKING

from drillpoint.drawing.draw import coordinates, facts, scene
from drillpoint.drawing.scene import Label, Outline, Scene
from drillpoint.explorers import standalone_page
from drillpoint.explorers.answering import answer
from drillpoint.explorers.cone import CONE
from drillpoint.explorers.lips import LIPS
from drillpoint.explorers.script import style, widget_module
from tests.jupyterlab import jupyterlab

if TYPE_CHECKING:
    from playwright.sync_api import Browser, CDPSession

    from tests.jupyterlab import Lab

__all__ = ["jupyterlab"]

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


# The same with the kernel in between: from the hand to the first picture that shows the newest drill.
MEASURE_KERNEL = """
async (steps) => {
  const range = [...document.querySelectorAll("input[type=range]")].find((e) => e.id.includes("cone_tilt"));
  const chisel = () => document.querySelector("svg .chisel").getAttribute("d");
  const picture = [];
  for (let i = 0; i < steps; i++) {
    const before = chisel();
    const start = performance.now();
    range.value = 31 + (i % 12) * 0.5;
    range.dispatchEvent(new Event("input", {bubbles: true}));
    while (chisel() === before && performance.now() - start < 2000) await new Promise((done) => setTimeout(done, 2));
    picture.push(performance.now() - start);
    await new Promise((done) => setTimeout(done, 30));
  }
  let shown = new Set();
  const look = setInterval(() => shown.add(chisel()), 2);
  for (let i = 0; i < 30; i++) {
    range.value = 31 + (i % 12) * 0.5;
    range.dispatchEvent(new Event("input", {bubbles: true}));
    await new Promise((done) => setTimeout(done, 16));
  }
  await new Promise((done) => setTimeout(done, 500));
  clearInterval(look);
  return {picture, shown: shown.size};
}
"""


def test_slider_to_picture_through_the_kernel(browser: Browser, jupyterlab: Lab) -> None:
    from playwright.sync_api import expect

    address = jupyterlab.write("cone.ipynb", 'from drillpoint.explorers import explore\nexplore("cone")')
    page = browser.new_page(viewport={"width": 1300, "height": 1200})
    page.goto(address)
    expect(page.locator(".jp-StatusBar-Widget")).to_contain_text("Idle", timeout=90_000)
    page.locator(".jp-CodeCell .cm-content").click()
    page.keyboard.press("Control+Enter")
    page.locator("svg.drillpoint-drawing .chisel").wait_for(timeout=90_000)
    page.wait_for_timeout(1000)
    found = page.evaluate(MEASURE_KERNEL, 40)
    page.close()
    has = {name: sent["id"] for name, sent in answer(CONE, {"state": CONE.start})["answers"].items()}
    kernel, sizes = [], []
    for i in range(40):
        start = time.perf_counter()
        reply = answer(CONE, {"state": {**CONE.start, "cone_tilt": 31 + (i % 12) * 0.5}, "has": has})
        kernel.append((time.perf_counter() - start) * 1000)
        sizes.append(len(json.dumps(reply)))
    print("\nslider to picture through the kernel, milliseconds: median, 95 in 100")
    print(f"  grinding, inspecting, drawing  {_spread(kernel)}")
    print(f"  from the hand to the picture   {_spread(found['picture'])}")
    print(
        f"  bytes sent for one step: {max(sizes)}; of 30 steps dragged at 60 a second, {found['shown']} pictures shown"
    )
    assert max(sizes) < 10_000


def test_memory_over_a_thousand_updates(browser: Browser, tmp_path: Path) -> None:
    file = tmp_path / "lips.html"
    file.write_text(standalone_page("lips"), encoding="utf-8")
    page = browser.new_page()
    page.goto(file.as_uri())
    page.get_by_role("slider").first.wait_for()
    session = page.context.new_cdp_session(page)
    session.send("Performance.enable")
    page.evaluate(MEASURE, 100)
    before = _counts(session)
    page.evaluate(MEASURE, 500)
    after = _counts(session)
    page.close()
    print("\nover 1,000 updates, before and after")
    for name in ("JSHeapUsedSize", "Nodes", "JSEventListeners"):
        print(f"  {name:<18} {before[name]:>12,.0f} {after[name]:>12,.0f}")


def _counts(session: CDPSession) -> dict[str, float]:
    session.send("HeapProfiler.collectGarbage")
    return {m["name"]: m["value"] for m in session.send("Performance.getMetrics")["metrics"]}


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
