"""What a solid modeller cuts with: closed bodies made from corners, nothing else known about them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import manifold3d
import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]
Triangles = npt.NDArray[np.int64]
Stated = Mapping[str, Any]
HALF_TURN = np.array([-1.0, -1.0, 1.0])


@dataclass(frozen=True)
class Tool:
    """What one pass removes."""

    name: str
    body: manifold3d.Manifold


@dataclass(frozen=True)
class Sheet:
    """A piece of surface seen from above: triangles that face up, and the corners of its rim, counter-clockwise."""

    corners: Array
    triangles: Triangles
    rim: npt.NDArray[np.int64]


def tool_from(name: str, corners: Array, triangles: Triangles, half: int = 1) -> Tool:
    """A tool from its corners; half 2 is turned half a turn."""
    placed = corners if half == 1 else corners * HALF_TURN
    mesh = manifold3d.Mesh64(placed, np.ascontiguousarray(triangles, dtype=np.uint64))
    body = manifold3d.Manifold(mesh).as_original()
    if body.is_empty() or body.volume() <= 0:
        raise ValueError(f"{name} is no solid: {body.status()}")
    return Tool(name, body)


def skinned(layers: list[Array]) -> tuple[Array, Triangles]:
    """A solid from closed layers of equally many corners, lowest first, counter-clockwise seen from above."""
    across, up = len(layers[0]), len(layers)
    here = (np.arange(up - 1)[:, None] * across + np.arange(across)).ravel()
    beside = (np.arange(up - 1)[:, None] * across + (np.arange(across) + 1) % across).ravel()
    sides = [np.stack([here, beside, beside + across], -1), np.stack([here, beside + across, here + across], -1)]
    bottom = np.asarray(manifold3d.triangulate([layers[0][:, :2]])).astype(np.int64)
    top = np.asarray(manifold3d.triangulate([layers[-1][:, :2]])).astype(np.int64) + (up - 1) * across
    return np.concatenate(layers), np.concatenate([*sides, bottom[:, ::-1], top])


def room_above(corners: Array, sheet: Sheet, height: float) -> tuple[Array, Triangles]:
    """The room between a sheet and a flat lid."""
    count, rim, after = len(corners), sheet.rim, np.roll(sheet.rim, -1)
    lid = np.column_stack([corners[:, :2], np.full(count, corners[:, 2].max() + height)])
    sides = [np.stack([rim, after, after + count], -1), np.stack([rim, after + count, rim + count], -1)]
    return np.concatenate([corners, lid]), np.concatenate([sheet.triangles[:, ::-1], sheet.triangles + count, *sides])
