"""Signs seen at work: what they point to, and what readings say to them."""

from __future__ import annotations

import pytest

from drillpoint.errors import UnknownGiven
from drillpoint.ground import Readings, find_faults
from drillpoint.ground.diagnosis.fault import kinds
from drillpoint.ground.diagnosis.signs import signs


@pytest.mark.parametrize("sign", signs().values(), ids=signs())
def test_signs_point_to_faults_there_are(sign: object) -> None:
    assert set(getattr(sign, "points_to")) <= set(kinds())  # noqa: B009


@pytest.mark.parametrize(
    ("sign", "first"),
    [
        ("one_ribbon", "unequal_lips"),
        ("dust", "negative_relief"),
        ("squeal", "negative_relief"),
        ("split_web", "too_little_relief"),
        ("chipped_lips", "too_much_relief"),
    ],
)
def test_a_sign_alone_says_what_to_measure_and_calls_nothing(sign: str, first: str) -> None:
    report = find_faults(Readings(), signs=[sign])
    assert report.faults == ()
    assert kinds()[first].name in report.signs[0]
    assert "do not settle it" in report.signs[0]


def test_a_sign_that_fits_a_reading() -> None:
    report = find_faults(Readings(lip_relief=2, feed=0.2, diameter=10), signs=["dust"])
    assert report.signs == ("You saw dust instead of ribbons. It fits: too little relief: the heel rubs.",)


def test_a_sign_that_the_readings_rule_out() -> None:
    report = find_faults(Readings(lip_relief=12, chisel_edge_angle=125), signs=["chipped_lips"])
    assert report.signs[0].startswith("You saw lips that chipped. The readings rule out")
    assert "Too much feed" in report.signs[0]


def test_two_equal_ribbons_are_good() -> None:
    assert "as they should" in find_faults(Readings(), signs=["two_ribbons"]).signs[0]


def test_an_unknown_sign_gets_the_nearest() -> None:
    with pytest.raises(UnknownGiven, match="did you mean 'one_ribbon'"):
        find_faults(Readings(), signs=["one_ribon"])
