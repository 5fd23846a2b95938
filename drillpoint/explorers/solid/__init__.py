"""The solid under the learner's hand: the ground point in three dimensions, turned, cut open, its parts named.

>>> from drillpoint.explorers import look
>>> look(diameter=10, point_angle=118, lip_relief=12, web=1.5)

Python grinds the point once and sends its triangles; turning and cutting are the browser's (browser/). What its parts
are called and how they look is stated in `drillpoint.drawing.solid`, whose still picture stands in where the browser
shows no solids.
"""
