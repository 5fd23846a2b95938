"""A set of exercises as plain data; `exercise_file` reads it from what an instructor wrote.

The file says which relation a task rests on, which numbers may be handed out, how closely an answer must agree and
which slips are worth naming. It never holds an answer: right and wrong values are computed from the relation.
"""

from __future__ import annotations

from collections.abc import Mapping

from attrs import field, frozen

from drillpoint.errors import InstructorError


@frozen
class GivenValue:
    """One value that may be handed out: in the library's unit, and as it is printed."""

    value: float
    shown: str


@frozen
class Given:
    """One quantity of a task: the values it may take."""

    name: str
    values: tuple[GivenValue, ...]
    share_of: str = ""
    """The values are shares of this other given (a web of 0.15 of the diameter)."""
    step: float = 0.0
    """A share is rounded to whole steps, so that it is a number one can print on a drawing."""
    shown_only: bool = False
    """Printed or drawn, but not put into the relation (the diameter of a drawing that asks for the chisel edge)."""


@frozen
class Tolerance:
    """How far an answer may be off: units of the last digit asked for, or per cent. It is printed in the question."""

    last_digit: float = 1.0
    percent: float = 0.0


@frozen
class SlipRule:
    """A wrong derivation worth naming: a name from the library of slips, or an instructor's own formula."""

    name: str
    formula: str = ""
    says: str = ""


@frozen
class Figure:
    """The drawing a task is read from: which view, and which numbers it leaves out."""

    view: str
    hide: tuple[str, ...] = ()


@frozen
class Task:
    """One task of a set. See docs/instructor.md for what each entry means."""

    id: str
    kind: str
    title: str
    text: str
    relation: str
    asked: str
    unit: str
    decimals: int
    tolerance: Tolerance
    givens: tuple[Given, ...]
    slips: tuple[SlipRule, ...]
    hints: tuple[str, ...] = ()
    points: float = 1.0
    let: Mapping[str, str] = field(factory=dict)
    names: Mapping[str, str] = field(factory=dict)
    """For a formula: symbol -> what it stands for, in terms of the givens."""
    symbol: str = ""
    """For a formula: the symbol of what is asked."""
    at_least: float | None = None
    at_most: float | None = None
    figure: Figure | None = None


@frozen
class ExerciseSet:
    """A set of tasks with its version. Another version, or another course, draws other numbers."""

    id: str
    title: str
    course: str
    version: int
    tasks: tuple[Task, ...]
    about: str = ""

    def task(self, task_id: str) -> Task:
        """Give a task by its id, or by its number in the set."""
        for number, task in enumerate(self.tasks, start=1):
            if task_id in (task.id, str(number)):
                return task
        known = ", ".join(f"{number} ({task.id})" for number, task in enumerate(self.tasks, start=1))
        raise InstructorError(f"task {task_id!r} is not in set {self.id!r}; it has {known}")
