"""The drawn thinning is the one that relations give and that an inspector reads off the ground point."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, Notch, PlaneFlank
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

USUAL = {"diameter": 10, "web": 1.5, "chisel_edge_angle": 125, "thinned_chisel_length": 0.8, "thinning_angle": 30}
CENTRE = (272, 240)


def about_the_axis(read, style):
    """The lines of a style in the end view, in mm from the axis."""
    x, y = CENTRE[0] / read.scale, -CENTRE[1] / read.scale
    return [[(a - x, b - y) for a, b in line] for line in read.shapes(style)]


def direction(line):
    (x0, y0), (x1, y1) = line
    return math.degrees(math.atan2(y1 - y0, x1 - x0)) % 180


@pytest.mark.parametrize("drill", corners_of("thinning"))
def test_edges_stand_as_the_relations_say(drill):
    read = Reading("thinning", **drill)
    thinned, main, other_thinned, _ = about_the_axis(read, "lip")
    (chisel,) = about_the_axis(read, "chisel")
    assert math.dist(*chisel) == pytest.approx(drill["thinned_chisel_length"])
    assert direction(chisel) == pytest.approx(180 - drill["chisel_edge_angle"])
    assert chisel[1] == pytest.approx(thinned[0])
    assert direction(thinned) == pytest.approx(drill["thinning_angle"])
    assert math.dist(*thinned) == pytest.approx(read.values["thinned_lip_in_end_view"], abs=1e-9)
    assert thinned[1] == pytest.approx((read.values["thinning_reach"], drill["web"] / 2))
    assert main[0] == pytest.approx(thinned[1])
    assert direction(main) == pytest.approx(0)
    turn = math.radians(drill["thinning_angle"])
    apart = [math.cos(turn) * y - math.sin(turn) * x for x, y in (other_thinned[0], thinned[0])]
    assert apart[1] - apart[0] == pytest.approx(read.values["thinned_web"])


@pytest.mark.parametrize("drill", corners_of("thinning"))
def test_what_is_gone_is_dashed(drill):
    read = Reading("thinning", **drill)
    gone = [line for line in about_the_axis(read, "hidden") if abs(direction(line)) > 1e-6]
    (chisel,) = about_the_axis(read, "chisel")
    ends = [line[1] for line in gone]
    assert math.dist(*ends) == pytest.approx(read.values["chisel_edge_length"])
    assert [line[0] for line in gone] == [pytest.approx(chisel[1]), pytest.approx(chisel[0])]


@pytest.mark.parametrize(
    "drill",
    [
        USUAL,
        {**USUAL, "thinning_angle": 40, "thinned_chisel_length": 0.4},
        {**USUAL, "diameter": 20, "web": 4, "chisel_edge_angle": 130, "thinned_chisel_length": 2.5},
    ],
)
def test_a_point_ground_like_that_reads_the_same(drill):
    read = Reading("thinning", **drill)
    # DERIVED: tan α_x = cot κ / tan δ gives the plane flank its chisel edge.
    square = math.degrees(
        math.atan(1 / math.tan(math.radians(59)) / math.tan(math.radians(180 - drill["chisel_edge_angle"])))
    )
    notch = Notch(thinning_angle=drill["thinning_angle"], thinned_chisel_length=drill["thinned_chisel_length"])
    flank = PlaneFlank(point_angle=118, axial_relief=square)
    point = GroundPoint(Flute(diameter=drill["diameter"], web=drill["web"]), flank, thinning_1=notch)
    found = point.inspect().thinning
    thinned = about_the_axis(read, "lip")[0]
    lip = found.lips[0]
    assert thinned[0] == pytest.approx(tuple(lip.start[:2]), abs=1e-6)
    assert thinned[1] == pytest.approx(tuple(lip.end[:2]), abs=1e-6)
    assert found.thinned_web == pytest.approx(read.values["thinned_web"], abs=1e-6)
    assert lip.untouched_lip_share == pytest.approx(read.values["untouched_lip_share"], abs=1e-6)


def test_what_is_drawn_about_the_detail_is_the_rim_or_a_break():
    assert Reading("thinning", **USUAL).shapes("swept") == []
    near = Reading("thinning", **{**USUAL, "thinned_chisel_length": 0.1, "thinning_angle": 10})
    assert near.shapes("fine") == []
    assert len(near.shapes("swept")) == 1


@pytest.mark.parametrize(
    ("left", "said"),
    [(0.3, "less than the common half"), (0.9, "about the common half"), (1.5, "more than the common half")],
)
def test_the_words_judge_how_much_is_left(left, said):
    # SOURCE: common practice, about half of the chisel edge is left
    assert said in draw("thinning", **{**USUAL, "thinned_chisel_length": left}).alt


@pytest.mark.parametrize(
    ("givens", "said"),
    [
        ({"thinned_chisel_length": 2.5}, "no shorter than the web"),
        ({"thinning_angle": 60}, "wrong sides"),
        ({"thinning_angle": 5}, "reach the outer corner"),
    ],
)
def test_what_cannot_be_thinned_is_refused(givens, said):
    with pytest.raises(LearnerError, match=said):
        draw("thinning", **{**USUAL, **givens})


def test_what_is_asked_can_be_hidden():
    # DERIVED: 0.8·sin 25° = 0.338
    picture = draw("thinning", **USUAL)
    assert "0.338 mm" in picture.svg
    assert "0.338" not in draw("thinning", **USUAL, hide="thinned_web").svg
