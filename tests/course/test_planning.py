"""Plans and settings are held against requirements."""

import math

import pytest

from drillpoint.course.class_page import class_page, survey_of
from drillpoint.course.exercise_file import load_set
from drillpoint.course.feedback import feedback_page
from drillpoint.course.folder import File
from drillpoint.course.gradebook import gradebook_csv
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.html_sheet import html_sheet
from drillpoint.course.judging import MISSING, PARTLY, RIGHT, TAKEN, UNREADABLE, WRONG, judge_task
from drillpoint.course.key_page import key_page
from drillpoint.course.lint import lint
from drillpoint.course.marking import mark_class
from drillpoint.course.planning import held_against
from drillpoint.course.results import Mark, StudentResult
from drillpoint.course.roster import Student
from drillpoint.course.sheet import sheet_description
from drillpoint.errors import InstructorError

from .conftest import EXERCISES
from .small_sets import only_question, small_set

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
        explorer = find(task.explorer)
        sliders = {slider.name for slider in explorer.sliders}
        # Some givens are limits, or fixed in the explorer; the drill itself is set with sliders.
        assert {given.name for given in task.givens} & sliders, task.id
        # What is entered may also be read off the explorer's table.
        assert {entered.name for entered in task.enters} <= sliders | set(explorer.table), task.id


def test_limits_that_somebody_chose_are_shown_with_whose_they_are(relief):
    """Published reliefs differ: the class sets its own range, and never a lone number."""
    question = relief.question("choose-the-relief", "s01")
    (box,) = question.boxes
    for typed in ("12.9", "20"):
        line = judge_task(question, {box.key: typed}).lines[0]
        assert "published ranges differ" in line
    assert "between 8° and 16°" in question.text


# A drill that is worn on purpose: ground by some students, left alone by others.
WORN = """
[[task]]
id = "worn"
kind = "plan"
title = "A worn drill"
text = "A drill of {diameter} has a wear land of {wear_land}, and {lip_relief} of relief at the corner."
points = 4
[task.givens]
diameter = { from = 8, to = 16, step = 0.5, shown_only = true }
wear_land = [0.05, 0.08, 0.4, 0.5, 0.6]
lip_relief = [10, 12, 14]
[[task.decide]]
id = "what-to-do"
text = "What do you do with it?"
share = 2
[[task.decide.statements]]
name = "ground for nothing"
text = "Regrind the drill of {diameter}."
holds = "wear_land - 0.2"
says = "Such a land still cuts."
[[task.decide.statements]]
name = "left blunt"
text = "Leave it alone."
holds = "0.2 - wear_land"
says = "Such a land rubs."
[task.enter]
stock = { decimals = 2, example = "wear_land*tan(lip_relief) + 0.01" }
[[task.requirements]]
says = "The land is gone"
formula = "stock - wear_land*tan(lip_relief)"
at_least = 0
[[task.requirements]]
says = "No more comes off than is needed"
formula = "stock - wear_land*tan(lip_relief)"
at_most = 0.05
"""
DECISION, STOCK = "worn.what-to-do", "worn.stock"


def letters_of(question):
    """The letters of the decision by the first word of what stands beside them."""
    return {shown.split()[0]: letter for letter, shown in question.boxes[0].choices}


def test_a_decision_is_a_box_of_its_own_and_has_its_share(tmp_path):
    question = only_question(tmp_path, WORN)
    assert [box.key for box in question.boxes] == [DECISION, STOCK]
    # DERIVED: 2 shares of 4, and what is left for the two requirements of one share each.
    assert [box.points for box in question.boxes] == [2, 2]
    assert question.boxes[0].text == "What do you do with it?"
    assert lint(small_set(tmp_path, WORN).set, 60) == []


def test_the_right_letter_follows_from_the_givens(tmp_path):
    variants = small_set(tmp_path, WORN)
    seen = set()
    for number in range(60):
        question = variants.question("worn", f"x{number}")
        land = values_of(question)["wear_land"]
        letters = letters_of(question)
        right, wrong = ("Regrind", "Leave") if land > 0.2 else ("Leave", "Regrind")
        seen.add((right, letters[right]))
        stock = f"{question.numbers.right[0]:.2f}"
        both = judge_task(question, {DECISION: letters[right], STOCK: stock})
        assert (both.state, both.mark) == (RIGHT, 1)
        assert [both.parts[key].state for key in (DECISION, STOCK)] == [RIGHT, TAKEN]
        half = judge_task(question, {DECISION: letters[wrong], STOCK: stock})
        assert (half.state, half.mark) == (PARTLY, 0.5)
        assert half.slip == ("left blunt" if right == "Regrind" else "ground for nothing")
        assert half.lines[0].startswith("Not met: The right choice (what to do). Such a land ")
        only = judge_task(question, {DECISION: letters[right]})
        assert only.mark == 0.5 and "There is no stock to grind off" in only.lines[1]
        assert judge_task(question, {STOCK: stock}).mark == 0.5
    # Some grind and some do not, and no letter is always right.
    assert len(seen) == 4


