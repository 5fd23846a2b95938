"""What it costs to inspect a ground point and to make it solid, against a solid modeller that builds the same drill.

Read the ratios, not the times: `python -m pytest tests/benchmarks/test_ground.py --benchmark-group-by=group`.
"""

from __future__ import annotations

from typing import Any

import pytest

from drillpoint.ground import ConicalFlank, Flute, GroundPoint, PlaneFlank
from drillpoint.ground.notch import Notch
from tests.ground import solid_readings
from tests.ground.solid import ground_drill

FLUTE = {"diameter": 10.0, "web": 1.5}
PLANE = {"kind": "plane", "point_angle": 118.0, "lip_relief": 12.0}
CONE = {"kind": "conical", "cone_half_angle": 20.0, "cone_tilt": 38.9, "apex_distance": 15.0, "skew": 2.0}
POINTS = {
    "two planes": (PLANE, PLANE),
    "two cones": (CONE, CONE),
    "uneven planes": (PLANE, {**PLANE, "point_angle": 116.0, "flank_turn": 3.0}),
}
CLASSES: dict[str, Any] = {"plane": PlaneFlank, "conical": ConicalFlank}
# Coarse, to be fair to the modeller: flats that stand off by 0.0002 mm, right to a thousandth in every reading.
FACET = 0.06


def _flank(kind: str, **givens: float) -> Any:
    return CLASSES[kind](**givens)


def _inspected(name: str) -> Any:
    """The point laid out anew and fully inspected, as a slider has it."""
    return GroundPoint(Flute(**FLUTE), *(_flank(**flank) for flank in POINTS[name])).inspect()


def _modelled(name: str) -> dict[str, float]:
    """The same readings off a solid, but for heel clearance and the stations along the lips, which would cost more."""
    return solid_readings.readings(ground_drill(FLUTE, *POINTS[name], facet=FACET))


@pytest.mark.parametrize("name", POINTS)
def test_inspection(benchmark: Any, name: str) -> None:
    benchmark.group = f"inspect a point of {name}"
    seen = benchmark(_inspected, name)
    assert seen.lip_length_1 > seen.chisel_edge_length


@pytest.mark.parametrize("name", POINTS)
def test_inspection_by_a_solid_modeller(benchmark: Any, name: str) -> None:
    benchmark.group = f"inspect a point of {name}"
    measured = benchmark.pedantic(_modelled, args=(name,), rounds=3)
    seen = _inspected(name)
    assert seen.lip_length_1 == pytest.approx(measured["lip_length_1"], abs=0.001)
    assert seen.lip_relief_2 == pytest.approx(measured["lip_relief_2"], abs=0.01)


MESHED = {"two planes": 0.0011, "two cones": 0.0018}
SPLIT = {"thinning_angle": 30, "thinned_chisel_length": 0.3, "notch_depth": 0.6, "notch_rake": 8, "corner_radius": 0.1}


def _meshed(name: str, **notch: float) -> Any:
    flanks = (_flank(**flank) for flank in POINTS[name])
    point = GroundPoint(Flute(**FLUTE), *flanks, thinning_1=Notch(**notch) if notch else None)
    return point.mesh(tolerance=MESHED[name])


@pytest.mark.parametrize("name", MESHED)
def test_mesh_of_about_100_000_triangles(benchmark: Any, name: str) -> None:
    benchmark.group = f"make a point of {name} solid"
    made = benchmark(_meshed, name)
    assert 80_000 < len(made.triangles) < 130_000


def test_mesh_of_a_split_point(benchmark: Any) -> None:
    benchmark.group = "make a point of two cones solid"
    made = benchmark(_meshed, "two cones", **SPLIT)
    assert 70_000 < len(made.triangles) < 130_000


@pytest.mark.parametrize("name", MESHED)
def test_mesh_by_a_solid_modeller(benchmark: Any, name: str) -> None:
    benchmark.group = f"make a point of {name} solid"
    solid = benchmark.pedantic(ground_drill, (FLUTE, *POINTS[name]), {"facet": FACET}, rounds=3)
    assert solid.manifold.volume() > 0
