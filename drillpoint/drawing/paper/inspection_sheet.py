"""A blank inspection sheet for the bench: readings, limits, faults found, decision, signatures; one page to print."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from pathlib import Path
from types import MappingProxyType
from typing import Any

from attrs import field, frozen

from drillpoint.drawing.paper.format import PAPERS, read_paper
from drillpoint.drawing.paper.inspection_rows import rows, whose
from drillpoint.drawing.showing import read_units
from drillpoint.ground.diagnosis.limits import Limits
from drillpoint.ground.diagnosis.table import CERTAINTY
from drillpoint.pages import template, write_page
from drillpoint.quantities import plain_number

TITLE = "Inspection of a drill point"
CAUTION = (
    "Out of the machine and at rest before it is measured. Lips and margins are sharp. At the wheel and at a trial "
    "hole wear eye protection; do as your instructor, the maker's instructions and the rules of your shop say."
)
_BESIDE, _MARGINS = 10.0, 18.0  # mm of the page's margins: at one side, and above and below together
# How tall a line to write on is, mm, on each paper; all of it has to go on one page.
_ROW: Mapping[str, tuple[float, float]] = MappingProxyType({"A4": (9.2, 10.0), "Letter": (8.2, 9.0)})
_FAULTS = 4
_HEAD = (("Drill no.", 15), ("Diameter marked", 17), ("Material of the drill", 22), ("Work", 28), ("Date", 17))
_FLANKS = ("one plane", "curved", "two facets", "web thinned", "point split")
_CHIPS = ("two equal ribbons", "one broad, one narrow", "one ribbon", "dust", "squeal", "grabs or chatters")
_ORDER = "1 half angles, 2 relief, 3 lip height, 4 corners, 5 web"
_DECISIONS = ("leave as it is", "grind again", "thin the web", "another point angle", "look at the spindle", "scrap")
_FOOT = (
    (("Comes off: lip 1", 20), ("lip 2", 20), ("tip", 20), ("each side of the web", 20)),
    (("Inspected by, signature", 90), ("date", 26)),
    (("Checked after grinding by, signature", 74), ("date", 26)),
)


@frozen
class InspectionSheet:
    """A blank inspection sheet. alt: what is on it, in words. page: the whole page as HTML, to print from a browser."""

    alt: str
    page: str = field(repr=False)

    def save(self, path: str | Path) -> Path:
        """Write the page to an .html file, to be printed from a browser, and return the path."""
        return write_page(path, self.page)

    def _repr_mimebundle_(self, **_: Any) -> dict[str, str]:
        how = 'Save it with .save("inspection-sheet.html"), open it in a browser and print it.'
        return {"text/plain": f"{self.alt} {how}", "text/html": f"<p>{escape(self.alt)} {escape(how)}</p>"}


def inspection_sheet(*, paper: str = "A4", units: str = "mm", limits: Limits | None = None) -> InspectionSheet:
    """A blank sheet on which a drill is inspected by hand: one page to print.

    paper: "A4" or "Letter". units: "mm" or "inch", for errors, limits and what is written in. limits: those printed on
    it; `Limits()` when left out. Errors are those of the usual tools, common practice, and each limit says whose it is.
    Raises LearnerError for other paper or units.

    >>> inspection_sheet(units="inch").save("inspection-sheet.html")
    """
    name, written, allowed = read_paper(paper), read_units(units), limits or Limits()
    lines = rows(allowed, written)
    alt = (
        f"{TITLE}, a blank sheet for {name} paper, in {'millimetres' if written == 'mm' else 'inches'}: "
        f"{len(lines)} readings ({', '.join(line.term for line in lines)}), each with its place, unit, reading error "
        f"and limit, before and after grinding; chips, {_FAULTS} lines for faults, the decision, and signatures."
    )
    row, fault_row = _ROW[name]
    page = template("drillpoint.drawing.paper", ".", "inspection_sheet.html.j2").render(
        title=TITLE, alt=alt, caution=CAUTION, paper=name, rows=lines, whose=_of_whom(allowed), order=_ORDER,
        width=plain_number(PAPERS[name][0], 4), height=plain_number(PAPERS[name][1], 4),
        inner=plain_number(PAPERS[name][0] - 2 * _BESIDE, 4), row=row, fault_row=fault_row, head=_HEAD, foot=_FOOT,
        flanks=_FLANKS, chips=_CHIPS, decisions=_DECISIONS, certainty=tuple(CERTAINTY), faults=range(1, _FAULTS + 1),
    )  # fmt: skip
    return InspectionSheet(alt, page)


def _of_whom(limits: Limits) -> str:
    """Whose the limits are, in a sentence; most often the shop's, so the others are named."""
    said = [f"{source}: {', '.join(terms)}" for source, terms in whose(limits)]
    return f"Limits are the {'; '.join(said)}." if said else ""
