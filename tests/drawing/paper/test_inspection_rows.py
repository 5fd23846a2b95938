"""The lines of the inspection sheet: every reading with its place, its error and its limit, in either unit."""

import re

import pytest

from drillpoint.drawing.paper.inspection_rows import rows, whose
from drillpoint.ground import Limits
from drillpoint.ground.diagnosis.limits import usual_limits
from drillpoint.quantities import QUANTITIES


def by_term(units, **limits):
    return {row.term: row for row in rows(Limits(**limits), units)}


def test_each_reading_says_place_unit_and_error():
    terms = [row.term for row in rows(Limits(), "mm")]
    assert terms[:5] == ["half angle", "point angle", "lip relief", "lip length", "difference of the lip heights"]
    assert len(set(terms)) == len(terms) >= 12
    for row in rows(Limits(), "mm"):
        assert row.place and row.unit in ("mm", "°")
        assert "lip 1" not in row.term + row.place
        # Nobody has said how far off a run-out is read.
        assert bool(row.error) == (row.term != "run-out")
        assert not re.search(r"[{}]|None|nan", row.limit)


def test_what_each_lip_has_is_read_twice():
    assert [row.term for row in rows(Limits(), "mm") if row.of_each_lip] == ["half angle", "lip relief", "lip length"]


def test_a_relief_says_where_and_in_which_plane():
    place = by_term("mm")["lip relief"].place
    assert place == "at the outer corner of the lip, in the plane that touches the cylinder there"


@pytest.mark.parametrize(
    ("units", "error", "limit"),
    # DERIVED: 0.02/25.4 = 0.0008, 0.05/25.4 = 0.0020.
    [("mm", "± 0.02 mm", "at most 0.05 mm"), ("inch", "± 0.0008 in", "at most 0.002 in")],
)
def test_lengths_are_in_the_unit_asked_for(units, error, limit):
    row = by_term(units)["difference of the lip heights"]
    assert (row.error, row.limit) == (error, limit)
    assert by_term(units)["chisel edge angle"].limit == "120° to 135°"


def test_limits_of_the_shop_are_printed_and_called_so():
    own = by_term("mm", lip_height_difference=0.03, point_angle=135)
    assert own["difference of the lip heights"].limit == "at most 0.03 mm"
    assert own["point angle"].limit == "135° ± 2°"
    said = dict(whose(Limits(lip_height_difference=0.03)))
    assert "difference of the lip heights" in said["as asked for here"]
    assert "offset of the point" in said["shop's choice"]


def test_each_limit_has_its_source():
    named = {term for _, terms in whose(Limits()) for term in terms}
    assert named == {row.term for row in rows(Limits(), "mm") if re.search(r"\d", row.limit)}
    assert {source for source, _ in whose(Limits())} == {
        row.whose for name, row in usual_limits().items() if name != "turn_tolerance"
    }


def test_an_error_is_the_usual_tools():
    # SOURCE: common practice, as reading_errors.toml says: a rule to 0.25 mm, a calliper to 0.05 mm.
    assert by_term("mm")["lip length"].error == "± 0.25 mm"
    assert by_term("inch")["lip length"].error == "± 0.01 in"
    assert by_term("mm")["web thickness"].error == "± 0.05 mm"
    assert QUANTITIES["web"].term == "web thickness"
