"""An invented class of 24 numbered students whose hand-ins show everything marking has to cope with.

Each student has an intention (all right, rounded early, the first slip of every task, a broken file ...). The typed
answers follow from the intention and from the student's own numbers; so the diagnosis is known beforehand, and a test
holds the marking against it.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from fractions import Fraction
from pathlib import Path

from attrs import frozen

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.exercise_file import load_set
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WRONG
from drillpoint.course.numbers import Wrong
from drillpoint.course.reading import MM_PER_INCH, unit_and_factor, with_unit
from drillpoint.course.safe_file import write_safely
from drillpoint.course.slips import ROUNDED_EARLY, ROUNDING_SHARE
from drillpoint.course.variant import Question, Variants

SET = "lips"
STUDENTS = 24
_RIGHT_FORMULAS = ("D/(2*tan(κ))", "h = D/2 * cot κ", "(D/2)/tan(kappa)", "0,5·D·tan(90 − κ)")
_SLIP_FORMULAS = {
    "whole angle for half": "D/(2*tan(2*κ))",
    "half angle for whole": "D/(2*tan(κ/2))",
    "tangent upside down": "D/2*tan(κ)",
    "diameter for radius": "D/tan(κ)",
    "radius for diameter": "D/4/tan κ",
    "sine for tangent": "D/(2 sin κ)",
    "cosine for tangent": "D/2*cos κ",
}
_GARBAGE = (
    "__import__('os')",
    "=1+1",
    "<b>5</b>",
    "9**9**9",
    "nothing",
    "yes",
    "?",
    "no idea",
    "@SUM(A1)",
    "5 furlongs",
)
_BROKEN = ("1,234", "3.5.1", "5 mm 3", "sin 2κ", "e", "59deg8", "1.5/2", "no", "5 5", "10°°")

_RULES = """\
# Rules and decisions for the invented class; marking reads this file and never writes it.
# python3 -m drillpoint mark exercises/demo-class/hand-ins --set lips --roster exercises/demo-class/roster.csv
#     --rules exercises/demo-class/rules.toml --out grades.csv

deadline = 2026-03-12T19:16:30Z
counts = "last"
penalty_per_day = 10

[[accept]]
student = "s14"
task = "point-height"
typed = "1,234"
share = 0.5
reason = "1.234 was meant, as the sketch on paper shows"

[[add]]
student = "s20"
points = 3
reason = "three tasks done aloud at the bench"

[[excuse]]
student = "s24"
reason = "moved to another class"

