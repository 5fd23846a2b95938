import math
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.drawing import draw, scene_names
from drillpoint.drawing.draw import coordinates, facts, scene
from drillpoint.errors import LearnerError
from tests.drawing.drills import USUAL, corners


def test_the_views_of_the_point_are_there():
    assert {"end_view", "side_view"} <= set(scene_names())


def test_a_relief_gives_the_chisel_edge_of_a_plane_flank():
    values = facts(diameter=10, point_angle=118, web=1.5, lip_relief=12)
    # DERIVED: tan α_x = (tan α_f − u·cot κ)/√(1 − u²), tan δ = cot κ / tan α_x
    kappa, u = math.radians(59), 0.15
    square = (math.tan(math.radians(12)) - u / math.tan(kappa)) / math.sqrt(1 - u * u)
    assert values["chisel_edge_angle"] == pytest.approx(180 - math.degrees(math.atan2(1 / math.tan(kappa), square)))
    assert values["chisel_edge_angle"] == pytest.approx(101.64, abs=0.005)


@given(st.floats(60, 150), st.floats(0.05, 0.4), st.floats(91, 150), st.floats(1, 40))
def test_every_way_to_give_the_same_drill_draws_the_same_picture(angle, ratio, chisel, diameter):
    shape = {"diameter": diameter, "point_angle": angle}
    first = facts(**shape, web_ratio=ratio, chisel_edge_angle=chisel)
    by_axial = facts(**shape, web=ratio * diameter, axial_relief=first["axial_relief"])
    assert by_axial == pytest.approx(first, rel=1e-9)
    if first["lip_relief"] <= 60:  # the largest that the relations take
        by_lip = facts(**shape, web=ratio * diameter, lip_relief=first["lip_relief"])
        assert by_lip == pytest.approx(first, rel=1e-9)


def test_an_acute_chisel_edge_angle_draws_its_supplement():
    assert facts(**{**USUAL, "chisel_edge_angle": 55}) == pytest.approx(facts(**USUAL))


@pytest.mark.parametrize(
    ("call", "said"),
    [
        ({"name": "endview"}, "did you mean 'end_view'"),
        ({"diametre": 10}, "did you mean 'diameter'"),
        ({"web": None}, "needs web .*or web_ratio"),
        ({"web_ratio": 0.15}, "does not need web_ratio beside web"),
        ({"chisel_edge_angle": None}, "axial_relief or lip_relief.*for example draw"),
        ({"lip_relief": 12}, "does not need lip_relief beside chisel_edge_angle"),
        ({"chisel_edge_angle": None, "lip_relief": 2}, "give more relief"),
        ({"point_angle": 59}, "118"),
        ({"web": 9, "chisel_edge_angle": 150}, "web"),
        ({"web": 0}, "leaves no chisel edge"),
        ({"units": "feet"}, "units='mm'"),
        ({"hide": ["chisel_edge"]}, "chisel_edge_"),
    ],
)
def test_what_cannot_be_drawn_is_refused_with_what_can(call, said):
    givens = {"name": "end_view", **USUAL, **call}
    with pytest.raises(LearnerError, match=said):
        draw(**{name: value for name, value in givens.items() if value is not None})


@pytest.mark.parametrize("name", ["end_view", "side_view"])
def test_no_drill_in_the_ranges_has_a_number_that_is_none(name):
    for drill in corners():
        assert all(math.isfinite(c) for c in coordinates(scene(name), facts(**drill))), drill
        assert "nan" not in draw(name, **drill).svg


@pytest.mark.parametrize("name", ["end_view", "side_view"])
@pytest.mark.parametrize("hidden", ["diameter", "web", "point_angle", "lip_length", "chisel_edge_length"])
def test_a_hidden_number_is_nowhere_in_the_picture(name, hidden):
    values = facts(diameter=13.37, point_angle=121, web=1.93, chisel_edge_angle=127)
    picture = draw(name, diameter=13.37, point_angle=121, web=1.93, chisel_edge_angle=127, hide=[hidden])
    written = {f"{values[hidden]:.2f}".rstrip("0").rstrip("."), f"{values[hidden] / 2:g}°"}
    texts = picture.svg.split("<rect")[1].split(">")
    words = picture.alt + "".join(text.split("<")[0] for text in texts)
    assert not [number for number in written if number in words]


def test_hiding_the_chisel_edge_angle_hides_both_ways_to_say_it_and_the_judgement():
    picture = draw("end_view", **USUAL, hide="chisel_edge_angle")
    assert "125°" not in picture.svg
    assert "55°" not in picture.svg
    assert "120°" not in picture.svg
    assert "not told" in picture.alt


def test_drawing_needs_neither_sympy_nor_any_numeric_library():
    code = (
        "import sys; from drillpoint.drawing import draw;"
        "draw('side_view', diameter=10, point_angle=118, web=1.5, lip_relief=12);"
        "print(sorted({'sympy', 'numpy', 'matplotlib', 'ipywidgets'} & set(sys.modules)))"
    )
    shown = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert shown.stdout.strip() == "[]"
