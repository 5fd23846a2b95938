"""Plans and settings are held against requirements."""

import math

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, UNREADABLE, WRONG, judge_task
from drillpoint.course.planning import held_against

from .conftest import EXERCISES

BLIND, EXPLORER = "plan-a-blind-hole", "set-the-explorer"
ANGLE, DEPTH = f"{BLIND}.point-angle", f"{BLIND}.depth-to-point"


def values_of(question):
    return {name: given.value for name, given in question.numbers.givens.items()}


@pytest.mark.parametrize("task_id", [BLIND, EXPLORER, "choose-the-relief"])
def test_the_example_of_every_student_earns_everything(relief, task_id):
    for number in range(200):
        question = relief.question(task_id, f"x{number}")
        typed = {
            box.key: f"{value:.{entered.decimals}f}"
            for box, value, entered in zip(question.boxes, question.numbers.right, question.task.enters, strict=True)
        }
        verdict = judge_task(question, typed)
        assert (verdict.state, verdict.mark) == (RIGHT, 1)
        assert all(line.startswith("Met: ") for line in verdict.lines)


def test_every_requirement_has_its_line_and_its_share(relief):
    question = relief.question(BLIND, "s01")
    given = values_of(question)
    thick, diameter = given["sheet_thickness"], given["diameter"]
    # So deep that only the floor is missing.
    through = judge_task(question, {ANGLE: "118", DEPTH: f"{thick:.1f}"})
    assert (through.state, through.mark) == (PARTLY, pytest.approx(3 / 4))
    assert [line.startswith("Met") for line in through.lines] == [True, False, True]
    # So shallow that only the full diameter is missing; DERIVED: the shoulder lies (D/2)/tan 59° above the tip.
    depth = 0.75 * thick + diameter / 2 / math.tan(math.radians(59)) - 0.05
    shallow = held_against(question.task, given, {"point_angle": 118.0, "depth_to_point": depth})
    assert [met.met for met in shallow] == [False, True, True]
    assert shallow[0].value == pytest.approx(0.75 * thick - 0.05)
    sharp = judge_task(question, {ANGLE: "60", DEPTH: "5"})
    assert [line.startswith("Met") for line in sharp.lines] == [False, True, False]


def test_more_than_one_plan_is_right(relief):
    question = relief.question(BLIND, "s01")
    thick = values_of(question)["sheet_thickness"]
    plans = [{ANGLE: str(angle), DEPTH: f"{0.9 * thick:.1f}"} for angle in (128, 130, 135, 140)]
    assert [judge_task(question, plan).mark for plan in plans] == [1, 1, 1, 1]


def test_a_value_on_the_limit_meets_it(relief):
    question = relief.question(BLIND, "s01")
    given = values_of(question)
    thick = given["sheet_thickness"]
    at, beyond = (
        held_against(question.task, given, {"point_angle": 140.0, "depth_to_point": 0.9 * thick + more})
        for more in (0.0, 1e-6)
    )
    assert at[1].met and not beyond[1].met


def test_what_is_missing_or_unreadable_meets_nothing_that_needs_it(relief):
    question = relief.question(BLIND, "s01")
    assert judge_task(question, {}).state == MISSING
    only_angle = judge_task(question, {ANGLE: "135"})
    assert only_angle.mark == pytest.approx(1 / 4)
    assert "There is no depth to the point to judge it by" in only_angle.lines[0]
    broken = judge_task(question, {ANGLE: "135", DEPTH: "3.5.1"})
    assert broken.parts[DEPTH].state == UNREADABLE
    assert broken.mark == only_angle.mark
    assert judge_task(question, {ANGLE: "?", DEPTH: "?"}).state == UNREADABLE


def test_what_no_drill_can_be_is_not_met_and_says_why(relief):
    verdict = judge_task(relief.question(BLIND, "s01"), {ANGLE: "200", DEPTH: "15"})
    assert verdict.lines[0].startswith("Not met: ")
    assert "200°" in verdict.lines[0]


def test_settings_count_only_when_everything_is_met(relief):
    """DERIVED: the relief for 122° lies between those for 120° and 124°; those for 119° and 125° lie outside."""
    for number in range(40):
        question = relief.question(EXPLORER, f"x{number}")
        given = values_of(question)
        u, cot = given["web"] / given["diameter"], 1 / math.tan(math.radians(given["point_angle"] / 2))

        def relief_for(edge, u=u, cot=cot):
            axial = cot / math.tan(math.radians(180 - edge))
            return math.degrees(math.atan(u * cot + math.sqrt(1 - u * u) * axial))

        (box,) = question.boxes
        marks = [judge_task(question, {box.key: f"{relief_for(e):.2f}"}).mark for e in (119, 120.2, 122, 123.8, 125)]
        assert marks == [0, 1, 1, 1, 0]
        assert judge_task(question, {box.key: "1"}).state == WRONG


def every_set():
    return [load_set(path) for path in sorted({*EXERCISES.glob("*.toml"), *EXERCISES.glob("practice/*.toml")})]


def test_explorers_that_tasks_name_are_there_with_their_sliders():
    from drillpoint.explorers.find import find

    tasks = [task for exercise_set in every_set() for task in exercise_set.tasks if task.explorer]
    assert tasks
    for task in tasks:
        sliders = {slider.name for slider in find(task.explorer).sliders}
        assert {entered.name for entered in task.enters} | {given.name for given in task.givens} <= sliders, task.id


def test_limits_that_somebody_chose_are_shown_with_whose_they_are(relief):
    """Published reliefs differ: the class sets its own range, and never a lone number."""
    question = relief.question("choose-the-relief", "s01")
    (box,) = question.boxes
    for typed in ("12.9", "20"):
        line = judge_task(question, {box.key: typed}).lines[0]
        assert "published ranges differ" in line
    assert "between 8° and 16°" in question.text
