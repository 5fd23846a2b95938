"""The hole: depths, times, speeds, and how much over size an uneven point drills."""

from drillpoint.relation import Relation

CHAPTER: tuple[Relation, ...] = ()
