"""The line that says how far long work has come."""

import io
import sys

from drillpoint.course.progress import counted, progress_line


class Terminal(io.StringIO):
    def isatty(self):
        return True


def put_terminal(monkeypatch):
    """Only inside a test: pytest puts its own in place when a test begins."""
    terminal = Terminal()
    monkeypatch.setattr(sys, "stderr", terminal)
    return terminal


def test_one_line_that_ends_when_all_is_done(monkeypatch):
    terminal = put_terminal(monkeypatch)
    show = progress_line("pages")
    for done in range(1, 61):
        show(done, 60)
    assert terminal.getvalue() == "\r25 of 60 pages\r50 of 60 pages\r60 of 60 pages\n"


def test_things_of_unknown_number_are_counted_and_passed_on(monkeypatch):
    terminal = put_terminal(monkeypatch)
    assert list(counted(iter(range(30)), "files read")) == list(range(30))
    assert terminal.getvalue() == "\r25 files read\r30 files read\n"


def test_nothing_is_said_when_nobody_looks(capsys):
    show = progress_line("pages")
    show(1, 1)
    assert list(counted([1], "files")) == [1]
    assert list(counted([], "files")) == []
    assert capsys.readouterr().err == ""
