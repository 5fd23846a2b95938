"""A chart as SVG, through matplotlib: no pyplot, no colour needed, the same bytes each time.

The sheet is 86 mm wide, one column of a page, with letters of 2.5 mm; on a screen it is shown larger. Letters are drawn
as outlines, so that they are the same on a computer without the fonts. Line types tell the curves apart, and each has
its name at its end.
"""

from __future__ import annotations

import io
import textwrap
from collections.abc import Iterator, Sequence
from html import escape
from itertools import pairwise
from typing import Any

import matplotlib
from attrs import frozen
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.textpath import TextPath
from matplotlib.ticker import FuncFormatter, MaxNLocator

from drillpoint.drawing.charts.frame import Frame, unit_and_factor
from drillpoint.quantities import Quantity, capital, plain_number

MM_PER_INCH = 25.4
POINTS_PER_MM = 72 / MM_PER_INCH
WIDTH = 86.0  # mm
PLOT_HEIGHT = 48.0
LEFT, BOTTOM, GAP = 10.5, 10.5, 4.0
SCREEN_WIDTH = 640  # pixels

FONT = "DejaVu Sans"  # comes with matplotlib
TERM, SMALL = 7.4, 6.8  # points
MARKS = 5
LINE = 1.28  # of a letter's height
LABEL_LETTERS = 15
TITLE_LETTERS, FIXED_LETTERS, AXIS_LETTERS = 52, 60, 52

INK, GRID, BAND = "#1c2733", "#dfe4e9", "#8d99a6"
LOOKS: tuple[dict[str, Any], ...] = (
    {"color": INK, "linestyle": "-", "marker": "o"},
    {"color": "#b5331b", "linestyle": (0, (5, 1.8)), "marker": "s"},
    {"color": "#1b5fa8", "linestyle": (0, (7, 1.6, 1.2, 1.6)), "marker": "^"},
    {"color": "#4f5d12", "linestyle": (0, (1.2, 1.4)), "marker": "D"},
    {"color": "#6b3fa0", "linestyle": (0, (7, 1.4, 1.2, 1.4, 1.2, 1.4)), "marker": "v"},
    {"color": "#4a5560", "linestyle": (0, (2.6, 1.2)), "marker": "X"},
)
HATCHES = ("//////", "\\\\\\\\\\\\", "xxxx")

# Whatever a room's own settings of matplotlib are, charts come from its defaults.
_STYLE = {key: value for key, value in matplotlib.rcParamsDefault.items() if "backend" not in key} | {
    "svg.fonttype": "path",
    "svg.hashsalt": "drillpoint",
    "font.family": FONT,
    "font.size": TERM,
    "hatch.linewidth": 0.35,
    "axes.linewidth": 0.6,
    "axes.edgecolor": INK,
    "text.color": INK,
}


@frozen
class _Name:
    """A name in the column beside the plot: its lines, the height it should stand at, and where its curve ends."""

    lines: tuple[str, ...]
    wanted: float
    end: tuple[float, float] | None
    color: str

    @property
    def tall(self) -> float:
        """Its height in mm."""
        return len(self.lines) * TERM * LINE / POINTS_PER_MM


def plot(frame: Frame, description: str) -> str:
    """The chart as one SVG element with title and description."""
    with matplotlib.rc_context(_STYLE):
        figure = _figure(frame)
        written = io.StringIO()
        figure.savefig(written, format="svg", metadata=dict.fromkeys(("Creator", "Date", "Format", "Type")))
    return _as_picture(written.getvalue(), frame, figure, description)


