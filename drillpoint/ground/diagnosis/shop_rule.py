"""A rule of the shop held against the drawing: "the hole comes out twice the lip height error over size"."""

from __future__ import annotations

from attrs import frozen

from drillpoint.errors import OutOfRange
from drillpoint.ground.diagnosis.spoken import said, said_of
from drillpoint.quantities import quantity
from drillpoint.relation import Value
from drillpoint.relations import oversize

_RULE = 2.0


@frozen
class RuleAgainstDrawing:
    """What a rule says and what follows from the drawing, both in mm; the drawing's is the most that can be."""

    by_rule: float
    by_drawing: Value
    point_angle: float

    @property
    def ratio(self) -> float:
        """How many times the lip height error the hole is wider at most, by the drawing; the rule says twice."""
        return _RULE * float(self.by_drawing) / self.by_rule

    def __str__(self) -> str:
        name, angle = self.by_drawing.quantity.name, quantity("point_angle").show(self.point_angle)
        verdict = "promises more than can be" if self.by_rule > self.by_drawing else "falls short of what can be"
        return (
            f"The rule says {said(name, self.by_rule)}. At {angle} the hole is at most {said_of(self.by_drawing)} "
            f"wider, {self.ratio:.3f} times the height error. So the rule {verdict}; it is not the geometry."
        )

    __repr__ = __str__


def twice_the_height(*, lip_height_difference: float, point_angle: float) -> RuleAgainstDrawing:
    """The common rule "oversize is twice the lip height error" held against the drawing.

    lip_height_difference: at the corners, mm, above 0. point_angle: degrees.
    Raises what the relation `oversize` raises, and OutOfRange for level lips, which say nothing of the rule.
    """
    most: Value = oversize(lip_height_difference=lip_height_difference, point_angle=point_angle)
    if not most:
        raise OutOfRange("with a lip height difference of 0 mm both say 0 mm; give one above 0 mm, for example 0.08")
    return RuleAgainstDrawing(_RULE * lip_height_difference, most, point_angle)
