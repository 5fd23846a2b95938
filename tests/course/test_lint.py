"""Trying a set out before it is handed out."""

import numpy as np
import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.lint import lint
from drillpoint.course.lint_plan import _plans

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


SHIPPED = [EXERCISES / "lips.toml", EXERCISES / "relief.toml", *sorted((EXERCISES / "practice").glob("*.toml"))]


@pytest.mark.parametrize("path", SHIPPED, ids=str)
def test_the_shipped_sets_have_only_harmless_remarks(path):
    """Some draws may be set aside; anything else would have to be mended."""
    for line in lint(load_set(path)):
        assert "draws are not handed out" in line


NEEDED = {
    "an unknown placeholder": ('text = "A {diameter}', 'text = "A {diametre}', "text = ", "{diametre} is not a given"),
    "a hint with the answer": (
        "decimals = 2",
        'decimals = 0\ntolerance = { last_digit = 4 }\nhints = ["It is about 3 mm."]',
        "hints = ",
        "the answer stands in a hint: “It is about 3 mm.”",
    ),
    "a hint with brackets": (
        "decimals = 2",
        'decimals = 2\nhints = ["Halve {point_angle}."]',
        "hints = ",
        "with its brackets",
    ),
    "numbers no workshop meets": (
        "{ from = 5, to = 20, step = 0.5 }",
        "{ from = 5, to = 75, step = 0.5 }",
        "[task.givens]",
        "is far outside the usual",
    ),
    "a slip that passes": (
        '["radians"]',
        '[{ name = "shop rule", formula = "0.3*diameter", says = "x" }]',
        "slips = ",
        "“shop rule” would pass",
    ),
}


@pytest.mark.parametrize("case", NEEDED)
def test_points_at_the_line(tmp_path, case):
    old, new, marker, says = NEEDED[case]
    found = remarks(tmp_path, old, new)
    text = TASK.replace(old, new, 1)
    line = text[: text.index(marker)].count("\n") + 1
    assert any(says in remark and remark.startswith(f"line {line}, task height: ") for remark in found), found


def test_a_let_number_without_a_unit(tmp_path):
    path = tmp_path / "small.toml"
    text = TASK.replace("decimals = 2", 'decimals = 2\nlet = { half = "point_angle/2" }')
    for shown, count in (("{half}.", 1), ("{half}°.", 0), ("{half} degrees.", 0), ("{half} s.", 0)):
        path.write_text(text.replace("(included).", f"(included), half of it {shown}"), encoding="utf-8")
        assert sum("printed without a unit" in line for line in lint(load_set(path), 30)) == count


CHOICE = """
set = "small"
title = "Small"
course = "Class"
version = 1
[[task]]
id = "pick"
kind = "choice"
title = "Pick"
text = "A {diameter} drill of {point_angle} (included): how high is its point?"
relation = "point_height"
decimals = 1
tolerance = { last_digit = 0.1 }
slips = ["tangent upside down", "diameter for radius",
         { name = "shown alike", formula = "diameter/2/tan(point_angle/2) + 0.03", says = "x" }]
[task.givens]
diameter = { from = 5, to = 20, step = 0.5 }
point_angle = [112, 118, 124]
"""


def test_a_wrong_option_that_looks_like_the_right_one(tmp_path):
    path = tmp_path / "small.toml"
    path.write_text(CHOICE, encoding="utf-8")
    found = lint(load_set(path), 60)
    assert any("task pick: “shown alike” is no option in" in line for line in found), found
    path.write_text(CHOICE.replace("+ 0.03", "+ 0.47"), encoding="utf-8")
    assert not any("shown alike" in line for line in lint(load_set(path), 60))


PLAN = """
set = "small"
title = "Small"
course = "Class"
version = 1
[[task]]
id = "plan"
kind = "plan"
title = "Plan"
text = "A {diameter} drill: choose a point angle (included) so that the point is at most half the diameter high."
[task.givens]
diameter = { from = 5, to = 20, step = 0.5 }
[task.enter]
point_angle = { decimals = 0, example = "118" }
[[task.requirements]]
says = "The point is flat enough"
relation = "point_height"
at_most = "0.5*diameter"
"""


@pytest.mark.parametrize(
    ("old", "new", "marker", "says"),
    [
        ("", "", "", ""),
        (
            "0.5*diameter",
            "9*diameter",
            "[[task.requirements]]",
            "“The point is flat enough” is met by everything that was tried",
        ),
        ('"118"', '"80"', "[task.enter]", "the example does not meet a requirement: The point is flat enough"),
    ],
)
def test_a_plan_is_tried_out(tmp_path, old, new, marker, says):
    path = tmp_path / "small.toml"
    path.write_text(PLAN.replace(old, new, 1) if old else PLAN, encoding="utf-8")
    found = lint(load_set(path), 40)
    if not says:
        assert found == []
    else:
        line = PLAN[: PLAN.index(marker)].count("\n") + 1
        assert any(says in remark and remark.startswith(f"line {line}, ") for remark in found), found


def test_the_plans_that_are_tried_move_every_box_for_itself():
    (task,) = (task for task in load_set("choosing-a-point").tasks if task.id == "plan-a-pin")
    columns = np.array([list(plan.values()) for plan in _plans(task)]).T
    assert len(columns) == 3
    apart = np.corrcoef(columns)[~np.eye(3, dtype=bool)]
    assert abs(apart).max() < 0.5
