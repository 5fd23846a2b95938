"""No label leaves the frame or touches another one, and no line leaves the frame, anywhere in a scene's ranges."""

import pytest
from attrs import evolve

from drillpoint.drawing import scene_names
from drillpoint.drawing.draw import drawn_from, scene
from drillpoint.drawing.scene import Label, Outline
from drillpoint.drawing.working import values_of
from tests.drawing.drills import corners_of
from tests.drawing.labels import WIDE, label_faults

EVERY = pytest.mark.parametrize("name", scene_names())
# Edges may run on below a break; fillings hide what is below them.
LINES = {"lip", "chisel", "thin", "arrow", "hidden", "motion", "section", "section_other"}


def drawings(name):
    return [(drawn_from(name, values_of(scene(name), drill)), str(drill)) for drill in corners_of(name)]


@EVERY
@pytest.mark.parametrize("font", ["", WIDE], ids=["own font", "wide font"])
def test_labels_keep_apart_and_inside(browser, name, font):
    shown = drawings(name)
    measured, faults = label_faults(browser, shown, font)
    assert measured >= 4 * len(shown)
    assert faults == []


@EVERY
def test_lines_stay_inside_the_frame(name):
    for drawn, of in drawings(name):
        shown, numbers = drawn.scene, drawn.coordinates
        for shape in shown.shapes:
            if isinstance(shape, Outline) and shape.style in LINES and (shape.when < 0 or numbers[shape.when] > 0):
                places = [numbers[step] for step in shape.steps if isinstance(step, int)]
                if "A" in shape.steps:
                    continue  # a radius is no place
                assert all(0 <= x <= shown.width for x in places[::2]), (shape.style, of)
                assert all(0 <= y <= shown.height for y in places[1::2]), (shape.style, of)


def test_labels_that_touch_or_leave_the_frame_are_noticed(browser):
    drawn, of = drawings("end_view")[0]
    first = next(shape for shape in drawn.scene.shapes if isinstance(shape, Label))
    twice = evolve(drawn, scene=evolve(drawn.scene, shapes=(*drawn.scene.shapes, first)))
    assert any("touches" in fault for fault in label_faults(browser, [(twice, of)])[1])
    narrow = evolve(drawn, scene=evolve(drawn.scene, width=400))
    assert any("leaves the frame" in fault for fault in label_faults(browser, [(narrow, of)])[1])
