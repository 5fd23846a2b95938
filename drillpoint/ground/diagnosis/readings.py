"""What was read off a drill: any few numbers, each with how far it may be off."""

from __future__ import annotations

import itertools
import math
import operator
import tomllib
from collections.abc import Callable, Mapping
from functools import cache, lru_cache
from importlib import resources
from numbers import Real
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Literal

from attrs import field, fields, frozen

from drillpoint.errors import Impossible, OutOfRange, UnknownGiven
from drillpoint.ground.diagnosis.spoken import said
from drillpoint.ground.stated import stated
from drillpoint.quantities import QUANTITIES, nearest, quantity
from drillpoint.relations import rolled_reading

if TYPE_CHECKING:
    from drillpoint.ground.inspection import Inspection


_IN_MM = "Give all lengths in mm"
_FURTHEST_LIPS = 5.0
# Reading, the share of the diameter it stays under on any drill, and what is usual.
_AT_MOST = (
    ("web", 1.0, "about an eighth of the diameter is usual"),
    ("lip_length_1", 1.25, "a 118° point has lips of about half the diameter"),
    ("lip_length_2", 1.25, "a 118° point has lips of about half the diameter"),
    ("lip_height_difference", 0.5, "some hundredths of a millimetre are usual"),
    ("point_offset", 0.5, "some hundredths of a millimetre are usual"),
    ("web_offset", 0.5, "some hundredths of a millimetre are usual"),
)


@frozen
class Measured:
    """A number and how far it may be off either way, in the same unit."""

    value: float
    plus_minus: float = 0.0

    def show(self, name: str) -> str:
        """With the unit of the quantity `name`: "59°", or "59° ± 0.5°" when it may be off; lengths in inches, too."""
        return said(name, self.value, self.plus_minus)


def worked_out(relation: Callable[..., float], *measured: Measured) -> Measured:
    """What a relation makes of numbers that may be off: its value, and the furthest it goes when all errors conspire.

    The relation is tried with every number at both ends of its error, which is exact where it only rises or only falls.
    """
    value = float(relation(*(m.value for m in measured)))
    ends = [(m.value - m.plus_minus, m.value + m.plus_minus) if m.plus_minus else (m.value,) for m in measured]
    found = [value]
    for corner in itertools.product(*ends):
        # An end that no drill has says nothing about this one.
        try:
            found.append(float(relation(*corner)))
        except (OutOfRange, Impossible):
            continue
    return Measured(value, max(abs(f - value) for f in found))


@cache
def _tools() -> tuple[Mapping[str, Any], ...]:
    text = resources.files("drillpoint.ground.diagnosis").joinpath("reading_errors.toml").read_text(encoding="utf-8")
    return tuple(tomllib.loads(text)["tool"])


@cache
def usual_errors() -> Mapping[str, float]:
    """How far each reading may be off with the tool it is usually read with; common practice."""
    return MappingProxyType({name: float(row["error"]) for row in _tools() for name in row["readings"]})


@cache
def usual_tools() -> Mapping[str, str]:
    """The tool each reading is usually read with; common practice."""
    return MappingProxyType({name: str(row["tool"]) for row in _tools() for name in row["readings"]})


def _checked_errors(errors: Mapping[str, float]) -> Mapping[str, float]:
    known = usual_errors()
    for name, error in errors.items():
        if name not in known:
            raise UnknownGiven(f"reading_errors has no reading called {name!r}{nearest(name, tuple(known))}")
        if not _is_error(error):
            raise OutOfRange(
                f"the reading error of {name} is {error!r}; give a number from 0 up, in the unit of the reading"
            )
    return MappingProxyType({**known, **errors})


def _is_error(error: Any) -> bool:
    return isinstance(error, Real) and error is not True and error is not False and 0 <= float(error) < math.inf


@lru_cache(maxsize=256)
def _held_square(seen: float, roll: float) -> float:
    """The point angle of a drill that reads `seen` when it is rolled."""
    found = rolled_reading.solve("point_angle", rolled_reading=seen, roll_angle=roll)
    return float(found[0] if isinstance(found, tuple) else found)


