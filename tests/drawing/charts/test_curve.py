import math

import pytest

from drillpoint.drawing.charts.curve import trace
from drillpoint.errors import Impossible, OutOfRange
from drillpoint.quantities import QUANTITIES, Span

ANGLE = QUANTITIES["normal_rake"]  # possible from -90 to 90


def test_a_curve_knows_where_it_turns_and_passes_a_level():
    curve = trace("", ANGLE, lambda x: 5 - (x - 2) ** 2, Span(0, 5))
    ((place, height),) = curve.turnings
    # DERIVED: the parabola's own top and roots; the top of a smooth curve is found to half the digits of a float.
    assert place == pytest.approx(2, abs=1e-7)
    assert height == pytest.approx(5, abs=1e-12)
    assert curve.crossings(1) == pytest.approx((4,), abs=1e-9)  # at 0 it only starts there
    assert curve.crossings(4) == pytest.approx((1, 3), abs=1e-9)
    assert curve.crossings(5.1) == ()


def test_a_straight_or_level_curve_turns_nowhere():
    assert trace("", ANGLE, lambda x: 3 * x, Span(0, 5)).turnings == ()
    assert trace("", ANGLE, lambda x: 0.1 + 0 * x, Span(0, 5)).turnings == ()


def test_a_curve_ends_where_nothing_is_possible_beyond():
    def work(x):
        if x < 1:
            raise Impossible("no such drill")
        return 100 * (x - 1) / 3  # leaves what is possible, 90, at 3.7

    curve = trace("", ANGLE, work, Span(0, 5))
    assert (curve.x[0], curve.x[-1]) == pytest.approx((1, 3.7), abs=1e-9)  # DERIVED
    assert not any(math.isnan(y) for y in curve.y)
    assert list(curve.x) == sorted(curve.x)


def test_dividing_by_nothing_ends_a_curve_too():
    curve = trace("", ANGLE, lambda x: 1 / x, Span(0, 5))
    assert curve.x[0] == pytest.approx(1 / 90)  # DERIVED: where 1/x comes down to the 90 that is possible


def test_where_nothing_is_possible_the_reason_is_said():
    def refuse(_):
        raise OutOfRange("point_angle 200° is outside 60° to 179°")

    with pytest.raises(OutOfRange, match="point_angle 200°"):
        trace("", ANGLE, refuse, Span(0, 5))
    with pytest.raises(Impossible, match="normal rake is outside what is possible, -90° to 90°, all the way"):
        trace("", ANGLE, lambda x: 91 + x, Span(0, 5))
