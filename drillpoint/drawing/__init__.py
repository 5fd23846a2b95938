"""Drawings of the point, in true proportions, as a drawing office would make them.

>>> from drillpoint.drawing import chart, draw
>>> draw("end_view", diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)
>>> chart("relief_along_lip", feed=0.3)

A scene says what is drawn, as data; its coordinates are stated once, in sympy, and generated for Python and for the
browser. `end_view` and `side_view` are scenes; `plain_point` is the geometry they share. `charts/` draws relations of
the book as curves; `paper/` makes sheets to print for the bench; `solid/` pictures a ground point as a solid.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

from drillpoint.drawing.charts import Chart, chart, chart_names
from drillpoint.drawing.draw import draw, scene_names
from drillpoint.drawing.paper import Paper, point_paper
from drillpoint.drawing.picture import Picture

if TYPE_CHECKING:
    from drillpoint.drawing.paper.inspection_sheet import inspection_sheet
    from drillpoint.drawing.solid.picture import solid_picture

__all__ = [
    "Chart",
    "Paper",
    "Picture",
    "chart",
    "chart_names",
    "draw",
    "inspection_sheet",
    "point_paper",
    "scene_names",
    "solid_picture",
]
# Flat drawings need no arrays of numbers; these two look at ground points.
_LATER = {
    "inspection_sheet": "drillpoint.drawing.paper.inspection_sheet",
    "solid_picture": "drillpoint.drawing.solid.picture",
}


def __getattr__(name: str) -> Any:
    if name not in _LATER:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(_LATER[name]), name)
