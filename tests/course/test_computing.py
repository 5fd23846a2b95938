"""What a task's relation gives, forwards and backwards."""

import math

import pytest

from drillpoint.course.computing import needed, right_value, taken_by, wrong_value
from drillpoint.course.exercise_file import load_set
from drillpoint.course.variant import Variants
from drillpoint.relations import BOOK

from .conftest import EXERCISES


def inverse_tasks():
    found = []
    for path in (EXERCISES / "lips.toml", EXERCISES / "practice" / "lips.toml"):
        exercise_set = load_set(path)
        found += [
            pytest.param(exercise_set, task, id=f"{exercise_set.id}-{task.id}")
            for task in exercise_set.tasks
            if task.asked != BOOK[task.relation].result.name
        ]
    return found


@pytest.mark.parametrize(("exercise_set", "task"), inverse_tasks())
def test_backwards_agrees_with_the_relation(exercise_set, task):
    """DERIVED: `relation.solve` looks at every branch with all checks; the answer of a task must be its only answer."""
    variants = Variants(exercise_set)
    for number in range(15):
        numbers = variants.question(task.id, f"x{number}").numbers
        values = taken_by(task, {name: given.value for name, given in numbers.givens.items()})
        assert numbers.right[0] == pytest.approx(BOOK[task.relation].solve(task.asked, **values), rel=1e-10)


def test_wrong_givens_that_lead_nowhere_are_nan(lips):
    task = lips.task("point-angle-from-lip")
    values = {"diameter": 10.0, "web": 1.5, "chisel_edge_angle": 125.0, "lip_length": 1.0}
    assert math.isnan(wrong_value(task, values))
    assert right_value(task, {**values, "lip_length": 5.1545}) == pytest.approx(118.0, abs=1e-3)  # DERIVED


def test_shown_only_givens_stay_out_of_the_relation(lips):
    task = lips.task("chisel-edge-from-drawing")
    values = {"diameter": 10.0, "point_angle": 118.0, "web": 1.5, "chisel_edge_angle": 125.0}
    assert right_value(task, values) == pytest.approx(1.5 / math.sin(math.radians(125)))


def test_what_a_relation_takes_for_granted_need_not_be_given():
    relation = BOOK["drilling_time"]
    known = ("shoulder_depth", "diameter", "point_angle", "feed", "cutting_speed", "spindle_speed")
    assert needed(relation, known, ("spindle_speed",)) == tuple(name for name in known if name != "cutting_speed")
    (task,) = (task for task in load_set("practice/choosing-a-point").tasks if task.id == "time-of-a-hole")
    values = {"shoulder_depth": 25.0, "diameter": 10.0, "point_angle": 118.0, "spindle_speed": 500.0, "feed": 0.1}
    # DERIVED: the way over 50 mm a minute, without approach and overrun; the bare formula gives the same.
    expected = (25 + 5 / math.tan(math.radians(59))) / 50
    assert right_value(task, values) == pytest.approx(expected)
    assert wrong_value(task, values) == pytest.approx(expected)
