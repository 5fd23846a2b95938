"""What an instructor decides about a class: until when, which answer counts, and decisions about single answers.

Plain data; `rules_file` reads it from TOML. Each decision keeps the line it stands on, so that a mark can point to it.
"""

from __future__ import annotations

import math
from datetime import datetime, timedelta

from attrs import frozen

LAST, BEST = "last", "best"
_DAY = timedelta(days=1)


@frozen
class Decision:
    """Something decided by hand: why, and the line of the file where it stands."""

    reason: str
    line: int


@frozen
class Accept(Decision):
    """Give an answer this share of its points, whatever the marking says. Empty `student` or `typed` means any."""

    task: str
    student: str = ""
    typed: str = ""
    share: float = 1.0


@frozen
class Drop(Decision):
    """Leave a task out for everybody, or for one student."""

    task: str
    student: str = ""


@frozen
class Add(Decision):
    """Add points (or take some off) for something that the hand-in does not show; to a task, or to the total."""

    student: str
    points: float
    task: str = ""


@frozen
class Excuse(Decision):
    """Leave a student out of the marks and of the class page's figures."""

    student: str


@frozen
class Extend(Decision):
    """A later deadline for one student."""

    student: str
    deadline: datetime


@frozen
class Rules:
    """All that was decided. Without a deadline nothing is late; without a penalty lateness is only told."""

    file: str = ""
    deadline: datetime | None = None
    closes: datetime | None = None
    """What is handed in after this does not count at all."""
    counts: str = LAST
    penalty_per_day: float = 0.0
    """Per cent of an answer's points for each day begun after the deadline."""
    accept: tuple[Accept, ...] = ()
    drop: tuple[Drop, ...] = ()
    add: tuple[Add, ...] = ()
    excuse: tuple[Excuse, ...] = ()
    extend: tuple[Extend, ...] = ()

    def place(self, decision: Decision) -> str:
        """Where a decision stands: `rules.toml, line 12`."""
        return f"{self.file}, line {decision.line}"

    def days_late(self, student: str, handed_in: datetime | None) -> int:
        """The days begun since the student's deadline; 0 if it was met, or if the time is not known."""
        deadline = next((entry.deadline for entry in self.extend if entry.student == student), self.deadline)
        if deadline is None or handed_in is None or handed_in <= deadline:
            return 0
        return math.ceil((handed_in - deadline) / _DAY)

    def too_late(self, student: str, handed_in: datetime | None) -> bool:
        """Say whether a hand-in came after the marking was closed, and the student has no later deadline."""
        closes = self.closes
        if closes is None or handed_in is None:
            return False
        own = next((entry.deadline for entry in self.extend if entry.student == student), closes)
        return handed_in > max(closes, own)

    def kept(self, days_late: int) -> float:
        """The share of an answer's points that is kept when it is so many days late."""
        return max(0.0, 1.0 - self.penalty_per_day / 100 * days_late)


NO_RULES = Rules()


def time_of(text: str) -> datetime | None:
    """Read a time as hand-ins hold it (ISO 8601 with an offset); None if it is not one."""
    try:
        time = datetime.fromisoformat(text) if len(text) <= 40 else None
    except ValueError:
        return None
    return time if time is not None and time.tzinfo is not None else None
