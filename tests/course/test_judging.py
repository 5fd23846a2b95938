"""Judging typed answers."""

import math

import pytest

from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WAITING, WRONG, judge_answer, judge_task
from drillpoint.course.reading import unit_and_factor

from .hostile import HOSTILE_STRINGS
from .small_sets import only_question, point_height


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


@pytest.mark.parametrize(
    ("typed", "slip"),
    [
        ("8.32", "tangent upside down"),  # what a printed note gives: (D/2)·tan 59°
        ("-2.66", "whole angle for half"),  # κ = 118°
        ("8.84", "half angle for whole"),  # included angle 59°
        ("76.3", "inch against mm"),
        ("0.1183", "inch against mm"),
        ("6.01", "diameter for radius"),
    ],
)
def test_the_wrong_height_of_a_10_mm_point_is_traced_to_what_was_done(tmp_path, typed, slip):
    """DERIVED: 5·tan 59°, 5/tan 118°, 5/tan 29.5°, 3.00·25.4, 3.00/25.4, 10/tan 59°."""
    verdict = judge_answer(only_question(tmp_path, point_height()), typed)
    assert (verdict.state, verdict.slip) == (WRONG, slip)


@pytest.mark.parametrize(
    ("typed", "state", "slip"),
    [
        (".2629", RIGHT, ""),
        ("6.677 mm", RIGHT, ""),
        (".2636", RIGHT, ""),  # rounded tangent, still within ±0.5 %
        (".2625", RIGHT, ""),  # 0.3 D
        (".2574", WRONG, "rounded early"),
        ("-.530", WRONG, "radians"),
        ("6.677", WRONG, "inch against mm"),
        (".27", WRONG, "rounded early"),
        (".29", WRONG, ""),  # 10 % off is no rounding
    ],
)
def test_the_tip_of_a_seven_eighths_drill(tmp_path, typed, state, slip):
    """DERIVED: (7/16)/tan 59° = 0.26288 in; with the tangent in radians (7/16)/tan 59 = −0.530."""
    question = only_question(tmp_path, point_height('"7/8 in"', "in", 4, "percent = 0.5"))
    verdict = judge_answer(question, typed)
    assert (verdict.state, verdict.slip) == (state, slip)


def test_the_echo_shows_a_mixed_number_in_three_ways(tmp_path):
    question = only_question(tmp_path, point_height(unit="in"))
    assert judge_answer(question, "1 1/4").echo == "1 1/4 in = 1.25 in = 31.75 mm"
    assert judge_answer(question, "11/4").echo == "11/4 in = 2.75 in = 69.85 mm"


# Each with another number of its own, wrong by a slip in the first step.
@pytest.mark.parametrize("student", [f"s{number:02d}" for number in range(20)])
def test_a_wrong_first_part_used_rightly_earns_the_later_parts(relief, student):
    question = relief.question("plane-flank-in-steps", student)
    a, b, c = question.parts
    given = {name: value.value for name, value in question.numbers.givens.items()}
    # The lip relief taken for the relief square to the lip, and the rest worked out from there; DERIVED here.
    wrong_a = given["lip_relief"]
    cot = 1 / math.tan(math.radians(given["point_angle"] / 2))
    then_b = 180 - math.degrees(math.atan(cot / math.tan(math.radians(wrong_a))))
    then_c = given["web"] / math.sin(math.radians(then_b))
    verdict = judge_task(question, {a.key: f"{wrong_a:.1f}", b.key: f"{then_b:.1f}", c.key: f"{then_c:.2f}"})
    assert [part.mark for part in verdict.parts.values()] == [0, 1, 1]
    assert verdict.parts[a.key].slip == "web forgotten"
    assert verdict.parts[b.key].message == "Right with your own result of a, carried forward."
    assert (verdict.state, verdict.mark) == (PARTLY, pytest.approx(2 / 3))


def test_parts_are_marked_for_themselves(relief):
    question = relief.question("plane-flank-in-steps", "s01")
    right = {key: f"{value:.4f}" for key, (value, _) in question.right_values.items()}
    assert judge_task(question, right).state == RIGHT
    assert judge_task(question, {}).state == MISSING
    a, b, c = (part.key for part in question.parts)
    without = judge_task(question, {key: text for key, text in right.items() if key != a})
    assert [part.state for part in without.parts.values()] == [MISSING, RIGHT, RIGHT]
    broken = judge_task(question, {**right, a: "3.5.1"})
    assert [part.state for part in broken.parts.values()] == [UNREADABLE, RIGHT, RIGHT]
    assert judge_task(question, dict.fromkeys((a, b, c), "?")).state == UNREADABLE
    # A wrong step that nothing is carried into stays wrong, also behind a wrong first part.
    both = judge_task(question, {a: "1", b: "91", c: "99"})
    assert both.mark == 0