def test_a_decision_that_cannot_be_read_costs_only_its_share(tmp_path):
    question = only_question(tmp_path, WORN)
    verdict = judge_task(question, {DECISION: "grind it", STOCK: f"{question.numbers.right[0]:.2f}"})
    assert (verdict.mark, verdict.parts[DECISION].state) == (0.5, UNREADABLE)
    assert judge_task(question, {DECISION: "?", STOCK: "?"}).state == UNREADABLE
    assert judge_task(question, {}).state == MISSING


def test_sheet_key_and_feedback_show_the_decision(tmp_path):
    variants = small_set(tmp_path, WORN)
    student, question = Student("s01", "Student"), variants.question("worn", "s01")
    right = question.parts[0].right_choice
    letters = dict(question.boxes[0].choices)
    assert right == f"{right[0]}: {letters[right[0]]}"
    assert f"what-to-do: {right}" in question.worked
    assert f"what-to-do: {right}" in key_page(variants.set, student, [question])
    sheet = html_sheet(variants.set, student, [question])
    for letter, shown in letters.items():
        assert f'value="{letter}"' in sheet and shown in sheet
    boxes = sheet_description(variants.set, student, [question])
    assert DECISION in str(boxes) and "Such a land" not in str(boxes) and "Such a land" not in sheet
    wrong = next(letter for letter in letters if letter != right[0])
    typed = {DECISION: wrong, STOCK: f"{question.numbers.right[0]:.2f}"}
    mark = Mark(question, typed, judge_task(question, typed))
    shown = StudentResult(student, "marked", (mark,), ())
    early, late = (feedback_page(variants.set, shown, release=release) for release in (False, True))
    assert "Not met: The right choice (what to do). Such a land" in early
    assert f"what-to-do: {right}" not in early and f"what-to-do: {right}" in late


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('id = "what-to-do"', 'id = "stock"', "decide stock: id 'stock' is used twice"),
        ('id = "what-to-do"', 'id = "What to do"', "id 'What to do' may hold small letters"),
        ("share = 2", "share = 0", "share is above 0"),
        ('holds = "wear_land - 0.2"', 'holds = "answer - 0.2"', "answer"),
        ('text = "What do you do with it?"', 'txt = "What?"', "'txt' is not known here"),
    ],
)
def test_a_decision_that_cannot_be_asked_is_refused_with_its_line(tmp_path, old, new, says):
    with pytest.raises(InstructorError, match=says) as refused:
        small_set(tmp_path, WORN.replace(old, new))
    assert "line " in str(refused.value)


def test_two_right_letters_are_never_handed_out(tmp_path):
    found = lint(small_set(tmp_path, WORN.replace("0.2 - wear_land", "0.45 - wear_land")).set, 60)
    assert any("of the statements are true; one should be" in line and "line 20" in line for line in found)
    alike = WORN.replace("Regrind the drill of {diameter}.", "Leave it alone.")
    assert any("two statements read the same" in line for line in lint(small_set(tmp_path, alike).set, 20))


def test_a_decision_goes_from_the_hand_in_to_the_class_page(tmp_path):
    """Handed in, marked, and told to the instructor: the slip by name, in the gradebook and on the class page."""
    variants = small_set(tmp_path, WORN)
    student, question = Student("s01", "One"), variants.question("worn", "s01")
    right = question.parts[0].right_choice[0]
    wrong = next(letter for letter, _ in question.boxes[0].choices if letter != right)
    typed = [(DECISION, wrong), (STOCK, f"{question.numbers.right[0]:.2f}")]
    records = [AnswerRecord(box, text, "2026-03-12T18:00:00Z") for box, text in typed]
    data = hand_in_bytes("Class", "small", 1, "s01", records, "2026-03-12T19:00:00Z")
    result = mark_class(variants.set, (student,), [File("a", data)])
    (entry,) = result.students
    slip = judge_task(question, dict(typed)).slip
    assert slip in ("ground for nothing", "left blunt")
    assert entry.total == 2
    assert slip in gradebook_csv(result).decode()
    assert slip in class_page(survey_of(result), "p")
    assert any(f"what-to-do: typed “{wrong}”" in line and slip in line for line in entry.marks[0].why)
