"""What a drawing consists of, as plain data: shapes whose numbers are places in one list of coordinates.

A scene is the same for every drill; only the list of coordinates changes. The list comes from generated functions
(Python and JavaScript), so both write the same picture from the same statement; or, where no closed form gives it, from
a function that works the numbers out (see `computed`).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any, Literal

from attrs import asdict, field, fields, frozen

Anchor = Literal["start", "middle", "end"]
Working = str | tuple[str, str]
"""A relation by its name, or (relation, unknown): the relation solved for another of its quantities."""


@frozen
class Outline:
    """A line or outline: SVG path letters, and the places of the coordinates between them.

    when: the place of a number that must be above 0 for the shape to be drawn; -1 for always.
    """

    style: str
    steps: tuple[str | int, ...]
    when: int = -1


@frozen
class Label:
    """A line of text at the coordinates in places `x` and `y`.

    parts: plain text, with {name} where a value goes. of: the quantity it shows, so that it can be hidden; `hidden` is
    then written in its stead. when: as for an outline.
    """

    style: str
    x: int
    y: int
    anchor: Anchor
    parts: str
    of: str = ""
    hidden: str = ""
    when: int = -1


@frozen
class Number:
    """A number that only this scene shows, in one of the places of its coordinates; written `like` that quantity."""

    name: str
    place: int
    like: str


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
class Range:
    """How far a given may go in a drawing without anything leaving its place, and a usual value to begin with.

    share_of: all three are shares of that other given.
    """

    name: str
    low: float
    high: float
    usual: float
    share_of: str = ""


@frozen
class Allowed:
    """What a value must be for the drawing to make sense, and the sentence for when it is not."""

    name: str
    says: str
    low: float | None = None
    high: float | None = None

    def holds(self, value: float) -> bool:
        """Whether the value is within."""
        return (self.low is None or value >= self.low) and (self.high is None or value <= self.high)


@frozen
class Bar:
    """The scale bar: where it starts in the frame, how long it may get, and the place of the pixels for one mm."""

    x: float
    y: float
    longest: float
    scale: int


def _workings(items: Iterable[Working]) -> tuple[Working, ...]:
    return tuple(item if isinstance(item, str) else (item[0], item[1]) for item in items)


def _several(items: Iterable[Any]) -> tuple[Any, ...]:
    return tuple(items)


@frozen(kw_only=True)
class Scene:
    """A drawing: its frame, what it needs, its shapes in the order they are laid down, its words.

    needs: the quantities a drill must have to be drawn; each is given, or worked out by relations of the book that
    stand in, or by those in `also`, which hold for what is drawn here if not everywhere. defaults: needs that may be
    left out. relations: worked out from there, in this order, so that every value shown is known; one that was given
    stays as given. allowed: what values may be. ranges: the givens between whose limits labels were proved to keep
    apart. arguments: the quantities its coordinates depend on. numbers: what only this scene shows.
    """

    name: str
    title: str
    width: int
    height: int
    needs: tuple[str, ...] = field(converter=_several)
    relations: tuple[Working, ...] = field(default=(), converter=_workings)
    also: tuple[Working, ...] = field(default=(), converter=_workings)
    defaults: Mapping[str, float] = field(factory=dict)
    allowed: tuple[Allowed, ...] = field(default=(), converter=_several)
    ranges: tuple[Range, ...] = field(default=(), converter=_several)
    arguments: tuple[str, ...] = field(default=(), converter=_several)
    bar: Bar | None = None
    shapes: tuple[Outline | Label, ...] = field(default=(), converter=_several)
    words: tuple[Sentence, ...] = field(default=(), converter=_several)
    numbers: tuple[Number, ...] = field(default=(), converter=_several)

    @property
    def likes(self) -> dict[str, str]:
        """For each number of the scene's own, the quantity it is written like."""
        return {number.name: number.like for number in self.numbers}

    @property
    def usual(self) -> dict[str, float]:
        """A usual drill, by the givens of `ranges`."""
        own = {r.name: r.usual for r in self.ranges}
        return {r.name: r.usual * (own[r.share_of] if r.share_of else 1) for r in self.ranges}

    def as_data(self) -> dict[str, Any]:
        """The scene as lists and dictionaries, for the generated editions; what is as by default is left out."""
        return asdict(self, filter=lambda attribute, value: value != attribute.default)

    def for_browser(self) -> dict[str, Any]:
        """What the browser reads of the scene; what is needed for it is worked out by Python only."""
        unread = ("needs", "relations", "also", "defaults", "ranges", "arguments")
        return {name: value for name, value in self.as_data().items() if name not in unread}


def scene_from_data(data: Mapping[str, Any]) -> Scene:
    """The scene that `as_data` described."""
    kinds: dict[str, type[Any]] = {"allowed": Allowed, "ranges": Range, "words": Sentence, "numbers": Number}
    lists = {name: [kind(**item) for item in data.get(name, ())] for name, kind in kinds.items()}
    shapes = [_shape(shape) for shape in data["shapes"]]
    bar = Bar(**data["bar"]) if "bar" in data else None
    known = {attribute.name for attribute in fields(Scene)}
    plain = {name: value for name, value in data.items() if name in known}
    return Scene(**{**plain, **lists, "shapes": shapes, "bar": bar})


def _shape(data: Mapping[str, Any]) -> Outline | Label:
    return Outline(**{**data, "steps": tuple(data["steps"])}) if "steps" in data else Label(**data)
