"""Trying plans out: can every requirement be met, and does every one of them ask for something?"""

from __future__ import annotations

from collections.abc import Iterator

from drillpoint.course.exercise import Task
from drillpoint.course.planning import held_against
from drillpoint.course.variant import Question
from drillpoint.quantities import QUANTITIES

_STUDENTS = 20
_PLANS = 40
# Grinding a point takes some milliseconds, and one that cannot be ground meets nothing anyhow.
_STUDENTS_WHO_GRIND = 3
# Powers of 1/g with g⁵ = g + 1: steps of which no two add up to a whole one, so that no two boxes move together.
_STEPS = (0.8566748838545029, 0.733891856627126, 0.6287067210378087, 0.5385972572236101)


def about_plan(task: Task, questions: list[Question]) -> Iterator[tuple[str, str]]:
    """Remarks on the requirements of a plan, from many plans for some students."""
    tried = 0
    met_by = [0] * len(task.requirements)
    students = _STUDENTS_WHO_GRIND if any(rule.ground for rule in task.requirements) else _STUDENTS
    for question in questions[:students]:
        values = {name: given.value for name, given in question.numbers.givens.items()}
        for plan in _plans(task):
            tried += 1
            for number, met in enumerate(held_against(task, values, plan)):
                met_by[number] += met.met
    for rule, count in zip(task.requirements, met_by, strict=True):
        if count == tried:
            yield "requirements", f"“{rule.says}” is met by everything that was tried: it asks for nothing"


def _plans(task: Task) -> Iterator[dict[str, float]]:
    """Plans all over the usual ranges of what is entered; the first has the least of everything."""
    for number in range(_PLANS):
        plan = {}
        for place, entered in enumerate(task.enters):
            usual = QUANTITIES[entered.name].usual
            share = (number * _STEPS[place % len(_STEPS)]) % 1.0
            plan[entered.name] = usual.low + share * (usual.high - usual.low)
        yield plan
