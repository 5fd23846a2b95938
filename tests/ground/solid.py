"""A ground drill built by a solid modeller: a round bar, less two flutes, less what the wheel takes off the flanks.

It shares no code with `drillpoint.ground` and none of its formulas, only the conventions: axis z with the tip up, lip 1
on y = +t for x > 0, lip 2 half a turn on, z = 0 where the straight design lip passes x = 0. Every tool's corners lie on
the true surface and are made by moving points, lines and generators about; what lies between them is flat.
`facet_error` says how far the flats stand off the true surface. Lengths in mm, angles in degrees.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

import manifold3d
import numpy as np
import numpy.typing as npt
import trimesh

from tests.ground.solid_tools import HALF_TURN, Array, Stated, Tool, Triangles, skinned, tool_from
from tests.ground.solid_wheels import cot, half_web, wheel

_SIDES = 1440


@dataclass(frozen=True)
class Solid:
    """Corners, triangles, and the name of the tool that left each triangle."""

    vertices: Array
    triangles: Triangles
    left_by: npt.NDArray[np.str_]
    manifold: manifold3d.Manifold
    names: Mapping[int, str]
    facet: float

    @cached_property
    def mesh(self) -> trimesh.Trimesh:
        """The same for trimesh, corners kept as they are."""
        return trimesh.Trimesh(self.vertices, self.triangles, process=False)

    def seen_from_lip_2(self) -> Solid:
        """The same solid half a turn on, its halves renamed, so that lip 2 stands where lip 1 stood."""
        other = str.maketrans("12", "21")
        left_by = np.array([name.translate(other) for name in self.left_by])
        names = {number: name.translate(other) for number, name in self.names.items()}
        turned = self.manifold.rotate((0.0, 0.0, 180.0))
        return Solid(self.vertices * HALF_TURN, self.triangles, left_by, turned, names, self.facet)

    def less(self, tools: Sequence[Tool]) -> Solid:
        """What further tools leave of it."""
        names = {**self.names, **{tool.body.original_id(): tool.name for tool in tools}}
        return _read_out(_subtracted(self.manifold, tools), names, self.facet)


def ground_drill(flute: Stated, flank_1: Stated, flank_2: Stated | None = None, *, facet: float) -> Solid:
    """A whole drill. Flute and flanks are stated by the keywords of their classes; a flank's `kind` names its class."""
    flanks = (
        *wheel(flute, flank_1, 1, "flank 1", facet),
        *wheel(flute, flank_2 or flank_1, 2, "flank 2", facet, half=2),
    )
    return _cut(flute, [*_flutes(flute, facet), *flanks], facet)


def carried_on(flute: Stated, flank: Stated, *, lip: int, facet: float) -> Solid:
    """A bar without flutes, ground behind one lip only: the flank is there all the way round. In lip 1's frame."""
    return _cut(flute, list(wheel(flute, flank, lip, "flank 1", facet)), facet)


def facet_error(flute: Stated, facet: float) -> float:
    """How far the flats of the flutes and of the round bar stand off the true surfaces, mm; nothing else is coarser."""
    radius = flute["diameter"] / 2
    twist, slope = _twist(flute), cot(flute.get("point_angle", 118.0) / 2)
    # A twisted four-sided patch with a diagonal, the bend of its sides, and the bar.
    patch = twist * facet**2 / 4 + (twist**2 * radius * 1.1 + 2 * twist * slope) * facet**2 / 8
    return patch + radius * (1 - math.cos(math.pi / _SIDES))


def _cut(flute: Stated, tools: Sequence[Tool], facet: float) -> Solid:
    radius = flute["diameter"] / 2
    low, high = _reach(flute)
    bar = manifold3d.Manifold.cylinder(high - low, radius, radius, _SIDES).translate((0.0, 0.0, low)).as_original()
    names = {bar.original_id(): "bar"} | {tool.body.original_id(): tool.name for tool in tools}
    return _read_out(_subtracted(bar, tools), names, facet)


def _subtracted(body: manifold3d.Manifold, tools: Sequence[Tool]) -> manifold3d.Manifold:
    left = manifold3d.Manifold.batch_boolean([body, *(tool.body for tool in tools)], manifold3d.OpType.Subtract)
    if left.status() != manifold3d.Error.NoError:
        raise ValueError(f"the modeller says {left.status()}")
    return left


def _read_out(whole: manifold3d.Manifold, names: Mapping[int, str], facet: float) -> Solid:
    mesh = whole.to_mesh64()
    counts = np.diff(np.asarray(mesh.run_index)) // 3
    left_by = np.repeat([names[number] for number in mesh.run_original_id], counts)
    corners = np.asarray(mesh.vert_properties)[:, :3]
    return Solid(corners, np.asarray(mesh.tri_verts).astype(np.int64), left_by, whole, names, facet)


