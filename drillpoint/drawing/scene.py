"""What a drawing consists of, as plain data: shapes whose numbers are places in one list of coordinates.

A scene is the same for every drill; only the list of coordinates changes. The list comes from generated functions
(Python and JavaScript), so both write the same picture from the same statement.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal

from attrs import asdict, frozen

Anchor = Literal["start", "middle", "end"]


@frozen
class Outline:
    """A line or outline: SVG path letters, and the places of the coordinates between them."""

    style: str
    steps: tuple[str | int, ...]


@frozen
class Label:
    """A line of text at the coordinates in places `x` and `y`.

    parts: plain text, with {name} where a value goes. of: the quantity it shows, so that it can be hidden; `hidden` is
    then written in its stead.
    """

    style: str
    x: int
    y: int
    anchor: Anchor
    parts: str
    of: str = ""
    hidden: str = ""


@frozen
class Sentence:
    """A clause of the text twin: {name} for a value, and how the value of `judged` compares with its usual range.

    low, high: the usual range; below, within, above: what is said. of: the quantities told, so that it can be hidden.
    """

    parts: str
    of: str = ""
    hidden: str = ""
    judged: str = ""
    low: float = 0.0
    high: float = 0.0
    below: str = ""
    within: str = ""
    above: str = ""


@frozen
class Scene:
    """A drawing: its frame, the givens of its coordinates, its shapes in the order they are laid down, its words.

    pixels_per_diameter: how long the drill's diameter is drawn, in units of the frame; always the same, so that the
    drawing fits its frame. bar: where the scale bar starts.
    """

    name: str
    title: str
    width: int
    height: int
    givens: tuple[str, ...]
    pixels_per_diameter: float
    bar: tuple[float, float]
    shapes: tuple[Outline | Label, ...]
    words: tuple[Sentence, ...]

    def as_data(self) -> dict[str, Any]:
        """The scene as lists and dictionaries, for the generated editions."""
        return asdict(self)


def scene_from_data(data: Mapping[str, Any]) -> Scene:
    """The scene that `as_data` described."""
    shapes = tuple(Outline(s["style"], tuple(s["steps"])) if "steps" in s else Label(**s) for s in data["shapes"])
    words = tuple(Sentence(**w) for w in data["words"])
    givens, bar = tuple(data["givens"]), tuple(data["bar"])
    return Scene(**{**data, "givens": givens, "bar": bar, "shapes": shapes, "words": words})
