"""What a command of `python3 -m drillpoint` is. Standard library only."""

from argparse import ArgumentParser, Namespace
from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True)
class Command:
    """One command: its name, one line of help, its arguments, and what it does."""

    name: str
    help: str
    add_arguments: Callable[[ArgumentParser], None]
    run: Callable[[Namespace], int]
    """Returns the exit code: 0 for done, 1 for stopped by something outside, 2 for refused."""
    example: str = ""
    """What to type after the command's name, for the overview."""
