"""What an instructor decides changes marks, survives marking again, and is told beside each mark."""

import pytest

from drillpoint.course.class_page import class_page, survey_of
from drillpoint.course.demo import intentions
from drillpoint.course.exercise_file import load_set
from drillpoint.course.feedback import feedback_page
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.marking import EXCUSED, LOOK, MARKED, NO_HAND_IN, NOT_MARKED, mark_class
from drillpoint.course.roster import Student
from drillpoint.course.rules import BEST, Accept, Add, Drop, Excuse, Rules, time_of

ROSTER = (Student("s01", "One"), Student("s02", "Two"))
DEADLINE = time_of("2026-03-12T20:00:00Z")


def right(lips, student="s01"):
    return {task.id: i.typed for task, i in zip(lips.tasks, intentions(lips)[student], strict=True)}


def hand_in(lips, answers, time="2026-03-12T19:00:00Z", student="s01"):
    records = [AnswerRecord(task, typed, time) for task, typed in answers.items()]
    return hand_in_bytes(lips.course, lips.id, lips.version, student, records, time)


def marked(lips, *hand_ins, **rules):
    files = [File(f"f{number}.json", data) for number, data in enumerate(hand_ins)]
    result = mark_class(lips, ROSTER, files, rules=Rules("rules.toml", **rules))
    return result, result.students[0]


def test_an_accepted_answer_counts_and_is_no_longer_to_be_looked_at(lips):
    answers = right(lips) | {"point-height": "1,234"}
    _, before = marked(lips, hand_in(lips, answers))
    assert (before.total, before.status) == (9, LOOK)
    _, entry = marked(lips, hand_in(lips, answers), accept=(Accept("as sketched", 7, "point-height", "s01", "1,234"),))
    assert (entry.total, entry.status) == (10, MARKED)
    assert entry.marks[0].why[-2:] == ("accepted for 100 % of the points: rules.toml, line 7: as sketched", "1 of 1")


def test_a_decision_about_one_answer_does_not_hold_for_another(lips):
    answers = right(lips) | {"point-height": "1,235"}
    result, entry = marked(lips, hand_in(lips, answers), accept=(Accept("x", 7, "point-height", "s01", "1,234"),))
    assert entry.total == 9
    assert result.unused == ("rules.toml, line 7: x (changed nothing)",)


def test_accepting_for_everybody_counts_whatever_was_answered_and_gives_nothing_for_no_answer(lips):
    accept = (Accept("misprint", 3, "point-height"),)
    result, entry = marked(lips, hand_in(lips, {"point-height": "77 mm"}), accept=accept)
    assert entry.marks[0].points == 1
    assert result.students[1].marks[0].points == 0


def test_a_dropped_task_counts_for_nobody(lips):
    result, entry = marked(lips, hand_in(lips, right(lips) | {"lip-length": "1"}), drop=(Drop("x", 2, "lip-length"),))
    assert (entry.total, entry.out_of) == (9, 9)
    assert result.students[1].out_of == 9
    assert entry.marks[2].why[-1] == "dropped"


def test_points_are_added_to_a_task_or_to_the_total(lips):
    add = (Add("sketch", 4, "s01", 0.5, "lip-length"), Add("tidy", 5, "s01", 1), Add("untidy", 6, "s02", -1))
    result, entry = marked(lips, hand_in(lips, {"lip-length": "1 mm"}), add=add)
    assert (entry.marks[2].points, entry.total) == (0.5, 1.5)
    assert [str(added.why) for added in entry.added] == ["1 point added: rules.toml, line 5: tidy"]
    assert result.students[1].total == -1
    assert result.students[1].added[0].why.for_student == "1 point taken off: untidy"


def test_an_excused_student_has_no_total_and_nothing_to_look_at(lips):
    result, entry = marked(lips, excuse=(Excuse("ill", 9, "s01"),))
    assert (entry.status, entry.excused, entry.problems) == (EXCUSED, True, ())
    assert entry.notes[0] == "excused: rules.toml, line 9: ill"
    assert result.students[1].status == NO_HAND_IN


@pytest.mark.parametrize(
    ("time", "penalty", "total"),
    [  # DERIVED: ten points, less the penalty for each day begun
        ("2026-03-12T19:59:59Z", 10, 10),
        ("2026-03-12T20:00:01Z", 10, 9),
        ("2026-03-13T20:00:01Z", 10, 8),
        ("2026-03-30T20:00:01Z", 10, 0),
        ("2026-03-13T20:00:01Z", 0, 10),
        ("2026-03-12T21:00:00+02:00", 10, 10),
    ],
)
def test_lateness_by_the_day(lips, time, penalty, total):
    _, entry = marked(lips, hand_in(lips, right(lips), time), deadline=DEADLINE, penalty_per_day=penalty)
    assert entry.total == pytest.approx(total)
    assert entry.status == MARKED


