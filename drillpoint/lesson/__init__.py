"""What a lesson needs, in one line: `from drillpoint.lesson import *`.

draw: a drawing. chart: a relation as curves. explore: a drawing with sliders. look: a ground point as a solid to turn.
derive: a relation step by step from the drawing. work_out: a relation with the numbers put in. tabulate: a relation for
several values of one given. how_sure: what reading errors make of a result. ask: a question to try. judge: check an
answer in words. find: the relations that speak of some words. governing_stock: which of several faults decides.
look_up: published figures, each with its source. point_paper: a sheet to print at true scale. Flute, the flanks, Notch
and GroundPoint: to grind a point in numbers; conical_setup, plane_setup, nearest_setup, family_of_setups, effects and
leeway: the wheel's setting for it; compare and chart_points: several points beside each other; compare_thinnings: one
point thinned in several ways; Readings, Limits and find_faults: what is wrong with one; inspection_sheet: a blank sheet
to print; plan_regrind and Shop: what to do with a used drill. And every relation of the book under its own name, such
as `lip_length`.

Each name is fetched from its own room when it is first asked for, so that importing this module alone loads nothing.
"""

from __future__ import annotations

from importlib import import_module
from typing import Any

_OF_THE_GROUND = (
    *("ConicalFlank", "FacetedFlank", "Flute", "GroundPoint", "Limits", "Notch", "PlaneFlank", "Readings"),
    *("conical_setup", "effects", "family_of_setups", "find_faults", "leeway", "nearest_setup", "plane_setup"),
)
_HOMES = {
    **dict.fromkeys(_OF_THE_GROUND, "drillpoint.ground"),
    "ask": "drillpoint.course",
    "chart": "drillpoint.drawing",
    "chart_points": "drillpoint.drawing.charts.ground_points",
    "compare": "drillpoint.lesson.comparing",
    "compare_thinnings": "drillpoint.lesson.thinnings",
    "derive": "drillpoint.lesson.blackboard",
    "draw": "drillpoint.drawing",
    "explore": "drillpoint.explorers",
    "find": "drillpoint.relations",
    "governing_stock": "drillpoint.relations",
    "how_sure": "drillpoint.lesson.sureness",
    "inspection_sheet": "drillpoint.drawing",
    "judge": "drillpoint.course",
    "look": "drillpoint.explorers",
    "look_up": "drillpoint.handbook",
    "plan_regrind": "drillpoint.planning",
    "point_paper": "drillpoint.drawing",
    "Shop": "drillpoint.planning",
    "tabulate": "drillpoint.lesson.blackboard",
    "work_out": "drillpoint.lesson.blackboard",
}
# In these a size may be typed with its unit: diameter="3/8 in".
_TAKE_SIZES = frozenset(
    {
        "chart",
        "draw",
        "explore",
        "how_sure",
        "look",
        "plan_regrind",
        "plane_setup",
        "conical_setup",
        "tabulate",
        "work_out",
    }
)


def __getattr__(name: str) -> Any:
    if name in _HOMES:
        found = getattr(import_module(_HOMES[name]), name)
        return import_module("drillpoint.lesson.sizes").taking_sizes(found) if name in _TAKE_SIZES else found
    if name.startswith("__") and name != "__all__":
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    book = import_module("drillpoint.relations").BOOK
    if name == "__all__":
        return sorted([*_HOMES, *book])
    if name not in book:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return book[name]


def __dir__() -> list[str]:
    return sorted({*globals(), *__getattr__("__all__")})
