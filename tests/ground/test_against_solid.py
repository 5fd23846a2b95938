"""What is read off the surfaces of a ground point agrees with the same drill built and measured by a solid modeller."""

from __future__ import annotations

from functools import cache
from typing import Any

import manifold3d
import numpy as np
import pytest

from drillpoint.ground import ConicalFlank, FacetedFlank, Flute, GroundPoint, Notch, PlaneFlank
from drillpoint.ground.inspection import Inspection
from drillpoint.ground.thinning import thinning_readings
from tests.ground import solid_notches, solid_readings
from tests.ground.solid import Solid, facet_error, ground_drill
from tests.ground.solid_tools import Array, Stated

# DERIVED: every expected value is read off a solid that shares no code with the ground point. Its flats stand off the
# true surfaces by at most `facet_error`, here two ten-thousandths of a millimetre. Readings are differences of two or
# three places, so lengths must agree to three times that, and angles, read over half a millimetre, to 0.01°.
FACET = 0.06
ANGLE = 0.01
MESHED_TO = 0.0005
CLASSES: dict[str, Any] = {"plane": PlaneFlank, "faceted": FacetedFlank, "conical": ConicalFlank}

FLUTE = {"diameter": 10.0, "web": 1.5}
PLAIN = {"kind": "plane", "point_angle": 118.0, "lip_relief": 12.0}
FACETS = {**PLAIN, "kind": "faceted", "secondary_relief": 28.0}
CONE = {"kind": "conical", "cone_half_angle": 20.0, "cone_tilt": 38.9, "apex_distance": 15.0, "skew": 2.0}
NEAR_CONE = {**CONE, "apex_distance": 9.9, "skew": 1.42}
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
        NEAR_CONE,
        {**NEAR_CONE, "cone_tilt": 39.5, "flank_turn": -3.0, "flank_height": 0.04},
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


STEEP = {**PLAIN, "lip_relief": 20.0}
SHARP = {"thinning_angle": 25.0, "thinned_chisel_length": 0.6, "notch_depth": 0.1, "notch_rake": 3.0}
ROUND = {"thinning_angle": 28.0, "thinned_chisel_length": 0.7, "notch_depth": 1.0, "corner_radius": 0.3}
# The same, and the notch of lip 1 and of lip 2.
THINNED: dict[str, tuple[Stated, Stated, Stated, Stated, Stated]] = {
    "sharp notches": (FLUTE, STEEP, STEEP, SHARP, SHARP),
    "round notches in cones": (FLUTE, CONE, CONE, ROUND, ROUND),
    "uneven notches": (
        {**FLUTE, "web_offset": 0.05},
        STEEP,
        {**STEEP, "flank_turn": 2.0},
        {"thinning_angle": 25.0, "face_distance": 0.15, "notch_depth": 0.8, "notch_rake": -5.0, "corner_radius": 0.2},
        {"thinning_angle": 30.0, "thinned_chisel_length": 0.7, "notch_depth": 0.2, "notch_angle": 100.0},
    ),
}
# The modeller's bar has no lands that are set back.
BODY = {"margin_height": 0.0}
MESHED = ("plain", "conical", "bowed lips, web that thickens", "uneven planes", "uneven facets")
MESHED_THIN = ("sharp notches", "uneven notches")


def _said(stated: Stated) -> dict[str, Any]:
    return {name: value for name, value in stated.items() if name != "kind"}


def _ground(flute: Stated, *flanks: Stated, **more: Any) -> GroundPoint:
    return GroundPoint(Flute(**flute), *(CLASSES[flank["kind"]](**_said(flank)) for flank in flanks), **more)


@cache
def _solid(name: str) -> Solid:
    return ground_drill(*POINTS[name], facet=FACET)


@cache
def _thinned_solid(name: str) -> tuple[Solid, Solid]:
    """The drill before and after it was thinned."""
    flute, first, second, *notches = THINNED[name]
    plain = ground_drill(flute, first, second, facet=FACET)
    return plain, solid_notches.thinned(plain, (notches[0], notches[1]))


def _thinning(first: Stated, second: Stated) -> dict[str, Notch]:
    return {"thinning_1": Notch(**first), "thinning_2": Notch(**second)}


@cache
def _lips(name: str) -> tuple[solid_readings.Lip, solid_readings.Lip]:
    return solid_readings.lips(_solid(name))


