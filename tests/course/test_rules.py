"""Deadlines and what lateness takes off."""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.rules import NO_RULES, Extend, Rules, time_of

DEADLINE = datetime(2026, 3, 12, 20, tzinfo=UTC)
RULES = Rules("r.toml", deadline=DEADLINE, closes=DEADLINE + timedelta(days=7), penalty_per_day=30)


@pytest.mark.parametrize(
    ("hours", "late"), [(-1, 0), (0, 0), (0.01, 1), (24, 1), (24.1, 2), (24 * 6, 6)]
)  # DERIVED: each day begun counts
def test_days_late(hours, late):
    assert RULES.days_late("s01", DEADLINE + timedelta(hours=hours)) == late


def test_what_is_kept():  # DERIVED: 30 % of the points a day, never below nothing
    assert [RULES.kept(days) for days in (0, 1, 2, 3, 4, 50)] == pytest.approx([1, 0.7, 0.4, 0.1, 0, 0])


def test_an_extension_is_for_one_student():
    own = Rules(**{name: getattr(RULES, name) for name in ("file", "deadline", "closes", "penalty_per_day")},
                extend=(Extend("ill", 3, "s02", DEADLINE + timedelta(days=10)),))  # fmt: skip
    late = DEADLINE + timedelta(days=8)
    assert (own.days_late("s01", late), own.too_late("s01", late)) == (8, True)
    assert (own.days_late("s02", late), own.too_late("s02", late)) == (0, False)
    assert own.days_late("s02", DEADLINE + timedelta(days=11)) == 1


def test_without_a_deadline_nothing_is_late():
    assert NO_RULES.days_late("s01", DEADLINE) == 0
    assert not NO_RULES.too_late("s01", DEADLINE)


def test_an_unknown_time_is_not_late():
    assert RULES.days_late("s01", None) == 0
    assert not RULES.too_late("s01", None)


@pytest.mark.parametrize("text", ["", "yesterday", "2026-03-12", "2026-03-12T20:00:00", "9" * 10_000, "\ud800"])
def test_what_is_not_a_time_with_an_offset(text):
    assert time_of(text) is None


def test_times_in_other_zones_are_the_same_moment():
    assert time_of("2026-03-12T21:00:00+01:00") == time_of("2026-03-12T20:00:00Z") == DEADLINE


@given(st.text(max_size=60))
def test_any_text_is_a_time_or_none(text):
    time = time_of(text)
    assert time is None or time.tzinfo is not None
