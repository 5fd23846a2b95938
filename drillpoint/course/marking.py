"""Marking a class: from files to results. A pure function of what the files hold; no student's code is ever run.

Nothing is lost: every file ends up with a student or among the unclaimed, every student of the roster has a line, every
oddity is put into words for the instructor, and every mark says how it came about.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import cached_property
from pathlib import Path
from types import TracebackType
from typing import Self

from attrs import frozen

from drillpoint.course.counting import Answers
from drillpoint.course.deciding import Decisions
from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.folder import File
from drillpoint.course.judging import MISSING, UNREADABLE, WAITING, Verdict, judge_task
from drillpoint.course.others import Others
from drillpoint.course.piles import Pile, Piles, Sitting, Unclaimed, plain
from drillpoint.course.results import ClassResult, Mark, StudentResult
from drillpoint.course.roster import Student
from drillpoint.course.rules import BEST, NO_RULES, Rules, time_of
from drillpoint.course.variant import Question, Variants

MARKED, LOOK, NOT_MARKED, NO_HAND_IN, EXCUSED = "marked", "look at it", "not marked", "no hand-in", "excused"
_NAMED_AT_MOST = 3

Progress = Callable[[int, int], None]


def mark_class(
    exercise_set: ExerciseSet,
    roster: Sequence[Student],
    files: Iterable[File],
    progress: Progress | None = None,
    *,
    rules: Rules = NO_RULES,
    older: Sequence[ExerciseSet] = (),
) -> ClassResult:
    """Mark every student of the roster from the files, whatever they are called and wherever they lie.

    All results are in memory at once; `Marking` gives them one by one.
    """
    with Marking(exercise_set, roster, rules=rules, older=older) as marking:
        for file in files:
            marking.sort_in(file)
        students = []
        for count, result in enumerate(marking.results(), start=1):
            students.append(result)
            if progress is not None:
                progress(count, len(roster))
        unclaimed = sorted(marking.unclaimed(), key=lambda entry: (entry.path, entry.reason))
        return ClassResult(exercise_set, tuple(students), tuple(unclaimed), marking.unused)


@frozen
class _Version:
    """One version of the set: where its questions come from, and the keys of each task's boxes."""

    set: ExerciseSet
    variants: Variants
    boxes: tuple[tuple[str, ...], ...]
    numbers: Mapping[str, int]
    """Box -> number of its task."""

    @classmethod
    def of(cls, exercise_set: ExerciseSet, anybody: str) -> _Version:
        variants = Variants(exercise_set)
        boxes = tuple(tuple(box.key for box in q.boxes) for q in variants.questions(anybody))
        numbers = {box: number for number, keys in enumerate(boxes, start=1) for box in keys}
        return cls(exercise_set, variants, boxes, numbers)


class Marking:
    """The marking of one class: first every file is sorted in, then the results come one by one.

    Memory does not grow with the number of answers. A context manager, since a large class is kept on the disk
    meanwhile, in the folder `room` (where the system keeps such files, if it is not given).
    """

    def __init__(
        self,
        exercise_set: ExerciseSet,
        roster: Sequence[Student],
        *,
        rules: Rules = NO_RULES,
        older: Sequence[ExerciseSet] = (),
        room: Path | None = None,
    ) -> None:
        """Take the set, the class, what was decided about it, and older versions of the set that may be answered."""
        self.set, self.roster = exercise_set, roster
        self._decisions = Decisions(rules)
        self._sets = {one.version: one for one in (*older, exercise_set)}
        self._versions: dict[int, tuple[_Version, Others]] = {}
        self._piles = Piles((exercise_set, *older), roster, room)

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        self._piles.__exit__(kind, error, at)

    def sort_in(self, file: File) -> None:
        """Put a file on its student's pile, or among the unclaimed."""
        self._piles.sort_in(file)

    def unclaimed(self) -> Iterator[Unclaimed]:
        """The files that belong to nobody."""
        return self._piles.unclaimed()

    def results(self) -> Iterator[StudentResult]:
        """Give the result of every student of the roster, in its order."""
        return (self._mark(student, self._piles.of(student)) for student in self.roster)

    @cached_property
    def unused(self) -> tuple[str, ...]:
        """The decisions that changed nothing. Ask after the results have been read."""
        return self._decisions.unused()

    def _version(self, number: int) -> tuple[_Version, Others]:
        if number not in self._versions:
            version = _Version.of(self._sets[number], self.roster[0].id)
            everybody = ((student.id, version.variants.questions(student.id)) for student in self.roster)
            self._versions[number] = version, Others(everybody)
        return self._versions[number]

    def _mark(self, student: Student, pile: Pile) -> StudentResult:
        problems, notes = list(pile.notes), list[str]()
        sittings, aside = self._that_count(student, pile, problems, notes)
        version, others = self._version(sittings[-1].version if sittings else self.set.version)
        answers = Answers(sittings, lambda sitting: self._decisions.days_late(student, sitting))
        marks = []
        for question, boxes in zip(version.variants.questions(student.id), version.boxes, strict=True):
            mark = self._best(student, question, boxes, answers) if sittings else _unanswered(question)
            mark = self._decisions.about(student, mark)
            marks.append(mark if mark.verdict.mark else _with_others(mark, others))
        _about_files(sittings, answers, version, marks, problems, notes if self._decisions.rules.file else problems)
        if sittings:
            problems += about_marks(marks)
        else:
            problems.append("no hand-in file that can be marked" if pile.notes or aside else "no hand-in file")
        status = (LOOK if problems else MARKED) if sittings else NOT_MARKED if pile.notes or aside else NO_HAND_IN
        if excused := self._decisions.excused(student):
            status, problems, notes = EXCUSED, [], [excused, *problems, *notes]
        return StudentResult(
            student, status, tuple(marks), tuple(problems), tuple(sorted(sitting.path for sitting in sittings)),
            tuple(notes), version.set.version, self._decisions.added(student), tuple(aside),
            bool(excused),
        )  # fmt: skip

    def _that_count(
        self, student: Student, pile: Pile, problems: list[str], notes: list[str]
    ) -> tuple[list[Sitting], list[tuple[str, str]]]:
        """Take the sittings of the newest version answered, in time; say why others are set aside."""
        newest = max((sitting.version for sitting in pile.sittings), default=self.set.version)
        if newest != self.set.version:
            notes.append(f"answered and marked by version {newest} of the set, which is now version {self.set.version}")
        sittings, aside = [], []
        for sitting in pile.sittings:
            if sitting.version != newest:
                why = f"it answers version {sitting.version}; version {newest} was handed in, too, and counts"
                aside.append((sitting.path, why))
                problems.append(f"{sitting.path} was not marked: {why}")
            elif self._decisions.too_late(student, sitting):
                aside.append((sitting.path, "it was handed in after the marking was closed"))
                problems.append(f"{sitting.path} was not marked: it was handed in after the marking was closed")
            else:
                sittings.append(sitting)
                if self._decisions.rules.deadline and time_of(sitting.time) is None:
                    problems.append(f"the time in {sitting.path} cannot be read, so it was not taken as late")
                if late := self._decisions.days_late(student, sitting):
                    notes.append(f"{sitting.path} was handed in {days(late)} late")
        return sittings, aside

    def _best(self, student: Student, question: Question, boxes: Sequence[str], answers: Answers) -> Mark:
        """The mark on the answer that counts: the last, or the one that earns most after what lateness takes off."""
        if self._decisions.rules.counts != BEST or len(answers.sittings) < 2:
            candidates = [answers.last(boxes)]
        else:
            candidates = answers.all(boxes)
        marks = [
            Mark(question, candidate.typed, judge_task(question, candidate.typed), days_late=candidate.days_late)
            for candidate in candidates
        ]
        return max(marks, key=lambda mark: self._decisions.about(student, mark).points) if len(marks) > 1 else marks[0]


