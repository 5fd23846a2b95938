"""Readings taken on the solid of a drill as an inspector would take them: on edges, sections and probed heights.

Nothing here knows how the drill was stated. Corners are where edges end; angles are between measured places; reliefs
are slopes of a smooth curve laid through heights behind the lip. Each lip is read in its own frame.
"""

from __future__ import annotations

import math
from collections import defaultdict
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import trimesh

from tests.ground.solid import Solid, carried_on
from tests.ground.solid_tools import HALF_TURN, Array, Stated


@dataclass(frozen=True)
class Lip:
    """The line between flute and flank, from its foot at the chisel edge out to its corner, one point a row."""

    solid: Solid
    line: Array

    @property
    def foot(self) -> Array:
        """Inner end."""
        return np.asarray(self.line[0])

    @property
    def corner(self) -> Array:
        """Outer end."""
        return np.asarray(self.line[-1])

    @property
    def radius(self) -> float:
        """Of the corner, mm."""
        return float(np.hypot(*self.corner[:2]))

    def at_radius(self, radius: float) -> Array:
        """The place of the lip at a distance from the axis, from a smooth curve laid through its neighbours."""
        away = np.hypot(self.line[:, 0], self.line[:, 1])
        near = np.argsort(np.abs(away - radius))[:24]
        fitted = [np.polynomial.Polynomial.fit(away[near], self.line[near, k], 2)(radius) for k in range(3)]
        return np.array(fitted)


def line_between(solid: Solid, first: str, second: str) -> Array:
    """The longest line along which the faces of two names meet, end to end; "whole flank 1" takes in all its planes."""
    mesh = solid.mesh
    sides = [_is_of(solid, name)[mesh.face_adjacency] for name in (first, second)]
    meets = (sides[0][:, 0] & sides[1][:, 1]) | (sides[0][:, 1] & sides[1][:, 0])
    lines = [solid.vertices[chain] for chain in _chains(mesh.face_adjacency_edges[meets])]
    return max(lines, key=length_of, default=np.empty((0, 3)))


def _is_of(solid: Solid, name: str) -> npt.NDArray[np.bool_]:
    if name.startswith("whole "):
        return np.char.startswith(solid.left_by, name.removeprefix("whole "))
    return solid.left_by == name


def _chains(edges: Array) -> list[list[int]]:
    """Corner numbers in order along each unbranched line of edges."""
    beside: dict[int, list[int]] = defaultdict(list)
    for a, b in edges.tolist():
        beside[a].append(b)
        beside[b].append(a)
    chains, seen = [], set()
    ends = [corner for corner, others in beside.items() if len(others) == 1]
    for start in [*ends, *beside]:
        if start in seen:
            continue
        chain = [start]
        seen.add(start)
        while following := [corner for corner in beside[chain[-1]] if corner not in seen]:
            chain.append(following[0])
            seen.add(following[0])
        if len(beside[chain[-1]]) == 2 and start in beside[chain[-1]]:
            chain.append(start)
        chains.append(chain)
    return chains


def lips(solid: Solid) -> tuple[Lip, Lip]:
    """Both lips, each in its own frame."""
    found = []
    for half in (solid, solid.seen_from_lip_2()):
        line = line_between(half, "flute 1", "whole flank 1")
        inward = np.hypot(*line[0, :2]) > np.hypot(*line[-1, :2])
        found.append(Lip(half, line[::-1] if inward else line))
    return found[0], found[1]


def probed(solid: Solid, x: Array, y: Array) -> Array:
    """Heights of the solid over places of the end view, by rays from above."""
    high, low = solid.vertices[:, 2].max() + 1.0, solid.vertices[:, 2].min() - 1.0
    pairs = zip(x.tolist(), y.tolist(), strict=True)
    return np.array([solid.manifold.ray_cast((a, b, high), (a, b, low))[0].position[2] for a, b in pairs])


def relief_at(lip: Lip, radius: float) -> float:
    """Fall behind the lip round a cylinder, degrees: the first slope of a smooth curve through probed heights."""
    place = lip.at_radius(radius)
    behind = np.linspace(0.02, 0.14, 25) * lip.radius
    angle = math.atan2(place[1], place[0]) - behind / radius
    heights = probed(lip.solid, radius * np.cos(angle), radius * np.sin(angle))
    return _first_slope(np.append(0.0, behind), np.append(place[2], heights))


def corner_relief(lip: Lip) -> float:
    """The same at the outer corner, on the edge between flank and round bar."""
    behind, heights = _rim(lip.solid, lip.corner, "flank 1")
    near = behind < math.radians(12)
    return _first_slope(behind[near] * lip.radius, heights[near])


def heel(lip: Lip) -> float:
    """Degrees round the bar from the corner back to where the land ends on the flank."""
    return math.degrees(_rim(lip.solid, lip.corner)[0].max())


