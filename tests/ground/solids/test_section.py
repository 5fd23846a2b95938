"""The cross section of the body: nowhere folded, and as round, as thick and as far set back as the flute says."""

from __future__ import annotations

import math

import numpy as np
import pytest

from drillpoint.ground import CannotBeGround, Flute
from drillpoint.ground.solids.section import Section


def _net(section: Section, z: float) -> np.ndarray:
    s, w = np.meshgrid(np.linspace(-1, 1, 81), np.linspace(0, 1, 31), indexing="ij")
    return np.stack(section.places(s, w, np.full_like(s, z)), axis=-1)


@pytest.mark.parametrize("ratio", [0.05, 0.15, 0.3, 0.45])
@pytest.mark.parametrize("helix", [0, 30, 45])
@pytest.mark.parametrize("point_angle", [90, 118, 140])
@pytest.mark.parametrize("offset", [0, 0.1])
def test_it_is_nowhere_folded(ratio: float, helix: float, point_angle: float, offset: float) -> None:
    flute = Flute(
        diameter=10, web_ratio=ratio, helix_angle=helix, point_angle=point_angle, web_offset=offset, web_taper=0.01
    )
    for z in (0.0, -10.0):
        net = _net(Section(flute), z)
        along, across = net[1:, :-1] - net[:-1, :-1], net[:-1, 1:] - net[:-1, :-1]
        # w runs clockwise of s, as seen from the tip.
        assert (along[..., 0] * across[..., 1] - along[..., 1] * across[..., 0] < 0).all()


def test_its_outline_is_the_flute_and_the_land() -> None:
    section = Section(Flute(diameter=10, web=1.5))
    net = _net(section, -3.0)
    assert np.hypot(*net[0].T) == pytest.approx(4.85, abs=1e-12)
    assert np.hypot(*net[-1].T) == pytest.approx(4.85, abs=1e-12)
    assert np.hypot(*net[40, [0, -1]].T) == pytest.approx(0.75, abs=1e-12)
    one = np.ones(1)
    edge = np.stack(section.places(2 * one, np.array([0.0, section.margin_at]), -3 * one))
    assert np.hypot(*edge) == pytest.approx(5, abs=1e-12)
    # DERIVED: the margin's width is the arc between its edges.
    width = 5 * math.acos(float(edge[:, 0] @ edge[:, 1]) / 25)
    assert width == pytest.approx(0.8, abs=1e-9)


def test_the_same_line_of_the_helix_turns_with_height() -> None:
    section = Section(Flute(diameter=10, web=1.5, helix_angle=30))
    turn = math.tan(math.radians(30)) / 5 * 4
    high, low = _net(section, 0.0), _net(section, -4.0)
    back = low @ np.array([[math.cos(turn), math.sin(turn)], [-math.sin(turn), math.cos(turn)]])
    assert back == pytest.approx(high, abs=1e-12)


def test_a_margin_that_takes_the_land_away_is_refused() -> None:
    with pytest.raises(CannotBeGround, match="margin_height 2 mm would take most of the land away"):
        Section(Flute(diameter=10, web=1.5, margin_height=2))
