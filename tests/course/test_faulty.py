"""Drills that are ground wrong on purpose."""

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.faulty import KNOWN_FAULTS, SOUND, FaultyDrill, about_fault, drill_with, fault_options, readable
from drillpoint.course.judging import judge_task
from drillpoint.course.picturing import pictures_of
from drillpoint.course.sound_points import SOUND_POINTS
from drillpoint.course.variant import Variants
from drillpoint.ground import Limits, Readings, find_faults

ALL = tuple(readable())
WHAT = "what-is-wrong"


# A part of a cone that keeps point angle and chisel edge has a relief between these.
NOT_ON_A_CONE = {"negative_relief", "too_much_relief"}
MADE_OF = [
    *(("plane", fault, diameter) for fault in KNOWN_FAULTS for diameter in (6.0, 10.0, 16.0)),
    *(("facets", fault, 10.0) for fault in KNOWN_FAULTS),
    *(("cone", fault, 10.0) for fault in KNOWN_FAULTS if fault not in NOT_ON_A_CONE),
]


@pytest.mark.parametrize(("flank", "fault", "diameter"), MADE_OF)
def test_every_fault_can_be_ground_and_shows_in_its_readings(flank, fault, diameter):
    """It must show at most severities; where it does not, the drill is not handed out."""
    usable = ("half_angle_1", "half_angle_2", "lip_length_1", "lip_length_2", "lip_height_difference", "lip_relief_1",
              "lip_relief_2", "chisel_edge_angle", "web", "point_offset", "heel_height")  # fmt: skip
    assert set(usable) <= set(ALL)
    found = [drill_with(fault, far / 5, diameter, usable, flank) for far in range(6)]
    drills = [drill for drill in found if isinstance(drill, FaultyDrill)]
    assert len(drills) >= 4, [drill for drill in found if isinstance(drill, str)]
    for drill in drills:
        assert drill.sound is SOUND_POINTS[flank]
        exact = find_faults(Readings.of(drill.point.inspect()), limits=Limits(point_angle=drill.sound.point_angle))
        causes = [found.key for found in exact.faults if not found.follows_from]
        # DERIVED: the exact readings of the same point, not those that are printed.
        assert (causes[0] if causes else SOUND) == fault


@pytest.mark.parametrize("fault", sorted(NOT_ON_A_CONE))
def test_what_a_cone_cannot_have_is_not_handed_out(fault):
    reason = drill_with(fault, 0.5, 10.0, ("lip_relief_1", "lip_relief_2"), "cone")
    assert isinstance(reason, str) and f"cannot be ground with {fault}" in reason


def test_a_fault_that_was_not_read_is_not_handed_out():
    reason = drill_with("unequal_relief", 1.0, 10.0, ("half_angle_1", "half_angle_2", "web"))
    assert isinstance(reason, str)
    assert "ground for unequal_relief show sound" in reason


def test_options_are_told_apart():
    names, cures = fault_options(KNOWN_FAULTS, "thick_web")
    for options in (names, cures):
        assert len({shown for shown, _ in options}) == len(KNOWN_FAULTS)
        assert [shown for shown, told in options if told is None] == [
            about_fault("thick_web")[0 if options is names else 1]
        ]


def test_fault_and_cure_count_half_each(relief):
    for number in range(20):
        question = relief.question(WHAT, f"x{number}")
        fault, cure = question.parts
        right = {part.key: part.form.letters[[slip for _, slip in part.options].index(None)] for part in (fault, cure)}
        assert judge_task(question, right).mark == 1
        other = next(letter for letter in fault.form.letters if letter != right[fault.key])
        half = judge_task(question, {**right, fault.key: other})
        assert half.mark == 0.5
        assert half.slip.startswith("taken for “")
        assert "would show in" in half.parts[fault.key].message or "compare the two lips" in half.message


def test_the_picture_tells_no_reading_that_was_not_taken(relief):
    question = relief.question(WHAT, "s01")
    (picture,) = pictures_of(question)
    assert "Point angle not told" in picture.alt
    assert question.numbers.drill.fault not in question.text
    names = [about_fault(fault)[0] for fault in question.task.diagnosis.faults if fault != "thick_web"]
    assert not any(name in question.text + picture.alt for name in names)


def test_the_question_says_what_was_to_be_ground():
    """The drills of one task are of several kinds, and each is held against its own point angle."""
    variants = Variants(load_set("inspect-and-diagnose"))
    questions = [variants.question("name-the-error", f"x{number}") for number in range(20)]
    assert {q.numbers.drill.sound.says for q in questions} == {sound.says for sound in SOUND_POINTS.values()}
    for q in questions:
        sound = q.numbers.drill.sound
        assert f"Asked for were {sound.says}, and a point angle of {sound.point_angle:g}° (included)." in q.text


def test_a_task_may_keep_to_one_kind():
    questions = Variants(load_set("relief-and-chisel-edge"))
    kinds = {questions.question(WHAT, f"x{number}").numbers.drill.sound.says for number in range(20)}
    assert kinds == {SOUND_POINTS["plane"].says}


def test_the_givens_vary(relief):
    faults = {relief.question(WHAT, f"x{number}").numbers.drill.fault for number in range(80)}
    assert faults == set(relief.set.task(WHAT).diagnosis.faults)


def test_a_chisel_edge_past_square_is_printed_as_it_is_drawn():
    drill = drill_with("negative_relief", 1.0, 10, ("chisel_edge_angle", "lip_relief_1", "lip_relief_2"))
    assert isinstance(drill, FaultyDrill)
    edge = drill.point.inspect().chisel_edge_angle
    assert edge < 90
    assert dict(drill.printed)["chisel edge angle"] == f"{edge:.0f}°, past square"
