"""The instructor's key to one student's sheet: what is right and the worked solution, with that student's numbers.

It stands alone and prints. It must never travel with the sheets, so it is written on request only, and never into the
folder that is handed out.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.feedback import page_name, template
from drillpoint.course.picturing import pictures_of
from drillpoint.course.roster import Student
from drillpoint.course.safe_file import write_safely
from drillpoint.course.sheet import who_is
from drillpoint.course.variant import Question, Variants
from drillpoint.errors import InstructorError


def key_page(exercise_set: ExerciseSet, student: Student, questions: list[Question]) -> str:
    """The key as HTML text."""
    return template("key.html.j2").render(
        set=exercise_set, who=who_is(student), tasks=[_task_view(question) for question in questions]
    )


def write_key(exercise_set: ExerciseSet, variants: Variants, student: Student, folder: Path) -> Path:
    """Write one student's key into a folder."""
    folder.mkdir(parents=True, exist_ok=True)
    page = folder / f"{exercise_set.id}-key-{page_name(student)}"
    write_safely(page, key_page(exercise_set, student, list(variants.questions(student.id))).encode("utf-8"))
    return page


def refuse_beside_sheets(keys: Path, sheets: Path) -> None:
    """Raises InstructorError when keys would lie among the sheets, or sheets among the keys."""
    one, other = keys.resolve(), sheets.resolve()
    if one == other or one in other.parents or other in one.parents:
        raise InstructorError(
            f"the keys may not go to {keys}: that folder and the sheets' {sheets} lie in each other, so a key could be "
            "handed out; choose a folder of its own, such as keys"
        )


def _task_view(question: Question) -> dict[str, Any]:
    from markupsafe import Markup

    return {
        "number": question.number,
        "title": question.task.title,
        "text": question.text,
        "pictures": [Markup(picture.svg) for picture in pictures_of(question)],  # noqa: S704  (escaped by its writer)
        "boxes": [{"label": box.label, "text": box.text, "asks": box.asks} for box in question.boxes],
        "choices": list(_choices(question)),
        "worked": question.worked,
    }


def _choices(question: Question) -> list[dict[str, Any]]:
    letters = zip(question.form.letters, question.options, strict=True)
    return [{"letter": letter, "shown": shown, "right": wrong is None} for letter, (shown, wrong) in letters]
