"""A closed solid made of triangles."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import numpy as np
import numpy.typing as npt
from attrs import field, frozen


@frozen(eq=False)
class Mesh:
    """A closed solid made of triangles.

    vertices: x, y, z of each, mm, shape (n, 3). triangles: three vertices each, shape (m, 3), counter-clockwise seen
    from outside. names: of the faces, such as "flank 1", "flute 2", "margin 1", "body 2", "end". faces: for each
    triangle, which of the names is its face. edges: named lines as the vertices they run through: "lip 1", "lip 2",
    "chisel edge", "margin 1", "heel 1" and so on; margins and heels run from the point to the end.

    Frame: the drill axis is z, tip towards +z, lip 1 at y > 0 on the side of +x; a left-hand drill has lip 1 at y < 0.
    """

    vertices: npt.NDArray[np.float64]
    triangles: npt.NDArray[np.int32]
    names: tuple[str, ...]
    faces: npt.NDArray[np.int32]
    edges: Mapping[str, npt.NDArray[np.int32]] = field(factory=dict)

    @property
    def volume(self) -> float:
        """mm³ inside the triangles."""
        a, b, c = (self.vertices[corner] - self.vertices[0] for corner in self.triangles.T)
        return float(np.einsum("ij,ij->", a, np.cross(b, c)) / 6)

    def save(self, path: str | Path) -> None:
        """Write the solid as a binary STL file, in mm, its normals outwards."""
        from drillpoint.ground.solids.stl import write

        write(Path(path), self.vertices, self.triangles)
