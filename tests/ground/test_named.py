"""Ground points under names of the learner's own."""

from __future__ import annotations

import pytest

from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, PlaneFlank, plane_setup
from drillpoint.ground.named import MOST, points_by_name

PLAIN = GroundPoint(Flute(diameter=10, web=1.5), PlaneFlank(point_angle=118, lip_relief=12))


def test_names_are_shown_with_spaces_and_a_set_up_gives_its_point() -> None:
    setup = plane_setup(diameter=10, web=1.5, point_angle=118, lip_relief=12)
    found = points_by_name({"one_plane": setup, "plain": PLAIN})
    assert list(found) == ["one plane", "plain"]
    assert found["one plane"] is setup.point and found["plain"] is PLAIN


@pytest.mark.parametrize(
    ("points", "says"),
    [
        ({}, "give 1 to 5 ground points"),
        ({f"p{n}": PLAIN for n in range(MOST + 1)}, "and not 6"),
        ({"cone": 12}, "cone is a int"),
    ],
)
def test_what_is_no_ground_point_is_refused_in_words(points: dict[str, object], says: str) -> None:
    with pytest.raises(LearnerError, match=says):
        points_by_name(points)
