"""The solid of a ground point: closed, turned outwards, on the surfaces it stands for, as fine as it was asked for."""

from __future__ import annotations

import math
from pathlib import Path

import manifold3d
import numpy as np
import numpy.typing as npt
import pytest
from hypothesis import given, settings

from drillpoint.errors import DrillpointError, OutOfRange, UnknownGiven
from drillpoint.ground import CannotBeGround, ConicalFlank, FacetedFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.ground.notch import Notch, NotchCut
from drillpoint.ground.solids.solid import Mesh
from tests.ground.points import ground, plain_drills

FLUTE = Flute(diameter=10, web=1.5)
PLANE = PlaneFlank(point_angle=118, lip_relief=12)
CONE = ConicalFlank(cone_half_angle=20, cone_tilt=38.8, apex_distance=15, skew=2)
FACETS = FacetedFlank(point_angle=118, lip_relief=12)
POINTS = {
    "plain": GroundPoint(FLUTE, PLANE),
    "conical": GroundPoint(FLUTE, CONE),
    "facets that meet on the axis": GroundPoint(FLUTE, FACETS),
    "facets that do not": GroundPoint(FLUTE, FacetedFlank(point_angle=118, lip_relief=12, primary_width=1.4)),
    "unequal": GroundPoint(FLUTE, PLANE, PlaneFlank(point_angle=122, lip_relief=14, flank_height=0.05)),
    "facets and a cone": GroundPoint(FLUTE, FACETS, CONE),
    "turned": GroundPoint(FLUTE, PlaneFlank(point_angle=118, lip_relief=12, flank_turn=5)),
    "bowed lips": GroundPoint(FLUTE, PlaneFlank(point_angle=140, lip_relief=12)),
    "web off centre": GroundPoint(Flute(diameter=10, web=1.5, web_offset=0.2), CONE),
    "left-hand": GroundPoint(Flute(diameter=10, web=1.5, hand="left"), CONE),
    "straight flutes": GroundPoint(Flute(diameter=10, web=1.5, helix_angle=0), PLANE),
    "web that thickens": GroundPoint(Flute(diameter=10, web=1.5, web_taper=0.018), CONE),
    "stepped": GroundPoint(Flute(diameter=10, web=1.5, body_diameter=12), CONE),
    "worn": GroundPoint(Flute(diameter=10, web=1.5, body_diameter=9.8), PLANE),
    "no margin": GroundPoint(Flute(diameter=10, web=1.5, margin_height=0), PLANE),
    "thin web": GroundPoint(Flute(diameter=10, web=0.3), PLANE),
}
STEEP = PlaneFlank(point_angle=118, axial_relief=22)
LEFT = Flute(diameter=10, web=1.5, hand="left")
THINNED = {"thinning_angle": 25, "thinned_chisel_length": 0.5, "notch_depth": 0.3}
SPLIT = {"thinning_angle": 30, "thinned_chisel_length": 0.3, "notch_depth": 0.6, "notch_rake": 8}
NOTCHED = {
    "thinned": GroundPoint(FLUTE, STEEP, thinning_1=Notch(**THINNED)),
    "split": GroundPoint(FLUTE, STEEP, thinning_1=Notch(**SPLIT)),
    "split with a rounded corner": GroundPoint(FLUTE, STEEP, thinning_1=Notch(corner_radius=0.3, **SPLIT)),
    "thinned on one side": GroundPoint(FLUTE, STEEP, thinning_1=Notch(**THINNED), thinning_2=None),
    "corner in the chisel edge": GroundPoint(FLUTE, STEEP, thinning_1=Notch(**{**THINNED, "notch_depth": 0})),
    "left-hand cone, split": GroundPoint(LEFT, CONE, thinning_1=Notch(**SPLIT)),
    "facets, split": GroundPoint(FLUTE, FACETS, thinning_1=Notch(**{**SPLIT, "notch_depth": 0.4})),
}
NOTCHED_NAMES = [pytest.param(name, id=name) for name in NOTCHED]
POINT_NAMES = [pytest.param(name, id=name) for name in POINTS]
HALF_TURN = np.array([-1.0, -1.0, 1.0])


