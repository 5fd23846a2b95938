"""What a class's results say about its tasks: how hard each was, what it tells apart, which slips, who is stuck.

Results are counted as they come and not kept, so that a large class needs no more room than a small one. Lists of
people are cut off; the gradebook has everybody.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from attrs import define, field, frozen

from drillpoint.course.exercise import ExerciseSet, Task
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WAITING, WRONG
from drillpoint.course.piles import Unclaimed
from drillpoint.course.results import Mark, StudentResult
from drillpoint.course.roster import Student

STATES = (RIGHT, PARTLY, WRONG, UNREADABLE, MISSING)
LISTED = 300
"""How many students, odd hand-ins and files the page lists at most."""
NAMED = 40
"""How many people are named beside a slip or a task at most."""
BINS = 10
_FEWEST_FOR_DISCRIMINATION = 9
_STEPS = 100


@define
class Named:
    """People counted, of whom the first are named."""

    count: int = 0
    first: list[str] = field(factory=list)

    def add(self, who: str) -> None:
        self.count += 1
        if len(self.first) < NAMED:
            self.first.append(who)

    def __str__(self) -> str:
        """The names, and how many more there are."""
        more = self.count - len(self.first)
        return ", ".join(self.first) + (f" and {more} more" if more else "")


@frozen
class SlipFound:
    """A slip with the tasks in which it was made and the people who made it."""

    name: str
    times: int
    tasks: tuple[int, ...]
    people: Named


@frozen
class TaskFound:
    """One task: how many students in each state, and the figures an instructor goes by."""

    number: int
    task: Task
    counts: tuple[int, ...]
    """Students in each of `STATES`; any other state is counted as partly right."""
    reached: float | None
    """The share of the points that was reached, 0 to 1: 1 is easy. None if nobody handed in."""
    discrimination: float | None
    """The share reached by the best third of the class less that of the weakest third. None in a small class."""
    slips: tuple[tuple[str, int], ...]
    stuck: Named
    """Who handed in and did not get more than half of the points here."""


@define
class _Tally:
    counts: Counter[str] = field(factory=Counter)
    slips: Counter[str] = field(factory=Counter)
    stuck: Named = field(factory=Named)
    reached: float = 0.0
    out_of: float = 0.0


class Survey:
    """Counts the results of a class, one student at a time."""

    def __init__(self, exercise_set: ExerciseSet) -> None:
        self.set = exercise_set
        self.students = self.handed_in = self.excused = self.unclaimed_count = self.problem_count = 0
        self.listed: list[tuple[Student, str, float, tuple[str, ...]]] = []
        self.problems: list[tuple[Student, tuple[str, ...]]] = []
        self.unclaimed: list[Unclaimed] = []
        self.bins = [0] * BINS
        self._tallies = {task.id: _Tally() for task in exercise_set.tasks}
        self._slips: dict[str, tuple[Counter[int], Named]] = {}
        self._by_total: dict[int, list[float]] = {}

    def add_unclaimed(self, entry: Unclaimed) -> None:
        """Count a file that counts for nobody."""
        self.unclaimed_count += 1
        if len(self.unclaimed) < LISTED:
            self.unclaimed.append(entry)

    def add(self, entry: StudentResult) -> None:
        """Count one student's results."""
        self.students += 1
        if len(self.listed) < LISTED:
            states = {mark.question.task.id: _shown_state(mark) for mark in entry.marks}
            row = tuple(states.get(task, MISSING) for task in self._tallies)
            self.listed.append((entry.student, entry.status, entry.total, row))
        if entry.problems:
            self.problem_count += 1
            if len(self.problems) < LISTED:
                self.problems.append((entry.student, entry.problems))
        if entry.excused:
            self.excused += 1
        elif entry.files:
            self.handed_in += 1
            self._count(entry)

    def _count(self, entry: StudentResult) -> None:
        share = min(1.0, max(0.0, entry.total / entry.out_of)) if entry.out_of else 0.0
        self.bins[min(BINS - 1, int(share * BINS + 1e-9))] += 1
        totals = self._by_total.setdefault(round(share * _STEPS), [0.0] * (1 + len(self._tallies)))
        totals[0] += 1
        marks = {mark.question.task.id: mark for mark in entry.marks}
        for place, (task, tally) in enumerate(self._tallies.items(), start=1):
            mark = marks.get(task)
            if mark is None or not mark.out_of or _shown_state(mark) == WAITING:
                continue
            tally.counts[_shown_state(mark)] += 1
            tally.reached += mark.points
            tally.out_of += mark.out_of
            totals[place] += mark.points / mark.out_of
            if mark.points * 2 <= mark.out_of:
                tally.stuck.add(entry.student.id)
        made: set[str] = set()
        for mark in entry.marks:
            for slip in slips_of(mark):
                tasks, people = self._slips.setdefault(slip, (Counter(), Named()))
                tasks[mark.question.number] += 1
                if slip not in made:
                    made.add(slip)
                    people.add(entry.student.id)
                if mark.question.task.id in self._tallies:
                    self._tallies[mark.question.task.id].slips[slip] += 1

    @property
    def slips(self) -> list[SlipFound]:
        """The slips, those of the most people first."""
        found = [
            SlipFound(name, tasks.total(), tuple(sorted(tasks)), people)
            for name, (tasks, people) in self._slips.items()
        ]
        return sorted(found, key=lambda slip: (-slip.people.count, -slip.times, slip.name))

    @property
    def tasks(self) -> list[TaskFound]:
        """The tasks, in their order."""
        return [self._task(number, task) for number, task in enumerate(self.set.tasks, start=1)]

    def _task(self, number: int, task: Task) -> TaskFound:
        tally = self._tallies[task.id]
        counts = [tally.counts[state] for state in STATES]
        counts[1] += tally.counts.total() - sum(counts)
        reached = tally.reached / tally.out_of if tally.out_of else None
        slips = tuple(sorted(tally.slips.items(), key=lambda item: (-item[1], item[0])))
        return TaskFound(number, task, tuple(counts), reached, self._discrimination(number), slips, tally.stuck)

    def _discrimination(self, place: int) -> float | None:
        if self.handed_in < _FEWEST_FOR_DISCRIMINATION:
            return None
        best = _mean_of_first(
            self.handed_in / 3, [self._by_total[k] for k in sorted(self._by_total, reverse=True)], place
        )
        weakest = _mean_of_first(self.handed_in / 3, [self._by_total[k] for k in sorted(self._by_total)], place)
        return best - weakest


def slips_of(mark: Mark) -> Sequence[str]:
    """The slips in a mark, by name, each once."""
    parts = mark.verdict.parts.values() or [mark.verdict]
    return list(dict.fromkeys(part.slip for part in parts if part.slip))


def _shown_state(mark: Mark) -> str:
    """The state after what was decided: an accepted answer is right whatever could be read."""
    if mark.verdict.state == WAITING and mark.added:
        return RIGHT if mark.points >= mark.out_of else PARTLY
    if mark.given is None or mark.days_late:
        return mark.verdict.state
    return RIGHT if mark.given == 1 else PARTLY if mark.given else WRONG


def _mean_of_first(count: float, groups: Sequence[Sequence[float]], place: int) -> float:
    """The mean over the first so many students; of a group of equals that does not fit, a share is taken."""
    left, total = count, 0.0
    for group in groups:
        taken = min(left, group[0])
        total += group[place] * taken / group[0]
        left -= taken
        if left <= 0:
            break
    return total / count
