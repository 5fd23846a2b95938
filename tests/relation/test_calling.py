"""What a call accepts, what it refuses, and how that is said."""

from __future__ import annotations

import copy
import inspect
import math
import pickle
from decimal import Decimal
from fractions import Fraction

import numpy as np
import pytest

from drillpoint.errors import Impossible, LearnerError, MissingGiven, OutOfRange, UnknownGiven
from drillpoint.relation import ReadAs
from drillpoint.relations import (
    BOOK,
    chisel_edge_angle,
    chisel_edge_length,
    drilling_time,
    lip_inclination,
    lip_length,
    normal_rake,
    point_height,
    relief_at_radius,
    spot_depth,
)

USUAL = {"diameter": 10, "point_angle": 118, "web": 1.5, "chisel_edge_angle": 125}


def _refusal(kind: type[LearnerError], relation: object = lip_length, /, **givens: object) -> str:
    with pytest.raises(kind) as caught:
        relation(**givens)  # type: ignore[operator]
    return str(caught.value)


def test_a_value_is_a_number_with_a_unit() -> None:
    length = lip_length(**USUAL)
    assert isinstance(length, float)
    assert (length.unit, length.notes) == ("mm", ())
    assert repr(length) == "5.15451 mm"
    assert pickle.loads(pickle.dumps(length)) == length == copy.copy(length)  # noqa: S301
    assert repr(chisel_edge_angle(point_angle=118, axial_relief=12)) == "109.481°"


@pytest.mark.parametrize("ten", [10, 10.0, Fraction(10), Decimal(10), np.float64(10), np.int64(10), np.array(10.0)])
def test_any_number_will_do(ten: object) -> None:
    assert float(point_height(diameter=ten, point_angle=118)) == pytest.approx(3.0043, abs=5e-5)


@pytest.mark.parametrize("odd", ["10", "3/8", None, True, b"10", float("nan"), float("inf"), 1j, object()])
def test_no_number_is_refused(odd: object) -> None:
    assert "diameter" in _refusal(OutOfRange, point_height, diameter=odd, point_angle=118)


def test_misspelt_and_foreign_keywords_name_the_nearest() -> None:
    assert "did you mean 'point_angle'" in _refusal(UnknownGiven, **{**USUAL, "point_angel": 118})
    assert "lip_length.solve" in _refusal(UnknownGiven, **USUAL, lip_length=5)
    with pytest.raises(TypeError):
        lip_length(**USUAL, wbe=1)
    with pytest.raises(TypeError):
        lip_length(10, 118, 1.5, 125)


def test_missing_givens_are_named_with_what_would_serve() -> None:
    said = _refusal(MissingGiven, diameter=10, point_angle=118, chisel_edge_angle=125)
    assert "needs web" in said
    assert "web_ratio and diameter" in said


def test_a_given_said_twice_is_refused() -> None:
    assert "does not need web_ratio" in _refusal(UnknownGiven, **USUAL, web_ratio=0.15)


def test_whole_and_half_angle_and_radians() -> None:
    assert (
        _refusal(OutOfRange, **{**USUAL, "point_angle": 200})
        == "point_angle 200° is outside 60° to 179°; a 118° point is usual"
    )
    assert "half the point angle; give the whole, 118°" in _refusal(OutOfRange, **{**USUAL, "point_angle": 59})
    assert "radians is 118°" in _refusal(OutOfRange, **{**USUAL, "point_angle": math.radians(118)})
    assert "radians is 125°" in _refusal(OutOfRange, **{**USUAL, "chisel_edge_angle": math.radians(125)})


def test_inches_among_millimetres_give_themselves_away() -> None:
    said = _refusal(Impossible, **{**USUAL, "diameter": 0.375})
    assert "web 1.5 mm is not thinner than the drill" in said
    assert "0.375 in = 9.525 mm" in said
    # Consistently small sizes may be a real small drill, so they are only remarked on.
    small = point_height(diameter=0.375, point_angle=118)
    assert any("0.375 in would be 9.525 mm" in note for note in small.notes)


def test_impossible_drills_say_why() -> None:
    assert "no lip is left" in _refusal(Impossible, **{**USUAL, "web": 8.5})
    said = _refusal(Impossible, relief_at_radius, radius=6, diameter=10, web=1.5, point_angle=118, lip_relief=12)
    assert "outside the drill" in said
    said = _refusal(Impossible, relief_at_radius, radius=0.5, web=1.5, point_angle=118, axial_relief=7)
    assert "inside the web" in said


def test_relief_inside_the_chisel_edge_is_remarked_on() -> None:
    inner = relief_at_radius(radius=0.755, web=1.5, point_angle=118, axial_relief=7)
    assert any("inside the corner of the chisel edge" in note for note in inner.notes)


def test_acute_chisel_edge_angle_is_read_as_its_supplement() -> None:
    acute = lip_length(**{**USUAL, "chisel_edge_angle": 55})
    assert acute == pytest.approx(lip_length(**USUAL), rel=1e-12)
    assert acute.notes == ("chisel edge angle 55° is acute and was read as 125° (obtuse)",)
    # 90 to 100 is a real, if bad, point: never read as acute.
    assert all("acute" not in note for note in chisel_edge_length(web=1.5, chisel_edge_angle=95).notes)


def test_outside_the_usual_is_remarked_on() -> None:
    flat = point_height(diameter=10, point_angle=160)
    assert flat.notes == ("point angle 160° is outside the usual 60° to 150°",)


def test_negative_relief_square_to_the_lip_is_remarked_on() -> None:
    bad = chisel_edge_angle(point_angle=118, lip_relief=0, web_ratio=0.15)
    assert bad < 90
    assert any("rubs" in note for note in bad.notes)


