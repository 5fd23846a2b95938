"""A table reads the same as HTML and as text, and nothing in a cell is taken for a tag."""

from __future__ import annotations

from drillpoint.ground.table import Table, bundle

SMALL = Table("Sizes", ("reading", "value"), (("web", "1.5 mm"), ("a < b", "3")))


def test_as_text_its_columns_line_up() -> None:
    title, *lines = str(SMALL).splitlines()
    assert title == "Sizes"
    assert lines == ["reading   value", "web       1.5 mm", "a < b     3"]


def test_as_html_every_cell_has_its_head_and_no_cell_is_a_tag() -> None:
    assert SMALL.html.count('scope="col"') == 2 and SMALL.html.count('scope="row"') == 2
    assert "a &lt; b" in SMALL.html and "a < b" not in SMALL.html


def test_words_are_set_to_the_left_and_numbers_to_the_right() -> None:
    assert SMALL.html.count("text-align:right") == 3  # the head and both cells of the second column
    wordy = Table("Sizes", ("a", "b"), (("c", "d"),), frozenset({0, 1}))
    assert "text-align:right" not in wordy.html


def test_a_number_and_its_unit_stay_together() -> None:
    cell = Table("Sizes", ("a", "b"), (("web 1", "1.5 mm (0.0591 in)"),)).html.split("<td")[1]
    assert "1.5\N{NO-BREAK SPACE}mm (0.0591\N{NO-BREAK SPACE}in)" in cell
    assert ">web 1<" in Table("Sizes", ("a",), (("web 1",),)).html


def test_sentences_stand_before_and_notes_below() -> None:
    shown = bundle([SMALL, SMALL], ["One & all."], ["First."])
    assert shown["text/plain"].endswith("\n\nOne & all.") and shown["text/html"].endswith("<p>One &amp; all.</p>")
    assert shown["text/plain"].startswith("First.\n\nSizes") and shown["text/html"].startswith("<p>First.</p><table>")
    assert shown["text/plain"].count("Sizes") == shown["text/html"].count("Sizes") == 2
