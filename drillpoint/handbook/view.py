"""A table to read: as plain text, and as HTML for a notebook."""

from __future__ import annotations

import textwrap
from html import escape

Cells = tuple[tuple[str, ...], ...]
"""The heads, then one line a row."""

_WIDTH = 100


def columns(title: str, cells: Cells, below: str) -> str:
    """Numbers in columns, with a rule under the heads."""
    widths = [max(len(line[i]) for line in cells) for i in range(len(cells[0]))]
    lines = ["  ".join(cell.ljust(width) for cell, width in zip(line, widths, strict=True)).rstrip() for line in cells]
    lines.insert(1, "  ".join("-" * width for width in widths))
    return "\n".join([textwrap.fill(title, _WIDTH), "", *lines, "", textwrap.fill(below, _WIDTH)])


def entries(title: str, cells: Cells, below: str) -> str:
    """A paragraph a row: the first cell in front, the others after it under their heads."""
    heads, *rows = cells
    margin = max(len(row[0]) for row in rows) + 2
    said = []
    for row in rows:
        parts = "; ".join(f"{head}: {cell}" for head, cell in zip(heads[1:], row[1:], strict=True) if cell)
        said.append(
            textwrap.fill(
                parts,
                _WIDTH,
                initial_indent=row[0].ljust(margin),
                subsequent_indent=" " * margin,
                break_long_words=False,
            )
        )
    return "\n".join([textwrap.fill(title, _WIDTH), "", *said, "", textwrap.fill(below, _WIDTH)])


def as_html(title: str, cells: Cells, below: str) -> str:
    """The same as an HTML table with a caption."""
    heads = "".join(f'<th scope="col">{escape(head)}</th>' for head in cells[0])
    body = "".join(f"<tr>{''.join(f'<td>{escape(cell)}</td>' for cell in row)}</tr>" for row in cells[1:])
    return (
        f"<table><caption>{escape(title)}</caption><thead><tr>{heads}</tr></thead><tbody>{body}</tbody></table>"
        f"<p>{escape(below)}</p>"
    )
