"""The class page's charts: inline SVG that needs no colour, each with a sentence that says what it shows."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape
from typing import TYPE_CHECKING

from drillpoint.course.survey import BINS, STATES, TaskFound

if TYPE_CHECKING:
    from markupsafe import Markup

_WIDTH, _LEFT, _ROW, _BAR = 640, 72, 26, 18
_INK = "#1a1a1a"
# Full, hatched, empty, dotted, dashed outline: to be told apart in print and without colour.
_FILLS = ("#5a5a5a", "url(#hatched)", "#ffffff", "url(#dotted)", "#ffffff")
_DASHES = ("", "", "", "", ' stroke-dasharray="4 3"')
_PATTERNS = f"""<defs>
<pattern id="hatched" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="#fff"/>
<path d="M0 6L6 0" stroke="{_INK}" stroke-width="1.2"/></pattern>
<pattern id="dotted" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="#fff"/>
<circle cx="3" cy="3" r="1.2" fill="{_INK}"/></pattern>
</defs>"""


def tasks_chart(tasks: Sequence[TaskFound]) -> Markup:
    """A bar for each task: how many students were right, partly right, not right, not readable, without an answer."""
    most = max((sum(found.counts) for found in tasks), default=0) or 1
    scale = (_WIDTH - _LEFT - 8) / most
    parts, height = [_PATTERNS, _legend()], 30 + _ROW * len(tasks)
    for row, found in enumerate(tasks):
        top, left = 30 + _ROW * row, float(_LEFT)
        parts.append(_text(_LEFT - 8, top + 13, f"Task {found.number}", "end"))
        for count, fill, dash in zip(found.counts, _FILLS, _DASHES, strict=True):
            if count:
                parts.append(_box(left, top, count * scale, _BAR, fill, dash))
                if count * scale > 12:
                    parts.append(_on_white(left + count * scale / 2, top + 13, str(count)))
            left += count * scale
    return _svg(height, _tasks_in_words(tasks), parts)


def totals_chart(bins: Sequence[int]) -> Markup:
    """How many students reached which share of the points, in tenths."""
    most, high, wide = max(bins) or 1, 110, (_WIDTH - 16) / BINS
    parts = []
    for place, count in enumerate(bins):
        tall = high * count / most
        left = 8 + wide * place
        parts.append(_box(left + 4, 20 + high - tall, wide - 8, tall, "#5a5a5a", ""))
        parts.append(_text(left + wide / 2, 14 + high - tall, str(count), "middle"))
        parts.append(_text(left + wide / 2, high + 38, _span(place), "middle"))
    parts.append(f'<path d="M8 {20 + high}H{_WIDTH - 8}" stroke="{_INK}"/>')
    words = ", ".join(f"{count} of them {_span(place)}" for place, count in enumerate(bins) if count)
    return _svg(high + 46, f"Students by the share of the points they reached: {words or 'nobody yet'}.", parts)


def _span(place: int) -> str:
    step = 100 // BINS
    low, high = place * step, (place + 1) * step
    return f"{low}–{high} %" if place == BINS - 1 else f"{low}–{high - 1} %"


def _tasks_in_words(tasks: Sequence[TaskFound]) -> str:
    def words(found: TaskFound) -> str:
        told = ", ".join(f"{n} {state}" for n, state in zip(found.counts, STATES, strict=True) if n)
        return f"task {found.number}: {told or 'nobody'}"

    return f"How the class did. {'; '.join(words(found) for found in tasks)}.".replace(". task", ". Task")


def _legend() -> str:
    parts, left = [], 8.0
    for state, fill, dash in zip(STATES, _FILLS, _DASHES, strict=True):
        parts += [_box(left, 4, 16, 12, fill, dash), _text(left + 21, 14, state, "start")]
        left += 36 + 6.6 * len(state)
    return "".join(parts)


def _box(left: float, top: float, width: float, height: float, fill: str, dash: str) -> str:
    size = f'width="{max(width, 0):.1f}" height="{max(height, 0):.1f}"'
    return f'<rect x="{left:.1f}" y="{top:.1f}" {size} fill="{fill}" stroke="{_INK}"{dash}/>'


def _on_white(x: float, y: float, text: str) -> str:
    width = 8 * len(text) + 4
    back = f'<rect x="{x - width / 2:.1f}" y="{y - 11:.1f}" width="{width}" height="14" fill="#fff"/>'
    return back + _text(x, y, text, "middle")


def _text(x: float, y: float, text: str, anchor: str) -> str:
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" font-size="12" fill="{_INK}">{escape(text)}</text>'


def _svg(height: float, words: str, parts: Sequence[str]) -> Markup:
    from markupsafe import Markup

    size = f'viewBox="0 0 {_WIDTH} {height:.0f}" xmlns="http://www.w3.org/2000/svg"'
    label = f'role="img" aria-label="{escape(words, quote=True)}"'
    return Markup(f"<svg {size} {label}>{''.join(parts)}</svg>")  # noqa: S704 - made here, from numbers and own words
