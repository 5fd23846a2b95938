"""What a sheet of true-scale paper is made for: the paper, the units, the point angle and the drill sizes."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from types import MappingProxyType

from attrs import frozen

from drillpoint.drawing.showing import MM_PER_INCH, Units, fraction, read_units, show
from drillpoint.errors import LearnerError
from drillpoint.quantities import QUANTITIES, nearest, plain_number
from drillpoint.relation.checking import read_scalar
from drillpoint.relations import lip_length, point_height, web_from_ratio

MOST_SIZES = 8
LABEL_WIDTH, BESIDE = 19.0, 3.0  # mm; a notch's label, and the least between it and the next
MARGIN = 12.0  # mm; no printer needs more for its rollers
# ISO 216 and ANSI/ASME Y14.1 (both from memory).
PAPERS: Mapping[str, tuple[float, float]] = MappingProxyType(
    {"A4": (210.0, 297.0), "Letter": (8.5 * MM_PER_INCH, 11 * MM_PER_INCH)}
)
_STEPS: Mapping[str, tuple[float, ...]] = MappingProxyType(
    {
        "mm": (0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0),
        "inch": tuple(MM_PER_INCH / part for part in (64, 32, 16, 8, 4, 2)),
    }
)
_USUAL_SIZES: Mapping[str, tuple[float, float]] = MappingProxyType(
    {"mm": (3.0, 13.0), "inch": (MM_PER_INCH / 8, MM_PER_INCH / 2)}
)
# Common practice: what most shops grind and check by.
RELIEFS = (8.0, 12.0, 15.0)


@frozen
class Format:
    """What a sheet is for. Degrees and mm.

    web_ratio: the web that the corners are worked out with. sizes: the drills that get a notch of their own.
    """

    paper: str
    units: Units
    point_angle: float
    web_ratio: float
    sizes: tuple[float, ...]
    reliefs: tuple[float, ...]

    @property
    def width(self) -> float:
        """Of the paper."""
        return PAPERS[self.paper][0]

    @property
    def height(self) -> float:
        """Of the paper."""
        return PAPERS[self.paper][1]

    @property
    def unit(self) -> str:
        """The unit of lengths, as it is written."""
        return "mm" if self.units == "mm" else "in"

    @property
    def half_angle(self) -> float:
        """Half the point angle: between the axis and a flank of a notch."""
        return self.point_angle / 2

    @property
    def largest(self) -> float:
        """The largest drill."""
        return self.sizes[-1]

    def depth(self, diameter: float) -> float:
        """How far the tip of a notch lies below its shoulders: the height of the sharp cone."""
        return float(point_height(diameter=diameter, point_angle=self.point_angle))

    def corner(self, diameter: float) -> float:
        """Where the outer corner of a drill comes to lie, along the flank of the notch from the centre line."""
        # A chisel edge square to the lips begins over the axis, so such a lip is as long as the reading.
        web = float(web_from_ratio(web_ratio=self.web_ratio, diameter=diameter))
        return float(lip_length(diameter=diameter, point_angle=self.point_angle, web=web, chisel_edge_angle=90))

    @property
    def graduation(self) -> tuple[float, int, int]:
        """The lip scale: one step in mm, every how many it is longer, every how many it has a number."""
        return (1.0, 5, 5) if self.units == "mm" else (MM_PER_INCH / 32, 4, 8)

    def reading(self, steps: int) -> str:
        """What stands at the lip scale after so many steps."""
        if self.units == "mm":
            return plain_number(steps * self.graduation[0], 1)
        return fraction(steps * self.graduation[0] / MM_PER_INCH)

    @staticmethod
    def room(diameter: float) -> float:
        """How wide a notch is with its label."""
        return max(diameter, LABEL_WIDTH)

    def read_off(self, length: float) -> str:
        """A length as far as it can be read on paper, without its unit."""
        return plain_number(length, 1) if self.units == "mm" else plain_number(length / MM_PER_INCH, 2)

    def size(self, diameter: float) -> str:
        """A drill size with its unit."""
        return show("diameter", diameter, self.units)

    @property
    def check(self) -> tuple[float, int, str]:
        """The check bar: its length in mm, into how many parts it is divided, and how it is called."""
        return (100.0, 10, "100 mm") if self.units == "mm" else (4 * MM_PER_INCH, 8, "4 in")


def read_format(
    point_angle: float,
    smallest: float | None,
    largest: float | None,
    web_ratio: float,
    reliefs: Sequence[float],
    paper: str,
    units: str,
) -> Format:
    """What was asked for, checked.

    Raises LearnerError for anything that makes no sheet.
    """
    written = read_units(units)
    usual = _USUAL_SIZES[written]
    ends = [usual[i] if given is None else given for i, given in enumerate((smallest, largest))]
    low, high = (read_scalar("diameter", end)[0] for end in ends)
    if low > high:
        raise LearnerError(f"drills from {low:g} mm to {high:g} mm run backwards; put the smaller size first")
    slopes = tuple(read_scalar("lip_relief", relief)[0] for relief in reliefs)
    if (
        not slopes
        or len(slopes) > len(RELIEFS)
        or min(slopes) <= 0
        or max(slopes) > QUANTITIES["lip_relief"].usual.high
    ):
        raise LearnerError(
            f"reliefs {', '.join(f'{s:g}°' for s in slopes) or 'none'}: give one to three between 1° and "
            f"{QUANTITIES['lip_relief'].show(QUANTITIES['lip_relief'].usual.high)}, for example 8, 12 and 15"
        )
    return Format(
        paper=read_paper(paper),
        units=written,
        point_angle=read_scalar("point_angle", point_angle)[0],
        web_ratio=read_scalar("web_ratio", web_ratio)[0],
        sizes=size_steps(low, high, written, PAPERS[read_paper(paper)][0] - 2 * MARGIN),
        reliefs=slopes,
    )


def read_paper(paper: str) -> str:
    """The paper by its name, however it is capitalised.

    Raises LearnerError for paper that there is no sheet for.
    """
    for name in PAPERS:
        if str(paper).strip().lower() == name.lower():
            return name
    raise LearnerError(f"there is no sheet for paper {paper!r}{nearest(str(paper), tuple(PAPERS))}")


def size_steps(smallest: float, largest: float, units: Units, width: float) -> tuple[float, ...]:
    """Drill sizes from the smallest to the largest, in round steps, at most eight, as many as go on a strip.

    Between the two ends stand whole multiples of the step that are at least half a step away from them.
    """
    for step in _STEPS[units]:
        between = range(math.ceil(smallest / step - 1e-9), math.floor(largest / step + 1e-9) + 1)
        inner = [n * step for n in between if min(n * step - smallest, largest - n * step) > step / 2 - 1e-9]
        sizes = (smallest, *inner, *((largest,) if largest > smallest else ()))
        if len(sizes) <= MOST_SIZES and sum(Format.room(size) + BESIDE for size in sizes) <= width:
            return sizes
    return (smallest, largest)