[[extend]]
student = "s18"
deadline = 2026-03-14T20:00:00Z
reason = "the computer of the workshop was down"
"""


@frozen
class Intended:
    """One answer (None if not answered) and the verdict it must get: the mark, the state and the slip."""

    typed: str | None
    mark: float
    state: str
    slip: str = ""


Maker = Callable[[Question], Intended]


def student_id(number: int) -> str:
    """The id of a student of the invented class."""
    return f"s{number:02}"


def intentions(exercise_set: ExerciseSet) -> Mapping[str, tuple[Intended, ...]]:
    """What each student of the class means to answer, task by task, with the verdict it must get."""
    variants = Variants(exercise_set)
    everybody = [student_id(number) for number in range(1, STUDENTS + 1)]
    makers: dict[int, Maker] = {
        1: _right,
        2: _right_with_comma,
        3: _right_in_other_unit,
        4: _right_at_the_edge,
        5: _rounded_early,
        **{number: _slip_number(number - 6) for number in range(6, 13)},
        13: lambda question: Intended(_GARBAGE[question.number - 1], 0.0, UNREADABLE),
        14: lambda question: Intended(_BROKEN[question.number - 1], 0.0, UNREADABLE),
        15: lambda question: _somebody_elses(
            question, [variants.question(question.task.id, other) for other in everybody]
        ),
        16: lambda question: _right(question) if question.number % 3 == 1 else _unanswered(question),
        17: _right,
        18: _right,
    }
    return {
        student_id(number): tuple(
            makers.get(number, _unanswered)(question) for question in variants.questions(student_id(number))
        )
        for number in range(1, STUDENTS + 1)
    }


def write_demo_class(folder: Path) -> int:
    """Write roster.csv, rules.toml and the hand-ins below `folder`; give the number of hand-in files."""
    files = demo_files(load_set(SET))
    for name, data in files.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        write_safely(path, data)
    return sum(name.startswith("hand-ins/") for name in files)


def demo_files(exercise_set: ExerciseSet) -> Mapping[str, bytes]:
    """All files of the invented class, by path. The same set gives the same bytes."""
    lines = ["id,name", *(f"{student_id(n)},Student {n:02}" for n in range(1, STUDENTS + 1))]
    files = {"roster.csv": ("\n".join(lines) + "\n").encode("ascii"), "rules.toml": _RULES.encode("ascii")}
    planned = intentions(exercise_set)
    for number in range(1, 19):
        own = _hand_in(exercise_set, student_id(number), planned[student_id(number)], number)
        files[f"hand-ins/{_place(number)}"] = own
    right = planned[student_id(1)]

    # s17 first handed in all wrong, then again; s18 changed an answer in the file itself.
    files["hand-ins/earlier/lips-s17.hand-in.json"] = _hand_in(
        exercise_set, "s17", tuple(Intended("1", 0.0, WRONG) for _ in right), 1, which=slice(0, 3)
    )
    tampered = json.loads(files["hand-ins/lips-s18.hand-in.json"])
    tampered["answers"][0]["time"] = "2026-03-12T18:00:00Z"
    files["hand-ins/lips-s18.hand-in.json"] = json.dumps(tampered, indent=1).encode("ascii")

    # s19 a file cut off half-way, s20 none at all, s21 an older version, s22 another set, s23 not UTF-8,
    # s24 saved answers that were not handed in.
    files["hand-ins/lips-s19.hand-in.json"] = _hand_in(exercise_set, "s19", right, 19)[:400]
    files["hand-ins/lips-s21.hand-in.json"] = _hand_in(exercise_set, "s21", right, 21, version=exercise_set.version - 1)
    files["hand-ins/drilling-times-s22.hand-in.json"] = _hand_in(
        exercise_set, "s22", right, 22, set_id="drilling-times"
    )
    files["hand-ins/lips-s23.hand-in.json"] = '{"format": "drillpoint hand-in", "student": "s23", "name": "é"}'.encode(
        "latin-1"
    )
    saved = {
        "format": "drillpoint answers",
        "set": SET,
        "version": exercise_set.version,
        "student": "s24",
        "answers": [],
    }
    files["hand-ins/s24/lips.answers.json"] = json.dumps(saved).encode("ascii")

    # And what else lies about in such a folder.
    files["hand-ins/lips-s99.hand-in.json"] = _hand_in(exercise_set, "s99", right, 23)
    files["hand-ins/visitor.json"] = _hand_in(exercise_set, "s03", right, 23, course="Another school")
    files["hand-ins/not-a-number.json"] = b'{"format": "drillpoint hand-in", "version": NaN}'
    files["hand-ins/notes.txt"] = b"Ask about task 8 next week.\n"
    return dict(sorted(files.items()))


def _place(number: int) -> str:
    """Files arrive under all sorts of names; what counts is inside."""
    odd = {8: "s08/answers (1).json", 9: "s09/renamed.json", 10: "from-the-stick/lips-s10.hand-in(2).json"}
    return odd.get(number, f"lips-{student_id(number)}.hand-in.json")


def _hand_in(
    exercise_set: ExerciseSet,
    student: str,
    answers: tuple[Intended, ...],
    minute: int,
    *,
    which: slice = slice(None),
    version: int | None = None,
    set_id: str | None = None,
    course: str | None = None,
) -> bytes:
    pairs = list(zip(exercise_set.tasks, answers, strict=True))[which]
    records = [
        AnswerRecord(task.id, intended.typed, f"2026-03-12T18:{minute:02}:{index:02}Z")
        for index, (task, intended) in enumerate(pairs)
        if intended.typed is not None
    ]
    return hand_in_bytes(
        course or exercise_set.course,
        set_id or exercise_set.id,
        exercise_set.version if version is None else version,
        student,
        records,
        f"2026-03-12T19:{minute:02}:00Z",
    )


def _unanswered(_: Question) -> Intended:
    return Intended(None, 0.0, MISSING)


def _right(question: Question) -> Intended:
    return Intended(_typed(question, question.numbers.right[0]), 1.0, RIGHT)


def _right_with_comma(question: Question) -> Intended:
    if question.task.kind in ("formula", "choice"):
        return Intended(_RIGHT_FORMULAS[3] if question.task.kind == "formula" else f"({_letter(question)})", 1.0, RIGHT)
    # Three decimals behind a comma could be thousands; four cannot.
    decimals = 4 if question.task.decimals == 3 else question.task.decimals
    number = f"{question.numbers.right[0] / unit_and_factor(question.task.unit)[1]:.{decimals}f}"
    return Intended(_yes(question, question.numbers.yes) + number.replace(".", ","), 1.0, RIGHT)


def _right_in_other_unit(question: Question) -> Intended:
    """The same length in inches, or in millimetres for inches, or as a mixed number; the same angle in radians."""
    value = question.numbers.right[0]
    if question.task.kind in ("formula", "choice"):
        return Intended(
            _RIGHT_FORMULAS[2] if question.task.kind == "formula" else _letter(question).upper(), 1.0, RIGHT
        )
    if question.task.unit == "°":
        typed = f"{value * 3.141592653589793 / 180:.5f} rad"
    elif question.task.unit == "in":
        typed = f"{value:.3f} mm"
    elif question.number % 2:
        whole, part = divmod(Fraction(round(value * 100), 100), 1)
        typed = f"{whole} {part} mm" if part else f"{whole} mm"
    else:
        typed = f"{value / MM_PER_INCH:.4f} in"
    return Intended(_yes(question, question.numbers.yes) + typed, 1.0, RIGHT)


def _right_at_the_edge(question: Question) -> Intended:
    if question.task.kind in ("formula", "choice"):
        return Intended(_RIGHT_FORMULAS[1] if question.task.kind == "formula" else f"{_letter(question)})", 1.0, RIGHT)
    return Intended(_typed(question, question.numbers.right[0] + 0.95 * question.numbers.tolerance, 2), 1.0, RIGHT)


def _rounded_early(question: Question) -> Intended:
    if question.task.kind in ("formula", "choice"):
        return _right(question)
    right, reach = question.numbers.right[0], 2 * question.numbers.tolerance
    value = next(v for v in (right * 1.025, right * 0.975, right * 1.02) if _far_from_slips(question, v, reach))
    typed = _typed(question, value, 1)
    if question.task.kind == "judgement":
        return Intended(typed, 0.5, PARTLY, ROUNDED_EARLY)
    return Intended(typed, 0.0, WRONG, ROUNDED_EARLY)


def _far_from_slips(question: Question, value: float, reach: float) -> bool:
    return all(abs(wrong.values[0] - value) > reach for wrong in question.numbers.wrong)


def _slip_number(index: int) -> Maker:
    """The slip with this index of every task; a task with fewer slips gets an answer that is plainly wrong."""

    def make(question: Question) -> Intended:
        slips = [wrong for _, wrong in question.options if wrong] or question.numbers.wrong
        names = [rule.name for rule in question.task.slips][index:]
        wrong = next((slip for name in names for slip in slips if slip.name == name), None)
        if wrong is None:
            return _plainly_wrong(question)
        if question.task.kind == "formula":
            return Intended(_SLIP_FORMULAS[wrong.name], 0.0, WRONG, wrong.name)
        if question.options:
            return Intended(_letter(question, wrong), 0.0, WRONG, wrong.name)
        typed = _typed(question, wrong.values[0])
        if question.task.kind == "judgement":
            return Intended(typed, 0.5, PARTLY, wrong.name)
        return Intended(typed, 0.0, WRONG, wrong.name)

    return make


def _plainly_wrong(question: Question) -> Intended:
    if question.task.kind == "formula":
        return Intended("D + κ", 0.0, WRONG)
    if question.options:
        return Intended(_letter(question), 1.0, RIGHT)
    value = question.numbers.right[0]
    far = max(abs(wrong.values[0]) for wrong in question.numbers.wrong) + abs(value) * 3
    if question.task.kind == "judgement":
        other = _yes(question, not question.numbers.yes)
        return Intended(f"{other}{_number(question, far)}", 0.0, WRONG)
    return Intended(_number(question, far), 0.0, WRONG)


def _somebody_elses(question: Question, others: list[Question]) -> Intended:
    """The answer that is right for the first student for whom it explains itself in no other way."""
    if question.task.kind in ("formula", "choice"):
        return _right(question)
    right, reach = question.numbers.right[0], 2 * question.numbers.tolerance
    value = next(
        value
        for value in (other.numbers.right[0] for other in others)
        if abs(value / right - 1) > 2 * ROUNDING_SHARE and _far_from_slips(question, value, reach)
    )
    typed = _yes(question, question.numbers.yes) + _number(question, value)
    if question.task.kind == "judgement":
        return Intended(typed, 0.5, PARTLY)
    return Intended(typed, 0.0, WRONG)


def _typed(question: Question, value: float, more_digits: int = 0) -> str:
    if question.task.kind == "formula":
        return _RIGHT_FORMULAS[0]
    if question.options:
        return _letter(question)
    return _yes(question, question.numbers.yes) + _number(question, value, more_digits)


def _number(question: Question, value: float, more_digits: int = 0) -> str:
    factor = unit_and_factor(question.task.unit)[1]
    return with_unit(f"{value / factor:.{question.task.decimals + more_digits}f}", question.task.unit)


def _yes(question: Question, yes: bool | None) -> str:
    return "" if question.numbers.yes is None else ("yes, " if yes else "no, ")


def _letter(question: Question, wrong: Wrong | None = None) -> str:
    return next(
        letter for letter, (_, slip) in zip(question.form.letters, question.options, strict=True) if slip is wrong
    )
