import pytest

from drillpoint.drawing import draw
from drillpoint.drawing.draw import scene
from drillpoint.drawing.showing import describe
from drillpoint.errors import Impossible
from drillpoint.explorers.thinning import THINNING


def test_sliders_stay_where_labels_were_proved_to_keep_apart():
    spans = {r.name: (r.low, r.high, r.share_of) for name in THINNING.scenes for r in scene(name).ranges}
    assert {s.name: (s.low, s.high, s.share_of) for s in THINNING.sliders}.items() <= spans.items()


def test_the_plain_call_draws_the_same_drill():
    state = THINNING.state(thinned_chisel_length=1.2)
    (call,) = THINNING.call(state, "mm").split("\n")
    picture = eval(call, {"draw": draw})  # noqa: S307  (to be run)
    assert picture == draw(THINNING.scenes[0], **{**THINNING.fixed, **state})


def test_a_thinning_angle_past_the_chisel_edge_is_refused_with_a_reason():
    state = THINNING.state(chisel_edge_angle=140, thinning_angle=45)
    with pytest.raises(Impossible, match="wrong sides"):
        THINNING.values(state)


def test_the_summary_tells_what_is_left():
    # DERIVED: 1.5/sin 55° = 1.831; 0.8·sin 25° = 0.338
    said = describe(THINNING.summary, THINNING.values(THINNING.start), "mm", frozenset())
    assert "1.83 mm before, 0.8 mm after. Web left 0.338 mm" in said
