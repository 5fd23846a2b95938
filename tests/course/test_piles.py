"""Sorting files by what is in them, in memory or on the disk."""

import pytest

from drillpoint.course import piles as module
from drillpoint.course.folder import File
from drillpoint.course.hand_in_file import AnswerRecord, hand_in_bytes
from drillpoint.course.piles import Piles, Unclaimed, plain
from drillpoint.course.roster import Student

ROSTER = (Student("s01"), Student("s02"))


def hand_in(lips, student, typed, time):
    return hand_in_bytes(lips.course, lips.id, lips.version, student, [AnswerRecord("point-height", typed, "1")], time)


@pytest.mark.parametrize("in_memory", [1, 16_000_000])
def test_what_was_sorted_in_comes_out_in_order_of_time(lips, tmp_path, monkeypatch, in_memory):
    monkeypatch.setattr(module, "_IN_MEMORY", in_memory)
    with Piles((lips,), ROSTER, tmp_path) as piles:
        piles.sort_in(File("b", hand_in(lips, "s01", "ψ\n\ud800 2", "2")))
        piles.sort_in(File("s02.txt", b"?"))
        piles.sort_in(File("z", hand_in(lips, "s02", "9", "9")))
        piles.sort_in(File("a", hand_in(lips, "s01", "1", "1")))
        piles.sort_in(File("c", hand_in(lips, "s03", "1", "1")))
        first, second = (piles.of(student) for student in ROSTER)
        assert [(s.path, s.answers[0].typed) for s in first.sittings] == [("a", "1"), ("b", "ψ\n\ud800 2")]
        assert [s.path for s in second.sittings] == ["z"]
        assert second.notes == (
            "s02.txt may be theirs and was not marked: it is broken: Expecting value: line 1 column 1 (char 0)",
        )
        assert list(piles.unclaimed())[1] == Unclaimed("c", "its student “s03” is not in the roster")
    assert list(tmp_path.iterdir()) == []


def test_a_strangers_text_becomes_one_short_line():
    assert plain("a\nb\u202e\x00") == "a\ufffdb\ufffd\ufffd"
    assert plain("x" * 100) == "x" * 60 + "…"
