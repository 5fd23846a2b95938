import pytest
from playwright.sync_api import expect

from drillpoint.drawing import draw
from drillpoint.errors import OutOfRange
from drillpoint.explorers.dubbing import DUBBING

ROUND_THE_CORNER = "At the outer corner the rake goes from 30.6° to -4.5°, the wedge from 48.9° to 83.9°. "


def test_the_plain_call_draws_the_same_lip():
    state = DUBBING.state(dub_width=0.3)
    (call,) = DUBBING.call(state, "mm").split("\n")
    assert eval(call, {"draw": draw}) == draw("dubbed_lip", **state)  # noqa: S307  (to be run)


def test_a_slider_goes_to_its_end_below_zero_and_no_further():
    assert DUBBING.state(dub_rake=-5)["dub_rake"] == -5
    with pytest.raises(OutOfRange, match="outside the slider's -5° to 3°"):
        DUBBING.state(dub_rake=-5.1)


# DERIVED: h = 0.05·sin 59° = 0.0429 and 0.25·sin 59° = 0.2143, over cos 4.468°; 0.153 = 0.2·sin 35.088°/sin 48.854°.
@pytest.mark.parametrize(
    ("feed", "said"),
    [
        (0.1, "The flat is wide enough: 0.043 mm is the least. The lip is set back by 0.153 mm."),
        (0.5, "The flat is too narrow: 0.215 mm is the least. The lip is set back by 0.153 mm."),
    ],
)
def test_the_status_line_tells_rake_wedge_and_whether_the_flat_is_wide_enough(open_explorer, feed, said):
    page = open_explorer({"feed": feed}, explorer="dubbing")
    expect(page.get_by_role("status")).to_have_text(ROUND_THE_CORNER + said)
