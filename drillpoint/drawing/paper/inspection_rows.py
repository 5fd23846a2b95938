"""What stands on a blank inspection sheet: each reading with its place, unit, error and limit, as they are stated."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from types import MappingProxyType

from attrs import frozen

from drillpoint.drawing.showing import INCH_UNITS, Units
from drillpoint.ground.diagnosis.limits import Limits
from drillpoint.ground.diagnosis.readings import usual_errors
from drillpoint.quantities import plain_number, quantity

_PLACES = {"mm": 3, "°": 1}
_INCH_PLACES = 4

Show = Callable[[str], str]
"""From the name of a limit to its value with the unit."""


@frozen
class Reading:
    """One line to fill in.

    term, place: what is read, and where. unit: what it is written in. error: how far it may be off either way, with
    the usual tool; empty where that is for the reader to say. limit: what is let pass. of_each_lip: read twice.
    """

    term: str
    place: str
    unit: str
    error: str
    limit: str
    of_each_lip: bool = False


# A reading of the point, or that of lip 1 where each lip has one; its limit in words, {…} for the values.
_IN_ORDER: tuple[tuple[str, str], ...] = (
    ("half_angle_1", "may differ by {half_angle_difference}"),
    ("point_angle", "{point_angle} ± {point_angle_tolerance}"),
    ("lip_relief_1", "{lowest_lip_relief} to {highest_lip_relief}; may differ by {relief_difference}"),
    ("lip_length_1", "as the height allows"),
    ("lip_height_difference", "at most {lip_height_difference}"),
    ("chisel_edge_angle", "{lowest_chisel_edge_angle} to {highest_chisel_edge_angle}"),
    ("point_offset", "at most {point_offset}"),
    ("web", "at most {web_ratio_limit} of the diameter"),
    ("diameter", "as marked on the shank"),
    ("body_diameter", "within {body_difference} of the diameter"),
    ("worn_margin", "none left"),
    ("run_out", ""),
    ("hole_diameter", "at most {oversize} over the drill"),
)
# The unit of a limit is that of what it limits.
_UNIT_OF_LIMIT: Mapping[str, str] = MappingProxyType(
    {
        **dict.fromkeys(("point_angle", "point_angle_tolerance", "half_angle_difference", "relief_difference"), "°"),
        **dict.fromkeys(("lowest_lip_relief", "highest_lip_relief"), "°"),
        **dict.fromkeys(("lowest_chisel_edge_angle", "highest_chisel_edge_angle"), "°"),
        **dict.fromkeys(("lip_height_difference", "point_offset", "body_difference", "oversize"), "mm"),
        "web_ratio_limit": "",
    }
)


def rows(limits: Limits, units: Units) -> tuple[Reading, ...]:
    """Every reading in the order of inspection: what may be wrong with the angles comes before what follows from it."""
    shown = {name: _written(getattr(limits, name), unit, units) for name, unit in _UNIT_OF_LIMIT.items()}
    return tuple(_row(name, limit.format_map(shown), units) for name, limit in _IN_ORDER)


def whose(limits: Limits) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Who says so, of each limit: the source, and the terms of what it limits."""
    said: dict[str, list[str]] = {}
    for name, limit in _IN_ORDER:
        for of in re.findall(r"{(\w+)}", limit):
            said.setdefault(limits.whose(of), []).append(_term(name))
    return tuple((source, tuple(dict.fromkeys(terms))) for source, terms in said.items())


def _row(name: str, limit: str, units: Units) -> Reading:
    q = quantity(name)
    error = usual_errors().get(name)
    return Reading(
        term=_term(name),
        place=_place(q.meaning),
        unit=_unit(q.unit, units),
        error="" if error is None else f"± {_written(error, q.unit, units, figures=1)}",
        limit=limit,
        of_each_lip=name.endswith("_1"),
    )


def _term(name: str) -> str:
    """As the vocabulary calls it, for either lip: "half angle"."""
    return re.sub(r"^length of lip 1$", "lip length", quantity(name).term).removesuffix(" of lip 1")


def _place(meaning: str) -> str:
    """Where it is read: the first clause of what it means, for either lip."""
    first = re.sub(r" \([^)]*\)", "", meaning.partition(";")[0])
    return re.sub(r"\b(between|along|of) lip 1\b", r"\1 the lip", first)


def _unit(unit: str, units: Units) -> str:
    return INCH_UNITS[unit][0] if units == "inch" and unit in INCH_UNITS else unit


def _written(value: float, unit: str, units: Units, figures: int = 0) -> str:
    """With its unit. figures: how many an inch is rounded to; an error needs no more than one."""
    if unit == "mm" and units == "inch":
        name, factor = INCH_UNITS[unit]
        inches = float(f"{value / factor:.{figures}g}") if figures else value / factor
        return f"{plain_number(inches, _INCH_PLACES)} {name}"
    number = plain_number(value, _PLACES.get(unit, 2))
    return f"{number}°" if unit == "°" else f"{number} {unit}".rstrip()
