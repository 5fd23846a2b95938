"""The drawn regrind takes off just enough, and as much as the relations say."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.relations import stock_for_angle_change, stock_for_chip, stock_for_wear_land, tip_stock
from drillpoint.relations.governing import governing_stock
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

USUAL = {"diameter": 10, "point_angle": 118, "new_point_angle": 135}
AXIS, TIP = 270, 130


def from_the_tip(read, style):
    """The lines of a style, in mm: out from the axis, and down from the old tip."""
    return [[(x - AXIS / read.scale, -y - TIP / read.scale) for x, y in line] for line in read.shapes(style)]


def half_angle(line):
    (x0, y0), (x1, y1) = line[:2]
    return math.degrees(math.atan2(abs(x1 - x0), y1 - y0))


@pytest.mark.parametrize("drill", corners_of("regrind"))
def test_both_points_are_drawn_with_their_angles(drill):
    read = Reading("regrind", **drill)
    new, other = from_the_tip(read, "lip")
    old = from_the_tip(read, "swept")[0]
    assert 2 * half_angle(new) == pytest.approx(drill["new_point_angle"])
    assert half_angle(other) == pytest.approx(half_angle(new))
    assert 2 * half_angle(old) == pytest.approx(drill["point_angle"])
    assert old[0] == pytest.approx((0, 0))
    assert new[1][0] == pytest.approx(drill["diameter"] / 2)
    assert new[0][1] == pytest.approx(read.own["at_tip"], abs=1e-9)
    assert new[1][1] - old[1][1] == pytest.approx(read.own["at_corner"], abs=1e-9)
    taken = tip_stock.unchecked(corner_stock=read.own["at_corner"], **{name: drill[name] for name in USUAL})
    assert read.own["at_tip"] == pytest.approx(float(taken), abs=1e-9)


@pytest.mark.parametrize("drill", corners_of("regrind"))
def test_the_new_lips_pass_below_every_fault_and_touch_one(drill):
    read = Reading("regrind", **drill)
    (tip, corner), _ = from_the_tip(read, "lip")
    old = from_the_tip(read, "swept")[0]
    damage = [old[0], old[1]]
    for line in from_the_tip(read, "fine")[1:]:
        if all(y < corner[1] + drill["diameter"] and x < 0.51 * drill["diameter"] for x, y in line):
            damage += [(abs(x), y) for x, y in line]

    def below(place):
        return tip[1] + (corner[1] - tip[1]) * place[0] / corner[0] - place[1]

    spare = [below(place) for place in damage]
    assert min(spare) == pytest.approx(0, abs=1e-9 * drill["diameter"])
    expected = 2 + 2 * (drill["wear_land"] > 0) + 3 * (drill["chip_depth"] > 0)
    assert len(damage) == expected


@pytest.mark.parametrize(("wear", "chip"), [(0.4, 0.0), (0.0, 0.3), (0.4, 0.02), (1.0, 0.05)])
def test_with_the_angle_kept_the_governing_stock_comes_off_everywhere(wear, chip):
    read = Reading("regrind", **{**USUAL, "new_point_angle": 118}, wear_land=wear, chip_depth=chip)
    governing = governing_stock(
        wear_land=stock_for_wear_land(wear_land=wear, lip_relief=12),
        chip=stock_for_chip(chip_depth=chip, point_angle=118),
    )
    assert read.own["at_corner"] == pytest.approx(float(governing.stock))
    assert read.own["at_tip"] == pytest.approx(float(governing.stock))
    said = draw("regrind", **{**USUAL, "new_point_angle": 118}, wear_land=wear, chip_depth=chip).alt
    assert ("the wear land decides" in said) == ("wear" in governing.because)
    assert ("the chip decides" in said) == ("chip" in governing.because)


@pytest.mark.parametrize(("before", "after"), [(118, 135), (135, 118)])
def test_a_change_of_angle_takes_its_stock_off_the_tip_or_the_corners(before, after):
    read = Reading("regrind", diameter=10, point_angle=before, new_point_angle=after)
    stock = float(stock_for_angle_change(diameter=10, point_angle=before, new_point_angle=after))
    # DERIVED: 5·(cot 59° - cot 67.5°) = 0.933
    assert stock == pytest.approx(0.9332, abs=5e-5)
    at_tip, at_corner = (stock, 0) if after > before else (0, stock)
    assert read.own["at_tip"] == pytest.approx(at_tip, abs=1e-9)
    assert read.own["at_corner"] == pytest.approx(at_corner, abs=1e-9)


def test_a_corner_seen_along_the_radius_is_rubbed_flat_as_far_as_the_land():
    read = Reading("regrind", **USUAL, wear_land=0.5, lip_relief=15)
    worn, back, end = next(line for line in read.shapes("fine") if len(line) == 3)
    larger = 4
    assert worn[1] == pytest.approx(back[1])
    assert back[0] - worn[0] == pytest.approx(0.5 * larger)
    assert math.degrees(math.atan2(back[1] - end[1], end[0] - back[0])) == pytest.approx(15)
    lip = next(line for line in read.shapes("swept") if line[0] == pytest.approx(worn))[1]
    # DERIVED: 0.5·tan 15° = 0.134
    assert lip[1] - worn[1] == pytest.approx(larger * 0.5 * math.tan(math.radians(15)))


@pytest.mark.parametrize(
    ("givens", "said"),
    [
        ({}, "nothing asks for more. Off the tip come 0.933 mm, more"),
        ({"new_point_angle": 100}, "the sharper point decides. Off the tip come 0 mm, less"),
        ({"new_point_angle": 118, "wear_land": 0.4}, "the wear land decides. Off the tip come 0.085 mm, the same"),
        ({"new_point_angle": 120, "chip_depth": 0.4}, "the chip decides"),
        ({"new_point_angle": 118}, "There is no wear land; no chip"),
    ],
)
def test_the_words_say_what_decides(givens, said):
    picture = draw("regrind", **{**USUAL, **givens})
    assert said in picture.alt


def test_what_is_no_flank_is_refused_and_numbers_can_be_hidden():
    with pytest.raises(LearnerError, match="no slope"):
        draw("regrind", **USUAL, lip_relief=0, wear_land=0.4)
    picture = draw("regrind", **USUAL, wear_land=0.47, chip_depth=0.31, hide=["wear_land", "chip_depth", "lip_relief"])
    assert not [said for said in ("0.47 mm", "0.31 mm", "12°") if said in picture.svg]


def test_what_is_hidden_is_not_told_in_the_words_either():
    shown = draw("regrind", **USUAL, wear_land=0.4, chip_depth=0).alt
    hidden = draw("regrind", **USUAL, wear_land=0.4, chip_depth=0, hide=("for_wear", "at_corner", "at_tip")).alt
    # DERIVED: 0.4·tan 12° at the corners, and 0.0933 of the diameter more at the tip.
    for size in ("0.085 mm", "1.02 mm"):
        assert size in shown and size not in hidden
    assert "wear land is 0.4 mm wide; no chip. How much comes off the corners is not told: the wear land" in hidden
