"""Lengths in both units."""

import pytest

from drillpoint.ground.diagnosis.readings import Measured
from drillpoint.planning.words import length, reading
from drillpoint.quantities import capital


@pytest.mark.parametrize(
    ("value", "says"),
    [
        # DERIVED: over 25.4.
        (25.4, "25.4 mm (1 in)"),
        (Measured(0.283, 0.059), "0.28 ± 0.06 mm (0.011 ± 0.002 in)"),
        (Measured(1.8, 0.001), "1.8 mm (0.071 in)"),
        (0, "0 mm (0 in)"),
    ],
)
def test_lengths(value, says: str) -> None:
    assert length(value) == says


def test_angles_stay_angles() -> None:
    assert reading("point_angle", 118) == "118°"
    assert reading("point_angle", Measured(118, 1)) == "118° ± 1°"
    assert reading("web", 1.5) == "1.5 mm (0.059 in)"
    assert capital("the web") == "The web"
