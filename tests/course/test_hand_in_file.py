"""The hand-in file: written, read, and refused if it is anything else."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.hand_in_file import (
    LARGEST_FILE,
    AnswerRecord,
    HandInProblem,
    digest_of,
    hand_in_bytes,
    read_hand_in,
    short_digest,
)

ANSWERS = [
    AnswerRecord("lip-length", "5.15 mm", "2026-03-12T18:00:00Z"),
    AnswerRecord("height", "ψ = −3", "2026-03-12T18:01:00Z"),
]
GOOD = hand_in_bytes("Class", "lips", 2, "s07", ANSWERS, "2026-03-12T19:00:00Z")


def changed(**entries):
    content = json.loads(GOOD)
    content.update(entries)
    content["digest"] = digest_of(content)
    return json.dumps(content).encode()


def test_comes_back_as_it_was():
    hand_in = read_hand_in(GOOD)
    assert hand_in.answers == tuple(ANSWERS)
    assert (hand_in.course, hand_in.set, hand_in.version, hand_in.student) == ("Class", "lips", 2, "s07")
    assert hand_in.intact
    assert len(GOOD) < 1000


def test_a_byte_order_mark_and_other_line_ends_do_no_harm():
    assert read_hand_in(b"\xef\xbb\xbf" + GOOD.replace(b"\n", b"\r\n")).intact


@given(st.text(max_size=40), st.text(max_size=40))
def test_any_typed_text_comes_back(typed, student):
    data = hand_in_bytes("C", "lips", 1, student, [AnswerRecord("t", typed, "")], "")
    hand_in = read_hand_in(data)
    assert (hand_in.answers[0].typed, hand_in.student, hand_in.intact) == (typed, student, True)


def test_an_altered_answer_shows():
    assert not read_hand_in(GOOD.replace(b"5.15 mm", b"5.16 mm")).intact
    assert read_hand_in(changed(student="s08")).intact  # a digest is no signature, and does not claim to be


def test_short_digest():
    assert short_digest("3f7a92c1" + "0" * 56) == "3F7A-92C1"


PROBLEMS = {
    "empty": (b"", "empty"),
    "spaces": (b"  \n", "empty"),
    "cut off": (GOOD[:200], "broken"),
    "not JSON": (b"hello", "broken"),
    "python": (b"__import__('os')", "broken"),
    "pickle": (b"\x80\x04\x95\x10\x00\x00\x00\x00\x00\x00\x00\x8c\x02os", "UTF-8"),
    "zip": (b"PK\x03\x04" + b"\0" * 100, "zip archive"),
    "latin-1": ('{"name": "é"}'.encode("latin-1"), "UTF-8"),
    "utf-16": (GOOD.decode().encode("utf-16"), "UTF-8"),
    "list": (b"[1, 2]", "not a hand-in"),
    "number": (b"5", "not a hand-in"),
    "null": (b"null", "not a hand-in"),
    "other JSON": (b'{"a": 1}', "not a hand-in"),
    "NaN": (GOOD.replace(b'"version": 2', b'"version": NaN'), "NaN"),
    "Infinity": (GOOD.replace(b'"version": 2', b'"version": -Infinity'), "-Infinity"),
    "endless number": (GOOD.replace(b'"version": 2', b'"version": ' + b"9" * 10_000), "more than 18 digits"),
    "huge float": (GOOD.replace(b'"version": 2', b'"version": 1e999'), "not a whole number"),
    "deep list": (b"[" * 90_000 + b"]" * 90_000, "too deeply"),
    "deep table": (b'{"a":' * 30_000 + b"1" + b"}" * 30_000, "too deeply"),
    "too large": (GOOD + b" " * LARGEST_FILE, "larger than 200 kB"),
    "doubled key": (GOOD.replace(b'"student": "s07"', b'"student": "s07", "student": "s08"'), "“student” twice"),
    "version as text": (changed(version="2"), "not a whole number"),
    "version as truth": (changed(version=True), "not a whole number"),
    "student as number": (changed(student=7), "student is not text"),
    "student as list": (changed(student=["s07"]), "student is not text"),
    "long student": (changed(student="s" * 300), "longer than 200"),
    "answers as table": (changed(answers={"a": 1}), "not a list"),
    "answers null": (changed(answers=None), "not a list"),
    "answer as text": (changed(answers=["5.15"]), "answer 1 does not consist of"),
    "answer short": (changed(answers=[{"task": "a", "typed": "b"}]), "answer 1 does not consist of"),
    "typed as number": (changed(answers=[{"task": "a", "typed": 5.15, "time": ""}]), "answer 1 is not text"),
    "typed as code": (changed(answers=[{"task": "a", "typed": {"eval": "1"}, "time": ""}]), "answer 1 is not text"),
    "many answers": (changed(answers=[{"task": "a", "typed": "", "time": ""}] * 501), "more than 500"),
    "something more": (changed(grade=10), "unknown: “grade”"),
    "newer format": (changed(format_version=99), "newer version"),
    "format zero": (changed(format_version=0), "format_version"),
    "notebook": (b'{"cells": [], "nbformat": 4}', "it is a notebook"),
    "saved answers": (b'{"format": "drillpoint answers"}', "not handed in"),
    "sheet": (b'{"format": "drillpoint sheet"}', "description of a sheet"),
}


@pytest.mark.parametrize(("data", "says"), PROBLEMS.values(), ids=PROBLEMS.keys())
def test_says_why_a_file_is_no_hand_in(data, says):
    with pytest.raises(HandInProblem) as caught:
        read_hand_in(data)
    assert says in str(caught.value)
    assert len(str(caught.value)) < 200


@pytest.mark.parametrize("key", sorted(json.loads(GOOD)))
def test_nothing_may_be_left_out(key):
    content = json.loads(GOOD)
    del content[key]
    with pytest.raises(HandInProblem):
        read_hand_in(json.dumps(content).encode())


@given(st.binary(max_size=300))
def test_any_bytes_are_read_or_refused(data):
    with pytest.raises(HandInProblem):
        read_hand_in(data)


@given(st.integers(0, len(GOOD) - 1), st.integers(0, 255))
def test_a_changed_byte_never_goes_unseen(place, byte):
    data = GOOD[:place] + bytes([byte]) + GOOD[place + 1 :]
    try:
        hand_in = read_hand_in(data)
    except HandInProblem:
        return
    assert not hand_in.intact or json.loads(data) == json.loads(GOOD)
