"""True-scale paper: a sheet to print, cut out and hold a drill point against."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from pathlib import Path

from attrs import field, frozen

from drillpoint.drawing.paper.format import RELIEFS, Format, read_format
from drillpoint.drawing.paper.layout import laid_out, title_of
from drillpoint.drawing.paper.marks import Mark, elements
from drillpoint.drawing.picture import Picture
from drillpoint.pages import template, write_page
from drillpoint.quantities import QUANTITIES, plain_number

HAIR = 0.6  # mm
NAMESPACE = "http://www.w3.org/2000/svg"
STYLE = """
.paper { fill: #ffffff; }
.point-paper path, .point-paper circle { fill: none; stroke: #000000; stroke-linejoin: miter; }
.point-paper .cut { stroke-width: 0.5; }
.point-paper .bar { stroke-width: 0.35; }
.point-paper .thin { stroke-width: 0.18; }
.point-paper .axis { stroke-width: 0.18; stroke-dasharray: 5 0.9 0.6 0.9; }
.point-paper .part { stroke-width: 0.18; stroke-dasharray: 5 0.9 0.6 0.9 0.6 0.9; }
.point-paper text { fill: #000000; font-family: "Segoe UI", "Helvetica Neue", Arial, "Liberation Sans", sans-serif; }
""".strip()


@frozen
class Paper(Picture):
    """True-scale paper: shows itself small, and saves as a page that prints at its true size.

    svg: the sheet. alt: what is on it. page: the whole page as HTML. marks: what is drawn, in mm, for measuring.
    """

    page: str = field(repr=False, default="")
    marks: tuple[Mark, ...] = field(repr=False, default=())

    def save(self, path: str | Path) -> Path:
        """Write the page to an .html file, to be printed from a browser at 100 %, and return the path.

        A path that ends in .svg gets the drawing alone.
        """
        target = Path(path)
        if target.suffix.lower() == ".svg":
            return Picture.save(self, target)
        return write_page(target, self.page)


def point_paper(
    *,
    point_angle: float = 118,
    smallest: float | None = None,
    largest: float | None = None,
    web_ratio: float = 0.15,
    reliefs: Sequence[float] = RELIEFS,
    paper: str = "A4",
    units: str = "mm",
) -> Paper:
    """A sheet to print at true scale, with cards to cut out and hold a drill point against.

    point_angle: the whole angle of the notches. smallest, largest: the drills it is for, in mm (3 to 13, or 1/8 in to
    1/2 in). web_ratio: the web that the outer corners are worked out with. reliefs: one to three angles for the relief
    wedges. paper: "A4" or "Letter". units: "mm" or "inch", for scales and words.
    On it are a notch for each size and a wide one, with lip scales graduated along the lips from the centre line, a
    chisel edge card, relief wedges, and two check bars. It is paper: it shows what to look at, it inspects nothing.
    Raises LearnerError for what makes no sheet, or does not fit on the paper.

    >>> point_paper(point_angle=135, largest=10).save("point-paper.html")
    """
    sheet = read_format(point_angle, smallest, largest, web_ratio, reliefs, paper, units)
    marks, title, alt = laid_out(sheet), title_of(sheet), describe(sheet)
    svg = _svg(sheet, marks, title, alt)
    return Paper(svg, alt, _page(sheet, svg, title, alt), marks)


def describe(sheet: Format) -> str:
    """What is on the sheet, with its numbers."""
    sizes = ", ".join(sheet.size(size) for size in sheet.sizes)
    corner = sheet.read_off(sheet.corner(sheet.largest))
    usual = QUANTITIES["chisel_edge_angle"].usual
    return (
        f"True-scale paper for a {QUANTITIES['point_angle'].show(sheet.point_angle)} point, {sheet.paper}. "
        f"Notches for drills of {sizes}, and a wide notch, each with a lip scale on both flanks from the centre line; "
        f"the outer corners of a {sheet.size(sheet.largest)} drill come to {corner} {sheet.unit}. "
        f"A chisel edge card from {usual.low:g}° to {usual.high:g}° (obtuse). "
        f"Relief wedges of {_and(QUANTITIES['lip_relief'].show(relief) for relief in sheet.reliefs)}. "
        f"A level and an upright check bar, each {sheet.check[2]}."
    )


def _and(words: Iterator[str]) -> str:
    *first, last = words
    return f"{', '.join(first)} and {last}" if first else last


def _svg(sheet: Format, marks: Sequence[Mark], title: str, alt: str) -> str:
    wide, tall = (plain_number(side, 4) for side in (sheet.width, sheet.height))
    size = f'viewBox="0 0 {wide} {tall}" width="{wide}mm" height="{tall}mm"'
    return "\n".join(
        [
            f'<svg xmlns="{NAMESPACE}" class="point-paper" role="img" {size} aria-label="{escape(alt)}">',
            f"<title>{escape(title)}</title>",
            f"<desc>{escape(alt)}</desc>",
            f"<style>{STYLE}</style>",
            f'<rect class="paper" width="{wide}" height="{tall}"/>',
            elements(marks),
            "</svg>",
        ]
    )


def _page(sheet: Format, svg: str, title: str, alt: str) -> str:
    from markupsafe import Markup

    return template("drillpoint.drawing.paper", ".", "page.html.j2").render(
        title=title,
        alt=alt,
        width=plain_number(sheet.width, 4),
        height=plain_number(sheet.height, 4),
        clipped=plain_number(sheet.height - HAIR, 4),
        paper=sheet.paper,
        bar=sheet.check[2],
        sheet=Markup(svg),  # noqa: S704  (escaped by its writer)
    )
