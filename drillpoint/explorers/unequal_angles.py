"""The explorer for lips at different angles: which leads, by how much, and where the other stops cutting."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

UNEQUAL_ANGLES = Explorer(
    name="unequal_angles",
    title="Lips at different angles, and who does the work",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("half_angle_1", 45.0, 75.0, 59.0, 0.5),
        Slider("half_angle_2", 45.0, 75.0, 61.0, 0.5),
        Slider("feed", 0.005, 0.05, 0.15, 0.001, share_of="diameter"),
    ),
    relations=("corner_radius", "lip_height_from_angles", "idle_radius"),
    worked=("lip_height_from_angles", "idle_radius"),
    table=("diameter", "half_angle_1", "half_angle_2", "feed", "radius", "lip_height_difference", "idle_radius"),
    scenes=("unequal_angles",),
    summary=(
        Sentence(
            "At the corner, {radius} from the axis, the lips differ by {lip_height_difference}. The lagging lip cuts "
            "out to a radius of {idle_radius}; outside it, if the drill reaches so far, the leading lip takes the "
            "whole feed."
        ),
    ),
)
