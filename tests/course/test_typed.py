"""What is said of signs that cannot be read, and where."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drillpoint.course.typed import LOOK_ALIKES, ReadingError, why_unreadable
from drillpoint.errors import InstructorError, LearnerError

FAULT = ReadingError("One number is expected.", "5 mm 3", 5, ("5 mm", "7/8 in"))


def test_a_learner_sees_reason_place_and_examples():
    assert isinstance(FAULT, LearnerError)
    assert str(FAULT) == "One number is expected.\n    5 mm 3\n         ^\nYou can write: 5 mm, 7/8 in."


def test_an_instructor_sees_which_entry_of_the_file_too():
    said = FAULT.in_file("lips.toml, task 3, given web")
    assert isinstance(said, InstructorError)
    assert not isinstance(said, LearnerError)
    assert str(said) == (
        "lips.toml, task 3, given web: One number is expected.\n    5 mm 3\n         ^\n"
        "It can be written: 5 mm, 7/8 in."
    )


def test_the_caret_stands_under_its_sign_in_long_text():
    shown, under = ReadingError("", "a" * 50 + "?" + "b" * 50, 50).marked().splitlines()
    assert shown[under.index("^")] == "?"
    assert len(shown) == 64


def test_the_caret_stands_under_its_sign_behind_wide_combining_and_invisible_signs():
    shown, under = ReadingError("", "５e\u0301\u200b?", 4).marked().splitlines()
    assert shown == "    ５e\ufffd\ufffd?"
    assert under == "    \u3000   ^"


@given(st.text(max_size=200), st.integers(-5, 205))
def test_any_place_of_any_text_can_be_marked(text, place):
    shown, under = ReadingError("", text, place).marked().split("\n")
    assert len(shown) <= 64
    assert under.strip() == "^"
    assert all(character.isprintable() for character in shown)


@pytest.mark.parametrize("character", [chr(code) for code in range(32, 127)] + list("°µ²½−′″·×√κÅ"))
def test_nothing_is_said_of_usual_signs(character):
    assert why_unreadable(character) == ""


@given(st.characters())
def test_what_is_said_names_the_sign(character):
    said = why_unreadable(character)
    if unicodedata.category(character)[0] in "CM" and character not in "\n\r\v\f":
        assert f"U+{ord(character):04X}" in said
    said.encode("utf-8")


def test_look_alikes_keep_every_position():
    text = "−–‐‑⁄∕\u00a0\t"
    assert text.translate(LOOK_ALIKES) == "----//  "
