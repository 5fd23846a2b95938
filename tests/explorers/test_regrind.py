import re

import pytest
from playwright.sync_api import expect

from drillpoint.drawing import draw
from drillpoint.drawing.draw import drawn_from, scene
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


# DERIVED: wear 0.4·tan 12° = 0.085, chip 0.3/sin 59° = 0.350, angle 5·(cot 59° − cot 67.5°) = 0.933 at Ø10.
CASES = (
    ({}, "From 118° to 135°. Off the corners come 0.085 mm: the wear land decides. Off the tip come 1.02 mm."),
    (
        {"new_point_angle": 118, "chip_depth": 0.3},
        "From 118° to 118°. Off the corners come 0.35 mm: the chip decides. Off the tip come 0.35 mm.",
    ),
    (
        {"point_angle": 135, "new_point_angle": 118, "chip_depth": 0},
        "From 135° to 118°. Off the corners come 0.933 mm: the sharper point decides. Off the tip come 0 mm.",
    ),
    (
        {"wear_land": 0, "chip_depth": 0},
        "From 118° to 135°. Off the corners come 0 mm: nothing asks for more. Off the tip come 0.933 mm.",
    ),
)


@pytest.mark.parametrize(("moved", "said"), CASES)
def test_the_status_line_tells_which_fault_decides_and_how_much(open_explorer, moved, said):
    expect(open_explorer(moved, explorer="regrind").get_by_role("status")).to_have_text(said)


def test_the_status_line_says_what_the_drawing_says():
    state = REGRIND.state(new_point_angle=118)
    drawn = drawn_from("regrind", REGRIND.values(state))
    own = {number.name: drawn.coordinates[number.place] for number in drawn.scene.numbers}
    said = describe(REGRIND.summary, {**drawn.values, **own}, "inch", frozenset(), drawn.scene.likes)
    told = draw("regrind", units="inch", **state).alt
    for part in re.findall(r"come [\d.]+ in(?:: [^.]*)?", said):
        assert part in told
    assert len(re.findall("come", said)) == 2
