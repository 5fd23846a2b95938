"""The drawn web grows as the relations say, along the flute and on the point."""

import math

import pytest

from drillpoint.drawing import draw
from drillpoint.errors import LearnerError
from drillpoint.relations import chisel_edge_length, length_until_thinning, web_after_shortening
from tests.drawing.drills import corners_of
from tests.drawing.shapes import Reading

USUAL = {"diameter": 10, "web": 1.5, "web_taper": 0.014, "length_removed": 20, "chisel_edge_angle": 125}
TIP = (40, 100)


def rise(line):
    (x0, y0), (x1, y1) = line
    return (y1 - y0) / (x1 - x0)


def along_flute(read, style):
    """The lines of a style in the upper picture, in mm from the first tip, to its own scale."""
    diameter = read.shapes("edge")[2]
    factor = read.values["diameter"] / (diameter[0][1] - diameter[-1][1])
    x, y = TIP[0] / read.scale, -TIP[1] / read.scale
    return [[((a - x) * factor, (b - y) * factor) for a, b in line] for line in read.shapes(style)]


@pytest.mark.parametrize("drill", corners_of("web_along_flute"))
def test_the_web_along_the_flute_thickens_by_its_taper(drill):
    read = Reading("web_along_flute", **drill)
    upper, lower, outline = along_flute(read, "edge")[:3]
    assert rise(upper) == pytest.approx(drill["web_taper"] / 2)
    assert rise(lower) == pytest.approx(-drill["web_taper"] / 2)
    tip = outline[2][0]
    assert tip == pytest.approx(drill["length_removed"])
    begins = upper[0][0] - tip
    half = math.degrees(math.atan2(upper[0][1], begins))
    assert 2 * half == pytest.approx(drill["point_angle"])
    assert 2 * upper[0][1] - drill["web_taper"] * begins == pytest.approx(read.values["web_after_shortening"])
    before = along_flute(read, "hidden")[0]
    assert rise(before) == pytest.approx(drill["web_taper"] / 2)
    assert 2 * before[0][1] - drill["web_taper"] * before[0][0] == pytest.approx(drill["web"])


@pytest.mark.parametrize("drill", corners_of("web_along_flute"))
def test_both_points_are_drawn_with_their_webs(drill):
    read = Reading("web_along_flute", **drill)
    now = web_after_shortening(**{name: drill[name] for name in ("web", "web_taper", "length_removed")})
    webs = (drill["web"], float(now))
    lips, chisels = read.shapes("lip"), read.shapes("chisel")
    for web, pair, chisel in zip(webs, (lips[:2], lips[2:]), chisels, strict=True):
        assert pair[0][0][1] - pair[1][0][1] == pytest.approx(web)
        length = chisel_edge_length(web=web, chisel_edge_angle=drill["chisel_edge_angle"])
        assert math.dist(*chisel) == pytest.approx(float(length))
        assert 180 - math.degrees(math.atan(rise(chisel))) == pytest.approx(drill["chisel_edge_angle"])
    assert read.own["chisel_edge_now"] == pytest.approx(math.dist(*chisels[1]))


def test_the_words_tell_what_has_grown():
    # DERIVED: 1.5 + 0.014·20 = 1.78; 1.5/sin 55° = 1.831, 1.78/sin 55° = 2.173; (1.8 - 1.5)/0.014 = 21.43
    said = draw("web_along_flute", **USUAL).alt
    for part in ("1.78 mm, 0.178 of", "from 1.83 mm to 2.17 mm", "Under the shop's limit of 0.18", "due with 21.43 mm"):
        assert part in said
    # DERIVED: 3 + 0.024·40 = 3.96; 3.96/sin 55° = 4.834
    short = {**USUAL, "diameter": 20, "web": 3, "web_taper": 0.024, "length_removed": 40}
    said = draw("web_along_flute", **short).alt
    for part in ("3.96 mm, 0.198 of", "3.66 mm to 4.83 mm", "Over the shop's limit"):
        assert part in said


def test_where_thinning_is_due_is_marked_along_the_flute():
    read = Reading("web_along_flute", **USUAL)
    due = length_until_thinning(web_ratio_limit=0.18, diameter=10, web=1.5, web_taper=0.014)
    assert read.own["due"] == pytest.approx(float(due))
    assert any(x == pytest.approx(float(due)) for x in marked(read))
    assert len(marked(Reading("web_along_flute", **{**USUAL, "web": 1.9}))) < len(marked(read))
    assert "at first" in draw("web_along_flute", **{**USUAL, "web": 1.9}).svg
    far = Reading("web_along_flute", **USUAL, web_ratio_limit=0.35)
    assert len(marked(far)) < len(marked(read))


def marked(read):
    """Where arrows of level dimensions stand, from the first tip."""
    return [tip[0] for tip, *_ in along_flute(read, "arrow")]


@pytest.mark.parametrize(
    ("givens", "said"),
    [({"web_taper": 0}, "never thickens"), ({"web": 0}, "no chisel edge"), ({"web": 12}, "web")],
)
def test_what_does_not_grow_is_refused(givens, said):
    with pytest.raises(LearnerError, match=said):
        draw("web_along_flute", **{**USUAL, **givens})


def test_the_limit_may_be_left_out_and_numbers_hidden():
    assert draw("web_along_flute", **USUAL) == draw("web_along_flute", **USUAL, web_ratio_limit=0.18, point_angle=118)
    hidden = draw("web_along_flute", **USUAL, hide=["web_after_shortening", "chisel_edge_length"])
    assert "1.78" not in hidden.svg
    assert "2.17" not in hidden.svg
