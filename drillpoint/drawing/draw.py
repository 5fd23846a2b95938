"""Drawing a drill: from what is given to a finished picture."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping
from functools import cache
from importlib import import_module
from types import ModuleType
from typing import Any, cast

from drillpoint.drawing.catalogue import COMPUTED, STATED
from drillpoint.drawing.computed import Computed, Drawn
from drillpoint.drawing.picture import Picture
from drillpoint.drawing.scene import Scene, scene_from_data
from drillpoint.drawing.showing import Units, describe, read_units
from drillpoint.drawing.svg import svg
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError
from drillpoint.quantities import nearest


def _generated() -> ModuleType:
    # Fetched when first needed, so that the scenes can be written anew while there are none.
    return import_module("drillpoint.generated.scenes")


def scene_names() -> tuple[str, ...]:
    """The drawings there are."""
    return (*STATED, *COMPUTED)


@cache
def scene(name: str) -> Scene:
    """The scene of this name; one that is worked out by numbers has no shapes before it is drawn.

    Raises LearnerError with the nearest name when there is none.
    """
    if name in COMPUTED:
        return computed(name).states
    if name not in STATED:
        raise LearnerError(f"there is no drawing {name!r}{nearest(name, scene_names())}")
    return scene_from_data(cast("Mapping[str, Any]", _generated().SCENES[name]))


@cache
def computed(name: str) -> Computed:
    """The computed scene of this name."""
    return cast("Computed", import_module(f"drillpoint.drawing.{name}").SCENE)


def draw(name: str, subject: Any = None, *, units: str = "mm", hide: Collection[str] = (), **givens: float) -> Picture:
    """A drawing, in true proportions.

    name: one of `scene_names()`, such as "end_view" (the point seen from the tip; the drill turns counter-clockwise) or
    "side_view" (square to the lips).
    subject: for the drawings that show one, a ground point; then nothing else need be given.
    givens: what the scene needs, in degrees, mm and mm/rev, or what the book of relations can work it out from: web or
    web_ratio; chisel_edge_angle (the obtuse angle between lip and chisel edge), lip_relief or axial_relief.
    units: "mm" or "inch", for what is written on the drawing. hide: quantities whose number is left out, for reading
    them off the drawing.
    Raises LearnerError for an unknown name, for givens that are unknown, missing or too many, and whatever the
    relations refuse.

    >>> draw("end_view", diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125).save("point.svg")
    """
    shown, written_in = scene(name), read_units(units)
    if subject is None:
        drawn = drawn_from(name, values_of(shown, givens))
    elif name in COMPUTED:
        drawn = computed(name).drawn(subject, givens)
    else:
        raise LearnerError(f"the drawing {name!r} takes givens by keyword; it shows no {type(subject).__name__}")
    hidden = frozenset((hide,) if isinstance(hide, str) else hide)
    known = (*drawn.values, *(number.name for number in drawn.scene.numbers))
    for quantity in sorted(hidden):
        if quantity not in known:
            raise LearnerError(f"hide: the drawing shows no {quantity!r}{nearest(quantity, known)}")
    return finished(drawn, written_in, hidden)


def drawn_from(name: str, values: Mapping[str, float]) -> Drawn:
    """The scene of this name for values that are known to be possible."""
    if name in COMPUTED:
        return computed(name).drawn(computed(name).make(values), values)
    return Drawn(scene(name), coordinates(scene(name), values), dict(values))


def finished(drawn: Drawn, units: Units, hide: frozenset[str] = frozenset()) -> Picture:
    """The picture of a scene that is laid out."""
    own = {number.name: drawn.coordinates[number.place] for number in drawn.scene.numbers}
    values = {**drawn.values, **own}
    alt = describe(drawn.scene.words, values, units, hide, drawn.scene.likes)
    return Picture(svg(drawn.scene, drawn.coordinates, values, units, hide, alt), alt)


def picture(name: str, values: Mapping[str, float], units: Units) -> Picture:
    """The picture of the scene of this name for values that are known to be possible."""
    return finished(drawn_from(name, values), units)


def coordinates(shown: Scene, values: Mapping[str, float]) -> list[float]:
    """Every coordinate of a stated scene, in units of its frame."""
    function = getattr(_generated(), shown.name)
    return cast("list[float]", function(math, *(values[given] for given in shown.arguments)))


def facts(**givens: float) -> dict[str, float]:
    """Every value of a plainly ground point, from the givens of `draw`; angles in degrees, lengths in mm.

    Raises LearnerError when the givens do not describe a drill.
    """
    return values_of(scene("side_view"), givens)
