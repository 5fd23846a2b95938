"""Rake and relief at work agree with a flute and flanks built from vectors and measured plane by plane.

The flute is the surface a straight lip sweeps when it is screwed along the drill; its tangents are taken in small
steps. The planes are those of ISO 3002-1 (from memory): the reference plane square to the movement, the edge plane
through lip and movement, the normal plane square to the lip, the orthogonal plane square to the first two.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from drillpoint.relations import (
    chisel_edge_rake,
    dub_normal_rake,
    dub_set_back,
    dub_wedge_angle,
    feed_relief_loss,
    flank_fall,
    lead,
    least_dub_width,
    least_lip_relief,
    lip_inclination,
    local_helix,
    normal_rake,
    normal_relief,
    orthogonal_rake,
    wedge_angle,
    working_relief,
)
from tests.relations.drills import drills
from tests.relations.solid_point import HALF_TURN, SolidPoint, Vector

# DERIVED: closed forms against the construction. Tangents are central differences, good to about 1e-7 of a radian.
NEAR = 1e-4
UP = np.array([0.0, 0.0, 1.0])


def _unit(v: Vector) -> Vector:
    return v / np.linalg.norm(v)


@dataclass(frozen=True)
class Place:
    """A place on lip 1 of a drill, with the directions that its planes are made of."""

    solid: SolidPoint
    helix_angle: float
    radius: float

    @property
    def along(self) -> Vector:
        """Along the lip, outwards."""
        return self.solid.lip_direction

    @property
    def place(self) -> Vector:
        """Found by walking out along the lip."""
        near, far = 0.0, 4 * self.solid.diameter
        for _ in range(200):
            middle = (near + far) / 2
            x, y, _z = self.solid.lip_start + middle * self.along
            near, far = (middle, far) if math.hypot(x, y) < self.radius else (near, middle)
        return self.solid.lip_start + near * self.along

    @property
    def movement(self) -> Vector:
        """The way the place moves: counter-clockwise seen from the tip."""
        return _unit(np.cross(UP, self.place))

    @property
    def down(self) -> Vector:
        """Where the reference plane and the normal plane meet, away from the work."""
        line = _unit(np.cross(self.along, self.movement))
        return line if line[2] < 0 else -line

    @property
    def ahead(self) -> Vector:
        """The movement as the normal plane sees it."""
        return _unit(self.movement - np.dot(self.movement, self.along) * self.along)

    def flute(self, out: float, turn: float) -> Vector:
        """A place on the flute: the lip at `out` from its start, screwed on by a turn."""
        x, y, z = self.solid.lip_start + out * self.along
        rise = math.pi * self.solid.diameter / math.tan(math.radians(self.helix_angle)) / (2 * math.pi)
        c, s = math.cos(turn), math.sin(turn)
        return np.array([c * x - s * y, s * x + c * y, z + rise * turn])

    @property
    def face(self) -> Vector:
        """Normal of the flute's face."""
        out = float(np.dot(self.place - self.solid.lip_start, self.along))
        step = 1e-5 * self.solid.diameter
        turn = 1e-5
        one = self.flute(out + step, 0) - self.flute(out - step, 0)
        other = self.flute(out, turn) - self.flute(out, -turn)
        return _unit(np.cross(_unit(one), _unit(other)))

    def flat(self, rake: float) -> Vector:
        """Normal of a flat through the lip that leans by `rake` from the axis, seen square to the lip's end view."""
        lean = math.radians(rake)
        return _unit(np.cross(self.along, np.array([0.0, -math.sin(lean), -math.cos(lean)])))

    def trace(self, normal: Vector, plane: Vector) -> Vector:
        """Where a face shows in a plane, away from the work."""
        line = _unit(np.cross(plane, normal))
        return line if np.dot(line, self.down) > 0 else -line

    def rake(self, normal: Vector, plane: Vector) -> float:
        """Degrees from the reference plane back to the face, in a plane."""
        line = self.trace(normal, plane)
        ahead = _unit(self.movement - np.dot(self.movement, plane) * plane)
        return math.degrees(math.atan2(-np.dot(line, ahead), np.dot(line, self.down)))

    @property
    def flank_line(self) -> Vector:
        """Where flank 1 shows in the normal plane, going back."""
        line = _unit(np.cross(self.along, self.solid.normal))
        return line if np.dot(line, self.ahead) < 0 else -line

    @property
    def relief(self) -> float:
        """Degrees from the edge plane down to the flank, in the normal plane."""
        return math.degrees(math.atan2(np.dot(self.flank_line, self.down), -np.dot(self.flank_line, self.ahead)))

    @property
    def orthogonal_plane(self) -> Vector:
        """Normal of the plane square to the reference plane and to the edge plane."""
        edge_plane = np.cross(self.along, self.movement)
        return _unit(np.cross(self.movement, edge_plane))


