"""The numbers of one task: given, right, wrong, and fit to be handed out or not."""

import math

import pytest
from attrs import evolve

from drillpoint.course.answer_form import AnswerForm
from drillpoint.course.exercise import Given, GivenValue, SlipRule, Tolerance
from drillpoint.course.judging import RIGHT, WRONG, judge_answer
from drillpoint.course.numbers import Numbers, Unfit, numbers_of
from drillpoint.course.reading import unit_and_factor
from drillpoint.course.variant import Question


def fixed(name, value, shown):
    return Given(name, (GivenValue(value, shown),))


@pytest.fixture
def task(lips):
    """A 10 mm drill of 118°, and nothing else to draw."""
    givens = (fixed("diameter", 10.0, "10 mm"), fixed("point_angle", 118.0, "118°"))
    return evolve(lips.task("point-height"), givens=givens)


def test_right_and_wrong(task):
    numbers = numbers_of(task, (0, 0))
    assert isinstance(numbers, Numbers)
    assert numbers.right == (pytest.approx(5 / math.tan(math.radians(59))),)  # DERIVED
    assert numbers.tolerance == pytest.approx(0.02)
    wrong = {slip.name: slip.values[0] for slip in numbers.wrong}
    assert wrong["tangent upside down"] == pytest.approx(5 * math.tan(math.radians(59)))  # DERIVED


def asked(task):
    """The question with the numbers of a task that has nothing to draw."""
    numbers = numbers_of(task, (0,) * len(task.givens))
    assert isinstance(numbers, Numbers)
    return Question(task, 1, numbers, AnswerForm(task.kind, task.unit), ())


def test_degrees_in_a_function_of_radians_give_a_negative_tip_and_are_named(lips):
    givens = (fixed("diameter", 22.225, "7/8 in"), fixed("point_angle", 118.0, "118°"))
    question = asked(evolve(lips.task("point-height-inch"), givens=givens))
    wrong = {slip.name: slip.values[0] for slip in question.numbers.wrong}
    assert wrong["radians"] / 25.4 == pytest.approx(0.4375 / math.tan(59))  # DERIVED: tan of 59 radians
    verdict = judge_answer(question, "-.530")
    assert (verdict.state, verdict.slip, verdict.echo) == (WRONG, "radians", "-.530 in = -13.462 mm")
    assert "degrees" in verdict.message


@pytest.mark.parametrize("wrong", [3.0043 * 25.4, 3.0043 / 25.4])
def test_inches_for_millimetres_either_way_are_named(task, wrong):
    verdict = judge_answer(asked(task), f"{wrong:.4g} mm")  # DERIVED: 5/tan 59° = 3.0043
    assert (verdict.state, verdict.slip) == (WRONG, "inch against mm")
    assert "25.4" in verdict.message


def test_a_right_answer_rounded_as_asked_is_never_refused_and_the_question_says_how_far_off_may_be(lips, variants):
    numeric = [task for task in lips.tasks if task.kind == "number"]
    assert len(numeric) >= 5
    for task in numeric:
        for student in range(20):
            question = variants.question(task.id, f"s{student}")
            right, factor = question.numbers.right[0], unit_and_factor(task.unit)[1]
            for decimals in (task.decimals, task.decimals + 1, task.decimals + 4):
                typed = f"{right / factor:.{decimals}f}"
                assert judge_answer(question, typed).state == RIGHT, f"{task.id}: {typed} for {right}"
            off = question.numbers.tolerance / factor
            assert judge_answer(question, f"{right / factor + 0.999 * off:.9f}").state == RIGHT
            assert judge_answer(question, f"{right / factor + 1.01 * off:.9f}").state == WRONG
        printed = f"±{task.tolerance.percent:g} %" if task.tolerance.percent else f"±{off:.9f}".rstrip("0").rstrip(".")
        assert f"to {task.decimals or 'no'} decimal" in question.asks
        assert f"Up to {printed}" in question.asks


def test_tolerance_in_per_cent_and_in_inches(task):
    numbers = numbers_of(evolve(task, tolerance=Tolerance(percent=0.5)), (0, 0))
    assert numbers.tolerance == pytest.approx(numbers.right[0] * 0.005)
    numbers = numbers_of(evolve(task, unit="in", decimals=3, tolerance=Tolerance(last_digit=1)), (0, 0))
    assert numbers.tolerance == pytest.approx(0.0254)


def test_a_share_is_rounded_to_its_step(lips):
    task = lips.task("lip-length")
    numbers = numbers_of(task, (0, 0, 0, 0))  # diameter 8, web 0.12 of it = 0.96
    assert numbers.givens["web"] == GivenValue(1.0, "1 mm")


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"givens": (fixed("diameter", 200.0, "200 mm"), fixed("point_angle", 118.0, "118°"))}, "200 mm is outside"),
        ({"givens": (fixed("diameter", 10.0, "10 mm"),)}, "needs point_angle"),
        ({"slips": (SlipRule("shop rule", "0.3*diameter", "x"),)}, "“shop rule” gives 3, which passes for"),
        ({"kind": "judgement", "at_least": 3.0}, "too near the limit 3"),
        ({"kind": "choice", "slips": ()}, "fewer than 3 different options"),
    ],
)
def test_unfit_numbers_say_why(task, changes, says):
    changed = evolve(task, **changes)
    numbers = numbers_of(changed, (0,) * len(changed.givens))
    assert isinstance(numbers, Unfit)
    assert says in numbers.reason


def test_yes_and_no(task):
    assert numbers_of(evolve(task, kind="judgement", at_least=2.0), (0, 0)).yes is True
    assert numbers_of(evolve(task, kind="judgement", at_least=4.0), (0, 0)).yes is False
    assert numbers_of(evolve(task, kind="judgement", at_most=4.0), (0, 0)).yes is True
    assert numbers_of(task, (0, 0)).yes is None


def test_a_formula_is_sampled_in_the_symbols_of_the_student(lips):
    numbers = numbers_of(lips.task("point-height-formula"), ())
    assert len(numbers.points) == len(numbers.right) == 8
    for point, right in zip(numbers.points, numbers.right, strict=True):
        assert set(point) == {"D", "κ"}
        assert right == pytest.approx(point["D"] / 2 / math.tan(math.radians(point["κ"])))  # DERIVED


def test_a_slip_that_is_the_right_formula_is_found(lips):
    task = evolve(lips.task("point-height-formula"), slips=(SlipRule("twin", "diameter*cot(point_angle/2)/2.0", "x"),))
    numbers = numbers_of(task, ())
    assert isinstance(numbers, Numbers)
    assert numbers.wrong == ()  # it changes nothing, so it is no slip
