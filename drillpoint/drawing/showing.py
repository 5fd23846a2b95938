"""How a value is written on a drawing: millimetres, or inches with the fraction the workshop reads.

The browser writes the same digits: explorers/browser/values.js follows these rules, and a test compares both.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal

from drillpoint.drawing.scene import Sentence
from drillpoint.errors import LearnerError
from drillpoint.quantities import QUANTITIES, plain_number

Units = Literal["mm", "inch"]

MM_PER_INCH = 25.4  # exact by definition: international yard and pound agreement of 1959
SIXTY_FOURTHS = 64
EXACT = 1e-6  # inch; nearer than this a length is the fraction itself
MM_PER_FOOT = 12 * MM_PER_INCH

NO_LIKES: Mapping[str, str] = MappingProxyType({})
INCH_UNITS = {
    "mm": ("in", MM_PER_INCH),
    "mm/rev": ("in/rev", MM_PER_INCH),
    "mm/min": ("in/min", MM_PER_INCH),
    "m/min": ("ft/min", MM_PER_FOOT / 1000),
}
"""What each unit is written as in inches, and how many of the metric unit make one."""


def read_units(units: str) -> Units:
    """The units asked for.

    Raises LearnerError when they are neither millimetres nor inches.
    """
    if units == "mm":
        return "mm"
    if units in ("inch", "in"):
        return "inch"
    raise LearnerError(f"units {units!r} are not known; write units='mm' or units='inch'")


def show(name: str, value: float, units: Units) -> str:
    """The value of a quantity with its unit: "1.83 mm", "0.0721 in", "101.6°".

    A diameter that is a sixty-fourth of an inch is written as the fraction. Feeds and speeds go to inches and feet;
    forces stay in N, N·m and kW.
    """
    quantity = QUANTITIES[name]
    if quantity.unit == "mm" and units == "mm":
        return plain_number(value, 2 if abs(value) >= 1 else 3) + " mm"
    if units == "inch" and quantity.unit in INCH_UNITS:
        unit, factor = INCH_UNITS[quantity.unit]
        inches = value / factor
        if name == "diameter" and abs(inches * SIXTY_FOURTHS - round(inches * SIXTY_FOURTHS)) < EXACT * SIXTY_FOURTHS:
            return fraction(inches) + " in"
        return plain_number(inches, 3 if abs(inches) >= 1 else 4) + " " + unit
    return quantity.show(value)


def fraction(inches: float) -> str:
    """The nearest sixty-fourth of an inch, in lowest terms: "25/64", "1 7/8", "2"."""
    parts = int(inches * SIXTY_FOURTHS + 0.5)
    whole, top = divmod(parts, SIXTY_FOURTHS)
    bottom = SIXTY_FOURTHS
    while top and top % 2 == 0:
        top, bottom = top // 2, bottom // 2
    if not top:
        return str(whole)
    return f"{whole} {top}/{bottom}" if whole else f"{top}/{bottom}"


def fill(parts: str, values: Mapping[str, float], units: Units, likes: Mapping[str, str] = NO_LIKES) -> str:
    """The text with every {name} replaced by that value. likes: what else than itself a name is written like."""
    pieces = parts.split("{")
    found = (piece.partition("}") for piece in pieces[1:])
    return pieces[0] + "".join(show(likes.get(name, name), values[name], units) + rest for name, _, rest in found)


def describe(
    words: tuple[Sentence, ...],
    values: Mapping[str, float],
    units: Units,
    hide: frozenset[str],
    likes: Mapping[str, str] = NO_LIKES,
) -> str:
    """The text twin of a drawing: its numbers, and how they compare with what is usual."""
    said = ""
    for clause in words:
        if clause.of in hide:
            said += clause.hidden
            continue
        said += fill(clause.parts, values, units, likes)
        if clause.judged and clause.judged not in hide:
            value = values[clause.judged]
            judgement = clause.below if value < clause.low else clause.above if value > clause.high else clause.within
            said += fill(judgement, values, units, likes)
    return said


def bar_length(longest: float, units: Units) -> tuple[float, str]:
    """A round length of at most `longest` mm for the scale bar, in millimetres, and how it is written."""
    within = longest * (1 + 1e-9)
    if units == "mm":
        steps = [(digit * 10.0**power, power) for power in range(-3, 4) for digit in (1, 2, 5)]
        fitting = [step for step in steps if step[0] <= within] or steps[:1]
        length, power = fitting[-1]
        return length, plain_number(length, max(0, -power)) + " mm"
    inches = within / MM_PER_INCH
    parts = [2**power for power in range(11) if 2**power / SIXTY_FOURTHS <= inches]
    if parts:
        return parts[-1] / SIXTY_FOURTHS * MM_PER_INCH, fraction(parts[-1] / SIXTY_FOURTHS) + " in"
    thousandths = [n for n in (1, 2, 5, 10) if n / 1000 <= inches] or [1]
    return thousandths[-1] / 1000 * MM_PER_INCH, plain_number(thousandths[-1] / 1000, 3) + " in"
