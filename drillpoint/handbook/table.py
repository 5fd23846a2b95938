"""What a published table is: rows with figures, and for each where it stands and how it was seen."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from attrs import Attribute, field, frozen

from drillpoint.handbook import view
from drillpoint.quantities import plain_number, unit_suffix

SEEN = ("seen", "second hand", "from memory", "worked out", "common practice")
"""How a figure was seen: read in a copy; quoted by somebody who read it; remembered; calculated from what was read;
what shops do, without a source."""


def _known(_row: Any, attribute: Attribute[str], value: str) -> None:
    if value not in SEEN:
        raise ValueError(f"{attribute.name} is {value!r}; it needs to be one of {', '.join(SEEN)}")


def _filled(_row: Any, attribute: Attribute[Any], value: Any) -> None:
    if not value:
        raise ValueError(f"{attribute.name} is empty; every figure needs one")


@frozen(kw_only=True)
class RangeRow:
    """One published figure or range.

    what: what it is for. low, high: the range, in the table's unit; equal for a single figure, high left out for a
    least one. about: whether the source says "about". place, plane, size, work: where, in which plane, for which drills
    and work it holds, as far as the source says. from_diameter, to_diameter: the size in mm, where it is a range of
    diameters. source, page: where it stands. seen: one of `SEEN`.
    """

    what: str = field(validator=_filled)
    low: float
    high: float | None = None
    about: bool = False
    place: str = ""
    plane: str = ""
    size: str = ""
    work: str = ""
    from_diameter: float | None = None
    to_diameter: float | None = None
    source: str = field(validator=_filled)
    page: str = field(validator=_filled)
    seen: str = field(validator=_known)

    def __attrs_post_init__(self) -> None:
        if self.high is not None and self.high < self.low:
            raise ValueError(f"high {self.high:g} is below low {self.low:g} in the row {self.what!r}")
        if (self.from_diameter is None) != (self.to_diameter is None):
            raise ValueError(f"the row {self.what!r} needs both from_diameter and to_diameter, or neither")

    def fits(self, diameter: float) -> bool:
        """Whether the row is for drills of that diameter, in mm; a row without sizes is for all."""
        if self.from_diameter is None or self.to_diameter is None:
            return True
        return self.from_diameter <= diameter <= self.to_diameter

    def figure(self, unit: str) -> str:
        """The figure as one reads it: "8° to 12°", "about 50 %", "at least 8°"."""
        least = plain_number(self.low, 4) + unit_suffix(unit)
        if self.high is None:
            return f"at least {least}"
        if self.high == self.low:
            return f"about {least}" if self.about else least
        return f"{least} to {plain_number(self.high, 4)}{unit_suffix(unit)}"


@frozen(kw_only=True)
class RangeTable:
    """Everything at hand on one question, one row a source.

    why_they_differ: why the figures are not the same, as the end of a sentence. It iterates over its rows; in a
    notebook it shows as a table, printed as text.
    """

    name: str
    title: str = field(validator=_filled)
    says: str = field(validator=_filled)
    unit: str
    why_they_differ: str = field(validator=_filled)
    row: tuple[RangeRow, ...] = field(validator=_filled)

    @property
    def rows(self) -> tuple[RangeRow, ...]:
        """The rows."""
        return self.row

    @property
    def span(self) -> tuple[float, float]:
        """The smallest and the largest figure of all rows."""
        figures = [f for row in self.row for f in (row.low, row.high) if f is not None]
        return min(figures), max(figures)

    @property
    def disagrees(self) -> bool:
        """Whether two rows print different figures."""
        return len({(row.low, row.high) for row in self.row}) > 1

    @property
    def have_a_common_value(self) -> bool:
        """Whether some value would satisfy every row."""
        highest = min(row.high for row in self.row if row.high is not None) if any(r.high for r in self.row) else None
        return highest is None or max(row.low for row in self.row) <= highest

    @property
    def verdict(self) -> str:
        """A sentence or two: whether the sources agree, and if not, how far they are apart and why."""
        if len(self.row) == 1:
            return f"One figure is at hand: {self.why_they_differ}"
        if not self.disagrees:
            return f"All {len(self.row)} agree."
        low, high = (plain_number(f, 4) + unit_suffix(self.unit) for f in self.span)
        none = "" if self.have_a_common_value else ", and no value satisfies them all"
        return f"The {len(self.row)} figures disagree: from {low} to {high}{none}. Why: {self.why_they_differ}"

    def __iter__(self) -> Iterator[RangeRow]:
        return iter(self.row)

    def __len__(self) -> int:
        return len(self.row)

    @property
    def _cells(self) -> tuple[tuple[str, ...], ...]:
        heads = ("figure", "for", "place", "plane", "size", "work", "source", "page", "how seen")
        body = tuple(
            (r.figure(self.unit), r.what, r.place, r.plane, r.size, r.work, r.source, r.page, r.seen) for r in self.row
        )
        used = [i for i in range(len(heads)) if any(line[i] for line in body)]
        return tuple(tuple(line[i] for i in used) for line in (heads, *body))

    def __str__(self) -> str:
        return view.entries(f"{self.title}: {self.says}", self._cells, self.verdict)

    def _repr_pretty_(self, printer: Any, cycle: bool) -> None:  # noqa: ARG002 - as IPython calls it
        printer.text(str(self))

    def _repr_html_(self) -> str:
        return view.as_html(f"{self.title}: {self.says}", self._cells, self.verdict)


@frozen(kw_only=True)
class PrintedTable:
    """Rows of a printed table of numbers, from one source.

    columns: what the numbers are. decimals: how many each column prints. rows: the numbers.
    """

    name: str
    title: str = field(validator=_filled)
    says: str = field(validator=_filled)
    source: str = field(validator=_filled)
    page: str = field(validator=_filled)
    seen: str = field(validator=_known)
    remark: str
    columns: tuple[str, ...] = field(validator=_filled)
    decimals: tuple[int, ...]
    rows: tuple[tuple[float, ...], ...] = field(validator=_filled)

    def __attrs_post_init__(self) -> None:
        if len(self.decimals) != len(self.columns):
            raise ValueError(f"there are {len(self.columns)} columns and {len(self.decimals)} decimals")
        for number, row in enumerate(self.rows, start=1):
            if len(row) != len(self.columns):
                raise ValueError(f"row {number} has {len(row)} numbers for {len(self.columns)} columns")

    def rounding(self, column: str) -> float:
        """Half of the last printed digit of a column: how far a formula may be off and still agree."""
        return 0.5 * 10.0 ** -self.decimals[self.columns.index(column)]

    def column(self, name: str) -> tuple[float, ...]:
        """The numbers of one column, from the top."""
        place = self.columns.index(name)
        return tuple(row[place] for row in self.rows)

    def __iter__(self) -> Iterator[dict[str, float]]:
        return (dict(zip(self.columns, row, strict=True)) for row in self.rows)

    def __len__(self) -> int:
        return len(self.rows)

    @property
    def _cells(self) -> tuple[tuple[str, ...], ...]:
        body = (tuple(f"{x:.{d}f}" for x, d in zip(row, self.decimals, strict=True)) for row in self.rows)
        return (tuple(name.replace("_", " ") for name in self.columns), *body)

    @property
    def _below(self) -> str:
        return f"Source: {self.source}, {self.page} ({self.seen}). {self.remark}"

    def __str__(self) -> str:
        return view.columns(f"{self.title}: {self.says}", self._cells, self._below)

    def _repr_pretty_(self, printer: Any, cycle: bool) -> None:  # noqa: ARG002 - as IPython calls it
        printer.text(str(self))

    def _repr_html_(self) -> str:
        return view.as_html(f"{self.title}: {self.says}", self._cells, self._below)
