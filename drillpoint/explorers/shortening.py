"""The explorer for a drill that gets shorter: how web and chisel edge grow, and when thinning is due."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

SHORTENING = Explorer(
    name="shortening",
    title="Grinding a drill shorter",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("web", 0.08, 0.25, 1.5, 0.002, share_of="diameter"),
        Slider("web_taper", 0.005, 0.03, 0.014, 0.0005),
        Slider("length_removed", 0.1, 7.0, 20.0, 0.05, share_of="diameter"),
        Slider("chisel_edge_angle", 100.0, 145.0, 125.0, 0.5),
        Slider("web_ratio_limit", 0.12, 0.35, 0.18, 0.005),
    ),
    relations=("web_ratio", "web_after_shortening", "chisel_edge_length"),
    worked=("web_after_shortening", "chisel_edge_length"),
    table=("diameter", "web", "web_ratio", "length_removed", "web_after_shortening", "chisel_edge_length"),
    scenes=("web_along_flute",),
    # The end views show no point angle; along the flute a usual one is drawn.
    fixed={"point_angle": 118.0},
    summary=(
        Sentence(
            "With {length_removed} ground off the web has grown from {web} to {web_after_shortening}, the chisel "
        ),
        Sentence("edge from {chisel_edge_length} to {chisel_edge_now}. "),
        Sentence(
            "",
            judged="over_the_limit",
            low=-1e9,
            high=-1e-9,
            within="No thinning yet: it is due with {due} ground off in all.",
            above="Thinning is due.",
        ),
    ),
)
