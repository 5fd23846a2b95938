"""The answer box with widgets, and without."""

import builtins

import pytest

from drillpoint.course import answer
from drillpoint.course.answer_box import status_line
from drillpoint.course.desk import open_desk


@pytest.fixture
def folder(make_sheet):
    return make_sheet("s07")


def test_typing_saves_and_says_how_it_was_read(folder):
    row, line = answer("1", folder=folder).children
    box, _ = row.children
    assert box.description == "Answer 1 (mm):"
    box.value = "3,00"
    assert open_desk("lips", folder).answers()["point-height"].typed == "3,00"
    assert "read as 3,00 mm = 3.00 mm" in line.value
    assert 'role="status"' in line.value


def test_the_button_saves_too(folder):
    row, _ = answer("1", folder=folder).children
    box, button = row.children
    box.value = "3"
    button.click()
    assert open_desk("lips", folder).answers()["point-height"].typed == "3"


def test_what_the_box_shows_is_what_is_saved_also_when_it_is_emptied(folder):
    row, line = answer("1", folder=folder).children
    box = row.children[0]
    for shown in ("3", "3.01", "", "3,02"):
        box.value = shown
        saved = open_desk("lips", folder).answers().get("point-height")
        assert (saved.typed if saved else "") == shown
    box.value = ""
    assert "It counts as not answered" in line.value


def test_where_widgets_cannot_be_shown_words_stand_in_their_place(folder):
    shown = answer("1", folder=folder)._repr_mimebundle_()
    assert shown["text/plain"].startswith("The answer box cannot be shown here.")
    assert 'answer("lips/1", "12.3 mm")' in shown["text/plain"]
    assert "application/vnd.jupyter.widget-view+json" in shown


def test_the_box_shows_what_is_saved(folder):
    open_desk("lips", folder).give("2", "7/8")
    row, line = answer("2", folder=folder).children
    assert row.children[0].value == "7/8"
    assert "Saved: 7/8" in line.value


def test_typed_html_is_shown_never_run(folder):
    row, line = answer("1", folder=folder).children
    row.children[0].value = "<img src=x onerror=alert(1)>"
    assert "<img" not in line.value
    assert "&lt;img" in line.value
    assert status_line('"><b>').count("<b>") == 0


def test_an_error_while_saving_is_shown(folder):
    row, line = answer("1", folder=folder).children
    (folder / "lips.answers.json").write_text("{")
    row.children[0].value = "3"
    assert "rename it and answer again" in line.value


def test_without_widgets_a_sentence_says_how_to_answer(folder, monkeypatch, capsys):
    real = builtins.__import__

    def no_widgets(name, *rest):
        if name == "ipywidgets":
            raise ImportError(name)
        return real(name, *rest)

    monkeypatch.setattr(builtins, "__import__", no_widgets)
    assert answer("1", folder=folder) is None
    assert 'as in answer("lips/1", "12.3 mm")' in capsys.readouterr().out
