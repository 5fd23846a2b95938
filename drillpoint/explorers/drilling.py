"""The explorer for a drilling job: spindle speed, feed rate and time of a hole."""

from __future__ import annotations

from drillpoint.drawing.scene import Sentence
from drillpoint.explorers.explorer import Explorer, Slider
from drillpoint.quantities import quantity

_TURNS = quantity("spindle_speed").usual

DRILLING = Explorer(
    name="drilling",
    title="Speed, feed and time of a hole",
    sliders=(
        Slider("diameter", 1.0, 40.0, 10.0, 0.1),
        Slider("point_angle", 60.0, 150.0, 118.0, 1.0),
        Slider("shoulder_depth", 0.1, 8.0, 25.0, 0.05, share_of="diameter"),
        Slider("cutting_speed", 3.0, 120.0, 25.0, 1.0),
        Slider("feed", 0.002, 0.05, 0.2, 0.001, share_of="diameter"),
    ),
    # As many shops' sums have it; a lesson adds what it takes.
    fixed={"approach": 0.0, "overrun": 0.0},
    relations=("point_height", "full_diameter_depth", "spindle_speed", "feed_rate", "drilling_time"),
    worked=("spindle_speed", "feed_rate", "drilling_time"),
    table=(
        *("diameter", "point_angle", "shoulder_depth", "depth_to_point", "cutting_speed", "feed"),
        *("spindle_speed", "feed_rate", "drilling_time"),
    ),
    scenes=("hole",),
    summary=(
        Sentence("At {cutting_speed} the drill turns at {spindle_speed}, "),
        Sentence(
            "",
            judged="spindle_speed",
            low=_TURNS.low,
            high=_TURNS.high,
            below="slower than most machines go. ",
            within="as machines do. ",
            above="faster than most machines go. ",
        ),
        Sentence(
            "Fed {feed} it goes forward by {feed_rate}. The hole takes {drilling_time} from first touch, the point's "
            "{point_height} included."
        ),
    ),
)
