"""A used drill beside its readings: its wear, what is left of it, and what it is kept for."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import field, frozen

from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.ground.stated import stated
from drillpoint.planning.shop import Steel, named_steel, usual_choices, wear_errors
from drillpoint.relation.checking import read_scalar


def _errors(given: Mapping[str, float]) -> Mapping[str, float]:
    return {**wear_errors(), **given}


def _obtuse(given: float | None) -> float | None:
    return None if given is None else read_scalar("chisel_edge_angle", given)[0]


@stated
@frozen(kw_only=True)
class Wear:
    """What was read of a drill's wear and length. Every reading may be left out; lengths in mm.

    wear_land: width of the flat rubbed behind the outer corner of the worse lip. chip_depth: of the deepest chip in a
    lip, square to the lip. flute_length: left, from the outer corners to where the flutes run out. web_taper: mm for
    each mm along the flute; the usual one when left out. length_before: of the whole drill, from a stop to its tip.
    cracked: True for a crack, a split web or a bent drill. drill_material: "high-speed steel", "cobalt steel" or
    "carbide".

    errors: how far a reading may be off, by name; those left out are as in `wear_errors`.
    """

    wear_land: float = 0.0
    chip_depth: float = 0.0
    flute_length: float | None = None
    web_taper: float | None = None
    length_before: float | None = None
    cracked: bool = False
    drill_material: Steel = "high-speed steel"
    errors: Mapping[str, float] = field(factory=dict, converter=_errors, hash=False)

    def __attrs_post_init__(self) -> None:
        named_steel("drill_material", self.drill_material)

    def read(self, name: str) -> Measured | None:
        """One reading with its error, or None when it was not taken."""
        value = getattr(self, name)
        # Where nothing is worn there is nothing to misread.
        return None if value is None else Measured(float(value), self.errors[name] if value else 0.0)

    @property
    def taper(self) -> Measured:
        """The web taper as read, or the usual one, which is taken as it stands."""
        return self.read("web_taper") or Measured(float(usual_choices()["web_taper"].value))


@stated
@frozen(kw_only=True)
class Job:
    """What a drill is kept for. Angles in degrees, lengths in mm; what is left out is chosen in the plan.

    drills: in words, for the page. new_point_angle: the included angle wanted. new_lip_relief: at the outer corner, in
    the plane that touches the cylinder there. new_chisel_edge_angle: obtuse, or acute (under 90°) and read as its
    supplement. deepest_hole: full-diameter depth.
    """

    drills: str = ""
    new_point_angle: float | None = None
    new_lip_relief: float | None = None
    new_chisel_edge_angle: float | None = field(default=None, converter=_obtuse)
    deepest_hole: float | None = None
