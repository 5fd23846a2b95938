"""A line that says how far long work has come. Standard library only."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable, Iterator
from typing import TypeVar

Item = TypeVar("Item")
_EVERY = 25


def progress_line(what: str) -> Callable[[int, int], None]:
    """Show a count that stays on one line of a terminal; say nothing when the output goes to a file."""

    def show(done: int, total: int) -> None:
        if sys.stderr.isatty() and (done == total or done % _EVERY == 0):
            print(f"\r{done} of {total} {what}", end="\n" if done == total else "", file=sys.stderr, flush=True)

    return show


def counted(items: Iterable[Item], what: str) -> Iterator[Item]:
    """Pass things on and show how many there were, where nobody knows how many there will be."""
    done = 0
    for done, item in enumerate(items, start=1):
        if done % _EVERY == 0 and sys.stderr.isatty():
            print(f"\r{done} {what}", end="", file=sys.stderr, flush=True)
        yield item
    if done and sys.stderr.isatty():
        print(f"\r{done} {what}", file=sys.stderr, flush=True)
