"""The explorer for a drill rolled under the gauge."""

import pytest

from drillpoint.drawing.showing import describe
from drillpoint.explorers.rolled import ROLLED


# DERIVED: twice the angle whose tangent is tan 59° times the cosine of the roll
@pytest.mark.parametrize(
    ("roll", "said"), [(0, "reads 118°, the true angle."), (20, "reads 114.8°: too little."), (30, "reads 110.5°")]
)
def test_it_tells_what_is_read(roll, said):
    values = ROLLED.values(ROLLED.state(roll_angle=roll))
    assert said in describe(ROLLED.summary, values, "mm", frozenset())
