"""The sound points that a drill for diagnosis is ground from, before something is ground wrong on purpose.

There are several, so that nobody learns one drill by heart. Each meets every usual limit as it stands.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache
from types import MappingProxyType
from typing import TYPE_CHECKING

from attrs import frozen

if TYPE_CHECKING:
    from drillpoint.ground import ConicalFlank, FacetedFlank, PlaneFlank

WEB_SHARE = 0.15
_CHISEL_EDGE, _CONE = 125.0, 25.0
_SOLVED_AT = 10.0  # mm; a cone for another size is as much larger as the drill is
_SECOND_FACET = 30.0
_PRIMARY_SHARE = 0.05

Flank = Callable[..., "PlaneFlank | FacetedFlank | ConicalFlank"]


@frozen
class SoundPoint:
    """A way to grind a sound point.

    says: its flanks in words, as a task tells them. point_angle, lip_relief: of the sound point, degrees; the relief at
    the outer corner, in the plane that touches the cylinder there. flank: makes one flank for a diameter (mm), a point
    angle, a lip relief and a height (mm, ground less deep than the other).
    """

    says: str
    point_angle: float
    lip_relief: float
    flank: Flank


def _plane(_diameter: float, point_angle: float, lip_relief: float, flank_height: float) -> PlaneFlank:
    from drillpoint.ground import PlaneFlank

    return PlaneFlank(point_angle=point_angle, lip_relief=lip_relief, flank_height=flank_height)


def _facets(diameter: float, point_angle: float, lip_relief: float, flank_height: float) -> FacetedFlank:
    from drillpoint.ground import FacetedFlank

    return FacetedFlank(
        point_angle=point_angle,
        lip_relief=lip_relief,
        secondary_relief=max(_SECOND_FACET, lip_relief + 1),
        primary_width=_PRIMARY_SHARE * diameter,
        flank_height=flank_height,
    )


def _cone(diameter: float, point_angle: float, lip_relief: float, flank_height: float) -> ConicalFlank:
    from attrs import evolve

    size = diameter / _SOLVED_AT
    solved = _solved_cone(point_angle, lip_relief)
    return evolve(solved, apex_distance=size * solved.apex_distance, skew=size * solved.skew, flank_height=flank_height)


@lru_cache(maxsize=256)
def _solved_cone(point_angle: float, lip_relief: float) -> ConicalFlank:
    from drillpoint.ground import ConicalFlank, conical_setup

    flank = conical_setup(
        diameter=_SOLVED_AT, web_ratio=WEB_SHARE, point_angle=point_angle, lip_relief=lip_relief,
        chisel_edge_angle=_CHISEL_EDGE, cone_half_angle=_CONE,
    ).point.flank_1  # fmt: skip
    if not isinstance(flank, ConicalFlank):
        raise TypeError(f"the set-up of a cone gave {type(flank).__name__}")
    return flank


# One plane is sound at 135°, where relief and chisel edge go together; at 118° it takes a curve or a second facet.
SOUND_POINTS: Mapping[str, SoundPoint] = MappingProxyType(
    {
        "plane": SoundPoint("one plane behind each lip", 135.0, 19.2, _plane),
        "cone": SoundPoint("a part of a cone behind each lip", 118.0, 12.0, _cone),
        "facets": SoundPoint("two facets behind each lip", 118.0, 12.0, _facets),
    }
)
