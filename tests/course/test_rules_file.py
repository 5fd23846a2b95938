"""The file with the rules: what it holds, and what is said when something is wrong with it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.roster import Student
from drillpoint.course.rules import BEST, LAST
from drillpoint.course.rules_file import read_rules
from drillpoint.errors import InstructorError

from .conftest import EXERCISES

ROSTER = (Student("s01"), Student("s02"), Student("s14"))
DECISION = '[[accept]]\nstudent = "s14"\ntask = "point-height"\nreason = "on paper"\n'


@pytest.fixture
def read(tmp_path, lips):
    def read(text):
        path = tmp_path / "rules.toml"
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return read_rules(path, (lips,), ROSTER)

    return read


def test_everything_that_can_be_said(read):
    rules = read(
        'deadline = 2026-03-12T20:00:00+01:00\ncloses = 2026-03-20T20:00:00Z\ncounts = "best"\npenalty_per_day = 10\n\n'
        + DECISION
        + 'typed = "1,234"\nshare = 0.5\n'
        + '[[drop]]\ntask = "3"\nreason = "misprint"\n'
        + '[[add]]\nstudent = "s01"\npoints = -0.5\nreason = "no units"\n'
        + '[[excuse]]\nstudent = "s02"\nreason = "ill"\n'
        + '[[extend]]\nstudent = "s01"\ndeadline = 2026-03-14T20:00:00Z\nreason = "no power"\n'
    )
    assert (rules.counts, rules.penalty_per_day, rules.file) == (BEST, 10, "rules.toml")
    (accept,) = rules.accept
    assert (accept.student, accept.task, accept.typed, accept.share) == ("s14", "point-height", "1,234", 0.5)
    assert (accept.reason, accept.line) == ("on paper", 6)
    assert rules.drop[0].task == "lip-length"  # its number in the set stands for its id
    assert (rules.add[0].points, rules.excuse[0].student, rules.extend[0].student) == (-0.5, "s02", "s01")
    assert rules.place(rules.drop[0]) == "rules.toml, line 12"


def test_an_empty_file_changes_nothing(read):
    rules = read("")
    assert (rules.deadline, rules.counts, rules.penalty_per_day) == (None, LAST, 0)


def test_the_rules_of_the_invented_class_can_be_read(lips):
    roster = tuple(Student(f"s{number:02}") for number in range(1, 25))
    rules = read_rules(EXERCISES / "demo-class" / "rules.toml", (lips,), roster)
    assert len(rules.accept) == len(rules.add) == len(rules.excuse) == len(rules.extend) == 1


@pytest.mark.parametrize(
    ("text", "line", "says"),
    [
        ('\ncount = "last"', 2, "entry 'count' is not known; did you mean 'counts'?"),
        ('counts = "first"', 1, "counts = 'first' is not known; known are last, best"),
        ("\npenalty_per_day = 10", 2, "there is no deadline; add a date and time with its offset"),
        ("deadline = 2026-03-12T20:00:00", 1, "as in 2026-03-12T20:00:00+01:00"),
        ('deadline = "2026-03-12T20:00:00Z"', 1, "write it without quotes"),
        ("deadline = 2026-03-12T20:00:00Z\npenalty_per_day = 101", 2, "is not a number from 0 to 100"),
        ("deadline = 2026-03-12T20:00:00Z\npenalty_per_day = nan", 2, "is not a number from 0 to 100"),
        ("deadline = 2026-03-12T20:00:00Z\ncloses = 2026-03-11T20:00:00Z", 2, "closes is before the deadline"),
        ('accept = "s14"', 1, "accept is written as a table, [[accept]] on a line of its own"),
        ("\n" + DECISION.replace("s14", "s41"), 3, "student of the roster 's41' is not known; did you mean 's14'?"),
        (DECISION.replace("point-height", "point-hight"), 3, "did you mean 'point-height'?"),
        (DECISION.replace('"point-height"', '"99"'), 3, "task of the set '99' is not known; known are point-height"),
        (DECISION.replace("reason", "reasons"), 4, "'reasons' is not known; did you mean 'reason'?"),
        ('\n[[excuse]]\nstudent = "s01"', 2, '[[excuse]] lacks reason = "…"'),
        ('[[add]]\nstudent = "s01"\nreason = "x"', 1, "[[add]] lacks points = 1"),
        (DECISION + "share = 2", 5, "share = 2 is not a number from 0 to 1"),
        (DECISION + "typed = 5", 5, "typed = 5 is not text in quotes"),
        (DECISION + 'line = 7', 5, "entry of [[accept]] 'line' is not known"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_said_with_its_line(read, text, line, says):
    with pytest.raises(InstructorError) as error:
        read(text)
    assert f"rules.toml, line {line}: " in str(error.value)
    assert says in str(error.value)


@pytest.mark.parametrize(
    ("text", "says"),
    [("counts =", "is not valid TOML"), (b"\xff", "is not UTF-8 text"), (b"#" * 1_000_001, "larger than 1 MB")],
)
def test_what_cannot_be_read_at_all(read, text, says):
    with pytest.raises(InstructorError, match=says):
        read(text)


def test_no_file(tmp_path, lips):
    with pytest.raises(InstructorError, match="there is no file"):
        read_rules(tmp_path / "nowhere.toml", (lips,), ROSTER)


KEYS = ("deadline", "counts", "accept", "drop", "add", "excuse")
VALUES = ("1", "true", "[]", "{}", "[1]", "[[1]]", '""', "nan", "1979-05-27", "[{}]", "{a = 1}")


@given(st.sampled_from(KEYS), st.sampled_from(VALUES))
def test_any_value_is_taken_or_refused_with_a_line(lips, tmp_path_factory, key, value):
    path = tmp_path_factory.mktemp("rules") / "rules.toml"
    path.write_text(f"{key} = {value}")
    try:
        read_rules(path, (lips,), ROSTER)
    except InstructorError as error:
        assert "rules.toml, line 1: " in str(error)
