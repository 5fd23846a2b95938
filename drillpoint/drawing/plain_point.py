"""The plainly ground point in symbols: two plane flanks on a two-flute drill, in units of half the diameter.

Lips, corners, chisel edge and flanks are exact. The outline behind the flank (land, margin, heel, flute) is that of an
ordinary drill, drawn plausibly: it shows where things are, and nothing is measured on it.

A plane flank through the lip falls away at the relief α_x square to the lip; two such planes meet in a level chisel
edge with tan δ = cot κ / tan α_x. So the point angle, the chisel edge angle and the web fix everything drawn here.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

import sympy as sp

from drillpoint.drawing.points import Curve, Point
from drillpoint.drawing.scene import Allowed, Range
from drillpoint.relation.symbols import symbols

STATED: Mapping[str, Any] = MappingProxyType(
    {
        "needs": ("diameter", "point_angle", "web", "chisel_edge_angle"),
        # On plane flanks the relief and the chisel edge follow from each other.
        "also": ("chisel_edge_angle",),
        "relations": (
            "web_ratio",
            ("chisel_edge_angle", "axial_relief"),
            "lip_relief",
            "lip_length",
            "chisel_edge_length",
            "point_height",
        ),
        "allowed": (
            Allowed("web", "web {web} leaves no chisel edge to draw; give a web above 0, for example 1.5", low=1e-6),
            Allowed(
                "chisel_edge_angle",
                "with so little relief the flank would stand above its lip at the centre, rub, and never cut; "
                "give more relief",
                low=90.0,
            ),
        ),
        "ranges": (
            Range("diameter", 1.0, 40.0, 10.0),
            Range("point_angle", 60.0, 150.0, 118.0),
            Range("web", 0.05, 0.4, 0.15, share_of="diameter"),
            Range("chisel_edge_angle", 90.1, 150.0, 125.0),
        ),
    }
)
"""What every scene of a plainly ground point states of itself."""

LAND = sp.rad(sp.Integer(78))  # how far the land reaches behind the outer corner: common practice, about
MARGIN = sp.rad(sp.Integer(9))
CLEARED = sp.Float(0.972)  # radius of the land behind the margin
HELIX = sp.rad(sp.Integer(30))  # helix angle of an ordinary drill for steel: common practice, about

_s = symbols()
kappa = sp.rad(_s.point_angle) / 2
delta = sp.pi - sp.rad(_s.chisel_edge_angle)
t = _s.web_ratio  # half the web, in half diameters
omega = sp.asin(t)
height = sp.cot(kappa)
fall = sp.cot(kappa) * sp.cot(delta)  # tan α_x

outer_corner: Point = (sp.sqrt(1 - t**2), t)
chisel_corner: Point = (t * sp.cot(delta), t)
heel_angle = omega - LAND
heel: Point = (CLEARED * sp.cos(heel_angle), CLEARED * sp.sin(heel_angle))


def on_flank(point: Point) -> Any:
    """The height of flank 1 over a place in the end view, above the foot of the sharp cone."""
    x, y = point
    return height - x * sp.cot(kappa) + (y - t) * fall


def half_turn(point: Point) -> Point:
    """The same place on the other half of the drill."""
    return (-point[0], -point[1])


def other_half(curve: Curve) -> Curve:
    """A curve on the other half of the drill."""
    return [step if isinstance(step, str) else half_turn(step) for step in curve]


def arc(radius: Any, start: Any, end: Any, pieces: int) -> Curve:
    """Cubic pieces that follow a circle round the axis (within 0.03 % of the radius up to 45° apiece)."""
    step = (end - start) / pieces
    reach = sp.Rational(4, 3) * sp.tan(step / 4)
    curve: Curve = []
    for i in range(pieces):
        a, b = start + i * step, start + (i + 1) * step
        curve += [
            "C",
            (radius * (sp.cos(a) - reach * sp.sin(a)), radius * (sp.sin(a) + reach * sp.cos(a))),
            (radius * (sp.cos(b) + reach * sp.sin(b)), radius * (sp.sin(b) - reach * sp.cos(b))),
            (radius * sp.cos(b), radius * sp.sin(b)),
        ]
    return curve


def flank_edge() -> Curve:
    """From the outer corner of lip 1 round the margin and the land to the heel, in the end view."""
    behind_margin = omega - MARGIN
    step = (CLEARED * sp.cos(behind_margin), CLEARED * sp.sin(behind_margin))
    return [
        "M",
        outer_corner,
        *arc(sp.Integer(1), omega, behind_margin, 1),
        "L",
        step,
        *arc(CLEARED, behind_margin, heel_angle, 2),
    ]


def heel_edge() -> Curve:
    """From the heel of land 1 along the flute to the chisel edge corner of lip 2, in the end view."""
    # The flute's floor touches the web's core circle below the axis.
    return [
        "M",
        heel,
        "C",
        (heel[0] + sp.Float(0.17), heel[1] + sp.Float(0.42)),
        (sp.Float(0.46) * sp.sqrt(1 - t), -t),
        (sp.Integer(0), -t),
        "L",
        half_turn(chisel_corner),
    ]


def helix(start_angle: Any, start_height: Any, turn: Any, radius: Any, pieces: int) -> Curve:
    """An edge of the right-hand body in the side view, from its upper end down over an angle `turn`.

    The points are (x, z) as seen along y, with z upwards.
    """
    pitch = 1 / sp.tan(HELIX)  # height for one radian
    step = turn / pieces

    def at(i: int) -> Point:
        return (radius * sp.cos(start_angle - i * step), start_height - i * step * pitch)

    def tangent(i: int) -> Point:
        return (radius * sp.sin(start_angle - i * step) * step / 3, -step * pitch / 3)

    curve: Curve = ["M", at(0)]
    for i in range(pieces):
        (x0, z0), (x1, z1) = at(i), at(i + 1)
        (a0, b0), (a1, b1) = tangent(i), tangent(i + 1)
        curve += ["C", (x0 + a0, z0 + b0), (x1 - a1, z1 - b1), (x1, z1)]
    return curve


def turn_down_to(bottom: Any, start_height: Any) -> Any:
    """How far the helix turns from one height down to another."""
    return (start_height - bottom) * sp.tan(HELIX)
