"""The explorer for the push: thicken the web, thin it, drill a pilot, and see what becomes of thrust and torque."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

PUSH = Explorer(
    name="push",
    title="Web, chisel edge and push",
    sliders=(
        Slider("web", 0.05, 0.28, 1.5, 0.002, share_of="diameter"),
        Slider("feed", 0.002, 0.05, 0.2, 0.001, share_of="diameter"),
        Slider("pilot_diameter", 0.02, 0.5, 2.0, 0.005, share_of="diameter"),
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("chisel_edge_angle", 100.0, 135.0, 125.0, 0.5),
    ),
    # A steel of 200 HB and a sharp drill, so that only the shape of the point changes the push.
    fixed={"material_factor": 24000.0, "tool_wear_factor": 1.0},
    relations=(
        "web_ratio",
        "chisel_edge_length",
        "chisel_ratio",
        "thrust_factor",
        "chisel_thrust_factor",
        "thrust",
        "torque_factor",
        "torque",
        "pilot_cover",
    ),
    worked=("chisel_edge_length", "chisel_ratio", "thrust_factor", "chisel_thrust_factor", "thrust", "torque"),
    table=(
        *("diameter", "web", "chisel_edge_length", "chisel_ratio", "feed", "thrust", "torque"),
        *("pilot_diameter", "pilot_cover"),
    ),
    scenes=("push",),
    summary=(
        Sentence(
            "Push {thrust} in the solid, {without_chisel_edge} without a chisel edge; torque {torque}. The pilot "
        ),
        Sentence(
            "",
            judged="pilot_cover",
            low=1.0,
            high=1e9,
            below="is too small: the ends of the chisel edge still push.",
            within="covers the chisel edge.",
            above="covers the chisel edge.",
        ),
    ),
)
