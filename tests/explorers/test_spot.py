"""The explorer for a spot or countersink."""

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.spot import SPOT


# DERIVED: 5.5 mm over the tangent of half the angle
@pytest.mark.parametrize(
    ("angle", "said"),
    [(90, "5.5 mm deep, half the mouth"), (120, "3.18 mm deep, less than half"), (82, "6.33 mm deep, more than half")],
)
def test_it_tells_and_judges_the_depth(angle, said):
    values = SPOT.values(SPOT.state(countersink_angle=angle))
    assert said in describe(SPOT.summary, values, "mm", frozenset())
