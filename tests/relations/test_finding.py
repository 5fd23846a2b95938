"""A stranger finds the call by the words of the shop."""

from __future__ import annotations

import pytest

from drillpoint.errors import LearnerError
from drillpoint.relations import find


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("lip length", "lip_length"),
        ("how long is the lip", "lip_length"),
        ("how long is the cutting edge", "lip_length"),
        ("tip height", "point_height"),
        ("how tall is the tip", "point_height"),
        ("chisel edge length", "chisel_edge_length"),
        ("angle of the chisel edge", "chisel_edge_angle"),
        ("heel clearance", "heel_clearance"),
        ("relief near the web", "relief_at_radius"),
        ("how deep to the point", "full_diameter_depth"),
        ("depth of a countersink", "countersink_depth"),
        ("tap drill depth", "tap_drill_depth"),
        ("how long does drilling take", "drilling_time"),
        ("rpm", "spindle_speed"),
        ("hole bigger than the drill", "oversize"),
        ("one ribbon only", "idle_radius"),
        ("one lip longer than the other", "lip_height_difference"),
        ("run-out", "offset_from_run_out"),
        ("reads too sharp an angle", "rolled_reading"),
        ("how much to grind off for another point angle", "stock_for_angle_change"),
        ("chipped lip", "stock_for_chip"),
        ("burnt corner", "stock_for_worn_corner"),
        ("how many regrinds", "regrinds_left"),
        ("when is thinning due", "length_until_thinning"),
    ],
)
def test_words_of_the_shop(words: str, name: str) -> None:
    assert name in [r.name for r in find(words).relations[:3]]


@pytest.mark.parametrize(("words", "name"), [("how long is the lip", "lip_length"), ("tip height", "point_height")])
def test_the_plain_one_comes_first(words: str, name: str) -> None:
    assert find(words).relations[0].name == name


def test_shown_as_text_and_table() -> None:
    found = find("lip length <b>")
    assert "lip_length(diameter, point_angle, web, chisel_edge_angle)" in repr(found)
    assert "&lt;b&gt;" in found._repr_html_()


def test_nothing_found_says_what_to_try() -> None:
    with pytest.raises(LearnerError, match="such as 'lip length'"):
        find("banana")