def _first_slope(run: Array, heights: Array) -> float:
    curve = np.polynomial.Polynomial.fit(run, heights, 4)
    return math.degrees(math.atan(-curve.deriv()(0.0)))


def _rim(solid: Solid, corner: Array, flank: str = "whole flank 1") -> tuple[Array, Array]:
    """How far round behind a corner, in radians, and how high, the edge between flank 1 and the round bar runs."""
    line = line_between(solid, flank, "bar")
    start = math.atan2(corner[1], corner[0])
    behind = (start - np.arctan2(line[:, 1], line[:, 0]) + 1e-9) % (2 * math.pi) - 1e-9
    order = np.argsort(behind)
    return behind[order], line[order, 2]


def heel_clearance(lip: Lip, flute: Stated, flank: Stated, number: int) -> float | None:
    """Degrees behind the corner at which the flank, carried on round the bar, is as high as the corner again."""
    ring = carried_on(flute, flank, lip=number, facet=lip.solid.facet)
    behind, heights = _rim(ring, lip.corner)
    behind, heights = behind[behind > math.radians(0.1)], heights[behind > math.radians(0.1)]
    up = np.flatnonzero((heights >= lip.corner[2]) & (behind <= math.pi))
    if not len(up):
        return None
    high = up[0]
    if high == 0:
        return 0.0
    if heights[high] - heights[high - 1] > 20 * lip.radius * (behind[high] - behind[high - 1]):
        return None  # The flank has run out, and what stands up is bar that no wheel has touched.
    share = (lip.corner[2] - heights[high - 1]) / (heights[high] - heights[high - 1])
    return math.degrees(behind[high - 1] + share * (behind[high] - behind[high - 1]))


def web_thickness(solid: Solid, height: float) -> float:
    """The two flutes' nearest distances from the axis, added: read in two sections below the point and carried up."""
    levels = np.array([0.45, 0.95]) * solid.vertices[:, 2].min()
    sums = []
    for level in levels:
        cuts, faces = trimesh.intersections.mesh_plane(solid.mesh, [0, 0, 1], [0, 0, level], return_faces=True)
        walls = [cuts[solid.left_by[faces] == name][..., :2] for name in ("flute 1", "flute 2")]
        sums.append(sum(nearest_to_axis(wall) for wall in walls))
    growth = (sums[1] - sums[0]) / (levels[1] - levels[0])
    return float(sums[0] + growth * (height - levels[0]))


def nearest_to_axis(pieces: Array) -> float:
    """Nearest distance of straight pieces from the axis."""
    start, run = pieces[:, 0], pieces[:, 1] - pieces[:, 0]
    share = np.clip(-(start * run).sum(-1) / np.maximum((run * run).sum(-1), 1e-300), 0.0, 1.0)
    return float(np.linalg.norm(start + share[:, None] * run, axis=-1).min())


def normal_rake_and_inclination(lip: Lip, radius: float) -> tuple[float, float]:
    """How the face leans back, square to the lip, and how far the lip trails, degrees."""
    step = 0.02 * lip.radius
    place, along = lip.at_radius(radius), lip.at_radius(radius + step) - lip.at_radius(radius - step)
    return rake_and_inclination(place, along, _face_normal(lip, place))


def rake_and_inclination(place: Array, outwards: Array, face_normal: Array) -> tuple[float, float]:
    """The same for an edge at a place, from its direction and its face's normal, whichever way that points."""
    along = outwards / np.linalg.norm(outwards)
    moves = np.array([-place[1], place[0], 0.0]) / np.hypot(*place[:2])
    into_face = np.cross(along, face_normal)
    into_face *= -np.sign(into_face[2])
    ahead = moves - (moves @ along) * along
    ahead /= np.linalg.norm(ahead)
    square = np.cross(ahead, along)
    square *= -np.sign(square[2])
    rake = math.degrees(math.atan2(-into_face @ ahead, into_face @ square))
    return rake, math.degrees(math.asin(-along @ moves))


def _face_normal(lip: Lip, place: Array) -> Array:
    """Normal of a bent surface laid through the flute's corners near a place of the lip, those on edges left out."""
    solid = lip.solid
    flute = solid.left_by == "flute 1"
    within = np.setdiff1d(solid.triangles[flute], solid.triangles[~flute])
    near = solid.vertices[within] - place
    near = near[np.linalg.norm(near, axis=1) < 0.08 * lip.radius]
    frame = np.linalg.svd(near - near.mean(axis=0), full_matrices=False)[2]
    u, v, w = (near @ frame.T).T
    powers = np.column_stack([u**i * v**j for i in range(4) for j in range(4 - i)])
    slopes = np.linalg.lstsq(powers, w)[0]
    return np.asarray(np.array([-slopes[4], -slopes[1], 1.0]) @ frame)


