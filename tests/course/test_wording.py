"""Questions in words."""

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.variant import Variants
from drillpoint.course.wording import CONVENTIONS


@pytest.mark.parametrize("student", ["s01", "s02", "s03"])
def test_every_angle_that_can_be_meant_in_two_ways_says_which(variants, student):
    words = {"point_angle": ("included", "whole", "half"), "chisel_edge_angle": ("obtuse", "acute")}
    for question in variants.questions(student):
        for name, some in words.items():
            if "{" + name + "}" in question.task.text or question.task.asked == name:
                assert any(word in question.text + question.asks for word in some), question.task.id


def test_the_inverse_says_how_the_answer_is_checked(variants):
    question = variants.question("point-angle-from-lip", "s01")
    first, *rest = question.worked.splitlines()
    assert first.startswith("point angle = ")
    assert question.numbers.givens["lip_length"].shown.removesuffix(" mm") in first
    assert rest[0].startswith("L = ")


def test_the_worked_solution_in_inches_ends_in_inches(variants):
    assert variants.question("point-height-inch", "s01").worked.endswith(" in")


def test_the_worked_solution_of_a_formula_shows_letters_only(variants):
    assert (
        variants.question("point-height-formula", "s01").worked.splitlines()[0] == "h = R/tan κ with R = D/2, κ = A/2"
    )


@pytest.mark.parametrize("name", CONVENTIONS)
def test_conventions_are_quantities(name):
    from drillpoint.quantities import QUANTITIES

    assert name in QUANTITIES


def test_questions_fit_on_one_line_of_text(lips):
    for question in Variants(lips).questions("s01"):
        assert "\n" not in question.text
        assert "{" not in question.text
        assert "  " not in question.text


def test_a_task_may_call_what_it_asks_for_by_words_of_its_own():
    (task,) = (task for task in load_set("practice/start-here").tasks if task.id == "half-of-it")
    question = Variants(load_set("practice/start-here")).question("half-of-it", "s01")
    assert task.called == "distance from the axis"
    assert question.asks.startswith("Give the distance from the axis in mm, to 2 decimals.")
