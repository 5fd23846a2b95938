"""The explorer for thinning: how far to grind the web away, and what is left of chisel edge, lip and web."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

THINNING = Explorer(
    name="thinning",
    title="Thinning the web",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("web", 0.1, 0.35, 1.5, 0.002, share_of="diameter"),
        Slider("chisel_edge_angle", 105.0, 140.0, 125.0, 0.5),
        Slider("thinned_chisel_length", 0.03, 0.2, 0.8, 0.002, share_of="diameter"),
        Slider("thinning_angle", 15.0, 45.0, 30.0, 0.5),
    ),
    relations=(
        "web_ratio",
        "chisel_edge_length",
        "thinning_reach",
        "thinned_lip_in_end_view",
        "thinned_web",
        "untouched_lip_share",
    ),
    worked=("thinning_reach", "thinned_web", "untouched_lip_share"),
    table=(
        "web",
        "chisel_edge_length",
        "thinned_chisel_length",
        "thinned_web",
        "thinning_reach",
        "thinned_lip_in_end_view",
        "untouched_lip_share",
    ),
    scenes=("thinning",),
    summary=(
        Sentence("Chisel edge {chisel_edge_length} before, {thinned_chisel_length} after. Web left {thinned_web}. "),
        Sentence("The thinned lip meets the main lip {thinning_reach} along; {untouched_lip_share} of that stays."),
    ),
)
