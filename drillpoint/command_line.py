"""Reading the command line and running one command. Standard library only."""

import sys
from argparse import ArgumentParser
from pathlib import Path

from drillpoint import __version__
from drillpoint.course.commands import COMMANDS as COURSE_COMMANDS
from drillpoint.lesson.commands import COMMANDS as LESSON_COMMANDS
from drillpoint.setup import console
from drillpoint.setup.commands import COMMANDS as SETUP_COMMANDS
from drillpoint.setup.commands import rerun_with_packages
from drillpoint.setup.trouble import SetupError, explain

STOPPED = 1
INTERRUPTED = 130


def run(arguments: list[str]) -> int:
    """Run the command that `arguments` name; say in one sentence what stops it."""
    console.prepare()
    try:
        return _dispatch(arguments)
    except SetupError as error:
        console.complain(f"drillpoint: {error}")
        return STOPPED
    except OSError as error:
        console.complain(f"drillpoint: {explain(error, 'the command', Path.cwd())}")
        return STOPPED
    except KeyboardInterrupt:
        console.complain("\ndrillpoint: Stopped before it was done; start it again whenever you like.")
        return INTERRUPTED


def _dispatch(arguments: list[str]) -> int:
    commands = {command.name: command for command in (*SETUP_COMMANDS, *COURSE_COMMANDS, *LESSON_COMMANDS)}
    if not arguments:
        console.say(overview())
        return 0
    parser = make_parser()
    passed_on: list[str] = []
    if arguments[0] == "test" and "--" in arguments:
        at = arguments.index("--")
        arguments, passed_on = arguments[:at], arguments[at + 1 :]
    options = parser.parse_args(arguments)
    if passed_on:
        options.rest = [*options.rest, *passed_on]
    if options.command in {command.name for command in (*COURSE_COMMANDS, *LESSON_COMMANDS)}:
        elsewhere = rerun_with_packages(arguments)
        if elsewhere is not None:
            return elsewhere
    return commands[options.command].run(options)


def make_parser() -> ArgumentParser:
    """The parser of every command."""
    parser = ArgumentParser(prog=_called_as(), description="A workbook that teaches the point of a twist drill.")
    parser.add_argument("--version", action="version", version=f"drillpoint {__version__}")
    subparsers = parser.add_subparsers(dest="command", metavar="COMMAND", required=True)
    for command in (*SETUP_COMMANDS, *COURSE_COMMANDS, *LESSON_COMMANDS):
        command.add_arguments(subparsers.add_parser(command.name, help=command.help, description=command.help))
    return parser


def overview() -> str:
    """The commands, each with an example, for somebody who typed none."""
    lines = ["drillpoint: a workbook that teaches the point of a twist drill.", "", "Type one of these:", ""]
    for command in (*SETUP_COMMANDS, *COURSE_COMMANDS, *LESSON_COMMANDS):
        lines += [
            f"    {_called_as()} {command.name} {getattr(command, 'example', '')}".rstrip(),
            f"        {command.help}",
        ]
    lines += ["", f"More about one of them: {_called_as()} open --help"]
    return "\n".join(lines)


def _called_as() -> str:
    """How the user started the program, to be typed again."""
    name = Path(sys.argv[0]).name
    if name != "__main__.py":
        return "drillpoint"
    return "py -m drillpoint" if sys.platform == "win32" else "python3 -m drillpoint"
