"""The ground point as a solid, in a still picture: what its parts are called, how they are told apart, how they look.

>>> from drillpoint.drawing import solid_picture
>>> solid_picture(GroundPoint(...), view="end")

`shown.py` says what is seen of a solid, as data; the picture here and the explorer that turns it both draw from that.
"""