def _place(drill: dict[str, float]) -> Place:
    solid = SolidPoint(drill["diameter"], drill["point_angle"], drill["web"], drill["axial_relief"])
    # So close to half a web that small steps say nothing any more the construction is not asked.
    assume(drill["radius"] > 0.5005 * drill["web"])
    return Place(solid, drill["helix_angle"], drill["radius"])


def _of(drill: dict[str, float], *names: str) -> dict[str, float]:
    return {n: drill[n] for n in names}


def _flute(drill: dict[str, float]) -> dict[str, float]:
    return _of(drill, "helix_angle", "radius", "diameter", "web", "point_angle")


@given(drills())
def test_local_helix_is_where_the_face_meets_the_cylinder(drill: dict[str, float]) -> None:
    place = _place(drill)
    outwards = _unit(place.place * np.array([1, 1, 0]))
    line = np.cross(outwards, place.face)
    measured = math.degrees(math.atan2(abs(np.dot(line, place.movement)), abs(line[2])))
    assert local_helix(**_of(drill, "helix_angle", "radius", "diameter")) == pytest.approx(measured, abs=NEAR)


@given(drills())
def test_lip_inclination_is_the_angle_to_the_reference_plane(drill: dict[str, float]) -> None:
    place = _place(drill)
    across = np.linalg.norm(np.cross(place.along, place.movement))
    measured = math.degrees(math.atan2(abs(np.dot(place.along, place.movement)), across))
    assert lip_inclination(**_of(drill, "radius", "web", "point_angle")) == pytest.approx(measured, abs=NEAR)


@given(drills())
def test_normal_rake_is_measured_square_to_the_lip(drill: dict[str, float]) -> None:
    place = _place(drill)
    assert normal_rake(**_flute(drill)) == pytest.approx(place.rake(place.face, place.along), abs=NEAR)


@given(drills())
def test_orthogonal_rake_is_measured_along_the_movement(drill: dict[str, float]) -> None:
    place = _place(drill)
    assert orthogonal_rake(**_flute(drill)) == pytest.approx(place.rake(place.face, place.orthogonal_plane), abs=NEAR)


@given(drills())
def test_normal_relief_is_measured_from_the_movement(drill: dict[str, float]) -> None:
    place = _place(drill)
    given_here = _of(drill, "radius", "web", "point_angle", "axial_relief")
    assert normal_relief(**given_here) == pytest.approx(place.relief, abs=NEAR)


@given(drills())
def test_the_wedge_is_what_lies_between_face_and_flank(drill: dict[str, float]) -> None:
    place = _place(drill)
    face = place.trace(place.face, place.along)
    measured = math.degrees(math.acos(np.clip(np.dot(face, place.flank_line), -1, 1)))
    assume(0.5 < 90 - place.rake(place.face, place.along) - place.relief < 179.5)
    said = wedge_angle(**_flute(drill), axial_relief=drill["axial_relief"])
    assert said == pytest.approx(measured, abs=10 * NEAR)


@given(drills())
def test_a_flat_has_its_own_rake_and_wedge(drill: dict[str, float]) -> None:
    place = _place(drill)
    flat = place.flat(drill["dub_rake"])
    here = _of(drill, "dub_rake", "radius", "web", "point_angle")
    assert dub_normal_rake(**here) == pytest.approx(place.rake(flat, place.along), abs=NEAR)
    line = place.trace(flat, place.along)
    measured = math.degrees(math.acos(np.clip(np.dot(line, place.flank_line), -1, 1)))
    assume(0.5 < 90 - place.rake(flat, place.along) - place.relief < 179.5)
    assert dub_wedge_angle(**here, axial_relief=drill["axial_relief"]) == pytest.approx(measured, abs=10 * NEAR)


@given(drills())
def test_a_flat_sets_the_lip_back_by_what_its_triangle_cuts_off(drill: dict[str, float]) -> None:
    place = _place(drill)
    face, flat = place.trace(place.face, place.along), place.trace(place.flat(drill["dub_rake"]), place.along)
    assume(place.rake(place.face, place.along) > place.rake(place.flat(drill["dub_rake"]), place.along) + 0.5)
    assume(place.rake(place.face, place.along) + place.relief < 85)
    # From the old lip along the flank to the new one, then over the flat: back on the old face.
    in_plane = np.array([place.ahead, place.down])
    columns = np.column_stack([in_plane @ place.flank_line, -(in_plane @ face)])
    back, _left = np.linalg.solve(columns, -drill["dub_width"] * (in_plane @ flat))
    said = dub_set_back(**_flute(drill), **_of(drill, "dub_width", "dub_rake", "axial_relief"))
    assert said == pytest.approx(back, rel=1e-4, abs=1e-6)


