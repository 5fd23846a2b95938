"""What is read off the surfaces of a ground point agrees with the same drill built and measured by a solid modeller."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest

from drillpoint.ground import ConicalFlank, FacetedFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.ground.inspection import Inspection
from tests.ground import solid_readings
from tests.ground.solid import Solid, facet_error, ground_drill
from tests.ground.solid_tools import Stated

# DERIVED: every expected value is read off a solid that shares no code with the ground point. Its flats stand off the
# true surfaces by at most `facet_error`, here a ten-thousandth of a millimetre. Readings are differences of two or
# three places, so lengths must agree to three times that and angles, read over half a millimetre, to 0.01°.
FACET = 0.06
ANGLE = 0.01
CLASSES: dict[str, Any] = {"plane": PlaneFlank, "faceted": FacetedFlank, "conical": ConicalFlank}

FLUTE = {"diameter": 10.0, "web": 1.5}
PLAIN = {"kind": "plane", "point_angle": 118.0, "lip_relief": 12.0}
FACETS = {**PLAIN, "kind": "faceted", "secondary_relief": 28.0}
CONE = {"kind": "conical", "cone_half_angle": 20.0, "cone_tilt": 38.83, "apex_distance": 9.9, "skew": 1.42}
# Flute, flank of lip 1, flank of lip 2.
POINTS: dict[str, tuple[Stated, Stated, Stated]] = {
    "plain": (FLUTE, PLAIN, PLAIN),
    "conical": (FLUTE, CONE, CONE),
    "faceted": (FLUTE, FACETS, FACETS),
    "wide facets": (FLUTE, {**FACETS, "primary_width": 1.1}, {**FACETS, "primary_width": 1.1}),
    "bowed lips, web that thickens": ({**FLUTE, "point_angle": 140.0, "web_taper": 0.02}, PLAIN, PLAIN),
    "uneven planes": (
        {**FLUTE, "web_offset": 0.1, "helix_angle": 18.0},
        {**PLAIN, "point_angle": 120.0, "flank_height": 0.05},
        {**PLAIN, "point_angle": 116.0, "lip_relief": 15.0, "flank_turn": 4.0},
    ),
    "uneven cones": (
        {**FLUTE, "web_offset": -0.04},
        CONE,
        {**CONE, "cone_tilt": 39.5, "flank_turn": -3.0, "flank_height": 0.04},
    ),
    "uneven facets": (
        FLUTE,
        {**FACETS, "primary_width": 0.9},
        {**FACETS, "primary_width": 1.2, "flank_height": -0.06, "axial_relief": 9.0, "lip_relief": None},
    ),
    "heel proud of the lip": (
        FLUTE,
        {**PLAIN, "lip_relief": 24.0},
        {**PLAIN, "lip_relief": -1.5, "point_angle": 117.0},
    ),
}


def _said(stated: Stated) -> dict[str, Any]:
    return {name: value for name, value in stated.items() if name != "kind"}


@cache
def _solid(name: str) -> Solid:
    return ground_drill(*POINTS[name], facet=FACET)


@cache
def _inspection(name: str) -> Inspection:
    flute, *flanks = POINTS[name]
    return GroundPoint(Flute(**flute), *(CLASSES[flank["kind"]](**_said(flank)) for flank in flanks)).inspect()


def _agree(measured: dict[str, float], said: dict[str, float], error: float) -> None:
    lengths = {name for name in said if not _is_angle(name)}
    assert {n: said[n] for n in lengths} == pytest.approx({n: measured[n] for n in lengths}, abs=3 * error)
    angles = said.keys() - lengths
    assert {n: said[n] for n in angles} == pytest.approx({n: measured[n] for n in angles}, abs=ANGLE)


def _is_angle(name: str) -> bool:
    return any(word in name for word in ("angle", "relief", "rake", "inclination", "clearance"))


def test_the_flats_are_fine_enough_for_a_thousandth() -> None:
    assert all(3 * facet_error(flute, FACET) < 0.001 for flute, _, _ in POINTS.values())


@pytest.mark.parametrize("name", POINTS)
def test_the_solid_is_closed_and_whole(name: str) -> None:
    mesh = _solid(name).mesh
    assert mesh.is_watertight and mesh.is_winding_consistent and mesh.volume > 0
    assert len(_solid(name).manifold.decompose()) == 1


@pytest.mark.parametrize("name", POINTS)
def test_every_reading_agrees(name: str) -> None:
    measured = solid_readings.readings(_solid(name))
    said = {reading: getattr(_inspection(name), reading) for reading in measured}
    _agree(measured, said, facet_error(POINTS[name][0], FACET))


@pytest.mark.parametrize("lip", [1, 2])
@pytest.mark.parametrize("name", POINTS)
def test_stations_along_the_lip_agree(name: str, lip: int) -> None:
    edge = solid_readings.lips(_solid(name))[lip - 1]
    radii = [1.6, 2.7, 4.2]
    said = _inspection(name).lip_at(lip, radii=radii)
    for index, radius in enumerate(radii):
        rake, inclination = solid_readings.normal_rake_and_inclination(edge, radius)
        assert said.relief[index] == pytest.approx(solid_readings.relief_at(edge, radius), abs=ANGLE)
        assert said.normal_rake[index] == pytest.approx(rake, abs=ANGLE)
        assert said.inclination[index] == pytest.approx(inclination, abs=ANGLE)


@pytest.mark.parametrize("lip", [1, 2])
@pytest.mark.parametrize("name", POINTS)
def test_heel_clearance_agrees(name: str, lip: int) -> None:
    edge = solid_readings.lips(_solid(name))[lip - 1]
    flute, *flanks = POINTS[name]
    measured = solid_readings.heel_clearance(edge, flute, flanks[lip - 1], lip)
    said = _inspection(name).lips[lip - 1].heel_clearance
    assert said == pytest.approx(measured, abs=ANGLE)
