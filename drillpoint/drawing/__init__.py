"""Drawings of the point, in true proportions, as a drawing office would make them.

>>> from drillpoint.drawing import chart, draw
>>> draw("end_view", diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)
>>> chart("relief_along_lip", feed=0.3)

A scene says what is drawn, as data; its coordinates are stated once, in sympy, and generated for Python and for the
browser. `end_view` and `side_view` are scenes; `plain_point` is the geometry they share. `charts/` draws relations of
the book as curves; `paper/` makes a sheet to print at true scale; `solid/` pictures a ground point as a solid.
"""

from typing import TYPE_CHECKING, Any

from drillpoint.drawing.charts import Chart, chart, chart_names
from drillpoint.drawing.draw import draw, scene_names
from drillpoint.drawing.paper import Paper, point_paper
from drillpoint.drawing.picture import Picture

if TYPE_CHECKING:
    from drillpoint.drawing.solid.picture import solid_picture

__all__ = ["Chart", "Paper", "Picture", "chart", "chart_names", "draw", "point_paper", "scene_names", "solid_picture"]


def __getattr__(name: str) -> Any:
    # Flat drawings need no arrays of numbers.
    if name != "solid_picture":
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from drillpoint.drawing.solid.picture import solid_picture

    return solid_picture
