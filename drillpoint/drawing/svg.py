"""Writing a scene as SVG text. The browser writes the same elements from the same data (explorers/explorer.js)."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from pathlib import Path

from drillpoint.drawing.scene import Label, Outline, Scene
from drillpoint.drawing.showing import Units, bar_length, fill
from drillpoint.quantities import plain_number

BAR_TICK = 5.0

STYLE = (Path(__file__).parent / "drawing.css").read_text(encoding="utf-8").strip()


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
        _path(shape, coordinates) if isinstance(shape, Outline) else _label(shape, coordinates, values, units, hide)
        for shape in scene.shapes
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
            f"<style>{STYLE}</style>",
            f'<rect class="paper" width="{scene.width}" height="{scene.height}"/>',
            *shapes,
            *_bar(scene, values["diameter"], units),
            "</svg>",
        ]
    )


def number(value: float) -> str:
    """A coordinate: two decimals are a hundredth of a pixel."""
    return plain_number(value, 2)


def path_data(steps: Sequence[str | int], coordinates: Sequence[float]) -> str:
    """The text of a path's `d`."""
    return " ".join(step if isinstance(step, str) else number(coordinates[step]) for step in steps)


def _path(path: Outline, coordinates: Sequence[float]) -> str:
    return f'<path class="{path.style}" d="{path_data(path.steps, coordinates)}"/>'


def _label(
    label: Label, coordinates: Sequence[float], values: Mapping[str, float], units: Units, hide: frozenset[str]
) -> str:
    text = label.hidden if label.of in hide else fill(label.parts, values, units)
    return _text(label.style, coordinates[label.x], coordinates[label.y], label.anchor, text)


def _text(style: str, x: float, y: float, anchor: str, text: str) -> str:
    at = f'x="{number(x)}" y="{number(y)}" text-anchor="{anchor}"'
    return f'<text class="{style}" {at}>{escape(text)}</text>'


def _bar(scene: Scene, diameter: float, units: Units) -> list[str]:
    x, y = scene.bar
    length, written = bar_length(diameter, units)
    end = x + length / diameter * scene.pixels_per_diameter
    top, bottom = number(y - BAR_TICK), number(y + BAR_TICK)
    steps = f"M {number(x)} {top} L {number(x)} {bottom} M {number(x)} {number(y)} L {number(end)} {number(y)}"
    path = f'<path class="bar" d="{steps} M {number(end)} {top} L {number(end)} {bottom}"/>'
    return [path, _text("term", x, y - 10, "start", written)]
