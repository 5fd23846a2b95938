"""Older versions of a set stay markable, each by its own tasks."""

import pytest

from drillpoint.course.exercise_file import load_set
from drillpoint.course.folder import File
from drillpoint.course.gradebook import gradebook_csv
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.marking import LOOK, MARKED, mark_class
from drillpoint.course.roster import Student
from drillpoint.course.variant import Variants
from drillpoint.course.versions import older_versions
from drillpoint.errors import InstructorError

SET = """
set = "small"
title = "Small"
course = "C"
version = {version}
[[task]]
id = "height"
title = "Height"
text = "Diameter {{diameter}}, point angle {{point_angle}} (included): how high?"
relation = "point_height"
[task.givens]
diameter = {{ from = 6, to = 16, step = 0.5 }}
point_angle = [110, 118, 124, 130, 135]
"""
GONE = SET[SET.index("[[task]]") :].replace('"height"', '"gone"').replace('"Height"', '"Gone"')


@pytest.fixture
def sets(tmp_path):
    """Version 2 as it is now, and version 1, which had one more task, kept beside it."""
    (tmp_path / "small.toml").write_text(SET.format(version=2))
    (tmp_path / "small.v1.toml").write_text((SET + GONE).format(version=1))
    newest = load_set(tmp_path / "small.toml")
    return newest, older_versions(newest, tmp_path / "small.toml")


def hand_in(exercise_set, student):
    questions = Variants(exercise_set).questions(student)
    records = [AnswerRecord(q.task.id, f"{q.numbers.right[0]:.2f}", "1") for q in questions]
    return hand_in_bytes("C", "small", exercise_set.version, student, records, "2")


def test_each_is_marked_by_its_own_version(sets):
    newest, older = sets
    files = [File("a", hand_in(older[0], "s01")), File("b", hand_in(newest, "s02"))]
    result = mark_class(newest, [Student("s01"), Student("s02")], files, older=older)
    first, second = result.students
    assert (first.version, first.total, first.out_of, first.status) == (1, 2, 2, MARKED)
    assert (second.version, second.total, second.out_of) == (2, 1, 1)
    assert first.notes == ("answered and marked by version 1 of the set, which is now version 2",)
    assert "“Gone”, in version 1 only: 1 of 1" in gradebook_csv(result).decode()


def test_who_handed_in_two_versions_is_marked_by_the_newer(sets):
    newest, older = sets
    files = [File("a", hand_in(older[0], "s01")), File("b", hand_in(newest, "s01"))]
    (entry,) = mark_class(newest, [Student("s01")], files, older=older).students
    assert (entry.version, entry.files, entry.status) == (2, ("b",), LOOK)
    assert entry.aside == (("a", "it answers version 1; version 2 was handed in, too, and counts"),)


def test_without_the_older_file_it_says_what_to_keep(sets):
    newest, older = sets
    (entry,) = mark_class(newest, [Student("s01")], [File("a", hand_in(older[0], "s01"))]).students
    assert "keep the file of that version as small.v1.toml beside the set" in entry.problems[0]


def test_a_folder_for_old_ones_does_as_well(tmp_path, sets):
    (tmp_path / "old").mkdir()
    (tmp_path / "small.v1.toml").rename(tmp_path / "old" / "small.v1.toml")
    assert [one.version for one in older_versions(sets[0], tmp_path / "small.toml")] == [1]


def test_last_terms_course_is_left_alone(tmp_path, sets):
    (tmp_path / "small.v1.toml").write_text(SET.format(version=1).replace('"C"', '"last term"'))
    assert older_versions(sets[0], tmp_path / "small.toml") == ()


@pytest.mark.parametrize(
    ("name", "version", "says"),
    [
        ("small.v1.toml", 3, "its name says version 1"),
        ("small.v2.toml", 2, "raise version in the set when a task changes"),
        ("old/small.v1.toml", 1, "is kept twice"),
    ],
)
def test_a_file_that_is_not_what_its_name_says(tmp_path, sets, name, version, says):
    (tmp_path / "old").mkdir()
    (tmp_path / name).write_text(SET.format(version=version))
    with pytest.raises(InstructorError, match=says):
        older_versions(sets[0], tmp_path / "small.toml")
