"""Every published table: readable, with its sources, and told so that a reader sees where figures disagree."""

from __future__ import annotations

import pytest

from drillpoint.errors import InstructorError, OutOfRange, UnknownGiven
from drillpoint.handbook import NAMES, SEEN, PrintedTable, RangeTable, look_up
from drillpoint.handbook.library import printed, ranges, read_table

EVERY = pytest.mark.parametrize("name", NAMES)

RANGES = """
title = "Widths"
says = "how wide"
unit = "mm"
why_they_differ = "they were measured on different days."

[[row]]
what = "the first"
low = 1
high = 2
source = "A book"
page = "p. 1"
seen = "seen"

[[row]]
what = "the second"
low = 3
source = "Another book"
page = "p. 2"
seen = "from memory"
"""

NUMBERS = """
title = "Sizes"
says = "a size by its letter"
source = "A book"
page = "p. 3"
seen = "second hand"
remark = ""
columns = ["letter", "size"]
decimals = [0, 2]
rows = [[1, 2.50], [2, 3.75]]
"""


@EVERY
def test_every_row_has_its_source_and_how_it_was_seen(name: str) -> None:
    table = look_up(name)
    for entry in table.rows if isinstance(table, RangeTable) else (table,):
        assert len(entry.source) > 3
        assert entry.page
        assert entry.seen in SEEN


@EVERY
def test_what_was_not_seen_is_not_called_seen(name: str) -> None:
    table = look_up(name)
    for entry in table.rows if isinstance(table, RangeTable) else (table,):
        if entry.source == "Common practice":
            assert entry.seen == "common practice"
        if "NAVEDTRA 12204" in entry.source or "TC 9-524" in entry.source:
            assert entry.seen == "from memory"


def test_relief_figures_all_say_place_plane_and_size_or_that_the_source_does_not() -> None:
    for row in ranges("lip_relief"):
        assert row.place and row.plane and row.size


@EVERY
def test_every_table_reads_as_text_and_as_html(name: str) -> None:
    table = look_up(name)
    text, page = str(table), table._repr_html_()
    assert text.startswith(table.title)
    assert max(map(len, text.splitlines())) <= 120
    assert page.count("<tr>") == len(table) + 1
    for entry in table.rows if isinstance(table, RangeTable) else (table,):
        assert entry.seen in text and entry.seen in page


def test_disagreement_is_said_with_its_reason() -> None:
    relief = ranges("lip_relief")
    assert relief.disagrees
    assert relief.span == (5, 24)
    assert "8 figures disagree: from 5° to 24°, and no value satisfies them all" in relief.verdict
    assert "place, plane and size" in relief.verdict
    chisel = ranges("chisel_edge_angle")
    assert chisel.have_a_common_value
    assert "no value satisfies" not in chisel.verdict
    assert ranges("web_taper").verdict.startswith("One figure is at hand")


def test_agreement_is_said_too() -> None:
    same = (
        RANGES.replace("high = 2\n", "high = 3\n")
        .replace("low = 1\n", "low = 3\n")
        .replace("low = 3\nsource", "low = 3\nhigh = 3\nsource")
    )
    table = read_table("widths", same)
    assert isinstance(table, RangeTable)
    assert table.verdict == "All 2 agree."


def test_rows_by_size() -> None:
    # Indian and ISO technical conditions (seen): usual helix by diameter.
    for diameter, low, high in ((2, 22, 28), (4, 24, 30), (8, 25, 31), (25, 27, 34)):
        (row,) = look_up("helix_angle", diameter=diameter)
        assert isinstance(look_up("helix_angle"), RangeTable)
        assert (row.low, row.high) == (low, high)  # type: ignore[union-attr]
    assert len(look_up("helix_angle", diameter=5)) == 2
    with pytest.raises(OutOfRange, match="no row for a drill of 60 mm; its sizes are 1 mm to 40 mm"):
        look_up("helix_angle", diameter=60)
    with pytest.raises(UnknownGiven, match="does not go by diameter"):
        look_up("web_taper", diameter=10)


