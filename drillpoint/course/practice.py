"""Questions to try inside a lesson: answered at once, with the slip by name. Nothing is recorded."""

from __future__ import annotations

import html
from collections.abc import Mapping
from functools import lru_cache
from typing import Any

from drillpoint.course.answer_box import status_line
from drillpoint.course.exercise_file import load_set
from drillpoint.course.judging import Verdict, judge_task
from drillpoint.course.picturing import pictures_of
from drillpoint.course.variant import Box, Question, Variants
from drillpoint.errors import LearnerError

FIRST_NUMBERS = "practice"


Typed = str | float | Mapping[str, str | float]


def judge(task: str, typed: Typed, *, numbers: str = FIRST_NUMBERS) -> Verdict:
    """Judge an answer to a practice task, as in `judge("lips/point-height", "3.00 mm")`.

    A task with several boxes takes them by name: `judge("relief/in-steps", {"a": "7.9", "b": "106.5"})`.
    `numbers` chooses other numbers for the same task: any word, each word always the same numbers.
    """
    return _judged(practice_question(task, numbers), typed)


def ask(task: str, *, numbers: str = FIRST_NUMBERS, hints: bool = True) -> Asked:
    """Ask a practice task in a lesson, as in `ask("lips/point-height")`: a box to type into, checked on Enter.

    Where widgets are missing, or on paper, the question stands as text; `judge` then checks an answer.
    """
    return Asked(task, numbers, hints)


def practice_question(task: str, numbers: str = FIRST_NUMBERS) -> Question:
    """Give a practice question with its numbers."""
    lesson, slash, task_id = task.partition("/")
    if not slash:
        raise LearnerError(
            f'{task!r} does not name a practice task; write lesson and task, as in ask("lips/point-height")'
        )
    variants = _variants(lesson)
    return variants.question(variants.set.task(task_id).id, numbers)


def _judged(question: Question, typed: Typed) -> Verdict:
    names = {box.key.rpartition(".")[2]: box.key for box in question.boxes}
    if isinstance(typed, Mapping):
        for name in typed:
            if name not in names:
                raise LearnerError(f"there is no box {name!r} in this task; its boxes are {', '.join(names)}")
        return judge_task(question, {names[name]: str(text) for name, text in typed.items()})
    if len(names) > 1:
        example = ", ".join(f'"{name}": "…"' for name in names)
        raise LearnerError(f"this task has {len(names)} boxes; answer them by name: {{{example}}}")
    return judge_task(question, {question.boxes[0].key: str(typed)})


@lru_cache(maxsize=16)
def _variants(lesson: str) -> Variants:
    return Variants(load_set(f"practice/{lesson}"))


