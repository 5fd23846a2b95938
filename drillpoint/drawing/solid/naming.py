"""Names written beside a solid: where each part may be pointed at, which place is seen, and where its name stands.

The still picture and the browser lay names out by the same rule: each stands left or right of the drill, at the height
of the place it points at, or as near to that as its neighbours allow.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape
from itertools import pairwise
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt
from attrs import frozen

from drillpoint.drawing.solid.parts import INKS, kind_of

if TYPE_CHECKING:
    from drillpoint.drawing.solid.shown import Shown

Floats = npt.NDArray[np.float64]

TOUCHING = 0.03
"""Of the radius: how far in front of a place something must stand to hide it."""
ROW, BESIDE, SIZE = 21.0, 18.0, 14.0
"""Pixels from name to name, from the drill to its names, and the height of a letter."""
_DEEPEST, _BANDS = 1.2, 5  # diameters below the tip; how many places of a long part are tried, one in each stretch
# Cosines: a face further aslant is not pointed at; what is named from the tip only; an edge may stand on the outline.
_FACING, _FROM_TIP, _ROUND_BACK = 0.2, 0.9, -0.3
_OUT = 0.5  # how much an edge looks along the axis, against how much it looks outwards
_FLUTE = 0.5  # of the radius: further in, a flute's wall is that of the web


@frozen
class Spot:
    """A place that a name may point at, in mm, and the way its surface looks.

    facing: it is not pointed at when the cosine between its way and the way to the eye is less.
    """

    at: tuple[float, float, float]
    way: tuple[float, float, float]
    facing: float


@frozen
class Named:
    """A name and the places it may point at. above: it stands a row above its place, not to lie along a level edge."""

    text: str
    spots: tuple[Spot, ...]
    above: bool = False


@frozen
class Written:
    """A name where it stands: the end of its leader at the text, and at the place, in pixels. right: of the drill."""

    text: str
    x: float
    y: float
    to: tuple[float, float]
    right: bool


def named(solid: Shown) -> tuple[Named, ...]:
    """The names of a solid, in the order in which one would tell them."""
    found: list[Named] = []
    corners, webs = [], _between_lips(solid)
    for name in solid.parts:
        if kind_of(name) == "lip":
            line = _line(solid, name)
            found.append(Named("lip", (_edge(line[len(line) // 2]),), above=True))
            corners.append(_edge(line[np.hypot(line[:, 0], line[:, 1]).argmax()]))
        if kind_of(name) == "flute":
            webs += _along(solid, name, nearest_the_axis=True)
    found.append(Named("outer corner", tuple(corners)))
    for kind, text in _EDGES.items():
        lines = [_line(solid, name) for name in solid.parts if kind_of(name) == kind]
        found.append(Named(text, tuple(_edge(_place_on(line, kind)) for line in lines)))
    for kind, text in _FACES.items():
        spots = [spot for name in solid.parts if kind_of(name) == kind for spot in _along(solid, name)]
        found.append(Named(text, tuple(spots)))
    return tuple(one for one in (*found, Named("web", tuple(webs))) if one.spots)


_GROUND = ("flank", "primary facet", "secondary facet")
_EDGES = {"thinned lip": "thinned lip", "chisel edge": "chisel edge", "heel": "heel"}
_FACES = {
    **{kind: kind for kind in _GROUND},
    "notch face": "notch",
    "margin": "margin",
    "body": "land",
    "flute": "flute",
}


def _line(solid: Shown, name: str) -> Floats:
    """The places along a named edge."""
    pairs = solid.lines[solid.of_line == solid.parts.index(name)]
    return solid.places[[*pairs[:, 0], pairs[-1, 1]]]


def _place_on(line: Floats, kind: str) -> Floats:
    """Where an edge is pointed at: the heel where it begins at the flank, the others in the middle."""
    place: Floats = line[line[:, 2].argmax()] if kind == "heel" else line[len(line) // 2]
    return place


def _edge(place: Floats) -> Spot:
    x, y, z = map(float, place)
    out = np.array([x, y, _OUT * (np.hypot(x, y) or 1.0)])
    return Spot((x, y, z), _tuple(out / np.linalg.norm(out)), facing=_ROUND_BACK)


def _between_lips(solid: Shown) -> list[Spot]:
    """The web seen from the tip: a place beside the chisel edge, half way between the lips."""
    chisel = _line(solid, "chisel edge")
    flanks = [number for number, name in enumerate(solid.parts) if kind_of(name) in _GROUND]
    middles = solid.places[solid.triangles[np.isin(solid.of_place[solid.triangles[:, 0]], flanks)]].mean(axis=1)
    wanted = [np.linalg.norm(chisel[-1] - chisel[0]) * 0.5, 0.0]
    best = np.linalg.norm(middles[:, :2] - wanted, axis=1).argmin()
    return [Spot(_tuple(middles[best]), (0.0, 0.0, 1.0), facing=_FROM_TIP)]


def _along(solid: Shown, name: str, *, nearest_the_axis: bool = False) -> list[Spot]:
    """Places on a face, one in each stretch of its length: far from its border, or the nearest to the axis."""
    triangles = solid.triangles[solid.of_place[solid.triangles[:, 0]] == solid.parts.index(name)]
    middles, ways = solid.places[triangles].mean(axis=1), solid.normals[triangles].mean(axis=1)
    radius = np.hypot(middles[:, 0], middles[:, 1])
    good = -radius if nearest_the_axis else _from_border(solid, triangles, middles)
    if kind_of(name) == "flute" and not nearest_the_axis:
        good = np.where(radius > _FLUTE * solid.radius, good, 0.0)
    tip = solid.places[:, 2].max()
    top = middles[:, 2].max()
    stretches = np.linspace(top, tip - _DEEPEST * 2 * solid.radius, _BANDS + 1)
    spots = []
    for high, low in pairwise(stretches):
        inside = np.flatnonzero((middles[:, 2] <= high) & (middles[:, 2] > low))
        if high > low and len(inside):
            best = inside[good[inside].argmax()]
            spots.append(Spot(_tuple(middles[best]), _tuple(ways[best] / np.linalg.norm(ways[best])), facing=_FACING))
    return spots


def _from_border(solid: Shown, triangles: npt.NDArray[np.int64], middles: Floats) -> Floats:
    """How far each middle of a triangle is from the border of the face."""
    sides = np.sort(triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1)
    pairs, count = np.unique(sides, axis=0, return_counts=True)
    border = solid.places[pairs[count == 1]].mean(axis=1)
    return np.asarray(np.linalg.norm(middles[:, None] - border[None], axis=2).min(axis=1))


def _tuple(place: Floats) -> tuple[float, float, float]:
    x, y, z = map(float, place)
    return x, y, z


def written(pointed: Iterable[tuple[Named, float, float]], axis: float, aside: float, height: float) -> list[Written]:
    """Where names stand. pointed: each name and the place it points at. axis: of the drill; aside: its half width."""
    sides: dict[bool, list[tuple[float, Named, tuple[float, float]]]] = {False: [], True: []}
    for name, x, y in pointed:
        sides[x >= axis].append((y - ROW * name.above, name, (x, y)))
    placed = []
    for right, ones in sides.items():
        ones.sort(key=lambda one: one[0])
        beside = axis + (aside + BESIDE) * (1 if right else -1)
        for (_, name, to), at in zip(ones, spread([one[0] for one in ones], ROW, height - ROW), strict=True):
            placed.append(Written(name.text, beside, at, to, right))
    return placed


def spread(wanted: Sequence[float], low: float, high: float) -> list[float]:
    """Heights in order, a row apart and within limits, and otherwise as wanted."""
    at: list[float] = []
    for number, want in enumerate(wanted):
        at.append(max(want, low, at[-1] + ROW if number else low))
    for number in reversed(range(len(at))):
        at[number] = min(at[number], high if number == len(at) - 1 else at[number + 1] - ROW)
    return at


def name_paths(names: Sequence[Written]) -> list[str]:
    """The names as SVG: a light line under each leader, so that it shows on dark and on light."""
    lines = "".join(f"M{one.x:.1f} {one.y:.1f}L{one.to[0]:.1f} {one.to[1]:.1f}" for one in names)
    ink, paper = INKS["ink"], INKS["paper"]
    drawn = [
        f'<path d="{lines}" fill="none" stroke="{paper}" stroke-width="3.4"/>',
        f'<path d="{lines}" fill="none" stroke="{ink}" stroke-width="1.2"/>',
    ]
    for one in names:
        (x, y), at, end = one.to, one.x + (4 if one.right else -4), "start" if one.right else "end"
        drawn.append(f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3" fill="{paper}" stroke="{ink}" stroke-width="1.2"/>')
        drawn.append(
            f'<text x="{at:.1f}" y="{one.y + SIZE / 3:.1f}" font-size="{SIZE:g}" fill="{ink}" text-anchor="{end}" '
            f'font-family="Segoe UI, Helvetica Neue, Arial, Liberation Sans, sans-serif">{escape(one.text)}</text>'
        )
    return drawn
