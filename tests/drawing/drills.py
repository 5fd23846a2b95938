"""Drills to draw: usual ones, and the corners of the ranges."""

from itertools import product

USUAL = {"diameter": 10.0, "point_angle": 118.0, "web": 1.5, "chisel_edge_angle": 125.0}


def corners() -> list[dict[str, float]]:
    """Drills at the ends and in the middle of every range, as far as they are possible."""
    sizes, angles = (1.0, 9.525, 40.0), (60.0, 118.0, 150.0)
    webs, chisels = (0.05, 0.15, 0.4), (90.1, 95.0, 125.0, 150.0)
    return [
        {"diameter": d, "point_angle": a, "web_ratio": u, "chisel_edge_angle": c}
        for d, a, u, c in product(sizes, angles, webs, chisels)
    ]
