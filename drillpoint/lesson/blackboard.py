"""The blackboard of a lesson: a relation derived step by step, worked out with numbers, or set out as a table.

Everything shown is taken from the relation itself. Each board is HTML for the notebook and plain text beside it, so it
reads the same without a kernel, on paper and to a screen reader.
"""

from __future__ import annotations

import html
import re
from collections.abc import Mapping, Sequence
from typing import Any

from attrs import frozen

from drillpoint.errors import LearnerError
from drillpoint.lesson.formula_html import as_html, letter_html
from drillpoint.quantities import Quantity, capital, nearest, quantity
from drillpoint.relation import Relation
from drillpoint.relation.symbols import letter
from drillpoint.relations import BOOK

_WITH_SUBSCRIPT = re.compile(r"\b[^\W\d_]_[^\W_]+\b")


@frozen
class Board:
    """Something written on the blackboard: as HTML, and as plain text."""

    html: str
    text: str

    def _repr_mimebundle_(self, **_: Any) -> dict[str, str]:
        return {"text/html": self.html, "text/plain": self.text}

    def __repr__(self) -> str:
        return self.text


def derive(relation: Relation | str) -> Board:
    """How a relation follows from the drawing, step by step, as in `derive(lip_length)`.

    Each step says in words what it does; its equation unfolds, so that a learner can try it first. The last step, which
    is the relation itself, stands open.

    Raises LearnerError for a name that is not in the book.
    """
    import sympy

    from drillpoint.relation.printing import as_text
    from drillpoint.relation.symbols import symbols

    shown = relation_called(relation)
    rows, lines = [], [f"How the {shown.result.term} follows", ""]
    for number, step in enumerate(shown.derivation, start=1):
        sides = [side(symbols(), sympy) for side in (step.left, step.right)]
        equation = " = ".join(as_html(side, letter) for side in sides)
        words, shown_below = _low(step.words), _centred(equation)
        last = number == len(shown.derivation)
        rows.append(f"<li>{words + shown_below if last else _folded(words, shown_below)}</li>")
        lines += [f"{number}. {step.words}", f"      {' = '.join(as_text(side, letter) for side in sides)}"]
    where = _said({shown.result.symbol: shown.result.term, **shown.where})
    granted = ["Taken for granted: " + " ".join(shown.assumptions), "Sources: " + " ".join(shown.sources)]
    page = [
        f"<p><strong>How the {html.escape(shown.result.term)} follows</strong>. Try each step, then unfold it.</p>",
        f"<ol>{''.join(rows)}</ol>",
        f"<p>{_low(where)}</p>",
        _folded("What is taken for granted, and where it is printed", "".join(f"<p>{_low(s)}</p>" for s in granted)),
    ]
    lines += ["", where, *granted]
    return Board("".join(page), "\n".join(lines))


def work_out(relation: Relation | str, **givens: float) -> Board:
    """A relation with the numbers put in, as in `work_out(point_height, diameter=10, point_angle=118)`.

    Raises LearnerError for a name that is not in the book, and whatever the relation refuses.
    """
    shown = relation_called(relation)
    worked = shown.worked(**givens)
    formula = f"{letter_html(shown.result.symbol)} = {as_html(shown.expression, letter)}"
    where = "; ".join(line.text for line in worked.where)
    page = [f"<p><strong>{capital(shown.result.term)}</strong>: {html.escape(shown.says)}.</p>", _centred(formula)]
    lines = [f"{capital(shown.result.term)}: {shown.says}.", f"      {worked.formula.text}"]
    if where:
        page.append(f"<p>{_low(where)}</p>")
        lines.append(where)
    page += [_centred(f"<strong>{_low(line.text)}</strong>") for line in worked.lines]
    page += [f"<p>{html.escape(note)}</p>" for note in worked.notes]
    lines += [f"      {line.text}" for line in worked.lines] + list(worked.notes)
    return Board("".join(page), "\n".join(lines))


def tabulate(relation: Relation | str, **givens: float | Sequence[float]) -> Board:
    """A relation for several values of one given, as in `tabulate(point_height, diameter=10, point_angle=[118, 135])`.

    Raises LearnerError unless exactly one given is a list, and whatever the relation refuses.
    """
    shown = relation_called(relation)
    lists = [name for name, value in givens.items() if isinstance(value, Sequence)]
    if len(lists) != 1:
        raise LearnerError(
            f"a table needs one given with several values, and {len(lists)} have; "
            "for example point_angle=[118, 135] and a single number for every other"
        )
    varied = quantity(lists[0])
    values: Any = givens[varied.name]
    pairs = [
        (varied.show(value, 4), shown.result.show(float(shown(**{**givens, varied.name: value})))) for value in values
    ]
    fixed = ", ".join(f"{quantity(n).term} {quantity(n).show(v, 4)}" for n, v in givens.items() if n != varied.name)  # type: ignore[arg-type]
    title = capital(shown.result.term) + (f" for {fixed}" if fixed else "")
    heads = [_head(varied), _head(shown.result)]
    body = "".join(f"<tr><td>{left}</td><td>{right}</td></tr>" for left, right in pairs)
    page = (
        f'<table style="min-width:28em"><caption style="text-align:left">{html.escape(title)}</caption>'
        f"<thead><tr><th>{_low(heads[0])}</th>"
        f"<th>{_low(heads[1])}</th></tr></thead><tbody>{body}</tbody></table>"
    )
    width = max(len(heads[0]), *(len(left) for left, _ in pairs)) + 3
    lines = [title, heads[0].ljust(width) + heads[1], *(left.ljust(width) + right for left, right in pairs)]
    return Board(page, "\n".join(lines))


def relation_called(relation: Relation | str) -> Relation:
    """The relation itself, or that of the book with this name.

    Raises LearnerError with the nearest name when there is none.
    """
    if isinstance(relation, Relation):
        return relation
    if relation not in BOOK:
        raise LearnerError(f"there is no relation {relation!r}{nearest(relation, BOOK)}")
    return BOOK[relation]


def _said(letters: Mapping[str, str]) -> str:
    return "; ".join(f"{symbol}: {meaning}" for symbol, meaning in letters.items()) + "."


def _head(of: Quantity) -> str:
    return f"{of.term} {of.symbol}"


def _folded(words: str, more: str) -> str:
    return f"<details><summary>{words}</summary>{more}</details>"


def _centred(shown: str) -> str:
    return f'<p style="margin:0.5em 0 0.9em 2em;font-size:110%">{shown}</p>'


def _low(text: str) -> str:
    """A line of plain text as HTML, with the subscripts of letters such as x_c set low."""
    return _WITH_SUBSCRIPT.sub(lambda found: letter_html(found[0]), html.escape(text))
