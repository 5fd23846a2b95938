"""The units a number can be typed in: how each is spelt, what it measures, and the factor to the library's unit."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from attrs import frozen

from drillpoint.errors import InstructorError

# Exact by definition: the inch and the pound by the international yard and pound agreement of 1959, the standard
# acceleration of free fall by the 3rd General Conference on Weights and Measures, 1901, and one horsepower, as machine
# tools in inch countries are rated, is 550 ft·lbf/s.
MM_PER_INCH = 25.4
_MM_PER_FOOT = 304.8
N_PER_LBF = 0.45359237 * 9.80665
_NM_PER_FT_LB = N_PER_LBF * _MM_PER_FOOT / 1000
_KW_PER_HP = 550 * _NM_PER_FT_LB / 1000


@frozen
class Kind:
    """What is measured: in words, in which unit the library keeps it, and how it can be typed."""

    words: str
    kept_in: str
    examples: tuple[str, ...]


@frozen
class Unit:
    """A unit: what it measures and the factor that leads to the library's unit."""

    kind: str
    factor: float


@frozen
class Part:
    """A part that may follow a unit: `30′` behind `59°`. `share` of them make one of the whole."""

    unit: str
    share: int
    most: int
    spellings: tuple[str, ...]
    name: str
    example: str


KINDS: Mapping[str, Kind] = MappingProxyType(
    {
        "length": Kind("a length", "mm", ("3.25 mm", "3,25 mm", "7/8 in", "1 7/8 in")),
        "angle": Kind("an angle", "°", ("61.5°", "61,5 deg", "61° 30′", "1.03 rad")),
        "ratio": Kind("a plain number", "", ("0.15", "0,15", "3/20", "15 %")),
        "taper": Kind("a taper", "mm/mm", ("0.012 mm/mm", "0,012", "12 mm/m", "0.144 in/ft")),
        "force": Kind("a force", "N", ("850 N", "0,85 kN", "190 lbf")),
        "torque": Kind("a torque", "N·m", ("4.5 N·m", "4,5 Nm", "40 in-lb", "3.3 ft-lb")),
        "turns": Kind("a speed of rotation", "rev/min", ("950 rev/min", "950 rpm", "950 1/min")),
        "feed": Kind("a feed for each revolution", "mm/rev", ("0.15 mm/rev", "0,15 mm/rev", "0.006 in/rev")),
        "feed rate": Kind("a feed rate", "mm/min", ("140 mm/min", "5.5 in/min")),
        "cutting speed": Kind("a cutting speed", "m/min", ("25 m/min", "25,5 m/min", "80 ft/min", "80 sfm")),
        "power": Kind("a power", "kW", ("1.5 kW", "1,5 kW", "1500 W", "2 hp")),
        "stress": Kind("a stress", "N/mm²", ("650 N/mm²", "650 MPa", "94 ksi")),
        "time": Kind("a time", "min", ("1.5 min", "1,5 min", "90 s", "1 min 30 s")),
    }
)
UNITS: Mapping[str, Unit] = MappingProxyType(
    {
        "mm": Unit("length", 1.0),
        "cm": Unit("length", 10.0),
        "m": Unit("length", 1000.0),
        "µm": Unit("length", 0.001),
        "in": Unit("length", MM_PER_INCH),
        "ft": Unit("length", _MM_PER_FOOT),
        "°": Unit("angle", 1.0),
        "rad": Unit("angle", 180.0 / math.pi),
        "": Unit("ratio", 1.0),
        "%": Unit("ratio", 0.01),
        "mm/mm": Unit("taper", 1.0),
        "mm/m": Unit("taper", 0.001),
        "in/in": Unit("taper", 1.0),
        "in/ft": Unit("taper", 1 / 12),
        "N": Unit("force", 1.0),
        "kN": Unit("force", 1000.0),
        "lbf": Unit("force", N_PER_LBF),
        "N·m": Unit("torque", 1.0),
        "N·cm": Unit("torque", 0.01),
        "N·mm": Unit("torque", 0.001),
        "in-lb": Unit("torque", _NM_PER_FT_LB / 12),
        "ft-lb": Unit("torque", _NM_PER_FT_LB),
        "rev/min": Unit("turns", 1.0),
        "rev/s": Unit("turns", 60.0),
        "mm/rev": Unit("feed", 1.0),
        "in/rev": Unit("feed", MM_PER_INCH),
        "mm/min": Unit("feed rate", 1.0),
        "in/min": Unit("feed rate", MM_PER_INCH),
        "m/min": Unit("cutting speed", 1.0),
        "m/s": Unit("cutting speed", 60.0),
        "ft/min": Unit("cutting speed", _MM_PER_FOOT / 1000),
        "kW": Unit("power", 1.0),
        "W": Unit("power", 0.001),
        "hp": Unit("power", _KW_PER_HP),
        "N/mm²": Unit("stress", 1.0),
        "MPa": Unit("stress", 1.0),
        "GPa": Unit("stress", 1000.0),
        "psi": Unit("stress", N_PER_LBF / MM_PER_INCH**2),
        "ksi": Unit("stress", 1000 * N_PER_LBF / MM_PER_INCH**2),
        "min": Unit("time", 1.0),
        "s": Unit("time", 1 / 60),
        "h": Unit("time", 60.0),
    }
)
# Spellings beside the name of a unit itself. A · stands for ·, *, -, a point, a space or nothing, a / for / or "per";
# a point may follow every word, and capitals make no difference.
_SPELLINGS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "mm": ("millimetre", "millimetres", "millimeter", "millimeters"),
        "cm": ("centimetre", "centimetres", "centimeter", "centimeters"),
        "m": ("metre", "metres", "meter", "meters"),
        "µm": ("μm", "um"),
        "in": ("inch", "inches", '"', "″", "”", "“", "''", "’’", "′′"),
        "ft": ("foot", "feet", "'", "’", "′"),
        "°": ("º", "˚", "deg", "degree", "degrees"),
        "rad": ("radian", "radians"),
        "%": ("percent", "per cent"),
        "in/in": ("inch/inch",),
        "in/ft": ("inch/foot", "inches/foot"),
        "N": ("newton", "newtons"),
        "kN": ("kilonewton", "kilonewtons"),
        "lbf": ("lb", "lbs", "pound", "pounds"),
        "N·m": ("newton·metre", "newton·metres", "newton·meter", "newton·meters"),
        "in-lb": ("in·lb", "in·lbs", "in·lbf", "lb·in", "lbs·in", "lbf·in", "inch·pound", "inch·pounds"),
        "ft-lb": ("ft·lb", "ft·lbs", "ft·lbf", "lb·ft", "lbs·ft", "lbf·ft", "foot·pound", "foot·pounds"),
        "rev/min": ("rpm", "r/min", "revs/min", "1/min", "/min", "min^-1", "min⁻¹"),
        "rev/s": ("r/s", "revs/s", "1/s", "/s", "s^-1", "s⁻¹"),
        "mm/rev": ("mm/r",),
        "in/rev": ("ipr", "in/r", "inch/rev", "inches/rev", '"/rev'),
        "in/min": ("ipm", "inch/min", "inches/min", '"/min'),
        "ft/min": ("sfm", "sfpm", "fpm", "feet/min", "surface feet/min"),
        "hp": ("horsepower",),
        "N/mm²": ("N/mm2", "N/mm^2"),
        "min": ("minute", "minutes"),
        "s": ("sec", "second", "seconds"),
        "h": ("hr", "hour", "hours"),
    }
)
_MINUTES = ("′", "'", "’", "min", "minute", "minutes", "arcmin")
_SECONDS = ("″", '"', "”", "''", "′′", "’’", "s", "sec", "second", "seconds", "arcsec")
PARTS: Mapping[str, tuple[Part, ...]] = MappingProxyType(
    {
        "°": (
            Part("′", 60, 60, _MINUTES, "minutes", "59° 30′"),
            Part("″", 3600, 60, _SECONDS, "seconds", "59° 30′ 15″"),
        ),
        "ft": (Part("in", 12, 12, ("in", *_SPELLINGS["in"]), "inches", "5 ft 3 in"),),
        "min": (Part("s", 60, 60, ("s", *_SPELLINGS["s"]), "seconds", "1 min 30 s"),),
    }
)
CLOSE = frozenset(("", "°", "%", "′", "″"))
"""Units that stand close behind their number."""


