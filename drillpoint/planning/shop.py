"""What a shop chooses before it plans a regrind: what it can hold, when a drill is ground, and how much is kept."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any, Literal, get_args

from attrs import Factory, field, frozen

from drillpoint.errors import OutOfRange, UnknownGiven
from drillpoint.ground.stated import stated
from drillpoint.quantities import nearest, quantity

_OWN = "as asked for here"
Flank = Literal["cone", "plane"]
Steel = Literal["high-speed steel", "cobalt steel", "carbide"]


@frozen
class Chosen:
    """One choice as it stands in `shop.toml`."""

    value: float
    whose: str
    because: str


@frozen
class UsualPoint:
    """A point that is ground when the job asks for nothing else; angles in degrees."""

    point_angle: float
    lip_relief: float
    chisel_edge_angle: float
    whose: str


@cache
def _table() -> Mapping[str, Any]:
    text = resources.files("drillpoint.planning").joinpath("shop.toml").read_text(encoding="utf-8")
    return MappingProxyType(tomllib.loads(text))


@cache
def usual_choices() -> Mapping[str, Chosen]:
    """The choices that hold when a shop says nothing else."""
    return MappingProxyType({name: Chosen(**row) for name, row in _table().items() if isinstance(row, dict)})


@cache
def usual_points() -> tuple[UsualPoint, ...]:
    """The points that are ground when the job asks for nothing else."""
    return tuple(UsualPoint(**row) for row in _table()["point"])


@cache
def wear_errors() -> Mapping[str, float]:
    """How far a reading of wear or length may be off with the tool it is usually read with; common practice."""
    return MappingProxyType({name: float(row["error"]) for row in _table()["tool"] for name in row["readings"]})


def _usual(name: str) -> float:
    default: float = field(default=Factory(lambda: float(usual_choices()[name].value)))
    return default


@stated
@frozen(kw_only=True)
class Shop:
    """What a shop can grind and how it decides. What is left out is as in `usual_choices`; `whose` says who says so.

    smallest_diameter, largest_diameter: of the drills it can hold, mm. sharpest_point, flattest_point: included angles
    it can grind, degrees. grinds: what drills it has wheels for; "high-speed steel", "cobalt steel", "carbide".
    repoint_from: a larger change of the point angle is called re-pointing, degrees.
    wear_share: a wear land wider than this share of the diameter is ground. finish_allowance: ground off beyond the
    stock, mm. flute_reserve: flute kept beyond the deepest hole, in diameters. thinned_web_ratio: the web ratio whose
    chisel edge a thinned point gets. thinning_angle: between thinned and main lip, degrees. flank: "cone" or "plane".
    cone_half_angle: of the fixture's cone, degrees.

    Raises OutOfRange or UnknownGiven, saying what is allowed.
    """

    smallest_diameter: float = _usual("smallest_diameter")
    largest_diameter: float = _usual("largest_diameter")
    sharpest_point: float = _usual("sharpest_point")
    flattest_point: float = _usual("flattest_point")
    repoint_from: float = _usual("repoint_from")
    wear_share: float = _usual("wear_share")
    finish_allowance: float = _usual("finish_allowance")
    flute_reserve: float = _usual("flute_reserve")
    thinned_web_ratio: float = _usual("thinned_web_ratio")
    thinning_angle: float = _usual("thinning_angle")
    cone_half_angle: float = _usual("cone_half_angle")
    flank: Flank = "cone"
    grinds: tuple[Steel, ...] = field(default=("high-speed steel", "cobalt steel"), converter=tuple)

    def __attrs_post_init__(self) -> None:
        for low, high in (("smallest_diameter", "largest_diameter"), ("sharpest_point", "flattest_point")):
            if getattr(self, low) > getattr(self, high):
                show = quantity(low).show
                raise OutOfRange(
                    f"{low} {show(getattr(self, low))} is above {high} {show(getattr(self, high))}; nothing would fit"
                )
        if self.flank not in get_args(Flank):
            raise UnknownGiven(f"flank is {self.flank!r}; a shop grinds a 'cone' or a 'plane'")
        for steel in self.grinds:
            named_steel("grinds", steel)

    def whose(self, name: str) -> str:
        """Who says so: "common practice", "this workbook's own", or the shop itself."""
        usual = usual_choices()[name]
        return usual.whose if getattr(self, name) == usual.value else _OWN


def named_steel(owner: str, steel: str) -> None:
    """Refuse a drill material that is not known here, with the nearest one."""
    if steel not in get_args(Steel):
        raise UnknownGiven(f"{owner} has no drill material {steel!r}{nearest(str(steel), get_args(Steel))}")
