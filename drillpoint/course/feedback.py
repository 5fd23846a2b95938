"""Pages to read and to print: one for each student, and one for the instructor about the whole class.

Every page stands alone: no script, nothing fetched from elsewhere, words rather than colours, real headings and tables.
"""

from __future__ import annotations

from collections import Counter
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any
from urllib.parse import quote

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.gradebook import number_text
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WRONG
from drillpoint.course.marking import NO_HAND_IN, NOT_MARKED
from drillpoint.course.results import ClassResult, Mark, StudentResult
from drillpoint.course.roster import Student
from drillpoint.course.sheet import question_figure
from drillpoint.course.variant import Question

if TYPE_CHECKING:
    from jinja2 import Template
    from markupsafe import Markup

_STATES = (RIGHT, PARTLY, WRONG, UNREADABLE, MISSING)
_LONGEST_SHOWN = 200


def feedback_page(exercise_set: ExerciseSet, entry: StudentResult, out_of: float) -> str:
    """One student's page: each task, the answer and how it was read, the slip by name, the worked solution.

    What concerns other students is left out.
    """
    notes = {
        NO_HAND_IN: "No hand-in file was found.",
        NOT_MARKED: "No hand-in file could be marked; please talk to your instructor.",
    }
    return _template("feedback.html.j2").render(
        set=exercise_set,
        who=_who(entry.student),
        total=number_text(entry.total),
        out_of=number_text(out_of),
        notes=notes.get(entry.status, ""),
        marks=[_mark_view(mark) for mark in entry.marks],
    )


def class_page(result: ClassResult, pages: str) -> str:
    """The instructor's page; `pages` is the folder of the students' pages, as seen from it."""
    return _template("class.html.j2").render(
        set=result.set,
        handed_in=sum(bool(entry.files) for entry in result.students),
        slips=_slips(result),
        tasks=[_task_view(result, index) for index in range(len(result.set.tasks))],
        students=[_student_view(entry, pages) for entry in result.students],
        problems=[{"who": _who(entry.student), "lines": entry.problems} for entry in result.students if entry.problems],
        unclaimed=result.unclaimed,
    )


def page_name(student: Student) -> str:
    """The file name of a student's page. Ids of a roster have been checked to be fit for it."""
    return f"{student.id}.html"


def _mark_view(mark: Mark) -> dict[str, Any]:
    question, verdict = mark.question, mark.verdict
    return {
        "number": question.number,
        "title": question.task.title,
        "state": verdict.state,
        "points": number_text(mark.points),
        "out_of": number_text(question.task.points),
        "text": question.text,
        "asks": question.asks,
        "svg": _figure(question) if question.task.figure else "",
        "options": [
            (letter, shown) for letter, (shown, _) in zip(question.form.letters, question.options, strict=True)
        ],
        "typed": mark.typed if mark.typed is None else _shortened(mark.typed),
        "echo": verdict.echo,
        "place": verdict.error.marked() if verdict.error else "",
        "message": verdict.message,
        "worked": question.worked,
    }


def _figure(question: Question) -> Markup:
    from markupsafe import Markup

    svg, _ = question_figure(question)
    return Markup(svg)  # noqa: S704 - drawn by this library from numbers; nothing typed is in it


def _slips(result: ClassResult) -> list[dict[str, Any]]:
    found: dict[str, list[tuple[int, str]]] = {}
    for entry in result.students:
        for mark in entry.marks:
            if mark.verdict.slip:
                found.setdefault(mark.verdict.slip, []).append((mark.question.number, entry.student.id))
    people = {name: list(dict.fromkeys(student for _, student in places)) for name, places in found.items()}
    ordered = sorted(found.items(), key=lambda item: (-len(people[item[0]]), -len(item[1]), item[0]))
    return [
        {
            "name": name,
            "people": len(people[name]),
            "count": len(places),
            "tasks": ", ".join(str(number) for number in sorted({number for number, _ in places})),
            "students": ", ".join(people[name]),
        }
        for name, places in ordered
    ]


def _task_view(result: ClassResult, index: int) -> dict[str, Any]:
    verdicts = [entry.marks[index].verdict for entry in result.students]
    states = Counter(verdict.state for verdict in verdicts)
    slips = Counter(verdict.slip for verdict in verdicts if verdict.slip)
    return {
        "number": index + 1,
        "title": result.set.tasks[index].title,
        "counts": [states[state] for state in _STATES],
        "slip": _most_frequent(slips),
    }


def _most_frequent(slips: Counter[str]) -> str:
    if not slips:
        return "none"
    # The first in the alphabet among equals, so that the page is the same every time.
    name, count = min(slips.items(), key=lambda item: (-item[1], item[0]))
    if count == 1 and len(slips) > 1:
        return f"{len(slips)} different, once each"
    return f"{name} ({count})"


def _student_view(entry: StudentResult, pages: str) -> dict[str, Any]:
    signs = {RIGHT: "1", PARTLY: "½", WRONG: "0", UNREADABLE: "?", MISSING: "–"}
    return {
        "who": _who(entry.student),
        "page": f"{quote(pages)}/{quote(page_name(entry.student))}",
        "signs": [signs[mark.verdict.state] for mark in entry.marks],
        "total": number_text(entry.total),
        "status": entry.status,
    }


def _who(student: Student) -> str:
    return f"{student.name} ({student.id})" if student.name and student.name != student.id else student.id


def _shortened(text: str) -> str:
    return text[:_LONGEST_SHOWN] + ("…" if len(text) > _LONGEST_SHOWN else "")


@cache
def _template(name: str) -> Template:
    from jinja2 import Environment, FileSystemLoader, StrictUndefined

    loader = FileSystemLoader(Path(__file__).parent / "pages")
    return Environment(loader=loader, autoescape=True, undefined=StrictUndefined, trim_blocks=True).get_template(name)
