"""Measuring labels as a browser sets them: whether they leave the frame or touch each other."""

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from drillpoint.drawing.computed import Drawn
from drillpoint.drawing.draw import finished
from drillpoint.drawing.svg import STYLE

if TYPE_CHECKING:
    from playwright.sync_api import Browser

WIDE = "Verdana, 'DejaVu Sans', sans-serif"

MEASURE = """
({pictures, style, font}) => {
  const own = font && `.drillpoint-drawing text { font-family: ${font} !important; }`;
  document.head.innerHTML = `<style>${style} ${own}</style>`;
  const faults = [];
  let measured = 0;
  for (const {svg, of} of pictures) {
    document.body.innerHTML = svg;
    const root = document.body.firstElementChild;
    const {width, height} = root.viewBox.baseVal;
    const boxes = [...root.querySelectorAll("text")].map((text) => [text.textContent, text.getBBox()]);
    boxes.forEach(([text, box], i) => {
      measured += box.width > 0;
      const inside = box.x >= 4 && box.y >= 4 && box.x + box.width <= width - 4 && box.y + box.height <= height - 4;
      if (!inside) faults.push(`“${text}” leaves the frame: ${of}`);
      for (const [other, b] of boxes.slice(i + 1)) {
        // A text box holds the line's full height; a pixel and a half of it is air at either end.
        const apart = box.x + box.width <= b.x || b.x + b.width <= box.x
          || box.y + box.height - 3 <= b.y || b.y + b.height - 3 <= box.y;
        if (!apart) faults.push(`“${text}” touches “${other}”: ${of}`);
      }
    });
  }
  return {measured, faults};
}
"""


def label_faults(browser: "Browser", drawings: Iterable[tuple[Drawn, str]], font: str = "") -> tuple[int, list[str]]:
    """How many labels were measured, and what is wrong with them. drawings: each with what it is of, for the report."""
    pictures = [
        {"svg": _labels_only(finished(drawn, units).svg), "of": f"{of} {units}"}
        for drawn, of in drawings
        for units in ("mm", "inch")
    ]
    page = browser.new_page()
    found: dict[str, Any] = page.evaluate(MEASURE, {"pictures": pictures, "style": STYLE, "font": font})
    page.close()
    return found["measured"], found["faults"]


def _labels_only(svg: str) -> str:
    lines = svg.split("\n")
    return "\n".join([lines[0], *(line for line in lines if line.startswith("<text")), "</svg>"])