def faults(made: Mesh) -> list[str]:
    """What keeps a mesh from being a sound solid, even when rounded to single precision as in a file."""
    t = made.triangles.astype(np.int64)
    found = []
    edges = np.concatenate([t[:, [0, 1]], t[:, [1, 2]], t[:, [2, 0]]])
    count = len(made.vertices)
    forth, back = edges[:, 0] * count + edges[:, 1], edges[:, 1] * count + edges[:, 0]
    if len(np.unique(forth)) < len(forth):
        found.append("an edge is used twice in the same direction")
    if not np.array_equal(np.sort(forth), np.sort(back)):
        found.append("an edge has a triangle on one side only")
    rounded = made.vertices.astype(np.float32)
    if len(np.unique(rounded, axis=0)) < count:
        found.append("two vertices fall together")
    if len(np.unique(t)) < count:
        found.append("a vertex belongs to no triangle")
    a, b, c = (rounded[t[:, corner]].astype(float) for corner in range(3))
    longest = np.max([np.linalg.norm(side, axis=1) for side in (b - a, c - b, a - c)], axis=0)
    # Rounding moves a vertex by a ten-millionth of its distance; less than ten times that would be no height at all.
    if not (np.linalg.norm(np.cross(b - a, c - a), axis=1) > 1e-6 * np.ptp(made.vertices[:, 0]) * longest).all():
        found.append("a triangle has no area")
    if made.volume <= 0:
        found.append("it is inside out")
    return found


def of_faces(made: Mesh, *starts: str) -> npt.NDArray[np.int64]:
    """The triangles of the faces whose names begin so."""
    chosen = np.array([name.startswith(starts) for name in made.names])[made.faces]
    return made.triangles[chosen].astype(np.int64)


def upward(made: Mesh, triangles: npt.NDArray[np.int64]) -> npt.NDArray[np.float64]:
    """z of the normals, as long as twice the triangles' areas."""
    a, b, c = (made.vertices[triangles[:, corner]] for corner in range(3))
    return np.asarray(np.cross(b - a, c - a)[:, 2])


@pytest.mark.parametrize("name", POINT_NAMES)
def test_it_is_a_closed_solid(name: str) -> None:
    made = POINTS[name].mesh(tolerance=0.02)
    assert faults(made) == []
    # The point and the flat end hide nothing of themselves, seen along the axis: so the skin does not touch itself.
    assert (upward(made, of_faces(made, "flank", "primary", "secondary")) > 0).all()
    assert (upward(made, of_faces(made, "end")) < 0).all()
    shown = {made.names[face] for face in np.unique(made.faces)}
    assert set(made.names) - shown == ({"margin 1", "margin 2"} if name == "no margin" else set())


def test_the_search_for_faults_finds_them() -> None:
    made = POINTS["plain"].mesh(tolerance=0.05)
    v, t = made.vertices, made.triangles
    assert faults(Mesh(v, t[1:], made.names, made.faces[1:])) == ["an edge has a triangle on one side only"]
    assert "it is inside out" in faults(Mesh(v, t[:, ::-1], made.names, made.faces))
    squashed = v.copy()
    squashed[t[0, 0]] = squashed[t[0, 1]]
    assert set(faults(Mesh(squashed, t, made.names, made.faces))) == {
        "two vertices fall together",
        "a triangle has no area",
    }


@settings(max_examples=12)
@given(plain_drills())
def test_usual_drills_are_closed_solids(drill: dict[str, float]) -> None:
    try:
        point = ground(drill, flank_height=0.002 * drill["diameter"])
        made = point.mesh(tolerance=0.004 * drill["diameter"])
    except CannotBeGround:
        return
    assert faults(made) == []


