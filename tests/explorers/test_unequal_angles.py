"""The explorer for lips at different angles."""

import math

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.errors import Impossible
from drillpoint.explorers.unequal_angles import UNEQUAL_ANGLES


def values(**givens):
    return UNEQUAL_ANGLES.values(UNEQUAL_ANGLES.state(**givens))


# DERIVED: half the feed over cot 59° − cot 61°
@pytest.mark.parametrize(("feed", "radius"), [(0.10, "1.07 mm"), (0.15, "1.61 mm"), (0.20, "2.15 mm")])
def test_it_tells_where_the_lagging_lip_stops(feed, radius):
    found = values(feed=feed)
    slopes = 1 / math.tan(math.radians(59)) - 1 / math.tan(math.radians(61))
    assert found["idle_radius"] == pytest.approx(feed / 2 / slopes)
    said = describe(UNEQUAL_ANGLES.summary, found, "mm", frozenset())
    assert "the lips differ by 0.233 mm" in said
    assert f"cuts out to a radius of {radius}" in said


def test_equal_angles_are_said_to_be_no_fault():
    with pytest.raises(Impossible, match="both lips cut at every radius"):
        values(half_angle_2=59)
