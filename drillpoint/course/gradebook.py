"""The gradebook: one CSV line per student, safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable

from drillpoint.course.judging import MISSING, RIGHT, UNREADABLE
from drillpoint.course.results import ClassResult, Mark, StudentResult

_STARTS_A_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")
_PLAIN_NUMBER = re.compile(r"[+-]?[0-9]+([.,][0-9]+)?")


def gradebook_csv(result: ClassResult) -> bytes:
    """Write id, name, the points of each task, total, out of, status and comments.

    UTF-8 with the mark that makes Excel read it as such. A task that was not answered is left empty; the total counts
    it as 0. Cells that a spreadsheet would run as a formula get an apostrophe in front; numbers stay numbers.
    """
    titles = [f"{number} {task.title}" for number, task in enumerate(result.set.tasks, start=1)]
    rows: list[list[str]] = [["id", "name", *titles, "total", "out of", "status", "comments"]]
    for entry in result.students:
        points = ["" if mark.verdict.state == MISSING else number_text(mark.points) for mark in entry.marks]
        total, out_of = number_text(entry.total), number_text(result.out_of)
        comments = "; ".join(comments_on(entry))
        rows.append([entry.student.id, entry.student.name, *points, total, out_of, entry.status, comments])
    return _csv(rows)


def unclaimed_csv(result: ClassResult) -> bytes:
    """Write the files that count for nobody, with the reason for each."""
    return _csv([["file", "reason"], *([entry.path, entry.reason] for entry in result.unclaimed)])


def comments_on(entry: StudentResult) -> list[str]:
    """Everything to say about one student: what to look at first, then what went wrong in each task."""
    return [*entry.problems, *(said for mark in entry.marks if (said := _comment(mark)))]


def number_text(value: float) -> str:
    """Points as a person writes them: 1, 0.5."""
    return f"{value:.6g}"


def harmless(cell: str) -> str:
    """Keep a spreadsheet from running a cell as a formula."""
    flat = " ".join(cell.split("\n")).replace("\r", " ").replace("\x00", "\ufffd")
    if flat.lstrip(" ").startswith(_STARTS_A_FORMULA) and not _PLAIN_NUMBER.fullmatch(flat):
        return "'" + flat
    return flat


def _comment(mark: Mark) -> str:
    if mark.verdict.state in (RIGHT, MISSING, UNREADABLE):
        return ""
    return f"task {mark.question.number} {mark.verdict.state}: {mark.verdict.slip or 'no usual slip'}"


def _csv(rows: Iterable[list[str]]) -> bytes:
    out = io.StringIO(newline="")
    csv.writer(out).writerows([harmless(cell) for cell in row] for row in rows)
    return out.getvalue().encode("utf-8-sig", "replace")
