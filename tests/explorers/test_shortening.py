import pytest
from playwright.sync_api import expect

from drillpoint.drawing import draw
from drillpoint.drawing.draw import scene
from drillpoint.explorers.shortening import SHORTENING


def test_sliders_stay_where_labels_were_proved_to_keep_apart():
    spans = {r.name: (r.low, r.high, r.share_of) for name in SHORTENING.scenes for r in scene(name).ranges}
    assert {s.name: (s.low, s.high, s.share_of) for s in SHORTENING.sliders}.items() <= spans.items()


def test_the_plain_call_draws_the_same_drill():
    state = SHORTENING.state(length_removed=40)
    (call,) = SHORTENING.call(state, "mm").split("\n")
    picture = eval(call, {"draw": draw})  # noqa: S307  (to be run)
    assert picture == draw(SHORTENING.scenes[0], **{**SHORTENING.fixed, **state})


# DERIVED: 1.5 + 0.014·20 = 1.78, 1.5 + 0.014·40 = 2.06; the chisel edges by sin 125°; (0.18·10 - 1.5)/0.014 = 21.43
FIRST = "the chisel edge from 1.83 mm to"
CASES = (
    (20, f"to 1.78 mm, {FIRST} 2.17 mm. No thinning yet: it is due with 21.43 mm ground off in all."),
    (40, f"to 2.06 mm, {FIRST} 2.51 mm. Thinning is due."),
)


@pytest.mark.parametrize(("removed", "said"), CASES)
def test_the_status_line_tells_how_the_web_grew_and_whether_to_thin(open_explorer, removed, said):
    page = open_explorer({"length_removed": removed}, explorer="shortening")
    told = f"With {removed} mm ground off the web has grown from 1.5 mm {said}"
    expect(page.get_by_role("status")).to_have_text(told)
