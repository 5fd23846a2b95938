"""The explorer for a dubbed lip: how wide a flat, how it leans, and what it does to rake and wedge at the corner."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

DUBBING = Explorer(
    name="dubbing",
    title="A flat on the lip, at the outer corner",
    sliders=(
        Slider("dub_width", 0.05, 1.0, 0.2, 0.01),
        Slider("dub_rake", -5.0, 3.0, 0.0, 0.5),
        Slider("feed", 0.06, 0.5, 0.1, 0.01),
        Slider("helix_angle", 12.0, 32.0, 30.0, 0.5),
        Slider("point_angle", 100.0, 140.0, 118.0, 1.0),
        Slider("lip_relief", 8.0, 20.0, 12.0, 0.5),
        Slider("web", 0.08, 0.2, 1.5, 0.002, share_of="diameter"),
        Slider("diameter", 3.0, 20.0, 10.0, 0.1),
    ),
    relations=(
        "web_ratio",
        "corner_radius",
        "axial_relief",
        "local_helix",
        "normal_rake",
        "normal_relief",
        "wedge_angle",
        "chip_thickness",
        "dub_normal_rake",
        "dub_wedge_angle",
        "least_dub_width",
        "dub_set_back",
    ),
    worked=("dub_normal_rake", "dub_wedge_angle", "least_dub_width", "dub_set_back"),
    table=(
        "normal_rake",
        "wedge_angle",
        "dub_normal_rake",
        "dub_wedge_angle",
        "chip_thickness",
        "least_dub_width",
        "dub_width",
        "dub_set_back",
    ),
    scenes=("dubbed_lip",),
    summary=(
        Sentence("At the outer corner the rake goes from {normal_rake} to {dub_normal_rake}, "),
        Sentence("the wedge from {wedge_angle} to {dub_wedge_angle}. "),
        Sentence(
            "The flat is ",
            judged="to_spare",
            low=0.0,
            high=1e9,
            below="too narrow: {least_dub_width} is the least. ",
            within="wide enough: {least_dub_width} is the least. ",
        ),
        Sentence("The lip is set back by {dub_set_back}."),
    ),
)
