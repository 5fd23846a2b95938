"""Tasks about ground points: how they are written, what is refused, how they are asked, worked out and marked."""

from __future__ import annotations

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.judging import PARTLY, RIGHT, WRONG, judge_task
from drillpoint.course.lint import lint
from drillpoint.course.picturing import pictures_of
from drillpoint.course.variant import Variants
from drillpoint.errors import InstructorError

HEAD = 'set = "small"\ntitle = "Small"\ncourse = "Class"\nversion = 1\n'
DRILL = """
[task.givens]
diameter = { from = 6, to = 16, step = 0.5 }
web = { share_of = "diameter", choose = [0.14, 0.15, 0.16], step = 0.01 }
"""
SET_THE_CONE = f"""
[[task]]
id = "set-the-cone"
kind = "settings"
title = "Set the cone"
text = "Set a cone of 25° for a {{diameter}} drill with a web of {{web}}."
explorer = "cone"
{DRILL}
cone_half_angle = [25]
[task.enter]
cone_tilt = {{ decimals = 1, example = "33.8" }}
apex_distance = {{ decimals = 1, example = "0.82*diameter" }}
skew = {{ decimals = 2, example = "0.15*diameter" }}
[[task.requirements]]
says = "The lip relief lies between 10° and 14°"
ground = "lip_relief"
at_least = 10
at_most = 14
[[task.requirements]]
says = "Half way, the relief is at least 15°"
ground = {{ reading = "relief_at_radius", radius = "diameter/4" }}
at_least = 15
[[task.requirements]]
says = "The flank does not come up for 100°"
ground = "heel_clearance"
at_least = 100
"""
WORK_IT_OUT = f"""
[[task]]
id = "work-it-out"
kind = "plan"
title = "Work it out"
text = "A {{diameter}} drill, web {{web}}: {{point_angle}} (included), {{lip_relief}}, {{chisel_edge_angle}} (obtuse)."
{DRILL}
point_angle = [118]
lip_relief = [11, 12]
chisel_edge_angle = [125]
cone_half_angle = [25]
[task.enter]
cone_tilt = {{ decimals = 1 }}
apex_distance = {{ decimals = 1 }}
skew = {{ decimals = 2 }}
[[task.requirements]]
says = "The lip relief is as wanted"
ground = "lip_relief"
at_least = "lip_relief - 1"
at_most = "lip_relief + 1"
[[task.requirements]]
says = "The chisel edge is as wanted"
ground = "chisel_edge_angle_at_axis"
at_least = "chisel_edge_angle - 3"
at_most = "chisel_edge_angle + 3"
share = 2
"""
MOVE_THE_APEX = f"""
[[task]]
id = "move-the-apex"
kind = "choice"
title = "Move the apex"
text = "A cone leaves a {{diameter}} drill, web {{web}}, its edge at {{edge}} (obtuse). The apex goes away. What then?"
{DRILL}
cone_half_angle = [25]
cone_tilt = [33.8]
apex_distance = {{ share_of = "diameter", choose = [0.8, 0.9], step = 0.1 }}
skew = {{ share_of = "diameter", choose = [0.15], step = 0.05 }}
[task.measure]
edge = "chisel_edge_angle"
edge_after = {{ reading = "chisel_edge_angle", with = {{ apex_distance = "1.2*apex_distance" }} }}
[[task.statements]]
name = "smaller"
text = "It gets smaller."
holds = "edge - edge_after"
says = "A far apex is nearly a plane."
[[task.statements]]
name = "larger"
text = "It gets larger."
holds = "edge_after - edge"
says = "A far apex bends the flank less."
"""
EVERY = {"settings": SET_THE_CONE, "plan": WORK_IT_OUT, "choice": MOVE_THE_APEX}


def loaded(tmp_path, text):
    path = tmp_path / "small.toml"
    path.write_text(HEAD + text, encoding="utf-8")
    return load_set(path)


@pytest.mark.parametrize("text", EVERY.values(), ids=EVERY)
def test_such_tasks_can_be_handed_out(tmp_path, text):
    assert lint(loaded(tmp_path, text), 60) == []


def test_a_set_up_is_marked_by_the_point_it_grinds(tmp_path):
    variants = Variants(loaded(tmp_path, SET_THE_CONE))
    for student in ("s01", "s02", "s03"):
        question = variants.question("set-the-cone", student)
        diameter = question.numbers.givens["diameter"].value
        keys = [box.key for box in question.boxes]
        good = dict(zip(keys, ("33.8", f"{0.82 * diameter:.1f}", f"{0.15 * diameter:.2f}"), strict=True))
        verdict = judge_task(question, good)
        assert (verdict.state, verdict.mark) == (RIGHT, 1)
        flat = judge_task(question, {**good, keys[2]: f"{0.05 * diameter:.2f}"})
        assert (flat.state, flat.mark) == (WRONG, 0)
        assert flat.lines[0].startswith("Not met: The lip relief lies between 10° and 14°. It comes to ")
        none = judge_task(question, {**good, keys[0]: "70"})
        assert none.lines[0].endswith("together they are about half the point angle, so 59° on a 118° point")
        assert "There is no skew" in judge_task(question, {key: good[key] for key in keys[:2]}).lines[0]


