"""What the scenes draw, measured on their coordinates."""

import math
import re

import pytest

from drillpoint.drawing.draw import coordinates, facts, scene
from drillpoint.drawing.scene import Outline
from tests.drawing.drills import USUAL, corners


def lines(name, values, style):
    """The straight lines of a style, in half diameters, y up, from the middle of the chisel edge."""
    shown = scene(name)
    numbers = coordinates(shown, values)
    found = []
    for shape in shown.shapes:
        if isinstance(shape, Outline) and shape.style == style:
            flat = [numbers[step] for step in shape.steps if isinstance(step, int)]
            found.append([(x, -y) for x, y in zip(flat[::2], flat[1::2], strict=True)])
    scale = numbers[shown.bar.scale]
    (ax, ay), (bx, by) = next(line for line in (found if style == "chisel" else lines_raw(shown, numbers, "chisel")))
    mid = ((ax + bx) / 2, (ay + by) / 2)
    return [[((x - mid[0]) / scale, (y - mid[1]) / scale) for x, y in line] for line in found]


def lines_raw(shown, numbers, style):
    shapes = [s for s in shown.shapes if isinstance(s, Outline) and s.style == style]
    flats = [[numbers[step] for step in s.steps if isinstance(step, int)] for s in shapes]
    return [[(x, -y) for x, y in zip(flat[::2], flat[1::2], strict=True)] for flat in flats]


@pytest.mark.parametrize("drill", corners())
def test_the_end_view_shows_web_chisel_edge_and_corners_in_true_size(drill):
    values = facts(**drill)
    (inner_1, outer_1), (inner_2, outer_2) = lines("end_view", values, "lip")
    ((first, last),) = lines("end_view", values, "chisel")
    assert inner_1[1] - inner_2[1] == pytest.approx(values["web"])
    assert math.dist(first, last) == pytest.approx(values["chisel_edge_length"])
    assert math.hypot(*outer_1) == pytest.approx(values["diameter"] / 2)
    assert outer_1 == pytest.approx((-outer_2[0], -outer_2[1]))
    chisel_inwards = math.atan2(inner_2[1] - inner_1[1], inner_2[0] - inner_1[0])
    lip_outwards = math.atan2(outer_1[1] - inner_1[1], outer_1[0] - inner_1[0])
    assert math.degrees(lip_outwards - chisel_inwards) == pytest.approx(values["chisel_edge_angle"])


@pytest.mark.parametrize("drill", corners())
def test_the_side_view_shows_lip_length_and_point_angle_in_true_size(drill):
    values = facts(**drill)
    (inner_1, outer_1), (_, outer_2) = lines("side_view", values, "lip")
    assert math.dist(inner_1, outer_1) == pytest.approx(values["lip_length"])
    slope = math.atan2(outer_1[0] - inner_1[0], inner_1[1] - outer_1[1])
    assert 2 * math.degrees(slope) == pytest.approx(values["point_angle"])
    assert outer_2 == pytest.approx((-outer_1[0], outer_1[1]))
    ((first, last),) = lines("side_view", values, "chisel")
    assert first[1] == pytest.approx(last[1])
    foreshortened = values["chisel_edge_length"] * math.cos(math.radians(180 - values["chisel_edge_angle"]))
    assert last[0] - first[0] == pytest.approx(foreshortened)


def test_the_point_height_dimension_spans_the_sharp_cone():
    values = facts(**USUAL)
    shown = scene("side_view")
    numbers = coordinates(shown, values)
    scale = numbers[shown.bar.scale]
    tips = [line[0] for line in lines_raw(shown, numbers, "arrow")]
    columns = {}
    for x, y in tips:
        columns.setdefault(round(x, 6), []).append(y)
    heights = [abs(ys[0] - ys[1]) / scale for ys in columns.values() if len(ys) == 2]
    # DERIVED: h = (D/2)/tan 59°
    assert any(h == pytest.approx(5 / math.tan(math.radians(59))) for h in heights)


def test_the_flank_is_a_plane_through_the_lip_and_the_chisel_edge():
    import sympy as sp

    from drillpoint.drawing import plain_point as point

    chisel, corner = point.chisel_corner, point.outer_corner
    along_lip = (point.on_flank(chisel) - point.on_flank(corner)) / (corner[0] - chisel[0])
    assert sp.simplify(along_lip - sp.cot(point.kappa)) == 0
    other_end = point.half_turn(chisel)
    assert sp.simplify(point.on_flank(other_end) - point.on_flank(chisel)) == 0


def test_the_drawing_fits_its_frame_whatever_the_size():
    small, large = (facts(**{**USUAL, "diameter": d, "web": 0.15 * d}) for d in (1.0, 40.0))
    shown = scene("end_view")
    sheets = [coordinates(shown, drill) for drill in (small, large)]
    # DERIVED: forty times the drill is drawn at a fortieth of the scale, and nothing else changes.
    assert sheets[0].pop(shown.bar.scale) == pytest.approx(40 * sheets[1].pop(shown.bar.scale))
    assert sheets[0] == pytest.approx(sheets[1])


def test_every_scene_is_made_of_svg_letters_and_places():
    for name in ("end_view", "side_view"):
        shown = scene(name)
        count = len(coordinates(shown, facts(**USUAL)))
        for shape in shown.shapes:
            if isinstance(shape, Outline):
                assert all(re.fullmatch(r"[MLCAZ]|0 [01] 1", s) for s in shape.steps if isinstance(s, str))
                assert all(0 <= s < count for s in shape.steps if isinstance(s, int))
