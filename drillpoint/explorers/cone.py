"""The explorer for a conical grind: set the cone, see the point that the wheel leaves."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider, chisel_edge_judged

CONE = Explorer(
    name="cone",
    title="A point ground from a cone",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("web", 0.1, 0.2, 1.5, 0.002, share_of="diameter"),
        Slider("cone_half_angle", 22.0, 32.0, 25.0, 0.5),
        Slider("cone_tilt", 30.0, 38.0, 34.0, 0.5),
        Slider("apex_distance", 0.8, 1.5, 9.5, 0.01, share_of="diameter"),
        Slider("skew", 0.08, 0.18, 1.45, 0.002, share_of="diameter"),
    ),
    relations=(),
    worked=(),
    table=(
        "point_angle",
        "lip_relief",
        "chisel_edge_angle",
        "chisel_edge_length",
        "chisel_edge_rake",
        "lip_length",
        "heel_clearance",
    ),
    scenes=("ground_end_view",),
    summary=(
        Sentence("Point {point_angle}, lip relief {lip_relief} at the corner. "),
        chisel_edge_judged("."),
    ),
)
