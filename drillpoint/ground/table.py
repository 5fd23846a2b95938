"""A small table of words and numbers: HTML in a notebook, lined-up text elsewhere."""

from __future__ import annotations

import re
from collections.abc import Sequence
from html import escape

from attrs import frozen

_LEFT, _RIGHT = "text-align:left", "text-align:right;padding-left:1.2em"
# A narrow page breaks the line between mm and inches, and not between a number and its unit.
_BEFORE_A_UNIT = re.compile(r"(?<=\d) (?=[^\W\d])")


@frozen
class Table:
    """Rows under heads. The first column names the row; wordy: columns whose cells are words, set to the left."""

    title: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    wordy: frozenset[int] = frozenset({0})

    @property
    def html(self) -> str:
        """The table of a notebook, with its title over it."""
        heads = "".join(f'<th scope="col" style="{self._style(n)}">{escape(h)}</th>' for n, h in enumerate(self.heads))
        body = "".join(f"<tr>{self._row(row)}</tr>" for row in self.rows)
        return (
            f'<table><caption style="{_LEFT}"><strong>{escape(self.title)}</strong></caption>'
            f"<thead><tr>{heads}</tr></thead><tbody>{body}</tbody></table>"
        )

    def _row(self, row: Sequence[str]) -> str:
        first, *others = row
        cells = [f'<th scope="row" style="{_LEFT}">{escape(first)}</th>']
        cells += [f'<td style="{self._style(n)}">{self._cell(n, cell)}</td>' for n, cell in enumerate(others, start=1)]
        return "".join(cells)

    def _cell(self, column: int, cell: str) -> str:
        shown = escape(cell)
        return shown if column in self.wordy else _BEFORE_A_UNIT.sub("\N{NO-BREAK SPACE}", shown)

    def _style(self, column: int) -> str:
        return _LEFT if column in self.wordy else _RIGHT

    def __str__(self) -> str:
        lines = [self.heads, *self.rows]
        widths = [max(len(line[column]) for line in lines) for column in range(len(self.heads))]
        set_out = ("   ".join(c.ljust(w) for c, w in zip(line, widths, strict=True)).rstrip() for line in lines)
        return "\n".join([self.title, *set_out])


def bundle(tables: Sequence[Table], notes: Sequence[str] = (), before: Sequence[str] = ()) -> dict[str, str]:
    """What a notebook shows of some tables, of sentences before them, and of notes below them."""
    first, last = ([f"<p>{escape(said)}</p>" for said in sentences] for sentences in (before, notes))
    html = "".join([*first, *(table.html for table in tables), *last])
    return {"text/html": html, "text/plain": "\n\n".join([*before, *map(str, tables), *notes])}
