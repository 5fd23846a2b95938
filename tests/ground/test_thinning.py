"""What is read off a thinned point agrees with the book's closed forms, and behaves as a thinned point must."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from drillpoint.ground import ConicalFlank, Flute, GroundPoint, Notch, PlaneFlank
from drillpoint.ground.thinning import ThinnedLipReadings, ThinningReadings, thinning_readings
from drillpoint.relations import (
    thinned_lip_in_end_view,
    thinned_lip_length,
    thinned_web,
    thinning_reach,
    untouched_lip_length,
    untouched_lip_share,
)
from tests.ground.thinned_points import USUAL, ThinnedDrill, thinned_drills

_FLUTE = Flute(diameter=10, web=1.5)
_PLANE = PlaneFlank(point_angle=118, axial_relief=22.8)
_CONE = ConicalFlank(cone_half_angle=20, cone_tilt=38.83, apex_distance=1.979 * 5, skew=0.283 * 5)
_BOTH_ENDS = ("web", "chisel_edge_angle", "thinned_chisel_length", "thinning_angle")


def _read(point: GroundPoint) -> ThinningReadings:
    readings = thinning_readings(point)
    assert readings is not None
    return readings


def _lip(readings: ThinningReadings, lip: int) -> ThinnedLipReadings:
    found = readings.lips[lip - 1]
    assert found is not None
    return found


@given(thinned_drills())
def test_readings_agree_with_the_closed_forms(drill: ThinnedDrill) -> None:
    # DERIVED: closed forms against readings of the surfaces, at any rake, depth, slope and angle of the notch.
    said = {
        "thinning_reach": thinning_reach(**drill.book(*_BOTH_ENDS)),
        "thinned_lip_in_end_view": thinned_lip_in_end_view(**drill.book(*_BOTH_ENDS)),
        "thinned_lip_length": thinned_lip_length(**drill.book(*_BOTH_ENDS, "point_angle", "axial_relief")),
        "untouched_lip_length": untouched_lip_length(**drill.book(*_BOTH_ENDS, "point_angle", "diameter")),
        "untouched_lip_share": untouched_lip_share(**drill.book(*_BOTH_ENDS, "diameter")),
        "thinning_angle": drill.notch["thinning_angle"],
    }
    readings = _read(drill.grind())
    assert {name: readings.mean(name) for name in said} == pytest.approx(said, rel=1e-8)
    assert readings.thinned_web == pytest.approx(float(thinned_web(**drill.book(*_BOTH_ENDS[1:]))), rel=1e-8)
    assert readings.thinned_chisel_length == pytest.approx(drill.notch["thinned_chisel_length"], rel=1e-8)
    assert readings.chisel_edge_angle == pytest.approx(drill.book("chisel_edge_angle")["chisel_edge_angle"], abs=1e-7)
    assert readings.point_offset < 1e-9 * drill.diameter


@given(thinned_drills())
def test_rake_along_the_thinned_lip_is_that_of_its_face(drill: ThinnedDrill) -> None:
    point = drill.grind()
    lip, made = _lip(_read(point), 1), point.thinned.notches[0]
    assert made is not None
    along = (made.meets - made.end) / np.linalg.norm(made.meets - made.end)
    assume(np.linalg.norm(made.corner - made.end) > 1e-3 * drill.diameter)
    face = np.cross(along, made.corner - made.end)
    face /= np.linalg.norm(face)
    for place, rake in zip(lip.edge[::16], lip.stations.normal_rake[::16], strict=True):
        moves = np.array([-place[1], place[0], 0.0]) / np.hypot(*place[:2])
        square = moves - (moves @ along) * along
        # DERIVED: both the face's normal and the way it moves, seen along the lip; without rake they are one line.
        cosine = abs(face @ square) / np.linalg.norm(square)
        assert math.cos(math.radians(rake)) == pytest.approx(cosine, abs=1e-9)


@pytest.mark.parametrize(("rake", "sign"), [(-10.0, -1), (12.0, 1)])
def test_a_face_that_leans_back_has_positive_rake(rake: float, sign: int) -> None:
    assert sign * _lip(_read(USUAL.grind(notch_rake=rake)), 1).middle_rake > 2


@given(st.floats(1e-9, 1e-6), st.floats(15.0, 45.0))
def test_with_hardly_anything_taken_the_readings_are_those_of_the_point_before(taken: float, angle: float) -> None:
    plain = GroundPoint(_FLUTE, _PLANE).inspect()
    length = plain.chisel_edge_length * (1 - taken)
    notch = Notch(thinned_chisel_length=length, thinning_angle=angle, notch_depth=0.05)
    readings = _read(GroundPoint(_FLUTE, _PLANE, thinning_1=notch))
    close = 20 * taken
    assert readings.thinned_chisel_length == pytest.approx(plain.chisel_edge_length, abs=close)
    assert readings.chisel_edge_angle == pytest.approx(plain.chisel_edge_angle, abs=1e-6)
    assert readings.mean("untouched_lip_length") == pytest.approx(plain.lip_length, abs=close)
    assert readings.mean("untouched_lip_share") == pytest.approx(1.0, abs=close)
    assert readings.mean("thinned_lip_length") == pytest.approx(0.0, abs=close)


def test_a_point_without_notches_has_no_readings_of_thinning() -> None:
    assert thinning_readings(GroundPoint(_FLUTE, _PLANE)) is None


@pytest.mark.parametrize("flank", [_PLANE, _CONE], ids=["plane", "cone"])
def test_the_nearer_to_the_axis_the_face_the_less_is_left(flank: PlaneFlank | ConicalFlank) -> None:
    readings = [
        _read(GroundPoint(_FLUTE, flank, thinning_1=Notch(face_distance=e, thinning_angle=28, notch_depth=0.1)))
        for e in (0.35, 0.25, 0.15, 0.08)
    ]
    for falling in ("thinned_chisel_length", "thinned_web", "core_thickness"):
        assert (np.diff([getattr(r, falling) for r in readings]) < 0).all()
    assert (np.diff([r.mean("untouched_lip_length") for r in readings]) < 0).all()
    assert (np.diff([r.mean("thinned_lip_length") for r in readings]) > 0).all()


@given(thinned_drills(), st.floats(0.1, 10.0), st.floats(0.0, 0.3))
def test_a_drill_so_many_times_as_large_reads_so_many_times_as_much(
    drill: ThinnedDrill, scale: float, rounding: float
) -> None:
    assume(0.5 < drill.diameter * scale < 100)
    # A rounding below the chisel edge's end.
    radius = rounding * drill.notch["notch_depth"]
    small, large = (_read(drill.grind(by, corner_radius=radius)) for by in (1.0, scale))
    close = 1e-7 * drill.diameter * scale
    for length in ("thinned_chisel_length", "thinned_web", "core_thickness"):
        assert getattr(large, length) == pytest.approx(getattr(small, length) * scale, abs=close)
    for length in ("thinned_lip_length", "thinning_reach", "untouched_lip_length", "face_overrun"):
        assert large.mean(length) == pytest.approx(small.mean(length) * scale, abs=close)
    for angle in ("thinning_angle", "middle_rake", "untouched_lip_share"):
        assert large.mean(angle) == pytest.approx(small.mean(angle), abs=1e-6)


@given(st.floats(0.3, 1.6), st.floats(0.3, 1.6))
def test_thinned_more_on_one_side_the_chisel_edge_is_left_off_the_axis(first: float, second: float) -> None:
    notches = [Notch(thinned_chisel_length=c, thinning_angle=30, notch_depth=0.1) for c in (first, second)]
    readings = _read(GroundPoint(_FLUTE, _PLANE, thinning_1=notches[0], thinning_2=notches[1]))
    # DERIVED: each end is half its own length from the axis, on opposite sides.
    assert readings.thinned_chisel_length == pytest.approx((first + second) / 2, abs=1e-9)
    assert readings.point_offset == pytest.approx(abs(first - second) / 4, abs=1e-9)


def test_a_face_past_the_axis_is_read_as_such() -> None:
    deep = Notch(face_distance=-0.05, thinning_angle=30, notch_depth=0.02)
    readings = _read(GroundPoint(_FLUTE, _PLANE, thinning_1=deep, thinning_2=None))
    assert _lip(readings, 1).thinned_lip_distance == pytest.approx(-0.05, abs=1e-9)
    assert readings.lips[1] is None
    # Half a web is left of the other side's flute.
    assert readings.thinned_web == pytest.approx(0.75 - 0.05, abs=1e-9)
    assert readings.point_offset > 0.4


@pytest.mark.parametrize("turned", [False, True])
def test_half_a_turn_swaps_the_readings(turned: bool) -> None:
    notches = [Notch(thinned_chisel_length=0.5 + 0.3 * i, thinning_angle=25 + 5 * i, notch_depth=0.1) for i in (0, 1)]
    flanks: list[PlaneFlank | ConicalFlank] = [PlaneFlank(point_angle=120, axial_relief=20), _CONE]
    flutes = [Flute(diameter=10, web=1.5, web_offset=e) for e in (0.05, -0.05)]
    first = _read(GroundPoint(flutes[0], flanks[0], flanks[1], thinning_1=notches[0], thinning_2=notches[1]))
    second = _read(GroundPoint(flutes[1], flanks[1], flanks[0], thinning_1=notches[1], thinning_2=notches[0]))
    one, other = (_lip(first, 2), _lip(second, 1)) if turned else (_lip(first, 1), _lip(second, 2))
    assert one.edge == pytest.approx(other.edge, abs=1e-8)
    assert one.stations.normal_rake == pytest.approx(other.stations.normal_rake, abs=1e-6)
    assert (one.core, one.face_overrun) == pytest.approx((other.core, other.face_overrun), abs=1e-8)
    assert first.thinned_web == pytest.approx(second.thinned_web, abs=1e-8)


@pytest.mark.parametrize("flank", [_PLANE, _CONE], ids=["plane", "cone"])
@pytest.mark.parametrize(
    ("depth", "radius", "opening"),
    [(0.0, 0.0, 90.0), (0.0, 0.15, 90.0), (0.1, 0.15, 90.0), (0.3, 0.1, 110.0), (0.0, 0.0, 65.0), (0.0, 0.03, 65.0)],
)
def test_the_thinned_lip_runs_along_the_wall_of_the_notch_on_the_flank(
    flank: PlaneFlank | ConicalFlank, depth: float, radius: float, opening: float
) -> None:
    notch = Notch(
        thinned_chisel_length=0.7,
        thinning_angle=28,
        notch_depth=depth,
        notch_rake=-12,
        corner_radius=radius,
        notch_angle=opening,
        notch_slope=70,
    )
    point = GroundPoint(_FLUTE, flank, thinning_1=notch)
    made, edge = point.thinned.notches[1], _lip(_read(point), 2).edge
    assert made is not None
    assert np.abs(made.depth(-edge[:, 0], -edge[:, 1], edge[:, 2])).max() < 1e-9
    assert point.lips[1].own.height(*edge[:, :2].T) == pytest.approx(edge[:, 2], abs=1e-9)
    # It lies on top: the other flank is higher there, but for its start on the chisel edge.
    assert (point.lips[1].other.height(*edge[1:, :2].T) > edge[1:, 2]).all()
    assert (np.diff(np.hypot(*edge[:, :2].T)) > 0).all()


def test_a_vanishing_rounding_reads_as_a_sharp_corner() -> None:
    sharp, nearly = (_read(USUAL.grind(notch_depth=0.0, corner_radius=r)) for r in (0.0, 1e-8))
    assert nearly.thinned_chisel_length == pytest.approx(sharp.thinned_chisel_length, abs=1e-7)
    assert nearly.mean("thinned_lip_length") == pytest.approx(sharp.mean("thinned_lip_length"), abs=1e-7)
    assert nearly.core_thickness == pytest.approx(sharp.core_thickness, abs=1e-7)


@pytest.mark.parametrize(
    ("depth", "rake", "radius"),
    [(0.2, 0.0, 0.0), (0.6, 12.0, 0.0), (0.5, 5.0, 0.2), (0.3, -12.0, 0.0), (0.0, 0.0, 0.1)],
)
def test_the_core_is_the_widest_round_bar_the_notch_spares(depth: float, rake: float, radius: float) -> None:
    point = USUAL.grind(notch_depth=depth, notch_rake=rake, corner_radius=radius)
    core = _lip(_read(point), 1).core
    made = point.thinned.notches[0]
    assert made is not None
    angle, z, r = np.meshgrid(np.linspace(0, 2 * np.pi, 181), np.linspace(-1.2, 0, 121), np.linspace(0.05, 0.5, 91))
    x, y = r * np.cos(angle), r * np.sin(angle)
    gone = made.inside(x, y, z) & (z <= point.height(x, y))
    # DERIVED: the nearest grid place in the metal that is gone; a grid finds it a little late.
    assert core == pytest.approx(r[gone].min(), abs=0.012)
    assert core <= r[gone].min() + 1e-9
