"""The hand-in file: written, read, and refused if it is anything else."""

import json
from pathlib import Path

import jsonschema
import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.hand_in_file import (
    FORMAT_VERSION,
    LARGEST_FILE,
    MOST_ANSWERS,
    AnswerRecord,
    Difference,
    HandInProblem,
    digest_of,
    hand_in_bytes,
    last_answers,
    put_answer,
    put_together,
    read_hand_in,
    receipt_of,
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


def record(task, typed, minute):
    return AnswerRecord(task, typed, f"2026-03-12T18:{minute:02}:00Z")


def test_two_sittings_are_put_together_and_the_last_answer_to_each_task_counts():
    school = (record("a", "1", 1), record("b", "2", 2), record("c", "3", 3))
    home = (record("b", "2.1", 30), record("d", "4", 31))
    records, differences = put_together(school, home)
    assert {task: one.typed for task, one in last_answers(records).items()} == {
        "a": "1",
        "b": "2.1",
        "c": "3",
        "d": "4",
    }
    assert differences == (Difference("b", "2.1", "2"),)
    assert records.index(school[1]) < records.index(home[0]), "the earlier answer stays, to be reported"
    assert set(put_together(home, school)[0]) == set(records)


RECORDS = st.lists(st.builds(record, st.sampled_from("abc"), st.sampled_from("12"), st.integers(0, 9)), max_size=8)


@given(RECORDS, RECORDS)
def test_putting_together_loses_no_task_and_doing_it_again_changes_nothing(here, there):
    here, there = (put_together((), records)[0] for records in (here, there))
    records, differences = put_together(here, there)
    assert {r.task for r in records} == {r.task for r in (*here, *there)}
    for again in (there, here):
        assert set(put_together(records, again)[0]) == set(records)
        assert last_answers(put_together(records, again)[0]) == last_answers(records)
    for one in differences:
        assert {one.counts, one.earlier} == {last_answers(here)[one.task].typed, last_answers(there)[one.task].typed}
        assert last_answers(records)[one.task].typed == one.counts
        assert any((r.task, r.typed) == (one.task, one.earlier) for r in records)


def test_many_sittings_do_not_grow_without_bounds():
    records = ()
    for minute in range(50):
        records, _ = put_together(records, (record("a", str(minute), minute),))
    assert [one.typed for one in records] == ["46", "47", "48", "49"]


def test_a_clock_that_was_set_back_does_not_let_an_older_answer_count():
    records = put_answer((record("a", "old", 40),), record("a", "new", 5))
    assert [one.typed for one in records] == ["new"]
    assert last_answers(put_together(records, (record("a", "old", 40),))[0])["a"].typed == "new"


def test_the_receipt_counts_tasks_and_shows_the_code():
    twice = [*ANSWERS, AnswerRecord("height", "3", "2026-03-12T18:02:00Z")]
    data = hand_in_bytes("Class", "lips", 2, "s07", twice, "2026-03-12T19:00:00Z")
    code = short_digest(json.loads(data)["digest"])
    assert receipt_of(data, 10) == f"2 of 10 answers, 2026-03-12T19:00:00Z, code {code}"


SCHEMA = json.loads((Path(__file__).parents[2] / "docs" / "hand-in.schema.json").read_text(encoding="utf-8"))


def test_the_published_schema_takes_what_is_written():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    jsonschema.validate(json.loads(GOOD), SCHEMA)
    limits = SCHEMA["properties"]["answers"]
    assert limits["maxItems"] == MOST_ANSWERS
    assert SCHEMA["properties"]["format_version"]["const"] == FORMAT_VERSION


@pytest.mark.parametrize(
    "name",
    ["student as number", "answers as table", "answer short", "typed as number", "many answers", "something more",
     "newer format", "version as text", "long student", "list", "other JSON", "saved answers"],
)  # fmt: skip
def test_the_published_schema_refuses_what_reading_refuses(name):
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(json.loads(PROBLEMS[name][0]), SCHEMA)
