"""Marking a class: from files to results. A pure function of what the files hold; no student's code is ever run.

Nothing is lost: every file ends up with a student or in the list of unclaimed files, every student of the roster has a
line, and every oddity is put into words for the instructor.
"""

from __future__ import annotations

import re
from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Mapping, Sequence
from operator import itemgetter

from attrs import field, frozen

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import AnswerRecord, HandIn, HandInProblem, read_hand_in
from drillpoint.course.judging import MISSING, UNREADABLE, Verdict, judge_answer, missing
from drillpoint.course.roster import Student
from drillpoint.course.variant import Question, Variants

MARKED, LOOK, NOT_MARKED, NO_HAND_IN = "marked", "look at it", "not marked", "no hand-in"
_NAMED_AT_MOST = 3
_LOOKED_AT_MOST = 50

Progress = Callable[[int, int], None]


@frozen
class Unclaimed:
    """A file that belongs to no student of the roster, or that cannot be marked for one."""

    path: str
    reason: str


@frozen
class Mark:
    """One task of one student: what was typed (None if nothing) and what it is worth."""

    question: Question
    typed: str | None
    verdict: Verdict
    also_right_for: tuple[str, ...] = ()
    """Students for whose numbers this wrong answer would be right. For the instructor only."""

    @property
    def points(self) -> float:
        """The mark times the points of the task."""
        return self.verdict.mark * self.question.task.points


@frozen
class StudentResult:
    """One student: the marks in the order of the tasks, and everything the instructor should know."""

    student: Student
    status: str
    marks: tuple[Mark, ...]
    problems: tuple[str, ...]
    files: tuple[str, ...] = ()

    @property
    def total(self) -> float:
        """The points reached."""
        return sum(mark.points for mark in self.marks)


@frozen
class ClassResult:
    """A whole class."""

    set: ExerciseSet
    students: tuple[StudentResult, ...]
    unclaimed: tuple[Unclaimed, ...]

    @property
    def out_of(self) -> float:
        """The points that can be reached."""
        return sum(task.points for task in self.set.tasks)


@frozen
class _Pile:
    """What was found for one student before marking."""

    hand_ins: list[tuple[str, HandIn]] = field(factory=list)
    notes: list[str] = field(factory=list)


def mark_class(
    exercise_set: ExerciseSet, roster: Sequence[Student], files: Iterable[File], progress: Progress | None = None
) -> ClassResult:
    """Mark every student of the roster from the files, whatever they are called and wherever they lie."""
    piles = {student.id: _Pile() for student in roster}
    ids = {student.id.casefold(): student.id for student in roster}
    unclaimed = [entry for file in files if (entry := _sort_in(file, exercise_set, piles, ids)) is not None]
    variants = Variants(exercise_set)
    questions = {student.id: tuple(variants.questions(student.id)) for student in roster}
    others = _Others(questions)
    results = []
    for count, student in enumerate(roster, start=1):
        results.append(_mark_student(exercise_set, questions[student.id], others, student, piles[student.id]))
        if progress is not None:
            progress(count, len(roster))
    return ClassResult(exercise_set, tuple(results), tuple(unclaimed))


def _sort_in(
    file: File, exercise_set: ExerciseSet, piles: Mapping[str, _Pile], ids: Mapping[str, str]
) -> Unclaimed | None:
    """Put a file on its student's pile, or say why it belongs to nobody's."""
    problem = file.problem
    if not problem:
        try:
            hand_in = read_hand_in(file.data)
        except HandInProblem as error:
            problem = str(error)
    if problem:
        # Only the name of the file can tell whose it may be.
        for student_id in _named_in(file.path, ids):
            piles[student_id].notes.append(f"{file.path} may be theirs and was not marked: {problem}")
        return Unclaimed(file.path, problem)
    pile = piles.get(hand_in.student.strip())
    if pile is None:
        return Unclaimed(file.path, f"its student “{_plain(hand_in.student)}” is not in the roster")
    if reason := _foreign(hand_in, exercise_set):
        pile.notes.append(f"{file.path} was not marked: {reason}")
        return Unclaimed(file.path, f"{reason} (student {hand_in.student})")
    pile.hand_ins.append((file.path, hand_in))
    return None


def _foreign(hand_in: HandIn, exercise_set: ExerciseSet) -> str:
    if hand_in.course != exercise_set.course:
        return f"it belongs to another course, “{_plain(hand_in.course)}”"
    if hand_in.set != exercise_set.id:
        return f"it belongs to another set, “{_plain(hand_in.set)}”"
    if hand_in.version < exercise_set.version:
        now = f"which is now version {exercise_set.version}: other numbers"
        return f"it answers version {hand_in.version} of the set, {now}"
    if hand_in.version > exercise_set.version:
        return f"it answers version {hand_in.version} of the set; the set here is only version {exercise_set.version}"
    return ""


def _named_in(path: str, ids: Mapping[str, str]) -> list[str]:
    """Find the ids of the roster that stand as a word of their own in a path: `s07` in `inbox/lips-s07 (1).json`."""
    words = [
        *re.split(r"[\W_]+", path.casefold()),
        *re.split(r"[^\w-]+|_", path.casefold()),
        *path.casefold().split("/"),
    ]
    return [ids[word] for word in dict.fromkeys(words) if word in ids]


