"""One number without a unit as people type it: 5.15, 5,15, 7/8, 1 7/8, 1-7/8, 1⅞, 1.5e-3, 1×10^-3, 1·10⁻³."""

from __future__ import annotations

import math
import re
import unicodedata

from attrs import frozen

from drillpoint.course.typed import Unreadable, why_unreadable
from drillpoint.course.units import unit_at

MOST_DIGITS = 20

VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"
DIGIT_ALIKE = {"O": "0", "o": "0", "l": "1", "I": "1"}
_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺", "0123456789-+")
NUMERAL = re.compile(
    rf"""(?P<whole>[0-9]+)(?:\ +|-)(?P<top>[0-9]+)\ */\ *(?P<bottom>[0-9]+)
      | (?P<numerator>[0-9]+)\ */\ *(?P<denominator>[0-9]+)
      | (?:(?P<before>[0-9]+)[ -]?)?(?P<vulgar>[{VULGAR}])
      | (?P<decimal>[0-9]+(?:[.,][0-9]+|\.(?![0-9]))?|[.,][0-9]+)
        (?:[eE](?P<exponent>[+-]?[0-9]{{1,3}})(?![0-9])
          |\ *[×·⋅*xX]\ *10\ *(?:
             (?:\^|\*\*)\ *(?P<power>[+-]?[0-9]{{1,3}})(?![0-9])
            |(?P<raised>[⁻⁺]?[⁰¹²³⁴-⁹]{{1,3}})))?
    """,
    re.VERBOSE,
)
THOUSANDS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")


@frozen
class Numeral:
    """A number as it was typed, and where it stands."""

    value: float
    shown: str
    start: int
    end: int
    digits: int | None
    """Significant digits, None for a fraction."""
    decimals: int | None
    """Decimals, below zero for 1.5e3; None for a fraction."""

    @property
    def is_whole(self) -> bool:
        """Whether it is typed as digits only."""
        return self.shown.isdecimal()


def begins_at(plain: str, start: int) -> bool:
    """Say whether a number begins here."""
    return NUMERAL.match(plain, start) is not None


def numeral_at(plain: str, start: int) -> Numeral:
    """Read the number that begins here, or say why it has no single meaning (Unreadable)."""
    match = NUMERAL.match(plain, start)
    if match is None:
        raise Unreadable(_no_number(plain, start), start)
    end = match.end()
    if end < len(plain) and plain[end] in ".,/0123456789" and not unit_at(plain, end):
        raise Unreadable(_two_separators(plain, match), end)
    if sum(c.isdigit() for c in match.group()) > MOST_DIGITS:
        raise Unreadable(f"This number has more than {MOST_DIGITS} digits.", start)
    return Numeral(_magnitude(match), " ".join(match.group().split()), start, end, *_precision(match))


def is_plain(number: str) -> bool:
    """Whether a number is typed as digits with at most one point or comma."""
    return re.fullmatch(r"-?[0-9]*[.,]?[0-9]*", number) is not None


def two_readings(decimal: str) -> str:
    """Say why a comma has two meanings: 1,234 is 1234 to some and 1.234 to others. Empty if it has one."""
    if not THOUSANDS.fullmatch(decimal):
        return ""
    whole, part = decimal.split(",")
    return f"The comma can be read in two ways: write {whole}{part} or {whole}.{part}."


def _magnitude(match: re.Match[str]) -> float:
    if match["decimal"] is not None:
        return _decimal(match)
    if match["vulgar"] is not None:
        top, bottom = unicodedata.normalize("NFKC", match["vulgar"]).split("⁄")
        return int(match["before"] or 0) + int(top) / int(bottom)
    group = "denominator" if match["whole"] is None else "bottom"
    if int(match[group]) == 0:
        raise Unreadable("A fraction cannot be divided by 0.", match.start(group))
    if match["whole"] is None:
        return int(match["numerator"]) / int(match["denominator"])
    if int(match["top"]) >= int(match["bottom"]):
        raise Unreadable("The fraction after a whole number is less than one, as in 1 7/8.", match.start("top"))
    return int(match["whole"]) + int(match["top"]) / int(match["bottom"])


def _decimal(match: re.Match[str]) -> float:
    decimal = match["decimal"]
    if reason := two_readings(decimal):
        raise Unreadable(reason, match.start() + decimal.index(","))
    value = float(f"{decimal.replace(',', '.')}e{_power_of_ten(match)}")
    if value == 0 and decimal.strip("0.,"):
        raise Unreadable("This number is too small to be told from 0.", match.start())
    if math.isinf(value):
        raise Unreadable("This number is too large.", match.start())
    return value


def _power_of_ten(match: re.Match[str]) -> int:
    return int(match["exponent"] or match["power"] or (match["raised"] or "0").translate(_RAISED))


def _precision(match: re.Match[str]) -> tuple[int | None, int | None]:
    """Count the significant digits and the decimals of a typed decimal number; 8.3e-2 has its last digit in place 3."""
    decimal = match["decimal"]
    if decimal is None:
        return None, None
    whole, _, part = decimal.replace(",", ".").partition(".")
    return len((whole + part).lstrip("0")), len(part) - _power_of_ten(match)


def _no_number(plain: str, place: int) -> str:
    if place >= len(plain):
        return "There is a sign but no number." if plain.strip() else "There is no number here."
    if plain[place] in DIGIT_ALIKE and plain[place + 1 : place + 2] in tuple("0123456789.,/"):
        return f"This is the letter {plain[place]}, not the digit {DIGIT_ALIKE[plain[place]]}."
    return why_unreadable(plain[place]) or "A number is expected here."


def _two_separators(plain: str, match: re.Match[str]) -> str:
    sign = plain[match.end()]
    if sign == "/":
        return "A fraction is one whole number over another, as in 7/8."
    if match["decimal"] is None:
        return "A fraction is made of whole numbers only, as in 7/8."
    if sign == "," and match.end() == len(plain) - 1:
        return "A comma is followed by a digit."
    return "A number has one decimal point or one decimal comma."
