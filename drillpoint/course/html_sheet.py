"""A student's sheet as one page that opens from a folder or a stick, without a network, a server or Python.

It is filled in on the screen, or printed and filled in on paper. No key is in it.
"""

from __future__ import annotations

import base64
import hashlib
import json
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from markupsafe import Markup

from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.hand_in_file import LONGEST_TYPED
from drillpoint.course.picturing import pictures_of
from drillpoint.course.reading_table import reading_table
from drillpoint.course.roster import Student
from drillpoint.course.safe_file import write_safely
from drillpoint.course.sheet import box_number, sheet_description, who_is
from drillpoint.course.variant import Box, Question, Variants
from drillpoint.pages import template

_BROWSER = Path(__file__).parent / "browser"
_PARTS = ("number", "answer", "digest", "sittings", "hand_in", "keeping", "sheet")
_START = 'startSheet(JSON.parse(document.getElementById("drillpoint-sheet").textContent));\n'


def html_sheet(exercise_set: ExerciseSet, student: Student, questions: list[Question]) -> str:
    """The whole page as HTML text. Its own policy allows nothing from outside."""
    code = page_script()
    places = iter(range(1, 1 + sum(len(question.boxes) for question in questions)))
    return template("drillpoint.course", "pages", "sheet.html.j2", trim_blocks=True, lstrip_blocks=True).render(
        set=exercise_set,
        about=" ".join(exercise_set.about.split()),
        who=who_is(student),
        name=student.name,
        student=student.id,
        running=Markup(_css_text(f"{exercise_set.title} · {student.id}")),  # noqa: S704  (escaped for a style sheet)
        tasks=[_task_view(question, places) for question in questions],
        hints=[(question.number, hint) for question in questions for hint in question.task.hints],
        longest=LONGEST_TYPED,
        digest=base64.b64encode(hashlib.sha256(code.encode("utf-8")).digest()).decode("ascii"),
        style=Markup((_BROWSER / "sheet.css").read_text(encoding="utf-8")),  # noqa: S704  (our own file)
        script=Markup(code),  # noqa: S704  (our own files)
        config=_config(sheet_description(exercise_set, student, questions)),
    )


def write_page(exercise_set: ExerciseSet, variants: Variants, student: Student, folder: Path) -> Path:
    """Write one student's page into `folder/<student>`, anew each time: answers are never kept in the page itself."""
    own = folder / student.id
    own.mkdir(parents=True, exist_ok=True)
    page = own / f"{exercise_set.id}.html"
    write_safely(page, html_sheet(exercise_set, student, list(variants.questions(student.id))).encode("utf-8"))
    return page


@cache
def page_script() -> str:
    """Everything the page runs. No part imports another."""
    return '"use strict";\n' + parts_script() + "\n" + _START


@cache
def parts_script() -> str:
    """The parts of the script, without the line that starts them."""
    return "\n".join((_BROWSER / f"{part}.js").read_text(encoding="utf-8") for part in _PARTS)


def _config(sheet: dict[str, Any]) -> Markup:
    # Inside a script element only "</" could end it early, and "<!--" would change how it ends.
    text = json.dumps({"sheet": sheet, "table": reading_table()}, ensure_ascii=False).replace("<", "\\u003c")
    return Markup(text)  # noqa: S704  (JSON, with the only dangerous sign written otherwise)


def _task_view(question: Question, places: Iterator[int]) -> dict[str, Any]:
    return {
        "number": question.number,
        "title": question.task.title,
        "text": question.text,
        "pictures": [Markup(picture.svg) for picture in pictures_of(question)],  # noqa: S704  (escaped by its writer)
        "boxes": [_box_view(question, box, next(places)) for box in question.boxes],
        "hints": question.task.hints,
    }


def _box_view(question: Question, box: Box, place: int) -> dict[str, Any]:
    number = box.form.kind == "number"
    return {
        "place": place,
        "number": box_number(question, box),
        "label": box.label,
        "text": box.text,
        "asks": box.asks,
        "kind": box.form.kind,
        "choices": box.choices,
        "beside": box.form.beside,
        "words": "" if number else box.form.beside,
        "unit": box.form.unit if number else "",
        "example": box.form.example,
    }


def _css_text(text: str) -> str:
    """Text as a string of a style sheet: every sign that is not plain by its number."""
    return '"' + "".join(c if c.isascii() and c.isalnum() else f"\\{ord(c):06x}" for c in text) + '"'
