"""Putting the numbers of one student into a text."""

from __future__ import annotations

import re
from collections.abc import Mapping

from drillpoint.course.exercise import GivenValue, Task
from drillpoint.course.faulty import DRAWN_HERE
from drillpoint.course.formula import read_formula
from drillpoint.errors import InstructorError

PLACEHOLDER = re.compile(r"\{([^{}]*)\}")


def filled(text: str, task: Task, givens: Mapping[str, GivenValue]) -> str:
    """The text with the numbers put in; a placeholder is the name of a given or of a `let` entry."""
    shown = {name: given.shown for name, given in givens.items() if name not in DRAWN_HERE}
    values = {name: given.value for name, given in givens.items()}
    for name, formula in task.let.items():
        shown[name] = f"{read_formula(formula, tuple(values)).at(values):.6g}"

    def put(match: re.Match[str]) -> str:
        if match.group(1) not in shown:
            known = ", ".join(shown) or "none"
            raise InstructorError(f"task {task.id}: {match.group()} is not a given; known: {known}")
        return shown[match.group(1)]

    return " ".join(PLACEHOLDER.sub(put, text).split())