def with_unit(number: str, unit: str) -> str:
    """Put a unit behind a number as print does: `5.15 mm`, `59°`, `0.15`."""
    return f"{number}{unit}" if unit in CLOSE else f"{number} {unit}"


def unit_and_factor(unit: str) -> tuple[str, float]:
    """Give the library's unit for `unit` (any that can stand beside a box) and the factor that leads to it."""
    found = UNITS[known_unit(unit)]
    return KINDS[found.kind].kept_in, found.factor


def known_unit(unit: str) -> str:
    """Give the name of a unit that stands beside a box, however it is spelt; InstructorError if there is none."""
    if unit in UNITS:
        return unit
    match = _unit_pattern().fullmatch(unit)
    if match is None:
        raise InstructorError(
            f"unit {unit!r} is not known; a box can ask for {in_words(tuple(filter(None, UNITS)), 'or')}, "
            "or for a plain number ('')"
        )
    return spellings()[(match.lastindex or 0) - 1][0]


def units_of(kind: str) -> tuple[str, ...]:
    """The units in which something can be typed, the library's own first."""
    return tuple(name for name, unit in UNITS.items() if unit.kind == kind)


def unit_at(text: str, place: int) -> tuple[str, int] | None:
    """Find the longest unit spelt at `place`: its name and where it ends, or None."""
    match = _unit_pattern().match(text, place)
    return None if match is None else (spellings()[(match.lastindex or 0) - 1][0], match.end())


