"""Working out every value of a scene from whatever was given."""

import pytest

from drillpoint.drawing.draw import scene
from drillpoint.drawing.working import accepted, example, used, values_of
from drillpoint.errors import Impossible, LearnerError, MissingGiven, OutOfRange, UnknownGiven
from tests.drawing import sample

SCENE, _ = sample.build()
HOLE = {"diameter": 10.0, "point_angle": 118.0, "shoulder_depth": 25.0}


def test_every_relation_is_worked_out_also_backwards():
    values = values_of(SCENE, HOLE)
    # DERIVED: h = (D/2)/tan 59° = 3.0043, and the point stands that much below the shoulder.
    assert values["point_height"] == pytest.approx(3.0043, abs=5e-5)
    assert values["depth_to_point"] == pytest.approx(28.0043, abs=5e-5)


def test_a_need_is_worked_out_from_what_leads_to_it():
    from_point = values_of(SCENE, {"diameter": 10.0, "point_angle": 118.0, "depth_to_point": 28.0043})
    assert from_point["shoulder_depth"] == pytest.approx(25.0, abs=5e-5)
    # What was given stays as given.
    assert from_point["depth_to_point"] == 28.0043


@pytest.mark.parametrize(
    ("givens", "error", "said"),
    [
        ({**HOLE, "diametre": 1}, UnknownGiven, "did you mean 'diameter'"),
        ({**HOLE, "feed": 0.2}, UnknownGiven, "takes no 'feed'"),
        ({"diameter": 10, "point_angle": 118}, MissingGiven, 'needs shoulder_depth .*or depth_to_point.*draw."sample"'),
        ({**HOLE, "depth_to_point": 30}, UnknownGiven, "does not need depth_to_point beside shoulder_depth"),
        ({**HOLE, "shoulder_depth": 0.2}, Impossible, "0.2 mm deep is too shallow"),
        ({**HOLE, "point_angle": 59}, OutOfRange, "118°"),
        ({**HOLE, "diameter": "ten"}, OutOfRange, "needs a number"),
    ],
)  # fmt: skip
def test_what_does_not_fit_is_said(givens, error, said):
    with pytest.raises(error, match=said) as caught:
        values_of(SCENE, givens)
    assert isinstance(caught.value, LearnerError)


def test_the_example_is_a_call_that_draws():
    assert example(scene("end_view")) == (
        'draw("end_view", diameter=10, point_angle=118, web=1.5, chisel_edge_angle=125)'
    )


def test_a_scene_knows_its_keywords_and_which_of_them_count():
    assert {"diameter", "web", "web_ratio", "lip_relief", "axial_relief"} <= set(accepted(scene("end_view")))
    assert "feed" not in accepted(scene("end_view"))
    names = ("diameter", "point_angle", "web", "lip_relief", "feed")
    assert used(scene("end_view"), names) == ("diameter", "point_angle", "web", "lip_relief")


def test_a_need_with_a_default_may_be_left_out():
    from attrs import evolve

    spared = evolve(SCENE, defaults={"point_angle": 118.0})
    assert values_of(spared, {"diameter": 10.0, "shoulder_depth": 25.0}) == values_of(SCENE, HOLE)
    assert values_of(spared, {**HOLE, "point_angle": 135.0})["point_angle"] == 135.0
