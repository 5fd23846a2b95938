"""What a relation is: one equation between quantities of the point, with everything that is said of it.

A relation is stated once, in a chapter of `drillpoint.relations`. It can be called, solved for another quantity, asked
for its sensitivity, written out with numbers, and it carries its derivation, assumptions, limits and sources.
"""

from drillpoint.relation.condition import Condition
from drillpoint.relation.relation import Limit, Relation, Step, follow, let, read_off
from drillpoint.relation.uncertain import Uncertain
from drillpoint.relation.value import ReadAs, Value
from drillpoint.relation.worked import Worked

__all__ = [
    "Condition",
    "Limit",
    "ReadAs",
    "Relation",
    "Step",
    "Uncertain",
    "Value",
    "Worked",
    "follow",
    "let",
    "read_off",
]
