"""Trying a set out before it is handed out."""

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.lint import lint

from .conftest import EXERCISES

TASK = """
set = "small"
title = "Small"
course = "Class"
version = 1
[[task]]
id = "height"
title = "Height"
text = "A {diameter} drill of {point_angle} (included)."
relation = "point_height"
decimals = 2
slips = ["radians"]
[task.givens]
diameter = { from = 5, to = 20, step = 0.5 }
point_angle = [112, 118, 124]
"""


def remarks(tmp_path, old="", new=""):
    assert old in TASK
    path = tmp_path / "small.toml"
    path.write_text(TASK.replace(old, new, 1), encoding="utf-8")
    return lint(load_set(path), 60)


def test_nothing_to_say(tmp_path):
    assert remarks(tmp_path) == []


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ("(included)", "", "does not say which point angle is meant: included or whole or half"),
        (
            '["radians"]',
            '[{ name = "shop rule", formula = "0.3*diameter", says = "x" }]',
            "“shop rule” would pass for the right answer",
        ),
        (
            '["radians"]',
            '["radians", { name = "twin", formula = "diameter/2/tan(57.29577951308232*point_angle/2)", says = "x" }]',
            "“radians” and “twin” give the same value",
        ),
        ('["radians"]', '["web forgotten"]', "“web forgotten” never gives a value of its own"),
        ("{ from = 5, to = 20, step = 0.5 }", "[8, 10]", "only 6 different answers"),
        ("{ from = 5, to = 20, step = 0.5 }", "[8, 200]", "200 mm is outside"),
        ("{ from = 5, to = 20, step = 0.5 }", "[200]", "no draw of 200 can be handed out"),
    ],
)
def test_says_what_an_instructor_should_know(tmp_path, old, new, says):
    assert any(says in line for line in remarks(tmp_path, old, new)), remarks(tmp_path, old, new)


@pytest.mark.parametrize("path", [EXERCISES / "lips.toml", EXERCISES / "practice" / "lips.toml"], ids=str)
def test_the_shipped_sets_have_only_harmless_remarks(path):
    """Some draws may be set aside; anything else would have to be mended."""
    for line in lint(load_set(path)):
        assert "draws are not handed out" in line