def bow(lip: Lip) -> float:
    """How far the lip stands off its chord in the end view, half way along it."""
    chord = (lip.corner - lip.foot)[:2]
    length = np.hypot(*chord)
    off = lip.line[:, :2] - lip.foot[:2]
    share, beside = off @ chord / length**2, (chord[0] * off[:, 1] - chord[1] * off[:, 0]) / length
    return float(np.interp(0.5, share, beside))


def half_angle(lip: Lip) -> float:
    """Between the lip's chord and the axis, degrees."""
    chord = lip.corner - lip.foot
    return math.degrees(math.atan2(np.hypot(*chord[:2]), -chord[2]))


def length_of(line: Array) -> float:
    return float(np.linalg.norm(np.diff(line, axis=0), axis=1).sum())


def chisel_readings(solid: Solid) -> dict[str, float]:
    """What the chisel edge shows, but for its rake."""
    first, second = lips(solid)
    line = line_between(solid, "whole flank 1", "whole flank 2")
    if np.linalg.norm(line[0] - first.foot) > np.linalg.norm(line[-1] - first.foot):
        line = line[::-1]
    chord, middle = (line[0] - line[-1])[:2], (line[0] + line[-1])[:2] / 2
    chords = [first.corner - first.foot, (second.corner - second.foot) * HALF_TURN * [-1, -1, 1]]
    place, direction = _beside_axis(solid, chord)
    return {
        "chisel_edge_angle": _obtuse(chord, chords),
        "chisel_edge_angle_at_axis": _obtuse(direction, chords),
        "chisel_edge_length": float(np.hypot(*chord)),
        "chisel_edge_rise": float(line[:, 2].max() - (line[0, 2] + line[-1, 2]) / 2),
        "chisel_edge_offset": float(np.hypot(*place)),
        "chisel_edge_rake": _chisel_rake(solid, place, direction),
        "point_offset": float(np.hypot(*middle)),
    }


def _obtuse(edge: Array, chords: list[Array]) -> float:
    acute = [math.atan2(c[0] * edge[1] - c[1] * edge[0], c[:2] @ edge) for c in chords]
    return 180 - math.degrees(sum(acute) / len(acute))


def _beside_axis(solid: Solid, towards: Array) -> tuple[Array, Array]:
    """The place of the chisel edge nearest to the axis, and its direction there towards lip 1, in the end view.

    Of an edge with a kink only the piece between the two faces that meet beside the axis is read.
    """
    pieces = [
        line_between(solid, f"flank 1{one}", f"flank 2{two}")
        for one in _faces(solid, "flank 1")
        for two in _faces(solid, "flank 2")
    ]
    line = min(filter(len, pieces), key=lambda piece: nearest_to_axis(np.stack([piece[:-1], piece[1:]], 1)[..., :2]))
    chord = (line[0] - line[-1])[:2]
    chord *= np.sign(chord @ towards) / np.hypot(*chord)
    across = np.array([-chord[1], chord[0]])
    run, off = line[:, :2] @ chord, line[:, :2] @ across
    near = np.argsort(np.abs(run))[: max(2, len(run) * 2 // 3)]
    curve = np.polynomial.Polynomial.fit(run[near], off[near], min(4, len(near) - 1))
    at = 0.0
    for _ in range(50):
        at = -curve(at) * curve.deriv()(at)
    direction = chord + curve.deriv()(at) * across
    return at * chord + curve(at) * across, direction / np.hypot(*direction)


def _faces(solid: Solid, flank: str) -> set[str]:
    return {name.removeprefix(flank) for name in np.unique(solid.left_by) if name.startswith(flank)}


def _chisel_rake(solid: Solid, place: Array, direction: Array) -> float:
    """Mean lean of the two flanks square to the edge, from heights probed on both sides of it."""
    ahead = np.array([-direction[1], direction[0]])
    run = np.linspace(0.004, 0.06, 15) * solid.vertices[:, 0].max()
    falls = []
    for way in (ahead, -ahead):
        places = place + run[:, None] * way
        curve = np.polynomial.Polynomial.fit(run, probed(solid, *places.T), 3)
        falls.append(-curve.deriv()(0.0))
    return float(-sum(90 - math.degrees(math.atan(fall)) for fall in falls) / 2)


def readings(solid: Solid) -> dict[str, float]:
    """Every reading that needs nothing but the solid, by the name an inspection gives it."""
    both = lips(solid)
    found = {
        "diameter": both[0].radius + both[1].radius,
        "web": web_thickness(solid, float(both[0].foot[2])),
        "lip_height_difference": float(both[0].corner[2] - both[1].corner[2]),
        "tip_height": float(solid.vertices[:, 2].max() - (both[0].corner[2] + both[1].corner[2]) / 2),
        **chisel_readings(solid),
    }
    for number, lip in enumerate(both, start=1):
        found[f"half_angle_{number}"] = half_angle(lip)
        found[f"lip_length_{number}"] = length_of(lip.line)
        found[f"lip_bow_{number}"] = bow(lip)
        found[f"lip_relief_{number}"] = corner_relief(lip)
    return found
