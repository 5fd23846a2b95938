"""Reading a number the way people type it: 5.15, 5,15, 7/8 in, 1 7/8", 1-7/8 in, −3.2 mm, 59°, 1.03 rad.

Nothing typed is ever evaluated as code, and no character is ever dropped: what cannot be read in exactly one
way is refused, with the place and examples of what can be read.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from types import MappingProxyType

from attrs import field, frozen

from drillpoint.errors import InstructorError, LearnerError

LONGEST_TEXT = 60
MOST_DIGITS = 20
MM_PER_INCH = 25.4  # exact by definition: international yard and pound agreement of 1959

_SHOWN = 60
_LIBRARY_UNIT = {"length": "mm", "angle": "°", "ratio": ""}
_FAMILY_NAME = {"length": "a length", "angle": "an angle", "ratio": "a plain number"}
# Unit -> (what it measures, factor to the library's unit).
_UNITS: Mapping[str, tuple[str, float]] = MappingProxyType(
    {
        "mm": ("length", 1.0),
        "cm": ("length", 10.0),
        "in": ("length", MM_PER_INCH),
        "°": ("angle", 1.0),
        "rad": ("angle", 180.0 / math.pi),
        "": ("ratio", 1.0),
        "%": ("ratio", 0.01),
    }
)
_SPELLINGS: Mapping[str, str] = MappingProxyType(
    {
        **dict.fromkeys(("mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters"), "mm"),
        **dict.fromkeys(("cm", "cm.", "centimetre", "centimetres", "centimeter", "centimeters"), "cm"),
        **dict.fromkeys(("in", "in.", "inch", "inches", '"', "″", "”", "“", "''", "’’", "′′"), "in"),
        **dict.fromkeys(("°", "º", "˚", "deg", "deg.", "degree", "degrees"), "°"),
        **dict.fromkeys(("rad", "rad.", "radian", "radians"), "rad"),
        "%": "%",
    }
)
_EXAMPLES: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "length": ("3.25 mm", "3,25 mm", "7/8 in", "1 7/8 in"),
        "angle": ("61.5°", "61,5 deg", "1.03 rad"),
        "ratio": ("0.15", "0,15", "3/20"),
    }
)
# Each look-alike is one character for one character, so that a position in the text stays a position in the text.
LOOK_ALIKES = str.maketrans({"−": "-", "–": "-", "‐": "-", "‑": "-", "﹣": "-", "－": "-", "⁄": "/", "∕": "/",
                              "\u00a0": " ", "\u2009": " ", "\u202f": " ", "\u2007": " ", "\t": " "})  # fmt: skip
_VULGAR = MappingProxyType(
    {
        "½": (1, 2),
        "¼": (1, 4),
        "¾": (3, 4),
        "⅛": (1, 8),
        "⅜": (3, 8),
        "⅝": (5, 8),
        "⅞": (7, 8),
        "⅓": (1, 3),
        "⅔": (2, 3),
    }
)
_NUMBER = re.compile(
    r"""(?P<whole>[0-9]+)(?:\ +|-)(?P<top>[0-9]+)\ */\ *(?P<bottom>[0-9]+)
      | (?P<numerator>[0-9]+)\ */\ *(?P<denominator>[0-9]+)
      | (?:(?P<before>[0-9]+)[ -]?)?(?P<vulgar>[½¼¾⅛⅜⅝⅞⅓⅔])
      | (?P<decimal>[0-9]+(?:[.,][0-9]+|\.(?![0-9]))?|[.,][0-9]+)(?P<exponent>[eE][+-]?[0-9]{1,3}(?![0-9]))?
    """,
    re.VERBOSE,
)
_UNIT = re.compile(r" *([^\W\d_]+\.?|'' ?|’’|′′|[^\w ]|_)?")
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")


class ReadingError(LearnerError):
    """Something typed cannot be read. A format error costs a learner nothing.

    `.reason` is one sentence, `.text` what was typed, `.position` the index in it where reading stopped, and
    `.examples` what can be typed instead. `str(error)` shows all four, with the place marked by a caret.
    """

    def __init__(self, reason: str, text: str, position: int = 0, examples: tuple[str, ...] = ()) -> None:
        self.reason = reason
        self.text = text
        self.position = max(0, min(position, len(text)))
        self.examples = examples
        super().__init__(f"{reason}\n{self.marked()}\nYou can write: {', '.join(examples)}." if examples else reason)

    def marked(self) -> str:
        """Two lines: the text as typed, and a caret under the place where reading stopped."""
        start = max(0, self.position - _SHOWN // 2)
        shown = "".join(c if c.isprintable() else "\ufffd" for c in self.text[start : start + _SHOWN])
        return f"    {shown}\n    {' ' * (self.position - start)}^"


@frozen
class Reading:
    """A typed number as it was read: `.value` in the library's unit (`.unit`: mm, ° or none), and how (`.echo`)."""

    value: float
    unit: str
    typed: str
    typed_unit: str
    number: str = field(repr=False)
    digits: int | None = field(repr=False)
    """Significant digits typed, None for a fraction (which is exact)."""
    decimals: int | None = field(repr=False)
    """Decimals typed, None for a fraction."""

    @property
    def echo(self) -> str:
        """How the text was read, step by step: `1 7/8 in = 1.875 in = 47.625 mm`."""
        family, factor = _UNITS[self.typed_unit]
        in_typed_unit = self.value / factor
        steps = [with_unit(self.number, self.typed_unit)]
        if "," in self.number:
            steps.append("= " + with_unit(self.number.replace(",", "."), self.typed_unit))
        elif self.decimals is None or "e" in self.number.lower():
            steps.append(_equals(in_typed_unit) + with_unit(f"{in_typed_unit:.6g}", self.typed_unit))
        if self.typed_unit != _LIBRARY_UNIT[family]:
            steps.append(_equals(self.value) + with_unit(f"{self.value:.6g}", self.unit))
        return " ".join(steps)


