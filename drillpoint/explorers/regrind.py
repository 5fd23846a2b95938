"""The explorer for a regrind: change the angle, wear or chip the lips, and see what must come off and why."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

REGRIND = Explorer(
    name="regrind",
    title="What a regrind takes off",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 80.0, 150.0, 118.0, 1.0),
        Slider("new_point_angle", 80.0, 150.0, 135.0, 1.0),
        Slider("wear_land", 0.0, 0.08, 0.4, 0.001, share_of="diameter"),
        Slider("lip_relief", 4.0, 24.0, 12.0, 0.5),
        Slider("chip_depth", 0.0, 0.08, 0.2, 0.001, share_of="diameter"),
    ),
    relations=("stock_for_wear_land",),
    worked=("stock_for_wear_land",),
    table=("diameter", "point_angle", "new_point_angle", "wear_land", "lip_relief", "chip_depth"),
    scenes=("regrind",),
    summary=(
        Sentence("From {point_angle} to {new_point_angle}. Off the corners come {at_corner}: "),
        Sentence("", judged="cause", low=0.5, high=1.5, below="nothing asks for more", within="the wear land decides"),
        Sentence("", judged="cause", low=1.5, high=2.5, within="the chip decides", above="the sharper point decides"),
        Sentence(". Off the tip come {at_tip}."),
    ),
)
