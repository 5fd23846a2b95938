"""What a lesson needs, in one line: `from drillpoint.lesson import *`.

draw: a drawing. explore: a drawing with sliders. derive: a relation step by step from the drawing. work_out: a relation
with the numbers put in. tabulate: a relation for several values of one given. ask: a question to try; judge: check an
answer in words. find: the relations that speak of some words. And every relation of the book under its own name, such as `lip_length`.

Each name is fetched from its own room when it is first asked for, so that importing this module alone loads nothing.
"""

from __future__ import annotations

from importlib import import_module
from typing import Any

_HOMES = {
    "ask": "drillpoint.course",
    "axial_relief": "drillpoint.relations",
    "chisel_edge_angle": "drillpoint.relations",
    "chisel_edge_length": "drillpoint.relations",
    "derive": "drillpoint.lesson.blackboard",
    "draw": "drillpoint.drawing",
    "explore": "drillpoint.explorers",
    "find": "drillpoint.relations",
    "heel_clearance": "drillpoint.relations",
    "judge": "drillpoint.course",
    "lip_length": "drillpoint.relations",
    "lip_relief": "drillpoint.relations",
    "point_height": "drillpoint.relations",
    "relief_at_radius": "drillpoint.relations",
    "tabulate": "drillpoint.lesson.blackboard",
    "web_ratio": "drillpoint.relations",
    "work_out": "drillpoint.lesson.blackboard",
}

__all__ = sorted(_HOMES)


def __getattr__(name: str) -> Any:
    if name not in _HOMES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(_HOMES[name]), name)


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
