"""Chips and powers measured on what moves, instead of by formula."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.relations import chip_thickness, power, thrust_ratio, torque_factor, torque_specific_force
from tests.relations.drills import drills


@given(drills())
def test_chip_thickness_is_the_distance_between_two_passes_of_a_lip(drill: dict[str, float]) -> None:
    half = math.radians(drill["point_angle"] / 2)
    lip = np.array([math.sin(half), -math.cos(half)])
    # After half a turn the other lip comes by, half a feed further down.
    moved = np.array([0.0, drill["feed"] / 2])
    distance = np.linalg.norm(moved - moved.dot(lip) * lip)
    assert chip_thickness(feed=drill["feed"], point_angle=drill["point_angle"]) == pytest.approx(distance, rel=1e-9)


@given(drills())
def test_torque_is_the_sum_over_small_pieces_of_both_lips(drill: dict[str, float]) -> None:
    edges = np.linspace(0, drill["diameter"] / 2, 2001)
    middle, width = (edges[1:] + edges[:-1]) / 2, np.diff(edges)
    force = drill["specific_cutting_force"] * drill["feed"] / 2 * width
    newton_metres = 2 * float((force * middle).sum()) / 1000
    names = ("specific_cutting_force", "feed", "diameter")
    assert torque_specific_force(**{n: drill[n] for n in names}) == pytest.approx(newton_metres, rel=1e-6)


@given(drills())
def test_power_is_the_work_of_one_minute(drill: dict[str, float]) -> None:
    # A force of M newtons at a lever of 1 m, pushed along small straight pieces of its circle.
    corners = np.exp(2j * math.pi * np.linspace(0, 1, 20001))
    way = float(np.abs(np.diff(corners)).sum())
    joules = drill["torque"] * way * drill["spindle_speed"]
    assert power(torque=drill["torque"], spindle_speed=drill["spindle_speed"]) == pytest.approx(
        joules / 60 / 1000, rel=1e-7
    )


@given(st.floats(0.02, 0.39), st.floats(1, 40), st.floats(0.02, 0.6))
def test_a_point_compared_with_itself_is_one_and_a_longer_chisel_edge_costs_more(
    ratio: float, diameter: float, feed: float
) -> None:
    job = {"diameter": diameter, "feed": feed}
    assert thrust_ratio(**job, chisel_ratio=ratio, reference_chisel_ratio=ratio) == pytest.approx(1, rel=1e-12)
    assert thrust_ratio(**job, chisel_ratio=ratio + 0.01, reference_chisel_ratio=ratio) > 1
    assert torque_factor(chisel_ratio=ratio + 0.01) > torque_factor(chisel_ratio=ratio)
