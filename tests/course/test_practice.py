"""Questions to try inside a lesson."""

import builtins

import pytest

from drillpoint.course import ask, judge
from drillpoint.course.exercise_file import load_set
from drillpoint.course.practice import practice_question
from drillpoint.errors import DrillpointError, LearnerError

from .conftest import EXERCISES

TASKS = [f"lips/{task.id}" for task in load_set(EXERCISES / "practice" / "lips.toml").tasks]


@pytest.mark.parametrize("task", TASKS)
def test_judging_names_the_slip(task):
    question = practice_question(task)
    more = question.task.decimals + 2
    assert judge(task, f"{question.numbers.right[0]:.{more}f}").mark == 1
    for wrong in question.numbers.wrong:
        verdict = judge(task, f"{wrong.values[0]:.{more}f}")
        assert (verdict.mark, verdict.slip) == (0, wrong.name)
        assert wrong.says in str(verdict)
    assert "does not count" in str(judge(task, "3.5.1"))


def test_three_questions_or_more_are_ready_for_the_lesson():
    assert len(TASKS) >= 3
    assert "lips/point-height" in TASKS


def test_the_numbers_are_fixed_and_others_can_be_asked_for():
    assert repr(ask("lips/point-height")) == repr(ask("lips/point-height"))
    assert len({repr(ask("lips/point-height", numbers=f"n{n}")) for n in range(20)}) > 5


def test_a_number_may_be_given_as_a_number():
    right = practice_question("lips/point-height").numbers.right[0]
    assert judge("lips/point-height", right).mark == 1


def test_the_widget_checks_on_enter_and_by_button():
    asked = ask("lips/point-height")
    said, row, line = asked.widget.children
    box, check, hint, other = row.children
    assert box.description == "Your answer (mm):"
    box.value = f"{asked.question.numbers.right[0]:.2f}"
    box._submission_callbacks(box)  # what the page sends when Enter is pressed
    assert "Right." in line.value
    box.value = "1,234"
    check.click()
    assert "two ways" in line.value
    assert 'role="status"' in line.value
    hint.click()
    assert "Hint 1" in line.value
    hint.click()
    assert "Hint 2" in line.value
    before = said.value
    for _ in range(5):
        other.click()
    assert said.value != before
    assert box.value == ""
    box.value = f"{asked.question.numbers.right[0]:.2f}"
    check.click()
    assert "Right." in line.value


def test_typed_html_is_text():
    asked = ask("lips/point-height")
    _, row, line = asked.widget.children
    row.children[0].value = "<img src=x onerror=alert(1)>"
    row.children[1].click()
    assert "<img" not in line.value


def test_it_reads_well_where_there_are_no_widgets(monkeypatch):
    asked = ask("lips/lip-length")
    bundle = asked._repr_mimebundle_()
    assert "application/vnd.jupyter.widget-view+json" in bundle
    assert "How long is a lip?" in bundle["text/html"]
    assert 'judge("lips/lip-length", "…")' in bundle["text/html"].replace("&quot;", '"')
    real = builtins.__import__

    def no_widgets(name, *rest):
        if name == "ipywidgets":
            raise ImportError(name)
        return real(name, *rest)

    monkeypatch.setattr(builtins, "__import__", no_widgets)
    bundle = ask("lips/lip-length")._repr_mimebundle_()
    assert set(bundle) == {"text/plain", "text/html"}
    assert "How long is a lip?" in bundle["text/plain"]


def test_nothing_shown_gives_the_answer_away():
    for task in TASKS:
        asked = ask(task)
        right = f"{asked.question.numbers.right[0]:.{asked.question.task.decimals}f}"
        bundle = asked._repr_mimebundle_()
        assert right not in bundle["text/html"] + bundle["text/plain"]


def test_unknown_tasks():
    with pytest.raises(LearnerError, match='as in ask\\("lips/point-height"\\)'):
        ask("point-height")
    with pytest.raises(DrillpointError, match="is not in set 'practice-lips'; it has 1 \\(point-height\\)"):
        ask("lips/nothing")
    with pytest.raises(DrillpointError, match="is not known"):
        ask("nothing/point-height")


def test_a_task_with_several_boxes_is_answered_by_name():
    question = practice_question("relief/in-steps")
    right = {part.task.id: f"{part.numbers.right[0]:.3f}" for part in question.parts}
    assert judge("relief/in-steps", right).mark == 1
    half = judge("relief/in-steps", {**right, "a": "1"})
    assert half.mark == 0.5
    assert "b: Right." in str(half)
    with pytest.raises(LearnerError, match=r'answer them by name: \{"a": "…", "b": "…"\}'):
        judge("relief/in-steps", "7.9")
    with pytest.raises(LearnerError, match="there is no box 'c' in this task; its boxes are a, b"):
        judge("relief/in-steps", {"c": "7.9"})
    assert 'judge("relief/in-steps", {"a": "…", "b": "…"})' in ask("relief/in-steps")._repr_html_()


def test_a_plan_shows_the_line_of_every_requirement():
    good, thin = judge("relief/enough-under-feed", "12"), judge("relief/enough-under-feed", {"lip-relief": "21°"})
    assert (good.mark, thin.mark) == (1, 0.5)
    assert "Not met: The lip does not get thin" in str(thin)


def test_the_widget_has_a_box_for_each_part_and_an_empty_one_is_left_out():
    asked = ask("relief/what-is-wrong")
    _, row, line = asked.widget.children
    fault, cure, check, *_ = row.children
    assert fault.description == "fault (one letter, a, b, c, d, e, f):"
    right = [part.form.letters[[slip for _, slip in part.options].index(None)] for part in asked.question.parts]
    fault.value = right[0]
    check.click()
    assert "fault: Right. cure: Not answered." in line.value
    cure.value = right[1]
    check.click()
    assert "fault: Right. cure: Right." in line.value
    # As an image, which a notebook that is not trusted yet keeps.
    assert "<img" in asked.html and "<svg" not in asked.html
