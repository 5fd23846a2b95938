"""Charts: how one quantity of the point changes with another, as curves for the page and the paper.

>>> from drillpoint.drawing import chart
>>> chart("chisel_edge_angle", against="lip_relief", web_ratio=0.15, point_angle=[90, 118, 135])

`chart` draws any relation of the book; `chart_names` lists those that are ready made. Every number comes from the book.
The drawing library loads with the first chart.
"""

from drillpoint.drawing.charts.chart import Chart, chart, chart_names

__all__ = ["Chart", "chart", "chart_names"]