def _reach(flute: Stated) -> tuple[float, float]:
    """Lowest and highest z of bar and tools."""
    radius = flute["diameter"] / 2
    return -radius * (cot(flute.get("point_angle", 118.0) / 2) + 1.6), 0.6 * radius


def _twist(flute: Stated) -> float:
    """Turn of the flutes, radians per mm: one turn in a lead of pi D / tan(helix angle)."""
    across = flute.get("body_diameter") or flute["diameter"]
    lead = math.inf if not flute.get("helix_angle", 30.0) else math.pi * across * cot(flute.get("helix_angle", 30.0))
    return 2 * math.pi / lead


def _flutes(flute: Stated, facet: float) -> Iterator[Tool]:
    for lip in (1, 2):
        section = _flute_section(flute, lip, facet)
        rows = _rows(flute, facet)
        layers = [_at_height(flute, section, z) for z in rows]
        yield tool_from(f"flute {lip}", *skinned(layers), half=lip)


def _rows(flute: Stated, facet: float) -> Array:
    """Heights of the flute's layers: close together where the lips are, further apart below."""
    low, high = _reach(flute)
    lips = -flute["diameter"] / 2 * (cot(flute.get("point_angle", 118.0) / 2) + 0.25)
    close = np.linspace(0.1 * high, lips, math.ceil((0.1 * high - lips) / facet) + 1)
    wide = np.linspace(lips, low - 0.1, math.ceil((lips - low) / (4 * facet)) + 1)
    return np.concatenate([[high + 0.1], close, wide[1:]])[::-1]


def _flute_section(flute: Stated, lip: int, facet: float) -> Array:
    """The flute's outline, counter-clockwise, as x, y, fall: a place of the design lip lies so much below x = 0."""
    radius, t = flute["diameter"] / 2, half_web(flute, lip)
    out = np.linspace(0.0, 1.06 * radius, math.ceil(1.06 * radius / facet) + 1)
    face = np.column_stack([out, np.full_like(out, t), out * cot(flute.get("point_angle", 118.0) / 2)])
    # The heel across the flute, at z = 0: so far round behind the other land's leading edge, which the helix has by
    # then turned ahead of its corner. The arc needs the heel clear of the web and of the axis.
    beside = half_web(flute, 3 - lip)
    turned_ahead = _twist(flute) * cot(flute.get("point_angle", 118.0) / 2) * math.sqrt(radius**2 - beside**2)
    heel = math.pi + math.asin(beside / radius) + turned_ahead - math.radians(flute.get("heel_angle", 75.0))
    clear = max(math.radians(10), math.asin(1.15 * t / radius))
    heel = min(max(heel, math.radians(100)), math.pi - clear)
    middle = _middle_of_arc(radius, t, radius * np.array([math.cos(heel), math.sin(heel)]))
    bend = math.atan2(-radius * math.cos(heel), middle - radius * math.sin(heel))
    bends = np.linspace(0.0, 1.06 * bend, math.ceil(1.06 * bend * (middle - t) / facet) + 1)[1:]
    arc = np.column_stack([-np.sin(bends), -np.cos(bends)]) * (middle - t) + [0.0, middle]
    first = math.atan2(t, out[-1]) + _twist(flute) * face[-1, 2]
    swing = np.linspace(first, math.atan2(arc[-1, 1], arc[-1, 0]), 9)
    round_outside = np.column_stack([np.cos(swing), np.sin(swing)]) * 1.6 * radius
    level = np.column_stack([np.concatenate([round_outside, arc[::-1]]), np.zeros(len(swing) + len(arc))])
    return np.concatenate([face, level])


def _middle_of_arc(radius: float, t: float, heel: Array) -> float:
    """Height above the axis of the middle of the circle that touches the web at (0, t) and passes through the heel."""
    low, high = t, 50 * radius
    for _ in range(200):
        middle = (low + high) / 2
        too_far = middle - t > math.hypot(heel[0], heel[1] - middle)
        low, high = (low, middle) if too_far else (middle, high)
    return middle


def _at_height(flute: Stated, section: Array, z: float) -> Array:
    """The outline at a height: pushed out or in by the web's taper, then turned; what lay lower has turned further."""
    x, y = section[:, 0], section[:, 1] - flute.get("web_taper", 0.0) / 2 * z
    turn = _twist(flute) * (z + section[:, 2])
    placed = (x * np.cos(turn) - y * np.sin(turn), x * np.sin(turn) + y * np.cos(turn), np.full_like(x, z))
    return np.column_stack(placed)
