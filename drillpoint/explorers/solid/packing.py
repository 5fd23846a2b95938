"""A solid as bytes for the browser."""

from __future__ import annotations

import numpy as np

from drillpoint.drawing.solid.shown import Shown

_MOST_SHORT = 65535
_CORNER = np.dtype([("at", "<f4", 3), ("normal", "i1", 3), ("part", "u1")])


def packed(solid: Shown) -> bytes:
    """Corners of 16 bytes each (place in mm, normal, part), then triangles, lines and the part of each line."""
    corners = np.zeros(len(solid.places), dtype=_CORNER)
    corners["at"] = solid.places
    corners["normal"] = np.round(127 * solid.normals)
    corners["part"] = solid.of_place
    whole = "<u4" if is_wide(solid) else "<u2"
    indices = (solid.triangles.astype(whole), solid.lines.astype(whole), solid.of_line.astype("u1"))
    return b"".join(part.tobytes() for part in (corners, *indices))


def is_wide(solid: Shown) -> bool:
    """Whether the corners are too many to be numbered in two bytes."""
    return len(solid.places) > _MOST_SHORT


def layout(solid: Shown) -> dict[str, int | bool]:
    """How much of each there is in the bytes."""
    return {
        "places": len(solid.places),
        "triangles": len(solid.triangles),
        "lines": len(solid.lines),
        "wide": is_wide(solid),
    }