@stated
@frozen(kw_only=True)
class Readings:
    """What was read off one drill. Every reading may be left out; lengths in mm, angles in degrees.

    diameter: over the outer corners. lip_length_1, lip_length_2: along the lips. half_angle_1, half_angle_2: between
    lip and axis; point_angle: the included angle, for those who read it whole. roll_angle: how far the drill was rolled
    from square when the angles were read; they are then corrected. chisel_edge_angle: obtuse, in the end view; an acute
    one is read as its supplement. chisel_edge_leans_back: true when the chisel edge leans the wrong way, so that its
    obtuse angle lies on the side of the flute. web: at the point. web_offset: of the middle of the web from the axis.
    point_offset: of the middle of the chisel edge from the axis. lip_height_difference: at the outer corners, along the
    axis; higher_lip: 1 or 2, the one nearer to the tip. lip_relief, or lip_relief_1 and lip_relief_2: at the outer
    corner, in the plane that touches the cylinder. heel_clearance: how far behind the corner the flank is clear of it,
    round the drill; heel_angle: how far round the heel is. heel_height: how far the heel stands above its corner,
    negative when it is clear. body_diameter: over the margins behind the point. worn_margin: length of worn margin at
    the worse corner. hole_diameter: of the hole it made. feed: mm per revolution.

    reading_errors: how far a reading may be off, by name; those left out are as in `usual_errors`.

    Raises OutOfRange or UnknownGiven, saying what is allowed.
    """

    diameter: float | None = None
    lip_length_1: float | None = None
    lip_length_2: float | None = None
    half_angle_1: float | None = None
    half_angle_2: float | None = None
    point_angle: float | None = None
    roll_angle: float | None = None
    chisel_edge_angle: float | None = None
    chisel_edge_leans_back: bool = False
    web: float | None = None
    web_offset: float | None = None
    point_offset: float | None = None
    lip_height_difference: float | None = None
    higher_lip: Literal[1, 2] | None = None
    lip_relief: float | None = None
    lip_relief_1: float | None = None
    lip_relief_2: float | None = None
    heel_clearance: float | None = None
    heel_angle: float | None = None
    heel_height: float | None = None
    body_diameter: float | None = None
    worn_margin: float | None = None
    hole_diameter: float | None = None
    feed: float | None = None
    reading_errors: Mapping[str, float] = field(factory=dict, converter=_checked_errors, hash=False)

    def __attrs_post_init__(self) -> None:
        if self.higher_lip not in (None, 1, 2):
            raise OutOfRange(
                f"higher_lip is {self.higher_lip!r}; give 1 or 2, the lip whose corner is nearer to the tip"
            )
        self._refuse_sizes_of_no_drill()
        if self.lip_relief is not None and (self.lip_relief_1, self.lip_relief_2) != (None, None):
            raise UnknownGiven("give lip_relief, or lip_relief_1 and lip_relief_2, not both")

    def _refuse_sizes_of_no_drill(self) -> None:
        """Sizes that do not go together are slips of the pen, or inches beside millimetres."""
        for name, most, usual in _AT_MOST:
            value = getattr(self, name)
            if value is not None and self.diameter is not None and abs(value) >= most * self.diameter:
                raise Impossible(
                    f"{name} {quantity(name).show(value, 4)} is too large for a drill of "
                    f"{quantity('diameter').show(self.diameter, 4)}; {usual}. {_IN_MM}"
                )
        first, second = self.lip_length_1, self.lip_length_2
        if first and second and max(first, second) > _FURTHEST_LIPS * min(first, second):
            show = quantity("lip_length_1").show
            raise Impossible(
                f"lip_length_1 {show(first, 4)} and lip_length_2 {show(second, 4)} are not of one drill; the lips of a "
                f"usable point are nearly alike. {_IN_MM}"
            )

    @classmethod
    def of(cls, inspection: Inspection, *, feed: float | None = None, body_diameter: float | None = None) -> Readings:
        """The readings of a ground point, which are not off at all. The flank is looked at as far as the heel.

        feed: that the drill is to be looked at with. body_diameter: of the drill behind the point, if it is known.
        """
        behind = [inspection.clearance_behind(lip) for lip in (1, 2)]
        heel = float(behind[0][0][-1])
        rubs = [inspection.first_rub(lip, feed=feed or 0.0) for lip in (1, 2)]
        edge, height = inspection.chisel_edge_angle, inspection.lip_height_difference
        return cls(
            diameter=inspection.diameter,
            lip_length_1=inspection.lip_length_1,
            lip_length_2=inspection.lip_length_2,
            half_angle_1=inspection.half_angle_1,
            half_angle_2=inspection.half_angle_2,
            chisel_edge_angle=max(edge, 180 - edge),
            chisel_edge_leans_back=edge < 90,
            web=inspection.web,
            point_offset=inspection.point_offset,
            lip_height_difference=abs(height),
            higher_lip=1 if height >= 0 else 2,
            lip_relief_1=inspection.lip_relief_1,
            lip_relief_2=inspection.lip_relief_2,
            heel_clearance=min((q for q in rubs if q is not None), default=heel),
            heel_angle=heel,
            heel_height=max(-float(gap[-1]) for _, gap in behind),
            body_diameter=body_diameter,
            feed=feed,
            reading_errors=dict.fromkeys(usual_errors(), 0.0),
        )

    def read(self, name: str) -> Measured | None:
        """One reading with its error, or None when it was not taken. Angles of a rolled drill are put right."""
        value = getattr(self, name)
        if value is None:
            return None
        plain = Measured(float(value), self.reading_errors[name])
        if self.roll is None or name not in ("point_angle", "half_angle_1", "half_angle_2"):
            return plain
        whole = 1.0 if name == "point_angle" else 2.0
        return worked_out(lambda seen, roll: _held_square(whole * seen, roll) / whole, plain, self.roll)

    @property
    def roll(self) -> Measured | None:
        """How far the drill was rolled when its angles were read."""
        if self.roll_angle is None:
            return None
        # A roll to the other side reads the same, so none is the least there can be.
        return Measured(self.roll_angle, min(self.reading_errors["roll_angle"], self.roll_angle))

    def of_both_half_angles(self, combine: Callable[[float, float], float]) -> Measured | None:
        """What both half angles make together, with one roll for both; None when they were not both read."""
        if not self.reads("half_angle_1", "half_angle_2"):
            return None
        both = [Measured(getattr(self, name), self.reading_errors[name]) for name in ("half_angle_1", "half_angle_2")]
        if self.roll is None:
            return worked_out(combine, *both)
        return worked_out(
            lambda a, b, r: combine(_held_square(2 * a, r) / 2, _held_square(2 * b, r) / 2), *both, self.roll
        )

    def reads(self, *names: str) -> bool:
        """Whether all of these were read."""
        return all(getattr(self, name) is not None for name in names)

    @property
    def angle(self) -> Measured | None:
        """The point angle, from both half angles where they were read."""
        return self.of_both_half_angles(operator.add) or self.read("point_angle")

    @property
    def reliefs(self) -> tuple[tuple[str, Measured], ...]:
        """The lip reliefs that were read, each with the keyword it was read as."""
        found = ((name, self.read(name)) for name in ("lip_relief", "lip_relief_1", "lip_relief_2"))
        return tuple((name, measured) for name, measured in found if measured is not None)

    @property
    def edge(self) -> Measured | None:
        """The chisel edge angle, under 90° where the edge leans back."""
        read = self.read("chisel_edge_angle")
        return Measured(180 - read.value, read.plus_minus) if read and self.chisel_edge_leans_back else read

    @property
    def taken(self) -> tuple[str, ...]:
        """The names of the readings that were taken."""
        names = (a.name for a in fields(type(self)))
        return tuple(name for name in names if name in QUANTITIES and getattr(self, name) is not None)