def part_at(text: str, place: int, part: Part) -> int | None:
    """Find where the spelling of a part of a unit ends, or None if none stands here."""
    match = _part_pattern(part.spellings).match(text, place)
    return None if match is None else match.end()


def in_words(names: tuple[str, ...], last: str) -> str:
    """Join names as a sentence does: "mm, cm or in"."""
    return f" {last} ".join((", ".join(names[:-1]), names[-1])) if len(names) > 1 else "".join(names)


@cache
def spellings() -> tuple[tuple[str, str], ...]:
    """Every unit with each of its spellings, the longest first, so that N/mm² is not read as N."""
    pairs = [(unit, word) for unit in UNITS if unit for word in (unit.replace("-", "·"), *_SPELLINGS.get(unit, ()))]
    return tuple(sorted(pairs, key=lambda pair: -len(pair[1])))


@cache
def _unit_pattern() -> re.Pattern[str]:
    return _pattern("|".join(f"({as_pattern(word)})" for _, word in spellings()))


@cache
def _part_pattern(spellings: tuple[str, ...]) -> re.Pattern[str]:
    return _pattern("|".join(as_pattern(word) for word in sorted(spellings, key=len, reverse=True)))


def _pattern(alternatives: str) -> re.Pattern[str]:
    # Capitals of plain letters only: a Kelvin sign is no k. Afterwards no letter may go on.
    return re.compile(rf"(?ai:{alternatives})(?![^\W\d_])")


def as_pattern(word: str) -> str:
    """A spelling as a pattern, with the freedoms of writing it."""
    made = ""
    for piece in re.findall(r"[^\W\d_]+|.", word):
        if piece == "·":
            made += r"(?:\ *[·⋅*.-]\ *|\ +)?"
        elif piece == "/":
            made += r"(?:\ */\ *|\ +per\ +)"
        else:
            made += re.escape(piece) + (r"\.?" if piece.isalpha() and piece.isascii() else "")
    return made
