"""The explorer for a drill that is held badly under a gauge: roll it, and see what is read."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

ROLLED = Explorer(
    name="rolled",
    title="Rolling a drill under the gauge",
    sliders=(
        Slider("roll_angle", 0.0, 45.0, 20.0, 0.5),
        Slider("point_angle", 80.0, 150.0, 118.0, 1.0),
    ),
    relations=("rolled_reading",),
    worked=("rolled_reading",),
    table=("point_angle", "roll_angle", "rolled_reading"),
    scenes=("rolled_view",),
    summary=(
        Sentence("The point angle is {point_angle}. Rolled by {roll_angle} it reads {rolled_reading}"),
        Sentence("", judged="roll_angle", low=-0.05, high=0.05, within=", the true angle.", above=": too little."),
    ),
)
