"""A student's sheet: a notebook with their own numbers, and its description for the answer boxes. No key in either."""

from __future__ import annotations

import base64
import html
import json
from pathlib import Path
from typing import Any

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.exercise import ExerciseSet
from drillpoint.course.picturing import pictures_of
from drillpoint.course.roster import Student
from drillpoint.course.safe_file import write_safely
from drillpoint.course.variant import Box, Question, Variants
from drillpoint.errors import InstructorError

FORMAT = "drillpoint sheet"
FORMAT_VERSION = 1

_HOW_TO = """\
**How to answer.** Click into a grey cell and press Shift+Enter: an answer box appears. Type into it and press Enter;
the line below says how your answer was read. Or write the answer into the cell itself, as in
`answer("{name}/1", "12.3 mm")`, and press Shift+Enter. You can write 3.25 or 3,25, fractions such as 7/8 in or
1 7/8 in, and the units mm, cm, in, °, rad. What cannot be read costs nothing; change an answer as often as you like:
the last one counts. Every answer is saved on this machine at once.

**To hand in, run the last cell and give the file it names to your instructor.** On paper: write your answers on the
lines."""
_LINE = "\\_" * 24
_CAUTION = """\
*Grinding and drilling can hurt you. This sheet is arithmetic; at the machine follow your local rules, the maker's
instructions and a qualified instructor: eye protection, no gloves near a turning drill, work clamped.*"""


def sheet_description(exercise_set: ExerciseSet, student: Student, questions: list[Question]) -> dict[str, Any]:
    """What the answer boxes need to know: names, units and letters. Nothing that helps to find an answer."""
    return {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        "course": exercise_set.course,
        "set": exercise_set.id,
        "title": exercise_set.title,
        "version": exercise_set.version,
        "student": student.id,
        "tasks": [
            {"id": box.key, "number": box_number(question, box), "title": question.task.title, **_form_entry(box.form)}
            for question in questions
            for box in question.boxes
        ],
    }


def who_is(student: Student) -> str:
    """The name and the id of a student, as they stand on the sheet."""
    return f"{student.name} ({student.id})" if student.name and student.name != student.id else student.id


def box_number(question: Question, box: Box) -> str:
    """What a box is called on the sheet: the number of its task, or `3.web` for a part."""
    return f"{question.number}{box.key.removeprefix(question.task.id)}"


def _form_entry(form: AnswerForm) -> dict[str, Any]:
    return {
        "kind": form.kind,
        "unit": form.unit,
        "names": list(form.names),
        "symbol": form.symbol,
        "letters": form.letters,
        "functions": list(form.functions),
    }


def sheet_notebook(exercise_set: ExerciseSet, student: Student, questions: list[Question]) -> dict[str, Any]:
    """Make the notebook, as plain data in the notebook format 4.5. It reads well on paper and without a kernel."""
    course = escape_markdown(exercise_set.course)
    head = [
        f"# {exercise_set.title}",
        f"**Sheet of {escape_markdown(who_is(student))}** · {course} · version {exercise_set.version}",
    ]
    head += [escape_markdown(" ".join(exercise_set.about.split())), _HOW_TO.format(name=exercise_set.id), _CAUTION]
    name = exercise_set.id
    cells = [
        _markdown("about", "\n\n".join(part for part in head if part)),
        _code("status", f'from drillpoint.course import status\n\nstatus("{name}")'),
    ]
    for question in questions:
        cells.append(_markdown(f"task-{question.number}", question_markdown(question)))
        for box in question.boxes:
            number = box_number(question, box)
            comment = f'# or write it here:  answer("{name}/{number}", "{box.form.example}")'
            call = f'from drillpoint.course import answer\n\nanswer("{name}/{number}")  {comment}'
            cells.append(_code(f"answer-{number.replace('.', '-')}", call))
    cells.append(_markdown("hand-in", "## Hand in\n\nRun this cell. It writes one small file and prints a receipt. "
                           "Nothing is sent anywhere: give the file to your instructor."))  # fmt: skip
    cells.append(_code("hand-in-cell", f'from drillpoint.course import hand_in\n\nhand_in("{name}")'))
    kernel = {"display_name": "Python 3", "language": "python", "name": "python3"}
    return {
        "cells": cells,
        "metadata": {"kernelspec": kernel, "language_info": {"name": "python"}},
        "nbformat": 4,
        "nbformat_minor": 5,
    }


def question_markdown(question: Question) -> str:
    """One task as Markdown: the question, its drawing, what to give, hints that open on a click, a line for paper."""
    parts = [
        f"## Task {question.number} · {escape_markdown(question.task.title)}",
        escape_markdown(question.text),
    ]
    for picture in pictures_of(question):
        encoded = base64.b64encode(picture.svg.encode("utf-8")).decode("ascii")
        parts.append(f"![{escape_markdown(picture.alt)}](data:image/svg+xml;base64,{encoded})")
    hints = [
        f"<details><summary>Hint {n}</summary>{html.escape(hint)}</details>"
        for n, hint in enumerate(question.task.hints, start=1)
    ]
    for box in question.boxes:
        if box.label:
            parts.append(f"**{box_number(question, box)}** · {escape_markdown(box.text or box.label)}")
        if box.choices:
            parts.append("\n".join(f"- **{letter}** — {escape_markdown(shown)}" for letter, shown in box.choices))
        parts.append(f"**{escape_markdown(box.asks)}**")
        if not box.label:
            parts += hints
        parts.append(f"Answer {box_number(question, box)} ({escape_markdown(box.form.beside)}): {_LINE}")
    if question.boxes[0].label:
        parts += hints
    return "\n\n".join(parts)


def question_figure(question: Question) -> tuple[str, str]:
    """Draw a task's figure with its numbers: the SVG, and the sentence that takes its place."""
    pictures = pictures_of(question)
    if not pictures:
        raise InstructorError(f"task {question.task.id} has no drawing")
    return pictures[0].svg, pictures[0].alt


def write_sheet(exercise_set: ExerciseSet, variants: Variants, student: Student, folder: Path) -> Path:
    """Write one student's sheet into `folder/<student>`; a sheet that is already there stays as it is.

    Ids come from a checked roster, so they cannot lead out of the folder.
    """
    own = folder / student.id
    own.mkdir(parents=True, exist_ok=True)
    notebook = own / f"{exercise_set.id}.ipynb"
    questions = list(variants.questions(student.id))
    description = own / f"{exercise_set.id}.sheet.json"
    write_safely(description, _json(sheet_description(exercise_set, student, questions)))
    if not notebook.exists():
        write_safely(notebook, _json(sheet_notebook(exercise_set, student, questions)))
    return notebook


def escape_markdown(text: str) -> str:
    """Keep signs in names and texts from becoming Markdown or HTML."""
    escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return "".join("\\" + c if c in "\\`*_[]#|$~" else c for c in escaped)


def _json(content: dict[str, Any]) -> bytes:
    return (json.dumps(content, indent=1, ensure_ascii=False) + "\n").encode("utf-8")


def _markdown(cell_id: str, source: str) -> dict[str, Any]:
    return {"cell_type": "markdown", "id": cell_id, "metadata": {}, "source": source.splitlines(keepends=True)}


def _code(cell_id: str, source: str) -> dict[str, Any]:
    return {"cell_type": "code", "id": cell_id, "metadata": {}, "execution_count": None, "outputs": [],
            "source": source.splitlines(keepends=True)}  # fmt: skip
