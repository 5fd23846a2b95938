"""The commands about lessons. Only the standard library is imported until one of them runs."""

from __future__ import annotations

import argparse
from pathlib import Path

from drillpoint.command import Command
from drillpoint.course.commands import politely


def _cards_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE.html", type=Path, help="the page to write; print it from a browser")
    parser.add_argument("--lesson", metavar="N", type=int, action="append", help="only this lesson's card; repeatable")
    parser.add_argument("--sheet", metavar="PAPER", default="A4", help="A4 or Letter (A4)")


def _cards(options: argparse.Namespace) -> int:
    from drillpoint.lesson.cards import cards, cards_page, chosen

    wanted = chosen(cards(), options.lesson or ())
    options.file.write_text(cards_page(wanted, paper=options.sheet), encoding="utf-8", newline="\n")
    count = "1 card is" if len(wanted) == 1 else f"{len(wanted)} cards are"
    print(f"{count} in {options.file}, two to a sheet. Print it from a browser at 100 %.")
    return 0


COMMANDS: tuple[Command, ...] = (
    Command(
        "cards",
        "write the cards at the end of the lessons on a page to print, two to a sheet",
        _cards_arguments,
        politely(_cards),
        "cards.html",
    ),
)
