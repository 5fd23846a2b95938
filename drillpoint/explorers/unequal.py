"""The explorer for lips of unequal height: where the tip goes, and how wide the hole may get."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

UNEQUAL = Explorer(
    name="unequal",
    title="Lips of unequal height, and the hole they make",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        Slider("lip_height_difference", 0.0, 0.1, 0.3, 0.001, share_of="diameter"),
    ),
    relations=("point_offset", "oversize", "largest_hole"),
    worked=("point_offset", "oversize", "largest_hole"),
    table=("diameter", "point_angle", "lip_height_difference", "point_offset", "oversize", "largest_hole"),
    scenes=("unequal_lips",),
    summary=(
        Sentence("Tip {point_offset} beside the axis: "),
        Sentence(
            "",
            judged="oversize",
            low=1e-9,
            high=1e9,
            below="the drill runs true",
            within="the hole may get {oversize} wider than the drill, {largest_hole} in all",
        ),
        Sentence(". A guided drill cuts less."),
    ),
)
