"""Sets of exercises as an instructor writes them, and what is said when one is wrong."""

from pathlib import Path

import pytest

from drillpoint.course.exercise_file import find_set, load_set
from drillpoint.errors import InstructorError

from .conftest import EXERCISES

HEAD = 'set = "small"\ntitle = "Small"\ncourse = "Class"\nversion = 1\n'
TASK = """
[[task]]
id = "height"
title = "Height"
text = "A {diameter} drill of {point_angle} (included): how high is the point?"
relation = "point_height"
decimals = 2
slips = ["radians"]
[task.givens]
diameter = [8, 10]
point_angle = [118]
"""


def write(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "small.toml"
    path.write_text(text, encoding="utf-8")
    return path


def test_reads_a_small_set(tmp_path):
    small = load_set(write(tmp_path, HEAD + TASK))
    task = small.task("height")
    assert small.task("1") is task
    assert (task.kind, task.asked, task.unit, task.points) == ("number", "point_height", "mm", 1.0)
    assert [value.shown for value in task.givens[0].values] == ["8 mm", "10 mm"]


def test_ranges_and_shop_fractions(tmp_path):
    text = HEAD + TASK.replace("diameter = [8, 10]", "diameter = { from = 6, to = 7, step = 0.5 }")
    assert [v.shown for v in load_set(write(tmp_path, text)).tasks[0].givens[0].values] == ["6 mm", "6.5 mm", "7 mm"]
    text = HEAD + TASK.replace("diameter = [8, 10]", 'diameter = { choose = ["7/8 in", "1 1/8"], unit = "in" }')
    values = load_set(write(tmp_path, text)).tasks[0].givens[0].values
    assert [(v.value, v.shown) for v in values] == [
        (pytest.approx(22.225), "7/8 in"),
        (pytest.approx(28.575), "1 1/8 in"),
    ]


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('title = "Small"\n', "", "title is missing"),
        ("version = 1", 'version = "1"', "version = '1' is not a whole number"),
        ('set = "small"', 'set = "Small set"', "small letters, digits and hyphens"),
        ("decimals = 2", "decimal = 2", "'decimal' is not known here (did you mean 'decimals'?)"),
        ('id = "height"', 'id = "../x"', "small letters"),
        ('id = "height"', 'id = "7"', "not digits only"),
        ('"point_height"', '"point_heigth"', "did you mean 'point_height'?"),
        ('["radians"]', '["radiant"]', "did you mean 'radians'?"),
        ("point_angle = [118]", "point_angel = [118]", "did you mean 'point_angle'?"),
        ("[8, 10]", '["8 furlongs"]', "not a unit"),
        ("[8, 10]", "[true]", "neither a number nor text"),
        ("[8, 10]", "[]", "no value to choose from"),
        ("[8, 10]", "{ from = 1, to = 2, step = 0 }", "is not a range"),
        ("[8, 10]", "{ from = 1, to = 2, step = 0.00001 }", "is not a range"),
        ("[8, 10]", '{ choose = [8], unit = "°" }', "does not suit"),
        ("decimals = 2", 'decimals = 2\nunit = "°"', "does not suit point_height"),
        ("decimals = 2", "decimals = 2\ntolerance = { percent = 50 }", "at most 20"),
        ("decimals = 2", 'decimals = 2\nkind = "essay"', "known are number, choice, formula, judgement, parts"),
        ("decimals = 2", 'decimals = 2\nkind = "formula"', "has names"),
        ("decimals = 2", 'decimals = 2\nkind = "judgement"', "either at_least or at_most"),
        ("decimals = 2", 'decimals = 2\nasked = "webb"', "asked 'webb' is not known"),
        ("decimals = 2", "decimals = 20", "decimals go from 0 to 8"),
        ("decimals = 2", "decimals = 2\nlet = { half = 'diameter/' }", "ends too early"),
        ("decimals = 2", "decimals = 2\nlet = { half = 'web/2' }", "“web” is not a name in this task"),
        ('["radians"]', '[{ name = "x", formula = "__import__(1)", says = "x" }]', "not a name"),
        ('["radians"]', '[{ name = "x", formula = "diameter" }]', "says is missing"),
        (
            "decimals = 2",
            'decimals = 2\nkind = "formula"\nsymbol = "h"\nnames = { sin = "diameter" }',
            "task height, names: “sin” cannot be a name in a formula: it would be read as a function",
        ),
        ("[118]", '{ choose = [10], share_of = "web" }', "share_of = 'web' is not a given above it"),
        ("[118]", '{ choose = [10], share_of = "diameter", step = 0 }', "step = 0.0 is not above 0"),
        ("[[task]]", "[[task", "not valid TOML"),
    ],
)
def test_says_what_is_wrong_and_where(tmp_path, old, new, says):
    text = HEAD + TASK
    assert old in text
    with pytest.raises(InstructorError) as caught:
        load_set(write(tmp_path, text.replace(old, new, 1)))
    assert says in str(caught.value)
    assert "small.toml" in str(caught.value)