def exact_volume(point: GroundPoint, low: float) -> float:
    """mm³ above z = low, DERIVED: the section is turned along the axis without change, so the volume is that of the
    heights over the section, summed here on a polar net with each height found by halving. Equal lips only."""
    flute = point.flute
    t, back, radius = flute.half_web(1), flute.back_radius(1), flute.radius
    middle = t + back
    width, height = flute.margin
    total = 0.0
    for inner, outer in ((0.0, t), (t, radius - height), (radius - height, radius)):
        nodes, weights = np.polynomial.legendre.leggauss(60)
        for r, weight in zip((nodes + 1) / 2 * (outer - inner) + inner, weights * (outer - inner) / 2, strict=True):
            first, last = -math.pi / 2, math.pi / 2
            if inner > 0:
                swing = flute.twist / math.tan(math.radians(flute.point_angle / 2))
                last = math.asin(t / r) + swing * math.sqrt(r**2 - t**2)
                first = -math.asin(min((r**2 + middle**2 - back**2) / (2 * middle * r), 1.0))
            if inner > t:
                first = last - width / radius
            angle = (np.arange(400) + 0.5) / 400 * (last - first) + first
            bottom, top = np.full(400, -3 * radius), np.full(400, radius)
            for _ in range(50):
                z = (bottom + top) / 2
                turned = angle + flute.twist * z
                below = z < point.height(r * np.cos(turned), r * np.sin(turned))
                bottom, top = np.where(below, z, bottom), np.where(below, top, z)
            total += 2 * weight * r * (last - first) * float((bottom - low).mean())
    return total


@pytest.mark.parametrize("name", ["plain", "conical", "bowed lips", "facets that meet on the axis"])
def test_volume_comes_to_that_of_the_drill(name: str) -> None:
    coarse, fine = (POINTS[name].mesh(tolerance=tolerance, length=12) for tolerance in (0.02, 0.002))
    exact = exact_volume(POINTS[name], float(fine.vertices[:, 2].min()))
    assert fine.volume == pytest.approx(exact, rel=1e-3)
    assert abs(fine.volume - exact) < 0.2 * abs(coarse.volume - exact)


@pytest.mark.parametrize("tolerance", [0.05, 0.01, 0.002])
@pytest.mark.parametrize("name", ["plain", "conical", "unequal", "facets that meet on the axis", "stepped"])
def test_triangles_are_within_the_tolerance(name: str, tolerance: float) -> None:
    point = POINTS[name]
    made = point.mesh(tolerance=tolerance)
    flute = point.flute

    def middles(*starts: str) -> tuple[npt.NDArray[np.float64], ...]:
        corners = made.vertices[of_faces(made, *starts)]
        sides = (corners + np.roll(corners, 1, axis=1)) / 2
        return tuple(np.concatenate([corners.mean(axis=1), sides.reshape(-1, 3)]).T)

    x, y, z = middles("flank", "primary", "secondary")
    step = 1e-6
    slope = [(point.height(x + a, y + b) - point.height(x - a, y - b)) / 2 / step for a, b in ((step, 0), (0, step))]
    assert (np.abs(z - point.height(x, y)) / np.sqrt(1 + slope[0] ** 2 + slope[1] ** 2)).max() < 1.2 * tolerance
    x, y, z = middles("margin")
    at_point = z > made.vertices[made.edges["heel 1"][0], 2]
    assert (np.hypot(x, y)[at_point] > flute.radius - 1.2 * tolerance).all()
    x, y, z = middles("flute 1")
    t = flute.half_web(1)
    along = np.sqrt(np.maximum(np.hypot(x, y) ** 2 - t**2, 0))
    turn = -flute.twist * (z + along * flute.design_slope)
    off = x * np.sin(turn) + y * np.cos(turn) - t
    face = (x * np.cos(turn) - y * np.sin(turn) > 0.1 * flute.radius) & (np.hypot(x, y) > 2 * t)
    assert face.any()
    assert np.abs(off[face]).max() < 1.2 * tolerance


def test_a_finer_tolerance_takes_more_triangles() -> None:
    counts = [len(POINTS["plain"].mesh(tolerance=tolerance).triangles) for tolerance in (0.04, 0.01, 0.0025)]
    # Chords go with the square of the step, so a quarter of the tolerance takes about four times the triangles.
    assert 2.5 < counts[1] / counts[0] < 6
    assert 3 < counts[2] / counts[1] < 5


