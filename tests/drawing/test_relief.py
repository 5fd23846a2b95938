"""The unrolled relief, measured on its coordinates against the relations and a ground point."""

import math

import numpy as np
import pytest

from drillpoint.drawing.draw import coordinates, draw, drawn_from, scene
from drillpoint.drawing.scene import Outline
from drillpoint.drawing.working import values_of
from drillpoint.errors import LearnerError
from drillpoint.ground import Flute, GroundPoint, PlaneFlank
from drillpoint.ground.stations import first_contact
from drillpoint.relations import heel_clearance, relief_at_radius, working_relief
from tests.drawing.drills import anywhere_in, corners_of

USUAL = {"diameter": 10.0, "point_angle": 118.0, "web": 1.5, "lip_relief": 12.0, "feed": 0.2}


def values(**givens):
    return values_of(scene("relief"), {**USUAL, **givens})


def numbers(**givens):
    drawn = drawn_from("relief", values(**givens))
    return {number.name: drawn.coordinates[number.place] for number in drawn.scene.numbers}


def lines(style, **givens):
    """The straight lines of a style that are drawn, in mm from the lip: behind it, and back from its height."""
    drawn = drawn_from("relief", values(**givens))
    places = drawn.coordinates
    found = []
    for shape in drawn.scene.shapes:
        if isinstance(shape, Outline) and shape.style == style and (shape.when < 0 or places[shape.when] > 0):
            flat = [places[step] for step in shape.steps if isinstance(step, int)]
            found.append([(x, y) for x, y in zip(flat[::2], flat[1::2], strict=True)])
    scale = places[drawn.scene.bar.scale]
    work = max((drawn for drawn in found if len(drawn) == 4), key=len, default=None) if style == "edge" else None
    lip = work[2] if work else (72.0, 222.0)
    return [[((x - lip[0]) / scale, (lip[1] - y) / scale) for x, y in line] for line in found]


def flank(**givens):
    return max(lines("edge", **givens), key=len)


def ground(drill):
    flute = Flute(diameter=drill["diameter"], web=drill["web"], point_angle=drill["point_angle"])
    return GroundPoint(flute, PlaneFlank(point_angle=drill["point_angle"], lip_relief=drill["lip_relief"]))


@pytest.mark.parametrize("share", [0.5, 0.35, 0.22])
@pytest.mark.parametrize("changed", [{}, {"lip_relief": 25.0}, {"lip_relief": 5.0, "point_angle": 135.0}])
def test_the_flank_drawn_is_the_one_ground(share, changed):
    drill = {**USUAL, **changed}
    radius = share * drill["diameter"]
    lip = ground(drill).lips[0]
    place = lip.at_radius(np.array([radius]))
    start = math.atan2(float(place.y[0]), float(place.x[0]))
    for way, back in flank(**changed, radius=radius):
        angle = start - way / radius
        x, y = np.array([radius * math.cos(angle)]), np.array([radius * math.sin(angle)])
        assert back == pytest.approx(float(place.z[0]) - float(lip.own.height(x, y)[0]), abs=1e-7)


def that_cut():
    """Drills of the ranges that can be ground and cut: with relief at the corner, and square to the lip."""
    known = [values_of(scene("relief"), drill) for drill in anywhere_in("relief", 40)]
    return [drill for drill in known if drill["lip_relief"] > 1 and drill["axial_relief"] > 0]


@pytest.mark.parametrize("drill", that_cut())
def test_the_flank_first_touches_the_work_where_the_ground_point_does(drill):
    given = {name: drill[name] for name in (*USUAL, "radius")}
    met = first_contact(ground(drill).lips[0], drill["radius"], drill["feed"], math.radians(130))
    touching = numbers(**given)["touching"]
    if met is None:
        assert touching > 130
    else:
        assert touching == pytest.approx(met, abs=2e-3)


@pytest.mark.parametrize("relief", [3.0, 12.0, 25.0])
def test_heel_clearance_and_working_relief_are_those_of_the_book(relief):
    known = values(lip_relief=relief)
    drawn = numbers(lip_relief=relief)
    clear = heel_clearance(point_angle=118, axial_relief=known["axial_relief"], web_ratio=0.15)
    assert drawn["level"] == pytest.approx(float(clear))
    assert drawn["level_way"] == pytest.approx(math.radians(float(clear)) * 5)
    left = working_relief(relief_at_radius=relief, feed_relief_loss=math.degrees(math.atan(0.2 / (math.pi * 10))))
    assert known["working_relief"] == pytest.approx(float(left))


def test_the_work_comes_down_by_the_feed_in_a_full_turn():
    ahead, lip, far = next(line for line in lines("edge") if len(line) == 4)[1:]
    # DERIVED: the other lip went by half a turn ago, half a feed higher; a straight line falls by the feed in a turn.
    assert ahead == pytest.approx((0, 0.1))
    assert lip == pytest.approx((0, 0))
    assert far[1] / far[0] == pytest.approx(0.2 / (math.pi * 10))


def test_the_place_is_the_corner_unless_a_radius_is_given():
    assert values()["radius"] == 5.0
    inside = values(radius=2.0)
    here = relief_at_radius(radius=2, web=1.5, point_angle=118, axial_relief=inside["axial_relief"])
    assert inside["relief_at_radius"] == pytest.approx(float(here))
    assert "where the land ends here is not drawn" in draw("relief", **USUAL, radius=2.0).svg


def test_a_chisel_edge_angle_serves_in_place_of_a_relief():
    given = {name: value for name, value in USUAL.items() if name != "lip_relief"}
    # DERIVED: the chisel edge that a plane flank of 12° gives
    assert values_of(scene("relief"), {**given, "chisel_edge_angle": 101.64})["lip_relief"] == pytest.approx(
        12, abs=0.01
    )


@pytest.mark.parametrize(
    ("relief", "said", "mark"),
    [
        (12.0, "before the heel at 78°: a single plane flank so wide rubs", "rubs here"),
        (25.0, "keeps clear of the work over the whole land", "clear of the work"),
        (0.1, "the flank rubs straight behind the lip", "no relief left at work"),
        (-4.0, "stands ahead of the lip at once", "no relief left at work"),
    ],
)
def test_what_happens_behind_the_lip_is_said_and_marked(relief, said, mark):
    picture = draw("relief", **{**USUAL, "lip_relief": relief})
    assert said in picture.alt
    assert f">{mark}" in picture.svg
    assert ("rubs here" in picture.svg) == (relief < 25)


def test_the_scenes_own_numbers_can_be_hidden():
    picture = draw("relief", **USUAL, hide=["level", "touching"])
    assert "40.5" not in picture.svg + picture.alt
    assert "39.3" not in picture.svg + picture.alt
    with pytest.raises(LearnerError, match="did you mean 'touching'"):
        draw("relief", **USUAL, hide=["touchin"])


def test_no_number_is_none_anywhere_in_the_ranges():
    for drill in corners_of("relief") + anywhere_in("relief", 200):
        known = values_of(scene("relief"), drill)
        assert all(math.isfinite(c) for c in coordinates(scene("relief"), known)), drill
