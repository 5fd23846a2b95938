"""A finished drawing: shows itself in a notebook and its exports, saves to a file, and says in words what it shows."""

from __future__ import annotations

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

    def _repr_mimebundle_(self, **_: Any) -> dict[str, str]:
        return {"image/svg+xml": self.svg, "text/plain": self.alt}

    def save(self, path: str | Path) -> Path:
        """Write the drawing to an .svg file, which any browser opens and prints, and return the path."""
        target = Path(path)
        if target.suffix.lower() != ".svg":
            target = target.with_name(target.name + ".svg")
        target.write_text('<?xml version="1.0" encoding="UTF-8"?>\n' + self.svg + "\n", encoding="utf-8", newline="\n")
        return target
