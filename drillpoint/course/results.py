"""What marking finds: a mark for each task of each student, and how each came about."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from attrs import evolve, frozen

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.judging import MISSING, UNREADABLE, Verdict
from drillpoint.course.piles import Unclaimed, plain
from drillpoint.course.roster import Student
from drillpoint.course.variant import Question


@frozen
class Decided:
    """Something that changed a mark: what, where it was decided (empty for a rule), and the reason given."""

    what: str
    place: str = ""
    reason: str = ""

    def __str__(self) -> str:
        """For the instructor, with the place."""
        return ": ".join(part for part in (self.what, self.place, self.reason) if part)

    @property
    def for_student(self) -> str:
        """The same without the place."""
        return ": ".join(part for part in (self.what, self.reason) if part)


@frozen
class Mark:
    """One task of one student: what was typed into its boxes and what it is worth."""

    question: Question
    answers: Mapping[str, str]
    """What was typed, by the keys of the boxes; empty if nothing."""
    verdict: Verdict
    also_right_for: tuple[str, ...] = ()
    """Students for whose numbers this wrong answer would be right. For the instructor only."""
    days_late: int = 0
    given: float | None = None
    """The share of the points that counts, where a decision or lateness changes the verdict's."""
    added: float = 0.0
    """Points added by hand."""
    counts: bool = True
    """False if the task was dropped."""
    decided: tuple[Decided, ...] = ()
    open: bool = True
    """False if an instructor decided about this answer."""
    best: bool = False
    """True if it was chosen as the best of several sittings."""

    @property
    def typed(self) -> str | None:
        """What was typed, in one line for a task of several parts; None if nothing."""
        if not self.answers:
            return None
        if list(self.answers) == [self.question.task.id]:
            return self.answers[self.question.task.id]
        return "; ".join(f"{key.rpartition('.')[2]}: {text}" for key, text in self.answers.items())

    @property
    def points(self) -> float:
        """The points that count."""
        if not self.counts:
            return 0.0
        share = self.verdict.mark if self.given is None else self.given
        return share * self.question.task.points + self.added

    @property
    def out_of(self) -> float:
        """The points that can be reached."""
        return self.question.task.points if self.counts else 0.0

    @property
    def why(self) -> tuple[str, ...]:
        """How the mark came about, line by line: what was typed, how it was read, what it is, what was decided."""
        if self.verdict.parts:
            answered = [line for key, part in self.verdict.parts.items() for line in self._line(key, part)]
        else:
            answered = list(self._line(self.question.task.id, self.verdict))
        points = "dropped" if not self.counts else f"{number_text(self.points)} of {number_text(self.out_of)}"
        return (*answered, *self.verdict.lines, *map(str, self.decided), points)

    def _line(self, key: str, verdict: Verdict) -> Iterator[str]:
        box = f"{key.rpartition('.')[2]}: " if "." in key else ""
        if verdict.state == MISSING:
            yield f"{box}not answered"
            return
        typed = plain(self.answers.get(key, ""), 200)
        read = f", read as {verdict.echo}" if verdict.echo else ""
        why = f": {verdict.slip}" if verdict.slip else f": {verdict.message}" if verdict.state == UNREADABLE else ""
        yield f"{box}typed “{typed}”{read}: {verdict.state}{why}"

    def with_others(self, students: tuple[str, ...]) -> Mark:
        """The same mark, with the students for whose numbers it would be right."""
        return evolve(self, also_right_for=students)


@frozen
class Added:
    """Points added to a student's total by hand."""

    points: float
    why: Decided


@frozen
class StudentResult:
    """One student: the marks in the order of the tasks, and everything the instructor should know."""

    student: Student
    status: str
    marks: tuple[Mark, ...]
    problems: tuple[str, ...]
    """What a person should look at."""
    files: tuple[str, ...] = ()
    """The files that count."""
    notes: tuple[str, ...] = ()
    """What is good to know and needs no decision."""
    version: int = 0
    """The version of the set by which the student is marked."""
    added: tuple[Added, ...] = ()
    aside: tuple[tuple[str, str], ...] = ()
    """Files of the student that do not count, each with the reason."""

    excused: bool = False
    """Excused students have no total and are left out of the figures of the class."""

    @property
    def total(self) -> float:
        """The points reached."""
        return sum(mark.points for mark in self.marks) + sum(entry.points for entry in self.added)

    @property
    def out_of(self) -> float:
        """The points this student can reach."""
        return sum(mark.out_of for mark in self.marks)


@frozen
class ClassResult:
    """A whole class."""

    set: ExerciseSet
    students: tuple[StudentResult, ...]
    unclaimed: tuple[Unclaimed, ...]
    unused: tuple[str, ...] = ()
    """Decisions that changed nothing."""

    @property
    def out_of(self) -> float:
        """The points that can be reached if nothing is dropped."""
        return sum(task.points for task in self.set.tasks)


def number_text(value: float) -> str:
    """Points as a person writes them: 1, 0.5."""
    return f"{round(value, 6) + 0.0:.6g}"
