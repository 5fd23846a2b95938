"""One drill under examination: what was read, what is asked for, and what the book makes of both."""

from __future__ import annotations

import operator

from attrs import frozen

from drillpoint.errors import DrillpointError
from drillpoint.ground.diagnosis.limits import Limits
from drillpoint.ground.diagnosis.readings import Measured, Readings, worked_out
from drillpoint.quantities import quantity
from drillpoint.relation import Value
from drillpoint.relations import lip_height_difference, lip_height_from_angles, lip_length, oversize, point_offset


@frozen
class Case:
    """Readings, the limits they are held against, and what the wheel was set for, if that is known.

    Heights and lengths that compare the lips are positive when lip 1 is nearer to the tip, or longer.
    """

    readings: Readings
    limits: Limits
    set_up: Readings | None = None

    @property
    def wanted_angle(self) -> float:
        """The point angle that was to be ground."""
        asked = self.set_up.angle if self.set_up else None
        return asked.value if asked else self.limits.point_angle

    @property
    def angle(self) -> Measured:
        """The point angle as read, or the wanted one where it was not."""
        return self.readings.angle or Measured(self.wanted_angle)

    @property
    def half_angles(self) -> tuple[Measured, Measured] | None:
        """Both half angles, if both were read."""
        first, second = self.readings.read("half_angle_1"), self.readings.read("half_angle_2")
        return (first, second) if first and second else None

    @property
    def angles_differ(self) -> bool:
        """Whether the half angles differ by more than their reading error, so that their share is no guess."""
        apart = self.readings.of_both_half_angles(operator.sub)
        return apart is not None and abs(apart.value) > apart.plus_minus

    @property
    def length_difference(self) -> Measured | None:
        """How much longer lip 1 is than lip 2."""
        first, second = self.readings.read("lip_length_1"), self.readings.read("lip_length_2")
        if not first or not second:
            return None
        return Measured(first.value - second.value, first.plus_minus + second.plus_minus)

    @property
    def height_from_lengths(self) -> Measured | None:
        """How much nearer to the tip the corner of lip 1 is, if only unequal lengths make the difference."""
        difference = self.length_difference
        return worked_out(_height, difference, self.angle) if difference else None

    @property
    def height(self) -> Measured | None:
        """The same as measured. Where nobody said which lip is higher, lip 1 is taken to be."""
        read = self.readings.read("lip_height_difference")
        return Measured(-read.value, read.plus_minus) if read and self.readings.higher_lip == 2 else read

    @property
    def most_by_lips(self) -> Value | None:
        """The most that the lips, as they were measured, can make the hole wider; None when they were not."""
        height = self.height or self.height_from_lengths
        if not height:
            return None
        most: Value = oversize(
            lip_height_difference=abs(height.value) + height.plus_minus, point_angle=self.angle.value
        )
        return most

    @property
    def height_from_angles(self) -> Measured | None:
        """How much of it unequal half angles make, at the corners; None when they or the diameter were not read."""
        if not self.half_angles or not self.readings.diameter:
            return None
        return worked_out(lambda first, second: _at_corner(self.readings.diameter, first, second), *self.half_angles)

    @property
    def length_from_angles(self) -> float | None:
        """How much longer lip 1 is because its half angle is another one, mm."""
        r = self.readings
        if not self.half_angles or not r.diameter:
            return None
        # The web and the chisel edge hardly matter to the difference, so usual ones serve where they were not read.
        web = r.web or quantity("web_ratio").typical * r.diameter
        edge = quantity("chisel_edge_angle").typical
        try:
            first, second = (
                float(lip_length(diameter=r.diameter, web=web, chisel_edge_angle=edge, point_angle=2 * half.value))
                for half in self.half_angles
            )
        except DrillpointError:
            return None
        return first - second

    def offset(self, height: Measured) -> Measured:
        """How far off the axis the tip is when lips of equal angle differ by this height."""
        return worked_out(lambda h, a: point_offset(lip_height_difference=abs(h), point_angle=a), height, self.angle)


def _height(longer: float, angle: float) -> float:
    height = float(lip_height_difference(lip_length_difference=abs(longer), point_angle=angle))
    # The corner of the longer lip is further from the tip.
    return -height if longer > 0 else height


def _at_corner(diameter: float | None, first: float, second: float) -> float:
    height = float(lip_height_from_angles(radius=(diameter or 0.0) / 2, half_angle_1=first, half_angle_2=second))
    # The flatter lip is nearer to the tip at its corner.
    return height if first > second else -height
