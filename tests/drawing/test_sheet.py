"""Everything a sheet can draw, in Python and in the browser."""

import json
import math
import xml.etree.ElementTree as ET

import pytest
from attrs import evolve

from drillpoint.drawing.computed import Drawn
from drillpoint.drawing.draw import finished
from drillpoint.drawing.points import distance
from drillpoint.drawing.scene import Outline, scene_from_data
from drillpoint.drawing.sheet import Sheet
from drillpoint.drawing.svg import style_for
from drillpoint.drawing.working import values_of
from drillpoint.editions.functions import javascript_function, python_function
from drillpoint.explorers.script import script
from tests.drawing import sample
from tests.drawing.test_edition import DRAW, assert_same

SCENE, EXPRESSIONS = sample.build()


def drawn(**givens: float) -> Drawn:
    place: dict[str, object] = {}
    exec(python_function("f", SCENE.arguments, EXPRESSIONS), place)  # noqa: S102  (our own generated text, in a test)
    values = values_of(SCENE, givens)
    return Drawn(SCENE, place["f"](math, *(values[name] for name in SCENE.arguments)), values)


@pytest.mark.parametrize("depth", [12.0, 40.0])
def test_the_browser_draws_all_of_it_alike(browser, depth):
    shown = drawn(diameter=10, point_angle=118, shoulder_depth=depth)
    coordinates = javascript_function("coordinates", SCENE.arguments, EXPRESSIONS)
    added = f"scenes.sample = {{coordinates: {coordinates}, ...{json.dumps(SCENE.for_browser())}}};"
    page = browser.new_page()
    question = {"values": shown.values, "units": "mm"}
    (theirs,) = page.evaluate(DRAW.replace("SCRIPT", f"{script()}\n{added}"), {"name": "sample", "drills": [question]})
    page.close()
    picture = finished(shown, "mm")
    assert theirs["alt"] == picture.alt
    root = ET.fromstring(picture.svg)  # noqa: S314  (our own text)
    own = [(e.tag.split("}")[1], e.attrib, e.text or "") for e in root if e.tag.endswith(("path", "text"))]
    assert len(own) == len(theirs["shapes"])
    for one, other in zip(own, theirs["shapes"], strict=True):
        assert_same(one, other)


def test_a_shape_is_left_out_where_it_does_not_apply():
    assert ">deep<" in finished(drawn(diameter=10, point_angle=118, shoulder_depth=25), "mm").svg
    assert ">deep<" not in finished(drawn(diameter=10, point_angle=118, shoulder_depth=15), "mm").svg


def test_a_number_of_the_scenes_own_is_written_like_its_quantity():
    assert "10 mm, 2.5 of it" in finished(drawn(diameter=10, point_angle=118, shoulder_depth=25), "mm").alt


def test_each_kind_of_cut_metal_has_its_hatching():
    svg = finished(drawn(diameter=10, point_angle=118, shoulder_depth=25), "mm").svg
    for style in ("section", "section_other"):
        assert f'<pattern id="drillpoint-sample-{style}"' in svg
        assert f"url(#drillpoint-sample-{style})" in svg
    assert ".hatching" in svg


def test_a_drawing_carries_only_the_rules_it_uses():
    assert ".hidden" in style_for(frozenset({"hidden"}))
    assert ".hidden" not in style_for(frozenset({"edge"}))
    assert "hatching" not in style_for(frozenset({"edge"}))


def test_a_scene_comes_back_from_its_data():
    data = json.loads(json.dumps(SCENE.as_data()))
    assert scene_from_data(data) == SCENE


def test_arguments_are_what_the_coordinates_depend_on():
    assert SCENE.arguments == ("diameter", "point_angle", "shoulder_depth")
    sheet = Sheet()
    import sympy

    sheet.line("edge", (sympy.Symbol("diametre"), 0), (1, 1))
    with pytest.raises(ValueError, match="diametre"):
        sheet.scene(**sample.STATED)


def test_a_plain_sheet_lays_the_same_numbers():
    shown = drawn(diameter=10, point_angle=118, shoulder_depth=25)
    sheet = Sheet(plain=True)
    bar = sample.lay(sheet, 10.0, 25.0, shown.values["point_height"], min)
    scene = evolve(SCENE, shapes=sheet.shapes, numbers=sheet.numbers, bar=bar)
    plain = finished(Drawn(scene, sheet.expressions, shown.values), "mm")
    assert plain == finished(shown, "mm")
    assert all(isinstance(number, float) for number in sheet.expressions)


def test_arrows_stand_at_the_ends_of_an_angle_and_lean_inwards():
    sheet = Sheet(plain=True)
    middle = sheet.angle((100, 100), 60, 0.0, 1.0)
    assert middle == pytest.approx((100 + 60 * math.cos(0.5), 100 + 60 * math.sin(0.5)))
    heads = [s for s in sheet.shapes if isinstance(s, Outline) and s.style == "arrow"]
    assert len(heads) == 2
    for head, at in zip(heads, (0.0, 1.0), strict=True):
        flat = [sheet.expressions[step] for step in head.steps if isinstance(step, int)]
        tip, *feet = zip(flat[::2], flat[1::2], strict=True)
        assert tip == pytest.approx((100 + 60 * math.cos(at), 100 + 60 * math.sin(at)))
        assert all(abs(distance((100, 100), foot) - 60) < 3.2 for foot in feet)


def test_the_arrows_of_a_dimension_turn_outside_where_there_is_no_room():
    for length, inside in ((100.0, True), (20.0, False)):
        sheet = Sheet(plain=True)
        sheet.dimension((0.0, 0.0), (length, 0.0), (0.0, 1.0), 30.0)
        head = next(s for s in sheet.shapes if isinstance(s, Outline) and s.style == "arrow")
        tip, foot = (sheet.expressions[step] for step in (head.steps[1], head.steps[4]))
        assert (foot > tip) is inside


@pytest.mark.parametrize("sweep", [0.0, 0.02, 0.9])
def test_the_arrows_of_a_narrow_angle_stand_outside_it(sweep):
    sheet = Sheet(plain=True)
    sheet.narrow_angle((0, 0), 100, -0.5, sweep)
    heads = [shape for shape in sheet.shapes if isinstance(shape, Outline) and shape.style == "arrow"]
    directions = []
    for head in heads:
        flat = [sheet.expressions[step] for step in head.steps if isinstance(step, int)]
        points = list(zip(flat[::2], flat[1::2], strict=True))
        tip, back = points[0], ((points[1][0] + points[2][0]) / 2, (points[1][1] + points[2][1]) / 2)
        directions.append((math.atan2(tip[1], tip[0]), math.atan2(back[1], back[0])))
    (first, behind), (last, ahead) = directions
    assert (first, last) == pytest.approx((-0.5, -0.5 + sweep))
    assert behind < first
    assert last < ahead
