"""The answer box of a sheet: a labelled line to type into, its unit beside it, and a line that says what happened.

What the box shows is what is saved, and what is saved is what is marked.
"""

from __future__ import annotations

from typing import Any

from drillpoint.course.desk import Desk, SheetTask, escape, give_and_say
from drillpoint.errors import DrillpointError


def answer_box(desk: Desk, task: SheetTask) -> Any:
    """Make the box, filled with what is saved. Without widgets: a sentence that says how to answer in the cell."""
    in_cell = f'answer("{desk.set}/{task.number}", "{task.form.example}")'
    try:
        import ipywidgets as widgets
    except ImportError:
        print(f"Answer boxes are not installed here. Write your answer into the cell instead, as in {in_cell}")
        return None
    saved = desk.answers().get(task.id)
    make, size = (widgets.Textarea, {"rows": 6}) if task.form.kind == "text" else (widgets.Text, {})
    box = make(
        value=saved.typed if saved else "",
        description=f"Answer {task.number} ({task.form.beside}):",
        placeholder=task.form.example,
        continuous_update=False,
        style={"description_width": "initial"},
        layout=widgets.Layout(width="32em", max_width="100%"),
        **size,
    )
    button = widgets.Button(description="Save", tooltip=f"Save the answer to task {task.number}")
    line = widgets.HTML(status_line(f"Saved: {saved.typed}" if saved else "Nothing saved yet. Enter saves."))

    def save(_: Any) -> None:
        # An exception inside a callback would vanish: it is shown where the learner looks.
        try:
            said = give_and_say(desk, task, box.value)
        except DrillpointError as error:
            said = str(error)
        line.value = status_line(said)

    button.on_click(save)
    box.observe(save, names="value")
    whole = widgets.VBox([widgets.HBox([box, button]), line])
    shown = whole._repr_mimebundle_
    # A front end that knows no widgets would show the name of a Python class.
    instead = f"The answer box cannot be shown here. Write your answer into the cell instead, as in {in_cell}"
    whole._repr_mimebundle_ = lambda **settings: {**(shown(**settings) or {}), "text/plain": instead}
    return whole


def status_line(text: str) -> str:
    """A line that is read out when it changes. The text is shown as it is, never as HTML; a caret keeps its place."""
    font = ";font-family:monospace" if "^" in text else ""
    style = f"white-space:pre-wrap;line-height:1.4{font}"
    return f'<div role="status" aria-live="polite" style="{style}">{escape(text)}</div>'