@cache
def _inspection(name: str) -> Inspection:
    return _ground(*POINTS[name]).inspect()


def _agree(said: Any, measured: dict[str, float], error: float) -> None:
    said = {name: getattr(said, name) for name in measured}
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
    _agree(_inspection(name), measured, facet_error(POINTS[name][0], FACET))


@pytest.mark.parametrize("change", [{"lip_relief": 12.02}, {"point_angle": 118.03}, {"flank_height": 0.002}])
def test_a_point_that_differs_by_little_does_not_agree(change: Stated) -> None:
    measured = solid_readings.readings(_solid("plain"))
    with pytest.raises(AssertionError):
        _agree(_ground(FLUTE, PLAIN, {**PLAIN, **change}).inspect(), measured, facet_error(FLUTE, FACET))


@pytest.mark.parametrize("lip", [1, 2])
@pytest.mark.parametrize("name", POINTS)
def test_stations_along_the_lip_agree(name: str, lip: int) -> None:
    edge = _lips(name)[lip - 1]
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
    edge = _lips(name)[lip - 1]
    flute, *flanks = POINTS[name]
    measured = solid_readings.heel_clearance(edge, flute, flanks[lip - 1], lip)
    said = _inspection(name).lips[lip - 1].heel_clearance
    assert said == pytest.approx(measured, abs=ANGLE)


@pytest.mark.parametrize("name", THINNED)
def test_every_reading_of_a_thinned_point_agrees(name: str) -> None:
    flute, first, second, *notches = THINNED[name]
    plain, solid = _thinned_solid(name)
    assert solid.mesh.is_watertight and len(solid.manifold.decompose()) == 1
    said = thinning_readings(_ground(flute, first, second, **_thinning(*notches)))
    assert said is not None
    error = facet_error(flute, FACET)
    _agree(said, solid_notches.thinned_readings(solid), error)
    sides = zip(said.lips, solid_notches.thinned_sides(solid), solid_readings.lips(plain), strict=True)
    for lip, side, whole in sides:
        _agree(lip, solid_notches.side_readings(side, solid_readings.length_of(whole.line)), error)


@pytest.mark.parametrize("name", MESHED)
def test_the_mesh_is_the_same_body(name: str) -> None:
    flute, *flanks = POINTS[name]
    _same_body(_ground({**flute, **BODY}, *flanks), _solid(name), facet_error(flute, FACET))


@pytest.mark.parametrize("name", MESHED_THIN)
def test_the_mesh_of_a_thinned_point_is_the_same_body(name: str) -> None:
    flute, first, second, *notches = THINNED[name]
    point = _ground({**flute, **BODY}, first, second, **_thinning(*notches))
    _same_body(point, _thinned_solid(name)[1], facet_error(flute, FACET))


def _same_body(point: GroundPoint, solid: Solid, error: float) -> None:
    made = point.mesh(tolerance=MESHED_TO, length=6.5)
    body = solid.manifold.trim_by_plane((0.0, 0.0, 1.0), made.vertices[:, 2].min())
    apart = MESHED_TO + error
    assert abs(made.volume - body.volume()) < apart * body.surface_area()
    limits = np.concatenate([made.vertices.min(axis=0), made.vertices.max(axis=0)])
    assert limits == pytest.approx(np.array(body.bounding_box()), abs=apart)
    # A mesh is asked for with a tolerance that it keeps about, not exactly.
    assert np.abs(_off_the_solid(made, body)).max() < 1.4 * apart < 0.001


def _off_the_solid(made: Any, body: manifold3d.Manifold) -> Array:
    """How far the middles of some triangles of every face lie off the solid, square to them; nan where it is far."""
    chance, off = np.random.default_rng(4), []
    for face in range(len(made.names)):
        of_face = np.flatnonzero(made.faces == face)
        corners = made.vertices[made.triangles[chance.permutation(of_face)[:60]]]
        normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        for middle, normal in zip(corners.mean(axis=1), normals, strict=True):
            way = 0.05 * normal / np.linalg.norm(normal)
            hits = body.ray_cast(tuple(middle + way), tuple(middle - way))
            off.append(min((np.linalg.norm(np.array(hit.position) - middle) for hit in hits), default=np.nan))
    return np.array(off)
