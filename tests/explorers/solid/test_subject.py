"""What can be looked at, and what is refused."""

import json

import pytest

from drillpoint.errors import LearnerError
from drillpoint.explorers.solid.subject import as_data, pictures, plain_point, subjects
from tests.drawing.solid.points import points

USUAL = {"diameter": 10, "point_angle": 118, "lip_relief": 12, "web": 1.5}


def test_keywords_make_the_plain_point_they_describe():
    read = plain_point(USUAL).inspect()
    # DERIVED: a plain grind at the flute's own angle measures as it was asked for
    assert read.point_angle == pytest.approx(118)
    assert read.lip_relief == pytest.approx(12)
    assert read.web == pytest.approx(1.5)
    asked = plain_point(
        {"diameter": 12, "point_angle": 130, "web_ratio": 0.15, "chisel_edge_angle": 125, "hand": "left"}
    )
    assert asked.inspect().chisel_edge_angle == pytest.approx(125)
    assert asked.flute.hand == "left"


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({**USUAL, "lip_releif": 3}, "no given called 'lip_releif'; did you mean 'lip_relief'"),
        ({"diameter": 10, "point_angle": 118, "web": 1.5}, "needs chisel_edge_angle"),
        ({**USUAL, "point_angle": 200}, "200"),
        ({**USUAL, "hand": "both"}, "'right' or 'left'"),
    ],
)
def test_what_describes_no_drill_is_refused(given, words):
    with pytest.raises(LearnerError, match=words):
        plain_point(given)


@pytest.mark.parametrize(
    ("point", "beside", "names", "givens", "words"),
    [
        ("drill", None, ("a", "b"), {}, "shows a GroundPoint"),
        ("plain", "plain", ("a", "b"), {}, "no str"),
        ("plain", None, ("a", "b"), {"web": 2}, "not both: leave out web"),
        ("plain", points, ("a",), {}, "must be two"),
    ],
)
def test_what_is_no_ground_point_is_refused(point, beside, names, givens, words):
    first = points().get(point, point)
    second = points()["unequal"] if beside is points else beside
    with pytest.raises(LearnerError, match=words):
        subjects(first, second, names, "mm", givens)


def test_the_browser_gets_a_look_a_word_and_a_sentence_for_every_part():
    two = subjects(points()["plain"], points()["split"], ("whole", "split"), "mm", {})
    data = json.loads(json.dumps(as_data(two, "end", "mm", pictures(two, "end", "mm"))))
    assert data["start"]["tilt"] == 90
    assert [one["title"] for one in data["solids"]] == ["whole", "split"]
    assert {part["name"] for part in data["parts"]} == {n for one in data["solids"] for n in one["names"]}
    for one in data["solids"]:
        assert len(one["names"]) <= 40  # the shader's list of looks
        assert set(one["says"]) == set(one["names"])
        assert set(one["kinds"]) <= {*data["style"]["surfaces"], *data["style"]["lines"]}
        assert one["still"].startswith("<img")
    assert data["summary"].startswith("whole: Diameter 10 mm")
