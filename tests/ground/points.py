"""Random ground points for the tests of this folder."""

from __future__ import annotations

import math
from typing import Any

from hypothesis import strategies as st

from drillpoint.ground import Flute, GroundPoint, PlaneFlank


@st.composite
def plain_drills(draw: Any) -> dict[str, float]:
    """Drills that were plainly ground: two plane flanks at the angle the flute was made for, with relief at the centre.

    The relief square to the lip comes to at least half a degree, and the chisel edge ends well inside the corner.
    """
    diameter = draw(st.floats(0.5, 80))
    half = draw(st.floats(35, 80))
    ratio = draw(st.floats(0.05, 0.35))
    # The chisel edge ends at t·cot δ = t·tan α_x·tan κ along the lip; keep that within six tenths of the radius.
    most = math.degrees(math.atan(0.6 / ratio / math.tan(math.radians(half)))) - 1
    return {
        "diameter": diameter,
        "web": ratio * diameter,
        "point_angle": 2 * half,
        "axial_relief": draw(st.floats(0.5, min(most, 40))),
        "helix_angle": draw(st.floats(0, 45)),
    }


def ground(drill: dict[str, float], **changes: float) -> GroundPoint:
    """The ground point of such a drill; changes go to the flank of lip 2."""
    flute = Flute(**{name: drill[name] for name in ("diameter", "web", "point_angle", "helix_angle")})
    flank = {name: drill[name] for name in ("point_angle", "axial_relief")}
    return GroundPoint(flute, PlaneFlank(**flank), PlaneFlank(**{**flank, **changes}))
