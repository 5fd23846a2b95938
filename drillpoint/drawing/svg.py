"""Writing a scene as SVG text. The browser writes the same elements (explorers/browser/drawing.js)."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cache
from html import escape
from pathlib import Path

from drillpoint.drawing.scene import Label, Outline, Scene
from drillpoint.drawing.showing import Units, bar_length, fill
from drillpoint.quantities import plain_number

BAR_TICK = 5.0

STYLE = (Path(__file__).parent / "drawing.css").read_text(encoding="utf-8").strip()
_RULE = re.compile(r"([^{}]+){([^{}]+)}")
_FORCED = "@media (forced-colors: active) {"
_EVERYWHERE = frozenset({"drillpoint-drawing", "bar", "paper", "term"})


SECTIONS = {"section": 45, "section_other": -45}
"""The styles of cut metal, and how their hatching is turned."""


def svg(
    scene: Scene,
    coordinates: Sequence[float],
    values: Mapping[str, float],
    units: Units,
    hide: frozenset[str],
    description: str,
) -> str:
    """The drawing as one SVG element with title, description and its own style."""
    shapes = [
        _path(scene, shape, coordinates)
        if isinstance(shape, Outline)
        else _label(scene, shape, coordinates, values, units, hide)
        for shape in scene.shapes
        if shape.when < 0 or coordinates[shape.when] > 0
    ]
    frame = (
        'xmlns="http://www.w3.org/2000/svg" class="drillpoint-drawing" role="img" '
        f'viewBox="0 0 {scene.width} {scene.height}" width="{scene.width}" height="{scene.height}" '
        f'aria-label="{escape(description)}"'
    )
    return "\n".join(
        [
            f"<svg {frame}>",
            f"<title>{escape(scene.title)}</title>",
            f"<desc>{escape(description)}</desc>",
            f"<style>{style_for(frozenset(shape.style for shape in scene.shapes))}</style>",
            *_hatching(scene),
            f'<rect class="paper" width="{scene.width}" height="{scene.height}"/>',
            *shapes,
            *_bar(scene, coordinates, units),
            "</svg>",
        ]
    )


@cache
def style_for(classes: frozenset[str]) -> str:
    """The rules of the style sheet that concern these classes, without its remarks."""
    plain, forced = re.sub(r"/\*.*?\*/", "", STYLE, flags=re.S).rsplit("}", 1)[0].split(_FORCED)
    wanted = classes | _EVERYWHERE | ({"hatching"} if classes & SECTIONS.keys() else set())
    return "\n".join([*_rules(plain, wanted), _FORCED, *_rules(forced, wanted), "}"])


def _rules(text: str, wanted: frozenset[str]) -> list[str]:
    return [
        f"{selectors.strip()} {{{body}}}"
        for selectors, body in _RULE.findall(text)
        if any(set(re.findall(r"\.([\w-]+)", one)) <= wanted for one in selectors.split(","))
    ]


def number(value: float) -> str:
    """A coordinate: two decimals are a hundredth of a pixel."""
    return plain_number(value, 2)


def path_data(steps: Sequence[str | int], coordinates: Sequence[float]) -> str:
    """The text of a path's `d`."""
    return " ".join(step if isinstance(step, str) else number(coordinates[step]) for step in steps)


def _hatching(scene: Scene) -> list[str]:
    """A pattern for each kind of cut metal in the scene."""
    return [
        f'<defs><pattern id="{_pattern(scene, style)}" width="7" height="7" patternUnits="userSpaceOnUse" '
        f'patternTransform="rotate({turn})"><path class="hatching" d="M 0 0 L 0 7"/></pattern></defs>'
        for style, turn in SECTIONS.items()
        if any(shape.style == style for shape in scene.shapes)
    ]


def _pattern(scene: Scene, style: str) -> str:
    return f"drillpoint-{scene.name}-{style}"


def _path(scene: Scene, path: Outline, coordinates: Sequence[float]) -> str:
    # Only a style of its own can name the pattern: a rule of the style sheet would hold for every drawing of a page.
    fill_in = f' style="fill: url(#{_pattern(scene, path.style)})"' if path.style in SECTIONS else ""
    return f'<path class="{path.style}"{fill_in} d="{path_data(path.steps, coordinates)}"/>'


def _label(
    scene: Scene,
    label: Label,
    coordinates: Sequence[float],
    values: Mapping[str, float],
    units: Units,
    hide: frozenset[str],
) -> str:
    text = label.hidden if label.of in hide else fill(label.parts, values, units, scene.likes)
    return _text(label.style, coordinates[label.x], coordinates[label.y], label.anchor, text)


def _text(style: str, x: float, y: float, anchor: str, text: str) -> str:
    at = f'x="{number(x)}" y="{number(y)}" text-anchor="{anchor}"'
    return f'<text class="{style}" {at}>{escape(text)}</text>'


def _bar(scene: Scene, coordinates: Sequence[float], units: Units) -> list[str]:
    if scene.bar is None:
        return []
    x, y, scale = scene.bar.x, scene.bar.y, coordinates[scene.bar.scale]
    length, written = bar_length(scene.bar.longest / scale, units)
    end = x + length * scale
    top, bottom = number(y - BAR_TICK), number(y + BAR_TICK)
    steps = f"M {number(x)} {top} L {number(x)} {bottom} M {number(x)} {number(y)} L {number(end)} {number(y)}"
    path = f'<path class="bar" d="{steps} M {number(end)} {top} L {number(end)} {bottom}"/>'
    return [path, _text("term", x, y - 10, "start", written)]
