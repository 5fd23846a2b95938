"""Questions to try inside a lesson: answered at once, with the slip by name. Nothing is recorded."""

from __future__ import annotations

import html
from functools import lru_cache
from typing import Any

from drillpoint.course.answer_box import status_line
from drillpoint.course.exercise_file import load_set
from drillpoint.course.judging import Verdict, judge_answer
from drillpoint.course.sheet import question_figure
from drillpoint.course.variant import Question, Variants
from drillpoint.errors import LearnerError

FIRST_NUMBERS = "practice"


def judge(task: str, typed: str | float, *, numbers: str = FIRST_NUMBERS) -> Verdict:
    """Judge an answer to a practice task, as in `judge("lips/point-height", "3.00 mm")`.

    `numbers` chooses other numbers for the same task: any word, each word always the same numbers.
    """
    return judge_answer(practice_question(task, numbers), str(typed))


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

    def judge(self, typed: str | float) -> Verdict:
        """Judge an answer to this question."""
        return judge_answer(self.question, str(typed))

    @property
    def html(self) -> str:
        """The question as HTML: title, text, drawing if there is one, and what to give."""
        question = self.question
        parts = [f"<strong>{html.escape(question.task.title)}</strong>", html.escape(question.text)]
        if question.task.figure is not None:
            svg, alt = question_figure(question)
            parts.append(f'<span role="img" aria-label="{html.escape(alt, quote=True)}">{svg}</span>')
        for letter, (shown, _) in zip(question.form.letters, question.options, strict=True):
            parts.append(f"{letter}: {html.escape(shown)}")
        parts.append(f"<em>{html.escape(question.asks)}</em>")
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
        box = widgets.Text(
            description=f"Your answer ({self.question.form.beside}):",
            placeholder=self.question.form.example,
            style={"description_width": "initial"},
            layout=widgets.Layout(width="30em", max_width="100%"),
        )
        line = widgets.HTML(status_line("Enter checks your answer."))
        narrow = widgets.Layout(width="auto")
        check = widgets.Button(description="Check", tooltip="Check the answer", layout=narrow)
        hint = widgets.Button(description="Hint", tooltip="Show the next hint", disabled=not self._hints, layout=narrow)
        other = widgets.Button(description="Other numbers", tooltip="Ask the same with other numbers", layout=narrow)
        shown = 0

        def on_check(_: Any) -> None:
            try:
                line.value = status_line(str(self.judge(box.value)))
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
            said.value, box.value, line.value = self.html, "", status_line("Other numbers; Enter checks your answer.")

        _on_enter(box, on_check)
        check.on_click(on_check)
        hint.on_click(on_hint)
        other.on_click(on_other)
        return widgets.VBox(
            [said, widgets.HBox([box, check, hint, other], layout=widgets.Layout(flex_flow="row wrap")), line]
        )

    def _repr_html_(self) -> str:
        return f'{self.html}<p>Check your answer with <code>judge("{html.escape(self.task)}", "…")</code>.</p>'

    def __repr__(self) -> str:
        question = self.question
        options = "".join(
            f"\n  {letter}: {shown}" for letter, (shown, _) in zip(question.form.letters, question.options, strict=True)
        )
        return f"{question.task.title}: {question.text}{options}\n{question.asks}"

    def _repr_mimebundle_(self, **_: Any) -> dict[str, Any]:
        """The widget where it can be shown, beside the same question as HTML and as text."""
        bundle: dict[str, Any] = {"text/plain": repr(self), "text/html": self._repr_html_()}
        try:
            view = self.widget._repr_mimebundle_() or {}
        except ImportError:
            return bundle
        return {**view, **bundle}


def _on_enter(box: Any, act: Any) -> None:
    """Act when Enter is pressed in a box; ipywidgets warns about on_submit although nothing replaces it there."""
    import warnings

    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)
        box.on_submit(act)
