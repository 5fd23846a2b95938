"""Thinned points for the tests: plane flanks, and notches that fit them."""

from __future__ import annotations

import math
from typing import Any

from attrs import frozen
from hypothesis import assume
from hypothesis import strategies as st

from drillpoint.ground import Flute, GroundPoint, Notch, PlaneFlank


@frozen(kw_only=True)
class ThinnedDrill:
    """The numbers of a plainly ground drill and of the notches that thin it on both sides."""

    diameter: float
    web: float
    point_angle: float
    axial_relief: float
    helix_angle: float
    notch: dict[str, float]

    @property
    def delta(self) -> float:
        """Acute angle in the end view between lip and chisel edge, radians: where two such planes meet."""
        return math.atan2(1 / math.tan(math.radians(self.point_angle / 2)), math.tan(math.radians(self.axial_relief)))

    def book(self, *names: str) -> dict[str, float]:
        """Givens of the closed forms."""
        givens = {
            "diameter": self.diameter,
            "web": self.web,
            "point_angle": self.point_angle,
            "axial_relief": self.axial_relief,
            "chisel_edge_angle": 180 - math.degrees(self.delta),
            "thinned_chisel_length": self.notch["thinned_chisel_length"],
            "thinning_angle": self.notch["thinning_angle"],
        }
        return {name: givens[name] for name in names}

    def grind(self, scale: float = 1.0, **notch: Any) -> GroundPoint:
        """The point, with settings of the notch changed, all of it larger by a scale."""
        settings = {**self.notch, **notch}
        lengths = ("thinned_chisel_length", "face_distance", "notch_depth", "corner_radius")
        sized = {n: v * scale if n in lengths and v is not None else v for n, v in settings.items()}
        flank = PlaneFlank(point_angle=self.point_angle, axial_relief=self.axial_relief)
        return GroundPoint(self.flute(scale), flank, thinning_1=Notch(**sized))

    def flute(self, scale: float = 1.0) -> Flute:
        """The drill without its point."""
        return Flute(
            diameter=self.diameter * scale,
            web=self.web * scale,
            point_angle=self.point_angle,
            helix_angle=self.helix_angle,
        )


USUAL = ThinnedDrill(
    diameter=10.0,
    web=1.5,
    point_angle=118.0,
    axial_relief=22.8,
    helix_angle=30.0,
    notch={"thinned_chisel_length": 0.8, "thinning_angle": 30.0, "notch_depth": 0.2, "notch_rake": 5.0},
)


@st.composite
def thinned_drills(draw: Any) -> ThinnedDrill:
    """Plane flanks, thinned alike on both sides with sharp corners, in the range that a wheel can grind."""
    diameter, ratio = draw(st.floats(1.0, 60.0)), draw(st.floats(0.05, 0.25))
    drill = ThinnedDrill(
        diameter=diameter,
        web=ratio * diameter,
        point_angle=draw(st.floats(95.0, 150.0)),
        axial_relief=draw(st.floats(6.0, 35.0)),
        helix_angle=draw(st.floats(15.0, 35.0)),
        notch={},
    )
    t, delta = drill.web / 2, drill.delta
    assume(t / math.sin(delta) < 0.35 * diameter)
    corner, outer = t / math.tan(delta), math.sqrt((diameter / 2) ** 2 - t**2)
    left = draw(st.floats(0.05, 0.95)) * t / math.sin(delta)
    reach = corner + draw(st.floats(0.05, 0.8)) * (outer - corner)
    angle = math.atan2(t - left * math.sin(delta), reach - left * math.cos(delta))
    # So deep at most that faces leaning back do not meet below the tip.
    half_web_left = left * math.sin(delta - angle)
    rake = draw(st.floats(-10.0, 12.0))
    depth = draw(st.floats(0.0, 1.0)) * min(0.5 * t, half_web_left * 2)
    notch = {
        "thinned_chisel_length": 2 * left,
        "thinning_angle": math.degrees(angle),
        "notch_depth": depth,
        "notch_rake": rake,
        "notch_slope": draw(st.floats(52.0, 70.0)),
        "notch_angle": draw(st.floats(85.0, 115.0)),
    }
    return ThinnedDrill(
        diameter=diameter,
        web=drill.web,
        point_angle=drill.point_angle,
        axial_relief=drill.axial_relief,
        helix_angle=drill.helix_angle,
        notch=notch,
    )