def with_unit(number: str, unit: str) -> str:
    """Put a unit behind a number as print does: `5.15 mm`, `59°`, `0.15`."""
    return f"{number}{unit}" if unit in ("°", "%", "") else f"{number} {unit}"


def unit_and_factor(unit: str) -> tuple[str, float]:
    """Give the library's unit for `unit` (mm, cm, in, °, deg, rad, % or none) and the factor that leads to it."""
    family, factor = _UNITS[_known_unit(unit)]
    return _LIBRARY_UNIT[family], factor


def read_number(text: str, unit: str = "mm") -> Reading:
    """Read one number with or without a unit, and say how it was read.

    `unit` is the one printed beside the box: mm, cm, in, °, deg, rad, or "" for a plain number. It counts when no
    unit is typed, and it fixes what is measured: an angle typed into a box for a length is refused.
    Read are decimals with point or comma, fractions (7/8), mixed numbers (1 7/8, 1-7/8, 1⅞), signs and the units
    mm, cm, in, inch, ", °, deg, rad, %. The result is in mm, degrees or a plain number.
    Refused with ReadingError: what could be read in two ways (1,234), more than one number (3.5.1, 5 mm 3),
    anything left over, more than 60 characters or 20 digits.
    """
    default = _known_unit(unit)
    family = _UNITS[default][0]
    examples = _EXAMPLES[family]
    if not isinstance(text, str):
        raise ReadingError(f"A number is typed as text, not as {type(text).__name__}.", "", 0, examples)
    if len(text) > LONGEST_TEXT:
        raise ReadingError(f"This is longer than {LONGEST_TEXT} characters.", text, LONGEST_TEXT, examples)
    plain = text.translate(LOOK_ALIKES).rstrip()
    begin = _after_spaces(plain, 0)
    negative = plain.startswith("-", begin)
    if plain.startswith(("-", "+"), begin):
        begin = _after_spaces(plain, begin + 1)
    number = _NUMBER.match(plain, begin)
    if number is None:
        raise ReadingError(_no_number(plain, begin), text, begin, examples)
    after = number.end()
    if after < len(plain) and plain[after] in ".,/0123456789":
        raise ReadingError(_two_separators(plain, number), text, after, examples)
    magnitude = _magnitude(number, text, examples)
    typed_unit = default
    if after < len(plain):
        typed_unit, after = _unit_after(plain, after, text, examples)
    typed_family, factor = _UNITS[typed_unit]
    if typed_family != family:
        reason = f"{_FAMILY_NAME[family].capitalize()} is asked for here, but “{typed_unit}” goes with "
        raise ReadingError(reason + f"{_FAMILY_NAME[typed_family]}.", text, number.end(), examples)
    value = magnitude * factor
    if not math.isfinite(value):
        raise ReadingError("This number is too large.", text, number.start(), examples)
    shown = " ".join(number.group().split())
    digits, decimals = _precision(number)
    return Reading(-value if negative else value, _LIBRARY_UNIT[family], text, typed_unit, "-" * negative + shown,
                   digits, decimals)  # fmt: skip


