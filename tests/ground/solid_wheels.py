"""What the wheel takes off behind the lips, as closed bodies: the room above planes and cones.

Everything is stated by the keywords of the classes of `drillpoint.ground`, and made from points, lines and generators.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

import numpy as np

from tests.ground.solid_tools import Array, Sheet, Stated, Tool, room_above, tool_from


def cot(angle: float) -> float:
    return 1 / math.tan(math.radians(angle))


def half_web(flute: Stated, lip: int) -> float:
    web = flute["web"] if "web" in flute else flute["web_ratio"] * flute["diameter"]
    return float(web / 2 + flute.get("web_offset", 0.0) * (1 if lip == 1 else -1))


def wheel(flute: Stated, flank: Stated, lip: int, name: str, facet: float, half: int = 1) -> Iterator[Tool]:
    """All that is ground away behind one lip: the room above each surface of the flank."""
    sheets = _cone(flute, flank, lip, facet) if flank["kind"] == "conical" else _planes(flute, flank, lip)
    turn = math.radians(flank.get("flank_turn", 0.0))
    matrix = np.array([[math.cos(turn), math.sin(turn), 0], [-math.sin(turn), math.cos(turn), 0], [0, 0, 1]])
    for number, sheet in enumerate(sheets):
        placed = sheet.corners @ matrix + [0.0, 0.0, flank.get("flank_height", 0.0)]
        suffix = "" if number == 0 else " behind"
        yield tool_from(name + suffix, *room_above(placed, sheet, 2 * flute["diameter"]), half=half)


def _planes(flute: Stated, flank: Stated, lip: int) -> Iterator[Sheet]:
    """A plane through the straight lip, and for a faceted flank a second one through a line beside it."""
    radius, t = flute["diameter"] / 2, half_web(flute, lip)
    along_lip = np.array([1.0, 0.0, -cot(flank["point_angle"] / 2)])
    foot = np.array([0.0, t, 0.0])
    back = _falling_back(radius, t, along_lip, flank)
    yield _sheet_of_plane(foot, along_lip, back, 4 * radius)
    if flank["kind"] == "faceted":
        width = flank.get("primary_width", t)
        steep = np.array([0.0, -1.0, -math.tan(math.radians(flank.get("secondary_relief", 25.0)))])
        yield _sheet_of_plane(foot - width * back / back[1], along_lip, steep, 4 * radius)


def _falling_back(radius: float, t: float, along_lip: Array, flank: Stated) -> Array:
    """A direction in the flank, square to the lip in the end view (x = 0), away from the flute."""
    if "axial_relief" in flank:
        return np.array([0.0, -1.0, -math.tan(math.radians(flank["axial_relief"]))])
    # At the corner the flank holds the lip and the way back round the cylinder, which falls by the lip relief.
    corner = np.array([math.sqrt(radius**2 - t**2), t])
    round_back = np.array([corner[1], -corner[0], -radius * math.tan(math.radians(flank["lip_relief"]))]) / radius
    mixed = round_back - round_back[0] * along_lip
    return mixed / -mixed[1]


def _sheet_of_plane(foot: Array, along: Array, back: Array, size: float) -> Sheet:
    corners = [foot + size * (a * along + b * back) for a, b in ((-1, 1), (1, 1), (1, -1), (-1, -1))]
    return Sheet(np.array(corners), np.array([[0, 1, 2], [0, 2, 3]]), np.arange(4))


def _cone(flute: Stated, flank: Stated, lip: int, facet: float) -> Iterator[Sheet]:
    """The upper side of a pyramid of many sides: its apex, and a fan of generators long enough to pass the drill."""
    radius, t = flute["diameter"] / 2, half_web(flute, lip)
    x, y = -flank["apex_distance"], flank["skew"]
    tilt, half = math.radians(flank["cone_tilt"]), math.radians(flank["cone_half_angle"])

    def generator(azimuth: Array | float) -> Array:
        axis = np.array([math.sin(tilt), 0.0, -math.cos(tilt)])
        up, side = np.array([math.cos(tilt), 0.0, math.sin(tilt)]), np.array([0.0, 1.0, 0.0])
        swing = np.asarray(azimuth)[..., None]
        return math.cos(half) * axis + math.sin(half) * (np.cos(swing) * up + np.sin(swing) * side)

    def azimuth_towards(place: tuple[float, float]) -> float:
        """Of the generator that passes over a place of the end view: swung until it does."""
        wanted = math.atan2(place[1] - y, place[0] - x)
        low, high = (-edge, edge)
        for _ in range(100):
            middle = (low + high) / 2
            heading = generator(middle)
            low, high = (middle, high) if math.atan2(heading[1], heading[0]) < wanted else (low, middle)
        return middle

    # Beyond these generators the cone turns its side away from above.
    edge = math.acos(max(-1.0, -math.tan(half) / math.tan(tilt))) if tilt > 0 else math.pi
    over_lip = generator(azimuth_towards((0.0, t)))
    apex = np.array([x, y, over_lip[2] / over_lip[0] * x])
    swing = np.linspace(*_swings(azimuth_towards, x, y, 1.3 * radius, edge), math.ceil(2.6 * radius / facet * 3) + 1)
    yield _fan(apex, generator(swing), max(0.05 * radius, math.hypot(x, y) - 1.3 * radius), 2.6 * radius)


def _fan(apex: Array, headings: Array, start: float, length: float) -> Sheet:
    """A fan of generators, cut into short pieces from a start on: long splinters make the modeller slow."""
    reach = (start + np.linspace(0.0, 1.2 * length, 25)) / np.hypot(headings[:, 0], headings[:, 1]).min()
    corners = np.concatenate([[apex], (apex + reach[:, None] * headings[:, None]).reshape(-1, 3)])
    rays, pieces = len(headings), len(reach)
    number = 1 + np.arange(rays * pieces).reshape(rays, pieces)
    tip = np.stack([np.zeros(rays - 1, dtype=int), number[:-1, 0], number[1:, 0]], -1)
    inner, outer = number[:, :-1], number[:, 1:]
    one = np.stack([inner[:-1], outer[:-1], outer[1:]], -1).reshape(-1, 3)
    two = np.stack([inner[:-1], outer[1:], inner[1:]], -1).reshape(-1, 3)
    rim = np.concatenate([[0], number[0], number[1:-1, -1], number[-1, ::-1]])
    return Sheet(corners, np.concatenate([tip, one, two]), rim)


def _swings(azimuth_towards: Any, x: float, y: float, radius: float, edge: float) -> tuple[float, float]:
    """Azimuths between which a disc round the axis lies, seen from the apex."""
    away = math.hypot(x, y)
    if away <= radius:
        return -0.999 * edge, 0.999 * edge
    towards, half = math.atan2(-y, -x), math.asin(radius / away)
    low, high = (
        azimuth_towards((x + away * math.cos(angle), y + away * math.sin(angle)))
        for angle in (towards - half, towards + half)
    )
    return low, high
