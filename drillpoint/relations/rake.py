"""Rake along the lip and on the chisel edge, helix, lip inclination, and what the feed takes from the relief."""

from drillpoint.relation import Relation

CHAPTER: tuple[Relation, ...] = ()
