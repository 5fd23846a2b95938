"""Trying a set out before it is handed out: would a slip pass as right, do two slips look alike, is a word missing?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from drillpoint.course.exercise import ExerciseSet, Task
from drillpoint.course.variant import Question, Variants
from drillpoint.errors import DrillpointError

TRIED = 200
_FEWEST_VARIANTS = 20
_MOST_REFUSED = 0.25
# Now and then an angle asked for happens to equal another angle given; that tells a student nothing.
_MOST_BY_CHANCE = 0.1
# Angles that can be meant in two ways, and the words of which one must stand in the question.
_CONVENTION_WORDS = {"point_angle": ("included", "whole", "half"), "chisel_edge_angle": ("obtuse", "acute")}


def lint(exercise_set: ExerciseSet, tried: int = TRIED) -> list[str]:
    """Draw every task for many invented students and say what an instructor should know, one line each.

    An empty list means: nothing found. Draws in which a slip would pass as right are never handed out; if there are
    some, the line says how many, since a tighter tolerance or other numbers may be wanted.
    """
    variants = Variants(exercise_set)
    return [f"task {task.id}: {line}" for task in exercise_set.tasks for line in _about(variants, task, tried)]


def _about(variants: Variants, task: Task, tried: int) -> Iterator[str]:
    students = [f"tried-{number}" for number in range(tried)]
    reasons = Counter(_gist(reason) for student in students for reason in variants.refused(task.id, student))
    drawn = tried + sum(reasons.values())
    for reason, count in sorted(reasons.items()):
        yield f"{count} of {drawn} draws are not handed out: {reason}"
    try:
        questions = [variants.question(task.id, student) for student in students]
    except DrillpointError as error:
        yield str(error)
        return
    if sum(reasons.values()) > _MOST_REFUSED * drawn:
        yield "more than a quarter of the draws are set aside: tighten the tolerance or change the numbers"
    if task.kind != "formula":
        different = len({question.numbers.right for question in questions})
        if different < _FEWEST_VARIANTS:
            yield f"only {different} different answers among {tried} students: give more numbers to choose from"
        yield from _answers_in_text(questions)
    yield from _twin_slips(questions)
    yield from _silent_slips(task, questions)
    yield from _missing_words(task)


def _gist(reason: str) -> str:
    """The reason without its numbers, so that equal reasons are counted together."""
    if " gives " in reason:
        return f"{reason.split(' gives ')[0]} would pass for the right answer"
    return "the value is too near the limit to be judged" if " is too near " in reason else reason


def _answers_in_text(questions: list[Question]) -> Iterator[str]:
    count = sum(
        any(abs(given.value - question.numbers.right[0]) <= question.numbers.tolerance and given.shown in question.text
            for given in question.numbers.givens.values())
        for question in questions
    )  # fmt: skip
    if count > _MOST_BY_CHANCE * len(questions):
        yield f"in {count} of {len(questions)} draws the answer stands in the question itself"


def _twin_slips(questions: list[Question]) -> Iterator[str]:
    twins: Counter[tuple[str, str]] = Counter()
    for question in questions:
        wrong = question.numbers.wrong
        for index, first in enumerate(wrong):
            for second in wrong[index + 1 :]:
                near = max(question.numbers.tolerance, 1e-9)
                alike = all(abs(a - b) <= near for a, b in zip(first.values, second.values, strict=True))
                if alike and first.name != second.name:
                    twins[(first.name, second.name)] += 1
    for (first_name, second_name), count in twins.items():
        if count > len(questions) / 2:
            yield f"“{first_name}” and “{second_name}” give the same value: keep one of them"


def _silent_slips(task: Task, questions: list[Question]) -> Iterator[str]:
    seen = {wrong.name for question in questions for wrong in question.numbers.wrong}
    for rule in task.slips:
        if rule.name not in seen:
            yield f"“{rule.name}” never gives a value of its own here: take it out"


def _missing_words(task: Task) -> Iterator[str]:
    text = task.text.lower()
    for name, words in _CONVENTION_WORDS.items():
        if "{" + name + "}" in task.text and not any(word in text for word in words):
            yield f"the text does not say which {name.replace('_', ' ')} is meant: {' or '.join(words)}"
