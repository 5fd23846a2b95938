"""Which answer counts."""

from drillpoint.course.counting import Answers, Candidate
from drillpoint.course.hand_in_file import AnswerRecord
from drillpoint.course.piles import Sitting


def sitting(time, *answers, digest="d", path="p"):
    return Sitting(path, 1, time, digest, True, tuple(AnswerRecord(*answer) for answer in answers))


ONE = sitting("10", ("a", "1", "03"), ("b.x", "5", "04"))
TWO = sitting("20", ("a", "2", "12"), ("b.y", "6", "13"))
LATE = {"10": 0, "20": 3}


def answers(*sittings):
    return Answers(sittings, lambda one: LATE[one.time])


def test_the_last_answer_in_each_box():
    assert answers(ONE, TWO).last(["a"]) == Candidate({"a": "2"}, 3)
    assert answers(ONE, TWO).last(["b.x", "b.y"]) == Candidate({"b.x": "5", "b.y": "6"}, 3)
    assert answers(ONE).last(["c"]) == Candidate({}, 0)


def test_an_answer_handed_in_again_is_as_late_as_the_first_time():
    assert answers(ONE, sitting("20", ("a", "1", "03"))).last(["a"]).days_late == 0


def test_all_that_may_be_the_best():
    assert answers(ONE, TWO).all(["a"]) == [Candidate({"a": "2"}, 3), Candidate({"a": "1"}, 0)]


def test_equal_times_are_decided_by_what_is_in_a_file_and_not_by_its_name():
    first, second = (
        sitting("10", ("a", text, "03"), digest=text, path=path) for text, path in (("1", "z"), ("2", "y"))
    )
    assert answers(first, second).last(["a"]) == answers(second, first).last(["a"]) == Candidate({"a": "2"}, 0)


def test_what_was_said_differently_is_told():
    given = answers(ONE, TWO)
    assert given.said_differently(["a"], {"a": "2"}) == "“2” counts, earlier “1”"
    assert given.said_differently(["b.x"], {"b.x": "5"}) == ""
