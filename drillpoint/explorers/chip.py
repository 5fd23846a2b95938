"""The explorer for the uncut chip: thickness and width of what one lip takes."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

CHIP = Explorer(
    name="chip",
    title="The chip that one lip takes",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        Slider("web", 0.05, 0.40, 1.5, 0.002, share_of="diameter"),
        Slider("feed", 0.002, 0.05, 0.2, 0.001, share_of="diameter"),
    ),
    # A usual one, so that only what the sliders say changes the lip.
    fixed={"chisel_edge_angle": 125.0},
    relations=("web_ratio", "chip_thickness", "chip_width"),
    worked=("chip_thickness", "chip_width"),
    table=("diameter", "point_angle", "web", "chisel_edge_angle", "feed", "chip_thickness", "chip_width"),
    scenes=("chip",),
    summary=(
        Sentence("Each lip takes a chip {chip_thickness} thick and {chip_width} wide, "),
        Sentence(
            "",
            judged="point_angle",
            low=117.5,
            high=118.5,
            below="thinner and wider than at the usual 118°.",
            within="at the usual 118°.",
            above="thicker and narrower than at the usual 118°.",
        ),
    ),
)