def test_a_part_worked_out_from_a_rounded_first_part_counts(relief):
    for number in range(60):
        question = relief.question("plane-flank-in-steps", f"x{number}")
        given = {name: value.value for name, value in question.numbers.givens.items()}
        rounded = round(question.parts[0].numbers.right[0], 1)
        cot = 1 / math.tan(math.radians(given["point_angle"] / 2))
        b = round(180 - math.degrees(math.atan(cot / math.tan(math.radians(rounded)))), 1)
        c = round(given["web"] / math.sin(math.radians(b)), 2)
        typed = {part.key: str(value) for part, value in zip(question.parts, (rounded, b, c), strict=True)}
        assert judge_task(question, typed).mark == 1


def test_slips_of_a_later_part_are_named_with_the_numbers_carried_into_it(relief):
    question = relief.question("plane-flank-in-steps", "s01")
    a, b, _ = question.parts
    wrong_a = question.parts[0].numbers.right[0] + 3
    cot = 1 / math.tan(math.radians(question.numbers.givens["point_angle"].value / 2))
    acute = math.degrees(math.atan(cot / math.tan(math.radians(wrong_a))))
    verdict = judge_task(question, {a.key: f"{wrong_a:.2f}", b.key: f"{acute:.1f}"})
    assert verdict.parts[b.key].slip == "obtuse against acute"


def test_an_open_answer_waits_for_the_instructor(relief):
    question = relief.question("brittle-plastic", "s01")
    (box,) = question.boxes
    verdict = judge_task(question, {box.key: "A sharp point, little relief,\nand a small flat on the lip."})
    assert (verdict.state, verdict.mark) == (WAITING, 0)
    assert len(verdict.lines) == 3
    assert judge_task(question, {}).state == MISSING
    assert judge_task(question, {box.key: "  "}).state == UNREADABLE
    assert judge_task(question, {box.key: "x" * 5000}).state == UNREADABLE


def test_an_answer_key_can_be_argued_with(relief):
    """Relief has to grow towards the axis, whatever an old key says; the sentence that says so is worked out."""
    for number in range(30):
        question = relief.question("which-grows", f"x{number}")
        (right,) = (shown for shown, slip in question.options if slip is None)
        assert right.startswith("The worksheet is wrong")
        given = {name: value.value for name, value in question.numbers.givens.items()}
        near, rim = (math.atan(given["feed"] / (2 * math.pi * r)) for r in (given["radius"], given["diameter"] / 2))
        assert near > rim  # DERIVED


@pytest.mark.parametrize("typed", HOSTILE_STRINGS, ids=range(len(HOSTILE_STRINGS)))
def test_hostile_answers_in_every_box_are_judged_and_nothing_more(relief, typed):
    for task in relief.set.tasks:
        question = relief.question(task.id, "s01")
        verdict = judge_task(question, {box.key: typed for box in question.boxes})
        assert verdict.mark == 0
        assert len(str(verdict)) < 2500


STRANGE = ("1e300", "0", "-5", "90", "180", "360", "-1e300", "1e-320", "89.99999999", "270", "1e19", "-90", "1e308")


@pytest.mark.parametrize("first", STRANGE)
def test_strange_first_results_carry_nothing_and_break_nothing(relief, first):
    question = relief.question("plane-flank-in-steps", "s01")
    a, b, c = (part.key for part in question.parts)
    for second in STRANGE:
        assert judge_task(question, {a: first, b: second, c: "2.00"}).mark < 1


@pytest.mark.parametrize("task_id", ["plan-a-blind-hole", "choose-the-relief", "set-the-explorer"])
def test_strange_plans_break_nothing(relief, task_id):
    question = relief.question(task_id, "s01")
    for typed in STRANGE:
        verdict = judge_task(question, {box.key: typed for box in question.boxes})
        assert verdict.mark < 1
        assert len(verdict.lines) == len(question.task.requirements)
