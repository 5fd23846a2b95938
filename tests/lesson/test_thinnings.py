"""Thinnings beside each other: the table tells what the inspection of each point reads."""

import re

import pytest
from attrs import evolve

from drillpoint.drawing.showing import show
from drillpoint.errors import LearnerError
from drillpoint.ground import CannotBeGround, ConicalFlank, Flute, GroundPoint, Notch, conical_setup
from drillpoint.ground.record import NOT_THINNED
from drillpoint.lesson.thinnings import compare_thinnings

CONE = ConicalFlank(cone_half_angle=30, cone_tilt=28.81, apex_distance=14.57, skew=3.31)
POINT = GroundPoint(Flute(diameter=20, web=3.8), CONE)
HALF, SPLIT = (Notch(thinned_chisel_length=length, thinning_angle=30) for length in (2.3, 0.6))


def row(board, term):
    """The rest of the line that begins with this term."""
    return next(line for line in board.text.splitlines() if line.startswith(term)).removeprefix(term).strip()


def test_it_tells_what_the_inspection_reads() -> None:
    board = compare_thinnings(POINT, half=HALF, split=SPLIT)
    for notch in (HALF, SPLIT):
        read = evolve(POINT, thinning_1=notch, thinning_2=notch).inspect().thinning
        assert show("thinned_web", read.thinned_web, "mm") in row(board, "web left between the thinned lips")
        assert show("normal_rake", read.mean("middle_rake"), "mm") in row(board, "its rake half way")
        assert show("untouched_lip_share", read.mean("untouched_lip_share"), "mm") in row(board, "untouched share")
    # SOURCE: the notches' own settings
    assert "2.3 mm" in row(board, "chisel edge left") and "0.6 mm" in row(board, "chisel edge left")


def test_lips_that_are_alike_are_told_once_and_others_both() -> None:
    alike = row(compare_thinnings(POINT, half=HALF), "length of a thinned lip")
    lopsided = row(compare_thinnings(POINT, lopsided=(HALF, SPLIT)), "length of a thinned lip")
    one_side = row(compare_thinnings(POINT, one_side=(HALF, None)), "length of a thinned lip")
    assert "," not in alike
    assert lopsided.startswith(alike) and lopsided.count(",") == 1
    assert one_side == f"{alike}, {NOT_THINNED}"


def test_unequal_notches_put_the_point_off_centre_and_equal_ones_do_not() -> None:
    board = compare_thinnings(POINT, alike=HALF, lopsided=(HALF, SPLIT))
    off = [float(mm) for mm in re.findall(r"([\d.]+) mm", row(board, "its middle off the axis"))]
    # DERIVED: each notch leaves half of its own length on its side of the axis, so the middle is a quarter of the
    # difference away.
    assert off == pytest.approx([0, (2.3 - 0.6) / 4], abs=0.001)


def test_a_set_up_stands_for_its_point() -> None:
    setup = conical_setup(
        diameter=20, web=3.8, point_angle=118, lip_relief=12, chisel_edge_angle=125, cone_half_angle=30
    )
    assert compare_thinnings(setup, half=HALF) == compare_thinnings(setup.point, half=HALF)


def test_lengths_can_be_told_in_inches() -> None:
    board = compare_thinnings(POINT, half=HALF, units="inch")
    # DERIVED: 2.3 mm over 25.4
    assert row(board, "chisel edge left") == "0.0906 in"
    assert "mm" not in board.text


def test_a_name_with_an_underscore_is_shown_with_a_space() -> None:
    board = compare_thinnings(POINT, one_side=(HALF, None))
    assert "one side" in board.text and "one side" in board.html


def test_what_is_no_notch_is_refused() -> None:
    for given in (2.3, (HALF,), (HALF, 3)):
        with pytest.raises(LearnerError, match="half needs a Notch"):
            compare_thinnings(POINT, half=given)
    with pytest.raises(LearnerError, match="no notch on either lip"):
        compare_thinnings(POINT, none=(None, None))


def test_notches_that_cannot_be_cut_are_refused_with_the_reason() -> None:
    with pytest.raises(CannotBeGround, match="smaller thinning_angle"):
        compare_thinnings(POINT, steep=Notch(thinned_chisel_length=2.3, thinning_angle=60))
