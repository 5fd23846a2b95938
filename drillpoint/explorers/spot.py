"""The explorer for a spot or countersink: how deep a cone of some mouth and angle is."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

SPOT = Explorer(
    name="spot",
    title="Depth of a spot or countersink",
    sliders=(
        Slider("mouth_diameter", 1.0, 40.0, 11.0, 0.1),
        Slider("countersink_angle", 60.0, 150.0, 90.0, 1.0),
    ),
    relations=("spot_depth",),
    worked=("spot_depth",),
    table=("mouth_diameter", "countersink_angle", "spot_depth"),
    scenes=("spot",),
    summary=(
        Sentence("For a mouth of {mouth_diameter} at {countersink_angle} the tip goes {spot_depth} deep, "),
        Sentence(
            "",
            judged="countersink_angle",
            low=89.95,
            high=90.05,
            below="more than half the mouth.",
            within="half the mouth, as at 90° only.",
            above="less than half the mouth.",
        ),
    ),
)
