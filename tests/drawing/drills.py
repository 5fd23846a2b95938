"""Drills to draw: usual ones, and the corners of the ranges that a scene states."""

import random
from itertools import product

from drillpoint.drawing.draw import drawn_from, scene
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError

USUAL = {"diameter": 10.0, "point_angle": 118.0, "web": 1.5, "chisel_edge_angle": 125.0}
ALL_TOGETHER = 64  # more corners than this are thinned out


def corners() -> list[dict[str, float]]:
    """Plainly ground points at the ends and in the middle of every range."""
    sizes, angles = (1.0, 9.525, 40.0), (60.0, 118.0, 150.0)
    webs, chisels = (0.05, 0.15, 0.4), (90.1, 95.0, 125.0, 150.0)
    return [
        {"diameter": d, "point_angle": a, "web_ratio": u, "chisel_edge_angle": c}
        for d, a, u, c in product(sizes, angles, webs, chisels)
    ]


def corners_of(name: str) -> list[dict[str, float]]:
    """The givens of a scene at the ends and the usual values of its ranges, as far as they are possible."""
    ranges = scene(name).ranges
    every = list(product(*((r.low, r.usual, r.high) for r in ranges)))
    if len(every) > ALL_TOGETHER:
        usual = tuple(r.usual for r in ranges)
        ends = list(product(*((r.low, r.high) for r in ranges)))
        if len(ends) > ALL_TOGETHER:
            ends = random.Random(59).sample(ends, ALL_TOGETHER)
        alone = [(*usual[:i], end, *usual[i + 1 :]) for i, r in enumerate(ranges) for end in (r.low, r.high)]
        every = [usual, *alone, *ends]
    found = possible(name, every)
    assert len(found) * 2 > len(every), f"{name}: most corners of its ranges are impossible"
    return found


def anywhere_in(name: str, count: int) -> list[dict[str, float]]:
    """Givens of a scene from anywhere inside its ranges, as far as they are possible; the same ones every time."""
    chance = random.Random(118)
    return possible(name, [tuple(chance.uniform(r.low, r.high) for r in scene(name).ranges) for _ in range(count)])


def possible(name: str, placed: list[tuple[float, ...]]) -> list[dict[str, float]]:
    """Those settings of the ranges that the scene does not refuse, by keyword."""
    return [givens for givens in (_by_keyword(name, values) for values in placed) if not _refused(name, givens)]


def _by_keyword(name: str, values: tuple[float, ...]) -> dict[str, float]:
    ranges = scene(name).ranges
    own = {r.name: value for r, value in zip(ranges, values, strict=True)}
    return {r.name: own[r.name] * (own[r.share_of] if r.share_of else 1) for r in ranges}


def _refused(name: str, givens: dict[str, float]) -> bool:
    try:
        drawn_from(name, values_of(scene(name), givens))
    except LearnerError:
        return True
    return False
