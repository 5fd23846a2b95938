"""The drawings a question is read from, with the numbers of one student."""

from __future__ import annotations

from drillpoint.course.variant import Question
from drillpoint.drawing.picture import Picture


def pictures_of(question: Question) -> tuple[Picture, ...]:
    """Draw what a question shows: each with `.svg` and `.alt`, the sentence that takes its place; often none."""
    from drillpoint.drawing import draw

    figure = question.task.figure
    if figure is None:
        return ()
    values = {name: given.value for name, given in question.numbers.givens.items()}
    return (draw(figure.view, units="mm", hide=figure.hide, **values),)
