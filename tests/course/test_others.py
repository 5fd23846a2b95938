"""Right for somebody else's numbers."""

import pytest

from drillpoint.course.judging import Verdict
from drillpoint.course.others import Others

STUDENTS = tuple(f"s{number:02}" for number in range(1, 9))


@pytest.fixture(scope="module")
def others(variants):
    return Others((student, list(variants.questions(student))) for student in STUDENTS)


def test_those_whose_right_value_it_is(others, variants):
    mine = variants.question("point-height", "s01")
    for student in STUDENTS[1:]:
        theirs = variants.question("point-height", student).numbers
        found = others.right_for(mine, Verdict(0.0, "not right", "", value=theirs.right[0] + 0.9 * theirs.tolerance))
        assert student in found
        assert student not in others.right_for(mine, Verdict(0.0, "not right", "", value=theirs.right[0] + 0.03))


def test_an_answer_that_is_explained_says_nothing(others, variants):
    assert others.right_for(variants.question("point-height", "s01"), Verdict(0.0, "not right", "", "radians")) == ()


def test_each_part_of_a_task_is_looked_at(others, variants):
    mine, theirs = (variants.question("point-height", student) for student in ("s01", "s02"))
    part = Verdict(0.0, "not right", "", value=theirs.numbers.right[0])
    assert "s02" in others.right_for(mine, Verdict(0.0, "not right", "", parts={"point-height": part}))
    assert others.right_for(mine, Verdict(0.0, "not right", "", parts={"unknown": part})) == ()
