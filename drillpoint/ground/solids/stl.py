"""Binary STL: the file that slicers for three-dimensional printers and modellers read."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import numpy.typing as npt

# 80 bytes of free text, which must not begin with "solid", the sign of the format's text form.
_HEADER = b"A drill point as triangles, in millimetres, z along the drill axis to the tip"
_TRIANGLE = np.dtype([("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("attribute", "<u2")])


def write(path: Path, vertices: npt.NDArray[np.float64], triangles: npt.NDArray[np.int32]) -> None:
    """Write triangles as binary STL: a header of 80 bytes, their number, then normal and corners of each."""
    corners = vertices[triangles]
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    records = np.zeros(len(triangles), dtype=_TRIANGLE)
    records["normal"] = normal / np.linalg.norm(normal, axis=1, keepdims=True)
    records["corners"] = corners
    with path.open("wb") as file:
        file.write(_HEADER.ljust(80))
        file.write(np.uint32(len(triangles)).astype("<u4").tobytes())
        file.write(records.tobytes())