@pytest.mark.parametrize("name", POINT_NAMES)
def test_lips_lie_on_flank_and_flute(name: str) -> None:
    point = POINTS[name]
    made = point.mesh(tolerance=0.02)
    mirror = np.array([1.0, -1.0, 1.0]) if point.flute.hand == "left" else np.ones(3)
    for lip, turn in zip(point.lips, (np.ones(3), HALF_TURN), strict=True):
        x, y, z = (made.vertices[made.edges[f"{lip.name}"]] * mirror * turn).T
        radius = np.hypot(x, y)
        assert len(radius) > 4
        assert np.abs(z - lip.own.height(x, y)).max() < 1e-9
        # DERIVED: turned back by the flute's own turn at its height, every place of its face lies on y = half web.
        along = np.sqrt(np.maximum(radius**2 - lip.flute.half_web_at(lip.number, z) ** 2, 0))
        back = -lip.flute.twist * (z + along * lip.flute.design_slope)
        assert np.abs(x * np.sin(back) + y * np.cos(back) - lip.flute.half_web_at(lip.number, z)).max() < 1e-9
        assert (np.diff(radius) > 0).all()
        assert radius[-1] == pytest.approx(point.flute.radius, abs=1e-9)


@pytest.mark.parametrize("name", POINT_NAMES)
def test_the_chisel_edge_is_where_both_flanks_are_equally_high(name: str) -> None:
    point = POINTS[name]
    made = point.mesh(tolerance=0.02)
    mirror = np.array([1.0, -1.0, 1.0]) if point.flute.hand == "left" else np.ones(3)
    chisel = made.vertices[made.edges["chisel edge"]] * mirror
    first, second = (surface.height(*chisel.T[:2]) for surface in point.surfaces)
    assert np.abs(first - chisel[:, 2]).max() < 1e-9
    assert np.abs(second - chisel[:, 2]).max() < 1e-9
    assert chisel[0] == pytest.approx(point.chisel.first, abs=1e-9)
    assert chisel[-1] == pytest.approx(point.chisel.second, abs=1e-9)
    used = np.sort(np.concatenate([made.triangles[:, [0, 1]], made.triangles[:, [1, 2]]]), axis=1)
    run = made.edges["chisel edge"]
    steps = np.sort(np.stack([run[:-1], run[1:]], axis=1), axis=1)
    edges = {tuple(edge) for edge in np.concatenate([used, np.sort(made.triangles[:, [2, 0]], axis=1)])}
    assert all(tuple(step) in edges for step in steps)


def test_four_facets_meet_on_the_axis() -> None:
    made = POINTS["facets that meet on the axis"].mesh(tolerance=0.02)
    assert np.hypot(*made.vertices[:, :2].T)[made.vertices[:, 2] > -1].min() < 1e-12
    assert {f"{kind} facet {lip}" for kind in ("primary", "secondary") for lip in (1, 2)} < set(made.names)


def test_a_left_hand_drill_is_the_mirror_image() -> None:
    left, right = POINTS["left-hand"].mesh(), POINTS["conical"].mesh()
    assert np.array_equal(left.vertices * [1, -1, 1], right.vertices)
    assert np.array_equal(left.triangles[:, ::-1], right.triangles)
    assert left.volume == pytest.approx(right.volume, rel=1e-12)


@pytest.mark.parametrize("name", ["plain", "conical", "facets that do not"])
def test_equal_halves_are_half_a_turn_apart(name: str) -> None:
    made = POINTS[name].mesh(tolerance=0.02)
    here, there = made.vertices, made.vertices * HALF_TURN
    near = [np.lexsort(np.round(places, 6).T) for places in (here, there)]
    assert here[near[0]] == pytest.approx(there[near[1]], abs=2e-6)
    assert len(of_faces(made, "flute 1")) == len(of_faces(made, "flute 2"))


