"""A thinned or split point as a solid: two wedges taken off a drill, laid by what is read on the drill itself."""

from __future__ import annotations

import math
from dataclasses import dataclass

import manifold3d
import numpy as np

from tests.ground.solid import Solid
from tests.ground.solid_readings import Lip, length_of, line_between, lips, nearest_to_axis, rake_and_inclination
from tests.ground.solid_tools import HALF_TURN, Array, Stated, Tool, tool_from

_STEPS = 40


@dataclass(frozen=True)
class ThinnedSide:
    """The edges of one half in its own frame, from within outwards: the thinned lip and what is left of the lip."""

    solid: Solid
    edge: Array
    lip: Lip


def thinned(plain: Solid, notches: tuple[Stated | None, Stated | None]) -> Solid:
    """A drill less the notches beside lip 1 and lip 2, stated by the keywords of the class they stand for."""
    tools = [
        _wedge(notch, lip, _chisel_from(lip), number)
        for number, (lip, notch) in enumerate(zip(lips(plain), notches, strict=True), start=1)
        if notch
    ]
    return plain.less(tools)


def thinned_sides(solid: Solid) -> tuple[ThinnedSide, ThinnedSide]:
    """The edges of a drill with two notches."""
    sides = []
    for half, lip in zip((solid, solid.seen_from_lip_2()), lips(solid), strict=True):
        edge = line_between(half, "notch 1", "whole flank 1")
        outwards = np.linalg.norm(edge[-1] - lip.foot) < np.linalg.norm(edge[0] - lip.foot)
        sides.append(ThinnedSide(half, edge if outwards else edge[::-1], lip))
    return sides[0], sides[1]


def thinned_readings(solid: Solid) -> dict[str, float]:
    """Every reading of the point as a whole, by the name an inspection gives it."""
    sides = thinned_sides(solid)
    ends = [sides[0].edge[0], sides[1].edge[0] * HALF_TURN]
    chord, middle = (ends[0] - ends[1])[:2], (ends[0] + ends[1])[:2] / 2
    return {
        "thinned_chisel_length": float(np.hypot(*chord)),
        "chisel_edge_angle": 180 - sum(_turn(side.lip.corner - side.lip.foot, chord) for side in sides) / 2,
        "point_offset": float(np.hypot(*middle)),
        "thinned_web": sum(_beside_axis(side) for side in sides),
        "core_thickness": sum(_core(side) for side in sides),
    }


def side_readings(side: ThinnedSide, whole_lip: float) -> dict[str, float]:
    """Every reading of one half; whole_lip is the length of its lip before it was thinned."""
    main, chord = side.lip.corner - side.lip.foot, side.edge[-1] - side.edge[0]
    untouched = length_of(side.lip.line)
    return {
        "thinning_angle": _turn(main, chord),
        "thinned_lip_in_end_view": length_of(side.edge[:, :2]),
        "thinned_lip_length": length_of(side.edge),
        "thinning_reach": float(side.edge[-1, :2] @ main[:2] / np.hypot(*main[:2])),
        "untouched_lip_length": untouched,
        "untouched_lip_share": untouched / whole_lip,
        "thinned_lip_distance": _beside_axis(side),
        "core": _core(side),
        "middle_rake": _middle_rake(side),
    }


def _chisel_from(lip: Lip) -> Array:
    """The chisel edge in the lip's own frame, from the lip's foot on."""
    line = line_between(lip.solid, "whole flank 1", "whole flank 2")
    return line if np.linalg.norm(line[0] - lip.foot) < np.linalg.norm(line[-1] - lip.foot) else line[::-1]


def _wedge(notch: Stated, lip: Lip, chisel: Array, number: int) -> Tool:
    """The room ahead of the face and above the floor, as a profile swept along the corner line.

    It is laid in a frame of its own: along the thinned lip, ahead of it, up; the origin at the chisel edge's new end.
    """
    angle = math.radians(notch["thinning_angle"])
    out, ahead = np.array([math.cos(angle), math.sin(angle), 0.0]), np.array([-math.sin(angle), math.cos(angle), 0.0])
    end = _new_end(notch, chisel, ahead)
    met = _crossed(lip.line, (lip.line - end) @ ahead)
    fall = -(met - end)[2] / ((met - end) @ out)
    lean = math.tan(math.radians(notch.get("notch_rake", 0.0)))
    slope, depth = math.tan(math.radians(notch.get("notch_slope", 55.0))), notch.get("notch_depth", 0.0)

    def on_face(s: float, w: float) -> Array:
        return np.asarray(s * out + lean * (w + fall * s) * ahead + w * np.array([0.0, 0.0, 1.0]))

    corner, along = on_face(0.0, -depth), _unit(on_face(1.0, -slope))
    up_face = on_face(0.0, 1.0)
    up_face = _unit(up_face - (up_face @ along) * along)
    forward = np.cross(up_face, along)
    forward *= np.sign(forward @ ahead)
    opening = math.radians(notch.get("notch_angle", 90.0))
    profile = _profile(opening, notch.get("corner_radius", 0.0), 3 * lip.radius)
    placed = end + corner + profile[:, :1] * up_face + profile[:, 1:] * forward
    ends = [placed - 1.5 * lip.radius * along, placed + 3 * lip.radius * along]
    return _swept(f"notch {number}", profile, ends, half=number)


