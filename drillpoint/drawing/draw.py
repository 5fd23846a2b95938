"""Drawing a drill: from the givens of a point to a finished picture."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping
from functools import cache
from importlib import import_module
from types import ModuleType
from typing import Any, cast

from drillpoint.drawing.picture import Picture
from drillpoint.drawing.scene import Scene, scene_from_data
from drillpoint.drawing.showing import Units, describe, read_units
from drillpoint.drawing.svg import svg
from drillpoint.errors import LearnerError, UnknownGiven
from drillpoint.quantities import nearest
from drillpoint.relations import (
    axial_relief,
    chisel_edge_angle,
    chisel_edge_length,
    lip_length,
    lip_relief,
    point_height,
    web_from_ratio,
    web_ratio,
)

GIVENS = ("diameter", "web", "web_ratio", "point_angle", "chisel_edge_angle", "lip_relief", "axial_relief")
_RELIEFS = ("chisel_edge_angle", "lip_relief", "axial_relief")


def _generated() -> ModuleType:
    # Fetched when first needed, so that the scenes can be written anew while there are none.
    return import_module("drillpoint.generated.scenes")


def scene_names() -> tuple[str, ...]:
    """The drawings there are."""
    return tuple(_generated().SCENES)


@cache
def scene(name: str) -> Scene:
    """The scene of this name.

    Raises LearnerError with the nearest name when there is none.
    """
    if name not in _generated().SCENES:
        raise LearnerError(f"there is no drawing {name!r}{nearest(name, scene_names())}")
    return scene_from_data(cast("Mapping[str, Any]", _generated().SCENES[name]))


def draw(name: str, *, units: str = "mm", hide: Collection[str] = (), **givens: float) -> Picture:
    """A drawing of a plainly ground point, in true proportions.

    name: "end_view" (seen from the tip; the drill turns counter-clockwise) or "side_view" (square to the lips).
    givens: diameter and point_angle; web or web_ratio; and one of chisel_edge_angle (the obtuse angle between lip and
    chisel edge), lip_relief or axial_relief. From a relief the chisel edge follows as on a plane flank. Degrees and mm.
    units: "mm" or "inch", for what is written on the drawing. hide: quantities whose number is left out, for reading
    them off the drawing.
    Raises LearnerError for an unknown name and whatever the relations refuse.

    >>> draw("end_view", diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125).save("point.svg")
    """
    shown = scene(name)
    written_in = read_units(units)
    values = facts(**givens)
    hidden = frozenset((hide,) if isinstance(hide, str) else hide)
    for quantity in sorted(hidden):
        if quantity not in values:
            raise LearnerError(f"hide: the drawings show no {quantity!r}{nearest(quantity, tuple(values))}")
    return picture(shown, values, written_in, hidden)


def picture(shown: Scene, values: Mapping[str, float], units: Units, hide: frozenset[str] = frozenset()) -> Picture:
    """The picture of a scene for values that are known to be possible."""
    alt = describe(shown.words, values, units, hide)
    return Picture(svg(shown, coordinates(shown, values), values, units, hide, alt), alt)


def coordinates(shown: Scene, values: Mapping[str, float]) -> list[float]:
    """Every coordinate of the scene, in units of its frame."""
    function = getattr(_generated(), shown.name)
    return cast("list[float]", function(math, *(values[given] for given in shown.givens)))


def facts(**givens: float) -> dict[str, float]:
    """Every value that a drawing shows, from the givens of `draw`; angles in degrees, lengths in mm.

    Raises LearnerError when the givens do not describe a drill.
    """
    for given in givens:
        if given not in GIVENS:
            raise UnknownGiven(f"a drawing takes no {given!r}{nearest(given, GIVENS)}")
    for needed in ("diameter", "point_angle"):
        if needed not in givens:
            raise LearnerError(f"a drawing needs {needed}; for example {_EXAMPLE}")
    if sum(given in givens for given in ("web", "web_ratio")) != 1:
        raise LearnerError(f"a drawing needs either web or web_ratio; for example {_EXAMPLE}")
    if sum(given in givens for given in _RELIEFS) != 1:
        raise LearnerError(
            f"a drawing needs exactly one of chisel_edge_angle, lip_relief and axial_relief; for example {_EXAMPLE}"
        )
    return _facts(givens)


_EXAMPLE = "diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125"


def _facts(givens: Mapping[str, float]) -> dict[str, float]:
    angle, diameter = givens["point_angle"], givens["diameter"]
    if "web" in givens:
        web, ratio = givens["web"], float(web_ratio(web=givens["web"], diameter=diameter))
    else:
        ratio, web = givens["web_ratio"], float(web_from_ratio(web_ratio=givens["web_ratio"], diameter=diameter))
    if web <= 0:
        raise LearnerError(f"web {web:g} mm leaves no chisel edge to draw; give a web above 0, for example 1.5")
    square, psi = _relief_and_chisel_edge(givens, angle, ratio)
    length = lip_length(diameter=diameter, point_angle=angle, web=web, chisel_edge_angle=psi)
    values = {
        "diameter": float(diameter),
        "point_angle": float(angle),
        "web": float(web),
        "web_ratio": float(ratio),
        "chisel_edge_angle": psi,
        "acute": 180 - psi,
        "half_point_angle": angle / 2,
        "axial_relief": square,
        "lip_relief": float(lip_relief(axial_relief=square, point_angle=angle, web_ratio=ratio)),
        "lip_length": float(length),
        "chisel_edge_length": float(chisel_edge_length(web=web, chisel_edge_angle=psi)),
        "point_height": float(point_height(diameter=diameter, point_angle=angle)),
    }
    # A relief comes back as it was given, not as worked back from what followed.
    return values | {name: float(givens[name]) for name in ("lip_relief", "axial_relief") if name in givens}


def _relief_and_chisel_edge(givens: Mapping[str, float], angle: float, ratio: float) -> tuple[float, float]:
    """The relief square to the lip and the obtuse chisel edge angle; either follows from the other."""
    if "chisel_edge_angle" in givens:
        psi = float(givens["chisel_edge_angle"])
        # Relations read an acute angle as its supplement; so does the drawing.
        psi = 180 - psi if psi < 90 else psi
        return float(
            cast("float", chisel_edge_angle.solve("axial_relief", chisel_edge_angle=psi, point_angle=angle))
        ), psi
    if "axial_relief" in givens:
        square = float(givens["axial_relief"])
    else:
        square = float(axial_relief(lip_relief=givens["lip_relief"], point_angle=angle, web_ratio=ratio))
    psi = float(chisel_edge_angle(point_angle=angle, axial_relief=square))
    if psi < 90:
        raise LearnerError(
            f"that relief leaves none square to the lip ({square:.1f}°), so the flank would stand above its lip "
            f"and rub; give more relief"
        )
    return square, psi
