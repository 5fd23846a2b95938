"""When a set of givens is no drill at all, and how that is said."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import ModuleType
from typing import Any

from attrs import frozen

from drillpoint.relation.symbols import Symbols


@frozen
class Condition:
    """Something that must hold between the givens.

    margin: an expression that is positive (zero too, if `allows_zero`) for a possible drill. says: the sentence for a
    learner; {name} is replaced by the value of that given, with its unit.
    """

    margin: Callable[[Symbols, ModuleType], Any]
    says: str
    allows_zero: bool = False

    def holds(self, margin: float) -> bool:
        """Whether a margin is good enough."""
        return margin >= 0 if self.allows_zero else margin > 0


@frozen
class Together:
    """Something that holds between quantities of any drill, whatever relation asks.

    names: the quantities. margin: from their values (numbers, arrays or symbols), at least zero for a possible drill.
    """

    names: tuple[str, ...]
    margin: Callable[[Mapping[str, Any]], Any]
    says: str
    allows_zero: bool = True

    def holds(self, margin: float) -> bool:
        """Whether a margin is good enough."""
        return margin >= 0 if self.allows_zero else margin > 0


ANY_DRILL = (
    Together(
        ("diameter", "web"),
        lambda v: v["diameter"] - v["web"],
        "web {web} is not thinner than the drill, diameter {diameter}; about an eighth of the diameter is usual",
        allows_zero=False,
    ),
    Together(
        ("diameter", "radius"),
        lambda v: v["diameter"] - 2 * v["radius"],
        "radius {radius} lies outside the drill, diameter {diameter}; the outer corner is at half the diameter",
    ),
    Together(
        ("radius", "web"),
        lambda v: 2 * v["radius"] - v["web"],
        "radius {radius} lies inside the web {web}; no place on a lip is nearer to the axis than half the web",
    ),
)