def test_scale_and_length() -> None:
    small, large = POINTS["plain"].mesh(length=20), POINTS["plain"].mesh(length=20, scale=10)
    assert large.vertices == pytest.approx(small.vertices * 10, rel=1e-15)
    assert large.volume == pytest.approx(small.volume * 1000, rel=1e-12)
    corner = small.vertices[small.edges["lip 1"][-1], 2]
    assert small.vertices[:, 2].min() == pytest.approx(corner - 20, abs=1e-12)


def test_stepped_and_worn_bodies_have_their_own_diameter() -> None:
    for name, body in (("stepped", 6.0), ("worn", 4.9), ("plain", 5.0)):
        made = POINTS[name].mesh()
        end = made.vertices[made.edges["margin 1"][-1]]
        assert math.hypot(end[0], end[1]) == pytest.approx(body, abs=1e-12)
        tip = made.vertices[made.edges["margin 1"][0]]
        assert math.hypot(tip[0], tip[1]) == pytest.approx(5.0, abs=1e-12)


def test_margin_and_web_at_the_end() -> None:
    made = POINTS["web that thickens"].mesh(length=25)
    flat = made.vertices[np.unique(of_faces(made, "end"))]
    walls = made.vertices[np.intersect1d(of_faces(made, "flute 1"), np.unique(of_faces(made, "end")))]
    # DERIVED: the web grows by 0.018 mm a mm from 1.5 mm at z = 0, half of it on either side.
    assert np.hypot(*walls.T[:2]).min() == pytest.approx(0.75 - 0.009 * flat[0, 2], abs=1e-3)
    behind = made.vertices[made.edges["heel 1"]]
    assert np.hypot(*behind.T[:2]) == pytest.approx(5 - 0.15, abs=1e-12)


