from drillpoint.drawing import draw
from drillpoint.drawing.draw import scene
from drillpoint.drawing.showing import describe
from drillpoint.explorers.shortening import SHORTENING


def test_sliders_stay_where_labels_were_proved_to_keep_apart():
    spans = {r.name: (r.low, r.high, r.share_of) for name in SHORTENING.scenes for r in scene(name).ranges}
    assert {s.name: (s.low, s.high, s.share_of) for s in SHORTENING.sliders}.items() <= spans.items()


def test_the_plain_call_draws_the_same_drill():
    state = SHORTENING.state(length_removed=40)
    (call,) = SHORTENING.call(state, "mm").split("\n")
    picture = eval(call, {"draw": draw})  # noqa: S307  (to be run)
    assert picture == draw(SHORTENING.scenes[0], **{**SHORTENING.fixed, **state})


def test_the_summary_tells_how_the_web_grew():
    # DERIVED: 1.5 + 0.014·40 = 2.06
    said = describe(SHORTENING.summary, SHORTENING.values(SHORTENING.state(length_removed=40)), "mm", frozenset())
    assert said == "Web 1.5 mm at first, 2.06 mm with 40 mm ground off."