def _known_unit(unit: str) -> str:
    if unit in _UNITS:
        return unit
    if unit.lower() in _SPELLINGS:
        return _SPELLINGS[unit.lower()]
    raise InstructorError(f"unit {unit!r} is not known; a box can ask for mm, cm, in, °, rad, % or a plain number ('')")


def _equals(value: float) -> str:
    return "= " if math.isclose(float(f"{value:.6g}"), value, rel_tol=1e-12) else "≈ "


def _magnitude(number: re.Match[str], text: str, examples: tuple[str, ...]) -> float:
    """Turn a matched number into a float, or say which part of it has no single meaning."""
    if number.end() - number.start() > MOST_DIGITS and sum(c.isdigit() for c in number.group()) > MOST_DIGITS:
        raise ReadingError(f"This number has more than {MOST_DIGITS} digits.", text, number.start(), examples)
    if number["decimal"] is not None:
        if _THOUSANDS.fullmatch(number["decimal"]):
            place = number.start() + number["decimal"].index(",")
            whole, part = number["decimal"].split(",")
            reason = f"The comma can be read in two ways: write {whole}{part} or {whole}.{part}."
            raise ReadingError(reason, text, place, examples)
        return float(number["decimal"].replace(",", ".") + (number["exponent"] or ""))
    if number["vulgar"] is not None:
        top, bottom = _VULGAR[number["vulgar"]]
        return int(number["before"] or 0) + top / bottom
    group = "denominator" if number["whole"] is None else "bottom"
    if int(number[group]) == 0:
        raise ReadingError("A fraction cannot be divided by 0.", text, number.start(group), examples)
    if number["whole"] is None:
        return int(number["numerator"]) / int(number["denominator"])
    if int(number["top"]) >= int(number["bottom"]):
        reason = "The fraction after a whole number is less than one, as in 1 7/8."
        raise ReadingError(reason, text, number.start("top"), examples)
    return int(number["whole"]) + int(number["top"]) / int(number["bottom"])


def _precision(number: re.Match[str]) -> tuple[int | None, int | None]:
    """Count the significant digits and the decimals of a typed decimal number."""
    decimal = number["decimal"]
    if decimal is None:
        return None, None
    whole, _, part = decimal.replace(",", ".").partition(".")
    return len((whole + part).lstrip("0")), len(part)


def _no_number(plain: str, position: int) -> str:
    if position >= len(plain):
        return "There is no number here." if not plain.strip() else "There is a sign but no number."
    return "A number is expected here."


def _two_separators(plain: str, number: re.Match[str]) -> str:
    if plain[number.end()] == "/":
        return "A fraction is one whole number over another, as in 7/8."
    if number["decimal"] is None:
        return "A fraction is made of whole numbers only, as in 7/8."
    if plain[number.end()] == "," and number.end() == len(plain) - 1:
        return "A comma is followed by a digit."
    return "A number has one decimal point or one decimal comma."


def _unit_after(plain: str, position: int, text: str, examples: tuple[str, ...]) -> tuple[str, int]:
    """Read the unit that follows a number; whatever follows the unit is an error."""
    match = _UNIT.match(plain, position)
    word = match.group(1) if match else None
    if match is None or word is None:
        place = _after_spaces(plain, position)
        raise ReadingError("One number is expected, and here a second one begins.", text, place, examples)
    unit = _SPELLINGS.get(word.strip().lower())
    if unit is None:
        raise ReadingError(_not_a_unit(word), text, match.start(1), examples)
    if match.end() < len(plain):
        rest = _after_spaces(plain, match.end())
        raise ReadingError("Nothing is expected after the unit.", text, rest, examples)
    return unit, match.end()


def _after_spaces(plain: str, position: int) -> int:
    return len(plain) - len(plain[position:].lstrip(" "))


def _not_a_unit(word: str) -> str:
    if word in "+-*·×^":
        return "One finished number is expected here, not a calculation."
    if word[0].isalpha():
        return f"“{word}” is not a unit that can be read here."
    return "This sign cannot be read here."
