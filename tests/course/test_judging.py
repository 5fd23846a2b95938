"""Judging typed answers."""

import pytest

from drillpoint.course.judging import PARTLY, RIGHT, UNREADABLE, WRONG, judge_answer
from drillpoint.course.reading import unit_and_factor

from .hostile import HOSTILE_STRINGS


@pytest.mark.parametrize(
    ("typed", "state", "slip"),
    [
        ("D/(2 tan κ)", RIGHT, ""),
        ("h = D/2 * cot kappa", RIGHT, ""),
        ("D/2*tan(90-κ)", RIGHT, ""),  # the other usual way to write it
        ("D*cos κ/(2 sin κ)", RIGHT, ""),
        ("D/2*tan κ", WRONG, "tangent upside down"),
        ("D/(2 tan(κ/2))", WRONG, "half angle for whole"),
        ("D/(2 tan(2κ))", WRONG, "whole angle for half"),
        ("D/tan κ", WRONG, "diameter for radius"),
        ("D/(2 sin κ)", WRONG, "sine for tangent"),
        ("0.3*D", WRONG, ""),
        ("sqrt(-D)", WRONG, ""),
        ("D/2 tan κ", UNREADABLE, ""),
        ("r/tan κ", UNREADABLE, ""),
    ],
)
def test_formulas(variants, typed, state, slip):
    verdict = judge_answer(variants.question("point-height-formula", "s01"), typed)
    assert (verdict.state, verdict.slip) == (state, slip)


def test_other_units_and_fractions_count(variants):
    question = variants.question("point-height-inch", "s01")
    value = question.numbers.right[0]
    for typed in (
        f"{value / 25.4:.4f}",
        f"{value / 25.4:.4f} in",
        f"{value:.3f} mm",
        f"{value / 10:.4f} cm",
        f"{value:.3f}".replace(".", ",") + "0 mm",
    ):
        assert judge_answer(question, typed).state == RIGHT
    # The number in millimetres typed without a unit counts as inches: the box says so.
    assert judge_answer(question, f"{value:.3f}").slip == "inch against mm"


def test_judgement_counts_half_for_either_part(variants):
    question = next(
        q for n in range(50) if (q := variants.question("plane-flank-judgement", f"x{n}")).numbers.yes is False
    )
    number = f"{question.numbers.right[0]:.1f}"
    assert judge_answer(question, f"no, {number}").state == RIGHT
    assert judge_answer(question, f"No {number}°").state == RIGHT
    assert judge_answer(question, f"N; {number.replace('.', ',')} deg").state == RIGHT
    half = judge_answer(question, f"yes, {number}")
    assert (half.state, half.mark, half.slip) == (PARTLY, 0.5, "number right, judged wrongly")
    half = judge_answer(question, f"no, {180 - question.numbers.right[0]:.1f}")
    assert (half.state, half.mark, half.slip) == (PARTLY, 0.5, "obtuse against acute")
    assert judge_answer(question, "yes, 1°").state == WRONG
    for typed in ("no", number, "maybe 3", "yesno 3", "no, 3.5.1"):
        assert judge_answer(question, typed).state == UNREADABLE


def test_place_of_an_error_behind_yes_or_no(variants):
    question = variants.question("plane-flank-judgement", "s01")
    error = judge_answer(question, "no, 3.5.1").error
    assert error is not None
    assert error.text[error.position :] == ".1"


@pytest.mark.parametrize("typed", ["b", "B", "(b)", "b)", " b. "])
def test_letters(variants, typed):
    question = variants.question("lip-length-choice", "s01")
    assert judge_answer(question, typed).echo == "b"


@pytest.mark.parametrize("typed", ["", "e", "ab", "1", "5.15 mm"])
def test_not_a_letter(variants, typed):
    assert judge_answer(variants.question("lip-length-choice", "s01"), typed).state == UNREADABLE


def test_few_digits_are_still_traced(variants):
    """8.3 is seen to be the slip that gives 8.32."""
    for number in range(40):
        question = variants.question("point-height", f"x{number}")
        slip = next(wrong for wrong in question.numbers.wrong if wrong.name == "tangent upside down")
        typed = f"{slip.values[0]:.1f}"
        assert judge_answer(question, typed).slip in {"tangent upside down", "half angle for whole"}


def test_messages_never_give_the_answer_away(variants, lips):
    for task in lips.tasks:
        question = variants.question(task.id, "s05")
        if task.kind not in ("number", "judgement"):
            continue
        shown = f"{question.numbers.right[0] / unit_and_factor(task.unit)[1]:.{max(task.decimals - 1, 0)}f}"
        for wrong in question.numbers.wrong:
            assert shown not in judge_answer(question, f"{wrong.values[0]:.3f}0").message


@pytest.mark.parametrize("typed", HOSTILE_STRINGS, ids=range(len(HOSTILE_STRINGS)))
def test_hostile_answers_are_judged_and_nothing_more(variants, lips, typed):
    for task in lips.tasks:
        verdict = judge_answer(variants.question(task.id, "s01"), typed)
        assert verdict.mark == 0
        assert len(str(verdict)) < 700


def test_in_a_notebook_the_caret_keeps_its_place(variants):
    question = variants.question("point-height", "s01")
    assert "font-family:monospace" in judge_answer(question, "3.5.1")._repr_html_()
    assert "font-family" not in judge_answer(question, "3.5")._repr_html_()