def _figure(frame: Frame) -> Figure:
    x_unit, x_factor = unit_and_factor(frame.against, frame.units)
    y_unit, y_factor = unit_and_factor(frame.result, frame.units)
    low, high = _limits(frame, y_factor)
    names = list(_names(frame, x_factor, y_factor, low, high))
    heading = _wrapped(frame.family)
    column = max((_width(line, TERM) for lines in (heading, *(n.lines for n in names)) for line in lines), default=0)
    title = textwrap.wrap(_with_unit(frame.title, y_unit), TITLE_LETTERS)
    fixed = textwrap.wrap(f"for {frame.fixed}", FIXED_LETTERS) if frame.fixed else []
    head = (len(title) * TERM + len(fixed) * SMALL) * LINE / POINTS_PER_MM + 3.2
    head += len(heading) * SMALL * LINE / POINTS_PER_MM
    plot_width = WIDTH - LEFT - GAP - column - 1.5
    height = BOTTOM + PLOT_HEIGHT + head
    figure = Figure(figsize=(WIDTH / MM_PER_INCH, height / MM_PER_INCH), facecolor="white")
    axes = figure.add_axes((LEFT / WIDTH, BOTTOM / height, plot_width / WIDTH, PLOT_HEIGHT / height))
    axes.set_xlim(frame.span.low / x_factor, frame.span.high / x_factor)
    axes.set_ylim(low, high)
    _ruled(axes, frame)
    _bands(axes, frame, y_factor)
    _curves(axes, frame, x_factor, y_factor)
    _write_names(axes, names, plot_width, low, high)
    _write_head(figure, title, fixed, height)
    right = _with_unit(frame.against.term, x_unit)
    figure.text((LEFT + plot_width / 2) / WIDTH, 1.6 / height, right, ha="center", va="bottom", size=TERM)
    if frame.family:
        at = (LEFT + plot_width + GAP) / WIDTH
        figure.text(
            at, (BOTTOM + PLOT_HEIGHT + 1.6) / height, "\n".join(heading), size=SMALL, va="bottom", linespacing=1.15
        )
    return figure


def _limits(frame: Frame, factor: float) -> tuple[float, float]:
    """The lowest and highest value of the axis: what the chart reaches, with some air."""
    low, high = frame.view.low / factor, frame.view.high / factor
    air = 0.06 * ((high - low) or abs(high) or 1.0)
    below = 0.0 if 0 <= low < air else low - air
    return below, high + air


def _ruled(axes: Axes, frame: Frame) -> None:
    axes.grid(visible=True, color=GRID, linewidth=0.5)
    axes.set_axisbelow(True)
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    for axis, quantity in ((axes.xaxis, frame.against), (axes.yaxis, frame.result)):
        axis.set_major_locator(MaxNLocator(6, steps=[1, 2, 2.5, 5, 10]))
        axis.set_major_formatter(FuncFormatter(_ticked(quantity)))
    axes.tick_params(labelsize=SMALL, width=0.6, length=2.4, pad=2, color=INK, labelcolor=INK)
    if frame.passes_zero:
        axes.axhline(0, color=INK, linewidth=0.8)


def _ticked(quantity: Quantity) -> Any:
    sign = "°" if quantity.is_angle else ""
    return lambda value, _: plain_number(value, 6).replace("-", "−") + sign


def _bands(axes: Axes, frame: Frame, factor: float) -> None:
    for band, hatch in zip(frame.bands, HATCHES * len(frame.bands), strict=False):
        edges = (band.low / factor, band.high / factor)
        axes.axhspan(*edges, facecolor="none", edgecolor=BAND, hatch=hatch, linewidth=0, zorder=0.4)
        for edge in edges:
            axes.axhline(edge, color=BAND, linewidth=0.6, zorder=0.6)


def _curves(axes: Axes, frame: Frame, x_factor: float, y_factor: float) -> None:
    for i, (curve, look) in enumerate(zip(frame.curves, LOOKS, strict=False)):
        x, y = [v / x_factor for v in curve.x], [v / y_factor for v in curve.y]
        marked = _marked(x, i / len(LOOKS)) if len(frame.curves) > 1 else []
        axes.plot(x, y, linewidth=1.25, markersize=3, markeredgewidth=0, markevery=marked, **look)


def _marked(x: Sequence[float], shift: float) -> list[int]:
    """Where a curve carries its marks: evenly along it, and beside those of the other curves."""
    wide = x[-1] - x[0]
    wanted = (x[0] + wide * (i + 0.25 + shift / 2) / MARKS for i in range(MARKS))
    return [min(range(len(x)), key=[abs(here - place) for here in x].__getitem__) for place in wanted]


def _names(frame: Frame, x_factor: float, y_factor: float, low: float, high: float) -> Iterator[_Name]:
    scale = PLOT_HEIGHT / (high - low)
    if len(frame.curves) > 1 or frame.family:
        for curve, look in zip(frame.curves, LOOKS, strict=False):
            end = (curve.x[-1] / x_factor, curve.y[-1] / y_factor)
            level = min(max(end[1], low), high)
            yield _Name(_wrapped(curve.label), (level - low) * scale, (end[0], level), look["color"])
    for band in frame.bands:
        middle = (max(band.low / y_factor, low) + min(band.high / y_factor, high)) / 2
        words = f"{band.words} {_together(f'{_bare(frame.show_y(band.low))} to {frame.show_y(band.high)}')}"
        if band.low / y_factor < high and band.high / y_factor > low:
            yield _Name(_wrapped(words), (middle - low) * scale, None, "#55616d")


