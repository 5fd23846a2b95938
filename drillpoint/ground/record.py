"""An inspection written down: each reading with its name, for both lips where there are two, in mm and in inches."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from attrs import frozen

from drillpoint.quantities import Quantity, capital, plain_number, quantity
from drillpoint.relation.checking import INCH

if TYPE_CHECKING:
    from drillpoint.ground.inspection import Inspection
    from drillpoint.ground.thinning import ThinningReadings

OF_THE_POINT = (
    *("diameter", "point_angle", "web", "chisel_edge_angle", "chisel_edge_angle_at_axis", "chisel_edge_length"),
    *("chisel_edge_rise", "chisel_edge_rake", "point_offset", "chisel_edge_offset", "lip_height_difference"),
    "tip_height",
)
OF_EACH_LIP = ("half_angle", "lip_length", "lip_relief", "heel_clearance", "lip_bow")
OF_THE_THINNING = ("thinned_chisel_length", "thinned_web")
OF_EACH_THINNED_LIP = (
    *("thinning_angle", "thinned_lip_length", "thinning_reach", "untouched_lip_length", "untouched_lip_share"),
)
NOT_THINNED = "not thinned"
NEVER = "never"
"""Said for a heel clearance when the flank, carried on round the drill, does not come up again."""


@frozen
class Row:
    """One line of the record. values: one of the point, or those of lip 1 and lip 2."""

    term: str
    values: tuple[str, ...]


@frozen
class Record:
    """The record of an inspection: shows as a table in a notebook and as lines of text elsewhere."""

    rows: tuple[Row, ...]

    def __str__(self) -> str:
        widest = max(len(row.term) for row in self.rows) + 2
        return "\n".join(row.term.ljust(widest) + "   ".join(row.values) for row in self.rows)

    def _repr_mimebundle_(self, **_: object) -> dict[str, str]:
        body = "".join(_line(row) for row in self.rows)
        head = '<tr><th scope="col">reading</th><th scope="col">lip 1</th><th scope="col">lip 2</th></tr>'
        return {"text/html": f"<table><thead>{head}</thead><tbody>{body}</tbody></table>", "text/plain": str(self)}


def record(inspection: Inspection) -> Record:
    """Every reading of an inspection by name, lengths in mm and inches."""
    rows = [Row(capital(quantity(name).term), (written(name, getattr(inspection, name)),)) for name in OF_THE_POINT]
    for name in OF_EACH_LIP:
        values = (getattr(inspection, f"{name}_{lip}") for lip in (1, 2))
        term = "half angle" if name == "half_angle" else quantity(name).term
        rows.append(Row(capital(term), tuple(written(_vocabulary(name), value) for value in values)))
    if inspection.thinning:
        rows += _thinned(inspection.thinning)
    return Record(tuple(rows))


def _thinned(thinning: ThinningReadings) -> list[Row]:
    rows = [Row(capital(quantity(n).term), (written(n, getattr(thinning, n)),)) for n in OF_THE_THINNING]
    for name in OF_EACH_THINNED_LIP:
        values = (written(name, getattr(lip, name)) if lip else NOT_THINNED for lip in thinning.lips)
        rows.append(Row(capital(quantity(name).term), tuple(values)))
    return rows


def written(name: str, value: float | None) -> str:
    """A reading with its unit: "5.59 mm (0.22 in)", "101.6°"; "never" for none."""
    if value is None:
        return NEVER
    q: Quantity = quantity(name)
    if q.unit != "mm":
        return q.show(value)
    return f"{plain_number(value, 3)} mm ({plain_number(value / INCH, 4)} in)"


def _vocabulary(name: str) -> str:
    return "half_angle_1" if name == "half_angle" else name


def _line(row: Row) -> str:
    wide = ' colspan="2"' if len(row.values) == 1 else ""
    return (
        f'<tr><th scope="row" style="text-align:left">{escape(row.term)}</th>'
        + "".join(f"<td{wide}>{escape(value)}</td>" for value in row.values)
        + "</tr>"
    )