@given(drills())
def test_the_least_flat_reaches_over_the_layer(drill: dict[str, float]) -> None:
    place = _place(drill)
    line = place.trace(place.flat(drill["dub_rake"]), place.along)
    here = _of(drill, "dub_rake", "radius", "web", "point_angle", "chip_thickness")
    assert least_dub_width(**here) * np.dot(line, place.down) == pytest.approx(drill["chip_thickness"], rel=1e-6)


@given(st.floats(1, 50), st.floats(1, 60))
def test_lead_is_how_far_the_edge_of_the_flute_goes_in_one_turn(diameter: float, helix: float) -> None:
    steps = 10000
    along_edge = np.array([math.sin(math.radians(helix)), math.cos(math.radians(helix))])
    # Each short step along the edge goes aside and along; the steps aside must add up to the circumference.
    step = diameter * math.pi / steps / along_edge[0]
    assert lead(diameter=diameter, helix_angle=helix) == pytest.approx(steps * step * along_edge[1], rel=1e-9)


def _slopes(drill: dict[str, float], relief: float | None = None) -> tuple[float, float]:
    """Slopes of the flank and of the work just behind a place on the lip, by small steps back."""
    solid = SolidPoint(drill["diameter"], drill["point_angle"], drill["web"], relief or drill["axial_relief"])
    radius, step = drill["radius"], 1e-6
    start = math.asin(drill["web"] / 2 / radius)

    def flank(back: float) -> float:
        return solid.height(radius * math.cos(start - back), radius * math.sin(start - back))

    def work(back: float) -> float:
        # The lip was there a part of a turn ago, and that part of the feed less deep.
        return flank(0) - drill["feed"] * back / (2 * math.pi)

    fall = [(f(-step) - f(step)) / (2 * step * radius) for f in (flank, work)]
    return fall[0], fall[1]


@given(drills())
def test_working_relief_is_between_the_flank_and_the_way_of_the_lip(drill: dict[str, float]) -> None:
    _place(drill)
    flank, work = _slopes(drill)
    assert feed_relief_loss(**_of(drill, "feed", "radius")) == pytest.approx(math.degrees(math.atan(work)), abs=NEAR)
    gap = math.degrees(math.atan2(flank - work, 1 + flank * work))
    here = _of(drill, "feed", "radius", "web", "point_angle", "axial_relief")
    assert working_relief(**here) == pytest.approx(gap, abs=NEAR)


@given(drills(), st.floats(0.0, 20.0))
def test_the_least_lip_relief_leaves_the_margin_at_the_corner(drill: dict[str, float], margin: float) -> None:
    enough = least_lip_relief(**_of(drill, "feed", "diameter"), relief_margin=margin)
    corner = drill["diameter"] / 2
    shape = _of(drill, "diameter", "web", "point_angle", "feed")
    assert working_relief(**shape, radius=corner, lip_relief=enough) == pytest.approx(margin, abs=1e-9)
    less = working_relief(**shape, radius=corner, lip_relief=enough - margin - 0.01)
    assert less < 0
    assert any("rubs" in note for note in less.notes)


@given(drills())
def test_chisel_edge_rake_is_the_lean_of_the_flank_ahead(drill: dict[str, float]) -> None:
    solid = SolidPoint(drill["diameter"], drill["point_angle"], drill["web"], drill["axial_relief"])
    edge = np.append(solid.chisel_direction, 0.0)
    ahead = np.cross(UP, edge)
    line = np.cross(edge, HALF_TURN @ solid.normal)
    line = line if line[2] < 0 else -line
    assert np.dot(line, ahead) > 0
    measured = -math.degrees(math.atan2(np.dot(line, ahead), -line[2]))
    seen = 180 - math.degrees(math.atan2(edge[1], edge[0]))
    assume(seen >= 90)
    assert chisel_edge_rake(point_angle=drill["point_angle"], chisel_edge_angle=seen) == pytest.approx(
        measured, abs=1e-9
    )


@given(drills())
def test_a_flank_that_keeps_its_slope_falls_step_by_step(drill: dict[str, float]) -> None:
    steps = 4000
    radius, relief = drill["radius"], math.radians(drill["relief_at_radius"])
    corners = [radius * np.exp(1j * 2 * math.pi * drill["turn_share"] * i / steps) for i in (0, 1)]
    # Each short step goes back round the axis along a chord and down by the relief.
    fallen = steps * abs(corners[1] - corners[0]) * math.sin(relief) / math.cos(relief)
    assert flank_fall(**_of(drill, "radius", "relief_at_radius", "turn_share")) == pytest.approx(fallen, rel=1e-6)
