"""Paper for the bench: a sheet at true scale to cut out and hold a drill point against, and a blank inspection sheet.

>>> from drillpoint.drawing import point_paper
>>> point_paper(point_angle=118, smallest=3, largest=13).save("point-paper.html")
"""

from drillpoint.drawing.paper.point_paper import Paper, point_paper

__all__ = ["Paper", "point_paper"]
