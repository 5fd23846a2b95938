"""A still picture of a ground point as a solid: shaded in greys, hidden faces removed, edges drawn over it."""

from __future__ import annotations

import base64
import math
from html import escape
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt
from attrs import evolve, frozen

from drillpoint.drawing.picture import Picture
from drillpoint.drawing.showing import Units, bar_length, read_units
from drillpoint.drawing.solid.naming import TOUCHING, Written, name_paths, named, written
from drillpoint.drawing.solid.parts import AMBIENT, INKS, LIGHT, LINES, LIT, PATTERNS, SURFACES, kind_of
from drillpoint.drawing.solid.raster import Floats, Index, Pixels, png, rasterised
from drillpoint.drawing.solid.shown import NO_PART, Shown, View, shown, view_named
from drillpoint.drawing.solid.words import alt_text
from drillpoint.errors import LearnerError

if TYPE_CHECKING:
    from drillpoint.ground.point import GroundPoint

Greys = npt.NDArray[np.uint8]
Mask = npt.NDArray[np.bool_]

WIDTH, HEIGHT = 480, 480
_FOR_NAMES = 110  # pixels on either side
_DARKER = 0.34  # of white: dots and lines against the face they mark
_FINE = 2  # pixels of the depth buffer to one of the picture, each way
_FILLED, _DIAMETERS = 0.9, 1.45  # how much of the frame is filled, by what length from the tip
_EDGE_ON = 0.01  # sine of the angle under which a triangle counts as seen from its edge
# Of the radius: how far edges are lifted towards the eye off the faces they bound, and how far a surface comes towards
# the eye within a pixel of where it bends out of sight.
_LIFT, _BENDING = 0.012, 0.25


def solid_picture(point: GroundPoint, *, view: str = "above", units: str = "mm", labels: bool = False) -> Picture:
    """A ground point as a solid, in parallel projection and true proportions.

    view: "above" (from above, before a lip), "end" (seen from the tip), "side" (square to the lips),
    "along lips" or "along chisel edge". units: "mm" or "inch", for what is written. labels: whether the parts have
    their names beside them.
    Raises LearnerError for what is no ground point, an unknown view or unit; CannotBeGround when it makes no solid.

    >>> point = GroundPoint(Flute(diameter=10, web=1.5), PlaneFlank(point_angle=118, lip_relief=12))
    >>> solid_picture(point, view="end").save("point")
    """
    from drillpoint.ground.point import GroundPoint

    if not isinstance(point, GroundPoint):
        raise LearnerError(f"a picture of a solid shows a GroundPoint, not {type(point).__name__}")
    solid = shown(point)
    words = alt_text(point, point.inspect(), read_units(units))
    return still(solid, view_named(solid.views, view), words, units, labels=labels)


def still(solid: Shown, view: View, words: str, units: str, *, labels: bool = False) -> Picture:
    """The picture of a solid that is ready for drawing. words: its numbers, said behind what the view is."""
    seen = _seen(solid, view)
    pixels = rasterised(seen.places * [_FINE, _FINE, 1], solid.triangles[seen.towards], WIDTH * _FINE, HEIGHT * _FINE)
    names = _names(solid, view, seen, pixels) if labels else []
    alt = f"The point as a solid, seen {_from(view)}. {words}{_told(names)}"
    image = base64.b64encode(png(*_greys(solid, seen, pixels))).decode("ascii")
    beside = _FOR_NAMES if labels else 0
    left, width = -beside, WIDTH + 2 * beside
    opening = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{left} 0 {width} {HEIGHT}" width="{width}" '
        f'height="{HEIGHT}" style="max-width: 100%; height: auto" role="img" aria-label="{escape(alt)}">'
    )
    parts = [
        opening,
        f'<rect x="{left}" width="{width}" height="{HEIGHT}" fill="{INKS["paper"]}"/>',
        f'<image width="{WIDTH}" height="{HEIGHT}" href="data:image/png;base64,{image}"/>',
        '<g fill="none" stroke-linecap="round" stroke-linejoin="round">',
        *_edges(solid, seen, pixels),
        "</g>",
        *(name_paths(names) if names else ()),
        _bar(seen.scale, read_units(units)),
        "</svg>",
    ]
    return Picture("\n".join(parts), alt)


def _told(names: list[Written]) -> str:
    """The names that are written, from the top down on either side."""
    sides = ((side, [one.text for one in names if one.right == (side == "right")]) for side in ("left", "right"))
    return "".join(f" Named on the {side}, from the top down: {', '.join(texts)}." for side, texts in sides if texts)


