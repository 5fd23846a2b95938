"""A set of exercises as plain data; `exercise_file` reads it from what an instructor wrote.

The file says which relation a task rests on, which numbers may be handed out, how closely an answer must agree and
which slips are worth naming. It never holds an answer: right and wrong values are computed from the relation.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property

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
    reading_error: float = 0.0
    """How far off it may be read, in the library's unit; the tolerance of the answer grows by what that makes."""


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
class Statement:
    """A sentence to choose. It is true where the formula `holds` is above 0; `answer` there is the relation's value."""

    name: str
    text: str
    holds: str
    says: str


@frozen
class Entered:
    """A quantity that the student chooses, in a plan or on an explorer; `example` is a formula for one that does.

    Without an example it is a setting of a cone, and the program works the set-up out.
    """

    name: str
    unit: str
    decimals: int
    example: str

    @property
    def box(self) -> str:
        """What its box is called beside the task's id."""
        return self.name.replace("_", "-")


@frozen
class Measure:
    """Something read on the point that the numbers of a task grind; `grinding` says what can be read.

    changed: formulas for numbers that are otherwise on this point than given. radius: a formula for the place on the
    lip, where the reading is one along the lip.
    """

    reading: str
    changed: Mapping[str, str] = field(factory=dict)
    radius: str = ""


@frozen
class Requirement:
    """What a plan has to meet: a relation's value, a formula's or a reading's, between limits that are formulas."""

    says: str
    relation: str = ""
    formula: str = ""
    at_least: str = ""
    at_most: str = ""
    share: float = 1.0
    source: str = ""
    """Whose limits they are, for limits that are somebody's choice; shown with them."""
    ground: Measure | None = None


@frozen
class Diagnosis:
    """A drill that is ground wrong on purpose: which faults it may have, and which readings are printed.

    flanks: the sound points it may be made of, by keyword.
    """

    faults: tuple[str, ...]
    readings: tuple[str, ...]
    cure: bool = False
    flanks: tuple[str, ...] = ()


@frozen
class Criterion:
    """One point of the rubric of an open task, and its share of the mark."""

    says: str
    share: float = 1.0


@frozen
class Task:
    """One task of a set, or one part of a task. See docs/instructor.md for what each entry means.

    What a kind does not need is empty: a plan has no relation of its own, an open task no tolerance.
    """

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
    functions: tuple[str, ...] = ()
    """For a formula: the functions that may be used, if not the usual ones."""
    at_least: float | None = None
    at_most: float | None = None
    figure: Figure | None = None
    parts: tuple[Task, ...] = ()
    """Of a task in parts; of a plan, what is decided by a letter beside what is entered."""
    carries: Mapping[str, str] = field(factory=dict)
    """For a part: the quantity that an earlier part gives -> the id of that part."""
    statements: tuple[Statement, ...] = ()
    enters: tuple[Entered, ...] = ()
    requirements: tuple[Requirement, ...] = ()
    explorer: str = ""
    called: str = ""
    """What is asked for in this task's own words, where the quantity's term would be ahead of the reader."""
    diagnosis: Diagnosis | None = None
    measures: Mapping[str, Measure] = field(factory=dict)
    """What is read on ground points, by the name that texts and formulas use; each name is among the givens, too."""
    rubric: tuple[Criterion, ...] = ()
    lines: Mapping[str, int] = field(factory=dict, eq=False, repr=False)
    """Entry -> its line in the file; "" is where the task begins."""

    @cached_property
    def shown_only(self) -> frozenset[str]:
        """The givens that are only printed or drawn."""
        return frozenset(given.name for given in self.givens if given.shown_only)


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
