"""Ground points of every kind that a solid may show."""

from functools import cache

from drillpoint.drawing.solid.shown import Shown, shown
from drillpoint.ground import FacetedFlank, Flute, GroundPoint, Notch, PlaneFlank, conical_setup

_FLUTE = Flute(diameter=10, web=1.5)
_PLANE = PlaneFlank(point_angle=118, lip_relief=12)
_FACETS = FacetedFlank(point_angle=118, lip_relief=10, secondary_relief=25, primary_width=1.2)


@cache
def points() -> dict[str, GroundPoint]:
    """By name: plain, left-hand, conical, four-facet, thinned, split, unequal, small and stepped (thinner behind)."""
    cone = conical_setup(
        diameter=10, point_angle=118, lip_relief=12, chisel_edge_angle=125, web=1.5, cone_half_angle=30
    )
    notch = Notch(thinned_chisel_length=0.5, thinning_angle=30, notch_depth=0.2, notch_rake=5)
    split = Notch(thinned_chisel_length=0.3, thinning_angle=45, notch_depth=0.2, corner_radius=0.2)
    return {
        "plain": GroundPoint(_FLUTE, _PLANE),
        "left": GroundPoint(Flute(diameter=10, web=1.5, hand="left"), _PLANE),
        "conical": GroundPoint(cone.flute, cone.flank),
        "four-facet": GroundPoint(_FLUTE, _FACETS),
        "thinned": GroundPoint(_FLUTE, _PLANE, thinning_1=notch),
        "split": GroundPoint(_FLUTE, _FACETS, thinning_1=split),
        "unequal": GroundPoint(_FLUTE, _PLANE, PlaneFlank(point_angle=124, lip_relief=8, flank_height=0.1)),
        "small": GroundPoint(Flute(diameter=1, web=0.2), _PLANE),
        "stepped": GroundPoint(Flute(diameter=10, web=1.5, body_diameter=8), _PLANE),
    }


@cache
def shown_point(name: str) -> Shown:
    """One of them, made into a solid once for all tests."""
    return shown(points()[name])


NAMES = ("plain", "left", "conical", "four-facet", "thinned", "split", "unequal", "small", "stepped")