def _names(solid: Shown, view: View, seen: _Seen, pixels: Pixels) -> list[Written]:
    """The names of what is seen, each pointing at the place that looks most towards the eye."""
    pointed = []
    for one in named(solid):
        at = seen.placed(turned(np.array([spot.at for spot in one.spots]), view))
        facing = turned(np.array([spot.way for spot in one.spots]), view)[:, 2]
        least = [spot.facing for spot in one.spots]
        framed = (at[:, :2] > 0).all(axis=1) & (at[:, :2] < [WIDTH, HEIGHT]).all(axis=1)
        good = framed & _visible(at, pixels, TOUCHING * solid.radius) & (facing > least)
        if good.any():
            best = np.where(good, facing, -np.inf).argmax()
            pointed.append((one, float(at[best, 0]), float(at[best, 1])))
    axis = float(seen.placed(np.zeros((1, 3)))[0, 0])
    return written(pointed, axis, seen.scale * solid.radius, HEIGHT)


def _from(view: View) -> str:
    return {"above": "from above, before a lip", "end": "from the tip"}.get(view.name, view.title)


@frozen(eq=False)
class _Seen:
    """A solid turned towards the eye.

    places: in pixels, x right, y down, z towards the eye in mm. towards: whether each triangle faces the eye; the skin
    is closed, so the others are never seen. scale: pixels a mm. middle: what stands in the middle, to the right and up.
    """

    places: Floats
    normals: Floats
    towards: Mask
    scale: float
    middle: Floats

    def placed(self, at: Floats) -> Floats:
        """Places in mm as the eye has them, in the picture's pixels and mm towards the eye."""
        x = WIDTH / 2 + self.scale * (at[:, 0] - self.middle[0])
        y = HEIGHT / 2 - self.scale * (at[:, 1] - self.middle[1])
        return np.stack([x, y, at[:, 2]], axis=1)


def turned(vectors: Floats, view: View) -> Floats:
    """Vectors of the drill's frame as the eye has them: to the right, up, towards the eye."""
    turn, tilt = math.radians(view.turn), math.radians(view.tilt)
    x = vectors[:, 0] * math.cos(turn) - vectors[:, 1] * math.sin(turn)
    y = vectors[:, 0] * math.sin(turn) + vectors[:, 1] * math.cos(turn)
    z = vectors[:, 2]
    up = y * math.sin(tilt) + z * math.cos(tilt)
    return np.stack([x, up, z * math.sin(tilt) - y * math.cos(tilt)], axis=1)


def _seen(solid: Shown, view: View) -> _Seen:
    at = turned(solid.places, view)
    # The body runs out of the picture, as it goes on behind the point.
    near = at[solid.places[:, 2] > solid.places[:, 2].max() - _DIAMETERS * 2 * solid.radius]
    low, high = near[:, :2].min(axis=0), near[:, :2].max(axis=0)
    scale = float(min(WIDTH, HEIGHT) * _FILLED / max(high - low))
    middle = (low + high) / 2
    a, b, c = (at[corner] for corner in solid.triangles.T)
    across = np.cross(b - a, c - a)
    towards = across[:, 2] > _EDGE_ON * np.linalg.norm(across, axis=1)
    seen = _Seen(at, turned(solid.normals, view), towards, scale, middle)
    return evolve(seen, places=seen.placed(at))


def _greys(solid: Shown, seen: _Seen, pixels: Pixels) -> tuple[Greys, Greys]:
    """The shades of grey, and how much of each pixel of the picture is covered."""
    corners = solid.triangles[seen.towards][pixels.triangle]
    normal = np.einsum("ij,ijk->ik", pixels.shares, seen.normals[corners])
    towards_light = normal @ LIGHT / np.linalg.norm(normal, axis=1).clip(1e-12)
    looks = [SURFACES.get(kind_of(name), SURFACES["body"]) for name in solid.parts]
    part = solid.of_place[corners[:, 0]]
    tone = np.array([look.tone for look in looks])[part] * (AMBIENT + LIT * towards_light.clip(0))
    pattern = np.array([PATTERNS.index(look.pattern) for look in looks])[part]
    y, x = np.divmod(pixels.hit, WIDTH * _FINE)
    tone -= np.where(_is_marked(pattern, x / _FINE, y / _FINE), _DARKER, 0.0)
    grey, hit = np.zeros(pixels.depth.size), np.zeros(pixels.depth.size)
    grey[pixels.hit], hit[pixels.hit] = tone, 1.0
    small = (HEIGHT, _FINE, WIDTH, _FINE)
    cover = hit.reshape(small).mean(axis=(1, 3))
    shade = grey.reshape(small).mean(axis=(1, 3)) / np.where(cover > 0, cover, 1.0)
    return (255 * shade.clip(0, 1)).astype(np.uint8), (255 * cover).astype(np.uint8)


