"""A ground point as a solid: a closed skin of triangles, for pictures, prints and measuring machines.

The skin is a net over the section of the fluted body. Each node is lifted along its helical line onto the flanks; the
outline of the net is swept down the flutes and lands, and closed with a flat end. So the solid is closed by the way it
is made.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt
from attrs import evolve

from drillpoint.errors import OutOfRange, UnknownGiven
from drillpoint.ground.flute import Array
from drillpoint.ground.solids import skin as marked
from drillpoint.ground.solids.carving import carved
from drillpoint.ground.solids.mending import mended
from drillpoint.ground.solids.net import Index, Net, edges_of
from drillpoint.ground.solids.section import Section
from drillpoint.ground.solids.skin import is_whole, pieces_of, skin
from drillpoint.ground.solids.solid import Mesh
from drillpoint.ground.solids.top import Top, top_of
from drillpoint.ground.stated import CannotBeGround
from drillpoint.quantities import nearest, quantity

if TYPE_CHECKING:
    from drillpoint.ground.point import GroundPoint

_DIAMETERS_OF_BODY = 2.5
_SHOULDER_AFTER = 0.25


def mesh(
    point: GroundPoint, *, tolerance: float = 0.01, length: float | None = None, scale: float = 1.0, **unknown: Any
) -> Mesh:
    """The point and a length of fluted body behind it as a closed solid.

    tolerance: the greatest distance between the triangles and the drill itself, about, mm of the drill before scaling.
    length: of body from the lower outer corner to the flat end, mm; left out, 2.5 diameters behind the lowest place of
    the flanks. scale: 10 makes a classroom model ten times the size.

    Behind a point of another diameter the body is given a shoulder of 45°, a quarter of a diameter behind the lowest
    place of the flanks: a shape of our choosing.

    Raises OutOfRange or UnknownGiven for numbers that make no solid, CannotBeGround for a point whose flanks do not
    reach over the whole end of the drill.
    """
    for name in unknown:
        raise UnknownGiven(f"mesh has no given called {name!r}{nearest(name, ('tolerance', 'length', 'scale'))}")
    tolerance, scale = _positive("tolerance", tolerance, 0.01), _positive("scale", scale, 10)
    section = Section(point.flute)
    top = top_of(point, section)
    try:
        net, chisel = skin(top, tolerance)
    except CannotBeGround as reason:
        raise CannotBeGround(_narrower(point) or str(reason)) from None
    end = _end(net, length, point.flute.diameter)
    section = _with_shoulder(section, float(net.z.min()))
    made = _closed(net, evolve(top, section=section), tolerance, end, chisel)
    notches = [cut for cut in point.thinned.notches if cut]
    for cut in notches:
        made = carved(made, cut, tolerance)
    made = mended(made, tolerance) if notches else made
    return _scaled(made, scale, mirrored=point.flute.hand == "left")


def _narrower(point: GroundPoint) -> str | None:
    """What to say of a land too wide for its flanks: how wide a one they reach over."""
    low, high = quantity("heel_angle").possible.low, point.flute.heel_angle
    if not _reaches(point, low):
        return None
    while high - low > 1:
        middle = (low + high) / 2
        low, high = (middle, high) if _reaches(point, middle) else (low, middle)
    return (
        f"a flank falls away before the heel of a land of {point.flute.heel_angle:g}°, or as steeply as the flute "
        f"itself: it reaches over a land of {math.floor(low)}°. Give the flute heel_angle={math.floor(low)}, set a "
        "cone's apex further out, or give less relief"
    )


def _reaches(point: GroundPoint, heel_angle: float) -> bool:
    try:
        narrow = evolve(point, flute=evolve(point.flute, heel_angle=heel_angle))
        return is_whole(top_of(narrow, Section(narrow.flute)))
    except CannotBeGround:
        return False


def _positive(name: str, given: Any, example: float) -> float:
    try:
        value = float(given)
    except (TypeError, ValueError):
        value = math.nan
    if not (math.isfinite(value) and value > 0):
        raise OutOfRange(f"{name} {given} must be a number above zero; {example:g} is usual")
    return value


def _end(net: Net, length: float | None, diameter: float) -> float:
    """Height of the flat end."""
    corner = float(net.z[[_corner(net, 1), _corner(net, 2)]].min())
    deep = corner - float(net.z.min())
    if length is None:
        return corner - deep - _DIAMETERS_OF_BODY * diameter
    needed = deep + 0.02 * diameter
    if _positive("length", length, 2.5 * diameter) < needed:
        raise OutOfRange(
            f"length {length:g} mm is too short: the flanks reach {deep:.3g} mm behind the outer corner; ask for "
            f"{needed:.3g} mm or more"
        )
    return corner - float(length)


def _with_shoulder(section: Section, lowest: float) -> Section:
    flute = section.flute
    body = flute.body_diameter
    if body is None or body == flute.diameter:
        return section
    start = lowest - _SHOULDER_AFTER * flute.diameter
    return evolve(section, shoulder=(start, start - abs(body - flute.diameter) / 2))


def _closed(net: Net, top: Top, tolerance: float, end: float, chisel: int) -> Mesh:
    """The net with walls below its outline and a flat end."""
    edges = edges_of(net.triangles)
    rim = _outline(edges)
    nodes, where = np.unique(rim, return_inverse=True)
    where = where.reshape(rim.shape)
    levels = _levels(net, top.section, rim, nodes, tolerance, end)
    rows = len(levels)
    walls = _places(top.section, net.s[nodes], net.w[nodes], levels[1:-1])
    bottom = _places(top.section, net.s, net.w, np.full((1, len(net.s)), end))
    count = len(net.s)
    number = np.empty((rows, len(nodes)), dtype=np.int64)
    number[0], number[-1] = nodes, nodes + count + (rows - 2) * len(nodes)
    number[1:-1] = count + np.arange((rows - 2) * len(nodes)).reshape(rows - 2, len(nodes))
    a, b = (number[:-1, where[:, side]] for side in (0, 1))
    a_low, b_low = (number[1:, where[:, side]] for side in (0, 1))
    sides = [np.stack([v.ravel() for v in part], axis=1) for part in ((b, a, a_low), (b, a_low, b_low))]
    cap = net.triangles[:, ::-1] + number[-1, 0] - nodes[0]
    names, faces = _named(net, top, rim, rows - 1)
    return Mesh(
        np.concatenate([np.stack([net.x, net.y, net.z], axis=1), walls, bottom]),
        np.concatenate([net.triangles, *sides, cap]).astype(np.int32),
        names,
        faces,
        _lines(net, chisel, number, nodes),
    )


def _outline(edges: Index) -> Index:
    """The directed edges that only one triangle has."""
    top = int(edges.max()) + 1
    forth, back = edges[:, 0] * top + edges[:, 1], edges[:, 1] * top + edges[:, 0]
    return edges[~np.isin(forth, back)]


def _levels(net: Net, section: Section, rim: Index, nodes: Index, tolerance: float, end: float) -> Array:
    """Heights of the rows of each wall: one row of nodes a line, from the top down."""
    twist = section.flute.twist
    a, b = rim.T
    step = float(np.hypot(net.x[a] - net.x[b], net.y[a] - net.y[b]).max())
    radius = section.flute.radius
    # A chord of the helix is off by r·turn²/8, and a mesh of the wall by a quarter of step·turn off its diagonal.
    turn = (math.sqrt(step**2 / 16 + radius * tolerance / 2) - step / 4) * 4 / radius
    highest = float(net.z[nodes].max())
    stops = [stop for stop in section.shoulder or () if stop > end + 1e-3 * radius] + [end]
    rows = [net.z[nodes][None]]
    before = net.z[nodes]
    for stop in stops:
        count = max(1, math.ceil((highest - stop) * twist / turn))
        shares = np.arange(1, count + 1)[:, None] / count
        rows.append(before + shares * (stop - before))
        before, highest = np.full_like(before, stop), stop
    rows[-1][-1] = end
    return np.concatenate(rows)


def _places(section: Section, s: Array, w: Array, z: Array) -> Array:
    x, y = section.places(s, w, z)
    return np.stack([x.ravel(), y.ravel(), z.ravel()], axis=1)


def _named(net: Net, top: Top, rim: Index, meshes: int) -> tuple[tuple[str, ...], npt.NDArray[np.int32]]:
    """Names of the faces, and the face of each triangle."""
    first = len(top.names)
    names = (*top.names, *(f"{kind} {lip}" for kind in ("flute", "margin", "body") for lip in (1, 2)), "end")
    mark = net.marks[rim[:, 0]] & net.marks[rim[:, 1]]
    kinds = (
        marked.FLUTE_1,
        marked.FLUTE_2,
        marked.FRONT_1,
        marked.FRONT_2,
        marked.BODY_1 | marked.STEP_1,
        marked.BODY_2 | marked.STEP_2,
    )
    if not (net.marks & marked.FRONT_1).any():
        kinds = (*kinds[:2], 0, 0, *kinds[4:])
    wall = np.select([(mark & kind) > 0 for kind in kinds], list(range(first, first + len(kinds))), first)
    sides = np.tile(wall, meshes)
    cap = np.full(len(net.triangles), len(names) - 1)
    return names, np.concatenate([pieces_of(net, top), sides, sides, cap]).astype(np.int32)


def _corner(net: Net, lip: int) -> int:
    """The node at an outer corner."""
    wall = net.marks & (marked.FLUTE_1 if lip == 1 else marked.FLUTE_2)
    sign = 1 if lip == 1 else -1
    return int(np.where(wall > 0, sign * net.s, -np.inf).argmax())


def _lines(net: Net, chisel: int, number: Index, nodes: Index) -> dict[str, npt.NDArray[np.int32]]:
    """The named lines of the solid."""
    on_chisel = np.flatnonzero(net.marks & chisel)
    ends = [on_chisel[(net.marks[on_chisel] & wall) > 0] for wall in (marked.FLUTE_1, marked.FLUTE_2)]
    lines: dict[str, Index] = {}
    for lip, wall, sign in ((1, marked.FLUTE_1, 1), (2, marked.FLUTE_2, -1)):
        on_wall = np.flatnonzero(net.marks & wall)
        inner = (sign * net.s[ends[lip - 1]]).max()
        lip_nodes = on_wall[sign * net.s[on_wall] >= inner]
        lines[f"lip {lip}"] = lip_nodes[np.argsort(sign * net.s[lip_nodes])]
        heel = np.flatnonzero((net.s == sign) & (net.w == (1 if lip == 1 else 0)))[0]
        for name, node in (("margin", _corner(net, lip)), ("heel", int(heel))):
            lines[f"{name} {lip}"] = number[:, np.searchsorted(nodes, node)]
    first, last = lines["lip 1"][0], lines["lip 2"][0]
    along = np.array([net.x[last] - net.x[first], net.y[last] - net.y[first]])
    lines["chisel edge"] = on_chisel[np.argsort(along @ np.stack([net.x[on_chisel], net.y[on_chisel]]))]
    return {name: line.astype(np.int32) for name, line in lines.items()}


def _scaled(made: Mesh, scale: float, *, mirrored: bool) -> Mesh:
    """The mesh in its size and, for a left-hand drill, mirrored in y with its triangles wound the other way."""
    factors = np.array([scale, -scale if mirrored else scale, scale])
    triangles = made.triangles[:, ::-1] if mirrored else made.triangles
    return evolve(made, vertices=made.vertices * factors, triangles=np.ascontiguousarray(triangles))
