"""What is let pass on a ground point, and who says so."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib import resources
from types import MappingProxyType

from attrs import Factory, field, frozen

from drillpoint.errors import OutOfRange
from drillpoint.ground.stated import stated

_OWN = "as asked for here"


@frozen
class Given:
    """One limit as it stands in `limits.toml`. table: of the handbook, where its source can be read."""

    value: float
    whose: str
    because: str
    table: str = ""


@cache
def usual_limits() -> Mapping[str, Given]:
    """The limits that hold when nothing else is said."""
    text = resources.files("drillpoint.ground.diagnosis").joinpath("limits.toml").read_text(encoding="utf-8")
    return MappingProxyType({name: Given(**row) for name, row in tomllib.loads(text).items()})


def _usual(name: str) -> float:
    default: float = field(default=Factory(lambda: float(usual_limits()[name].value)))
    return default


@stated
@frozen(kw_only=True)
class Limits:
    """What a shop lets pass. Everything left out is as in `usual_limits`; `whose` says who says so.

    point_angle: the included angle that is wanted, and point_angle_tolerance either way, degrees.
    half_angle_difference, relief_difference: between the two lips, degrees. lip_height_difference: at the corners, mm;
    unequal lengths are judged by the height they make. point_offset: of the middle of the chisel edge from the axis,
    mm. oversize: of the hole, mm. lowest_lip_relief, highest_lip_relief: at the outer corner, in the plane that touches
    the cylinder, degrees. lowest_chisel_edge_angle, highest_chisel_edge_angle: obtuse, in the end view, degrees.
    web_ratio_limit: web over diameter at which it is thinned. turn_tolerance: of the drill about its axis when it was
    ground, degrees. body_difference: between body and point, mm.

    Raises OutOfRange when nothing could pass.
    """

    point_angle: float = _usual("point_angle")
    point_angle_tolerance: float = _usual("point_angle_tolerance")
    half_angle_difference: float = _usual("half_angle_difference")
    lip_height_difference: float = _usual("lip_height_difference")
    point_offset: float = _usual("point_offset")
    oversize: float = _usual("oversize")
    lowest_lip_relief: float = _usual("lowest_lip_relief")
    highest_lip_relief: float = _usual("highest_lip_relief")
    relief_difference: float = _usual("relief_difference")
    lowest_chisel_edge_angle: float = _usual("lowest_chisel_edge_angle")
    highest_chisel_edge_angle: float = _usual("highest_chisel_edge_angle")
    web_ratio_limit: float = _usual("web_ratio_limit")
    turn_tolerance: float = _usual("turn_tolerance")
    body_difference: float = _usual("body_difference")

    def __attrs_post_init__(self) -> None:
        for low, high in (
            ("lowest_lip_relief", "highest_lip_relief"),
            ("lowest_chisel_edge_angle", "highest_chisel_edge_angle"),
        ):
            if getattr(self, low) > getattr(self, high):
                raise OutOfRange(
                    f"{low} {getattr(self, low):g}° is above {high} {getattr(self, high):g}°; nothing would pass"
                )

    def whose(self, name: str) -> str:
        """Who says so: "shop's choice", "common practice", or the source."""
        usual = usual_limits()[name]
        return usual.whose if getattr(self, name) == usual.value else _OWN
