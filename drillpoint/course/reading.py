"""Reading a number the way people type it: 5.15, 5,15, 7/8 in, 1 7/8", 1-7/8 in, −3.2 mm, 59° 30′, 4.5 Nm, 80 sfm.

Nothing typed is ever evaluated as code, and no character is ever dropped: what cannot be read in exactly one
way is refused, with the place and examples of what can be read.
"""

from __future__ import annotations

import math
import re

from attrs import evolve, field, frozen

from drillpoint.course.numeral import DIGIT_ALIKE, VULGAR, Numeral, begins_at, is_plain, numeral_at
from drillpoint.course.typed import LOOK_ALIKES, ReadingError, Unreadable, why_unreadable
from drillpoint.course.units import (
    KINDS,
    MM_PER_INCH,
    PARTS,
    UNITS,
    Part,
    in_words,
    known_unit,
    part_at,
    unit_and_factor,
    unit_at,
    units_of,
    with_unit,
)

__all__ = [
    "LONGEST_TEXT",
    "MM_PER_INCH",
    "Reading",
    "ReadingError",
    "read_number",
    "unit_and_factor",
    "with_unit",
]

LONGEST_TEXT = 60
_WORD = re.compile(r"[^\W\d_]+")


@frozen
class Reading:
    """A typed number as it was read: `.value` in the library's unit (`.unit`), and how (`.echo`)."""

    value: float
    unit: str
    typed: str
    typed_unit: str
    number: str = field(repr=False)
    digits: int | None = field(repr=False)
    """Significant digits typed, None for a fraction or several parts (which are taken as exact)."""
    decimals: int | None = field(repr=False)
    """Decimals typed, below zero for 1.5e3; None for a fraction or several parts."""
    factor: float = field(repr=False, default=1.0)
    """What leads from the typed unit to the library's."""

    @property
    def echo(self) -> str:
        """How the text was read, step by step: `1 7/8 in = 1.875 in = 47.625 mm`."""
        in_typed_unit = self.value / self.factor
        steps = [with_unit(self.number, self.typed_unit)]
        if self.decimals is not None and "," in self.number and is_plain(self.number):
            steps.append("= " + with_unit(self.number.replace(",", "."), self.typed_unit))
        elif self.typed_unit in UNITS and not is_plain(self.number):
            steps.append(_equals(in_typed_unit) + with_unit(f"{in_typed_unit:.6g}", self.typed_unit))
        if self.typed_unit != self.unit:
            steps.append(_equals(self.value) + with_unit(f"{self.value:.6g}", self.unit))
        return " ".join(steps)


def read_number(text: str, unit: str = "mm") -> Reading:
    """Read one number with or without a unit, and say how it was read.

    `unit` is the one printed beside the box, "" for a plain number. It counts when no unit is typed, and it fixes what
    is measured: an angle typed into a box for a length is refused. A box can ask for a length, an angle, a plain
    number, a force, a torque, a speed of rotation, a feed, a cutting speed, a power, a stress, a time or a taper.
    Read are decimals with point or comma, fractions (7/8), mixed numbers (1 7/8, 1-7/8, 1⅞), powers of ten (1e-3,
    1×10^-3, 1·10⁻³), signs, units in their usual spellings, and parts: 59° 30′ 15″, 5 ft 3 1/2 in, 1 min 30 s.
    The result is in the library's unit: mm, degrees, N, N·m, rev/min, mm/rev, mm/min, m/min, kW, N/mm², min.
    Refused with ReadingError: what could be read in two ways (1,234), more than one number (3.5.1, 5 mm 3),
    anything left over, digits of other scripts, more than 60 characters or 20 digits. InstructorError if `unit` is
    not known.
    """
    box = known_unit(unit)
    examples = KINDS[UNITS[box].kind].examples
    if not isinstance(text, str):
        raise ReadingError(f"A number is typed as text, not as {type(text).__name__}.", "", 0, examples)
    if len(text) > LONGEST_TEXT:
        raise ReadingError(f"This is longer than {LONGEST_TEXT} characters.", text, LONGEST_TEXT, examples)
    try:
        return _read(text, text.translate(LOOK_ALIKES).rstrip(" \r\n"), box)
    except Unreadable as error:
        raise ReadingError(error.reason, text, error.place, examples) from None


