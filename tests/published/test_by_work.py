"""Point angles, cutting speeds and feeds by work: figures as printed, and rows that a plan can choose from."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest

from drillpoint.handbook.library import ranges
from drillpoint.handbook.table import RangeRow

FOOT, INCH = 0.3048, 25.4
MATERIALS = ("mild steel", "cast iron", "brass", "aluminium", "stainless steel", "plastic")


@pytest.mark.parametrize(
    ("name", "unit", "factor", "rounding"), [("cutting_speed", "ft/min", FOOT, 0.05), ("feed", "in/rev", INCH, 5e-4)]
)
def test_converted_figures_are_those_printed(name: str, unit: str, factor: float, rounding: float) -> None:
    # SOURCE: each row repeats what is printed; DERIVED: what that is in metres or millimetres.
    found = [(row, re.search(rf"printed as ([\d.]+) to ([\d.]+) {unit}", row.page)) for row in ranges(name)]
    printed = [(row, [float(figure) for figure in match.groups()]) for row, match in found if match]
    assert len(printed) >= 4
    for row, (low, high) in printed:
        assert row.seen == "seen"
        assert row.low == pytest.approx(low * factor, abs=rounding)
        assert row.high == pytest.approx(high * factor, abs=rounding)


def test_what_was_read_in_a_copy() -> None:
    # SOURCE: US Navy training manual no. 14345, ft/min (seen).
    assert _printed("cutting_speed", "mild steel") == "80 to 110"
    assert _printed("cutting_speed", "stainless steel") == "30 to 40"
    assert _printed("cutting_speed", "brass") == _printed("cutting_speed", "aluminium") == "200 to 300"
    assert _printed("cutting_speed", "cast iron") == "70 to 150"
    # SOURCE: Mechanical Engineer's Data Handbook, p. 182 (seen).
    angles = {row.what.split(",")[0]: row.low for row in ranges("point_angle_by_work") if "p. 182" in row.page}
    assert angles == {
        "aluminium alloy": 140,
        "magnesium alloy": 100,
        "brass": 130,
        "copper": 125,
        "Bakelite": 30,
        "manganese steel": 130,
    }


def test_the_feeds_go_on_from_size_to_size() -> None:
    rows = [row for row in ranges("feed") if not row.work]
    for below, above in pairwise(rows):
        assert (below.high, below.to_diameter) == (above.low, above.from_diameter)


@pytest.mark.parametrize("work", MATERIALS)
@pytest.mark.parametrize("name", ["point_angle_by_work", "cutting_speed"])
def test_every_material_of_the_course_has_more_than_one_source(name: str, work: str) -> None:
    assert len({row.page for row in _rows(name, work)} | {row.what for row in _rows(name, work)}) > 1


def test_where_no_value_satisfies_every_source() -> None:
    # The disagreements that are taught.
    for name, work in (
        ("point_angle_by_work", "aluminium"),
        ("point_angle_by_work", "brass"),
        ("cutting_speed", "brass"),
    ):
        rows = _rows(name, work)
        assert max(row.low for row in rows) > min(row.high or row.low for row in rows)


def _rows(name: str, work: str) -> list[RangeRow]:
    return [row for row in ranges(name) if row.work == work]


def _printed(name: str, work: str) -> str:
    (found,) = (match[1] for row in _rows(name, work) if (match := re.search(r"printed as (.*) ft/min", row.page)))
    return found
