"""Regrinding: how much to grind off, what that does to the web, and how often it can be done."""

from drillpoint.relation import Relation

CHAPTER: tuple[Relation, ...] = ()
