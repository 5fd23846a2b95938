import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.drawing.paper.cards import chisel_card, notch_strip, relief_wedges, wide_notch
from drillpoint.drawing.paper.format import RELIEFS, read_format
from drillpoint.drawing.paper.marks import Ring, Stroke, Words
from drillpoint.relations import lip_length, point_height


def sheet(**changes):
    values = {"point_angle": 118, "smallest": 3, "largest": 13, "web_ratio": 0.15, "reliefs": RELIEFS}
    return read_format(**{**values, "paper": "A4", "units": "mm", **changes})


def strokes(card, line):
    return [mark for mark in card.marks if isinstance(mark, Stroke) and mark.line == line]


def angle_between(tip, one, other):
    turns = [math.degrees(math.atan2(p[1] - tip[1], p[0] - tip[0])) for p in (one, other)]
    return abs(turns[0] - turns[1])


@given(st.floats(60, 175), st.floats(1, 5), st.floats(6, 25))
def test_each_notch_has_the_point_angle_the_width_and_the_depth_of_its_drill(angle, smallest, largest):
    wanted = sheet(point_angle=angle, smallest=smallest, largest=largest)
    (outline,) = strokes(notch_strip(wanted, 186), "cut")
    inner = outline.places[1:-3]
    notches = [inner[i : i + 5] for i in range(0, len(inner), 5)]
    assert len(notches) == len(wanted.sizes)
    for size, (top, left, tip, right, other_top) in zip(wanted.sizes, notches, strict=True):
        # DERIVED: from the angle itself, and from the book's height of the sharp cone
        assert angle_between(tip, left, right) == pytest.approx(angle, abs=1e-9)
        assert right[0] - left[0] == pytest.approx(size, abs=1e-9)
        assert tip[1] - left[1] == pytest.approx(float(point_height(diameter=size, point_angle=angle)), abs=1e-9)
        assert (top[0], other_top[0]) == (left[0], right[0])


@given(st.floats(60, 175), st.floats(6, 25), st.floats(0.05, 0.35), st.floats(120, 135))
def test_the_corner_is_where_the_lip_ends(angle, size, ratio, chisel):
    wanted = sheet(point_angle=angle, largest=size, web_ratio=ratio)
    web = ratio * size
    # DERIVED: in the end view the lip begins beside the axis by half a web over the tangent of the acute chisel angle.
    begins = web / 2 / math.tan(math.radians(180 - chisel)) / math.sin(math.radians(angle / 2))
    lip = float(lip_length(diameter=size, point_angle=angle, web=web, chisel_edge_angle=chisel))
    assert wanted.corner(size) == pytest.approx(begins + lip, abs=1e-9)


@pytest.mark.parametrize(("units", "step", "long"), [("mm", 1.0, 5), ("inch", 25.4 / 32, 4)])
def test_the_lip_scale_counts_along_both_flanks_from_the_centre_line(units, step, long):
    wanted = sheet(units=units, smallest=None, largest=None)
    card = wide_notch(wanted, 90)
    (outline,) = strokes(card, "cut")
    tip = outline.places[2]
    ticks = strokes(card, "thin")
    for side in (-1, 1):
        feet = sorted(t.places for t in ticks if (t.places[0][0] - tip[0]) * side > 0)
        away = sorted((math.dist(tip, foot), math.dist(foot, end)) for foot, end in feet)
        # DERIVED: whole steps; every fifth millimetre and every eighth of an inch is longer
        assert [a for a, _ in away] == pytest.approx([step * (i + 1) for i in range(len(away))], abs=1e-9)
        assert all((length > 2) == ((i + 1) % long == 0) for i, (_, length) in enumerate(away))
        assert away[-1][0] >= wanted.corner(wanted.largest)
        for foot, end in feet:
            flank, tick = (foot[0] - tip[0], foot[1] - tip[1]), (end[0] - foot[0], end[1] - foot[1])
            assert flank[0] * tick[0] + flank[1] * tick[1] == pytest.approx(0, abs=1e-9)  # square to the flank
            assert tick[1] > 0  # on the paper, under the notch
    numbers = [m.text for m in card.marks if isinstance(m, Words)]
    assert numbers.count({"mm": "5", "inch": "1/4"}[units]) == 2


def test_the_rays_stand_at_the_chisel_edge_angle_of_a_right_hand_drill():
    card = chisel_card(sheet())
    (hole,) = [m for m in card.marks if isinstance(m, Ring) and m.line == "cut"]
    x, y = hole.centre
    assert hole.radius == 6.5  # DERIVED: half of 13
    rays = [m.places for m in strokes(card, "thin") if abs(m.places[0][1] - y) > 1]
    # From the lip that points right, obtuse and clockwise, to the chisel edge's far end at the lower left.
    lower = sorted(math.degrees(math.atan2(end[1] - y, end[0] - x)) for _, end in rays if end[1] > y)
    assert lower == pytest.approx([120, 125, 130, 135], abs=1e-9)
    upper = sorted(math.degrees(math.atan2(y - end[1], end[0] - x)) for _, end in rays if end[1] < y)
    assert upper == pytest.approx([45, 50, 55, 60], abs=1e-9)
    for start, end in rays:
        assert (start[0] - x) * (end[1] - y) == pytest.approx((start[1] - y) * (end[0] - x), abs=1e-9)


def test_the_wedges_fall_by_their_relief_to_the_left():
    wanted = sheet(reliefs=(8, 12, 15))
    outlines = strokes(relief_wedges(wanted, 90), "cut")
    for outline, relief in zip(outlines, wanted.reliefs, strict=True):
        low, corner = outline.places[:2]
        assert corner[0] > low[0]
        assert math.degrees(math.atan2(low[1] - corner[1], corner[0] - low[0])) == pytest.approx(relief, abs=1e-9)
