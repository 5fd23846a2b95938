"""Work cut open, and the dimensions beside it."""

import pytest

from drillpoint.drawing.scene import Label, Outline
from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.work import across, beside, cut_block, cut_plate, upright


def points(sheet, style):
    found = []
    for shape in sheet.shapes:
        if isinstance(shape, Outline) and shape.style == style:
            flat = [sheet.expressions[step] for step in shape.steps if isinstance(step, int)]
            found.append(list(zip(flat[::2], flat[1::2], strict=True)))
    return found


def test_the_metal_ends_at_the_wall_and_at_the_breaks():
    sheet = Sheet(plain=True)
    wall = [(40.0, 20.0), (50.0, 60.0), (60.0, 20.0)]
    cut_block(sheet, wall, 10.0, 90.0, 80.0)
    (metal,), (breaks,), (edge,) = (points(sheet, style) for style in ("section", "fine", "edge"))
    assert set(wall) <= set(metal)
    assert set(wall) <= set(edge)
    # The freehand breaks are the rest of the outline of the hatching.
    assert set(breaks) <= set(metal)
    assert {(10.0, 80.0), (90.0, 80.0)} <= set(breaks)


@pytest.mark.parametrize("thickness", [2.0, 60.0])
def test_the_break_of_a_plate_stays_between_its_faces(thickness):
    for side, left in (("left", 10.0), ("right", 90.0)):
        sheet = Sheet(plain=True)
        cut_plate(sheet, [(50.0, 20.0), (50.0, 20.0 + thickness)], left, side)
        ((*wave,),) = points(sheet, "fine")
        assert all(20 <= y <= 20 + thickness for _, y in wave)
        assert any(abs(x - left) > thickness / 20 for x, _ in wave)


@pytest.mark.parametrize(("length", "outside"), [(100.0, False), (20.0, True), (0.0, True)])
def test_arrows_turn_outside_where_there_is_no_room_also_at_no_length(length, outside):
    level, tall = Sheet(plain=True), Sheet(plain=True)
    across(level, 50.0, 50.0 + length, 30.0, 60.0)
    middle = upright(tall, (80.0, 50.0), (90.0, 50.0 + length), 30.0)
    assert middle == (30.0, 50.0 + length / 2)
    for sheet, axis in ((level, 0), (tall, 1)):
        first, last = points(sheet, "arrow")
        assert (first[0][axis], last[0][axis]) == (50.0, 50.0 + length)
        assert (first[1][axis] < 50.0) is outside
        assert (last[1][axis] > 50.0 + length) is outside


def test_a_label_stands_beside_its_line_at_its_own_level():
    for side, anchor, sign in (("left", "end", -1), ("right", "start", 1)):
        sheet = Sheet(plain=True)
        beside(sheet, (100.0, 50.0), 90.0, "depth", "depth_to_point", side)
        term, value = (shape for shape in sheet.shapes if isinstance(shape, Label))
        assert (term.parts, value.parts, value.of) == ("depth", "{depth_to_point}", "depth_to_point")
        assert term.anchor == value.anchor == anchor
        x, y = sheet.expressions[value.x], sheet.expressions[value.y]
        assert sign * (x - 100) > 20
        assert abs(y - 90) < 15