def test_two_tasks_of_one_name(tmp_path):
    with pytest.raises(InstructorError, match="'height' is used twice"):
        load_set(write(tmp_path, HEAD + TASK + TASK))


def test_unknown_sets_name_the_known_ones(monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)
    with pytest.raises(InstructorError, match=r"'lisp' is not known; known here: .*lips"):
        find_set("lisp")
    for name in ("../lips", "/etc/passwd", "lips/../lips", ""):
        with pytest.raises(InstructorError):
            find_set(name)
    with pytest.raises(InstructorError, match=r"no file nowhere\.toml"):
        find_set("nowhere.toml")


def test_not_utf8(tmp_path):
    path = tmp_path / "small.toml"
    path.write_bytes("title = 'é'".encode("latin-1"))
    with pytest.raises(InstructorError, match="UTF-8"):
        load_set(path)


def test_the_graded_set_has_tasks_of_every_kind(lips):
    assert len(lips.tasks) >= 8
    assert {task.kind for task in lips.tasks} == {"number", "choice", "formula", "judgement"}
    assert any(task.asked != task.relation and task.kind == "number" for task in lips.tasks)  # an inverse
    assert any(task.figure for task in lips.tasks)
    assert any(task.unit == "in" for task in lips.tasks)


def test_every_set_in_the_folder_can_be_read():
    paths = [*EXERCISES.glob("*.toml"), *EXERCISES.glob("practice/*.toml")]
    assert len(paths) >= 2
    for path in paths:
        assert load_set(path).tasks


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        (
            "diameter = [8, 10]",
            'diameter = ["8 mm", "8.5.1 mm"]',
            "A number has one decimal point or one decimal comma.\n    8.5.1 mm\n       ^\nIt can be written",
        ),
        (
            '["radians"]',
            '[{ name = "x", formula = "diameter/2 tan(30)", says = "x" }]',
            "Put brackets after the /, or a * between.\n    diameter/2 tan(30)\n             ^\nIt can be written",
        ),
    ],
)
def test_what_cannot_be_read_is_shown_with_its_place(tmp_path, old, new, says):
    text = HEAD + TASK
    assert old in text
    with pytest.raises(InstructorError) as caught:
        load_set(write(tmp_path, text.replace(old, new)))
    assert says in str(caught.value)
    assert "small.toml" in str(caught.value)


PARTS = """
[[task]]
id = "steps"
kind = "parts"
title = "Steps"
text = "A {diameter} drill of {point_angle} (included), web {web}, relief {lip_relief}."
[task.givens]
diameter = [10]
point_angle = [118]
web = [1.5]
lip_relief = [12]
[[task.parts]]
id = "a"
text = "Relief square to the lip?"
relation = "axial_relief"
[[task.parts]]
id = "b"
text = "Chisel edge angle?"
relation = "chisel_edge_angle"
carry = ["a"]
"""
PLAN = """
[[task]]
id = "plan"
kind = "plan"
title = "Plan"
text = "Choose a point angle (included) for {diameter}."
[task.givens]
diameter = [10]
[task.enter]
point_angle = { decimals = 0, example = "118" }
[[task.requirements]]
says = "Flat enough"
relation = "point_height"
at_most = 3.1
"""
DIAGNOSE = """
[[task]]
id = "wrong"
kind = "diagnose"
title = "Wrong"
text = "What is wrong?"
faults = ["unequal_angles", "thick_web", "sound"]
readings = ["half_angle_1", "half_angle_2", "web"]
[task.givens]
diameter = [10]
"""
OPEN = """
[[task]]
id = "open"
kind = "open"
title = "Open"
text = "Why?"
rubric = ["gives a reason"]
"""
STATED = """
[[task]]
id = "who"
kind = "choice"
title = "Who"
text = "A {diameter} drill of {point_angle} (included)."
relation = "point_height"
[task.givens]
diameter = [10]
point_angle = [118]
[[task.statements]]
name = "high"
text = "It is over 3 mm."
holds = "answer - 3"
says = "x"
"""


