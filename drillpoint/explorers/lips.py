"""The explorer for lips and chisel edge: move the point, see both views and every result follow."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider, chisel_edge_judged

LIPS = Explorer(
    name="lips",
    title="Lips and chisel edge of a plainly ground point",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        Slider("web", 0.05, 0.40, 1.5, 0.002, share_of="diameter"),
        Slider("lip_relief", 2.0, 36.0, 12.0, 0.5),
    ),
    relations=(
        "web_ratio",
        "axial_relief",
        "chisel_edge_angle",
        "chisel_edge_length",
        "lip_length",
        "point_height",
    ),
    worked=("lip_length", "chisel_edge_length", "chisel_edge_angle", "axial_relief", "point_height"),
    table=(
        "diameter",
        "web",
        "lip_length",
        "chisel_edge_length",
        "point_height",
        "point_angle",
        "lip_relief",
        "axial_relief",
        "chisel_edge_angle",
    ),
    scenes=("end_view", "side_view"),
    summary=(
        chisel_edge_judged(),
        Sentence("; {chisel_edge_length} long. Lip {lip_length}. Point {point_height} high."),
    ),
)