def _read(text: str, plain: str, box: str) -> Reading:
    start = _after_spaces(plain, 0)
    sign = plain[start] if plain.startswith(("-", "+"), start) else ""
    numeral = numeral_at(plain, _after_spaces(plain, start + len(sign)))
    unit, end = _unit(plain, numeral, box)
    parts, end = _parts(plain, numeral, unit, end)
    if end < len(plain):
        raise Unreadable(*_rest(plain, unit, end))
    kind, wanted = UNITS[unit].kind, UNITS[box].kind
    if kind != wanted:
        place = _after_spaces(plain, numeral.end)
        asked = f"{KINDS[wanted].words.capitalize()} is asked for here{_in_units(wanted)}"
        raise Unreadable(f"{asked}; “{' '.join(plain[place:].split())}” goes with {KINDS[kind].words}.", place)
    reading = _several(text, numeral, unit, parts) if parts else _single(text, numeral, unit)
    if not math.isfinite(reading.value):
        raise Unreadable("This number is too large.", numeral.start)
    return evolve(reading, value=-reading.value, number="-" + reading.number) if sign == "-" else reading


def _single(text: str, numeral: Numeral, unit: str) -> Reading:
    kept_in, factor = unit_and_factor(unit)
    return Reading(numeral.value * factor, kept_in, text, unit, numeral.shown, numeral.digits, numeral.decimals, factor)


def _several(text: str, first: Numeral, unit: str, parts: list[tuple[Numeral, Part]]) -> Reading:
    """Add up parts in the smallest of their units, where whole numbers stay exact."""
    kept_in, factor = unit_and_factor(unit)
    last = parts[-1][1]
    total = first.value * last.share + sum(numeral.value * (last.share / part.share) for numeral, part in parts)
    shown = [with_unit(first.shown, unit), *(with_unit(numeral.shown, part.unit) for numeral, part in parts[:-1])]
    number = " ".join((*shown, parts[-1][0].shown))
    return Reading(total * factor / last.share, kept_in, text, last.unit, number, None, None, factor / last.share)


def _unit(plain: str, numeral: Numeral, box: str) -> tuple[str, int]:
    """Read the unit behind a number; without one, the unit beside the box counts."""
    if numeral.end == len(plain):
        return box, numeral.end
    place = _after_spaces(plain, numeral.end)
    found = unit_at(plain, place)
    if found is None:
        raise Unreadable(_not_a_unit(plain, place, box), place)
    return found


def _parts(plain: str, first: Numeral, unit: str, end: int) -> tuple[list[tuple[Numeral, Part]], int]:
    """Read the parts behind a unit, in falling order: 30′ 15″ behind 59°, 3 1/2 in behind 5 ft."""
    found: list[tuple[Numeral, Part]] = []
    previous = first
    for part in PARTS.get(unit, ()):
        start = _after_spaces(plain, end)
        if unit == "ft" and plain.startswith("-", start):  # as on drawings: 5'-3 1/2"
            start = _after_spaces(plain, start + 1)
        if not begins_at(plain, start):
            continue
        numeral = numeral_at(plain, start)
        stop = part_at(plain, _after_spaces(plain, numeral.end), part)
        if stop is None:
            continue
        if not previous.is_whole:
            raise Unreadable(f"Only the last part may be broken, as in {part.example}.", previous.start)
        if numeral.value >= part.most:
            raise Unreadable(f"There are fewer than {part.most} {part.name} here, as in {part.example}.", start)
        found.append((numeral, part))
        previous, end = numeral, stop
    return found, end


def _rest(plain: str, unit: str, end: int) -> tuple[str, int]:
    place = _after_spaces(plain, end)
    also = f" but marked {PARTS[unit][0].name}, as in {PARTS[unit][0].example}" if unit in PARTS else ""
    return why_unreadable(plain[place]) or f"Nothing is expected after the unit{also}.", place


def _not_a_unit(plain: str, place: int, box: str) -> str:
    sign = plain[place]
    if sign in "0123456789" or sign in VULGAR:
        return "One number is expected, and here a second one begins."
    match = _WORD.match(plain, place)
    word = match.group() if match else ""
    if sign in "+-*·⋅×^=" or word in ("x", "X"):
        return "One finished number is expected here, not a calculation."
    if word in ("e", "E"):
        return "Behind the e stands a power of ten of one to three digits, as in 1.5e-3."
    if word in DIGIT_ALIKE:
        return f"This is the letter {word}, not the digit {DIGIT_ALIKE[word]}."
    odd = next(filter(None, map(why_unreadable, word or sign)), "")
    if odd or not word:
        return odd or "This sign cannot be read here."
    kind = UNITS[box].kind
    return f"“{word}” is not a unit that can be read here; {KINDS[kind].words} is asked for{_in_units(kind)}."


def _in_units(kind: str) -> str:
    names = units_of(kind)
    return ", without a unit or in %" if "" in names else f", in {in_words(names, 'or')}"


def _after_spaces(plain: str, place: int) -> int:
    while plain.startswith(" ", place):
        place += 1
    return place


def _equals(value: float) -> str:
    return "= " if math.isclose(float(f"{value:.6g}"), value, rel_tol=1e-12) else "≈ "