def _is_marked(pattern: Index, x: Floats, y: Floats) -> Mask:
    """Whether a place of the picture is in a dot or a line of its pattern."""
    dots = np.hypot(x % 5 - 2.5, (y + 2.5 * (x // 5 % 2)) % 5 - 2.5) < 1.1
    lines = (x + y) % 6 < 1.3
    return np.asarray(((pattern == 1) & dots) | ((pattern == 2) & lines))


def _edges(solid: Shown, seen: _Seen, pixels: Pixels) -> list[str]:
    """Paths of the edges that are seen, thin ones first."""
    lines, of_line = solid.lines, solid.of_line
    outline = _outline(solid, seen)
    seen_outline = _stands_out(seen.places[outline].mean(axis=1), pixels, _BENDING * solid.radius)
    seen_lines = _visible(seen.places[lines].mean(axis=1), pixels, _LIFT * solid.radius)
    ends = seen.places[np.concatenate([outline[seen_outline], lines[seen_lines]])]
    numbers = [*[NO_PART] * int(seen_outline.sum()), *of_line[seen_lines].tolist()]
    drawn: dict[str, dict[str, None]] = {kind: {} for kind in LINES}
    for number, ends_of_one in zip(numbers, ends[:, :, :2], strict=True):
        kind = "edge" if number == NO_PART else kind_of(solid.parts[number])
        first, second = sorted(f"{x:.1f} {y:.1f}" for x, y in ends_of_one)
        # Seen from its end a helix is a thousand strokes over one another.
        if first != second:
            drawn[kind][f"M{first}L{second}"] = None
    paths = []
    for kind, strokes in drawn.items():
        if strokes:
            line, shape = LINES[kind], "".join(strokes)
            look = f'stroke="{INKS[line.ink]}" stroke-width="{line.width}"'
            paths.append(f'<path class="{kind.replace(" ", "-")}" d="{shape}" {look}/>')
            if line.core:
                paths.append(f'<path d="{shape}" stroke="{INKS["paper"]}" stroke-width="{line.width / 3:.1f}"/>')
    return paths


def _outline(solid: Shown, seen: _Seen) -> Index:
    """Edges between a triangle that faces the eye and one that looks away, where the surface bends out of sight."""
    count = len(seen.places)
    pairs = solid.triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2)
    facing = np.repeat(seen.towards, 3)
    there, back = pairs @ [count, 1], pairs[:, ::-1] @ [count, 1]
    order = np.argsort(there)
    found = np.searchsorted(there[order], back).clip(max=len(there) - 1)
    other = order[found]
    paired = there[other] == back
    return np.asarray(pairs[paired & facing & ~facing[other]])


def _visible(middles: Floats, pixels: Pixels, lift: float) -> Mask:
    """Whether at three of the nine pixels about it nothing stands before a place: an edge may end a face."""
    return np.asarray(np.sort(_about(middles, pixels), axis=0)[2] <= middles[:, 2] + lift)


def _stands_out(middles: Floats, pixels: Pixels, lift: float) -> Mask:
    """Whether at none of the nine pixels about it anything stands far before a place where a surface bends away."""
    return np.asarray(_about(middles, pixels).max(axis=0) <= middles[:, 2] + lift)


def _about(middles: Floats, pixels: Pixels) -> Floats:
    height, width = pixels.depth.shape
    x, y = ((middles[:, i] * _FINE).astype(np.int64) for i in (0, 1))
    steps = (-1, 0, 1)
    return np.array(
        [pixels.depth[(y + j).clip(0, height - 1), (x + i).clip(0, width - 1)] for i in steps for j in steps]
    )


def _bar(scale: float, units: Units) -> str:
    length, text = bar_length(100.0 / scale, units)
    x, y, end, ink = 16.0, HEIGHT - 16.0, 16.0 + length * scale, INKS["ink"]
    return (
        f'<path d="M{x} {y - 5}V{y + 5}M{x} {y}H{end:.2f}M{end:.2f} {y - 5}V{y + 5}" fill="none" stroke="{ink}" '
        f'stroke-width="1.7"/><text x="{x}" y="{y - 10}" font-size="14" fill="{ink}" '
        f'font-family="Segoe UI, Helvetica Neue, Arial, Liberation Sans, sans-serif">{text}</text>'
    )
