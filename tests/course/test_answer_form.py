"""What may be typed into each kind of box."""

import pytest

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.reading import ReadingError

FORMS = [
    AnswerForm("number", "mm"),
    AnswerForm("number", "in"),
    AnswerForm("number", "°"),
    AnswerForm("number", ""),
    AnswerForm("formula", names=("D", "κ"), symbol="h"),
    AnswerForm("choice", letters="abc"),
    AnswerForm("judgement", "°"),
]


@pytest.mark.parametrize("form", FORMS, ids=lambda form: f"{form.kind} {form.unit}")
def test_the_example_can_be_read_and_the_box_says_its_unit(form):
    assert form.read(form.example).echo
    assert form.beside
    if form.unit:
        assert form.unit in form.beside


def test_nothing_behind_a_letter_is_dropped():
    form = AnswerForm("choice", letters="abc")
    assert form.read(" (b) ").letter == "b"
    for typed in ("b" + " " * 59 + "c", "b" + " " * 100, "b c", "b\u200b"):
        with pytest.raises(ReadingError):
            form.read(typed)


@pytest.mark.parametrize("form", FORMS, ids=lambda form: f"{form.kind} {form.unit}")
@pytest.mark.parametrize("typed", ["", " ", "?", "\x00", "<b>", "yes yes", "a b"])
def test_nonsense_is_refused_with_examples_that_can_be_read(form, typed):
    with pytest.raises(ReadingError) as caught:
        form.read(typed)
    assert caught.value.examples
    for example in caught.value.examples:
        form.read(example)
