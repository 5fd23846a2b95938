"""The drawn plate and both places of the drill have the sizes that they state."""

import pytest

from drillpoint.drawing import draw
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading


@pytest.mark.parametrize("case", corners_of("breakthrough"))
def test_plate_and_drill_are_drawn_in_true_size(case):
    read = Reading("breakthrough", **case)
    (right, tip, left), *_ = read.shapes("lip")
    height = read.values["point_height"]
    assert right[0] - left[0] == pytest.approx(case["diameter"])
    assert right[1] - tip[1] == pytest.approx(height)
    walls = [shape for shape in read.shapes("edge") if len(shape) == 5]
    for upper, rim, _, foot, lower in walls:
        assert upper[1] - lower[1] == pytest.approx(case["sheet_thickness"])
        assert foot == pytest.approx(tip)
        # The hole is as wide as the drill where the corners are in, and as the cone at the face where they are not.
        share = min(1.0, case["sheet_thickness"] / height)
        assert abs(rim[0] - tip[0]) == pytest.approx(share * case["diameter"] / 2)
    assert len(walls) == 2
    last = min(point[1] for shape in read.shapes("swept") for point in shape)
    assert walls[0][0][1] - last == pytest.approx(read.values["travel_through"])
    for name in ("diameter", "sheet_thickness", "point_height", "travel_through"):
        assert any(span == pytest.approx(read.values[name]) for span in read.spans()), name


def test_thin_work_is_warned_of_and_thick_work_is_not():
    thin = draw("breakthrough", diameter=10, point_angle=118, sheet_thickness=1.5).alt
    thick = draw("breakthrough", diameter=10, point_angle=118, sheet_thickness=6).alt
    assert "may grab" in thin
    assert "backing piece" in thin
    assert "corners are in before the tip comes out" in thick
    # DERIVED: 6 + 5/tan 59° = 9.0043
    assert "9 mm until" in thick