@pytest.mark.parametrize(
    ("task", "old", "new", "marker", "says"),
    [
        (PARTS, 'carry = ["a"]', 'carry = ["c"]', "carry =", "part b: carry 'c' is not known"),
        (PARTS, '"chisel_edge_angle"', '"point_height"', "carry =", "part b: point_height does not need axial_relief"),
        (PARTS, 'id = "b"', 'id = "a" # again', 'id = "a" # again', "part id 'a' is used twice"),
        (PARTS, "lip_relief = [12]", "lip_relief = [12]\naxial_relief = [10]", "carry =", "already a given"),
        (PARTS, 'kind = "parts"', 'kind = "parts"\nunit = "mm"', "unit =", "unit belongs to kind = 'number or choice"),
        (PLAN, "at_most = 3.1", "", "[[task.requirements]]", "at_least or at_most or both"),
        (PLAN, 'relation = "point_height"', 'relation = "lip_length"', "relation =", "lip_length needs"),
        (PLAN, "point_angle = {", "diameter = {", "diameter = {", "diameter is already a given"),
        (PLAN, '"118"', '"118/"', "point_angle =", "ends too early"),
        (PLAN, "at_most = 3.1", 'at_most = "3*web"', "[[task.requirements]]", "“web” is not a name"),
        (PLAN, "decimals = 0", 'decimals = 0, unit = "mm"', "point_angle =", "unit 'mm' does not suit point_angle"),
        (DIAGNOSE, '"thick_web"', '"thick_wed"', "faults =", "did you mean 'thick_web'?"),
        (DIAGNOSE, ', "thick_web"', "", "faults =", "faults lists 3 to 8"),
        (DIAGNOSE, '"web"]', '"webb"]', "readings =", "did you mean 'web'?"),
        (DIAGNOSE, "diameter = [10]", "diameter = [10]\nweb = [1]", "[task.givens]", "has one given, diameter"),
        (OPEN, '["gives a reason"]', "[]", "rubric =", "at least one point"),
        (OPEN, "rubric = ", 'relation = "lead"\nrubric = ', "relation =", "relation belongs to kind"),
        (STATED, '"answer - 3"', '"answer - h"', "[[task.statements]]", "“h” is not a name"),
    ],
)
def test_says_what_is_wrong_with_the_other_kinds_and_on_which_line(tmp_path, task, old, new, marker, says):
    text = HEAD + task
    assert load_set(write(tmp_path, text)).tasks
    assert old in text
    changed = text.replace(old, new, 1)
    with pytest.raises(InstructorError) as caught:
        load_set(write(tmp_path, changed))
    assert says in str(caught.value)
    assert f"line {changed[: changed.index(marker)].count(chr(10)) + 1}, " in str(caught.value)


def test_a_part_takes_what_its_relation_needs(tmp_path):
    a, b = load_set(write(tmp_path, HEAD + PARTS)).tasks[0].parts
    assert {given.name for given in a.givens if not given.shown_only} == {
        "diameter",
        "point_angle",
        "web",
        "lip_relief",
    }
    assert {given.name for given in b.givens if not given.shown_only} == {"point_angle", "axial_relief"}
    assert b.carries == {"axial_relief": "a"}


def test_shop_sizes_and_reading_errors(tmp_path):
    text = HEAD + TASK.replace(
        "diameter = [8, 10]", 'diameter = { shop = "letter", from = "0.3 in", reading_error = 0.1 }'
    )
    given = load_set(write(tmp_path, text)).tasks[0].givens[0]
    assert given.values[0].shown == "letter N drill (0.302 in)"
    assert given.reading_error == 0.1
    with pytest.raises(InstructorError, match="did you mean 'letter'"):
        load_set(write(tmp_path, text.replace('"letter"', '"leter"')))
