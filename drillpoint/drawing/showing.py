"""How a value is written on a drawing: millimetres, or inches with the fraction the workshop reads.

The browser writes the same digits: drillpoint/explorers/explorer.js follows these rules, and a test compares both.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from drillpoint.drawing.scene import Sentence
from drillpoint.errors import LearnerError
from drillpoint.quantities import QUANTITIES, plain_number

Units = Literal["mm", "inch"]

MM_PER_INCH = 25.4  # exact by definition: international yard and pound agreement of 1959
SIXTY_FOURTHS = 64
EXACT = 1e-6  # inch; nearer than this a length is the fraction itself


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
    """The value with its unit: "1.83 mm", "0.0721 in", "101.6°".

    A diameter that is a sixty-fourth of an inch is written as the fraction.
    """
    if name in ("acute", "half_point_angle"):
        return plain_number(value, 1) + "°"
    quantity = QUANTITIES[name]
    if quantity.unit != "mm":
        return quantity.show(value)
    if units == "mm":
        return plain_number(value, 2 if value >= 1 else 3) + " mm"
    inches = value / MM_PER_INCH
    if name == "diameter" and abs(inches * SIXTY_FOURTHS - round(inches * SIXTY_FOURTHS)) < EXACT * SIXTY_FOURTHS:
        return fraction(inches) + " in"
    return plain_number(inches, 3 if inches >= 1 else 4) + " in"


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


def fill(parts: str, values: Mapping[str, float], units: Units) -> str:
    """The text with every {name} replaced by that value."""
    pieces = parts.split("{")
    return pieces[0] + "".join(
        show(name, values[name], units) + rest for name, _, rest in (piece.partition("}") for piece in pieces[1:])
    )


def describe(words: tuple[Sentence, ...], values: Mapping[str, float], units: Units, hide: frozenset[str]) -> str:
    """The text twin of a drawing: its numbers, and how they compare with what is usual."""
    said = ""
    for clause in words:
        if clause.of in hide:
            said += clause.hidden
            continue
        said += fill(clause.parts, values, units)
        if clause.judged and clause.judged not in hide:
            value = values[clause.judged]
            judgement = clause.below if value < clause.low else clause.above if value > clause.high else clause.within
            said += fill(judgement, values, units)
    return said


def bar_length(diameter: float, units: Units) -> tuple[float, str]:
    """A round length of at most 0.45 diameters for the scale bar, in millimetres, and how it is written."""
    if units == "mm":
        steps = [(step, plain_number(step, 2) + " mm") for step in (0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0)]
    else:
        parts = (1, 2, 4, 8, 16, 32, 64, 128)
        steps = [(part / SIXTY_FOURTHS * MM_PER_INCH, fraction(part / SIXTY_FOURTHS) + " in") for part in parts]
    fitting = [step for step in steps if step[0] <= 0.45 * diameter]
    return fitting[-1] if fitting else steps[0]
