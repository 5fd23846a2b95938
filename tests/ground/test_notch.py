"""A notch is the wedge its settings say, and its corner the cylinders that fit into it."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.errors import MissingGiven, OutOfRange, UnknownGiven
from drillpoint.ground import Notch
from drillpoint.ground.notch import NotchCut, cut

_END, _MEETS, _FALL = np.array([0.2, 0.3, -0.05]), np.array([1.0, 0.8, -0.4]), 0.37


def _cut(lip: int = 1, **settings: float) -> NotchCut:
    usual = {"thinned_chisel_length": 0.8, "thinning_angle": 30.0, "notch_depth": 0.2, "notch_rake": 8.0}
    return cut(Notch(**{**usual, **settings}), lip, _END, _MEETS, _FALL)


CUTS = st.builds(
    _cut,
    thinning_angle=st.floats(5.0, 60.0),
    notch_depth=st.floats(0.0, 2.0),
    notch_rake=st.floats(-30.0, 30.0),
    corner_radius=st.floats(0.0, 1.0),
    notch_slope=st.floats(0.0, 80.0),
    notch_angle=st.floats(50.0, 145.0),
)


@given(st.floats(5.0, 60.0), st.floats(-30.0, 30.0))
def test_the_face_holds_the_thinned_lip_and_leans_by_the_rake(angle: float, rake: float) -> None:
    made = _cut(thinning_angle=angle, notch_rake=rake)
    nu = math.radians(angle)
    out, ahead = np.array([math.cos(nu), math.sin(nu), 0.0]), np.array([-math.sin(nu), math.cos(nu), 0.0])
    # DERIVED: the lip falls by `fall`; square to it in the end view the face goes back by tan(rake) on its way down.
    lean = math.tan(math.radians(rake))
    for place in (_END, _END + out - _FALL * np.array([0, 0, 1.0]), _END - np.array([0, 0, 1.0]) - lean * ahead):
        assert float(made.face(*place)) == pytest.approx(0.0, abs=1e-12)
    assert float(made.face(*(_END + ahead))) > 0


@given(CUTS, st.floats(-3.0, 3.0))
def test_the_corner_line_lies_on_both_planes(made: NotchCut, step: float) -> None:
    place = made.corner + step * made.along
    assert float(made.face(*place)) == pytest.approx(0.0, abs=1e-12)
    assert float(made.floor(*place)) == pytest.approx(0.0, abs=1e-12)


@given(st.floats(0.0, 2.0), st.floats(0.0, 80.0), st.floats(50.0, 145.0))
def test_depth_slope_and_angle_are_as_stated(depth: float, slope: float, opening: float) -> None:
    made = _cut(notch_depth=depth, notch_slope=slope, notch_angle=opening)
    assert made.end[2] - made.corner[2] == pytest.approx(depth, abs=1e-12)
    nu = math.radians(30.0)
    outward = float(made.along[:2] @ [math.cos(nu), math.sin(nu)])
    assert math.degrees(math.atan2(-made.along[2], outward)) == pytest.approx(slope, abs=1e-9)
    cosine = float(made.up_the_face @ made.out_on_the_floor)
    assert math.degrees(math.acos(cosine)) == pytest.approx(opening, abs=1e-9)
    # What is gone lies above and ahead.
    assert bool(made.inside(*(made.corner + made.up_the_face + made.out_on_the_floor)))
    assert made.up_the_face[2] > 0


@given(CUTS)
def test_the_rounding_lies_on_the_edge_of_what_is_gone_and_touches_both_planes(made: NotchCut) -> None:
    profile = made.rounding(6)
    assert np.abs(made.depth(*profile.T)).max() < 1e-12
    assert float(made.face(*profile[0])) == pytest.approx(0.0, abs=1e-12)
    assert float(made.floor(*profile[-1])) == pytest.approx(0.0, abs=1e-12)
    assert np.abs((profile - made.corner) @ made.along).max() < 1e-12


@pytest.mark.parametrize("opening", [60.0, 90.0, 130.0])
def test_what_is_gone_is_every_cylinder_that_fits_into_the_wedge(opening: float) -> None:
    made, radius = _cut(corner_radius=0.4, notch_angle=opening), 0.4
    rng = np.random.default_rng(5)
    inward = rng.uniform(-0.3, 1.5, (400, 2))
    places = made.corner + inward[:, :1] * made.up_the_face + inward[:, 1:] * made.out_on_the_floor
    # DERIVED: axes of cylinders that fit, on a fine grid of the wedge seen along its corner line.
    grid = np.stack(np.meshgrid(*[np.linspace(0.0, 3.0, 301)] * 2), axis=-1).reshape(-1, 2)
    axes = made.corner + grid[:, :1] * made.up_the_face + grid[:, 1:] * made.out_on_the_floor
    fit = axes[(made.face(*axes.T) >= radius) & (made.floor(*axes.T) >= radius)]
    nearest = np.array([np.linalg.norm(fit - place, axis=1).min() for place in places])
    depth = made.depth(*places.T)
    sure = np.abs(nearest - radius) > 0.02
    assert sure.sum() > 300
    assert ((nearest < radius) == (depth > 0))[sure].all()
    beside = nearest > 0.02
    assert np.abs(radius - nearest - depth)[beside].max() < 0.02


@given(CUTS)
def test_depth_grows_along_its_normal(made: NotchCut) -> None:
    places = made.corner + np.random.default_rng(7).uniform(-2.0, 2.0, (40, 3))
    step = 1e-6
    ahead, behind = (made.depth(*(places + by * made.normal(*places.T)).T) for by in (step, -step))
    # But for places within a step of where the nearest wall changes.
    assert np.median(np.abs((ahead - behind) / (2 * step) - 1)) < 1e-6
    assert (np.abs((ahead - behind) / (2 * step) - 1) < 1e-6).sum() >= 38


@given(st.floats(0.0, 1.0))
def test_the_notch_of_lip_2_is_that_of_lip_1_half_a_turn_on(radius: float) -> None:
    first, second = (_cut(lip, corner_radius=radius) for lip in (1, 2))
    x, y, z = np.random.default_rng(3).uniform(-2.0, 2.0, (3, 50))
    assert first.depth(x, y, z) == pytest.approx(second.depth(-x, -y, z), abs=1e-12)
    assert first.end * [-1, -1, 1] == pytest.approx(second.end)


def test_a_vanishing_radius_is_a_sharp_corner() -> None:
    sharp, nearly = _cut(corner_radius=0.0), _cut(corner_radius=1e-9)
    x, y, z = np.random.default_rng(3).uniform(-2.0, 2.0, (3, 200))
    assert sharp.depth(x, y, z) == pytest.approx(nearly.depth(x, y, z), abs=1e-8)
    assert sharp.rounding(4).shape == (1, 3)


def test_a_notch_is_stated_by_its_numbers() -> None:
    with pytest.raises(MissingGiven, match="thinning_angle"):
        Notch(thinned_chisel_length=0.8)
    with pytest.raises(MissingGiven, match="thinned_chisel_length or face_distance"):
        Notch(thinning_angle=30)
    with pytest.raises(UnknownGiven, match="not both"):
        Notch(thinning_angle=30, thinned_chisel_length=0.8, face_distance=0.2)
    with pytest.raises(UnknownGiven, match="did you mean 'notch_rake'"):
        Notch(thinning_angle=30, thinned_chisel_length=0.8, notch_rakes=3)
    with pytest.raises(OutOfRange, match="notch_angle 170° is outside"):
        Notch(thinning_angle=30, thinned_chisel_length=0.8, notch_angle=170)