def _bare(shown: str) -> str:
    """A value without its unit, unless that is the degree."""
    return shown.partition(" ")[0]


def _together(words: str) -> str:
    """The words for a label, with a true minus sign, to be kept on one line."""
    return words.replace(" ", "\N{NO-BREAK SPACE}").replace("-", "−")


def _wrapped(words: str) -> tuple[str, ...]:
    return tuple(textwrap.wrap(words, LABEL_LETTERS, break_long_words=False))


def _width(text: str, size: float) -> float:
    """The width of a line of text in mm."""
    return float(TextPath((0, 0), text, size=size, prop=FontProperties(family=FONT)).get_extents().x1) / POINTS_PER_MM


def spread(wanted: Sequence[float], tall: Sequence[float], room: float) -> list[float]:
    """Heights as near as possible to those wanted, at which things this tall do not overlap, within the room.

    The order of `wanted` is kept. Things that would touch move apart about their common middle. When they are taller
    than the room together they run over its top.
    """
    order = sorted(range(len(wanted)), key=lambda i: (wanted[i], i))
    if not order:
        return []
    above = [0.0]
    for lower, upper in pairwise(order):
        above.append(above[-1] + (tall[lower] + tall[upper]) / 2)
    # Packed as tightly as may be, all want to stand where the lowest does; those that want to pass another stay level.
    groups: list[tuple[float, int]] = []
    for i, offset in zip(order, above, strict=True):
        total, count = wanted[i] - offset, 1
        while groups and groups[-1][0] / groups[-1][1] >= total / count:
            before = groups.pop()
            total, count = total + before[0], count + before[1]
        groups.append((total, count))
    lowest = tall[order[0]] / 2
    highest = max(lowest, room - tall[order[-1]] / 2 - above[-1])
    base = [min(max(total / count, lowest), highest) for total, count in groups for _ in range(count)]
    placed = {i: at + offset for i, at, offset in zip(order, base, above, strict=True)}
    return [placed[i] for i in range(len(wanted))]


def _write_names(axes: Axes, names: Sequence[_Name], plot_width: float, low: float, high: float) -> None:
    heights = spread([name.wanted for name in names], [name.tall for name in names], PLOT_HEIGHT)
    for name, height in zip(names, heights, strict=True):
        at = (1 + GAP / plot_width, height / PLOT_HEIGHT)
        if name.end is not None:
            right = axes.get_xlim()[1]
            level = (name.end[1] - low) / (high - low)
            reach = (name.end[0] - axes.get_xlim()[0]) / (right - axes.get_xlim()[0])
            knee = [reach, max(reach, 1 + 0.6 / plot_width), at[0] - 0.8 / plot_width]
            axes.plot(
                knee, [level, level, at[1]], color=name.color, linewidth=0.45, clip_on=False, transform=axes.transAxes
            )
        text = "\n".join(name.lines)
        axes.text(
            *at, text, transform=axes.transAxes, size=TERM, color=name.color, va="center", ha="left", linespacing=1.15
        )


def _write_head(figure: Figure, title: Sequence[str], fixed: Sequence[str], height: float) -> None:
    top = height - 1.2
    for line, size, weight in [*((t, TERM, "bold") for t in title), *((f, SMALL, "normal") for f in fixed)]:
        figure.text(1.2 / WIDTH, top / height, line, size=size, weight=weight, va="top", ha="left")
        top -= size * LINE / POINTS_PER_MM


def _with_unit(term: str, unit: str) -> str:
    return capital(f"{term}, {unit}" if unit else term)


def _as_picture(written: str, frame: Frame, figure: Figure, description: str) -> str:
    inside = written[written.index(">", written.index("<svg")) + 1 :].strip()
    wide, tall = (side * 72 for side in figure.get_size_inches())
    title = f"{frame.title[:1].upper()}{frame.title[1:]} against {frame.against.term}"
    opening = (
        '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" class="drillpoint-chart" '
        f'role="img" viewBox="0 0 {plain_number(wide, 4)} {plain_number(tall, 4)}" width="{SCREEN_WIDTH}" '
        f'height="{round(SCREEN_WIDTH * tall / wide)}" aria-label="{escape(description)}">'
    )
    return f"{opening}\n<title>{escape(title)}</title>\n<desc>{escape(description)}</desc>\n{inside}"
