"""The dubbed lip, measured on its coordinates against the relations on dubbing."""

import math

import pytest

from drillpoint.drawing.draw import coordinates, draw, drawn_from, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of
from drillpoint.relations import dub_set_back, dub_wedge_angle, least_dub_width, wedge_angle
from tests.drawing.drills import anywhere_in, corners_of

NAME = "dubbed_lip"
USUAL = {
    "dub_width": 0.2, "normal_rake": 30.6, "dub_normal_rake": -4.5, "normal_relief": 10.5, "chip_thickness": 0.043,
}  # fmt: skip


def lines(drawn, style):
    """The points of each outline of a style, in mm from the lip, y up."""
    scale = drawn.coordinates[drawn.scene.bar.scale]
    found = []
    for shape in drawn.scene.shapes:
        if isinstance(shape, Outline) and shape.style == style:
            flat = [drawn.coordinates[step] for step in shape.steps if isinstance(step, int)]
            found.append([((x - 270) / scale, (290 - y) / scale) for x, y in zip(flat[::2], flat[1::2], strict=True)])
    return found


def drawn_for(lip):
    return drawn_from(NAME, values_of(scene(NAME), lip))


def from_upright(start, end):
    """How far a line leans back from upright, in degrees."""
    return math.degrees(math.atan2(end[0] - start[0], end[1] - start[1]))


@pytest.mark.parametrize("lip", [USUAL, *anywhere_in(NAME, 12)])
def test_the_piece_taken_off_is_the_triangle_of_the_relations(lip):
    drawn = drawn_for(lip)
    ((flat_end, old_lip, lip_now),) = (line for line in lines(drawn, "swept"))
    assert math.dist(flat_end, lip_now) == pytest.approx(lip["dub_width"])
    assert from_upright(lip_now, flat_end) == pytest.approx(lip["dub_normal_rake"])
    # Two routes to the old lip meet: back along the flank by the set-back, and down the flute's own face.
    wedge = wedge_angle(normal_rake=lip["normal_rake"], normal_relief=lip["normal_relief"])
    back = dub_set_back(**{n: lip[n] for n in ("dub_width", "normal_rake", "dub_normal_rake")}, wedge_angle=wedge)
    assert math.dist(old_lip, lip_now) == pytest.approx(float(back), abs=1e-9)
    assert from_upright(old_lip, flat_end) == pytest.approx(lip["normal_rake"], abs=1e-6)


@pytest.mark.parametrize("lip", [USUAL, *anywhere_in(NAME, 12)])
def test_the_layer_is_as_thick_as_the_chip_and_ends_on_flat_or_face(lip):
    drawn = drawn_for(lip)
    (work,) = (line[:4] for line in lines(drawn, "section_other"))
    assert work[0][1] == work[1][1] == pytest.approx(lip["chip_thickness"])
    least = float(least_dub_width(chip_thickness=lip["chip_thickness"], dub_normal_rake=lip["dub_normal_rake"]))
    if lip["dub_width"] >= least:
        assert work[1] == pytest.approx(work[2], abs=1e-9)
        assert math.dist(work[2], work[3]) == pytest.approx(least)
    else:
        assert math.dist(work[2], work[3]) == pytest.approx(lip["dub_width"])
        assert from_upright(work[2], work[1]) == pytest.approx(lip["normal_rake"], abs=1e-6)


def test_the_words_tell_the_numbers_and_judge_the_width():
    said = draw(NAME, **USUAL).alt
    wedge = float(dub_wedge_angle(dub_normal_rake=-4.5, normal_relief=10.5))
    assert f"the wedge {wedge:.0f}°" in said and "wide enough: 0.043 mm is the least" in said
    assert "too narrow" in draw(NAME, **{**USUAL, "dub_width": 0.05, "chip_thickness": 0.1}).alt
    hidden = draw(NAME, **USUAL, hide=["dub_set_back", "least_dub_width"])
    assert "0.153" in draw(NAME, **USUAL).svg and "0.153" not in hidden.svg + hidden.alt


def test_no_number_is_none_anywhere_in_the_ranges():
    for lip in corners_of(NAME) + anywhere_in(NAME, 100):
        assert all(math.isfinite(c) for c in coordinates(scene(NAME), values_of(scene(NAME), lip))), lip
