"""The usual wrong derivations, by name, each as what the learner probably did.

A slip is never a typed-in value: it is the task's own relation, worked out with the givens the learner put in by
mistake. So it follows the numbers each student was given.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping

from attrs import frozen

from drillpoint.course.reading import MM_PER_INCH
from drillpoint.quantities import QUANTITIES

Givens = Mapping[str, float]
ROUNDED_EARLY = "rounded early"
ROUNDING_SHARE = 0.03
ROUNDED_EARLY_SAYS = (
    "Close, but further off than the tolerance: most likely something was rounded on the way. "
    "Keep all digits until the end."
)


@frozen
class Derivation:
    """A derivation that can go wrong: how the result follows from givens, the right givens, the right result, and
    the name of what is asked."""

    compute: Callable[[Givens], float]
    givens: Givens
    right: float
    asked: str

    def with_given(self, **changed: float) -> float:
        """The result if some givens were others."""
        return self.compute({**self.givens, **changed})


Wrong = Callable[[Derivation], Iterator[float]]


@frozen
class Slip:
    """A wrong derivation: what to say of it, and the results it gives."""

    says: str
    wrong: Wrong


def _scaled(name: str, factor: float) -> Wrong:
    def wrong(task: Derivation) -> Iterator[float]:
        if name in task.givens:
            yield task.with_given(**{name: task.givens[name] * factor})
        elif name == task.asked:
            yield task.right * factor

    return wrong


def _mirrored(name: str) -> Wrong:
    """Take 180° minus the angle: for half of it that swaps sine with cosine, and turns the tangent upside down."""

    def wrong(task: Derivation) -> Iterator[float]:
        if name in task.givens:
            yield task.with_given(**{name: 180.0 - task.givens[name]})
        elif name == task.asked:
            yield 180.0 - task.right

    return wrong


def _radians(task: Derivation) -> Iterator[float]:
    wrong = {name: math.degrees(value) for name, value in task.givens.items() if _is_angle(name)}
    if wrong:
        yield task.with_given(**wrong)
        if "chisel_edge_angle" in wrong:
            # The same with the acute angle at hand: 55 rad in place of 125 rad.
            acute = math.degrees(180.0 - task.givens["chisel_edge_angle"])
            yield task.with_given(**wrong | {"chisel_edge_angle": 180.0 - acute})
    if _is_angle(task.asked):
        yield math.radians(task.right)
        if task.asked == "point_angle":
            yield math.radians(task.right / 2)
        if task.asked == "chisel_edge_angle":
            yield math.radians(180.0 - task.right)


def _is_angle(name: str) -> bool:
    return QUANTITIES[name].unit == "°"


def _web_forgotten(task: Derivation) -> Iterator[float]:
    webs = {name: 0.0 for name in ("web", "web_ratio") if name in task.givens}
    if webs:
        yield task.with_given(**webs)


def _inches(task: Derivation) -> Iterator[float]:
    if QUANTITIES[task.asked].unit == "mm":
        yield task.right * MM_PER_INCH
        yield task.right / MM_PER_INCH


def _axial(task: Derivation) -> Iterator[float]:
    if "lip_relief" in task.givens:
        left_out = ("lip_relief", "web", "diameter", "web_ratio")
        axial = {name: value for name, value in task.givens.items() if name not in left_out}
        yield task.compute({**axial, "axial_relief": task.givens["lip_relief"]})


SLIPS: Mapping[str, Slip] = {
    "half angle for whole": Slip(
        "Half the point angle stands where the whole, included angle belongs.", _scaled("point_angle", 0.5)
    ),
    "whole angle for half": Slip(
        "The whole, included point angle stands where half of it belongs.", _scaled("point_angle", 2.0)
    ),
    "tangent upside down": Slip(
        "The tangent is upside down: multiplied where you divide, or divided where you multiply.",
        _mirrored("point_angle"),
    ),
    "sine and cosine swapped": Slip("Sine and cosine are swapped.", _mirrored("point_angle")),
    "radians": Slip("Degrees went into a function that works in radians; set the calculator to degrees.", _radians),
    "web forgotten": Slip("The web is forgotten: the lip does not start on the axis.", _web_forgotten),
    "web not halved": Slip("The whole web stands where half of it belongs.", _scaled("web", 2.0)),
    "obtuse against acute": Slip(
        "The acute and the obtuse chisel edge angle are mixed up; they add up to 180°.", _mirrored("chisel_edge_angle")
    ),
    "inch against mm": Slip("Inches and millimetres are mixed up: the factor is 25.4.", _inches),
    "diameter for radius": Slip("The whole diameter stands where the radius belongs.", _scaled("diameter", 2.0)),
    "radius for diameter": Slip(
        "The radius stands where the diameter belongs, or it was halved twice.", _scaled("diameter", 0.5)
    ),
    "axial relief for lip relief": Slip(
        "The lip relief was put in as relief square to the lip; at the corner the web makes them differ.", _axial
    ),
}
