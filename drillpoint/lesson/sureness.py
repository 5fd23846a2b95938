"""How sure a result is when its readings are each a little out, set out as a table on the blackboard."""

from __future__ import annotations

import html
from collections.abc import Sequence

from drillpoint.errors import LearnerError
from drillpoint.lesson.blackboard import Board, relation_called
from drillpoint.quantities import Quantity, capital, plain_number, quantity, unit_suffix
from drillpoint.relation import Relation

_ALIKE = 0.9  # of the largest share; where two come so near, neither matters most
_HEADS = ("reading", "its ±", "makes in the result")


def how_sure(relation: Relation | str, **readings: float | Sequence[float]) -> Board:
    """A result with its ±, as in `how_sure(chisel_edge_length, web=(1.5, 0.05), chisel_edge_angle=(125, 1))`.

    A reading is a number with its ± in brackets, in degrees and mm; one without brackets is taken as exact. The ± of
    the result is the likely one, the root of the sum of squares; what it is if all go the worst way is said below.

    Raises LearnerError for a name that is not in the book, when no reading has a ±, and whatever the relation refuses.
    """
    shown = relation_called(relation)
    sure = shown.uncertainty(**readings)
    if not sure.shares:
        raise LearnerError("no reading has a ±; write it in brackets behind the reading, for example web=(1.5, 0.05)")
    rows = [(_read(name, readings[name]), _part(shown.result, share)) for name, share in sure.shares.items()]
    heading = f"{capital(shown.result.term)}: {sure}"
    below = f"If every reading is out the worst way at once: ± {_part(shown.result, sure.at_most)}."
    largest = max(sure.shares.values())
    if len(rows) > 1 and sum(share > _ALIKE * largest for share in sure.shares.values()) == 1:
        below += f" What matters most is the {quantity(sure.main_share).term}."
    body = "".join(
        f"<tr>{''.join(f'<td>{html.escape(cell)}</td>' for cell in (*read, part))}</tr>" for read, part in rows
    )
    head = "".join(f"<th>{html.escape(text)}</th>" for text in _HEADS)
    page = (
        f'<table style="min-width:28em"><caption style="text-align:left"><strong>{html.escape(heading)}</strong>'
        f"</caption><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table><p>{html.escape(below)}</p>"
    )
    lines = [f"{reading}, ± {plus_minus}: makes {part}" for (reading, plus_minus), part in rows]
    return Board(page, "\n".join([heading, *lines, below]))


def _read(name: str, given: float | Sequence[float]) -> tuple[str, str]:
    """A reading with its name, and its ±."""
    of = quantity(name)
    value, plus_minus = given if isinstance(given, Sequence) else (given, 0.0)
    return f"{of.term} {of.show(float(value), 4)}", f"{plus_minus:g}{unit_suffix(of.unit)}"


def _part(of: Quantity, amount: float) -> str:
    """A part of the ± in the unit of the result, to a digit more than the result itself is shown with."""
    return f"{plain_number(amount, of.decimals + 1)}{unit_suffix(of.unit)}"