def _mark_student(
    exercise_set: ExerciseSet, questions: Sequence[Question], others: _Others, student: Student, pile: _Pile
) -> StudentResult:
    problems = list(pile.notes)
    answers = _last_answers(exercise_set, pile.hand_ins, problems)
    marks = []
    for question in questions:
        record = answers.get(question.task.id)
        verdict = judge_answer(question, record.typed) if record else missing()
        also = others.right_for(question, verdict)
        marks.append(Mark(question, record.typed if record else None, verdict, also))
    if not pile.hand_ins:
        status = NOT_MARKED if pile.notes else NO_HAND_IN
        problems.append("no hand-in file that can be marked" if pile.notes else "no hand-in file")
    else:
        problems += _about_marks(marks)
        status = LOOK if problems else MARKED
    return StudentResult(student, status, tuple(marks), tuple(problems), tuple(path for path, _ in pile.hand_ins))


def _last_answers(
    exercise_set: ExerciseSet, hand_ins: list[tuple[str, HandIn]], problems: list[str]
) -> dict[str, AnswerRecord]:
    """Take the last answer to each task over all of a student's files, and report what was not plain."""
    for path, hand_in in hand_ins:
        if not hand_in.intact:
            problems.append(f"{path} was altered after it was made (its digest does not match); marked as it stands")
    if len(hand_ins) > 1:
        problems.append(
            f"{len(hand_ins)} hand-in files ({', '.join(path for path, _ in hand_ins)}): "
            "the last answer to each task counts"
        )
    known = {task.id: number for number, task in enumerate(exercise_set.tasks, start=1)}
    given: dict[str, list[tuple[str, str, str, AnswerRecord]]] = {}
    for path, hand_in in hand_ins:
        for record in hand_in.answers:
            if record.task not in known:
                problems.append(f"{path} answers a task that the set does not have, “{_plain(record.task)}”")
                continue
            given.setdefault(record.task, []).append((record.time, hand_in.time, path, record))
    last = {}
    for task_id, records in given.items():
        records.sort(key=itemgetter(0, 1, 2))
        last[task_id] = records[-1][3]
        typed = list(dict.fromkeys(entry[3].typed for entry in records)) if len(records) > 1 else []
        if len(typed) > 1:
            earlier = ", ".join(f"“{_plain(text)}”" for text in typed if text != last[task_id].typed)
            counts = f"“{_plain(last[task_id].typed)}” counts, earlier {earlier}"
            problems.append(f"task {known[task_id]} answered more than once: {counts}")
    return last


def _about_marks(marks: Sequence[Mark]) -> list[str]:
    said = []
    unanswered = [str(mark.question.number) for mark in marks if mark.verdict.state == MISSING]
    if unanswered:
        said.append(f"not answered: task {', '.join(unanswered)}")
    for mark in marks:
        if mark.verdict.state == UNREADABLE:
            why = mark.verdict.message.rstrip(".")
            said.append(f"task {mark.question.number} could not be read: “{_plain(mark.typed or '')}” ({why})")
    for mark in marks:
        if mark.also_right_for:
            named = ", ".join(mark.also_right_for[:_NAMED_AT_MOST])
            more = len(mark.also_right_for) - _NAMED_AT_MOST
            named += f" and {more} more" if more > 0 else ""
            said.append(f"task {mark.question.number} is right for the numbers of {named}")
    return said


class _Others:
    """Finds students for whose numbers a wrong answer would be right."""

    def __init__(self, questions: Mapping[str, Sequence[Question]]) -> None:
        self._right: dict[str, list[tuple[float, float, str]]] = {}
        for student_id, own in questions.items():
            for question in own:
                if question.task.kind in ("number", "judgement"):
                    entry = (question.numbers.right[0], question.numbers.tolerance, student_id)
                    self._right.setdefault(question.task.id, []).append(entry)
        self._reach = {task_id: max(entry[1] for entry in entries) for task_id, entries in self._right.items()}
        for entries in self._right.values():
            entries.sort()

    def right_for(self, question: Question, verdict: Verdict) -> tuple[str, ...]:
        """Name them, unless the answer is right, unreadable or explained by a slip."""
        known, value = self._right.get(question.task.id), verdict.value
        if known is None or value is None:
            return ()
        reach = self._reach[question.task.id]
        first = bisect_left(known, value - reach, key=itemgetter(0))
        last = bisect_right(known, value + reach, key=itemgetter(0))
        # In a large class numbers repeat so often that a long list would say nothing.
        near = known[first : min(last, first + _LOOKED_AT_MOST)]
        return tuple(sorted(student for right, reach, student in near if abs(right - value) <= reach * (1 + 1e-9)))


def _plain(text: str, longest: int = 60) -> str:
    shown = "".join(c if c.isprintable() else "\ufffd" for c in text[:longest])
    return shown + ("…" if len(text) > longest else "")