def test_the_file_reads_back(tmp_path: Path) -> None:
    made = POINTS["plain"].mesh(tolerance=0.02, scale=10)
    path = tmp_path / "point.stl"
    made.save(path)
    raw = path.read_bytes()
    count = int.from_bytes(raw[80:84], "little")
    assert not raw.startswith(b"solid")
    assert count == len(made.triangles)
    assert len(raw) == 84 + 50 * count
    records = np.frombuffer(raw[84:], dtype=[("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("rest", "<u2")])
    corners = records["corners"].astype(float)
    assert np.array_equal(records["corners"], made.vertices[made.triangles].astype(np.float32))
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normal /= np.linalg.norm(normal, axis=1, keepdims=True)
    assert (np.sum(normal * records["normal"], axis=1) > 0.999).all()
    volume = np.einsum("ij,ij->", corners[:, 0], np.cross(corners[:, 1], corners[:, 2])) / 6
    assert volume == pytest.approx(made.volume, rel=1e-5)


@pytest.mark.parametrize(
    ("given_", "kind", "said"),
    [
        ({"tolerance": 0}, OutOfRange, "tolerance 0 must be a number above zero; 0.01 is usual"),
        ({"tolerance": 1e-7}, OutOfRange, "millions of triangles"),
        ({"scale": -1}, OutOfRange, "scale -1 must be"),
        ({"length": 0.1}, OutOfRange, "length 0.1 mm is too short: the flanks reach"),
        ({"length": "long"}, OutOfRange, "length long must be"),
        ({"tolerence": 0.1}, UnknownGiven, "no given called 'tolerence'; did you mean 'tolerance'?"),
    ],
)
def test_nonsense_is_refused(given_: dict[str, object], kind: type[DrillpointError], said: str) -> None:
    with pytest.raises(kind, match=said.replace("?", r"\?")):
        POINTS["plain"].mesh(**given_)  # type: ignore[arg-type]


def test_a_land_wider_than_its_cone_is_refused_with_the_land_that_goes() -> None:
    steep = ConicalFlank(cone_half_angle=20, cone_tilt=38.8, apex_distance=10, skew=1.25)
    with pytest.raises(CannotBeGround, match=r"reaches over a land of 69°\. Give the flute heel_angle=69"):
        GroundPoint(FLUTE, steep).mesh()
    assert faults(GroundPoint(Flute(diameter=10, web=1.5, heel_angle=69), steep).mesh(tolerance=0.02)) == []


@pytest.mark.parametrize("tolerance", [0.03, 0.005])
@pytest.mark.parametrize("name", NOTCHED_NAMES)
def test_a_notched_point_is_a_closed_solid(name: str, tolerance: float) -> None:
    made = NOTCHED[name].mesh(tolerance=tolerance)
    assert faults(made) == []
    assert {"notch 1 face", "notch 1 floor"} < {made.names[face] for face in np.unique(made.faces)}


def wedge(cut: NotchCut, reach: float) -> manifold3d.Manifold:
    """What a sharp notch takes, as a wedge that reaches far beyond the drill."""
    far = [0 * cut.corner, cut.up_the_face * reach, cut.out_on_the_floor * reach]
    corners = [cut.corner + side * reach * cut.along + place for side in (-1, 1) for place in far]
    return manifold3d.Manifold.hull_points(np.array(corners))


@pytest.mark.parametrize("name", ["thinned", "split", "thinned on one side", "facets, split"])
def test_a_notch_takes_what_a_solid_modeller_takes(name: str) -> None:
    point = NOTCHED[name]
    plain = GroundPoint(point.flute, point.flank_1, point.flank_2).mesh(tolerance=0.02)
    body = manifold3d.Manifold(manifold3d.Mesh64(plain.vertices, plain.triangles.astype(np.uint64)))
    for cut in filter(None, point.thinned.notches):
        body -= wedge(cut, 80.0)
    taken = plain.volume - body.volume()
    # DERIVED: by a solid modeller from the mesh without notches; vertices near a plane are moved onto it.
    assert plain.volume - point.mesh(tolerance=0.02).volume == pytest.approx(taken, rel=2e-3, abs=2e-3)


@pytest.mark.parametrize("name", NOTCHED_NAMES)
def test_notch_walls_lie_on_the_notch(name: str) -> None:
    point, tolerance = NOTCHED[name], 0.01
    made = point.mesh(tolerance=tolerance)
    places = made.vertices * [1, -1 if point.flute.hand == "left" else 1, 1]
    for cut in filter(None, point.thinned.notches):
        assert cut.depth(*places.T).max() < tolerance
        face = np.unique(of_faces(made, f"notch {cut.lip} face"))
        floor = np.unique(of_faces(made, f"notch {cut.lip} floor"))
        # Of ten thousandths of the diameter half a one is what counts as on a plane.
        assert np.abs(cut.face(*places[face].T)).max() < 5e-4
        assert np.abs(cut.floor(*places[floor].T)).max() < 5e-4
        corner = np.unique(of_faces(made, f"notch {cut.lip} corner"))
        assert (len(corner) > 0) == (cut.radius > 0)
        if len(corner):
            assert np.abs(cut.depth(*places[corner].T)).max() < tolerance


@pytest.mark.parametrize("name", ["thinned", "split", "left-hand cone, split"])
def test_the_thinned_lip_runs_from_the_chisel_edge_to_the_main_lip(name: str) -> None:
    point = NOTCHED[name]
    made = point.mesh(tolerance=0.005)
    places = made.vertices * [1, -1 if point.flute.hand == "left" else 1, 1]
    for cut in filter(None, point.thinned.notches):
        lip = places[made.edges[f"thinned lip {cut.lip}"]]
        assert lip[0] == pytest.approx(cut.end, abs=0.01)
        assert lip[-1] == pytest.approx(cut.meets, abs=0.01)
        assert np.abs(lip[:, 2] - point.height(*lip[:, :2].T)).max() < 0.006
        main = places[made.edges[f"lip {cut.lip}"]]
        assert main[0] == pytest.approx(lip[-1], abs=1e-12)
    chisel = places[made.edges["chisel edge"]]
    assert chisel[0] == pytest.approx(point.thinned.chisel.first, abs=2e-3)
    assert chisel[-1] == pytest.approx(point.thinned.chisel.second, abs=2e-3)
