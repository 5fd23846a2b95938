"""A lip is found from wherever the search starts."""

import numpy as np
import pytest

from drillpoint.ground import ConicalFlank, Flute, GroundPoint


@pytest.mark.parametrize("off", [-0.3, -1e-9, 0.0, 0.2])
def test_a_place_of_the_lip_does_not_depend_on_the_guess(off: float) -> None:
    flank = ConicalFlank(cone_half_angle=25, cone_tilt=34, apex_distance=9.5, skew=1.45)
    lip = GroundPoint(Flute(diameter=10, web=1.5), flank).lips[0]
    along = np.linspace(-0.5, 4.5, 9)
    alone = lip.at(along)
    guessed = lip.at(along, near=alone.z + off)
    assert guessed.point == pytest.approx(alone.point, abs=1e-11)