def test_only_what_was_changed_late_is_late(lips):
    first = hand_in(lips, right(lips) | {"lip-length": "1 mm"})
    second = hand_in(lips, right(lips), "2026-03-13T10:00:00Z")
    _, entry = marked(lips, second, first, deadline=DEADLINE, penalty_per_day=20)
    assert [mark.points for mark in entry.marks] == pytest.approx([1, 1, 0.8, *[1] * 7])
    assert "1 day late, 20 % off" in entry.marks[2].why
    assert entry.notes[0] == "f0.json was handed in 1 day late"


def test_last_or_best(lips):
    good, bad = hand_in(lips, right(lips)), hand_in(lips, right(lips) | {"lip-length": "1"}, "2026-03-12T19:30:00Z")
    assert marked(lips, good, bad)[1].total == 9
    _, entry = marked(lips, good, bad, counts=BEST)
    assert entry.total == 10
    assert "the best answer to each task counts" in entry.notes[0]
    # Late and right against in time and wrong: what earns more after the penalty.
    late = hand_in(lips, right(lips), "2026-03-13T10:00:00Z")
    _, entry = marked(
        lips, late, hand_in(lips, {"lip-length": "1"}), counts=BEST, deadline=DEADLINE, penalty_per_day=30
    )
    assert entry.marks[2].points == pytest.approx(0.7)


def test_two_sittings_are_merged_where_the_best_counts(lips):
    answers = list(right(lips).items())
    one, two = hand_in(lips, dict(answers[:5])), hand_in(lips, dict(answers[5:]), "2026-03-12T19:10:00Z")
    assert marked(lips, one, two, counts=BEST)[1].total == 10


def test_after_the_marking_is_closed_nothing_counts(lips):
    late = hand_in(lips, right(lips), "2026-03-20T10:00:00Z")
    result, entry = marked(lips, late, deadline=DEADLINE, closes=time_of("2026-03-19T20:00:00Z"))
    assert (entry.status, entry.total, entry.files) == (NOT_MARKED, 0, ())
    assert entry.aside == (("f0.json", "it was handed in after the marking was closed"),)
    assert result.unclaimed == ()


def test_a_time_that_cannot_be_read_is_told(lips):
    _, entry = marked(lips, hand_in(lips, right(lips), "noon"), deadline=DEADLINE, penalty_per_day=50)
    assert (entry.total, entry.status) == (10, LOOK)
    assert "the time in f0.json cannot be read, so it was not taken as late" in entry.problems


def test_every_mark_ends_with_its_points_and_begins_with_what_was_answered(lips):
    result, _ = marked(lips, hand_in(lips, right(lips)), drop=(Drop("x", 2, "lip-length"),))
    for entry in result.students:
        for mark in entry.marks:
            assert mark.why[0].startswith(("typed “", "not answered"))
            assert mark.why[-1].endswith((" of 1", "dropped"))


OPEN = """
set = "open"
title = "Open"
course = "C"
version = 1
[[task]]
id = "why"
kind = "open"
title = "Why"
text = "Why does a drill without relief rub?"
rubric = ["The flank behind the lip stands as high as the lip."]
points = 2
"""


def test_an_open_answer_waits_until_the_instructor_adds_its_points(tmp_path):
    path = tmp_path / "open.toml"
    path.write_text(OPEN)
    task_set = load_set(path)
    data = hand_in_bytes("C", "open", 1, "s01", [AnswerRecord("why", "It touches everywhere.", "1")], "2")
    waiting = mark_class(task_set, ROSTER, [File("a", data)])
    entry = waiting.students[0]
    assert (entry.total, entry.status, entry.problems) == (0, LOOK, ("waits for your mark: task 1",))
    assert survey_of(waiting).tasks[0].counts == (0, 0, 0, 0, 0)
    assert "…</td>" in class_page(survey_of(waiting), "p")
    # What it should say is a solution, and kept back like one.
    assert "stands as high" not in feedback_page(task_set, entry)
    assert "stands as high" in feedback_page(task_set, entry, release=True)
    rules = Rules("rules.toml", add=(Add("half of it", 4, "s01", 1, "why"),))
    marked_now = mark_class(task_set, ROSTER, [File("a", data)], rules=rules)
    entry = marked_now.students[0]
    assert (entry.total, entry.status) == (1, MARKED)
    assert survey_of(marked_now).tasks[0].counts == (0, 1, 0, 0, 0)
