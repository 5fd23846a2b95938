"""What an inspector reads on the point that the numbers of a task grind: for requirements, for texts and for choices.

The names of the numbers say which point is meant. With half angle, tilt, apex distance and skew of a cone the flanks
are conical; with a secondary relief they have two facets; otherwise a point angle and a relief make them planes. Both
sides are ground alike.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from drillpoint.course.exercise import Measure
from drillpoint.course.formula import read_formula
from drillpoint.errors import DrillpointError, InstructorError, LearnerError
from drillpoint.quantities import QUANTITIES

if TYPE_CHECKING:
    from drillpoint.ground import GroundPoint
    from drillpoint.ground.inspection import Inspection

CONE = ("cone_half_angle", "cone_tilt", "apex_distance", "skew")
_RELIEF, _FACETS = ("lip_relief", "axial_relief"), ("secondary_relief", "primary_width")
_WEB, _TURN, _NOTCH = ("web", "web_ratio"), ("flank_turn",), ("thinned_chisel_length", "thinning_angle")
WANTED = ("point_angle", "lip_relief", "chisel_edge_angle", "cone_half_angle")
"""What a set-up of a cone is worked out from, beside the drill."""

_SEEN = (
    *("point_angle", "web", "lip_length", "lip_relief", "heel_clearance", "chisel_edge_angle"),
    *("chisel_edge_angle_at_axis", "chisel_edge_length", "chisel_edge_rise", "chisel_edge_rake", "tip_height"),
)
_ALONG = ("relief_at_radius", "normal_rake", "lip_inclination", "working_relief")
_THINNED = ("thinned_lip_length", "untouched_lip_length", "untouched_lip_share", "thinned_web")
READINGS = (*_SEEN, "lip_bow", *_ALONG, *_THINNED)
"""What can be read. Those along the lip need a radius, and the working relief a feed; the last ones need a notch."""
NEVER = 360.0
"""The heel clearance, in degrees, of a flank that never comes up to the height of the corner again."""

_READ_KEPT, _POINTS_KEPT, _OF_DIAMETER = 8192, 32, 10.0
Sizes = tuple[tuple[str, float], ...]


def taken(measure: Measure, names: Collection[str]) -> tuple[str, ...]:
    """Which of these numbers the point is ground from, and the reading taken with.

    Raises InstructorError when they make no point, or when there is nothing of that kind to read on it.
    """
    known = {*names, *measure.changed}
    found = [_one(known, ("diameter",), "a diameter"), _one(known, _WEB, "a web")]
    found += [name for name in ("helix_angle", *_TURN) if name in known]
    if set(CONE) <= known:
        found += [*CONE, *(name for name in ("point_angle",) if name in known)]
    else:
        found += [_one(known, ("point_angle",), "a point angle"), _one(known, _RELIEF, "a relief, or a whole cone")]
        found += [name for name in _FACETS if name in known]
    if set(_NOTCH) <= known:
        found += _NOTCH
    elif measure.reading in _THINNED:
        raise InstructorError(f"{measure.reading} is read on a thinned point: it needs {' and '.join(_NOTCH)}")
    if measure.reading in _ALONG and not measure.radius:
        found.append(_one(known, ("radius",), f"a radius: {measure.reading} is read along the lip"))
    if measure.reading == "working_relief":
        found.append(_one(known, ("feed",), "a feed"))
    return tuple(found)


def _one(known: Collection[str], choices: tuple[str, ...], what: str) -> str:
    for name in choices:
        if name in known:
            return name
    raise InstructorError(f"a point to be measured needs {what}; {' or '.join(choices)} is missing")


def measured(measure: Measure, values: Mapping[str, float], own: Collection[str]) -> float:
    """What is read on the point, in the unit of its quantity.

    values: what is given and entered, by name. own: those of it that the point is ground from; the others are there for
    formulas only. Raises LearnerError when no wheel grinds such a point.
    """
    changed = {name: read_formula(text, tuple(values)).at(values) for name, text in measure.changed.items()}
    now = {**values, **changed}
    used = {name: now[name] for name in taken(measure, own)}
    if measure.radius:
        used["radius"] = read_formula(measure.radius, tuple(now)).at(now)
    read = _read(measure.reading, tuple(sorted(used.items())))
    if isinstance(read, str):
        raise LearnerError(read)
    return read


def shown(reading: str, value: float, more: int = 0) -> str:
    """A reading with its unit, with more decimals than usual if asked; "never" for a heel that never comes up."""
    if reading == "heel_clearance" and value >= NEVER:
        return "never"
    quantity = QUANTITIES[reading]
    return quantity.show(value, quantity.decimals + more)


@lru_cache(maxsize=_READ_KEPT)
def _read(reading: str, sizes: Sizes) -> float | str:
    """The reading, or why there is none. Kept, since many of a class type the same."""
    import numpy as np

    used = dict(sizes)
    radius, feed = used.pop("radius", 0.0), used.pop("feed", 0.0)
    try:
        seen = _inspected(tuple(used.items()))
        if reading in _ALONG:
            along = seen.lip_at(1, radii=np.array([radius]))
            return _along(reading, along, radius, feed)
    except (DrillpointError, ArithmeticError) as error:
        return str(error).splitlines()[0]
    if reading in _THINNED:
        return _of_the_notch(reading, seen)
    value = seen.lip_bow_1 if reading == "lip_bow" else getattr(seen, reading)
    return NEVER if value is None else float(value)


def _along(reading: str, along: Any, radius: float, feed: float) -> float:
    from drillpoint.relations import feed_relief_loss

    if reading == "normal_rake":
        return float(along.normal_rake[0])
    if reading == "lip_inclination":
        return float(along.inclination[0])
    lost = float(feed_relief_loss(feed=feed, radius=radius)) if reading == "working_relief" else 0.0
    return float(along.relief[0]) - lost


def _of_the_notch(reading: str, seen: Inspection) -> float:
    if seen.thinning is None:
        raise TypeError(f"{reading} of a point without a notch")
    return float(seen.thinning.thinned_web if reading == "thinned_web" else seen.thinning.mean(reading))


@lru_cache(maxsize=_POINTS_KEPT)
def _inspected(sizes: Sizes) -> Inspection:
    return _point(dict(sizes)).inspect()


def _point(used: dict[str, float]) -> GroundPoint:
    from drillpoint.ground import ConicalFlank, FacetedFlank, Flute, GroundPoint, Notch, PlaneFlank

    def some(*names: str) -> dict[str, Any]:
        return {name: used[name] for name in names if name in used}

    # The flute is the one made for the point angle that is wanted, if there is one.
    flute = Flute(**some("diameter", *_WEB, "helix_angle", "point_angle"))
    flank: Any
    if set(CONE) <= used.keys():
        flank = ConicalFlank(**some(*CONE, *_TURN))
    elif "secondary_relief" in used:
        flank = FacetedFlank(**some("point_angle", *_RELIEF, *_FACETS, *_TURN))
    else:
        flank = PlaneFlank(**some("point_angle", *_RELIEF, *_TURN))
    return GroundPoint(flute, flank, thinning_1=Notch(**some(*_NOTCH)) if set(_NOTCH) <= used.keys() else None)


def set_up(values: Mapping[str, float]) -> Mapping[str, float]:
    """How a cone must be set for the wanted angles among these values.

    Raises InstructorError when something is missing, LearnerError when there is no such set-up.
    """
    found = [_one(values, ("diameter",), "a diameter"), _one(values, _WEB, "a web")]
    found += [_one(values, (name,), f"the wanted {QUANTITIES[name].term}") for name in WANTED]
    ratio = values["web_ratio"] if found[1] == "web_ratio" else values["web"] / values["diameter"]
    # Angles do not ask for size: drills of one web ratio share a set-up, and its lengths grow with the diameter.
    settings = _set_up(tuple(values[name] for name in WANTED), round(ratio, 9))
    if isinstance(settings, str):
        raise LearnerError(settings)
    scale = values["diameter"] / _OF_DIAMETER
    return {name: value * (1.0 if QUANTITIES[name].is_angle else scale) for name, value in settings.items()}


@lru_cache(maxsize=1024)
def _set_up(angles: tuple[float, ...], web_ratio: float) -> Mapping[str, float] | str:
    from drillpoint.ground import conical_setup

    wanted: dict[str, Any] = dict(zip(WANTED, angles, strict=True))
    try:
        found = conical_setup(diameter=_OF_DIAMETER, web_ratio=web_ratio, **wanted)
    except DrillpointError as error:
        return str(error).splitlines()[0]
    return {setting.quantity.name: setting.value for setting in found.settings}
