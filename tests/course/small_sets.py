"""Small sets for tests, written as an instructor would."""

from pathlib import Path

from drillpoint.course.exercise_file import load_set
from drillpoint.course.variant import Question, Variants

HEAD = 'set = "small"\ntitle = "Small"\ncourse = "Class"\nversion = 1\n'


def small_set(folder: Path, tasks: str) -> Variants:
    """A set with these tasks."""
    path = folder / "small.toml"
    path.write_text(HEAD + tasks, encoding="utf-8")
    return Variants(load_set(path))


def only_question(folder: Path, task: str, student: str = "s01") -> Question:
    """The question of a set of one task."""
    variants = small_set(folder, task)
    return variants.question(variants.set.tasks[0].id, student)


def point_height(diameter: str = "10", unit: str = "mm", decimals: int = 2, tolerance: str = "last_digit = 2") -> str:
    """The height of one 118° point, with every usual slip."""
    return f'''
[[task]]
id = "height"
title = "Height"
text = "A drill of {{diameter}} diameter, {{point_angle}} (included): how high is its point?"
relation = "point_height"
unit = "{unit}"
decimals = {decimals}
tolerance = {{ {tolerance} }}
slips = ["whole angle for half", "half angle for whole", "tangent upside down", "radians", "diameter for radius",
         "radius for diameter", "inch against mm"]
[task.givens]
diameter = [{diameter}]
point_angle = [118]
'''
