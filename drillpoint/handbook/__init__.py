"""Published tables: what manuals, handbooks and standards print, each figure with its source and how it was seen.

    from drillpoint.handbook import look_up
    look_up("lip_relief")                      every figure at hand, and where they disagree and why
    look_up("helix_angle", diameter=8)         only the rows for that size
    look_up("cutting_speed", work="brass")     only the rows for that work material
    chisel_factors(chisel_ratio=0.18)          one row of the handbook's chisel edge factors, ready for a call
    chisel_share()                             the chisel edge's share of the thrust: a band and its conditions

Where sources disagree, both stand. Nothing here is worked out by a relation, and no relation reads from here.
"""

from drillpoint.handbook.chisel_factors import ChiselFactors, chisel_factors
from drillpoint.handbook.chisel_share import Band, chisel_share
from drillpoint.handbook.library import NAMES, look_up
from drillpoint.handbook.table import SEEN, PrintedTable, RangeRow, RangeTable

__all__ = [
    "NAMES",
    "SEEN",
    "Band",
    "ChiselFactors",
    "PrintedTable",
    "RangeRow",
    "RangeTable",
    "chisel_factors",
    "chisel_share",
    "look_up",
]
