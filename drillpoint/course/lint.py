"""Trying a set out before it is handed out: would a slip pass as right, do two slips look alike, is a word missing?

Every remark names the line of the file that it is about.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from attrs import frozen

from drillpoint.course.exercise import ExerciseSet, Task
from drillpoint.course.faulty import DRAWN_HERE
from drillpoint.course.filling import PLACEHOLDER
from drillpoint.course.lint_plan import about_plan
from drillpoint.course.numbers import MOST_COMPUTED_OPTIONS
from drillpoint.course.picturing import pictures_of
from drillpoint.course.reading import unit_and_factor
from drillpoint.course.variant import Question, Variants
from drillpoint.errors import DrillpointError
from drillpoint.quantities import QUANTITIES

TRIED = 200
_DRAWN_PICTURES = 5
_FEWEST_VARIANTS = 20
_MOST_REFUSED = 0.25
# Now and then an angle asked for happens to equal another angle given; that tells a student nothing.
_MOST_BY_CHANCE = 0.1
# How far outside its usual range a given may lie, as a share of the range.
_FAR_OUT = 0.5
# Angles that can be meant in two ways, and the words of which one must stand in the question.
_CONVENTION_WORDS = {"point_angle": ("included", "whole", "half"), "chisel_edge_angle": ("obtuse", "acute")}
_NUMBER = re.compile(r"(?<![\w.,])\d+(?:[.,]\d+)?(?![\w]*[\d/])")
_UNIT_BEHIND = re.compile(
    r"\s?(mm|cm|in|inch|inches|°|degrees?|%|per cent|N|kN|rev|m/min|min|minutes?|s|seconds?|times|turns|N·m|kW)\b|°|%"
)


@frozen
class Remark:
    """What an instructor should know about one entry: the line it stands on (0 if that is not known), and the words."""

    line: int
    task: str
    says: str

    def __str__(self) -> str:
        where = f"line {self.line}, " if self.line else ""
        return f"{where}task {self.task}: {self.says}"


Said = tuple[str | int, str]
"""The entry that a remark is about ("" for the task itself), or its line, and the remark."""


def lint(exercise_set: ExerciseSet, tried: int = TRIED) -> list[str]:
    """Draw every task for many invented students and say what an instructor should know, one line each.

    An empty list means: nothing found. Draws in which a slip would pass as right are never handed out; if there are
    some, the line says how many, since a tighter tolerance or other numbers may be wanted.
    """
    return [str(remark) for remark in remarks(exercise_set, tried)]


def remarks(exercise_set: ExerciseSet, tried: int = TRIED) -> list[Remark]:
    """The same as data, in the order of the tasks."""
    variants = Variants(exercise_set)
    return [
        Remark(key if isinstance(key, int) else _line(task, key), task.id, says)
        for task in exercise_set.tasks
        for key, says in _about(variants, task, tried)
    ]


def _line(task: Task, key: str) -> int:
    return task.lines.get(key) or task.lines.get("", 0)


def _about(variants: Variants, task: Task, tried: int) -> Iterator[Said]:
    unknown = list(_unknown_placeholders(task))
    if unknown:
        yield from unknown
        return
    yield from _printed_as_they_stand(task)
    students = [f"tried-{number}" for number in range(tried)]
    reasons = Counter(_gist(reason) for student in students for reason in variants.refused(task.id, student))
    drawn = tried + sum(reasons.values())
    for reason, count in sorted(reasons.items()):
        yield _blamed(task, reason), f"{count} of {drawn} draws are not handed out: {reason}"
    try:
        questions = [variants.question(task.id, student) for student in students]
        texts = {question.text for question in questions}
        asked = [box.asks for box in questions[0].boxes]
    except DrillpointError as error:
        yield "", str(error).splitlines()[0]
        return
    if sum(reasons.values()) > _MOST_REFUSED * drawn:
        yield "", "more than a quarter of the draws are set aside: tighten the tolerance or change the numbers"
    yield from _missing_words(task, " ".join((questions[0].text, *asked)))
    yield from _too_few(task, questions, len(texts))
    yield from _unusual(task, questions)
    yield from _pictures(questions)
    yield from _about_kind(task, questions)


def _about_kind(task: Task, questions: list[Question]) -> Iterator[Said]:
    """What only some kinds of task can get wrong."""
    if task.kind == "choice":
        yield from _options(task, questions)
    if task.enters:
        yield from about_plan(task, questions)
        for part in task.parts:
            yield from _alike(part)
    if task.relation:
        yield from _about_answers(task, questions)
    if task.kind == "parts":
        for index, part in enumerate(task.parts):
            own = [question.parts[index] for question in questions]
            said = [*_about_answers(part, own), *_answers_in_text(own, [question.text for question in questions])]
            for key, says in dict.fromkeys(said):
                yield key if isinstance(key, int) else _line(part, key), f"part {part.id}: {says}"


def _about_answers(task: Task, questions: list[Question]) -> Iterator[Said]:
    """What goes for every task, or part, with one right answer."""
    yield from _twin_slips(questions)
    yield from _silent_slips(task, questions)
    if task.kind not in ("formula", "choice"):
        yield from _answers_in_text(questions)
        yield from _answers_in_hints(task, questions)


def _gist(reason: str) -> str:
    """The reason without its numbers, so that equal reasons are counted together."""
    if " gives " in reason:
        return f"{reason.split(' gives ')[0]} would pass for the right answer"
    if reason.startswith("the example does not meet"):
        return f"the example does not meet a requirement: {reason.split(': ', 2)[2].split('. ')[0]}"
    return "the value is too near the limit to be judged" if " is too near " in reason else reason


def _blamed(task: Task, reason: str) -> int:
    """The line that the reason is about."""
    for part in task.parts:
        if reason.startswith(f"part {part.id}: "):
            return _blamed(part, reason.partition(": ")[2])
    if "would pass for" in reason:
        return _line(task, "tolerance" if "tolerance" in task.lines else "slips")
    if reason.startswith("the example"):
        return _line(task, "enter")
    return _line(task, "slips" if "options" in reason else "statements" if "statement" in reason else "givens")


def _texts(task: Task) -> list[str]:
    statements = [statement.text for part in (task, *task.parts) for statement in part.statements]
    return [task.text, *(part.text for part in task.parts), *statements]


def _unknown_placeholders(task: Task) -> Iterator[Said]:
    known = {given.name for given in task.givens if given.name not in DRAWN_HERE} | task.let.keys()
    for match in (match for text in _texts(task) for match in PLACEHOLDER.finditer(text)):
        if match.group(1) not in known:
            yield "text", f"{match.group()} is not a given; known: {', '.join(sorted(known)) or 'none'}"


def _printed_as_they_stand(task: Task) -> Iterator[Said]:
    for text in _texts(task):
        for match in PLACEHOLDER.finditer(text):
            if match.group(1) in task.let and not _UNIT_BEHIND.match(text, match.end()):
                yield "text", f"{match.group()} is printed without a unit; write one behind it"
    for hint in (*task.hints, *(hint for part in task.parts for hint in part.hints)):
        if PLACEHOLDER.search(hint):
            yield "hints", f"a hint is printed as it stands, with its brackets: “{hint}”"


def _too_few(task: Task, questions: list[Question], texts: int) -> Iterator[Said]:
    if task.kind in ("formula", "open"):
        return
    answers = {_right_of(question) for question in questions}
    different = len(answers) if task.relation and task.kind != "choice" else texts
    if different < _FEWEST_VARIANTS:
        kind = "answers" if different == len(answers) else "questions"
        yield "givens", f"only {different} different {kind} among {len(questions)} students: give more numbers"


def _right_of(question: Question) -> tuple[float, ...]:
    return tuple(value for part in (question.parts or (question,)) for value in part.numbers.right)


def _unusual(task: Task, questions: list[Question]) -> Iterator[Said]:
    """Numbers that no workshop meets: possible, but seldom meant, or a slip of the finger."""
    for given in task.givens:
        if given.name not in QUANTITIES:
            continue
        usual = QUANTITIES[given.name].usual
        beyond = _FAR_OUT * (usual.high - usual.low)
        drawn = [question.numbers.givens[given.name].value for question in questions if question.numbers.givens]
        odd = [value for value in drawn if not usual.low - beyond <= value <= usual.high + beyond]
        if odd:
            shown = QUANTITIES[given.name].show(odd[0])
            span = QUANTITIES[given.name].show_span(usual)
            yield "givens", f"{given.name} {shown} is far outside the usual {span}: is that meant?"


def _pictures(questions: list[Question]) -> Iterator[Said]:
    for question in questions[:_DRAWN_PICTURES]:
        try:
            pictures_of(question)
        except DrillpointError as error:
            yield "drawing", f"the drawing cannot be made: {str(error).splitlines()[0]}"
            return


def _options(task: Task, questions: list[Question]) -> Iterator[Said]:
    """Wrong options that fall away because they look like the right one, or like each other."""
    if task.statements:
        yield from _alike(task)
        return
    lost: Counter[str] = Counter()
    for question in questions:
        shown = {wrong.name for _, wrong in question.options if wrong}
        # With all places taken a further slip is a spare one.
        if len(question.options) < MOST_COMPUTED_OPTIONS:
            lost.update({wrong.name for wrong in question.numbers.wrong} - shown)
    for name, count in sorted(lost.items()):
        why = "it shows the same as another option, or is not above 0"
        yield "slips", f"“{name}” is no option in {count} of {len(questions)} draws: {why}"


def _alike(task: Task) -> Iterator[Said]:
    if len({statement.text for statement in task.statements}) < len(task.statements):
        yield "statements", "two statements read the same"


def _answers_in_text(questions: list[Question], texts: Sequence[str] = ()) -> Iterator[Said]:
    """texts: where to look, if not in the question itself."""
    seen = texts or [question.text for question in questions]
    count = sum(_stands_in(question, text) for question, text in zip(questions, seen, strict=True))
    if count > _MOST_BY_CHANCE * len(questions):
        yield "text", f"in {count} of {len(questions)} draws the answer stands in the question itself"


def _answers_in_hints(task: Task, questions: list[Question]) -> Iterator[Said]:
    for hint in task.hints:
        count = sum(_stands_in(question, hint) for question in questions)
        if count > _MOST_BY_CHANCE * len(questions):
            yield "hints", f"in {count} of {len(questions)} draws the answer stands in a hint: “{hint}”"


def _stands_in(question: Question, text: str) -> bool:
    """Whether a given or a number in the text passes for the right answer."""
    numbers = question.numbers
    factor = unit_and_factor(question.task.unit)[1]
    written = [float(match.group().replace(",", ".")) * factor for match in _NUMBER.finditer(text)]
    printed = [given.value for given in numbers.givens.values() if given.shown in text]
    return any(abs(value - numbers.right[0]) <= numbers.tolerance for value in (*written, *printed))


def _twin_slips(questions: list[Question]) -> Iterator[Said]:
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
            yield "slips", f"“{first_name}” and “{second_name}” give the same value: keep one of them"


def _silent_slips(task: Task, questions: list[Question]) -> Iterator[Said]:
    seen = {wrong.name for question in questions for wrong in question.numbers.wrong}
    for rule in task.slips:
        if rule.name not in seen:
            yield "slips", f"“{rule.name}” never gives a value of its own here: take it out"


def _missing_words(task: Task, text: str) -> Iterator[Said]:
    for name, words in _CONVENTION_WORDS.items():
        if "{" + name + "}" in task.text and not any(word in text.lower() for word in words):
            yield "text", f"the text does not say which {name.replace('_', ' ')} is meant: {' or '.join(words)}"
