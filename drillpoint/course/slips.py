"""The usual wrong derivations, by name, each as what the learner probably did.

A slip is never a typed-in value: it is the task's own relation, worked out with the givens the learner put in by
mistake. So it follows the numbers each student was given.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping

from attrs import frozen

from drillpoint.course.reading import MM_PER_INCH

Givens = Mapping[str, float]
Compute = Callable[[Givens], float]
ANGLES = ("point_angle", "chisel_edge_angle", "lip_relief", "axial_relief")
ROUNDED_EARLY = "rounded early"
ROUNDING_SHARE = 0.03
ROUNDED_EARLY_SAYS = (
    "Close, but further off than the tolerance: most likely something was rounded on the way. Keep all digits until the end."
)


@frozen
class Slip:
    """What a wrong derivation gives: from the task's computation, the givens and the right result."""

    says: str
    wrong: Callable[[Compute, Givens, float, str], Iterator[float]]


def _scaled(name: str, factor: float) -> Callable[[Compute, Givens, float, str], Iterator[float]]:
    def wrong(compute: Compute, givens: Givens, right: float, asked: str) -> Iterator[float]:
        if name in givens:
            yield compute({**givens, name: givens[name] * factor})
        elif name == asked:
            yield right * factor

    return wrong


def _mirrored(name: str) -> Callable[[Compute, Givens, float, str], Iterator[float]]:
    """Take 180° minus the angle: for half of it that swaps sine with cosine, and turns the tangent upside down."""

    def wrong(compute: Compute, givens: Givens, right: float, asked: str) -> Iterator[float]:
        if name in givens:
            yield compute({**givens, name: 180.0 - givens[name]})
        elif name == asked:
            yield 180.0 - right

    return wrong


def _radians(compute: Compute, givens: Givens, right: float, asked: str) -> Iterator[float]:
    angles = [name for name in ANGLES if name in givens]
    if angles:
        wrong = dict(givens)
        for name in angles:
            wrong[name] = math.degrees(givens[name])
        yield compute(wrong)
        if "chisel_edge_angle" in givens:
            # The same with the acute angle at hand: 55 rad in place of 125 rad.
            yield compute({**wrong, "chisel_edge_angle": 180.0 - math.degrees(180.0 - givens["chisel_edge_angle"])})
    if asked in ANGLES:
        yield math.radians(right)
        if asked == "point_angle":
            yield math.radians(right / 2)
        if asked == "chisel_edge_angle":
            yield math.radians(180.0 - right)


def _web_forgotten(compute: Compute, givens: Givens, right: float, asked: str) -> Iterator[float]:
    if "web" in givens or "web_ratio" in givens:
        yield compute({**givens, **{name: 0.0 for name in ("web", "web_ratio") if name in givens}})


def _inches(compute: Compute, givens: Givens, right: float, asked: str) -> Iterator[float]:
    if asked not in ANGLES and asked != "web_ratio":
        yield right * MM_PER_INCH
        yield right / MM_PER_INCH


def _axial(compute: Compute, givens: Givens, right: float, asked: str) -> Iterator[float]:
    if "lip_relief" in givens:
        axial = {name: value for name, value in givens.items() if name not in ("lip_relief", "web", "diameter", "web_ratio")}
        yield compute({**axial, "axial_relief": givens["lip_relief"]})


SLIPS: Mapping[str, Slip] = {
    "half angle for whole": Slip(
        "Half the point angle stands where the whole, included angle belongs.", _scaled("point_angle", 0.5)
    ),
    "whole angle for half": Slip(
        "The whole, included point angle stands where half of it belongs.", _scaled("point_angle", 2.0)
    ),
    "tangent upside down": Slip(
        "The tangent is upside down: multiplied where you divide, or divided where you multiply.", _mirrored("point_angle")
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
    "radius for diameter": Slip("The radius stands where the diameter belongs, or it was halved twice.", _scaled("diameter", 0.5)),
    "axial relief for lip relief": Slip(
        "The lip relief was put in as relief square to the lip; at the corner the web makes them differ.", _axial
    ),
}
