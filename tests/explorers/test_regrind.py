from drillpoint.drawing import draw
from drillpoint.drawing.draw import scene
from drillpoint.drawing.showing import describe
from drillpoint.explorers.regrind import REGRIND


def test_sliders_stay_where_labels_were_proved_to_keep_apart():
    spans = {r.name: (r.low, r.high, r.share_of) for name in REGRIND.scenes for r in scene(name).ranges}
    assert {s.name: (s.low, s.high, s.share_of) for s in REGRIND.sliders}.items() <= spans.items()


def test_the_plain_call_draws_the_same_drill():
    state = REGRIND.state(new_point_angle=118)
    (call,) = REGRIND.call(state, "mm").split("\n")
    picture = eval(call, {"draw": draw})  # noqa: S307  (to be run)
    assert picture == draw(REGRIND.scenes[0], **{**REGRIND.fixed, **state})


def test_the_summary_tells_what_the_wear_land_asks_for():
    # DERIVED: 0.4·tan 12° = 0.085
    said = describe(REGRIND.summary, REGRIND.values(REGRIND.start), "mm", frozenset())
    assert "From 118° to 135°. A wear land of 0.4 mm alone asks for 0.085 mm" in said