def _new_end(notch: Stated, chisel: Array, ahead: Array) -> Array:
    """Where the chisel edge is to end: so far from its place beside the axis, or where the face is so far from it."""
    if "face_distance" in notch:
        return _crossed(chisel, chisel @ ahead - notch["face_distance"])
    start, run = chisel[:-1], np.diff(chisel, axis=0)
    share = -(start * run)[:, :2].sum(axis=1) / (run * run)[:, :2].sum(axis=1)
    feet = start + np.clip(share, 0.0, 1.0)[:, None] * run
    nearest = int(np.hypot(feet[:, 0], feet[:, 1]).argmin())
    line = np.insert(chisel, nearest + 1, feet[nearest], axis=0)
    away = np.hypot(*(line - feet[nearest])[:, :2].T)
    return _crossed(line, np.where(np.arange(len(line)) <= nearest, away, -away) - notch["thinned_chisel_length"] / 2)


def _crossed(line: Array, gap: Array) -> Array:
    """The place of a line at which a gap, positive at its start, comes to nothing."""
    after = int(np.argmax(gap <= 0))
    share = gap[after - 1] / (gap[after - 1] - gap[after])
    return np.asarray(line[after - 1] + share * (line[after] - line[after - 1]))


def _profile(opening: float, radius: float, size: float) -> Array:
    """Across the corner line, with up the face and ahead as axes: a wedge, its corner rounded off."""
    floor = np.array([math.cos(opening), math.sin(opening)])
    far = size * np.array([1.0, 0.0]), size * (floor + np.array([1.0, 0.0])), size * floor
    if radius == 0:
        return np.array([(0.0, 0.0), *far])
    start = radius / math.tan(opening / 2)
    middle = np.array([start, radius])
    # The rounding goes from under the face round to above the floor, on the side of the corner.
    swing = np.linspace(-math.pi / 2, -(math.pi - opening) - math.pi / 2, _STEPS + 1)
    arc = middle + radius * np.column_stack([np.cos(swing), np.sin(swing)])
    return np.concatenate([arc[::-1], far])


def _swept(name: str, profile: Array, ends: list[Array], half: int) -> Tool:
    lid = np.asarray(manifold3d.triangulate([profile])).astype(np.int64)
    count, here = len(profile), np.arange(len(profile))
    after = np.roll(here, -1)
    sides = [np.stack([here, after, after + count], -1), np.stack([here, after + count, here + count], -1)]
    corners, triangles = np.concatenate(ends), np.concatenate([*sides, lid[:, ::-1], lid + count])
    a, b, c = (corners[triangles[:, k]] for k in range(3))
    inside_out = np.einsum("ij,ij->", a, np.cross(b, c)) < 0
    return tool_from(name, corners, triangles[:, ::-1] if inside_out else triangles, half=half)


def _turn(first: Array, second: Array) -> float:
    """Degrees from one direction of the end view to another, counter-clockwise."""
    return math.degrees(math.atan2(first[0] * second[1] - first[1] * second[0], first[:2] @ second[:2]))


def _beside_axis(side: ThinnedSide) -> float:
    """From the axis to the thinned lip's chord in the end view."""
    start, chord = side.edge[0, :2], (side.edge[-1] - side.edge[0])[:2]
    return float((chord[0] * start[1] - chord[1] * start[0]) / np.hypot(*chord))


def _core(side: ThinnedSide) -> float:
    """The nearest that the walls of the notch come to the axis."""
    corners = side.solid.vertices[side.solid.triangles[side.solid.left_by == "notch 1"]][..., :2]
    return min(nearest_to_axis(corners[:, pair]) for pair in ([0, 1], [1, 2], [2, 0]))


def _middle_rake(side: ThinnedSide) -> float:
    """Normal rake half way along the thinned lip, as the end view shows it, from the wall of the notch there."""
    chord = side.edge[-1] - side.edge[0]
    share = (side.edge - side.edge[0])[:, :2] @ chord[:2] / (chord[:2] @ chord[:2])
    near = np.argsort(np.abs(share - 0.5))[: max(2, len(share) // 2)]
    degree = min(2, len(near) - 1)
    curves = [np.polynomial.Polynomial.fit(share[near], side.edge[near, k], degree) for k in range(3)]
    middle, along = np.array([c(0.5) for c in curves]), np.array([c.deriv()(0.5) for c in curves])
    faces = side.solid.vertices[side.solid.triangles[side.solid.left_by == "notch 1"]]
    normals = np.cross(faces[:, 1] - faces[:, 0], faces[:, 2] - faces[:, 0])
    off = np.abs(np.einsum("ij,ij->i", normals, middle - faces[:, 0])) / np.linalg.norm(normals, axis=1)
    distance = np.where(off < 1e-3 * side.lip.radius, np.linalg.norm(faces.mean(axis=1) - middle, axis=1), np.inf)
    return rake_and_inclination(middle, along, normals[int(distance.argmin())])[0]


def _unit(v: Array) -> Array:
    return np.asarray(v / np.linalg.norm(v))
