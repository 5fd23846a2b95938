"""A plan as one page to print: to hang at the machine, and to write on."""

from __future__ import annotations

from drillpoint.errors import OutOfRange
from drillpoint.pages import template
from drillpoint.planning.plan import RegrindPlan
from drillpoint.planning.writing import BLANK, sections, title_of

PAPERS = ("A4", "Letter")


def page(plan: RegrindPlan, paper: str = "A4") -> str:
    """The page as HTML text: it stands alone, fetches nothing and runs nothing. paper: "A4" or "Letter".

    Raises OutOfRange for another paper.
    """
    named = next((known for known in PAPERS if known.lower() == str(paper).lower()), None)
    if named is None:
        raise OutOfRange(f"paper is {paper!r}; a plan prints on {' or '.join(PAPERS)}")
    found = sections(plan)
    return template("drillpoint.planning", ".", "page.html.j2", trim_blocks=True, lstrip_blocks=True).render(
        paper=named,
        title=title_of(plan),
        says=plan.says,
        sections=[section for section in found if section.title],
        below=[section.table for section in found if not section.title],
        blank=BLANK,
    )
