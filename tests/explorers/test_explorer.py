import json

import pytest

from drillpoint.drawing import draw, scene_names
from drillpoint.drawing.draw import scene
from drillpoint.errors import LearnerError
from drillpoint.explorers.answering import drawings
from drillpoint.explorers.find import EXPLORERS, find
from drillpoint.explorers.lips import LIPS
from drillpoint.quantities import QUANTITIES
from drillpoint.relations import BOOK


@pytest.mark.parametrize("explorer", EXPLORERS.values())
def test_an_explorer_speaks_only_of_what_there_is(explorer):
    known = {*explorer.start, *explorer.fixed}
    for name in explorer.relations:
        assert set(BOOK[name].givens) <= known, f"{name} is worked out before its givens"
        known.add(BOOK[name].result.name)
    assert known <= set(QUANTITIES)
    assert set(explorer.worked) <= set(explorer.relations)
    assert set(explorer.scenes) <= set(scene_names())
    assert all(set(scene(name).arguments) <= known for name in explorer.scenes)
    for drawn in drawings(explorer, explorer.start, explorer.computed).values():
        known |= set(drawn.values)
    assert set(explorer.table) <= known
    assert json.loads(json.dumps(explorer.as_data())) == explorer.as_data()


@pytest.mark.parametrize("explorer", EXPLORERS.values())
def test_sliders_start_on_a_drill_that_is_possible(explorer):
    assert explorer.values(explorer.start)
    for slider in explorer.sliders:
        low, high = slider.limits(explorer.start)
        assert low < slider.start < high


def test_the_state_can_be_set_in_part():
    assert LIPS.state(lip_relief=15) == {**LIPS.start, "lip_relief": 15.0}
    # A web not given keeps its share of the diameter.
    assert LIPS.state(diameter=20)["web"] == pytest.approx(3.0)


@pytest.mark.parametrize(
    ("givens", "said"),
    [
        ({"diametre": 10}, "did you mean 'diameter'"),
        ({"diameter": 50}, "1 mm to 40 mm"),
        ({"web": 9}, "0.5 mm to 4 mm"),
        ({"point_angle": "flat"}, "needs a number"),
        ({"chisel_edge_angle": 125}, "no slider"),
    ],
)
def test_a_start_outside_the_sliders_is_refused(givens, said):
    with pytest.raises(LearnerError, match=said):
        LIPS.state(**givens)


def test_an_unknown_explorer_is_refused_with_the_nearest():
    with pytest.raises(LearnerError, match="did you mean 'lips'"):
        find("lip")


@pytest.mark.parametrize("units", ["mm", "inch"])
def test_the_plain_call_draws_the_same_drill(units):
    state = LIPS.state(diameter=9.525, lip_relief=14.5)
    pictures = [eval(line, {"draw": draw}) for line in LIPS.call(state, units).split("\n")]  # noqa: S307  (to be run)
    assert pictures == [draw(name, units=units, **state) for name in LIPS.scenes]
