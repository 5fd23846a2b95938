"""A plainly ground point built from vectors: points, directions and planes, measured without any closed form.

The frame is the library's: axis z, tip up, lip 1 on y = +t for x > 0; lip 2 is lip 1 turned half a turn.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Vector = NDArray[np.float64]

HALF_TURN = np.diag([-1.0, -1.0, 1.0])


@dataclass(frozen=True)
class SolidPoint:
    """Two plane flanks through two straight lips on a cylinder."""

    diameter: float
    point_angle: float
    web: float
    axial_relief: float

    @property
    def lip_direction(self) -> Vector:
        """Unit vector outwards and down along lip 1."""
        half = math.radians(self.point_angle / 2)
        return np.array([math.sin(half), 0.0, -math.cos(half)])

    @property
    def lip_start(self) -> Vector:
        """The place of lip 1's line beside the axis."""
        return np.array([0.0, self.web / 2, 0.0])

    @property
    def normal(self) -> Vector:
        """Normal of flank 1: square to the lip and to the direction that falls backwards at the axial relief."""
        relief = math.radians(self.axial_relief)
        backwards = np.array([0.0, -math.cos(relief), -math.sin(relief)])
        return np.cross(self.lip_direction, backwards)

    def height(self, x: float, y: float) -> float:
        """Height of flank 1 over a place in the end view."""
        n, start = self.normal, self.lip_start
        return float(start[2] - (n[0] * (x - start[0]) + n[1] * (y - start[1])) / n[2])

    @property
    def chisel_direction(self) -> Vector:
        """Where the two flanks meet, seen from the tip, pointing to lip 1's side."""
        line = np.cross(self.normal, HALF_TURN @ self.normal)
        seen = line[:2] / np.linalg.norm(line[:2])
        return seen if seen[1] > 0 else -seen

    @property
    def outer_corner(self) -> Vector:
        """Where lip 1 leaves the cylinder, found by walking out along it."""
        radius = self.diameter / 2
        near, far = 0.0, 4 * self.diameter
        for _ in range(200):
            middle = (near + far) / 2
            place = self.lip_start + middle * self.lip_direction
            near, far = (middle, far) if math.hypot(place[0], place[1]) < radius else (near, middle)
        return self.lip_start + near * self.lip_direction

    def chisel_corner(self, direction: Vector) -> Vector:
        """Where a chisel edge through the axis in this direction meets lip 1."""
        lip = self.lip_direction[:2]
        along = np.linalg.solve(np.column_stack([lip, -direction]), -self.lip_start[:2])[0]
        return self.lip_start + along * self.lip_direction

    def fall_at(self, radius: float) -> float:
        """Relief in degrees at a place of lip 1, by a small step back round the axis."""
        start = math.asin(self.web / 2 / radius)
        step = 1e-6
        before = self.height(radius * math.cos(start + step), radius * math.sin(start + step))
        after = self.height(radius * math.cos(start - step), radius * math.sin(start - step))
        return math.degrees(math.atan2(before - after, 2 * step * radius))

    def clearance(self) -> float:
        """Degrees behind the outer corner until flank 1 has come up to the corner's height again."""
        corner = self.outer_corner
        start = math.atan2(corner[1], corner[0])
        radius = self.diameter / 2

        def above(back: float) -> float:
            return self.height(radius * math.cos(start - back), radius * math.sin(start - back)) - float(corner[2])

        steps = np.linspace(1e-4, 2 * math.pi, 4000)
        first = next(i for i, back in enumerate(steps) if above(back) > 0)
        low, high = (steps[first - 1], steps[first]) if first else (0.0, steps[0])
        for _ in range(100):
            middle = (low + high) / 2
            low, high = (low, middle) if above(middle) > 0 else (middle, high)
        return math.degrees(low)


def degrees_between(a: Vector, b: Vector) -> float:
    """Angle between two directions."""
    cosine = np.dot(a, b) / np.linalg.norm(a) / np.linalg.norm(b)
    cross = np.linalg.norm(np.cross(np.append(a, 0.0)[:3], np.append(b, 0.0)[:3]))
    return math.degrees(math.atan2(cross / np.linalg.norm(a) / np.linalg.norm(b), cosine))
