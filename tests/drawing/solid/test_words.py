"""What a solid says has the numbers of its inspection."""

import pytest

from drillpoint.drawing.showing import show
from drillpoint.drawing.solid.words import alt_text, sentences
from tests.drawing.solid.points import NAMES, points, shown_point


@pytest.fixture(params=NAMES)
def name(request):
    return request.param


@pytest.fixture
def point(name):
    return points()[name]


@pytest.fixture
def parts(name):
    return shown_point(name).parts


@pytest.mark.parametrize("units", ["mm", "inch"])
def test_every_part_has_a_sentence_with_nothing_left_open(point, parts, units):
    said = sentences(point, point.inspect(), parts, units)
    assert len(set(said.values())) == len(said)
    for sentence in said.values():
        assert sentence.endswith(".")
        assert not set("{}") & set(sentence)
        assert "nan" not in sentence
        assert (" mm" in sentence) <= (units == "mm")


def test_the_sentences_carry_the_inspected_numbers(point, parts):
    read = point.inspect()
    said = sentences(point, read, parts, "mm")
    left = read.thinning.lips[1].untouched_lip_length if read.thinning else read.lip_length_2
    assert show("lip_length", left, "mm") in said["lip 2"]
    assert show("point_angle", read.half_angle_2, "mm") in said["lip 2"]
    behind = "flank 2" if "flank 2" in said else "primary facet 2"
    assert show("lip_relief", read.lip_relief_2, "mm") in said[behind]
    angle = (read.thinning or read).chisel_edge_angle
    assert show("chisel_edge_angle", angle, "mm") in said["chisel edge"]


def test_the_alt_text_tells_what_is_faulty_and_only_then():
    plain, faulty = (alt_text(points()[name], points()[name].inspect(), "mm") for name in ("plain", "unequal"))
    read = points()["unequal"].inspect()
    for words in ("off centre", "nearer to the tip", "Half angles", "Lip lengths"):
        assert words not in plain
        assert words in faulty
    assert f"Lip 2 is {show('lip_height_difference', abs(read.lip_height_difference), 'mm')} nearer" in faulty
    assert "flatter than the usual 120° to 135°" in plain
    assert "within the usual" in alt_text(points()["conical"], points()["conical"].inspect(), "mm")


def test_the_alt_text_tells_hand_and_thinning_and_speaks_inches():
    assert "left-hand" in alt_text(points()["left"], points()["left"].inspect(), "mm")
    thinned = alt_text(points()["thinned"], points()["thinned"].inspect(), "mm")
    assert "The chisel edge is 0.5 mm long" in thinned
    assert "thinned at lip 1 and lip 2; the chisel edge was 1.53 mm long before" in thinned
    assert "0.0603 in" in alt_text(points()["plain"], points()["plain"].inspect(), "inch")