def test_arrays_broadcast_and_are_checked() -> None:
    lengths = lip_length(**{**USUAL, "diameter": np.array([[5.0], [10.0]]), "web": np.array([0.5, 1.0, 1.5])})
    assert lengths.shape == (2, 3)
    assert lengths[1, 2] == pytest.approx(5.154506, abs=1e-6)
    with pytest.warns(ReadAs, match="read as acute"):
        both = chisel_edge_length(web=1.5, chisel_edge_angle=[55.0, 125.0])
    assert both[0] == pytest.approx(both[1])
    assert "point_angle 59°" in _refusal(OutOfRange, **{**USUAL, "point_angle": [118.0, 59.0]})
    assert "web 12 mm" in _refusal(Impossible, **{**USUAL, "web": [1.0, 12.0]})
    assert "not one" in _refusal(OutOfRange, **{**USUAL, "web": [1.0, "x"]})
    assert "nan" in _refusal(OutOfRange, **{**USUAL, "web": [1.0, math.nan]})
    assert "180°" in _refusal(OutOfRange, chisel_edge_length, web=1.5, chisel_edge_angle=[125.0, 180.0])
    with pytest.raises(ValueError, match="broadcast"):
        lip_length(**{**USUAL, "diameter": [9.0, 10.0, 11.0], "web": [1.0, 1.5]})


def test_unchecked_is_the_bare_formula() -> None:
    # DERIVED: the half angle put in for the whole.
    assert point_height.unchecked(diameter=10, point_angle=59) == pytest.approx(8.83747, abs=5e-6)
    assert math.isnan(lip_length.unchecked(diameter=1, point_angle=118, web=1.5, chisel_edge_angle=125))
    with pytest.raises(UnknownGiven):
        point_height.unchecked(diameter=10)


def test_sensitivity_goes_through_what_is_worked_out_first() -> None:
    by_hand = 1e-5
    own = {"point_angle": 118, "web": 1.5, "diameter": 10}
    slope = chisel_edge_angle.sensitivity("lip_relief", lip_relief=12, **own)
    up, down = (chisel_edge_angle(lip_relief=12 + s, **own) for s in (by_hand, -by_hand))
    assert slope == pytest.approx((up - down) / (2 * by_hand), rel=1e-6)
    by_web = chisel_edge_angle.sensitivity("web", lip_relief=12, **own)
    thick, thin = (chisel_edge_angle(lip_relief=12, **{**own, "web": 1.5 + s}) for s in (by_hand, -by_hand))
    assert by_web == pytest.approx((thick - thin) / (2 * by_hand), rel=1e-6)
    with pytest.raises(UnknownGiven, match="not among the givens"):
        chisel_edge_angle.sensitivity("feed", lip_relief=12, **own)


@pytest.mark.parametrize("relation", BOOK.values(), ids=BOOK)
def test_signature_and_help_are_the_quantities(relation: object) -> None:
    from drillpoint.relation import Relation

    assert isinstance(relation, Relation)
    assert tuple(inspect.signature(relation).parameters) == relation.givens
    text = relation.help
    for q in relation.quantities:
        assert q.name in text
        assert q.term in text
    assert all(source in text for source in relation.sources)


def test_givens_that_may_be_left_out_are_said() -> None:
    own = {"shoulder_depth": 25, "diameter": 20, "point_angle": 118, "cutting_speed": 20, "feed": 0.25}
    # DERIVED: 25 mm and the tip of a 20 mm drill at 20 m/min and 0.25 mm a turn.
    short = drilling_time(**own)
    assert short == pytest.approx(0.390, abs=5e-4)
    assert short.notes[:2] == ("approach was taken as 0 mm", "overrun was taken as 0 mm")
    full = drilling_time(**own, approach=2, overrun=1)
    assert not any("was taken as" in note for note in full.notes)
    assert full > short
    assert drilling_time.solve("feed", drilling_time=short, **{n: v for n, v in own.items() if n != "feed"}) == (
        pytest.approx(0.25, rel=1e-9)
    )
    assert drilling_time.sensitivity("feed", **own) == pytest.approx(-float(short) / 0.25, rel=1e-9)
    assert "taken as 0 mm" in " ".join(drilling_time.worked(**own).notes)


def test_a_spot_made_with_a_drill_has_the_drills_angle() -> None:
    assert spot_depth(mouth_diameter=11, point_angle=90) == pytest.approx(5.50, abs=5e-3)
    assert spot_depth(mouth_diameter=11, point_angle=142) == spot_depth(mouth_diameter=11, countersink_angle=142)


def test_a_size_that_is_not_needed_still_serves_the_checks() -> None:
    inner = lip_inclination(radius=1.5, web=1.5, point_angle=118)
    assert lip_inclination(radius=1.5, diameter=10, web=1.5, point_angle=118) == inner
    said = _refusal(Impossible, lip_inclination, radius=6, diameter=10, web=1.5, point_angle=118)
    assert "outside the drill" in said
    # What says the same thing twice is refused.
    twice = {"point_angle": 118, "lip_relief": 12, "web_ratio": 0.15, "web": 1.5, "diameter": 10}
    assert "leave one of them out" in _refusal(UnknownGiven, chisel_edge_angle, **twice)


def test_a_place_at_the_very_limit_has_the_limits_value() -> None:
    """Half a web from the axis the face goes ahead flat over the work: -90°, as its stated limit says."""
    place = {"web": 1.5, "point_angle": 118, "local_helix": 10}
    assert normal_rake(radius=0.75, **place) == pytest.approx(-90, abs=1e-9)
    assert normal_rake(radius=np.array([0.75, 2.0]), **place)[0] == pytest.approx(-90, abs=1e-9)
