"""The page for each student: to read and to print.

It stands alone: no script, nothing fetched from elsewhere, words rather than colours, real headings and tables. What
concerns other students is left out.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from drillpoint import pages
from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.judging import WAITING, missing
from drillpoint.course.marking import EXCUSED, NO_HAND_IN, NOT_MARKED
from drillpoint.course.picturing import pictures_of
from drillpoint.course.results import Mark, StudentResult, number_text
from drillpoint.course.roster import Student

if TYPE_CHECKING:
    from jinja2 import Template
    from markupsafe import Markup

_LONGEST_SHOWN = 200
_ABOUT_STATUS = {
    NO_HAND_IN: "No hand-in file was found.",
    NOT_MARKED: "No hand-in file could be marked; please talk to your instructor.",
    EXCUSED: "You are excused: this set does not count for you.",
}


def feedback_page(exercise_set: ExerciseSet, entry: StudentResult, *, release: bool = False) -> str:
    """One student's page: each task, the answer and how it was read, and the slip by name.

    What is right is said in kind only (quantity, unit, decimals, tolerance). With `release`, the worked solution with
    the student's own numbers stands there, too.
    """
    return template("feedback.html.j2").render(
        set=exercise_set,
        version=entry.version,
        who=who(entry.student),
        total=number_text(entry.total),
        out_of=number_text(entry.out_of),
        excused=entry.excused,
        about_status=_ABOUT_STATUS.get(entry.status, ""),
        added=[added.why.for_student for added in entry.added],
        release=release,
        marks=[_mark_view(mark, release) for mark in entry.marks],
    )


def page_name(student: Student) -> str:
    """The file name of a student's page. Ids of a roster have been checked to be fit for it."""
    return f"{student.id}.html"


def who(student: Student) -> str:
    """A student's name with the id, or the id alone."""
    return f"{student.name} ({student.id})" if student.name and student.name != student.id else student.id


def _mark_view(mark: Mark, release: bool) -> dict[str, Any]:
    question = mark.question
    return {
        "number": question.number,
        "title": question.task.title,
        "state": mark.verdict.state if mark.counts else "dropped",
        "points": number_text(mark.points),
        "out_of": number_text(mark.out_of),
        "text": question.text,
        "pictures": _pictures(mark),
        "boxes": list(_boxes(mark)),
        "message": mark.verdict.message if mark.verdict.parts else "",
        # What an open answer should say is a solution, too.
        "lines": mark.verdict.lines if release or mark.verdict.state != WAITING else (),
        "decided": [entry.for_student for entry in mark.decided],
        "worked": question.worked if release else "",
    }


def _boxes(mark: Mark) -> Iterator[dict[str, Any]]:
    """What was asked, typed and read in each box of a task; most tasks have one."""
    for box in mark.question.boxes:
        verdict = mark.verdict.parts.get(box.key, missing()) if mark.verdict.parts else mark.verdict
        typed = mark.answers.get(box.key)
        yield {
            "label": box.label,
            "text": box.text,
            "choices": box.choices,
            "asks": box.asks,
            "typed": None if typed is None else typed[:_LONGEST_SHOWN] + ("…" if len(typed) > _LONGEST_SHOWN else ""),
            "echo": verdict.echo,
            "place": verdict.error.marked() if verdict.error else "",
            "state": verdict.state,
            "message": verdict.message,
        }


def _pictures(mark: Mark) -> list[Markup]:
    from markupsafe import Markup

    # Drawn by this library from numbers; nothing typed is in it.
    return [Markup(picture.svg) for picture in pictures_of(mark.question)]  # noqa: S704


def template(name: str) -> Template:
    """The template of a page about a class or a student."""
    return pages.template("drillpoint.course", "pages", name, trim_blocks=True)
