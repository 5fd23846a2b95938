"""Thrust, torque and power, and what the chisel edge has to do with them."""

from drillpoint.relation import Relation

CHAPTER: tuple[Relation, ...] = ()