class Asked:
    """A question put to the learner; shows as widgets where there are any, and as plain text everywhere else."""

    def __init__(self, task: str, numbers: str = FIRST_NUMBERS, hints: bool = True) -> None:
        self.task = task
        self.numbers = numbers
        self.question = practice_question(task, numbers)
        self._hints = list(self.question.task.hints) if hints else []
        self._round = 1
        self._widget: Any = None

    def judge(self, typed: Typed) -> Verdict:
        """Judge an answer to this question."""
        return _judged(self.question, typed)

    @property
    def html(self) -> str:
        """The question as HTML: title, text, drawing if there is one, and what to give."""
        question = self.question
        parts = [f"<strong>{html.escape(question.task.title)}</strong>", html.escape(question.text)]
        parts += [picture.html for picture in pictures_of(question)]
        for box in question.boxes:
            if box.text:
                parts.append(html.escape(f"{box.label}: {box.text}"))
            parts += [f"{letter}: {html.escape(shown)}" for letter, shown in box.choices]
            parts.append(f"<em>{html.escape(box.asks)}</em>")
        paragraphs = "".join(f'<p style="margin:0.4em 0">{part}</p>' for part in parts)
        return f'<div style="line-height:1.45">{paragraphs}</div>'

    @property
    def widget(self) -> Any:
        """The widgets, made once: question, labelled box with its unit, Check, Hint, Other numbers, status line."""
        if self._widget is None:
            self._widget = self._made()
        return self._widget

    def _made(self) -> Any:
        import ipywidgets as widgets

        said = widgets.HTML(self.html)
        boxes = [_text_box(widgets, box) for box in self.question.boxes]
        line = widgets.HTML(status_line("Enter checks your answer."))
        narrow = widgets.Layout(width="auto")
        check = widgets.Button(description="Check", tooltip="Check the answer", layout=narrow)
        hint = widgets.Button(description="Hint", tooltip="Show the next hint", disabled=not self._hints, layout=narrow)
        other = widgets.Button(description="Other numbers", tooltip="Ask the same with other numbers", layout=narrow)
        shown = 0

        def on_check(_: Any) -> None:
            try:
                line.value = status_line(str(judge_task(self.question, self._filled_in(boxes))))
            except Exception as error:
                line.value = status_line(f"This could not be checked: {error}")

        def on_hint(_: Any) -> None:
            nonlocal shown
            shown = min(shown + 1, len(self._hints))
            line.value = status_line(
                "\n".join(f"Hint {n}: {text}" for n, text in enumerate(self._hints[:shown], start=1))
            )

        def on_other(_: Any) -> None:
            self._round += 1
            self.question = practice_question(self.task, f"{self.numbers} {self._round}")
            said.value, line.value = self.html, status_line("Other numbers; Enter checks your answer.")
            for box in boxes:
                box.value = ""

        for box in boxes:
            _on_enter(box, on_check)
        check.on_click(on_check)
        hint.on_click(on_hint)
        other.on_click(on_other)
        return widgets.VBox(
            [said, widgets.HBox([*boxes, check, hint, other], layout=widgets.Layout(flex_flow="row wrap")), line]
        )

    def _filled_in(self, boxes: list[Any]) -> dict[str, str]:
        """What stands in the boxes; with several of them an empty one was left out."""
        keys = [box.key for box in self.question.boxes]
        typed = {key: box.value for key, box in zip(keys, boxes, strict=True)}
        return typed if len(typed) == 1 else {key: text for key, text in typed.items() if text.strip()}

    def _repr_html_(self) -> str:
        names = [box.key.rpartition(".")[2] for box in self.question.boxes]
        answers = '"…"' if len(names) == 1 else "{" + ", ".join(f'"{name}": "…"' for name in names) + "}"
        return f'{self.html}<p>Check your answer with <code>judge("{html.escape(self.task)}", {answers})</code>.</p>'

    def __repr__(self) -> str:
        question = self.question
        lines = [f"{question.task.title}: {question.text}"]
        for box in question.boxes:
            lines += [f"{box.label}: {box.text}"] if box.text else []
            lines += [f"  {letter}: {shown}" for letter, shown in box.choices]
            lines.append(box.asks)
        return "\n".join(lines)

    def _repr_mimebundle_(self, **_: Any) -> dict[str, Any]:
        """The widget where it can be shown, beside the same question as HTML and as text."""
        bundle: dict[str, Any] = {"text/plain": repr(self), "text/html": self._repr_html_()}
        try:
            view = self.widget._repr_mimebundle_() or {}
        except ImportError:
            return bundle
        return {**view, **bundle}


def _text_box(widgets: Any, box: Box) -> Any:
    label = f"{box.label} ({box.form.beside}):" if box.label else f"Your answer ({box.form.beside}):"
    return widgets.Text(
        description=label,
        placeholder=box.form.example,
        style={"description_width": "initial"},
        layout=widgets.Layout(width="30em", max_width="100%"),
    )


def _on_enter(box: Any, act: Any) -> None:
    """Act when Enter is pressed in a box; ipywidgets warns about on_submit although nothing replaces it there."""
    import warnings

    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)
        box.on_submit(act)