def test_rows_by_work_material() -> None:
    brass = look_up("point_angle_by_work", work="brass")
    assert isinstance(brass, RangeTable)
    # Mechanical Engineer's Data Handbook, p. 182 (seen), beside what is known from memory or second hand.
    assert {(row.low, row.high, row.seen) for row in brass} == {
        (118, 118, "from memory"),
        (90, 118, "second hand"),
        (130, 130, "seen"),
    }
    assert not brass.have_a_common_value
    # A row of no metal is for all of them; a size and a work may be asked for together.
    both = look_up("feed", diameter=12.5, work="stainless steel")
    assert isinstance(both, RangeTable)
    assert [(row.work, row.low) for row in both] == [("", 0.102), ("stainless steel", 0.18)]
    with pytest.raises(UnknownGiven, match="no row for 'bras'; did you mean 'brass'"):
        look_up("cutting_speed", work="bras")
    for name in ("helix_angle", "chisel_factors"):
        with pytest.raises(UnknownGiven, match="does not go by work material"):
            look_up(name, work="brass")


def test_wrong_names_get_the_nearest() -> None:
    with pytest.raises(UnknownGiven, match="did you mean 'lip_relief'"):
        look_up("lip_releif")
    with pytest.raises(UnknownGiven, match="printed table"):
        ranges("chisel_factors")
    with pytest.raises(UnknownGiven, match="several sources"):
        printed("lip_relief")


def test_figures_as_one_reads_them() -> None:
    table = read_table("widths", RANGES)
    assert isinstance(table, RangeTable)
    assert [row.figure("mm") for row in table] == ["1 mm to 2 mm", "at least 3 mm"]
    assert [row.figure("°") for row in ranges("lip_relief")][3] == "about 12°"


def test_numbers_print_as_in_the_table() -> None:
    table = read_table("sizes", NUMBERS)
    assert isinstance(table, PrintedTable)
    assert "1       2.50" in str(table)
    assert table.column("size") == (2.5, 3.75)
    assert table.rounding("size") == pytest.approx(0.005)
    assert list(table)[1] == {"letter": 2, "size": 3.75}


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (("low = 1", "low ="), "not readable as TOML"),
        (("low = 1\n", 'low = "x"\n'), "row 1 low, could not convert"),
        (("low = 1\n", "lwo = 1\n"), "row 1.*no entry 'lwo'; did you mean 'low'"),
        (("low = 1\n", "low = 5\n"), "high 2 is below low 5"),
        (('seen = "from memory"', 'seen = "heard"'), "row 2.*seen is 'heard'; it needs to be one of seen, second hand"),
        (('source = "Another book"\n', ""), "row 2.*'source' is missing"),
        (('source = "Another book"', 'source = ""'), "source is empty"),
        (("low = 3\n", "low = 3\nfrom_diameter = 2\n"), "needs both from_diameter and to_diameter"),
        (('unit = "mm"\n', 'unit = "mm"\nnuit = "mm"\n'), "no entry 'nuit'; did you mean 'unit'"),
    ],
)
def test_a_faulty_file_is_told_by_its_place(change: tuple[str, str], said: str) -> None:
    assert change[0] in RANGES
    with pytest.raises(InstructorError, match=said):
        read_table("widths", RANGES.replace(*change, 1))


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (("[2, 3.75]", "[2]"), "row 2 has 1 numbers for 2 columns"),
        (("[0, 2]", "[0]"), "2 columns and 1 decimals"),
        (("[2, 3.75]", '[2, "x"]'), "row 2 number 2, could not convert"),
    ],
)
def test_a_faulty_table_of_numbers_is_told_too(change: tuple[str, str], said: str) -> None:
    with pytest.raises(InstructorError, match=said):
        read_table("sizes", NUMBERS.replace(*change, 1))
