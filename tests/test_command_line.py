import errno
from argparse import ArgumentParser, Namespace

import pytest

from drillpoint import command_line
from drillpoint.command import Command
from drillpoint.setup.trouble import SetupError


def no_arguments(_: ArgumentParser) -> None:
    pass


def rest(parser: ArgumentParser) -> None:
    parser.add_argument("rest", nargs="*")


@pytest.fixture
def ran(monkeypatch: pytest.MonkeyPatch) -> list[Namespace]:
    """Replace the commands with ones that only take down how they were called."""
    calls: list[Namespace] = []

    def call(options: Namespace) -> int:
        calls.append(options)
        return 3

    monkeypatch.setattr(command_line, "SETUP_COMMANDS", (Command("test", "tests", rest, call),))
    monkeypatch.setattr(command_line, "COURSE_COMMANDS", (Command("mark", "marks", rest, call, "FOLDER"),))
    return calls


def stopping(error: BaseException) -> Command:
    def call(_: Namespace) -> int:
        raise error

    return Command("test", "tests", no_arguments, call)


def test_the_exit_code_is_the_commands(ran: list[Namespace]) -> None:
    assert command_line.run(["test"]) == 3
    assert len(ran) == 1


@pytest.mark.parametrize(
    ("typed", "passed_on"),
    [
        (["test", "--", "-k", "lips"], ["-k", "lips"]),
        (["test", "tests/setup", "--", "-x"], ["tests/setup", "-x"]),
        (["test", "--"], []),
        (["test", "--", "--", "-x"], ["--", "-x"]),
    ],
)
def test_what_follows_two_dashes_is_passed_on_to_pytest(
    ran: list[Namespace], typed: list[str], passed_on: list[str]
) -> None:
    command_line.run(typed)
    assert ran[0].rest == passed_on


def test_course_commands_run_where_the_packages_are(ran: list[Namespace], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command_line, "rerun_with_packages", lambda arguments: len(arguments))
    assert command_line.run(["mark", "folder"]) == 2
    assert ran == []
    monkeypatch.setattr(command_line, "rerun_with_packages", lambda _: None)
    assert command_line.run(["mark", "folder"]) == 3


def test_the_overview_shows_examples(ran: list[Namespace], capsys: pytest.CaptureFixture[str]) -> None:
    assert command_line.run([]) == 0
    assert "mark FOLDER\n" in capsys.readouterr().out
    assert ran == []


@pytest.mark.parametrize(
    ("error", "code", "told"),
    [
        (SetupError("The disk is full: free some space."), 1, "drillpoint: The disk is full: free some space."),
        (OSError(errno.ENOSPC, "No space left on device"), 1, "The disk is full"),
        (KeyboardInterrupt(), 130, "Stopped before it was done"),
    ],
)
def test_what_stops_a_command_is_one_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], error: BaseException, code: int, told: str
) -> None:
    monkeypatch.setattr(command_line, "SETUP_COMMANDS", (stopping(error),))
    assert command_line.run(["test"]) == code
    said = capsys.readouterr().err
    assert told in said
    assert "Traceback" not in said
    assert len(said.strip().splitlines()) == 1


def test_a_mistake_in_the_program_is_not_hidden(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command_line, "SETUP_COMMANDS", (stopping(ZeroDivisionError()),))
    with pytest.raises(ZeroDivisionError):
        command_line.run(["test"])
