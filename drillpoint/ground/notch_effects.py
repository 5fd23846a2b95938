"""What each setting of a notch does to the readings of the thinned point."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from attrs import evolve

from drillpoint.errors import LearnerError
from drillpoint.ground.notch import Notch
from drillpoint.ground.stated import CannotBeGround
from drillpoint.ground.thinning import ThinningReadings, thinning_readings

if TYPE_CHECKING:
    from drillpoint.ground.point import GroundPoint

EFFECTS: dict[str, Callable[[ThinningReadings], float]] = {
    "thinned_chisel_length": lambda r: r.thinned_chisel_length,
    "chisel_edge_angle": lambda r: r.chisel_edge_angle,
    "thinning_angle": lambda r: r.mean("thinning_angle"),
    "thinned_lip_in_end_view": lambda r: r.mean("thinned_lip_in_end_view"),
    "thinned_lip_length": lambda r: r.mean("thinned_lip_length"),
    "thinning_reach": lambda r: r.mean("thinning_reach"),
    "untouched_lip_length": lambda r: r.mean("untouched_lip_length"),
    "untouched_lip_share": lambda r: r.mean("untouched_lip_share"),
    "middle_rake": lambda r: r.mean("middle_rake"),
    "face_overrun": lambda r: r.mean("face_overrun"),
    "thinned_web": lambda r: r.thinned_web,
    "core_thickness": lambda r: r.core_thickness,
}
"""What `effects` follows, by the names of the readings."""

_STEPS = {"thinning_angle": 0.02, "notch_rake": 0.02}
_STEP_OF_RADIUS = 2e-4


def effects(point: GroundPoint) -> dict[str, dict[str, float]]:
    """By how much each reading changes for one mm or one degree more of each of the five settings.

    By differences, on both notches at once, each setting alone: {setting: {reading: change}}. The settings are the
    place (thinned_chisel_length or face_distance, as the notches state it), thinning_angle, notch_depth, notch_rake and
    corner_radius. Where a setting is at its end, the change is that towards its other side.

    Raises CannotBeGround for a point without notches, or when neither more nor less of a setting can be ground.
    """
    given = [n for n in (point.thinning_1, point.thinning_2) if n]
    if not given:
        raise CannotBeGround("without a notch there is no thinning to look at; give thinning_1 a Notch")
    place = "face_distance" if given[0].face_distance is not None else "thinned_chisel_length"
    settings = (place, "thinning_angle", "notch_depth", "notch_rake", "corner_radius")
    return {setting: _effect(point, setting) for setting in settings}


def _effect(point: GroundPoint, setting: str) -> dict[str, float]:
    step = _STEPS.get(setting, _STEP_OF_RADIUS * point.flute.radius)
    sides = [(by, _changed(point, setting, by)) for by in (step, -step)]
    sides = [(by, readings) for by, readings in sides if readings]
    if len(sides) < 2:
        sides.append((0.0, thinning_readings(point)))
    (more, first), (less, second) = sides[:2]
    if first is None or second is None or more == less:
        raise CannotBeGround(
            f"neither a little more nor a little less {setting} can be ground, so it has no effect to show"
        )
    return {name: (read(first) - read(second)) / (more - less) for name, read in EFFECTS.items()}


def _changed(point: GroundPoint, setting: str, by: float) -> ThinningReadings | None:
    """The readings with a setting a little changed on every notch; None when that cannot be ground."""

    def moved(notch: Notch | None) -> Notch | None:
        if notch is None:
            return None
        value = getattr(notch, setting)
        return evolve(notch, **{setting: value + by}) if value is not None else notch

    try:
        changed = evolve(point, thinning_1=moved(point.thinning_1), thinning_2=moved(point.thinning_2))
    except LearnerError:
        return None
    return thinning_readings(changed)
