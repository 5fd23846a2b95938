"""The explorer for drilling through: whether the corners are in before the tip is out, and how far the drill goes."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider

BREAKTHROUGH = Explorer(
    name="breakthrough",
    title="Drilling through a plate or a thin sheet",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        Slider("sheet_thickness", 0.05, 2.0, 1.5, 0.01, share_of="diameter"),
    ),
    relations=("point_height", "sheet_cover", "breakthrough"),
    worked=("point_height", "sheet_cover", "breakthrough"),
    table=("diameter", "point_angle", "sheet_thickness", "point_height", "sheet_cover", "travel_through"),
    scenes=("breakthrough",),
    summary=(
        Sentence(
            "",
            judged="sheet_cover",
            low=1.0,
            high=1e9,
            below="The tip is out before the corners are in: it may grab, so clamp the work on a backing piece.",
            within="The corners are in before the tip is out.",
        ),
        Sentence(" From first touch the drill goes {travel_through} until its corners are out."),
    ),
)
