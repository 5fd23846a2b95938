"""The cards at the end of the lessons, gathered on a page to print: two to a sheet, to be cut apart."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from pathlib import Path

from attrs import frozen

from drillpoint.errors import InstructorError
from drillpoint.pages import template

CARD = "card"
"""The id of the cell that is the card."""
MARGIN = 10.0  # mm
_LAID_OUT_FOR_THE_LESSON = re.compile(r'<div style="page-break-before:always"></div>|<small>.*?</small>')


@frozen
class Card:
    """The card of one lesson. number: the lesson's. html: what stands on it, without what is the lesson's own."""

    number: int
    html: str


def lessons_folder() -> Path:
    """Where the lessons are: a `notebooks` folder beside the package, or inside it."""
    package = Path(__file__).parents[1]
    candidates = [package.parent / "notebooks", package / "_shipped" / "notebooks"]
    return next((folder for folder in candidates if folder.is_dir()), candidates[0])


def cards(folder: Path | None = None) -> tuple[Card, ...]:
    """The card of every lesson in the folder, in teaching order; lessons without one are left out."""
    from nbconvert.filters.markdown_mistune import markdown2html_mistune

    found = []
    for path in sorted((folder or lessons_folder()).glob("[0-9]*.ipynb")):
        for cell in json.loads(path.read_text(encoding="utf-8"))["cells"]:
            if cell["cell_type"] == "markdown" and cell.get("id") == CARD:
                text = _LAID_OUT_FOR_THE_LESSON.sub("", "".join(cell["source"]))
                found.append(Card(int(path.name.partition("-")[0]), markdown2html_mistune(text)))
    return tuple(found)


def chosen(every: Sequence[Card], numbers: Sequence[int]) -> tuple[Card, ...]:
    """The cards of the lessons with these numbers, in this order; all of them when none is named.

    Raises InstructorError for a lesson that has no card.
    """
    known = {card.number: card for card in every}
    for number in numbers:
        if number not in known:
            raise InstructorError(
                f"there is no card for lesson {number}; there are cards for {', '.join(map(str, known)) or 'none'}"
            )
    return tuple(known[number] for number in numbers) if numbers else tuple(every)


def cards_page(every: Sequence[Card], *, paper: str = "A4") -> str:
    """The cards as a page to print, two to a sheet of "A4" or "Letter".

    Raises LearnerError for another paper.
    """
    from drillpoint.drawing.paper.format import PAPERS, read_paper

    sheet = read_paper(paper)
    width, height = PAPERS[sheet]
    return template("drillpoint.lesson", "pages", "cards.html.j2", trim_blocks=True).render(
        cards=every, paper=sheet, width=width, height=height, margin=MARGIN, half=height / 2 - MARGIN
    )
