"""One number without its unit."""

import pytest

from drillpoint.course.numeral import begins_at, is_plain, numeral_at, two_readings
from drillpoint.course.typed import Unreadable


def test_a_number_is_read_where_it_stands():
    found = numeral_at("from 1 7/8 in", 5)
    assert (found.value, found.shown, found.start, found.end) == (1.875, "1 7/8", 5, 10)
    assert not found.is_whole
    assert numeral_at("18 mm", 0).is_whole


@pytest.mark.parametrize(("text", "place"), [("x", 0), ("1.2.3", 3), ("1/0", 2), ("1,234", 1)])
def test_what_has_no_single_meaning_is_refused_where_it_fails(text, place):
    with pytest.raises(Unreadable) as caught:
        numeral_at(text, 0)
    assert caught.value.place == place


@pytest.mark.parametrize("vulgar", "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞")
def test_printed_fractions_have_their_value(vulgar):
    import unicodedata

    assert numeral_at(vulgar, 0).value == pytest.approx(unicodedata.numeric(vulgar), rel=1e-15)
    assert numeral_at(f"2{vulgar}", 0).value == pytest.approx(2 + unicodedata.numeric(vulgar), rel=1e-15)


@pytest.mark.parametrize(
    ("decimal", "doubtful"),
    [("1,234", True), ("12,345", True), ("0,375", False), ("1234,567", False), ("1,23", False), ("1.234", False)],
)
def test_a_comma_before_three_digits_is_doubtful(decimal, doubtful):
    assert bool(two_readings(decimal)) is doubtful


def test_plain_numbers():
    assert [is_plain(text) for text in ("5", "-5.2", ",5", "7/8", "1e3", "1 7/8")] == [True] * 3 + [False] * 3
    assert begins_at("a 5", 2)
    assert not begins_at("a 5", 0)
