"""The sizes in which a shop has its drills."""

import itertools

import pytest

from drillpoint.course.shop_sizes import shop_sizes
from drillpoint.errors import InstructorError


def inches(series):
    return [size.value / 25.4 for size in shop_sizes(series)]


# From memory: sizes that every table of drills has.
@pytest.mark.parametrize(
    ("series", "shown", "mm"),
    [
        ("number", "number 1 drill (0.2280 in)", 5.7912),
        ("number", "number 7 drill (0.2010 in)", 5.1054),
        ("number", "number 29 drill (0.1360 in)", 3.4544),
        ("number", "number 60 drill (0.0400 in)", 1.016),
        ("letter", "letter A drill (0.234 in)", 5.9436),
        ("letter", "letter E drill (0.250 in)", 6.35),
        ("letter", "letter F drill (0.257 in)", 6.5278),
        ("letter", "letter Z drill (0.413 in)", 10.4902),
        ("fractional", "7/8 in", 22.225),
        ("fractional", "1/16 in", 1.5875),
        ("fractional", "1 in", 25.4),
        ("metric", "8.5 mm", 8.5),
    ],
)
def test_known_sizes(series, shown, mm):
    found = {size.shown: size.value for size in shop_sizes(series)}
    assert found[shown] == pytest.approx(mm, abs=1e-9)


def test_series_rise_without_gaps_or_doubles():
    for series, count in (("number", 60), ("letter", 26), ("fractional", 61), ("metric", 49)):
        sizes = inches(series)
        assert len(sizes) == count
        assert all(a < b for a, b in itertools.pairwise(sizes))
    # The letters go on where the numbers end, and each step is a small one.
    both = inches("number") + inches("letter")
    assert all(0 < b - a < 0.0165 for a, b in itertools.pairwise(both))


def test_from_and_to_are_read_as_a_shop_writes_them():
    assert [size.shown for size in shop_sizes("metric", 3, "4.5 mm")] == ["3 mm", "3.5 mm", "4 mm", "4.5 mm"]
    assert [size.shown for size in shop_sizes("fractional", "7/16 in", "1/2 in")] == [
        "7/16 in", "29/64 in", "15/32 in", "31/64 in", "1/2 in",
    ]  # fmt: skip
    assert shop_sizes("letter", "10 mm")[0].shown == "letter X drill (0.397 in)"


def test_what_is_not_there():
    with pytest.raises(InstructorError, match="'whitworth' is not known; known are metric, fractional, number, letter"):
        shop_sizes("whitworth")
    with pytest.raises(InstructorError, match="there is no letter size from 20 mm to the largest"):
        shop_sizes("letter", "20 mm")
