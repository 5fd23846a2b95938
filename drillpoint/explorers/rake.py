"""The explorer for rake: how the flute and the web set the rake from the outer corner in to the chisel edge."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

RAKE = Explorer(
    name="rake",
    title="Rake along the lip",
    sliders=(
        Slider("helix_angle", 0.0, 45.0, 30.0, 0.5),
        Slider("point_angle", 80.0, 150.0, 118.0, 1.0),
        Slider("web", 0.05, 0.3, 1.5, 0.002, share_of="diameter"),
        Slider("lip_relief", 6.0, 30.0, 12.0, 0.5),
        Slider("radius", 0.2, 0.48, 2.5, 0.005, share_of="diameter"),
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
    ),
    relations=(
        "web_ratio",
        "axial_relief",
        "chisel_edge_angle",
        "chisel_edge_length",
        "lead",
        "local_helix",
        "lip_inclination",
        "normal_rake",
        "normal_relief",
        "wedge_angle",
    ),
    worked=("local_helix", "lip_inclination", "normal_rake", "normal_relief", "wedge_angle"),
    table=(
        "helix_angle",
        "lead",
        "radius",
        "local_helix",
        "lip_inclination",
        "normal_rake",
        "normal_relief",
        "wedge_angle",
    ),
    scenes=("rake_along_lip", "end_view"),
    summary=(
        Sentence(
            "At radius {radius} the helix is {local_helix} and the rake {normal_rake}, ",
            judged="normal_rake",
            low=-1e-9,
            high=1e-9,
            below="below zero: the face leans ahead",
            within="square to the movement",
            above="so the face leans back",
        ),
        Sentence(". The wedge is {wedge_angle}, the relief square to the lip {normal_relief}."),
    ),
)