def _unanswered(question: Question) -> Mark:
    return Mark(question, {}, judge_task(question, {}))


def _with_others(mark: Mark, others: Others) -> Mark:
    also = others.right_for(mark.question, mark.verdict)
    return mark.with_others(also) if also else mark


def _about_files(
    sittings: Sequence[Sitting],
    answers: Answers,
    version: _Version,
    marks: Sequence[Mark],
    problems: list[str],
    expected: list[str],
) -> None:
    """Tell what was not plain about the files; several of them are `expected` where there is a rule about them."""
    for sitting in sittings:
        if not sitting.intact:
            text = "was altered after it was made (its digest does not match); marked as it stands"
            problems.append(f"{sitting.path} {text}")
    if len(sittings) > 1:
        paths = ", ".join(sorted(sitting.path for sitting in sittings))
        which = "best" if any(mark.best for mark in marks) else "last"
        expected.append(f"{len(sittings)} hand-in files ({paths}): the {which} answer to each task counts")
    for key in answers.boxes:
        if key not in version.numbers:
            where = next(s.path for s in sittings if any(answer.task == key for answer in s.answers))
            problems.append(f"{where} answers a task that the set does not have, “{plain(key)}”")
    for mark, boxes in zip(marks, version.boxes, strict=True):
        if said := answers.said_differently(boxes, mark.answers):
            expected.append(f"task {mark.question.number} answered more than once: {said}")


def about_marks(marks: Sequence[Mark]) -> list[str]:
    """What an instructor should see in a student's marks."""
    said = []
    unanswered = [str(mark.question.number) for mark in marks if mark.verdict.state == MISSING and mark.open]
    if unanswered:
        said.append(f"not answered: task {', '.join(unanswered)}")
    waiting = [str(mark.question.number) for mark in marks if mark.verdict.state == WAITING and mark.open]
    if waiting:
        said.append(f"waits for your mark: task {', '.join(waiting)}")
    for mark in marks:
        for box, verdict in unreadable(mark):
            where = f"task {mark.question.number}" + (f", {box.partition('.')[2]}," if "." in box else "")
            why = verdict.message.rstrip(".")
            said.append(f"{where} could not be read: “{plain(mark.answers.get(box, ''))}” ({why})")
    for mark in marks:
        if mark.also_right_for:
            named = ", ".join(mark.also_right_for[:_NAMED_AT_MOST])
            more = len(mark.also_right_for) - _NAMED_AT_MOST
            named += f" and {more} more" if more > 0 else ""
            said.append(f"task {mark.question.number} is right for the numbers of {named}")
    return said


def unreadable(mark: Mark) -> Iterator[tuple[str, Verdict]]:
    """The boxes that could not be read and that nothing was decided about."""
    if not mark.open:
        return
    for box, verdict in mark.verdict.parts.items() or [(mark.question.task.id, mark.verdict)]:
        if verdict.state == UNREADABLE:
            yield box, verdict


def days(count: int) -> str:
    """A number of days in words."""
    return f"{count} day" + ("" if count == 1 else "s")