def test_a_heel_that_never_comes_up_meets_any_clearance(tmp_path):
    question = Variants(loaded(tmp_path, SET_THE_CONE)).question("set-the-cone", "s01")
    diameter = question.numbers.givens["diameter"].value
    typed = ("33.8", f"{0.6 * diameter:.1f}", f"{0.14 * diameter:.2f}")
    verdict = judge_task(question, dict(zip((box.key for box in question.boxes), typed, strict=True)))
    assert verdict.lines[2] == "Met: The flank does not come up for 100° (never)."


def test_without_an_example_the_program_works_the_set_up_out(tmp_path):
    variants = Variants(loaded(tmp_path, WORK_IT_OUT))
    question = variants.question("work-it-out", "s01")
    tilt, apex, skew = question.numbers.right
    # DERIVED: at a web of 0.15 and 12° it is 33.77°, 0.821 D and 0.151 D; webs and reliefs near that change it little.
    diameter = question.numbers.givens["diameter"].value
    assert tilt == pytest.approx(33.8, abs=0.2)
    assert apex / diameter == pytest.approx(0.8, abs=0.1) and skew / diameter == pytest.approx(0.15, abs=0.03)
    assert "One that does" in question.worked and "tilt of the grinding cone" in question.worked
    keys = [box.key for box in question.boxes]
    half = judge_task(question, dict(zip(keys, (f"{tilt}", f"{1.18 * apex:.1f}", f"{skew}"), strict=True)))
    assert (half.state, half.mark) == (PARTLY, pytest.approx(1 / 3))


def test_a_choice_is_decided_by_what_is_read_on_the_points(tmp_path):
    question = Variants(loaded(tmp_path, MOVE_THE_APEX)).question("move-the-apex", "s01")
    edge, after = (question.numbers.givens[name] for name in ("edge", "edge_after"))
    assert after.value < edge.value
    assert edge.shown in question.text and "{" not in question.text
    verdicts = {
        shown: judge_task(question, {question.boxes[0].key: letter}) for letter, shown in question.boxes[0].choices
    }
    assert verdicts["It gets smaller."].state == RIGHT
    assert "A far apex bends the flank less." in verdicts["It gets larger."].message
    assert question.worked == (
        f"It gets smaller.\nMeasured on the ground points: edge: {edge.shown}; edge after: {after.shown}."
    )


def test_the_set_up_can_be_drawn_with_what_was_given(tmp_path):
    figure = '[task.drawing]\nview = "conical_setup"\nhide = ["skew"]\n'
    text = MOVE_THE_APEX.replace("\n[task.givens]", f"\n{figure}[task.givens]")
    question = Variants(loaded(tmp_path, text)).question("move-the-apex", "s01")
    (picture,) = pictures_of(question)
    assert "half angle of 25°" in picture.alt and "the skew is not told" in picture.alt


@pytest.mark.parametrize(
    ("text", "old", "new", "says"),
    [
        (SET_THE_CONE, 'ground = "lip_relief"', 'ground = "lip_releif"', "did you mean 'lip_relief'?"),
        (SET_THE_CONE, 'ground = "lip_relief"', "", "either a relation, or a formula, or ground"),
        (SET_THE_CONE, 'ground = "lip_relief"', 'ground = "lip_relief"\nformula = "skew"', "either a relation, or a"),
        (SET_THE_CONE, 'radius = "diameter/4"', 'radius = "diameter/"', "ends too early"),
        (SET_THE_CONE, ', radius = "diameter/4"', "", "needs a radius: relief_at_radius is read along the lip"),
        (SET_THE_CONE, "cone_half_angle = [25]\n", "", "point_angle is missing"),
        (WORK_IT_OUT, "chisel_edge_angle = [125]\n", "", "that needs chisel_edge_angle as a given"),
        (MOVE_THE_APEX, 'edge = "chisel_edge_angle"', 'skew = "chisel_edge_angle"', "a name of its own"),
        (MOVE_THE_APEX, 'edge = "chisel_edge_angle"', 'answer = "chisel_edge_angle"', "a name of its own"),
        (MOVE_THE_APEX, "with = { apex_distance", "with = { apex_distence", "did you mean"),
        (MOVE_THE_APEX, '"1.2*apex_distance"', '"1.2*apex"', "is not a name in this task"),
        (MOVE_THE_APEX, "{edge}", "{egde}", ""),
    ],
)
def test_what_is_wrong_is_named_with_its_place(tmp_path, text, old, new, says):
    assert old in text
    wrong = text.replace(old, new)
    if not says:
        assert any("{egde} is not a given" in line for line in lint(loaded(tmp_path, wrong), 20))
        return
    with pytest.raises(InstructorError) as refused:
        loaded(tmp_path, wrong)
    assert says in str(refused.value)
    assert "task " in str(refused.value) and "line " in str(refused.value)


def test_a_draw_that_no_wheel_grinds_is_not_handed_out(tmp_path):
    text = MOVE_THE_APEX.replace("cone_tilt = [33.8]", "cone_tilt = [33.8, 70]")
    lines = lint(loaded(tmp_path, text), 60)
    assert any("draws are not handed out: " in line and "half the point angle" in line for line in lines)


def test_in_words_each_requirement_has_its_own_line(tmp_path):
    question = Variants(loaded(tmp_path, SET_THE_CONE)).question("set-the-cone", "s01")
    verdict = judge_task(question, {question.boxes[0].key: "33.8"})
    assert str(verdict).splitlines() == list(verdict.lines) and len(verdict.lines) == 3
