"""Applying what an instructor decided: lateness, accepted answers, dropped tasks, added points, excused students."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from attrs import evolve

from drillpoint.course.piles import Sitting
from drillpoint.course.results import Added, Decided, Mark, number_text
from drillpoint.course.roster import Student
from drillpoint.course.rules import BEST, Accept, Add, Decision, Drop, Rules, time_of

_Found = dict[tuple[str, str], list[Decision]]


class Decisions:
    """The rules of a class at hand by student and task. Remembers which decisions were of use."""

    def __init__(self, rules: Rules) -> None:
        self.rules = rules
        self._plain = not rules.file
        self._by_task = _found([*rules.accept, *rules.drop, *(entry for entry in rules.add if entry.task)])
        self._on_total: Mapping[str, list[Add]] = _by_student(entry for entry in rules.add if not entry.task)
        self._excused = {entry.student: entry for entry in rules.excuse}
        self._used: set[int] = set()

    def days_late(self, student: Student, sitting: Sitting) -> int:
        """The days begun since the student's deadline."""
        return self.rules.days_late(student.id, time_of(sitting.time)) if self.rules.deadline else 0

    def too_late(self, student: Student, sitting: Sitting) -> bool:
        """Say whether a sitting came after the marking was closed."""
        return self.rules.too_late(student.id, time_of(sitting.time)) if self.rules.closes else False

    def excused(self, student: Student) -> str:
        """The line that excuses a student; empty if none does."""
        entry = self._excused.get(student.id)
        return str(self._decided("excused", entry)) if entry else ""

    def added(self, student: Student) -> tuple[Added, ...]:
        """Points added to a student's total."""
        return tuple(
            Added(entry.points, self._decided(_points_added(entry), entry))
            for entry in self._on_total.get(student.id, ())
        )

    def unused(self) -> tuple[str, ...]:
        """The decisions that changed nothing, to be looked at again."""
        decisions = (*self.rules.accept, *self.rules.drop, *self.rules.add, *self.rules.excuse)
        told = [entry for entry in decisions if entry.line not in self._used]
        return tuple(
            f"{self.rules.place(entry)}: {entry.reason} (changed nothing)"
            for entry in sorted(told, key=lambda e: e.line)
        )

    def about(self, student: Student, mark: Mark) -> Mark:
        """The mark after everything that was decided about it: accepted, late, dropped, points added."""
        if self._plain:
            return mark
        given, added, counts, decided, is_open = mark.given, 0.0, True, list[Decided](), True
        share = mark.verdict.mark
        for entry in self._of(student.id, mark.question.task.id):
            if isinstance(entry, Accept) and _accepts(entry, mark):
                share = given = entry.share
                decided.append(self._decided(f"accepted for {100 * share:g} % of the points", entry))
                is_open = False
            elif isinstance(entry, Drop):
                counts = is_open = False
                decided.append(self._decided("dropped", entry))
            elif isinstance(entry, Add):
                added += entry.points
                is_open = False
                decided.append(self._decided(_points_added(entry), entry))
        if mark.days_late and mark.answers:
            kept = self.rules.kept(mark.days_late)
            given = share * kept
            days = f"{mark.days_late} day" + ("" if mark.days_late == 1 else "s")
            off = f"{100 * (1 - kept):g} % off" if kept < 1 else "nothing taken off"
            decided.append(Decided(f"{days} late, {off}"))
        return evolve(
            mark, given=given, added=added, counts=counts, decided=tuple(decided), open=is_open,
            best=self.rules.counts == BEST,
        )  # fmt: skip

    def _of(self, student: str, task: str) -> Iterable[Decision]:
        return (*self._by_task.get(("", task), ()), *self._by_task.get((student, task), ()))

    def _decided(self, what: str, entry: Decision) -> Decided:
        self._used.add(entry.line)
        return Decided(what, self.rules.place(entry), entry.reason)


def _found(decisions: Iterable[Accept | Drop | Add]) -> _Found:
    found: _Found = {}
    for entry in decisions:
        found.setdefault((entry.student, entry.task), []).append(entry)
    return found


def _by_student(entries: Iterable[Add]) -> Mapping[str, list[Add]]:
    found: dict[str, list[Add]] = {}
    for entry in entries:
        found.setdefault(entry.student, []).append(entry)
    return found


def _accepts(entry: Accept, mark: Mark) -> bool:
    """An answer must be there; if the decision names one, it must be that one, spaces aside."""
    wanted = entry.typed.split()
    return bool(mark.answers) and (not wanted or any(text.split() == wanted for text in mark.answers.values()))


def _points_added(entry: Add) -> str:
    sign = "added" if entry.points >= 0 else "taken off"
    points = number_text(abs(entry.points))
    return f"{points} point{'' if points == '1' else 's'} {sign}"
