"""The drawings a question is read from, with the numbers of one student."""

from __future__ import annotations

from drillpoint.course.faulty import FaultyDrill
from drillpoint.course.variant import Question
from drillpoint.drawing.picture import Picture


def pictures_of(question: Question) -> tuple[Picture, ...]:
    """Draw what a question shows: each with `.svg` and `.alt`, the sentence that takes its place; often none."""
    from drillpoint.drawing import draw

    drill = question.numbers.drill
    if drill is not None:
        return (_on_the_bench(question, drill),)
    figure = question.task.figure
    if figure is None:
        return ()
    values = {name: given.value for name, given in question.numbers.givens.items() if _takes(question, name)}
    asked = {part.asked for part in (question.task, *question.task.parts)} - {""}
    # The number asked for is never written on the drawing, whether the file says so or not.
    hide = {*figure.hide, *(asked & set(shown_by(figure.view)))}
    return (draw(figure.view, units="mm", hide=hide, **values),)


def _takes(question: Question, name: str) -> bool:
    """Whether the drawing takes this given; a point that is ground for it takes its settings only."""
    from drillpoint.drawing.catalogue import COMPUTED
    from drillpoint.drawing.draw import scene

    figure = question.task.figure
    if figure is not None and figure.view in COMPUTED:
        return name in scene(figure.view).needs
    return name not in question.task.measures


def shown_by(view: str) -> tuple[str, ...]:
    """The quantities whose numbers a drawing can show."""
    from drillpoint.drawing.draw import scene
    from drillpoint.drawing.working import step

    shown = scene(view)
    return (*shown.needs, *(step(working).result for working in shown.relations))


def _on_the_bench(question: Question, drill: FaultyDrill) -> Picture:
    """The end view of a drill that is ground wrong; only what was read is written on it."""
    from drillpoint.drawing import draw
    from drillpoint.drawing.ground_end_view import READ

    inspected = drill.point.inspect()
    read = {"diameter", *(question.task.diagnosis.readings if question.task.diagnosis else ())}
    known = [name for name in READ if getattr(inspected, name) is not None]
    return draw("ground_end_view", drill.point, hide=["bow_size", *(name for name in known if name not in read)])
