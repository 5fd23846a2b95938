"""A finished drawing: shows itself in a notebook and its exports, saves to a file, and says in words what it shows."""

from __future__ import annotations

import base64
import re
from collections.abc import Sequence
from html import escape
from pathlib import Path
from typing import Any

from attrs import field, frozen


@frozen
class Picture:
    """A drawing as SVG text, with its text twin.

    svg: the drawing, on white paper. alt: what it shows, with its numbers, in a sentence or two.
    """

    svg: str = field(repr=False)
    alt: str

    def _repr_svg_(self) -> str:
        return self.svg

    @property
    def html(self) -> str:
        """The drawing as an image with its text twin: what a notebook shows even where it is not trusted yet."""
        data = base64.b64encode(self.svg.encode("utf-8")).decode("ascii")
        return f'<img src="data:image/svg+xml;base64,{data}" alt="{escape(self.alt)}" style="max-width:100%">'

    def _repr_mimebundle_(self, **_: Any) -> dict[str, str]:
        return {"text/html": self.html, "image/svg+xml": self.svg, "text/plain": self.alt}

    def save(self, path: str | Path) -> Path:
        """Write the drawing to an .svg file, which any browser opens and prints, and return the path."""
        target = Path(path)
        if target.suffix.lower() != ".svg":
            target = target.with_name(target.name + ".svg")
        target.write_text('<?xml version="1.0" encoding="UTF-8"?>\n' + self.svg + "\n", encoding="utf-8", newline="\n")
        return target


def side_by_side(pictures: Sequence[Picture]) -> Picture:
    """Several drawings as one, from left to right."""
    if len(pictures) == 1:
        return pictures[0]
    sizes = [_size(picture.svg) for picture in pictures]
    width, height = sum(w for w, _ in sizes), max(h for _, h in sizes)
    alt = " ".join(picture.alt for picture in pictures)
    parts, left = [], 0
    for picture, (own, _) in zip(pictures, sizes, strict=True):
        parts.append(picture.svg.replace("<svg ", f'<svg x="{left}" ', 1))
        left += own
    frame = f'viewBox="0 0 {width} {height}" width="{width}" height="{height}" style="max-width: 100%; height: auto"'
    opening = f'<svg xmlns="http://www.w3.org/2000/svg" role="img" {frame} aria-label="{escape(alt)}">'
    return Picture("\n".join([opening, *parts, "</svg>"]), alt)


def _size(svg: str) -> tuple[int, int]:
    found = re.search(r'width="(\d+)" height="(\d+)"', svg)
    if found is None:
        raise ValueError("a drawing without a size")
    return int(found[1]), int(found[2])
