"""The gradebook and the report on files: CSV, written line by line and safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Sequence
from typing import BinaryIO

from attrs import frozen

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.judging import MISSING, RIGHT, TAKEN, UNREADABLE
from drillpoint.course.piles import Unclaimed
from drillpoint.course.results import ClassResult, Mark, StudentResult, number_text
from drillpoint.course.roster import Student

SEPARATORS = {"comma": ",", "semicolon": ";", "tab": "\t"}
DECIMALS = {"point": ".", "comma": ","}
# The wide forms too: some spreadsheets take them for the narrow ones.
_STARTS_A_FORMULA = ("=", "+", "-", "@", "＝", "＋", "－", "＠", "\t", "\r", "\n")
_PLAIN_NUMBER = re.compile(r"[+-]?[0-9]+([.,][0-9]+)?")


@frozen
class Layout:
    """How the CSV is written: separator between cells, decimal sign, and whether a mark says that it is UTF-8."""

    separator: str = ","
    decimal: str = "."
    marked_as_utf8: bool = True


USUAL = Layout()


class _Table:
    """Writes rows to a file as they come."""

    def __init__(self, file: BinaryIO, layout: Layout) -> None:
        self._layout = layout
        if layout.marked_as_utf8:
            file.write(b"\xef\xbb\xbf")
        self._text = io.TextIOWrapper(file, "utf-8", errors="replace", newline="", write_through=True)
        self._rows = csv.writer(self._text, delimiter=layout.separator)

    def row(self, cells: Iterable[str]) -> None:
        self._rows.writerow([harmless(cell) for cell in cells])

    def points(self, value: float) -> str:
        return number_text(value).replace(".", self._layout.decimal)

    def close(self) -> None:
        """Let go of the file, which stays open."""
        self._text.detach()


class Gradebook(_Table):
    """One line per student: id, name, the points of each task, total, out of, status and comments.

    A column with the school's ids follows the id if the roster has one. A task that was not answered, or that was
    dropped, is left empty. Cells that a spreadsheet would run as a formula get an apostrophe in front; numbers stay
    numbers.
    """

    def __init__(
        self, file: BinaryIO, exercise_set: ExerciseSet, roster: Sequence[Student], layout: Layout = USUAL
    ) -> None:
        """Write the header line to a file opened for bytes."""
        super().__init__(file, layout)
        self._tasks = [task.id for task in exercise_set.tasks]
        self._version = exercise_set.version
        self._with_school_id = any(student.school_id for student in roster)
        titles = [f"{number} {task.title}" for number, task in enumerate(exercise_set.tasks, start=1)]
        self.row(["id", *self._school("school id"), "name", *titles, "total", "out of", "status", "comments"])

    def add(self, entry: StudentResult) -> None:
        """Write one student's line."""
        marks = {mark.question.task.id: mark for mark in entry.marks}
        points = [self._cell(marks.get(task)) for task in self._tasks]
        counts = ("", "") if entry.excused else (self.points(entry.total), self.points(entry.out_of))
        who = (entry.student.id, *self._school(entry.student.school_id), entry.student.name)
        comments = [*comments_on(entry), *self._about_other_tasks(entry)]
        self.row([*who, *points, *counts, entry.status, "; ".join(comments)])

    def _school(self, text: str) -> tuple[str, ...]:
        return (text,) if self._with_school_id else ()

    def _cell(self, mark: Mark | None) -> str:
        if mark is None or not mark.counts or (mark.verdict.state == MISSING and mark.given is None and not mark.added):
            return ""
        return self.points(mark.points)

    def _about_other_tasks(self, entry: StudentResult) -> Iterable[str]:
        """Tasks of an older version that have no column."""
        for mark in entry.marks:
            if mark.question.task.id not in self._tasks:
                points = f"{self.points(mark.points)} of {self.points(mark.out_of)}"
                yield f"“{mark.question.task.title}”, in version {entry.version} only: {points}"


class FileReport(_Table):
    """One line for every file of the folder: whose it is, whether it counts, and if not, why."""

    def __init__(self, file: BinaryIO, layout: Layout = USUAL) -> None:
        """Write the header line to a file opened for bytes."""
        super().__init__(file, layout)
        self.row(["file", "student", "counts", "reason"])

    def add_unclaimed(self, entry: Unclaimed) -> None:
        """Write the line of a file that counts for nobody."""
        self.row([entry.path, entry.student, "no", entry.reason])

    def add(self, entry: StudentResult) -> None:
        """Write the lines of the files of one student."""
        for path in entry.files:
            self.row([path, entry.student.id, "yes", ""])
        for path, reason in entry.aside:
            self.row([path, entry.student.id, "no", reason])


def gradebook_csv(result: ClassResult, layout: Layout = USUAL) -> bytes:
    """The gradebook of a class that is in memory."""
    file = io.BytesIO()
    book = Gradebook(file, result.set, [entry.student for entry in result.students], layout)
    for entry in result.students:
        book.add(entry)
    book.close()
    return file.getvalue()


def files_csv(result: ClassResult, layout: Layout = USUAL) -> bytes:
    """The report on files of a class that is in memory."""
    file = io.BytesIO()
    report = FileReport(file, layout)
    for unclaimed in result.unclaimed:
        report.add_unclaimed(unclaimed)
    for entry in result.students:
        report.add(entry)
    report.close()
    return file.getvalue()


def comments_on(entry: StudentResult) -> list[str]:
    """Everything to say about one student: what to look at first, then what went wrong or was decided in each task."""
    about_tasks = [said for mark in entry.marks for said in _comments(mark)]
    return [*entry.problems, *entry.notes, *about_tasks, *(str(added.why) for added in entry.added)]


def harmless(cell: str) -> str:
    """Keep a spreadsheet from running a cell as a formula."""
    flat = " ".join(cell.split("\n")).replace("\r", " ").replace("\x00", "\ufffd")
    if flat.lstrip().startswith(_STARTS_A_FORMULA) and not _PLAIN_NUMBER.fullmatch(flat):
        return "'" + flat
    # A tab or a break in front is cut off by some spreadsheets before they look.
    return "'" + flat if flat.startswith(_STARTS_A_FORMULA[-3:]) else flat


def _comments(mark: Mark) -> Iterable[str]:
    where = f"task {mark.question.number}"
    for key, verdict in mark.verdict.parts.items() or [("", mark.verdict)]:
        if verdict.state not in (RIGHT, MISSING, UNREADABLE, TAKEN):
            part = f", {key.rpartition('.')[2]}," if key else ""
            yield f"{where}{part} {verdict.state}: {verdict.slip or 'no usual slip'}"
    # What was entered in a plan is judged together: what it misses says more than each number.
    yield from (f"{where} {line[0].lower()}{line[1:]}" for line in mark.verdict.lines if line.startswith("Not met"))
    yield from (f"{where} {line}" for line in mark.decided)
