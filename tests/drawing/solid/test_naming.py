"""Names beside a solid."""

import re
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.drawing import solid_picture
from drillpoint.drawing.solid.naming import ROW, Named, named, spread, written
from tests.drawing.solid.points import NAMES, points, shown_point

USUAL = {"lip", "outer corner", "chisel edge", "heel", "margin", "land", "flute", "web"}


def spots(name, text):
    """The places of all names with a text."""
    return np.array([spot.at for one in named(shown_point(name)) if one.text == text for spot in one.spots])


@pytest.mark.parametrize("name", NAMES)
def test_every_point_has_the_usual_names_and_those_of_its_own_faces(name):
    texts = {one.text for one in named(shown_point(name))}
    assert texts >= USUAL
    assert "flank" in texts or {"primary facet", "secondary facet"} <= texts
    thinned = points()[name].inspect().thinning is not None
    assert ("notch" in texts) == ("thinned lip" in texts) == thinned


def test_they_point_at_what_they_name():
    point = points()["plain"]
    radius, web = point.flute.radius, point.inspect().web
    # DERIVED: the corners at the full diameter, the lips in the end view half a web beside the axis
    assert np.hypot(*spots("plain", "outer corner").T[:2]) == pytest.approx([radius, radius], rel=1e-3)
    assert np.abs(spots("plain", "lip")[:, 1]) == pytest.approx([web / 2, web / 2], rel=1e-3)
    assert np.hypot(*spots("plain", "margin").T[:2]) == pytest.approx(radius, rel=5e-3)
    from_axis = np.hypot(*spots("plain", "web").T[:2])
    # DERIVED: the wall of the flute comes no nearer to the axis than half a web; a triangle's middle is a little off
    assert (from_axis < 1.2 * web / 2).all()
    assert (np.hypot(*spots("plain", "flute").T[:2]) > radius / 2).all()


@given(st.lists(st.floats(0, 400), max_size=15).map(sorted))
def test_heights_are_a_row_apart_within_limits_and_as_wanted_where_there_is_room(wanted):
    at = spread(wanted, ROW, 480 - ROW)
    assert all(higher + ROW <= lower + 1e-9 for higher, lower in pairwise(at))
    assert all(ROW - 1e-9 <= place <= 480 - ROW + 1e-9 for place in at)
    alone = all(lower - higher >= ROW for higher, lower in pairwise(wanted))
    if alone and wanted and wanted[0] >= ROW:
        assert at == wanted


def test_a_name_stands_on_the_side_of_its_place_outside_the_drill():
    left, right = written([(Named("a", ()), 200.0, 90.0), (Named("b", (), above=True), 300.0, 90.0)], 240, 150, 480)
    assert (left.text, left.right, left.to) == ("a", False, (200.0, 90.0))
    assert left.x < 240 - 150 and right.x > 240 + 150
    assert (left.y, right.y) == (90.0, 90.0 - ROW)


def test_the_picture_writes_what_is_seen_and_its_words_say_so():
    picture = solid_picture(points()["plain"], view="end", labels=True)
    texts = re.findall(r"<text[^>]*>([^<]+)</text>", picture.svg)
    assert {"lip", "outer corner", "chisel edge", "web", "flank", "heel", "flute"} <= set(texts)
    assert "margin" not in texts  # it is behind the corners
    assert texts.count("lip") == 2
    assert "Named on the right, from the top down: lip, outer corner, chisel edge, web, flank, heel." in picture.alt
    assert "Named" not in solid_picture(points()["plain"], view="end").alt


def test_from_behind_nothing_of_the_point_is_named():
    from drillpoint.drawing.solid.picture import still
    from drillpoint.drawing.solid.shown import View

    behind = still(shown_point("plain"), View("shank", "from the shank", 0, -80), "", "mm", labels=True)
    assert not re.search(">(lip|chisel edge|flank|outer corner|web)</text>", behind.svg)
