"""The explorer for relief: give more or less, and see the heel lift, the chisel edge swing and the numbers follow."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider, chisel_edge_judged
from drillpoint.quantities import QUANTITIES

RELIEF = Explorer(
    name="relief",
    title="Relief behind the lip, at the outer corner",
    sliders=(
        Slider("lip_relief", 2.0, 36.0, 12.0, 0.5),
        Slider("feed", 0.001, 0.05, 0.2, 0.001, share_of="diameter"),
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        # So thick that 5° of lip relief still leaves a chisel edge; with 1.5 mm it takes 5.2°.
        Slider("web", 0.05, 0.40, 1.4, 0.002, share_of="diameter"),
    ),
    # Taken as an example: common practice leaves some degrees at work.
    fixed={"relief_margin": QUANTITIES["relief_margin"].typical},
    relations=(
        "web_ratio",
        "corner_radius",
        "axial_relief",
        "relief_at_radius",
        "feed_relief_loss",
        "working_relief",
        "heel_clearance",
        "chisel_edge_angle",
        "chisel_edge_length",
        "least_lip_relief",
    ),
    worked=("feed_relief_loss", "working_relief", "axial_relief", "heel_clearance", "chisel_edge_angle"),
    table=(
        "lip_relief",
        "feed_relief_loss",
        "working_relief",
        "relief_margin",
        "least_lip_relief",
        "axial_relief",
        "heel_clearance",
        "chisel_edge_angle",
    ),
    scenes=("relief", "end_view"),
    summary=(
        Sentence(
            "At work {working_relief} of relief is left, ",
            judged="working_relief",
            low=1e-9,
            high=QUANTITIES["working_relief"].usual.low,
            below="so the flank rubs",
            within="hardly enough",
            above="so the lip can go in",
        ),
        Sentence("; the flank is level with the corner again {heel_clearance} behind it. "),
        chisel_edge_judged("."),
    ),
)
