"""The explorer for the set-up of a conical grind: move a setting, see the cone move, read what it grinds."""

from __future__ import annotations

from attrs import evolve

from drillpoint.explorers.cone import CONE

CONE_SETUP = evolve(
    CONE,
    name="cone_setup",
    title="How the grinding cone stands to its drill",
    table=("point_angle", "lip_relief", "chisel_edge_angle_at_axis"),
    scenes=("conical_setup",),
    summary=(CONE.summary[0],),
)
