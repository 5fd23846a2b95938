"""What was found on a drill as a small table: the fault, how it shows, how sure that is, and the cure."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping
from html import escape
from types import MappingProxyType
from typing import TYPE_CHECKING

from attrs import frozen

from drillpoint.ground.diagnosis.fault import Fault, Undecided, kinds
from drillpoint.ground.diagnosis.spoken import said_of
from drillpoint.quantities import capital

if TYPE_CHECKING:
    from drillpoint.ground.diagnosis.faults import Report

HEADS = ("Fault", "Evidence", "Certainty", "Cure")
CERTAINTY: Mapping[str, str] = MappingProxyType(
    {
        "shown": "beyond the limit by more than the reading error",
        "possible": "beyond the limit, but by less than the reading error",
        "not decided": "the reading error alone could make it, so it is not called a fault",
    }
)
READ_AGAIN = "Nothing yet. Read again, with a finer tool."
_WIDTH = 96


@frozen
class Line:
    """One line of the table. evidence: its sentences."""

    fault: str
    evidence: tuple[str, ...]
    certainty: str
    cure: str


def lines_of(report: Report) -> tuple[Line, ...]:
    """The faults, the heaviest first, and behind them what the readings leave open."""
    return (*map(_of_fault, report.faults), *map(_of_undecided, report.undecided))


def _of_fault(fault: Fault) -> Line:
    first = f"It follows from {fault.follows_from}. Put that right first." if fault.follows_from else ""
    return Line(capital(fault.name), tuple(_evidence(fault)), fault.confidence, first or fault.cure)


def _evidence(fault: Fault) -> Iterator[str]:
    yield from (capital(str(e)) for e in fault.evidence)
    if fault.oversize is not None and not fault.follows_from:
        yield f"The hole comes out at most {said_of(fault.oversize)} wider because of it."


def _of_undecided(left: Undecided) -> Line:
    return Line(capital(left.name), tuple(capital(str(e)) for e in left.evidence), "not decided", READ_AGAIN)


def order_of(report: Report) -> str:
    """In which order several cures go, in a sentence; empty for one."""
    names = [fault.name for fault in report.for_the_wheel()]
    return f"Grind in this order: {'; then '.join(names)}." if len(names) > 1 else ""


def notes_of(report: Report) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """What else there is to say, each under its heading."""
    remarks = [r for f in report.faults if not f.follows_from for r in f.remarks]
    effects = [
        f"{capital(f.name)}. Hole: {f.kind.hole} Chips: {f.kind.chips} Wear: {f.kind.wear} Likely cause: {f.cause}"
        for f in report.faults
        if not f.follows_from
    ]
    found = (
        ("What the book makes of the readings", tuple(dict.fromkeys((*remarks, *report.agreements)))),
        ("What it does", tuple(effects)),
        ("Ruled out by the readings", tuple(sorted(kinds()[key].name for key in report.cleared))),
        ("Not measured, and what would settle it", tuple(map(str, report.not_measured))),
    )
    return tuple((heading, entries) for heading, entries in found if entries)


def as_text(report: Report) -> str:
    """The table as text: a paragraph for each fault."""
    said = [report.says()]
    margin = max(map(len, HEADS)) + 4
    for number, line in enumerate(lines_of(report), start=1):
        said += ["", f"{number}  {line.fault}"]
        for head, told in zip(HEADS[1:], (" ".join(line.evidence), line.certainty, line.cure), strict=True):
            said.append(_hanging(f"   {head}".ljust(margin), told, margin))
    said += [""] if report.faults or report.undecided else []
    said += [_hanging("", below, 0) for below in _below(report)]
    return "\n".join(said)


def _hanging(front: str, told: str, margin: int) -> str:
    return textwrap.fill(told, _WIDTH, initial_indent=front, subsequent_indent=" " * margin, break_long_words=False)


def _below(report: Report) -> Iterator[str]:
    from drillpoint.ground.diagnosis.faults import CAUTION

    if order := order_of(report):
        yield order
    yield from report.signs
    used = {line.certainty for line in lines_of(report)}
    meanings = (f"{capital(word)}: {means}." for word, means in CERTAINTY.items() if word in used)
    yield " ".join((*meanings, CAUTION))


def as_html(report: Report) -> str:
    """The table as HTML, with what else there is to say folded below it."""
    parts = [f"<p><strong>{escape(report.says())}</strong></p>"]
    if lines := lines_of(report):
        heads = "".join(f'<th scope="col" style="{_LEFT}">{head}</th>' for head in HEADS)
        body = "".join(map(_row, lines))
        parts.append(f"<table><thead><tr>{heads}</tr></thead><tbody>{body}</tbody></table>")
    *said, small = _below(report)
    parts += [f"<p>{escape(below)}</p>" for below in said]
    parts.append(f'<p style="font-size:85%">{escape(small)}</p>')
    for heading, entries in notes_of(report):
        listed = "".join(f"<li>{escape(entry)}</li>" for entry in entries)
        parts.append(f"<details><summary>{escape(heading)}</summary><ul>{listed}</ul></details>")
    return "".join(parts)


_LEFT = "text-align:left;vertical-align:top"


def _row(line: Line) -> str:
    evidence = "<br>".join(map(escape, line.evidence))
    told = (evidence, escape(line.certainty), escape(line.cure))
    cells = "".join(f'<td style="{_LEFT}">{cell}</td>' for cell in told)
    return f'<tr><th scope="row" style="{_LEFT}">{escape(line.fault)}</th>{cells}</tr>'
