"""The explorer for a blind hole: how deep the tip goes for a full diameter of a given depth."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

HOLE = Explorer(
    name="hole",
    title="Depth of a blind hole: to the shoulder and to the point",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        Slider("shoulder_depth", 0.1, 8.0, 25.0, 0.05, share_of="diameter"),
    ),
    relations=("point_height", "full_diameter_depth"),
    worked=("point_height", "full_diameter_depth"),
    table=("diameter", "point_angle", "shoulder_depth", "point_height", "depth_to_point"),
    scenes=("hole",),
    summary=(
        Sentence(
            "For {shoulder_depth} at full diameter the tip goes {depth_to_point} deep: {point_height} more for the "
            "point, "
        ),
        Sentence(
            "",
            judged="point_angle",
            low=117.5,
            high=118.5,
            below="sharper and so taller than the usual 118°.",
            within="the usual 118°.",
            above="blunter and so shorter than the usual 118°.",
        ),
    ),
)
